// What to change: every candidate change is applied to the whole piece and judged again; those that
// mend it are ranked by how little they disturb. A round that is full on purpose before a lean one
// is not 'mended', since only changes that make the finished piece better are kept.

import { countRound, kindKey, type Motif, repeatsOf } from "@roundwright/motif"
import { type Gauge, gaugeFrom, hooks, type StitchKind, type Terms } from "@roundwright/stitches"
import type { ElementChange } from "./change.ts"
import { applyChange, type RoundFacts } from "./edit.ts"
import { foldLedger } from "./fold.ts"
import { judgePiece } from "./judge.ts"
import type { Ledger, Remedy } from "./result.ts"
import { type PieceSummary, summarisePiece } from "./summary.ts"
import { bands, severityOf } from "./verdict.ts"
import { describeChange } from "./wording.ts"

/** More remedies than a maker would read help nobody. */
const mostRemedies = 6

/** A count may change by at most this share of the round; beyond it the pattern is another one. */
const furthestCount = 0.5

/** Another hook is worth trying within one millimetre; further off the fabric changes its character. */
const furthestHookMm = 1

/** Stitches a maker exchanges for one another, lowest first. */
const ladder: readonly StitchKind["basic"][] = ["sc", "hdc", "dc", "tr", "dtr"]

/** How far up or down the ladder a stitch may be exchanged. */
const ladderReach = 2

/** Chains added to or taken from a run. */
const chainReach = 3

/**
 * Remedies for a piece that does not lie flat, least disturbing first; none for a flat one.
 * @param terms in whose names the changes are told
 * @throws RoundwrightError `broken-motif`
 */
export function findRemedies(
  motif: Motif,
  gauge: Gauge,
  ledger: Ledger,
  terms: Terms = "US",
): Remedy[] {
  if (ledger.verdict === "flat") return []
  const piece = summarisePiece(motif, gauge)
  const facts = motif.rounds.map(factsOf)
  const last = ledger.rows.at(-1)!
  const full = last.accumulatedFullness > 1
  const found: Remedy[] = []
  const consider: Consider = (index, change, sizeFactor = 1, onlyTry = false) => {
    const outcome = judgeChange(piece, index, change, facts, gauge, sizeFactor)
    if (!onlyTry && severityOf(outcome.verdict) < severityOf(ledger.verdict))
      found.push(remedyOf(motif, piece, facts, index, change, outcome, terms))
    return outcome
  }
  for (const index of suspectRounds(ledger, piece, full)) {
    for (const step of countSteps(motif, index))
      tryCounts(index, facts[index]!, step, full, consider)
    tryStitches(index, facts[index]!, full, consider)
    tryChains(index, piece, full, consider)
    tryHooks(index, gauge, full, consider)
  }
  tryIncreases(piece, facts, ledger, consider)
  return rank(found)
}

interface Outcome {
  readonly verdict: Ledger["verdict"]
  readonly fullness: number
}

/** Judges a change and keeps it when it makes the piece better, unless it is only tried. */
type Consider = (
  index: number,
  change: ElementChange,
  sizeFactor?: number,
  onlyTry?: boolean,
) => Outcome

function judgeChange(
  piece: PieceSummary,
  index: number,
  change: ElementChange,
  facts: readonly RoundFacts[],
  gauge: Gauge,
  sizeFactor: number,
): Outcome {
  const changed = applyChange(piece, index, change, facts, gauge, sizeFactor)
  const rows = foldLedger(changed)
  return {
    verdict: judgePiece(rows, changed).verdict,
    fullness: rows.at(-1)!.accumulatedFullness,
  }
}

function factsOf(round: Motif["rounds"][number]): RoundFacts {
  const count = countRound(round)
  const main = count.byKind.reduce(
    (best, entry) => (entry.count > best.count ? entry : best),
    count.byKind[0] ?? { kind: { basic: "sc" } as StitchKind, count: 0 },
  )
  const uniform = count.byKind.length === 1 && kindKey(main.kind) === main.kind.basic.concat("|||")
  return { kind: main.kind, stitches: count.stitches, turned: round.turned, uniform }
}

/** Ground rounds that push the piece the way it is off. */
function suspectRounds(ledger: Ledger, piece: PieceSummary, full: boolean): number[] {
  const suspects: number[] = []
  ledger.rows.forEach((row, index) => {
    if (!piece.rounds[index]!.ground) return
    const off = full ? row.fullness > 1 + bands.flat : row.fullness < 1 - bands.flat
    if (off) suspects.push(index)
  })
  return suspects
}

/** Steps of count that keep repeats whole: the round's own, those of the rounds beside it, and their halves. */
function countSteps(motif: Motif, index: number): Set<number> {
  const beside = [index, index - 1, index + 1].filter((i) => motif.rounds[i] !== undefined)
  const steps = beside.map((i) => repeatsOf(motif, i))
  return new Set([...steps, ...steps.filter((step) => step % 2 === 0).map((step) => step / 2)])
}

/** The smallest change of count, in whole steps, that lies flat. */
function tryCounts(
  index: number,
  facts: RoundFacts,
  step: number,
  full: boolean,
  consider: Consider,
): void {
  if (facts.stitches === 0 || step > furthestCount * facts.stitches) return
  const most = Math.floor((furthestCount * facts.stitches) / step)
  for (let j = 1; j <= most; j++) {
    const stitches = facts.stitches + (full ? -j : j) * step
    if (stitches < 1) return
    if (consider(index, { kind: "count", stitches }).verdict === "flat") return
  }
}

