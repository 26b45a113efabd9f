// The outline of a laid-out round: how far sides and corners reach, how bent the sides are. Lengths mm (of the net).

import type { RoundCorners } from "@roundwright/motif"
import { hullOf, type PlanePoint, polygonArea } from "./hull.ts"
import { usualGive } from "./material.ts"
import type { Net } from "./net.ts"
import { cornersOfOutline } from "./outline-corners.ts"
import { roundMisfits } from "./round-misfits.ts"

/**
 * Sizes are where a maker lays a ruler on the piece patted flat, over picots and scallops: along a side from corner to corner,
 * across the middle from side to side with the sides evened out, and from corner to corner through it.
 */
export interface Outline {
  /** Corners of the outline; 0 for a round one. */
  readonly corners: number
  /**
   * Centre to edge. To a side: evened out, as far as of the regular polygon that holds as much as a band laid round the edge
   * does (with more than six corners: in its middle). To a corner: mean of its corners. Equal for a round outline.
   */
  readonly sideReachMm: number
  readonly cornerReachMm: number
  /** Along the edge from corner to corner, straight; 0 for a round outline. */
  readonly sideMm: number
  /**
   * Through the middle from side to side: twice the side's reach; of odd corners from a side to the corner opposite. Of anything
   * rounder than six corners the widest, from tip to tip.
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
 * @param corners what findCorners tells of that round; where it finds none the outline itself is asked
 */
export function measureOutline(
  net: Net,
  positions: Float64Array,
  stride: 2 | 3,
  round: number,
  corners: RoundCorners | undefined,
): Outline {
  const points = tipsOf(net, positions, stride, round)
  const reach = points.map((p) => p.r)
  const told = corners === undefined ? [] : cornerNodes(net, round, corners, reach)
  const at = told.length >= 3 ? told : cornersOfOutline(points)
  const ease = stride === 2 ? easeOf(net, positions, round) : 1
  if (at.length < 3) return roundOutline(ease * outerReach(points))
  const sides = at.map((from, i) => sideBetween(points, from, at[(i + 1) % at.length]!))
  const cornerReachMm = ease * mean(at.map((k) => points[k]!.r))
  const sideReachMm =
    ease *
    (at.length > mostSides ? mean(sides.map((side) => side.reach)) : evenReach(points, at.length))
  return {
    corners: at.length,
    sideReachMm,
    cornerReachMm,
    sideMm: ease * mean(sides.map((side) => side.length)),
    acrossMm:
      at.length > mostSides
        ? 2 * ease * outerReach(points)
        : sideReachMm + (at.length % 2 === 0 ? sideReachMm : cornerReachMm),
    bowMm: ease * mean(sides.map((side) => side.bow)),
    cornerAngleDeg: mean(
      sides.map((side, i) =>
        angleBetween(sides[(i - 1 + sides.length) % sides.length]!.direction, side.direction),
      ),
    ),
  }
}

/** Nodes of an edge about the middle of the piece, out to the tips of their picots. */
function tipsOf(net: Net, positions: Float64Array, stride: 2 | 3, round: number): Planar[] {
  const [cx, cy] = middle(net, positions, stride)
  return net.edges[round]!.nodes.map((node) => {
    const [x, y] = [positions[stride * node]! - cx, positions[stride * node + 1]! - cy]
    const r = Math.hypot(x, y)
    const out = r > 0 ? 1 + (net.nodes[node]!.picotMm ?? 0) / r : 1
    return { x: x * out, y: y * out, r: r * out, angle: Math.atan2(y, x) }
  })
}

/**
 * What rounds too full have won by stretching their legs when pressed into the plane is taken off again, beyond the give: on
 * a table they rise instead.
 */
function easeOf(net: Net, xy: Float64Array, round: number): number {
  const { slantMm, radiusMm } = roundMisfits(net, xy)[round]!
  return Math.min(1, ((1 + usualGive) * slantMm) / radiusMm)
}

/** Polygons of more sides are measured like circles. */
const mostSides = 6

interface Planar {
  readonly x: number
  readonly y: number
  readonly r: number
  readonly angle: number
}

/** Centre to side of the regular polygon that holds as much as a band laid round the edge does, sqrt(area / (k tan(pi / k))). */
function evenReach(points: readonly Planar[], corners: number): number {
  const area = polygonArea(hullOf(points.map(({ x, y }): PlanePoint => [x, y])))
  return Math.sqrt(area / (corners * Math.tan(Math.PI / corners)))
}

/** Mean reach of the tips that a band laid round the edge touches, each weighed by the part of the turn it stands in. */
function outerReach(points: readonly Planar[]): number {
  const tips = hullOf(points.map(({ x, y }): PlanePoint => [x, y]))
  const angle = (k: number): number => {
    const [x, y] = tips[(k + tips.length) % tips.length]!
    return Math.atan2(y, x)
  }
  const turn = (from: number, to: number): number =>
    (((angle(to) - angle(from)) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI)
  if (tips.length < 3) return Math.max(0, ...points.map(({ r }) => r))
  const sum = tips.reduce(
    (all, [x, y], k) => all + (Math.hypot(x, y) * (turn(k - 1, k) + turn(k, k + 1))) / 2,
    0,
  )
  return sum / (2 * Math.PI)
}

/** Without corners: mean reach of its tips. */
function roundOutline(reach: number): Outline {
  return {
    corners: 0,
    sideReachMm: reach,
    cornerReachMm: reach,
    sideMm: 0,
    acrossMm: 2 * reach,
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

/** The side from one corner node to the next: length, reach and bow at its middle, its direction counterclockwise. */
function sideBetween(
  points: readonly Planar[],
  from: number,
  to: number,
): { length: number; reach: number; bow: number; direction: [number, number] } {
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
  return { length: chord, reach: bow - outside({ x: 0, y: 0 }), bow, direction: [ux, uy] }
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
