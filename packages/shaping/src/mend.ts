// What to change in a piece that fails: every small change anywhere in it is bounded on the piece summed up, the best
// are made to the piece itself and judged again whole, by the ledger or by the laid-out shape. Leaving it
// and blocking it are answers too.

import {
  foldLedger,
  judgePiece,
  type Ledger,
  type LedgerRow,
  ledgerOf,
  type PieceSummary,
  rhythmBreaks,
  severityOf,
  summarisePiece,
} from "@roundwright/flatness"
import { kindKey, type Motif, stitchesAndChains } from "@roundwright/motif"
import { layOut, type ShapeVerdict } from "@roundwright/relaxation"
import { type Gauge, hookFactor, type Terms } from "@roundwright/stitches"
import { asItIs } from "./mend-as-it-is.ts"
import { MendBudget, makingWork, weighingWork } from "./mend-budget.ts"
import { byTheNet } from "./mend-by-net.ts"
import { betterShapes, disturbanceWeight } from "./mend-by-shape.ts"
import { type Candidate, candidatesFor, nearestFirst } from "./mend-candidates.ts"
import { faultOf, misfitOf } from "./mend-fault.ts"
import { groupSizes } from "./mend-groups.ts"
import { handAsCause } from "./mend-hand.ts"
import { applyToMotif } from "./mend-motif.ts"
import { irregularityOf } from "./mend-pattern.ts"
import type { Mend } from "./mend-result.ts"
import { shapeWeight, slipCost, upheaval } from "./mend-slips.ts"
import { applyToSummary, factsOf, isOfThePiece, type RoundFacts } from "./mend-summary.ts"
import { type Bounded, byRank, type Outcome, type Ranked, varied } from "./mend-varied.ts"
import { describeChange, leftOutWords } from "./mend-words.ts"

export interface MendOptions {
  /** In whose names the changes are told; US when absent. */
  readonly terms?: Terms
  /** Who judges the best few: the ledger (milliseconds; the default) or the laid-out shape, as a check lays it (seconds). */
  readonly judge?: "ledger" | "net"
  /** The piece as it is, where it has been laid out already. */
  readonly shape?: ShapeVerdict
  /** How much may be done; of a piece too large for it the search tells what it left out. */
  readonly budget?: MendBudget
}

export interface Mends {
  /** Best first. */
  readonly mends: readonly Mend[]
  /** What the search left out of a piece too large for its budget, in a sentence; null where it went through. */
  readonly leftOut: string | null
}

/** Given up on reading further by a maker. */
const mostMends = 6
/** Stitches and chains of a piece on which every change is made. */
const mostForAll = 1500

/** Made to the piece itself and judged whole: enough to fill the list after what cannot be made falls away. */
const mostMade = 24

/** Of a piece that blocks flat this share of the misfit or less is left. */
const clearGain = 0.7

/** A change must take away this share of the fault to be worth naming. */
const leastGain = 0.1

/**
 * What to do about a piece, best first: leaving or blocking it where that is an answer, then changes by what the piece
 * becomes, how well it fits and how little of it is made again. Empty for a piece that is flat in every round, and
 * where no small change mends it.
 * @throws RoundwrightError `broken-motif`
 */
export function findMends(motif: Motif, gauge: Gauge, options: MendOptions = {}): Mend[] {
  return [...searchMends(motif, gauge, options).mends]
}

