// The size of one chain, and of a picot made of some.

import { RoundwrightError } from "@roundwright/numerics"
import type { Gauge, Provenance } from "./gauge.ts"

/**
 * Length of one chain along the edge over the width of one stitch. Printed pairs from the same piece give 0.94 (9 ch against
 * 8.5 hdc an inch) and 1.00 (18 and 18 an inch) for a chain laid straight; in the loops of lace it lies in waves, and filet
 * grids (see `besideChainShare`) ask for about 0.8. Between the two.
 */
export const chainLengthInStitches = 0.9

export interface ChainSize {
  /** Length along the edge, mm (or sc widths). */
  readonly lengthMm: number
  readonly provenance: Provenance
  readonly note: string
}

/** What one chain measures along the edge when it lies drawn straight but not stretched. */
export function chainSize(gauge: Gauge): ChainSize {
  return {
    lengthMm: gauge.scWidthMm * chainLengthInStitches,
    provenance: "published median",
    note: "A chain is taken 0.9 of a stitch's width long: between printed pairs (0.94 and 1.00) and filet grids (0.8).",
  }
}

/** A chain is about twice as long as its yarn is thick (assumed); on a run of chains nothing comes to lie lower than that. */
export function chainThickness(chainMm: number): number {
  return chainMm / 2
}

export interface PicotSize {
  /** How far the loop stands out from the edge, mm (or sc widths). */
  readonly heightMm: number
  /** Its breadth in the plane; it stands on one top and adds nothing to the edge. */
  readonly widthMm: number
  readonly note: string
}

/**
 * A picot of so many chains as the round loop they close to: both sizes are chains x length / pi.
 * @throws RoundwrightError `bad-picot` when `chains` is not a whole number above zero
 */
export function picotSize(chains: number, gauge: Gauge): PicotSize {
  if (!Number.isInteger(chains) || chains < 1) {
    throw new RoundwrightError("bad-picot", `A picot cannot have ${chains} chains.`, {
      hint: "Give a whole number of chains above zero; 3 and 4 are usual.",
      numbers: { chains },
    })
  }
  const across = (chains * chainSize(gauge).lengthMm) / Math.PI
  return {
    heightMm: across,
    widthMm: across,
    note: "Not measured: the chains of the picot taken as the rim of a round loop.",
  }
}
