// What can be told of a row: figures that mean something, and ranges where loops, scallops or corners leave the choice.

import type { LedgerRow } from "./result.ts"

/** A round that grows by less than this share of its edge, or inward, has no growth to hold against a flat one. */
const leastGrowth = 0.02
/** Beyond so many times flat growth a figure says only that the round hardly moves outward. */
const mostTold = 10

/**
 * Whether the round's growth says something: not where it hardly moves outward, nor where its edge is drawn in only because
 * its loops hang slack.
 */
export function tellsGrowth({ growthMm, flatGrowthMm, edgeMm, slackMm }: LedgerRow): boolean {
  return flatGrowthMm >= leastGrowth * edgeMm && !(growthMm < 0 && slackMm > 0)
}

/** The round's own fullness, growth over flat growth; null where that figure says nothing. */
export function ownFullness(row: LedgerRow): number | null {
  const { fullness } = row
  return tellsGrowth(row) && fullness >= 0 && fullness <= mostTold ? fullness : null
}

/** Bounds closer than this are one figure. */
const leastRange = 0.02

/**
 * Between what the piece so far may come to lie, where loops, scallops or corners leave that open and flat is among it;
 * null where it is one figure.
 */
export function openRange({
  accumulatedFullness,
  fullnessRange,
}: LedgerRow): readonly [number, number] | null {
  const [least, most] = fullnessRange
  const open = Math.abs(Math.log(Math.max(accumulatedFullness, 1e-3))) < leastRange
  return open && least < 1 && most > 1 && most - least > leastRange ? [least, most] : null
}
