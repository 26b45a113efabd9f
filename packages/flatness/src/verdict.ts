// From fullness to a verdict: four words and the bands between them.

import type { Verdict } from "./result.ts"

/**
 * Departures of fullness from 1 that yarn takes up, and those that pinning out takes up.
 *
 * `flat`: the give of the fabric, 6 to 8 %; makers call pieces within about 7 % of their even count flat.
 * `blocksFull`: a surplus shows as light fullness at 14 to 20 % and refuses to lie flat at 33 %; the
 * middle of 20 and 33 is taken, rounded down.
 * `blocksLean`: a deficit of 14 to 20 % is a slight cup; a cup lifts with the root of the deficit
 * (depth / slant = sqrt(2 e)), so the middle of that span is taken and not its far end.
 * Source: reading of two published series of single crochet discs (six rounds, worsted, 3.75 mm; and
 * a spiral series). Those series fitted these bands and do not judge them.
 */
export const bands = { flat: 0.07, blocksFull: 0.25, blocksLean: 0.17 } as const

/** The verdict on one fullness (edge over flat edge). */
export function verdictOf(fullness: number): Verdict {
  if (fullness > 1 + bands.blocksFull) return "ruffles"
  if (fullness < 1 - bands.blocksLean) return "cups"
  return Math.abs(fullness - 1) <= bands.flat ? "flat" : "blocks-flat"
}

/** How far from flat a verdict is, for comparing: flat 0, blocks-flat 1, the others 2. */
export function severityOf(verdict: Verdict): number {
  return verdict === "flat" ? 0 : verdict === "blocks-flat" ? 1 : 2
}
