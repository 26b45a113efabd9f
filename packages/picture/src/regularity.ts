// The view made straight by the piece's own regularity, without a click: of all tilted views the one in
// which its rings repeat most clearly and lie most closed. Six numbers (stretch two, perspective two, centre
// two) by a simplex from the better of several starts.

import { minimiseBySimplex } from "@roundwright/numerics"
import { combs, mostAt } from "./comb.ts"
import { powerSpectrum } from "./fourier.ts"
import { brightnessAt, type GreyPicture, type Point } from "./grey.ts"
import type { Homography } from "./homography.ts"
import type { Silhouette } from "./silhouette.ts"

export interface RegularView {
  /** From the straight picture, whose centre is `centre`, to the picture given. */
  readonly toPicture: Homography
  readonly centre: Point
  /** Regularity straight and as it was; how much the view gains. */
  readonly regularity: number
  readonly before: number
  /** Shorter over longer side of a square seen so: 1 is no tilt. */
  readonly foreshortening: number
  /** Two starts led to the same view. */
  readonly settled: boolean
}

const rowsSampled = 40
const angles = Float64Array.from({ length: 512 }, (_, i) => (2 * Math.PI * i) / 512)
const [cosines, sines] = [angles.map(Math.cos), angles.map(Math.sin)]
const bands = 9
/** Weight of closed rings against repeats. */
const closedWeight = 0.5
/** Stretches tried first: none and a fair tilt in each of several directions. */
const startingStretch = 0.1
const startDirections = 8
/** Counts looked at while the view is rough, when fine rings are still smeared, and at last. */
const [roughCounts, fineCounts] = [36, 84]
/** First steps: stretch, perspective, and centre as a share of the reach. */
const firstSteps = [0.05, 0.05, 0.03, 0.03, 0.02, 0.02] as const
/** Larger stretches and stronger perspectives are no photograph of a piece on a table. */
const [mostStretch, mostPerspective] = [0.32, 0.25]
/** Two ends nearer than this in stretch are one view. */
const sameView = 0.03

/**
 * @param reachPx radius of the piece in the picture given
 * @param silhouette its moments and its middle give one more start
 */
export function straightenByRegularity(
  evened: GreyPicture,
  silhouette: Silhouette,
  centre: Point,
  reachPx: number,
): RegularView {
  const at = (counts: number, step: number) => (p: readonly number[]) =>
    regularity(evened, centre, reachPx, p, counts, step)
  const [rough, fine] = [at(roughCounts, 2), at(fineCounts, 1)]
  const level = [0, 0, 0, 0, 0, 0]
  let ends = startsOf(silhouette, evened.width, centre, reachPx)
    .map((p) => ({ parameters: p as readonly number[], value: -rough(p) }))
    .sort((a, b) => a.value - b.value)
  for (const { kept, evaluations, valueAt, steps } of [
    { kept: 6, evaluations: 60, valueAt: rough, steps: firstSteps },
    { kept: 2, evaluations: 120, valueAt: fine, steps: firstSteps.map((step) => step / 3) },
  ])
    ends = ends
      .slice(0, kept)
      .map(({ parameters }) =>
        minimiseBySimplex((q) => -valueAt(q), parameters, { steps, evaluations, tolerance: 1e-4 }),
      )
      .sort((a, b) => a.value - b.value)
  const [best, second] = [ends[0]!, ends.at(-1)!]
  const p = best.parameters
  const stretch = Math.hypot(p[0]!, p[1]!)
  return {
    toPicture: matrixOf(p, centre, reachPx),
    centre,
    regularity: -best.value,
    before: fine(level),
    foreshortening: (1 - stretch) / (1 + stretch),
    settled: Math.hypot(p[0]! - second.parameters[0]!, p[1]! - second.parameters[1]!) <= sameView,
  }
}