/** The same, with what was left out of a piece too large to go through. */
export function searchMends(motif: Motif, gauge: Gauge, options: MendOptions = {}): Mends {
  if (motif.rounds.length === 0) return { mends: [], leftOut: null }
  const piece = summarisePiece(motif, gauge)
  const grown = ledgerOf(motif, piece)
  const net = options.judge === "net"
  const shape = net ? (options.shape ?? layOut(motif, gauge, { inSpace: false })) : null
  const ledger = shape ? { ...grown, ...judgementOf(shape) } : grown
  const same = asItIs(motif, ledger, shape)
  const budget = options.budget ?? new MendBudget()
  const trial = new Trial(motif, gauge, piece, grown, budget, options.terms ?? "US")
  // A piece that lies flat needs no mending. Of one plain stitch throughout, where every round grows alike, a round that is
  // off is told all the same; elsewhere rounds may be full and lean on purpose.
  const off = trial.uniform && grown.rows.slice(1).some((row) => row.verdict !== "flat")
  if (ledger.verdict === "flat" && !off) return { mends: [], leftOut: null }
  const wanted = nearestFirst(candidatesFor(motif, trial.facts, ledger, gauge), motif, [
    ledger.fromRound,
    shape?.blockingRound,
  ])
  if (shape && grown.verdict === "flat" && ledger.verdict !== "flat") {
    const mends = inOrder(motif, same, oneWay(trial.byShape(wanted, shape), grown))
    return { mends, leftOut: budget.refused ? leftOutWords(motif, []) : null }
  }
  // Of a piece of usual size every change is made; of a large one those that look best on it summed up.
  const small = stitchesAndChains(motif) <= mostForAll
  const weighed = small ? wanted : wanted.slice(0, affordable(wanted, motif, budget))
  const bounded = small
    ? wanted.map(unweighed)
    : weighed.flatMap((candidate) => trial.bound(candidate)).sort(byRank)
  const made: Ranked[] = []
  for (const one of bounded) {
    if (!small && made.length === mostMade) break
    if (!budget.making.spend(makingWork(motif, one.index, one.change))) break
    made.push(...trial.make(one))
  }
  const ranked = varied(made.sort(byRank)).slice(0, mostMends)
  const judged = shape ? byTheNet(ranked, gauge, severityOf(shape.verdict)) : ranked
  // A piece that blocks flat was meant so, unless a change brings back its pattern or most of its shape.
  const local = judged.filter(({ pattern }) => pattern < 0)
  const clear = ({ pattern, mend }: Ranked) =>
    pattern < 0 || mend.misfit <= clearGain * misfitOf(grown.rows)
  const offered = ledger.verdict === "blocks-flat" ? judged.filter(clear) : judged
  const slips = oneWay(
    offered.map(({ mend }) => mend),
    grown,
  )
  const hand = handAsCause(motif, piece, grown.rows)
  const changes = [...slips.slice(0, mostMends - hand.length - same.length), ...hand]
  return {
    mends:
      local.length > 0 && ledger.verdict !== "flat"
        ? [...changes, ...same]
        : inOrder(motif, same, changes),
    leftOut: budget.refused ? leftOutWords(motif, weighed) : null,
  }
}

function unweighed(candidate: Candidate): Bounded {
  return { ...candidate, rank: 0, severity: 0, pattern: 0, outcome: { verdict: "flat", rows: [] } }
}

/** How many of the changes can be weighed. */
function affordable(candidates: readonly Candidate[], motif: Motif, { weighing }: MendBudget) {
  const costs = new Map<string, number>()
  const stop = candidates.findIndex(({ change }) => {
    const cost = costs.get(change.kind) ?? weighingWork(motif, change)
    costs.set(change.kind, cost)
    return !weighing.spend(cost)
  })
  return stop < 0 ? candidates.length : stop
}

function judgementOf({ verdict, fullness, fromRound, odds, rows }: ShapeVerdict) {
  return { verdict, fullness, fromRound, odds, rows }
}

/** Leaving the piece or blocking it comes first, but for one with a round out of its own rhythm: that is mended first. */
function inOrder(motif: Motif, same: readonly Mend[], changes: readonly Mend[]): Mend[] {
  const all = rhythmBreaks(motif).length > 0 ? [...changes, ...same] : [...same, ...changes]
  return all.slice(0, mostMends)
}

/**
 * Changes that all take the edge the same way, towards flat and not beyond it: two that point opposite ways help nobody, nor
 * does one after which the piece is off to the other side. Where some make it lie flat, those that do not are left out.
 */
function oneWay(mends: readonly Mend[], { fullness }: Ledger): Mend[] {
  const way = (mend: Mend): number => Math.sign(mend.fullnessAfter - fullness)
  const first = mends.find((mend) => way(mend) !== 0)
  const beyond = ({ fullnessAfter, verdictAfter }: Mend) =>
    verdictAfter !== "flat" && fullnessAfter > 1 !== fullness > 1
  const along = mends.filter(
    (mend) => !beyond(mend) && (way(mend) === 0 || way(mend) === way(first!)),
  )
  const flat = along.filter(({ verdictAfter }) => verdictAfter === "flat")
  return flat.length > 0 ? flat : along
}

