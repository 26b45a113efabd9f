// Starts for the shape in space, made from the flat one: a dome and its reverse where the edges are too
// short for their distance from the centre, waves where they are too long, each as high as the misfit of
// lengths asks for. Only starts: the minimiser decides.

import { measureStrain } from "./measure-yarn.ts"
import type { Net } from "./net.ts"

export interface SpaceStart {
  /** `flat`, `dome`, `bowl`, `waves 2` ... */
  readonly name: string
  /** x, y, z of every node, mm. */
  readonly xyz: Float64Array
}

/** What the rounds' lengths ask for, from the centre out. */
export interface RoundMisfit {
  /** Mean distance from the centre in the flat shape, and along the fabric with posts at ease, mm. */
  readonly radiusMm: number
  readonly slantMm: number
  /** Edge at ease over the edge this outline has at that slant: below 1 cups, above 1 ruffles. */
  readonly fullness: number
}

/** Wave numbers tried: two is the ground state of an ideal cone, more come from weight and from growing surplus. */
export const usualWaves: readonly number[] = [2, 3, 4, 5, 6, 7, 8]
/** Enough for a piece that has no surplus: lying on one side or the other of a fold. */
const fewWaves: readonly number[] = [2, 3]
/** Height of the starts where lengths ask for none, as a share of the radius: a nudge. */
const nudge = 0.01

/** What a flat piece's lengths ask for, as far as starts go. */
export type Wants = "nothing" | "less edge" | "more room" | "both"

/** Misfits beyond the give below this are rounding of lengths. */
const leastMisfit = 1e-3
/** Strain held in a flat piece (see heldStrain) above which lace may hide a misfit of either kind. */
const hiddenStrain = 0.03

/** @param held strain held in the flat piece */
export function wantsOf(misfits: readonly RoundMisfit[], held: number): Wants {
  const short = misfits.some(({ fullness }) => fullness < 1 - leastMisfit)
  const long = misfits.some(({ fullness }) => fullness > 1 + leastMisfit)
  if (short && long) return "both"
  if (short) return "less edge"
  if (long) return "more room"
  return held > hiddenStrain ? "both" : "nothing"
}

/**
 * Domes for a piece whose rounds are too short, waves for one whose rounds are too long; a few of the other
 * kind beside them.
 */
export function startsInSpace(
  net: Net,
  xy: Float64Array,
  misfits: readonly RoundMisfit[],
  wants: Wants = "both",
  waves: readonly number[] = wants === "less edge" || wants === "nothing" ? fewWaves : usualWaves,
): SpaceStart[] {
  const starts: SpaceStart[] = [{ name: "dome", xyz: revolve(net, xy, misfits, -1) }]
  if (wants !== "more room") starts.push({ name: "bowl", xyz: revolve(net, xy, misfits, 1) })
  for (const m of waves) starts.push({ name: `waves ${m}`, xyz: wave(net, xy, misfits, m) })
  return starts
}

/**
 * @param give strain that tops and posts take up for free: only what goes beyond it asks for a way out
 */
export function roundMisfits(net: Net, xy: Float64Array, give = 0): RoundMisfit[] {
  const strain = measureStrain(net, xy, 2)
  const tops = net.edges.map(() => ({ length: 0, rest: 0 }))
  const posts = net.edges.map(() => ({ length: 0, rest: 0 }))
  net.springs.forEach((spring, k) => {
    if (spring.round < 0) return
    const sum = (spring.role === "post" ? posts : tops)[spring.round]!
    // A slack chain costs nothing: it is as long as it lies.
    const at = spring.role === "chain" ? Math.max(0, strain[k]!) : strain[k]!
    sum.rest += spring.restMm
    sum.length += spring.restMm * (1 + at)
  })
  let radius = net.centre.length > 1 ? meanRadius(xy, net.centre) : 0
  let slant = radius
  return net.edges.map((edge, round) => {
    const radiusMm = Math.max(1e-9, meanRadius(xy, edge.nodes))
    slant += (radiusMm - radius) / ratio(posts[round]!)
    radius = radiusMm
    const full = radiusMm / ratio(tops[round]!) / Math.max(slant, 1e-9)
    const beyond = Math.max(0, Math.abs(full - 1) - 2 * give)
    return { radiusMm, slantMm: slant, fullness: 1 + Math.sign(full - 1) * beyond }
  })
}

function ratio({ length, rest }: { length: number; rest: number }): number {
  return rest > 0 ? length / rest : 1
}

function meanRadius(xy: Float64Array, nodes: readonly number[]): number {
  return (
    nodes.reduce((sum, node) => sum + Math.hypot(xy[2 * node]!, xy[2 * node + 1]!), 0) /
    nodes.length
  )
}

/** Rounds drawn in to the radius their length asks for, raised by what is left of the depth. */
function revolve(
  net: Net,
  xy: Float64Array,
  misfits: readonly RoundMisfit[],
  sign: number,
): Float64Array {
  let [radius, slant, height] = [0, 0, 0]
  const radii: number[] = []
  const heights: number[] = []
  for (const misfit of misfits) {
    const step = Math.max(0, misfit.slantMm - slant)
    const wanted = misfit.slantMm * Math.min(1, misfit.fullness)
    const out = Math.min(step, Math.max(-step, wanted - radius))
    height += Math.max(Math.sqrt(step * step - out * out), nudge * step)
    radius += out
    slant = misfit.slantMm
    radii.push(radius / misfit.radiusMm)
    heights.push(height)
  }
  return place(net, xy, (round, x, y) => {
    const scale = round < 0 ? 1 : radii[round]!
    return [x * scale, y * scale, sign * (round < 0 ? 0 : heights[round]!)]
  })
}

/** A wave of m folds, of the height that takes up the surplus: excess of length = (m a / r)^2 / 4. */
function wave(
  net: Net,
  xy: Float64Array,
  misfits: readonly RoundMisfit[],
  m: number,
): Float64Array {
  const heights = misfits.map((misfit) => {
    const surplus = Math.max(0, misfit.fullness - 1)
    return Math.max(nudge * misfit.radiusMm, (2 * misfit.slantMm * Math.sqrt(surplus)) / m)
  })
  return place(net, xy, (round, x, y) => {
    // Half a degree off every axis of symmetry, so that no fold sits exactly on a line it cannot leave.
    const angle = Math.atan2(y, x) + 0.0087
    return [x, y, round < 0 ? 0 : heights[round]! * Math.cos(m * angle)]
  })
}

/** Lowest point set to zero. */
function place(
  net: Net,
  xy: Float64Array,
  at: (round: number, x: number, y: number) => [number, number, number],
): Float64Array {
  const xyz = new Float64Array(3 * net.nodes.length)
  let lowest = Number.POSITIVE_INFINITY
  net.nodes.forEach((node, k) => {
    const [x, y, z] = at(node.round, xy[2 * k]!, xy[2 * k + 1]!)
    xyz.set([x, y, z], 3 * k)
    lowest = Math.min(lowest, z)
  })
  for (let k = 2; k < xyz.length; k += 3) xyz[k]! -= lowest
  return xyz
}