/** None, a fair tilt in each of several directions, and what the silhouette's moments ask for; about the centre and about the silhouette's middle. */
function startsOf(silhouette: Silhouette, width: number, centre: Point, reach: number) {
  const { x, y } = silhouette.centroid
  const [mx, my] = [(x - centre.x) / reach, (y - centre.y) / reach]
  let [xx, xy, yy] = [0, 0, 0]
  silhouette.mask.forEach((inside, i) => {
    if (inside === 0) return
    const row = Math.floor(i / width)
    const [dx, dy] = [i - row * width - x, row - y]
    xx += dx * dx
    xy += dx * dy
    yy += dy * dy
  })
  // Moments of a piece with three corners or more are equal in all directions: what is left is the view's stretch.
  const size = 2 * (xx + yy)
  const moments = [(xx - yy) / size, (2 * xy) / size]
  const stretches = [
    [0, 0],
    moments,
    ...Array.from({ length: startDirections }, (_, i) => {
      const turn = (2 * Math.PI * i) / startDirections
      return [startingStretch * Math.cos(turn), startingStretch * Math.sin(turn)]
    }),
  ]
  return stretches.flatMap(([a, b], i) => {
    const starts = [[a!, b!, 0, 0, 0, 0]]
    return i < 2 ? [...starts, [a!, b!, 0, 0, mx, my]] : starts
  })
}

/** Straight (x, y) about the centre goes to centre + shift + A (x, y) / (1 + g (x, y)). */
function matrixOf(p: readonly number[], centre: Point, reach: number): Homography {
  const [a, b, gx, gy, dx, dy] = p as [number, number, number, number, number, number]
  const [ux, uy] = [gx / reach, gy / reach]
  const [cx, cy] = [centre.x + dx * reach, centre.y + dy * reach]
  // (x, y) are pixels of the straight picture: subtract the centre first.
  const [h00, h01, h10, h11] = [1 + a + cx * ux, b + cx * uy, b + cy * ux, 1 - a + cy * uy]
  const w = 1 - ux * centre.x - uy * centre.y
  return [
    h00 / w,
    h01 / w,
    (cx - h00 * centre.x - h01 * centre.y) / w,
    h10 / w,
    h11 / w,
    (cy - h10 * centre.x - h11 * centre.y) / w,
    ux / w,
    uy / w,
    1,
  ]
}

function regularity(
  evened: GreyPicture,
  centre: Point,
  reach: number,
  p: readonly number[],
  counts: number,
  step: number,
): number {
  const [a, b, gx, gy, dx, dy] = p as [number, number, number, number, number, number]
  if (Math.hypot(a, b) > mostStretch || Math.hypot(gx, gy) > mostPerspective) return 0
  const [cx, cy] = [centre.x + dx * reach, centre.y + dy * reach]
  const perBand = Math.floor(rowsSampled / bands)
  let clarity = 0
  const means: number[] = []
  const samples = angles.length / step
  const row = new Float64Array(samples)
  for (let band = 0; band < bands; band++) {
    const pooled = new Float64Array(samples / 2 + 1)
    let lowest = 0
    for (let k = 0; k < perBand; k++) {
      const share = 0.12 + (0.86 * (band + k / perBand)) / bands
      const r = share * reach
      if (k === 0) lowest = r
      let sum = 0
      for (let i = 0; i < row.length; i++) {
        const [ux, uy] = [share * cosines[i * step]!, share * sines[i * step]!]
        const w = reach / (1 + gx * ux + gy * uy)
        const x = cx + w * ((1 + a) * ux + b * uy)
        const y = cy + w * (b * ux + (1 - a) * uy)
        row[i] = brightnessAt(evened, x, y)
        sum += row[i]!
      }
      means.push(sum / row.length)
      const power = powerSpectrum(row)
      for (let o = 0; o < pooled.length; o++) pooled[o]! += power[o]! / perBand
    }
    clarity += Math.max(0, ...combs(pooled, Math.min(counts, mostAt(lowest)))) / bands
  }
  const mean = means.reduce((s, m) => s + m, 0) / means.length
  const closed = means.reduce((s, m) => s + (m - mean) ** 2, 0) / means.length
  return clarity + closedWeight * closed
}
