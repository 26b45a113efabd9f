// From N stitches to M, evenly: what a border or a next part asks for. Increases are two in one place, decreases two places
// worked together, as far apart as they come.

import type { Anchor, Element, Motif } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import type { StitchKind } from "@roundwright/stitches"
import { feetOfRound } from "./feet.ts"

/**
 * The piece with a round of `kind` that has `count` stitches.
 * @throws RoundwrightError `no-rounds`, `bad-count` for a count below half or above three times that of the last round
 */
export function leadToCount(motif: Motif, kind: StitchKind, count: number): Motif {
  const places = feetOfRound(motif)
  const from = places.length
  if (from === 0)
    throw new RoundwrightError("no-rounds", "The motif has no round to start from.", {
      hint: "Give at least one round.",
    })
  if (!Number.isInteger(count) || 2 * count < from || count > mostTimes * from)
    throw new RoundwrightError(
      "bad-count",
      `${from} stitches cannot be led to ${count} in one round.`,
      {
        hint: `Give a whole number from ${Math.ceil(from / 2)} to ${mostTimes * from}, or take more rounds.`,
        numbers: { from, count },
      },
    )
  const elements = count >= from ? spreadOut(places, kind, count) : drawnIn(places, kind, count)
  const number = (motif.rounds.at(-1)?.number ?? 0) + 1
  return {
    ...motif,
    rounds: [...motif.rounds, { number, elements, turned: false, closing: "joined" }],
  }
}

/** More than three in one place is a shell. */
const mostTimes = 3

function spreadOut(places: readonly Anchor[], kind: StitchKind, count: number): Element[] {
  const n = places.length
  return places.flatMap((anchor, i): Element[] => {
    const own = Math.floor(((i + 1) * count) / n) - Math.floor((i * count) / n)
    return Array.from({ length: own }, () => ({ type: "stitch", kind, anchors: [anchor] }))
  })
}

function drawnIn(places: readonly Anchor[], kind: StitchKind, count: number): Element[] {
  const n = places.length
  return Array.from({ length: count }, (_, i): Element => {
    const first = Math.floor((i * n) / count)
    const next = Math.floor(((i + 1) * n) / count)
    const anchors = places.slice(first, next)
    const own: StitchKind =
      anchors.length > 1 ? { ...kind, gathered: { how: "together", legs: anchors.length } } : kind
    return { type: "stitch", kind: own, anchors }
  })
}
