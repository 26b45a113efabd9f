// Half a side taken from a laid-out shape: the mean of all its images, turned and mirrored onto one another.

import type { Net } from "@roundwright/relaxation"
import { type HalfEdge, squareToEdge } from "./half-edge.ts"
import type { HalfShape } from "./plan.ts"

/** A round of the net as the next round is worked into it. */
export interface LaidRound {
  readonly net: Net
  readonly xy: Float64Array
  readonly round: number
  /** Element of each place, in working order, and its chains (0 for a stitch). */
  readonly places: readonly { readonly element: number; readonly chains: number }[]
  /** Place with which side 0 begins. */
  readonly start: number
}

export function halfFromShape(laid: LaidRound, shape: HalfShape, corners: number): HalfEdge {
  const { places, start, net } = laid
  const half = Math.PI / corners
  const feet = places.length / corners
  const spots = placeSpots(laid)
  const count = (feet + (shape.midOn ? 1 : 0) + (shape.cornerOn ? 1 : 0)) / 2
  const imageOf = (i: number) => (shape.midOn ? feet - i : feet - 1 - i)
  const spotAt = (side: number, i: number) =>
    spots[(((start + side * feet + i) % places.length) + places.length) % places.length]!
  // Work may run clockwise or counterclockwise; a side is followed the way its places run.
  const way = turnBetween(spotAt(0, 0).angle, spotAt(0, 1).angle) < 0 ? -1 : 1
  const found = Array.from({ length: count }, () => ({ reach: 0, off: 0, images: 0 }))
  for (let side = 0; side < corners; side++) {
    const mean = cornerAngle(side, count, imageOf, spotAt, way)
    for (let i = 0; i < count; i++)
      for (const [at, sign] of [
        [i, -1],
        [imageOf(i), 1],
      ] as const) {
        const spot = spotAt(side, at)
        const own = found[i]!
        own.reach += spot.reach
        own.off += sign * way * turnBetween(mean, spot.angle)
        own.images++
      }
  }
  const chainMm = new Map(places.map((place, i) => [i, place.chains]))
  return squareToEdge({
    shape,
    half,
    feet: found.map(({ reach, off, images }, i) => {
      const angle = half - off / images
      const r = reach / images / net.mmPerUnit
      const chains = chainMm.get((start + i) % places.length)!
      return {
        x: r * Math.cos(angle),
        y: r * Math.sin(angle),
        nx: 1,
        ny: 0,
        chains,
        spanMm: spots[(start + i) % places.length]!.span / net.mmPerUnit,
      }
    }),
  })
}

/** Direction of a side's corner: the mean of the directions half way between each place and its image. */
function cornerAngle(
  side: number,
  count: number,
  imageOf: (i: number) => number,
  spotAt: (side: number, i: number) => { angle: number },
  way: number,
): number {
  const first = spotAt(side, 0).angle
  let sum = 0
  for (let i = 0; i < count; i++)
    for (const at of [i, imageOf(i)]) {
      const turn = way * turnBetween(first, spotAt(side, at).angle)
      sum += turn < -0.5 ? turn + 2 * Math.PI : turn
    }
  return first + (way * sum) / (2 * count)
}

function placeSpots({ net, xy, round, places }: LaidRound) {
  const edge = net.edges[round]!
  const mean = (nodes: readonly number[], k: 0 | 1) =>
    nodes.reduce((sum, node) => sum + xy[2 * node + k]!, 0) / nodes.length
  const [cx, cy] = [mean(net.centre, 0), mean(net.centre, 1)]
  return places.map(({ element, chains }) => {
    const nodes = edge.nodes.filter((_, i) => edge.elements[i] === element)
    const [x, y] = [mean(nodes, 0) - cx, mean(nodes, 1) - cy]
    const [a, b] = [nodes[0]!, nodes.at(-1)!]
    const chord = Math.hypot(xy[2 * a]! - xy[2 * b]!, xy[2 * a + 1]! - xy[2 * b + 1]!)
    const span =
      chains > 1 ? (chord * chains) / (chains - 1) : chains > 0 ? net.nodes[a]!.widthMm : 0
    return { angle: Math.atan2(y, x), reach: Math.hypot(x, y), span }
  })
}

/** The angle from one direction to another, -pi to pi. */
function turnBetween(from: number, to: number): number {
  const turn = to - from
  return turn - 2 * Math.PI * Math.round(turn / (2 * Math.PI))
}