function tryStitches(index: number, facts: RoundFacts, full: boolean, consider: Consider): void {
  const place = ladder.indexOf(facts.kind.basic)
  if (!facts.uniform || place < 0) return
  for (let step = 1; step <= ladderReach; step++) {
    const basic = ladder[place + (full ? step : -step)]
    if (basic && consider(index, { kind: "stitch", to: { basic } }).verdict === "flat") return
  }
}

function tryChains(index: number, piece: PieceSummary, full: boolean, consider: Consider): void {
  for (const { chains } of piece.rounds[index]!.runs)
    for (let step = 1; step <= chainReach; step++) {
      const to = chains + (full ? -step : step)
      if (to < 1) break
      if (consider(index, { kind: "chains", from: chains, to }).verdict === "flat") break
    }
}

/** A smaller hook takes in a full edge, a larger one lets out a lean one; only rounds after it change. */
function tryHooks(index: number, gauge: Gauge, full: boolean, consider: Consider): void {
  const { hookMm, yarnWeight } = gauge.input
  if (hookMm === undefined) return
  const weight = yarnWeight === undefined ? {} : { yarnWeight }
  const size = (mm: number) => gaugeFrom({ swatches: [], hookMm: mm, ...weight }).scWidthMm
  const near = hooks
    .map((hook) => hook.mm)
    .filter((mm) => Math.abs(mm - hookMm) <= furthestHookMm && (full ? mm < hookMm : mm > hookMm))
    .sort((a, b) => Math.abs(a - hookMm) - Math.abs(b - hookMm))
  for (const toMm of near)
    if (consider(index, { kind: "hook", toMm }, size(toMm) / size(hookMm)).verdict === "flat")
      return
}

/**
 * The whole plan of increases, for a piece that is off over several rounds: the same number of
 * stitches added each round from the first round that is off, in steps that keep its corners alike.
 * From the plans that lie flat the one nearest to fullness 1 is kept.
 */
function tryIncreases(
  piece: PieceSummary,
  facts: readonly RoundFacts[],
  ledger: Ledger,
  consider: Consider,
): void {
  const first = Math.max(
    0,
    ledger.rows.findIndex((row) => row.round === ledger.fromRound),
  )
  const growths = facts
    .slice(first)
    .map((f, i) => f.stitches - (facts[first + i - 1]?.stitches ?? 0))
  if (growths.length < 2) return
  const step = Math.max(1, piece.rounds.at(-1)!.corners)
  const most = Math.max(...growths, fewestPlanned) * 2
  let best: { perRound: number; off: number } | null = null
  for (let perRound = step; perRound <= most; perRound += step) {
    const { verdict, fullness } = consider(first, { kind: "increase", perRound }, 1, true)
    const off = Math.abs(fullness - 1)
    if (verdict === "flat" && (best === null || off < best.off)) best = { perRound, off }
  }
  if (best) consider(first, { kind: "increase", perRound: best.perRound })
}

/** Plans up to twice this many stitches a round are looked at even where the pattern adds none. */
const fewestPlanned = 12

function remedyOf(
  motif: Motif,
  piece: PieceSummary,
  facts: readonly RoundFacts[],
  index: number,
  change: ElementChange,
  outcome: Outcome,
  terms: Terms,
): Remedy {
  const total = facts.reduce((sum, round) => sum + round.stitches, 0)
  const redone = facts.slice(index).reduce((sum, round) => sum + round.stitches, 0)
  return {
    round: motif.rounds[index]!.number,
    change: describeChange(motif, index, change, facts, terms),
    fullnessAfter: outcome.fullness,
    verdictAfter: outcome.verdict,
    disturbance: (redone + alteredStitches(piece, facts, index, change)) / total,
    edit: change,
  }
}

/** Stitches that are made otherwise than the pattern says. */
function alteredStitches(
  piece: PieceSummary,
  facts: readonly RoundFacts[],
  index: number,
  change: ElementChange,
): number {
  switch (change.kind) {
    case "count":
      return Math.abs(change.stitches - facts[index]!.stitches) * (facts.length - index)
    case "increase":
      return facts.slice(index).reduce((sum, round, i) => {
        const planned = (facts[index - 1]?.stitches ?? 0) + change.perRound * (i + 1)
        return sum + Math.abs(planned - round.stitches)
      }, 0)
    case "stitch":
      return facts[index]!.stitches
    case "chains":
      return piece.rounds[index]!.runs.reduce(
        (sum, run) => sum + (run.chains === change.from ? run.count : 0),
        0,
      )
    case "hook":
      return 0
  }
}

function rank(remedies: readonly Remedy[]): Remedy[] {
  const order = (a: Remedy, b: Remedy) =>
    severityOf(a.verdictAfter) - severityOf(b.verdictAfter) || a.disturbance - b.disturbance
  const best = new Map<string, Remedy>()
  for (const remedy of [...remedies].sort(order)) {
    const key = `${remedy.round}|${remedy.edit.kind}`
    if (!best.has(key)) best.set(key, remedy)
  }
  return [...best.values()].slice(0, mostRemedies)
}
