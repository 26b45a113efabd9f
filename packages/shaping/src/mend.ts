// Remedies grown up: every small change is made to the piece itself and the whole piece is judged again, by the
// ledger for all and by the laid-out shape for the best. Leaving it and blocking it are answers too.

import { bands, keepLedger, type Ledger, severityOf, type Verdict } from "@roundwright/flatness"
import { countRound, kindKey, type Motif } from "@roundwright/motif"
import { blockableStretch, layOut } from "@roundwright/relaxation"
import type { Gauge } from "@roundwright/stitches"
import type { MendChange } from "./mend-change.ts"
import { changesOf } from "./mend-changes.ts"

export interface Mend {
  readonly kind: MendChange["kind"] | "leave" | "block"
  /** Printed number of the round to change; for `leave`, the round by which it has worked itself out. */
  readonly round: number
  /** The change in words, ready to print. */
  readonly change: string
  /** The changed piece; the piece itself for `leave` and `block`. */
  readonly motif: Motif
  /** Stitches of the changed round, for counts. */
  readonly count: number | null
  /** By the laid-out shape (flat), where it was laid out; else by the ledger. */
  readonly verdictAfter: Verdict
  readonly judgedBy: "net" | "ledger"
  /** Edge over flat edge of the last round. */
  readonly fullnessAfter: number
  /** Root mean square departure from flat over all rounds and over each round alone. */
  readonly misfit: number
  /** Share of the piece's stitches that are made otherwise or made again. */
  readonly disturbance: number
}

/** Given up on reading further by a maker. */
const mostMends = 6
/** Laid out as a net: the best few by the ledger. */
const mostLaidOut = 8
/** A change must take away this share of the misfit to be worth naming. */
const leastGain = 0.1
/** Working all of the piece anew counts like this much misfit: half the give of the yarn. */
const disturbanceWeight = 0.035
/** Weight of uneven growth against misfit. */
const unevenWeight = 0.5
/** A second kind of stitch brought in counts like one round's growth missed by the give of the yarn. */
const mixedKinds = bands.flat

/**
 * What to do about a piece, best first; empty when it lies flat throughout.
 * @throws RoundwrightError `broken-motif`
 */
export function findMends(motif: Motif, gauge: Gauge): Mend[] {
  const ledger = keepLedger(motif, gauge)
  const before = faultOf(motif, ledger)
  const off = ledger.rows.slice(1).some((row) => row.verdict !== "flat")
  if (ledger.verdict === "flat" && !off) return []
  const total = motif.rounds.reduce((sum, round) => sum + round.elements.length, 0)
  const tried = changesOf(motif).flatMap((change): { mend: Mend; rank: number }[] => {
    const after = keepLedger(change.motif, gauge)
    const fault = faultOf(change.motif, after)
    if (severityOf(after.verdict) > severityOf(ledger.verdict)) return []
    if (fault > (1 - leastGain) * before) return []
    const redone = motif.rounds
      .slice(change.round)
      .reduce((sum, round) => sum + round.elements.length, 0)
    const disturbance = (redone + change.altered) / total
    const mend: Mend = {
      kind: change.kind,
      round: motif.rounds[change.round]?.number ?? change.motif.rounds.at(-1)!.number,
      change: change.words,
      motif: change.motif,
      count: change.count,
      verdictAfter: after.verdict,
      judgedBy: "ledger",
      fullnessAfter: after.rows.at(-1)!.accumulatedFullness,
      misfit: misfitOf(after),
      disturbance,
    }
    return [{ mend, rank: fault + disturbanceWeight * disturbance }]
  })
  tried.sort((a, b) => a.rank - b.rank)
  const shown = tried.slice(0, mostLaidOut).map(({ mend, rank }) => ({
    mend: layOutMend(mend, gauge),
    rank,
  }))
  shown.sort(
    (a, b) => severityOf(a.mend.verdictAfter) - severityOf(b.mend.verdictAfter) || a.rank - b.rank,
  )
  const found = varied(distinct(shown.map(({ mend }) => mend)))
  return [...asItIs(motif, gauge, ledger), ...found].slice(0, mostMends)
}

