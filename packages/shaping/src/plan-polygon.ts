// Polygons planned from the centre: how many stitches each corner takes in each round.

import { keepLedger, planBand, severityOf } from "@roundwright/flatness"
import type { Motif, Round } from "@roundwright/motif"
import type { Gauge, StitchKind } from "@roundwright/stitches"
import { flatIncrease } from "./flat-count.ts"
import { layOutAsChecked } from "./lay-out-as-checked.ts"
import { type CornerGroups, polygonRound } from "./polygon-round.ts"

/** Works a plan's rounds from the centre out: what comes next over what there is, of its stitch, by its flat count. */
export type PlanBuilder = (next: (below: Motif, kind: StitchKind, flat: number) => Round) => Motif

/**
 * The same group at every corner where that lies or blocks flat; else groups that follow the flat count, even ones or any,
 * whichever lie flatter. The ledger knows no rounded corner: the laid-out shape judges too.
 */
export function flattestPolygon(
  stitches: readonly StitchKind[],
  gauge: Gauge,
  corners: number,
  flatCounts: readonly number[],
  build: PlanBuilder,
): Motif {
  const steady = steadyCorner(stitches, gauge, corners)
  const work = (groups: CornerGroups) =>
    build((below, kind, flat) => polygonRound(below, kind, corners, flat, groups))
  const same = steady === null ? null : work({ steady })
  if (same && severityIn(same, gauge) <= blocksFlat) return same
  const [even, any] = [work({ step: 2 }), work({ step: 1 })]
  const [first, second] = [severityIn(even, gauge), severityIn(any, gauge)]
  if (first !== second) return first < second ? even : any
  return misfitOf(even, flatCounts) <= misfitOf(any, flatCounts) ? even : any
}

/** Mean departure of the counts from the flat ones. */
function misfitOf(motif: Motif, flatCounts: readonly number[]): number {
  const off = motif.rounds.map(({ elements }, i) => Math.abs(elements.length / flatCounts[i]! - 1))
  return off.reduce((sum, own) => sum + own, 0) / off.length
}

const blocksFlat = severityOf("blocks-flat")

/** The worse of what the ledger and the laid-out shape say. */
function severityIn(motif: Motif, gauge: Gauge): number {
  const ledger = severityOf(keepLedger(motif, gauge).verdict)
  const laid = layOutAsChecked(motif, gauge)
  return laid === null ? ledger : Math.max(ledger, severityOf(laid.verdict))
}

/**
 * Stitches more at each corner in every round, where the same number lies flat between the circle (rounded corners) and
 * the sharp polygon; the sharpest that does, an even one before an odd one. Null where none does: then rounds differ.
 */
function steadyCorner(
  stitches: readonly StitchKind[],
  gauge: Gauge,
  corners: number,
): number | null {
  if (stitches.length !== 1) return null
  const least = flatIncrease(stitches[0]!, gauge) * (1 - planBand)
  const most = flatIncrease(stitches[0]!, gauge, corners) * (1 + planBand)
  const sharpest = Math.floor(most / corners)
  const even = sharpest - (sharpest % 2)
  return [even, sharpest].find((each) => each > 0 && each * corners >= least) ?? null
}
