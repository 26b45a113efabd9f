// What keeps legs from leaning: the difference of the distances from a top to either side of its base, as it
// is when the fabric lies at ease in its outline.

import type { RoundCorners } from "@roundwright/motif"
import type { Bend, Leg } from "./legs.ts"
import { type Lean, nodePoint } from "./net.ts"
import type { Ground } from "./places.ts"

export function leanOf(
  ground: Ground,
  corners: readonly RoundCorners[],
  round: number,
  leg: Leg,
): Lean[] {
  const { left, right, leftMm, rightMm } = leg.place
  if (left === null || right === null || left.nodes[0] === right.nodes[0]) return []
  const h = leg.top.heightMm
  const circle = roundBelow(ground, corners, leg.place.round)
  const reach = (along: number): number =>
    leg.bend === null
      ? acrossBand(circle, h, along, leg.leanMm)
      : acrossCorner(leg.bend, h, along, leg.leanMm)
  const [toLeft, toRight] = [reach(-leftMm), reach(rightMm)]
  // A lean by d changes the difference by 2 d w / sqrt(h^2 + w^2): scaled so that the energy is that of a sheet of
  // this area in shear, half G (d / h)^2.
  const w = (leftMm + rightMm) / 2
  const areaShare =
    (leg.top.widthMm * leg.top.heightMm * leg.share * (h * h + w * w)) / (4 * h * h * w * w)
  return [
    {
      top: nodePoint(ground.firstNode[round]! + leg.index),
      left,
      right,
      restMm: toLeft - toRight,
      areaShare,
      round,
      element: leg.top.element,
    },
  ]
}

/** Length of the edge a leg stands on if that is a closed round without corners; infinite for straight sides. */
function roundBelow(ground: Ground, corners: readonly RoundCorners[], round: number): number {
  if (round < 0) return ground.ring.lengthMm
  const edge = ground.edges[round]!
  return edge.closed && (corners[round]?.count ?? 0) === 0
    ? edge.lengthMm
    : Number.POSITIVE_INFINITY
}

/**
 * Distance across a band h deep from a point of its lower edge, `from` along it, to one of its upper edge, `to`
 * off square: in a flat ring whose lower edge is a circle of that length.
 */
function acrossBand(circle: number, h: number, from: number, to: number): number {
  if (!Number.isFinite(circle)) return Math.hypot(h, to - from)
  const low = circle / (2 * Math.PI)
  const high = low + h
  const angle = to / Math.sqrt(low * high) - from / low
  return Math.hypot(h, 2 * Math.sqrt(low * high) * Math.sin(angle / 2))
}

/** The same where the lower edge turns inward near the leg. On the tip both sides are alike. */
function acrossCorner({ side, beforeMm, turn }: Bend, h: number, from: number, to: number): number {
  if (side === 0) return h
  const at = side * from
  const past = Math.max(0, at - beforeMm)
  const x = Math.min(at, beforeMm) + past * Math.cos(turn)
  const y = -past * Math.sin(turn)
  return Math.hypot(side * to - x, h - y)
}
