// What the lengths of each round of a flat shape ask for: how long its edge is against the way it would have to take if
// nothing below were strained. Its legs are drawn to their rest lengths, from the centre out, in the directions in which they
// lie; the way from top to top is then held against the tops and chains of the round.

import { slackFeetChains } from "@roundwright/flatness"
import type { Net, NetEdge, Point, Spring } from "./net.ts"

/** What the rounds' lengths ask for, from the centre out. */
export interface RoundMisfit {
  /** Mean distance from the centre in the flat shape, and along the fabric with posts at ease, mm. */
  readonly radiusMm: number
  readonly slantMm: number
  /** Edge at ease over the edge this outline has at that slant: below 1 cups, above 1 ruffles. */
  readonly fullness: number
  /** The same if no scallop of the round opened; equal to it where there are none. */
  readonly heldFullness: number
}

/**
 * What the lengths of each round ask for. Its tops lie at a distance from the centre; with every leg drawn to its rest
 * length, upright against the turn of the whole round (a round too short swirls when pressed flat, and hides in it what
 * it lacks), they would lie at the slant. The outline as it lies, drawn to that slant, is what the edge is held against.
 * Chains that hang slack may be as long as they lie or drawn out: where that spans the need nothing is off.
 * @param give strain that tops and posts take up for free: only what goes beyond it asks for a way out
 */
export function roundMisfits(net: Net, xy: Float64Array, give = 0): RoundMisfit[] {
  const legs = net.edges.map((): Spring[] => [])
  for (const spring of net.springs) if (spring.role === "post") legs[spring.round]!.push(spring)
  const [cx, cy] = middleOf(net, xy)
  const holeMm =
    net.springs.reduce((sum, { round, restMm }) => sum + (round < 0 ? restMm : 0), 0) /
    (2 * Math.PI)
  const grown: number[] = []
  const chords = net.edges.map((edge) => chordRadii(net, edge, xy, cx, cy))
  /** Where the foot of a leg stands with everything below drawn to rest; a loop lies straight at least. */
  const footAtEase = (leg: Spring, foot: Spot): Spot => {
    const on = net.nodes[leg.from.nodes[0]!]!.round
    const r = Math.hypot(...foot)
    if (r < 1e-9) return foot
    if (on < 0) return [(foot[0] * holeMm) / r, (foot[1] * holeMm) / r]
    let far = 0
    let chord = 0
    leg.from.nodes.forEach((node, k) => {
      const at = Math.hypot(xy[2 * node]! - cx, xy[2 * node + 1]! - cy)
      far += leg.from.weights[k]! * at
      chord += leg.from.weights[k]! * Math.max(at, chords[on]!.get(node) ?? 0)
    })
    const by = ((grown[on] ?? grown.at(-1) ?? 1) * chord) / Math.max(far, 1e-9)
    return [foot[0] * by, foot[1] * by]
  }
  return net.edges.map((edge, round) => {
    const turn = meanLean(legs[round]!, xy, cx, cy)
    let [top, slant, weight] = [0, 0, 0]
    const ease = new Map<number, { x: number; y: number; w: number }>()
    const roundOf = (leg: Spring): number => net.nodes[leg.from.nodes[0]!]!.round
    const highest = legs[round]!.reduce((most, leg) => Math.max(most, roundOf(leg)), -1)
    for (const leg of legs[round]!) {
      // A leg drawn up from further down is as long as it is made.
      if (roundOf(leg) < highest || net.nodes[leg.to.nodes[0]!]!.free) continue
      const w = leg.areaMm2 / leg.restMm
      const foot = pointAt(leg.from, xy, cx, cy)
      const tip = pointAt(leg.to, xy, cx, cy)
      const base = footAtEase(leg, foot)
      const [ux, uy] = upright(foot, tip, leg.restMm, turn)
      const [x, y] = [base[0] + ux, base[1] + uy]
      top += w * Math.hypot(tip[0], tip[1])
      slant += w * Math.hypot(x, y)
      weight += w
      const node = leg.to.nodes[0]!
      const sum = ease.get(node) ?? { x: 0, y: 0, w: 0 }
      ease.set(node, { x: sum.x + w * x, y: sum.y + w * y, w: sum.w + w })
    }
    const radiusMm = Math.max(1e-9, weight > 0 ? top / weight : meanRadius(xy, edge.nodes))
    const slantMm = Math.max(1e-9, weight > 0 ? slant / weight : radiusMm)
    grown.push(slantMm / radiusMm)
    const way = measureWay(net, edge, ease)
    const beyond = (full: number): number =>
      1 + Math.sign(full - 1) * Math.max(0, Math.abs(full - 1) - 2 * give)
    return {
      radiusMm,
      slantMm,
      fullness: beyond(fullnessOf(way, edge.scallopMm ?? 0)),
      heldFullness: beyond(fullnessOf(way, 0)),
    }
  })
}

/** Fewer tops than these lie too far apart for a line over three of them. */
const fewestForLine = 24

interface Way {
  readonly neededMm: number
  /** The edge with every loop drawn out, and with every loop gathered up. */
  readonly longestMm: number
  readonly shortestMm: number
}

/** The edge at ease over the way it has to take; 1 where what hangs slack or stands open may be as long as that. */
function fullnessOf({ neededMm, longestMm, shortestMm }: Way, openMm: number): number {
  if (neededMm <= 0) return 1
  if (neededMm > longestMm) return longestMm / neededMm
  return Math.max(1, (shortestMm - openMm) / neededMm)
}

