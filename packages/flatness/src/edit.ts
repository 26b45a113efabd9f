// Applying a change to a summarised piece, so that a remedy is judged on the whole of it: the rounds
// worked later follow along.

import { type Gauge, type StitchKind, sizeOf } from "@roundwright/stitches"
import type { ElementChange } from "./change.ts"
import type { PieceSummary, RoundSummary, StandingPart } from "./summary.ts"

/** What is needed of a round to change it: its main stitch and its count. */
export interface RoundFacts {
  /** True when every stitch of the round is the same plain one. */
  readonly uniform: boolean
  readonly kind: StitchKind
  readonly stitches: number
  readonly turned: boolean
}

/**
 * The piece with round `index` changed.
 * count: the round and all later ones differ by the same number of stitches.
 * increase: from the round on, each round has so many stitches more than the one before.
 * stitch: only this round's height and width change. chains: only this round's runs of that length.
 * hook: sizes of this and all later rounds scale as `sizeFactor`.
 */
export function applyChange(
  piece: PieceSummary,
  index: number,
  change: ElementChange,
  facts: readonly RoundFacts[],
  gauge: Gauge,
  sizeFactor = 1,
): PieceSummary {
  const follow = (round: RoundSummary, i: number): RoundSummary => {
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