/** Leaving it, or blocking it, where that is an answer. */
function asItIs(motif: Motif, gauge: Gauge, ledger: Ledger): Mend[] {
  const last = ledger.rows.at(-1)!
  const shape = layOut(motif, gauge, { inSpace: false })
  const same = {
    motif,
    count: null,
    judgedBy: "net" as const,
    fullnessAfter: last.accumulatedFullness,
    misfit: misfitOf(ledger),
    disturbance: 0,
  }
  const settled = worksOutBy(ledger)
  if (last.verdict === "flat" && settled !== null && shape.blockingStretch <= blockableStretch)
    return [
      {
        ...same,
        kind: "leave",
        round: settled.by,
        change: `Leave it: what is off in round ${settled.from} works itself out by round ${settled.by}.`,
        verdictAfter: shape.verdict,
      },
    ]
  if (ledger.verdict === "blocks-flat" || shape.verdict === "blocks-flat") {
    if (shape.blockingStretch > blockableStretch) return []
    return [
      {
        ...same,
        kind: "block",
        round: shape.blockingRound,
        change: `Leave it and block it: pinned out it takes a stretch of ${Math.round(100 * shape.blockingStretch)} % in round ${shape.blockingRound}.`,
        verdictAfter: "blocks-flat",
      },
    ]
  }
  return []
}

/**
 * The round off worst and the round by which the edge has come back to flat for good; null when it never
 * leaves flat or never comes back. Round 1 is passed over: a few stitches round a hole.
 */
export function worksOutBy(ledger: Ledger): { from: number; by: number } | null {
  const rows = ledger.rows.slice(1)
  const lastOff = rows.findLastIndex((row) => row.verdict !== "flat")
  if (lastOff < 0 || lastOff === rows.length - 1) return null
  const worst = rows.reduce((a, b) =>
    Math.abs(Math.log(b.accumulatedFullness)) > Math.abs(Math.log(a.accumulatedFullness)) ? b : a,
  )
  return { from: worst.round, by: rows[lastOff + 1]!.round }
}

/** Both the edge against the flat edge and each round's growth against its own: one tells where it is, one where it went wrong. */
export function misfitOf(ledger: Ledger): number {
  const rows = ledger.rows
  let edge = 0
  let growth = 0
  for (const row of rows) {
    edge += beyondGive(Math.log(Math.max(row.accumulatedFullness, 1e-3))) ** 2
    growth += (row.growthMm - row.flatGrowthMm) ** 2 / Math.max(row.edgeMm, 1e-9) ** 2
  }
  return Math.sqrt(edge / rows.length) + Math.sqrt(growth / rows.length)
}

/**
 * A plan that grows evenly is likelier to be meant than one that does not, at the same misfit: half the mean
 * change of the increase from round to round, as a share of the mean count.
 */
function faultOf(motif: Motif, ledger: Ledger): number {
  const counts = motif.rounds.map((round) => {
    const { stitches, chains } = countRound(round)
    return stitches + chains
  })
  let turns = 0
  let sum = 0
  counts.forEach((count, i) => {
    sum += count
    if (i > 0 && i + 1 < counts.length)
      turns += Math.abs(counts[i + 1]! - 2 * count + counts[i - 1]!)
  })
  const kinds = new Set(
    motif.rounds.flatMap((round) => countRound(round).byKind.map(({ kind }) => kindKey(kind))),
  )
  // Where stitches of several heights follow one another, even growth means nothing.
  return misfitOf(ledger) + (kinds.size === 1 ? (unevenWeight * turns) / sum : mixedKinds)
}

/** Departures within the give of the yarn count a quarter: they are no fault, but nearer to flat is nearer. */
function beyondGive(off: number): number {
  const size = Math.abs(off)
  return size <= bands.flat ? size / 4 : size - (3 / 4) * bands.flat
}

function layOutMend(mend: Mend, gauge: Gauge): Mend {
  const shape = layOut(mend.motif, gauge, { inSpace: false })
  return { ...mend, verdictAfter: shape.verdict, judgedBy: "net" }
}

/** Another stitch for one of several rounds is one idea: its best round stands in its place, the others come last. */
function varied(mends: readonly Mend[]): Mend[] {
  const first = mends.find(({ kind }) => kind === "stitch")
  const later = mends.filter((mend) => mend.kind === "stitch" && mend !== first)
  return [...mends.filter((mend) => !later.includes(mend)), ...later]
}

/** No change twice. */
function distinct(mends: readonly Mend[]): Mend[] {
  const seen = new Set<string>()
  return mends.filter(({ kind, round, count, change }) => {
    const key = `${kind}|${round}|${count}|${change}`
    return seen.has(key) ? false : seen.add(key)
  })
}
