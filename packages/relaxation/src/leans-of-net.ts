// What keeps fabric from being sheared, as it is when it lies at ease in its outline. Between two neighbouring legs on
// neighbouring nodes: the difference of the diagonals of the panel. On any other side of a leg: the difference of the
// distances from its top to either side of its base, with half the strength for each side that has no panel. Held by
// leans alone an edge too long would lie in zigzags, every other stitch higher, which no lean sees.

import type { RoundCorners } from "@roundwright/motif"
import type { Bend, Leg } from "./legs.ts"
import { type Lean, nodePoint, type Panel, samePoint } from "./net.ts"
import { type Ground, neighbour } from "./places.ts"

/** Leans and panels of one round's legs. */
export function shearOf(
  ground: Ground,
  corners: readonly RoundCorners[],
  round: number,
  legs: readonly Leg[],
): { leans: Lean[]; panels: Panel[] } {
  const panels: Panel[] = []
  const sides = new Map<Leg, number>()
  for (const [leg, next] of neighboursOnNeighbours(ground, round, legs)) {
    panels.push(panelBetween(ground, corners, round, leg, next))
    sides.set(leg, (sides.get(leg) ?? 0) + 1)
    sides.set(next, (sides.get(next) ?? 0) + 1)
  }
  const leans = legs.flatMap((leg) => leanOf(ground, corners, round, leg, sides.get(leg) ?? 0))
  return { leans, panels }
}

/** @param panels how many sides of the leg are held by panels */
function leanOf(
  ground: Ground,
  corners: readonly RoundCorners[],
  round: number,
  leg: Leg,
  panels: number,
): Lean[] {
  const { left, right, leftMm, rightMm } = leg.place
  if (left === null || right === null || left.nodes[0] === right.nodes[0]) return []
  const { toLeft, toRight } = distances(ground, corners, leg)
  return [
    {
      top: nodePoint(ground.firstNode[round]! + leg.index),
      left,
      right,
      restMm: toLeft - toRight,
      areaShare:
        (1 - panels / 2) * shareInShear(areaOf(leg), leg.top.heightMm, (leftMm + rightMm) / 2),
      round,
      element: leg.top.element,
    },
  ]
}

function panelBetween(
  ground: Ground,
  corners: readonly RoundCorners[],
  round: number,
  leg: Leg,
  next: Leg,
): Panel {
  const { toRight } = distances(ground, corners, leg)
  const { toLeft } = distances(ground, corners, next)
  const top = (of: Leg) => nodePoint(ground.firstNode[round]! + of.index)
  return {
    points: [top(leg), next.place.point, top(next), leg.place.point],
    restMm: toRight - toLeft,
    areaShare: shareInShear(
      (areaOf(leg) + areaOf(next)) / 2,
      (leg.top.heightMm + next.top.heightMm) / 2,
      leg.place.rightMm,
    ),
  }
}

/** Pairs of legs side by side, each alone under its top, that stand on nodes of the edge below side by side. */
function neighboursOnNeighbours(ground: Ground, round: number, legs: readonly Leg[]): [Leg, Leg][] {
  const edge = ground.edges[round]!
  const legsAt = new Map<number, Leg[]>()
  for (const leg of legs) legsAt.set(leg.index, [...(legsAt.get(leg.index) ?? []), leg])
  const alone = (index: number | null): Leg | null => {
    const here = index === null ? undefined : legsAt.get(index)
    const leg = here?.length === 1 ? here[0]! : null
    return leg !== null && leg.place.round >= 0 && leg.place.point.nodes.length === 1 ? leg : null
  }
  return edge.nodes.flatMap((_, k): [Leg, Leg][] => {
    const [leg, next] = [alone(k), alone(neighbour(edge, k, 1))]
    if (leg === null || next === null || leg === next) return []
    const beside = leg.place.right
    return leg.place.round === next.place.round &&
      beside !== null &&
      samePoint(beside, next.place.point)
      ? [[leg, next]]
      : []
  })
}

function areaOf(leg: Leg): number {
  return leg.top.widthMm * leg.top.heightMm * leg.share
}

/**
 * A lean by d changes the difference by 2 d w / sqrt(h^2 + w^2): scaled so that the energy is that of a sheet of this area
 * in shear, half G (d / h)^2.
 */
function shareInShear(area: number, h: number, w: number): number {
  return (area * (h * h + w * w)) / (4 * h * h * w * w)
}

/** From the top of a leg to either side of its base, mm, the fabric at ease. */
function distances(
  ground: Ground,
  corners: readonly RoundCorners[],
  leg: Leg,
): { toLeft: number; toRight: number } {
  const { leftMm, rightMm } = leg.place
  const h = leg.top.heightMm
  const circle = roundBelow(ground, corners, leg.place.round)
  const w = (leftMm + rightMm) / 2
  const reach = (along: number): number => {
    if (leg.bend === null) return acrossBand(circle, h, along, leg.leanMm)
    if (leg.bend.side !== 0) return acrossCorner(leg.bend, h, along, leg.leanMm)
    return acrossTip(leg.bend.turn, h, Math.sign(along) * w, leg.leanMm)
  }
  return { toLeft: reach(-leftMm), toRight: reach(rightMm) }
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
