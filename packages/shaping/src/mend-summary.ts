// A change applied to a piece summed up in a few numbers a round, so that hundreds can be judged on the whole of it in
// some milliseconds; the best are then made to the piece itself (mend-motif.ts).

import type { ElementChange, PieceSummary, RoundSummary, StandingPart } from "@roundwright/flatness"
import { countRound, kindKey, type Round } from "@roundwright/motif"
import { type Gauge, type StitchKind, sizeOf } from "@roundwright/stitches"
import { mainKind } from "./mend-motif.ts"

/** What is needed of a round to change it: its main stitch and its count. */
export interface RoundFacts {
  /** True when every stitch of the round is the same plain one. */
  readonly uniform: boolean
  readonly kind: StitchKind
  readonly stitches: number
  readonly chains: number
  readonly turned: boolean
}

export function factsOf(round: Round): RoundFacts {
  const { byKind, stitches, chains } = countRound(round)
  const kind = mainKind(round)
  const uniform = byKind.length === 1 && kindKey(kind) === kindKey({ basic: kind.basic })
  return { kind, stitches, chains, turned: round.turned, uniform }
}

/** Changes that hold within the rounds there are. */
export type SummaryChange = Exclude<
  ElementChange,
  { readonly kind: "drop-round" | "add-round" | "group" | "terms" | "hand" | "leave" | "block" }
>

/** Changes that the piece summed up does not know. */
export function isOfThePiece(
  change: ElementChange,
): change is Exclude<ElementChange, SummaryChange | { kind: "hand" | "leave" | "block" }> {
  return (
    change.kind === "drop-round" ||
    change.kind === "add-round" ||
    change.kind === "group" ||
    change.kind === "terms"
  )
}

/**
 * The piece with round `index` changed.
 * count: the round, and all later ones unless they keep theirs, differ by the same number of stitches.
 * increase: from the round on, each round has so many stitches more than the one before.
 * stitch: only this round's height and width change. chains: only this round's runs of that length.
 * hook: sizes of this and all later rounds scale as `sizeFactor`.
 */
export function applyToSummary(
  piece: PieceSummary,
  index: number,
  change: SummaryChange,
  facts: readonly RoundFacts[],
  gauge: Gauge,
  sizeFactor = 1,
): PieceSummary {
  const follow = (round: RoundSummary, i: number): RoundSummary => {
    if (change.kind === "count" && change.keeps && i > index) return round
    if (change.kind === "count")
      return widen(round, facts[i]!, change.stitches - facts[index]!.stitches)
    if (change.kind === "increase") {
      const start = facts[index - 1]?.stitches ?? 0
      const wanted = start + change.perRound * (i - index + 1)
      return widen(round, facts[i]!, wanted - facts[i]!.stitches)
    }
    if (change.kind === "hook") return scale(round, sizeFactor)
    if (i > index) return round
    return change.kind === "stitch"
      ? restitch(round, facts[i]!, change.to, gauge)
      : rechain(round, change.from, change.to)
  }
  return {
    ...piece,
    rounds: piece.rounds.map((round, i) => (i < index ? round : follow(round, i))),
  }
}

function widen(round: RoundSummary, facts: RoundFacts, stitches: number): RoundSummary {
  const width = facts.stitches > 0 ? round.solidMm / facts.stitches : 0
  return { ...round, solidMm: Math.max(0, round.solidMm + stitches * width) }
}

function restitch(
  round: RoundSummary,
  facts: RoundFacts,
  to: StitchKind,
  gauge: Gauge,
): RoundSummary {
  const before = sizeOf(facts.kind, gauge, { turned: facts.turned })
  const after = sizeOf(to, gauge, { turned: facts.turned })
  const rise = after.heightMm - before.heightMm
  const lift = (part: StandingPart) => ({ ...part, heightMm: Math.max(0, part.heightMm + rise) })
  return {
    ...round,
    solidMm: (round.solidMm * after.widthMm) / before.widthMm,
    side: round.side.map(lift),
    corner: round.corner.map(lift),
  }
}

function rechain(round: RoundSummary, from: number, to: number): RoundSummary {
  return {
    ...round,
    runs: round.runs.map((run) => (run.chains === from ? { ...run, chains: to } : run)),
  }
}

function scale(round: RoundSummary, factor: number): RoundSummary {
  const stretch = (part: StandingPart) => ({ ...part, heightMm: part.heightMm * factor })
  return {
    ...round,
    solidMm: round.solidMm * factor,
    chainMm: round.chainMm * factor,
    fanSlackMm: round.fanSlackMm * factor,
    side: round.side.map(stretch),
    corner: round.corner.map(stretch),
  }
}
