// The outline of a laid-out round: how far sides and corners reach, how bent the sides are. Lengths mm (of the net).

import type { RoundCorners } from "@roundwright/motif"
import { hullOf, type PlanePoint, polygonArea } from "./hull.ts"
import { usualGive } from "./material.ts"
import type { Net } from "./net.ts"
import { roundMisfits } from "./round-misfits.ts"

export interface Outline {
  /** Corners the outline is read with; 0 for a round one. */
  readonly corners: number
  /** Centre to edge: in the middle of a side and at a corner (means; equal for a round outline). */
  readonly sideReachMm: number
  readonly cornerReachMm: number
  /**
   * The size as a maker states it, of the piece patted or pinned into its figure: up to six corners, from side to side of
   * the regular polygon that holds as much as a band laid round the edge does (twice the reach of a side where no side
   * lies opposite); for anything rounder from tip to tip. Picots count.
   */
  readonly acrossMm: number
  /** How far the middle of a side lies outside (positive) the straight line between its corners. */
  readonly bowMm: number
  /** Mean inner angle between the sides at a corner, degrees; null for a round outline. */
  readonly cornerAngleDeg: number | null
}

/**
 * The outline of one round in the plane.
 * @param positions x, y (stride 2) or x, y, z (stride 3) of every node
 * @param corners what findCorners tells of that round
 */
export function measureOutline(
  net: Net,
  positions: Float64Array,
  stride: 2 | 3,
  round: number,
  corners: RoundCorners | undefined,
): Outline {
  const edge = net.edges[round]!
  const [cx, cy] = middle(net, positions, stride)
  const points = edge.nodes.map((node) => {
    const [x, y] = [positions[stride * node]! - cx, positions[stride * node + 1]! - cy]
    return { x, y, r: Math.hypot(x, y), angle: Math.atan2(y, x) }
  })
  const at =
    corners === undefined
      ? []
      : cornerNodes(
          net,
          round,
          corners,
          points.map((p) => p.r),
        )
  const acrossMm = sizeAcross(net, positions, stride, round, at.length)
  if (at.length < 3) return roundOutline(points, acrossMm)
  const sides = at.map((from, i) => sideBetween(points, from, at[(i + 1) % at.length]!))
  const cornerReachMm = mean(at.map((k) => points[k]!.r))
  const sideReachMm = mean(sides.map((side) => side.reach))
  return {
    corners: at.length,
    sideReachMm,
    cornerReachMm,
    acrossMm,
    bowMm: mean(sides.map((side) => side.bow)),
    cornerAngleDeg: mean(
      sides.map((side, i) =>
        angleBetween(sides[(i - 1 + sides.length) % sides.length]!.direction, side.direction),
      ),
    ),
  }
}

interface Planar {
  readonly x: number
  readonly y: number
  readonly r: number
  readonly angle: number
}

/** Polygons of more sides are measured like circles. */
const mostSides = 6

/**
 * From tip to tip of a round outline, picots and scallops included; across the polygon of the area that a band laid
 * round the outline holds, 2 sqrt(area / (k tan(pi / k))). What rounds too full have won by stretching their legs when
 * pressed into the plane is taken off again: on a table they rise instead.
 */
function sizeAcross(
  net: Net,
  positions: Float64Array,
  stride: 2 | 3,
  round: number,
  corners: number,
): number {
  const [cx, cy] = middle(net, positions, stride)
  const tips = net.edges[round]!.nodes.map((node): [number, number] => {
    const [x, y] = [positions[stride * node]! - cx, positions[stride * node + 1]! - cy]
    const r = Math.hypot(x, y)
    const out = r > 0 ? 1 + (net.nodes[node]!.picotMm ?? 0) / r : 1
    return [x * out, y * out]
  })
  const cornered = corners >= 3 && corners <= mostSides
  const across = cornered
    ? 2 * Math.sqrt(polygonArea(hullOf(tips)) / (corners * Math.tan(Math.PI / corners)))
    : 2 * outerReach(tips)
  if (stride === 3) return across
  const { slantMm, radiusMm } = roundMisfits(net, positions)[round]!
  const reach = slantMm - ringSurplus(net, positions)
  return across * Math.min(1, ((1 + usualGive) * reach) / radiusMm)
}

/** Parts of a turn in each of which the farthest node is taken: points and scallops are measured at their tips. */
const sectors = 12

/** Mean over the sectors of the farthest reach in each. */
function outerReach(points: readonly PlanePoint[]): number {
  const farthest = new Array<number>(sectors).fill(0)
  for (const [x, y] of points) {
    const part = Math.atan2(y, x) / (2 * Math.PI) + 1
    const sector = Math.floor((part % 1) * sectors) % sectors
    farthest[sector] = Math.max(farthest[sector]!, Math.hypot(x, y))
  }
  return mean(farthest.filter((r) => r > 0))
}

/** How much wider the ring at the centre lies than its chains are long, mm; 0 without one. */
function ringSurplus(net: Net, xy: Float64Array): number {
  if (net.centre.length < 2) return 0
  const [cx, cy] = middle(net, xy, 2)
  const lies = mean(
    net.centre.map((node) => Math.hypot(xy[2 * node]! - cx, xy[2 * node + 1]! - cy)),
  )
  const rest = net.springs.reduce((sum, { round, restMm }) => sum + (round < 0 ? restMm : 0), 0)
  return Math.max(0, lies - rest / (2 * Math.PI))
}