/** A piece on which changes are tried. */
class Trial {
  readonly facts: readonly RoundFacts[]
  readonly #pattern: number
  readonly #before: { readonly severity: number; readonly fault: number }

  constructor(
    readonly motif: Motif,
    readonly gauge: Gauge,
    readonly piece: PieceSummary,
    ledger: Ledger,
    readonly budget: MendBudget,
    readonly terms: Terms,
  ) {
    this.facts = motif.rounds.map(factsOf)
    this.#pattern = irregularityOf(motif)
    this.#before = {
      severity: severityOf(ledger.verdict),
      fault: this.#fault(motif, ledger.rows),
    }
  }

  /** All of one kind of stitch, without chains. */
  get uniform(): boolean {
    const [first] = this.facts
    return this.facts.every(
      ({ uniform, chains, kind }) =>
        uniform && chains === 0 && kindKey(kind) === kindKey(first!.kind),
    )
  }

  /** The change judged on the piece summed up; nothing where it does not help. */
  bound(candidate: Candidate): Bounded[] {
    const { index, change } = candidate
    if (isOfThePiece(change)) {
      const motif = applyToMotif(this.motif, index, change)
      if (!motif) return []
      const outcome = judged(motif, this.gauge)
      return this.#ranked(candidate, outcome, this.#fault(motif, outcome.rows))
    }
    if (change.kind === "leave" || change.kind === "block" || change.kind === "hand") return []
    const factor = change.kind === "hook" ? sizesWithHook(this.gauge, change.toMm) : 1
    const piece = applyToSummary(this.piece, index, change, this.facts, this.gauge, factor)
    const rows = foldLedger(piece)
    const { verdict } = judgePiece(rows, piece)
    const kinds = new Set(this.facts.map(({ kind }) => kindKey(kind)))
    const uniform =
      this.facts.every((own) => own.uniform) && kinds.size === 1 && change.kind !== "stitch"
    const fault = faultOf({ rows, uniform, counts: this.#countsAfter(candidate) })
    return this.#ranked(candidate, { verdict, rows }, fault)
  }

  /** The change made to the piece itself; nothing where it cannot be, or does not help after all. */
  make(bounded: Bounded): Ranked[] {
    const { index, change } = bounded
    if (change.kind === "hook")
      return (bounded.outcome.rows.length > 0 ? [bounded] : this.bound(bounded)).map((weighed) =>
        this.#mendOf(weighed, null, weighed.outcome),
      )
    const motif = applyToMotif(this.motif, index, change)
    if (!motif) return []
    const outcome = judged(motif, this.gauge)
    const fault = this.#fault(motif, outcome.rows)
    const pattern = irregularityOf(motif) - this.#pattern
    return this.#ranked(bounded, outcome, fault, pattern).map((again) =>
      this.#mendOf(again, motif, outcome),
    )
  }

  /** Where the ledger sees nothing amiss: what the laid-out shape itself shows to help. */
  byShape(candidates: readonly Candidate[], before: ShapeVerdict): Mend[] {
    const pieces = candidates.flatMap((candidate) => {
      const { index, change } = candidate
      const own =
        change.kind === "count" ||
        change.kind === "chains" ||
        change.kind === "stitch" ||
        change.kind === "group"
      if (!own || !this.budget.weighing.spend(this.motif.rounds.length)) return []
      const make = () =>
        this.budget.making.spend(makingWork(this.motif, index, change))
          ? applyToMotif(this.motif, index, change)
          : null
      const { number: round } = this.motif.rounds[index]!
      return [{ of: candidate, make, round, disturbance: this.#disturbance(candidate) }]
    })
    return betterShapes(pieces, this.gauge, before).map(({ of, motif, verdict, fullness }) => {
      const outcome = { verdict, rows: judged(motif, this.gauge).rows }
      const ranked = { ...of, outcome, rank: 0, pattern: 0, severity: severityOf(verdict) }
      const { mend } = this.#mendOf(ranked, motif, outcome)
      return { ...mend, fullnessAfter: fullness, judgedBy: "net" as const }
    })
  }

  /** @param pattern how much farther from its own pattern the piece is than before; negative where nearer */
  #ranked(candidate: Candidate, outcome: Outcome, fault: number, pattern = 0): Bounded[] {
    const { severity: before, fault: worst } = this.#before
    const severity = severityOf(outcome.verdict)
    if (before > 0 ? severity >= before : severity > 0) return []
    // What lies flat is changed only towards its own pattern.
    if (before === 0 && pattern > 0) return []
    // From off to flat is a gain, whatever is left within the give.
    const settles = before > 1 && severity === 0
    if (!settles && fault > (pattern < 0 ? 1 : 1 - leastGain) * worst) return []
    const rank =
      shapeWeight * fault +
      pattern +
      upheaval(candidate.change, this.terms) +
      slipCost(candidate.change, candidate.index, this.facts) +
      disturbanceWeight * this.#disturbance(candidate)
    return [{ ...candidate, outcome, rank, severity, pattern }]
  }

  #mendOf(bounded: Bounded, motif: Motif | null, { verdict, rows }: Outcome): Ranked {
    const { index, change, rank, severity, pattern } = bounded
    const mend: Mend = {
      kind: change.kind,
      round: this.motif.rounds[index]!.number,
      change: describeChange(this.motif, index, change, this.facts, this.terms),
      motif,
      edit: change,
      verdictAfter: verdict,
      judgedBy: "ledger",
      fullnessAfter: rows.at(-1)!.accumulatedFullness,
      misfit: misfitOf(rows),
      disturbance: this.#disturbance(bounded),
    }
    return { mend, rank, severity, pattern }
  }

  #fault(motif: Motif, rows: readonly LedgerRow[]): number {
    const facts = motif.rounds.map(factsOf)
    const kinds = new Set(facts.map(({ kind }) => kindKey(kind)))
    return faultOf({
      rows,
      counts: facts.map(({ stitches, chains }) => stitches + chains),
      uniform: kinds.size === 1 && facts.every((own) => own.uniform),
    })
  }

  #countsAfter({ index, change }: Candidate): number[] {
    const { facts } = this
    return facts.map(({ stitches, chains }, i) => {
      const own = stitches + chains
      if (i < index) return own
      if (change.kind === "count")
        return change.keeps && i > index ? own : own + change.stitches - facts[index]!.stitches
      if (change.kind !== "increase") return own
      const start = facts[index - 1]?.stitches ?? 0
      return start + change.perRound * (i - index + 1) + chains
    })
  }

  /** Share of the piece's stitches that are made otherwise or made again. */
  #disturbance({ index, change }: Candidate): number {
    const stitches = this.facts.map((own) => own.stitches + own.chains)
    const sum = (from: number) => stitches.slice(from).reduce((total, own) => total + own, 0)
    const from = change.kind === "add-round" ? index + 1 : index
    return (sum(from) + this.#altered(index, change)) / Math.max(1, sum(0))
  }

  /** Stitches that are made otherwise than the pattern says; those that only follow along are not counted. */
  #altered(index: number, change: Candidate["change"]): number {
    const own = this.facts[index]!
    switch (change.kind) {
      case "count":
        return (change.keeps ? 2 : 1) * Math.abs(change.stitches - own.stitches)
      case "increase":
        return this.#countsAfter({ index, change }).reduce(
          (sum, count, i) =>
            sum + Math.abs(count - this.facts[i]!.stitches - this.facts[i]!.chains),
          0,
        )
      case "chains":
        return (
          Math.abs(change.to - change.from) *
          this.motif.rounds[index]!.elements.filter(
            (element) => element.type === "chain" && element.chains === change.from,
          ).length
        )
      case "hook":
      case "terms":
        return 0
      case "group": {
        const groups = groupSizes(this.motif.rounds[index]!).get(change.from) ?? 0
        return Math.abs(change.to - change.from) * groups
      }
      default:
        return own.stitches
    }
  }
}

/** Verdict and rows of the ledger; the odds beside them are told of the piece as it is alone. */
function judged(motif: Motif, gauge: Gauge): Outcome {
  const piece = summarisePiece(motif, gauge)
  const rows = foldLedger(piece)
  return { verdict: judgePiece(rows, piece).verdict, rows }
}

/** Sizes with another hook over sizes with the gauge's own; 1 where it names none. */
function sizesWithHook({ input }: Gauge, toMm: number): number {
  return input.hookMm === undefined ? 1 : hookFactor(input, input.hookMm, toMm)
}
