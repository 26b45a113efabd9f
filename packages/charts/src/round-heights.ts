// How high every round of a laid-out piece lies over the table, and how far out.

import type { Motif } from "@roundwright/motif"
import { RoundwrightError, requireFinite, requirePositive } from "@roundwright/numerics"
import { type LaidOutShape, middle } from "@roundwright/relaxation"
import { requireSamePiece } from "./laid-out-piece.ts"

/** The height of one round over the table; the centre is told as round 0. */
export interface RoundHeight {
  readonly round: number
  /** Mean distance from the centre, as seen from above. */
  readonly distance: number
  readonly mean: number
  readonly lowest: number
  readonly highest: number
}

/** @throws RoundwrightError `needs-shape`, `not-finite`, `not-positive`, `shape-of-another-motif` */
export function heightsByRound(motif: Motif, shape: LaidOutShape): RoundHeight[] {
  const { net } = shape
  requireSamePiece(motif, net)
  const xyz = placesOnTable(shape)
  if (xyz === null)
    throw new RoundwrightError("needs-shape", "The piece was laid out flat only.", {
      hint: "Lay it out in space as well to see its profile.",
    })
  const unit = requirePositive(shape.mmPerUnit, "The length of a unit")
  for (const value of xyz) requireFinite(value, "A coordinate of the shape in space")
  const [cx, cy] = middle(net, xyz, 3)
  let lowest = Number.POSITIVE_INFINITY
  for (let k = 2; k < xyz.length; k += 3) lowest = Math.min(lowest, xyz[k]!)
  const measure = (round: number, nodes: readonly number[]): RoundHeight => {
    const height = nodes.map((node) => (xyz[3 * node + 2]! - lowest) / unit)
    const away = nodes.map((node) => Math.hypot(xyz[3 * node]! - cx, xyz[3 * node + 1]! - cy))
    return {
      round,
      distance: mean(away) / unit,
      mean: mean(height),
      lowest: Math.min(...height),
      highest: Math.max(...height),
    }
  }
  return [
    measure(0, net.centre),
    ...net.edges.map(({ nodes }, round) => measure(motif.rounds[round]!.number, nodes)),
  ]
}

/** Of a piece that lies flat, which need not be laid in space, its places pressed flat; null for one that does not and was not. */
function placesOnTable({ verdict, flat, space }: LaidOutShape): Float64Array | null {
  if (space !== null || verdict !== "flat") return space?.xyz ?? null
  return Float64Array.from({ length: (flat.xy.length / 2) * 3 }, (_, k) =>
    k % 3 === 2 ? 0 : flat.xy[2 * Math.floor(k / 3) + (k % 3)]!,
  )
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length
}