/** Without corners: mean reach as it lies. */
function roundOutline(points: readonly Planar[], acrossMm: number): Outline {
  const reach = mean(points.map((p) => p.r))
  return {
    corners: 0,
    sideReachMm: reach,
    cornerReachMm: reach,
    acrossMm,
    bowMm: 0,
    cornerAngleDeg: null,
  }
}

/** The farthest node of each corner group, as places in the edge, ascending; empty when it has no corners. */
export function cornerNodes(
  net: Net,
  round: number,
  corners: RoundCorners,
  reach: readonly number[],
): number[] {
  const edge = net.edges[round]!
  const elements = Math.max(...edge.elements) + 1
  const inGroup = (first: number, last: number): number[] =>
    edge.elements.flatMap((element, k) =>
      (element - first + elements) % elements <= (last - first + elements) % elements ? [k] : [],
    )
  const tips = corners.groups.map(({ first, last }) => {
    const nodes = inGroup(first, last)
    return nodes.reduce((best, k) => (reach[k]! > reach[best]! ? k : best), nodes[0]!)
  })
  if (tips.length === corners.count && tips.length >= 3) return tips.sort((a, b) => a - b)
  return corners.count >= 3 ? farthestNodes(reach, corners.count) : []
}

/** A round that only carries corners on: its k farthest nodes, one in each k-th of the round. */
function farthestNodes(reach: readonly number[], count: number): number[] {
  const n = reach.length
  const start = reach.indexOf(Math.max(...reach))
  const part = n / count
  return Array.from({ length: count }, (_, i) => {
    const centre = start + i * part
    let best = Math.round(centre) % n
    for (let k = Math.ceil(centre - part / 3); k <= centre + part / 3; k++) {
      const at = ((k % n) + n) % n
      if (reach[at]! > reach[best]!) best = at
    }
    return best
  }).sort((a, b) => a - b)
}

/** The side from one corner node to the next: reach and bow at its middle, its direction counterclockwise. */
function sideBetween(
  points: readonly Planar[],
  from: number,
  to: number,
): { reach: number; bow: number; direction: [number, number] } {
  const [a, b] = [tipAt(points, from), tipAt(points, to)]
  const chord = Math.hypot(b.x - a.x, b.y - a.y) || Number.MIN_VALUE
  const [ux, uy] = [(b.x - a.x) / chord, (b.y - a.y) / chord]
  // Outward normal of a side run through counterclockwise: to the right of its direction.
  const outside = (p: { x: number; y: number }): number => (p.x - a.x) * uy - (p.y - a.y) * ux
  const along = (p: { x: number; y: number }): number =>
    ((p.x - a.x) * ux + (p.y - a.y) * uy) / chord
  const n = points.length
  const between = range(0, (to - from + n) % n || n).map((k) => points[(from + k) % n]!)
  // The middle third, averaged, so that single stitches and loops do not decide.
  const third = between.filter((p) => Math.abs(along(p) - 0.5) <= 1 / 6 + 1e-9)
  const nearest = Math.min(...between.map((p) => Math.abs(along(p) - 0.5)))
  const middlePart =
    third.length > 0 ? third : between.filter((p) => Math.abs(along(p) - 0.5) <= nearest + 1e-9)
  const bow = mean(middlePart.map(outside))
  return { reach: bow - outside({ x: 0, y: 0 }), bow, direction: [ux, uy] }
}

/** A corner may end in two nodes that reach equally far: its tip is between them. */
export function tipAt(
  points: readonly { readonly x: number; readonly y: number; readonly r: number }[],
  k: number,
): { x: number; y: number } {
  const n = points.length
  const own = points[k]!
  const twins = [points[(k - 1 + n) % n]!, own, points[(k + 1) % n]!].filter(
    (p) => p.r >= own.r * (1 - sameReach),
  )
  return { x: mean(twins.map((p) => p.x)), y: mean(twins.map((p) => p.y)) }
}

/** Reaches that differ by less than this are the same but for the solver's tolerance. */
const sameReach = 1e-5

/** Inner angle, degrees, of a counterclockwise outline that turns from one direction to another. */
function angleBetween(before: readonly [number, number], after: readonly [number, number]): number {
  const turn = Math.atan2(
    before[0] * after[1] - before[1] * after[0],
    before[0] * after[0] + before[1] * after[1],
  )
  return 180 - (turn * 180) / Math.PI
}

/** Middle of the centre's nodes. */
export function middle(net: Net, positions: Float64Array, stride: 2 | 3): [number, number] {
  return [0, 1].map((k) => mean(net.centre.map((node) => positions[stride * node + k]!))) as [
    number,
    number,
  ]
}
function mean(values: readonly number[]): number {
  return values.length === 0 ? 0 : values.reduce((sum, value) => sum + value, 0) / values.length
}

function range(from: number, to: number): number[] {
  return Array.from({ length: Math.max(1, to - from + 1) }, (_, k) => from + k)
}
