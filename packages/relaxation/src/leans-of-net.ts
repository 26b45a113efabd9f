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
  const w = (leftMm + rightMm) / 2
  const reach = (along: number): number => {
    if (leg.bend === null) return acrossBand(circle, h, along, leg.leanMm)
    if (leg.bend.side !== 0) return acrossCorner(leg.bend, h, along, leg.leanMm)
    return acrossTip(leg.bend.turn, h, Math.sign(along) * w, leg.leanMm)
  }
  const [toLeft, toRight] = [reach(-leftMm), reach(rightMm)]
  // A lean by d changes the difference by 2 d w / sqrt(h^2 + w^2): scaled so that the energy is that of a sheet of
  // this area in shear, half G (d / h)^2.
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

/**
 * A leg that leans by so much more along its edge. The row stays as high as it was measured, so the leg grows longer
 * with it; legs that fan out of one place and keep their length lean to both sides, so only their middle counts.
 */
export function leaning(leg: Leg, byMm: number): Leg {
  const { leanMm, restMm, top } = leg
  const upright = restMm ** 2 - leanMm ** 2 >= (1 - sameHeight) * top.heightMm ** 2
  const own = upright ? 2 * leanMm * byMm : 0
  return { ...leg, leanMm: leanMm + byMm, restMm: Math.sqrt(restMm ** 2 + own + byMm ** 2) }
}

/** Heights nearer to one another than this share are the same but for rounding. */
const sameHeight = 1e-9

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

/** The same where the lower edge turns inward near the leg. */
function acrossCorner({ side, beforeMm, turn }: Bend, h: number, from: number, to: number): number {
  const at = side * from
  const past = Math.max(0, at - beforeMm)
  const x = Math.min(at, beforeMm) + past * Math.cos(turn)
  const y = -past * Math.sin(turn)
  return Math.hypot(side * to - x, h - y)
}

/** The same for a leg that stands on the tip itself: it points outward between both sides, `to` across that. */
function acrossTip(turn: number, h: number, from: number, to: number): number {
  const out = h / Math.cos(turn / 2) + Math.abs(from) * Math.sin(turn / 2)
  return Math.hypot(out, to - from * Math.cos(turn / 2))
}
