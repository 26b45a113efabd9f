// A second judge of straightness, which no search has seen: lengths alone. Every stitch, post and run of chains is a rod or a
// string of its length at rest, and every post is kept upright by its two diagonals; from the drawing of concentric circles
// the ends are moved, each rod by itself, until no rod can be helped without another suffering. No energy, no give, no
// bending, no pins.
//
//   rod a-b of length r:  both ends half way to |a - b| = r;  a string only where |a - b| > r
//   every node goes to the mean of where its rods want it (projection of constraints in parallel)
// Source: M. Mueller et al., "Position based dynamics", J. Vis. Commun. Image R. 18 (2007), section 3.

import type { Net, Point } from "@roundwright/relaxation"
import { discEndingAt, type Proposal, squareCircle } from "@roundwright/shaping"
import { gaugeFrom } from "@roundwright/stitches"

/** Enough that a rod's wish has gone from the corner to the middle of a side and back many times. */
const turns = 3000
/** Of the way to the mean of all wishes, gone at once: all of it swings. */
const step = 0.8
/** The last round is led outwards by this share of a stitch at first, less and less, so that loops come to lie open. */
const outwards = 0.02

/** How far the middle third of a side lies outside its corners, mean of the sides, as a share of the side. */
export function bowByLengths({ shape, cornerElements }: Proposal): number {
  const { net } = shape
  const xy = layByLengths(net)
  const edge = net.edges.at(-1)!
  const centre = meanOf(net.centre.map((node) => at(xy, node)))
  const spots = edge.nodes.map((node) => at(xy, node))
  const tips = cornerElements
    .map((elements) => furthestOf(spots, edge.elements, elements, centre))
    .sort((a, b) => a - b)
  const bows = tips.map((tip, i) => bowBetween(spots, tip, tips[(i + 1) % tips.length]!))
  return bows.reduce((sum, bow) => sum + bow, 0) / bows.length
}

const judged = [24, 30, 36, 48] as const

/** Both judges on the first proposals for discs of dc. */
export function judgeByLengths(): { count: number; byNet: number; byLengths: number }[] {
  const gauge = gaugeFrom({ swatches: [] })
  return judged.map((count) => {
    const options = { corners: 4, rounds: 2, proposals: 1 }
    const [first] = squareCircle(discEndingAt({ basic: "dc" }, count, gauge), gauge, options)
    return { count, byNet: bowByNet(first!), byLengths: bowByLengths(first!) }
  })
}

/** The same measure of the shape as it was laid out by the net: the mean of its sides. */
export function bowByNet({ shape }: Proposal): number {
  return (
    shape.sides.reduce((sum, { bowMm, lengthMm }) => sum + bowMm / lengthMm, 0) / shape.sides.length
  )
}

interface Spot {
  readonly x: number
  readonly y: number
}

function at(xy: Float64Array, node: number): Spot {
  return { x: xy[2 * node]!, y: xy[2 * node + 1]! }
}

function layByLengths(net: Net): Float64Array {
  const xy = Float64Array.from(net.start)
  const held = new Set(net.centre)
  const last = net.edges.at(-1)!.nodes
  const size = net.springs.reduce((sum, { restMm }) => sum + restMm, 0) / net.springs.length
  const wish = new Float64Array(xy.length)
  const wishes = new Float64Array(net.nodes.length)
  for (let turn = 0; turn < turns; turn++) {
    wish.fill(0)
    wishes.fill(0)
    for (const { role, from, to, restMm } of net.springs) {
      const [a, b] = [placeOf(xy, from), placeOf(xy, to)]
      const [dx, dy] = [b.x - a.x, b.y - a.y]
      const length = Math.hypot(dx, dy)
      if (length === 0 || (role === "chain" && length <= restMm)) continue
      const half = (length - restMm) / 2 / length
      move(from, half * dx, half * dy, wish, wishes)
      move(to, -half * dx, -half * dy, wish, wishes)
    }
    for (const lean of net.leans) keepUpright(lean, xy, wish, wishes)
    const led = outwards * size * (1 - turn / turns)
    for (const node of last) {
      const { x, y } = at(xy, node)
      const far = Math.hypot(x, y) || 1
      wish[2 * node]! += (led * x) / far
      wish[2 * node + 1]! += (led * y) / far
    }
    for (let node = 0; node < wishes.length; node++) {
      if (held.has(node)) continue
      const of = Math.max(1, wishes[node]!)
      xy[2 * node]! += (step * wish[2 * node]!) / of
      xy[2 * node + 1]! += (step * wish[2 * node + 1]!) / of
    }
  }
  return xy
}

/** A post's two diagonals differ by what they do at rest: its top and both sides of its base are moved together. */
function keepUpright(
  { top, left, right, restMm }: Net["leans"][number],
  xy: Float64Array,
  wish: Float64Array,
  wishes: Float64Array,
): void {
  const [t, l, r] = [placeOf(xy, top), placeOf(xy, left), placeOf(xy, right)]
  const [u, v] = [Math.hypot(t.x - l.x, t.y - l.y), Math.hypot(t.x - r.x, t.y - r.y)]
  if (u === 0 || v === 0) return
  const [ux, uy, vx, vy] = [(t.x - l.x) / u, (t.y - l.y) / u, (t.x - r.x) / v, (t.y - r.y) / v]
  const way = (u - v - restMm) / ((ux - vx) ** 2 + (uy - vy) ** 2 + 2)
  move(top, -way * (ux - vx), -way * (uy - vy), wish, wishes)
  move(left, way * ux, way * uy, wish, wishes)
  move(right, -way * vx, -way * vy, wish, wishes)
}

function placeOf(xy: Float64Array, { nodes, weights }: Point): Spot {
  let [x, y] = [0, 0]
  nodes.forEach((node, i) => {
    x += weights[i]! * xy[2 * node]!
    y += weights[i]! * xy[2 * node + 1]!
  })
  return { x, y }
}

/** A point between nodes moves them by their shares. */
function move(
  { nodes, weights }: Point,
  dx: number,
  dy: number,
  wish: Float64Array,
  wishes: Float64Array,
): void {
  nodes.forEach((node, i) => {
    wish[2 * node]! += weights[i]! * dx
    wish[2 * node + 1]! += weights[i]! * dy
    wishes[node]! += weights[i]!
  })
}

function meanOf(spots: readonly Spot[]): Spot {
  const mean = (of: (spot: Spot) => number) =>
    spots.reduce((sum, spot) => sum + of(spot), 0) / spots.length
  return { x: mean(({ x }) => x), y: mean(({ y }) => y) }
}

function furthestOf(
  spots: readonly Spot[],
  elements: readonly number[],
  corner: readonly number[],
  centre: Spot,
): number {
  let best = -1
  let most = -1
  spots.forEach(({ x, y }, i) => {
    const reach = Math.hypot(x - centre.x, y - centre.y)
    if (!corner.includes(elements[i]!) || reach <= most) return
    best = i
    most = reach
  })
  return best
}

function bowBetween(spots: readonly Spot[], from: number, to: number): number {
  const n = spots.length
  const count = (to - from + n) % n || n
  const [a, b] = [spots[from]!, spots[to]!]
  const length = Math.hypot(b.x - a.x, b.y - a.y)
  const [first, end] = [Math.round(count / 3), Math.round((2 * count) / 3)]
  let sum = 0
  for (let i = first; i <= end; i++) {
    const { x, y } = spots[(from + i) % n]!
    sum += ((x - a.x) * (b.y - a.y) - (y - a.y) * (b.x - a.x)) / length
  }
  return sum / (end - first + 1) / length
}
