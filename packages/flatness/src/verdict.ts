// From fullness to a verdict: four words and the bands between them.

import type { Verdict } from "./result.ts"

/**
 * Departures of fullness from 1 that the fabric takes up as it lies, and those that pinning out takes up.
 *
 * `flat`: twice the give of the fabric, 6 % (tops close up and posts stretch, half each), and a seventh of that which hands
 * pat out of a piece. Makers call pieces of up to 13 % off flat, and not flat from 20 % on.
 * `blocksFull`, `blocksLean`: a fifth too long, or a sixth too short, which is the same stretch: what pins and water take up.
 * Fitted on the outcomes of `flatness-outcomes.json` and the pieces of `measured-motifs.json`; these do not judge it.
 */
export const bands = { flat: 0.13, blocksFull: 0.2, blocksLean: 0.17 } as const

/** What plans and corrections aim at: half of what lies flat, so that the hand has the other half. */
export const planBand = 0.07

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