/** From top to top at ease, and what the edge has for it. */
function measureWay(
  net: Net,
  { nodes, closed }: NetEdge,
  ease: ReadonlyMap<number, { x: number; y: number; w: number }>,
): Way {
  const tops = nodes.flatMap((node, k) => (ease.has(node) ? [k] : []))
  const n = tops.length
  let [neededMm, longestMm, shortestMm] = [0, 0, 0]
  if (n < 2) return { neededMm, longestMm, shortestMm }
  const at = (i: number): Spot => {
    const k = closed ? (i + n) % n : Math.min(n - 1, Math.max(0, i))
    const { x, y, w } = ease.get(nodes[tops[k]!]!)!
    return [x / w, y / w]
  }
  for (let i = 0; i < (closed ? n : n - 1); i++) {
    neededMm +=
      n < fewestForLine
        ? distance(at(i), at(i + 1))
        : alongLine(at(i - 1), at(i), at(i + 1), at(i + 2))
    const [from, to] = [tops[i]!, i + 1 < n ? tops[i + 1]! : nodes.length + tops[0]!]
    let runMm = 0
    for (let k = from; k <= to; k++) {
      const { widthMm, kind, free } = net.nodes[nodes[k % nodes.length]!]!
      if (free) continue
      const whole = k === from || k === to ? widthMm / 2 : widthMm
      longestMm += whole
      if (kind === "chain") runMm = Math.max(runMm, slackFeetChains * widthMm)
      else shortestMm += whole
    }
    shortestMm += runMm
  }
  return { neededMm, longestMm, shortestMm }
}

function distance(a: Spot, b: Spot): number {
  return Math.hypot(b[0] - a[0], b[1] - a[1])
}

/** From a to b along the line from the top before to the top after: a zigzag of fans is no length of the round. */
function alongLine(before: Spot, a: Spot, b: Spot, after: Spot): number {
  const span = distance(before, after)
  if (span === 0) return distance(a, b)
  return ((b[0] - a[0]) * (after[0] - before[0]) + (b[1] - a[1]) * (after[1] - before[1])) / span
}

function radial([x, y]: Spot, length: number): Spot {
  const r = Math.hypot(x, y) || 1
  return [(x * length) / r, (y * length) / r]
}

/** Of every chain of an edge how far from the centre it would lie with its run straight between the tops at its ends. */
function chordRadii(
  net: Net,
  { nodes }: NetEdge,
  xy: Float64Array,
  cx: number,
  cy: number,
): Map<number, number> {
  const found = new Map<number, number>()
  const n = nodes.length
  const isChain = (k: number): boolean => net.nodes[nodes[((k % n) + n) % n]!]!.kind === "chain"
  for (let k = 0; k < n; k++) {
    if (!isChain(k) || isChain(k - 1)) continue
    let last = k
    while (isChain(last + 1) && last - k < n) last++
    const [a, b] = [nodes[(k - 1 + n) % n]!, nodes[(last + 1) % n]!]
    for (let i = k; i <= last; i++) {
      const share = (i - k + 1) / (last - k + 2)
      const x = (1 - share) * xy[2 * a]! + share * xy[2 * b]! - cx
      const y = (1 - share) * xy[2 * a + 1]! + share * xy[2 * b + 1]! - cy
      found.set(nodes[i % n]!, Math.hypot(x, y))
    }
  }
  return found
}

type Spot = [number, number]

function middleOf(net: Net, xy: Float64Array): Spot {
  const n = net.centre.length
  const sum = (k: 0 | 1): number => net.centre.reduce((all, node) => all + xy[2 * node + k]!, 0)
  return [sum(0) / n, sum(1) / n]
}

function pointAt({ nodes, weights }: Point, xy: Float64Array, cx: number, cy: number): Spot {
  let [x, y] = [-cx, -cy]
  nodes.forEach((node, k) => {
    x += weights[k]! * xy[2 * node]!
    y += weights[k]! * xy[2 * node + 1]!
  })
  return [x, y]
}

/** Mean angle by which the legs of a round lean to one side further than at ease, radians. */
function meanLean(legs: readonly Spring[], xy: Float64Array, cx: number, cy: number): number {
  let [along, out, ease, weight] = [0, 0, 0, 0]
  for (const leg of legs) {
    const [bx, by] = pointAt(leg.from, xy, cx, cy)
    const [tx, ty] = pointAt(leg.to, xy, cx, cy)
    const r = Math.hypot(bx, by)
    if (r < 1e-9) continue
    const w = leg.areaMm2 / leg.restMm
    along += (w / r) * (bx * (ty - by) - by * (tx - bx))
    out += (w / r) * (bx * (tx - bx) + by * (ty - by))
    ease += w * Math.asin(Math.max(-1, Math.min(1, (leg.leanMm ?? 0) / leg.restMm)))
    weight += w
  }
  return along === 0 ? 0 : Math.atan2(along, out) - ease / weight
}

/** Legs that lean further to either side than those at the corners of a square have been folded over by the press, radians. */
const mostLean = Math.PI / 4

/** From foot to top of a leg drawn to its rest length, turned back by the lean of its round. */
function upright([bx, by]: Spot, [tx, ty]: Spot, restMm: number, lean: number): Spot {
  const r = Math.hypot(bx, by)
  if (r < 1e-9) return radial([tx, ty], restMm)
  const [ux, uy] = [bx / r, by / r]
  const [x, y] = [tx - bx, ty - by]
  const own = Math.atan2(ux * y - uy * x, ux * x + uy * y) - lean
  const angle = Math.max(-mostLean, Math.min(mostLean, own))
  const [c, s] = [restMm * Math.cos(angle), restMm * Math.sin(angle)]
  return [c * ux - s * uy, c * uy + s * ux]
}

function meanRadius(xy: Float64Array, nodes: readonly number[]): number {
  return (
    nodes.reduce((sum, node) => sum + Math.hypot(xy[2 * node]!, xy[2 * node + 1]!), 0) /
    nodes.length
  )
}
