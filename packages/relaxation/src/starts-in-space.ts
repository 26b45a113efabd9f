// Starts for the shape in space, made from the flat one: a dome and its reverse where the edges are too
// short for their distance from the centre, waves where they are too long, each as high as the misfit of
// lengths asks for. Only starts: the minimiser decides.

import { findRoot } from "@roundwright/numerics"
import type { Net, NetEdge } from "./net.ts"
import type { RoundMisfit } from "./round-misfits.ts"

export interface SpaceStart {
  /** `flat`, `dome`, `bowl`, `waves 2` ... */
  readonly name: string
  /** The start, and what comes of it, turns into itself by this part of a turn as far as the piece does; 0 for any. */
  readonly folds?: number
  /** x, y, z of every node, mm. */
  readonly xyz: Float64Array
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
  const starts: SpaceStart[] = [{ name: "dome", folds: 0, xyz: revolve(net, xy, misfits, -1) }]
  if (wants !== "more room")
    starts.push({ name: "bowl", folds: 0, xyz: revolve(net, xy, misfits, 1) })
  for (const m of waves)
    starts.push({ name: `waves ${m}`, folds: m, xyz: wave(net, xy, misfits, m) })
  return starts
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

/**
 * Waves of m folds that leave lengths alone: each round lies at its slant from the centre, in directions that run along
 * a curve of latitude a cos(m phi) on the unit sphere, as long as the round is full. Of a constant surplus that is the
 * developable cone of the literature: J. Guven and others, https://arxiv.org/abs/1107.5008.
 */
function wave(
  net: Net,
  xy: Float64Array,
  misfits: readonly RoundMisfit[],
  m: number,
): Float64Array {
  const [drawn, fullness] = [Float64Array.from(xy), [] as number[]]
  misfits.forEach((misfit, round) => {
    fullness.push(misfit.fullness * smoothEdge(net.edges[round]!, drawn))
  })
  const curves = fullness.map((full) => {
    const height = Math.max(nudge, latitudeOf(full, m))
    return { height, longitude: longitudes(height, m) }
  })
  return place(net, drawn, (round, x, y) => {
    if (round < 0) return [x, y, 0]
    const { height, longitude } = curves[round]!
    const { radiusMm, slantMm } = misfits[round]!
    const far = (Math.hypot(x, y) / radiusMm) * slantMm
    // Half a degree off every axis of symmetry, so that no fold sits exactly on a line it cannot leave.
    const share = ((Math.atan2(y, x) + offAxis) / (2 * Math.PI) + 2) % 1
    const phi = longitude(share)
    const latitude = height * Math.cos(m * phi)
    const out = far * Math.cos(latitude)
    const angle = phi - offAxis
    return [out * Math.cos(angle), out * Math.sin(angle), far * Math.sin(latitude)]
  })
}

/**
 * Pressed flat, an edge much too long lies in small zigzags that hide how long it is: smooths such an edge in place.
 * @returns length before over length after, 1 where nothing was smoothed
 */
function smoothEdge({ nodes, closed }: NetEdge, xy: Float64Array): number {
  if (!closed || nodes.length < fewestToSmooth) return 1
  let line = nodes.map((node): [number, number] => [xy[2 * node]!, xy[2 * node + 1]!])
  const length = (): number =>
    line.reduce((sum, [x, y], k) => {
      const [a, b] = line.at(k - 1)!
      return sum + Math.hypot(x - a, y - b)
    }, 0)
  const before = length()
  for (let pass = 0; pass < smoothings; pass++)
    line = line.map(([x, y], k) => {
      const [a, b] = [line.at(k - 1)!, line[(k + 1) % line.length]!]
      return [(a[0] + 2 * x + b[0]) / 4, (a[1] + 2 * y + b[1]) / 4]
    })
  const ratio = before / length()
  if (ratio < zigzag) return 1
  nodes.forEach((node, k) => {
    xy.set(line[k]!, 2 * node)
  })
  return ratio
}

/** Passes of smoothing: three take out zigzags of up to four stitches. */
const smoothings = 3
/** A shorter edge has corners rather than zigzags. */
const fewestToSmooth = 12
/** Corners and loops lose less than this by smoothing. */
const zigzag = 1.03
const offAxis = 0.0087
/** Steepest latitude of a start: beyond it the folds of a cone would touch. */
const steepest = 1.2
/** Steps along the curve: lengths to 1e-4, plenty for a start. */
const curveSteps = 360

/** Speed along the curve of latitude a cos(m phi) by longitude. */
function speed(a: number, m: number, phi: number): number {
  return Math.hypot(Math.cos(a * Math.cos(m * phi)), m * a * Math.sin(m * phi))
}

/** Latitude at which the curve is `fullness` times a great circle; 0 where there is no surplus. */
function latitudeOf(fullness: number, m: number): number {
  if (fullness <= 1) return 0
  const missing = (a: number): number => {
    let sum = 0
    for (let k = 0; k < curveSteps; k++) sum += speed(a, m, (2 * Math.PI * k) / curveSteps)
    return sum / curveSteps - fullness
  }
  return missing(steepest) <= 0 ? steepest : findRoot(missing, 0, steepest).x
}

/** Longitude by the share of the curve's length from longitude 0. */
function longitudes(a: number, m: number): (share: number) => number {
  const lengths = new Float64Array(curveSteps + 1)
  for (let k = 0; k < curveSteps; k++)
    lengths[k + 1] = lengths[k]! + speed(a, m, (2 * Math.PI * (k + 0.5)) / curveSteps)
  const whole = lengths[curveSteps]!
  return (share) => {
    const wanted = share * whole
    let [low, high] = [0, curveSteps]
    while (high - low > 1) {
      const middle = (low + high) >> 1
      if (lengths[middle]! <= wanted) low = middle
      else high = middle
    }
    const part = (wanted - lengths[low]!) / (lengths[high]! - lengths[low]!)
    return (2 * Math.PI * (low + part)) / curveSteps
  }
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
