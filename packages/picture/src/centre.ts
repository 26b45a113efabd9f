// The centre of the piece: found by turning the picture into itself, then moved in ever smaller steps to
// where the rings repeat most clearly.

import { climbTo } from "./climb-to.ts"
import { combs, mostAt } from "./comb.ts"
import { powerSpectrum } from "./fourier.ts"
import type { GreyPicture, Point } from "./grey.ts"
import type { Silhouette } from "./silhouette.ts"
import { centresByTurning, refineByTurning } from "./turning.ts"
import { sampleRound } from "./unroll.ts"

export interface CentreFound extends Point {
  /** Correlation of the turned picture, 0 to 1. */
  readonly score: number
  /** Mean clarity of the rings about it, 0 to 1. */
  readonly clarity: number
  readonly by: "turning" | "silhouette" | "hand"
}

/** Weight of the silhouette against the evened picture when turned. */
const silhouetteWeight = 0.9
/** Below this the turned picture matches nowhere. */
const leastScore = 0.3
/** Rings less clear than this place the centre worse than the turned picture does. */
const clearRings = 0.25
/** Steps of the climb, shares of the radius. */
const steps = [0.015, 0.008, 0.004, 0.002] as const
const bands = 9
const rowsPerBand = 5
const climbAngles = Float64Array.from({ length: 512 }, (_, i) => (2 * Math.PI * i) / 512)

export function findCentre(evened: GreyPicture, silhouette: Silhouette): CentreFound {
  const { width, height } = evened
  const piece = {
    width,
    height,
    values: evened.values.map((value, i) =>
      silhouette.mask[i] === 1 ? value + silhouetteWeight : 0,
    ),
  }
  const [turned] = centresByTurning(piece, 1)
  const matched = turned !== undefined && turned.score >= leastScore
  if (!matched && silhouette.touches === 0) {
    const radius = meanReach(silhouette, width, silhouette.centroid)
    return {
      ...climb(evened, silhouette.centroid, radius),
      score: turned?.score ?? 0,
      by: "silhouette",
    }
  }
  const start = turned ? refineByTurning(piece, turned) : { ...silhouette.centroid, score: 0 }
  const climbed = climb(evened, start, meanReach(silhouette, width, start))
  const clear = climbed.clarity >= clearRings
  return {
    ...(clear ? climbed : { x: start.x, y: start.y, clarity: climbed.clarity }),
    score: start.score,
    by: "turning",
  }
}

/** Radius of the disc as large as the piece, or what the picture leaves of it. */
export function meanReach(silhouette: Silhouette, width: number, centre: Point): number {
  let [count, far] = [0, 0]
  silhouette.mask.forEach((inside, i) => {
    if (inside === 0) return
    count += 1
    const y = Math.floor(i / width)
    far = Math.max(far, Math.hypot(i - y * width - centre.x, y - centre.y))
  })
  return Math.max(8, Math.min(far, Math.sqrt(count / Math.PI)))
}

/** Moves the centre to where the rings are clearest. */
export function climb(
  evened: GreyPicture,
  start: Point,
  radius: number,
): Point & { clarity: number } {
  const { point, value } = climbTo(
    start,
    steps.map((share) => share * radius),
    (at) => ringClarity(evened, at, radius),
  )
  return { ...point, clarity: value }
}

/** Mean over nine bands of the best comb of each. */
export function ringClarity(evened: GreyPicture, centre: Point, radius: number): number {
  let sum = 0
  for (let band = 0; band < bands; band++) {
    const pooled = new Float64Array(climbAngles.length / 2 + 1)
    const at = (row: number) => radius * (0.12 + (0.86 * (band + row / rowsPerBand)) / bands)
    for (let row = 0; row < rowsPerBand; row++) {
      const power = powerSpectrum(sampleRound(evened, centre, at(row), undefined, climbAngles))
      for (let k = 0; k < pooled.length; k++) pooled[k]! += power[k]! / rowsPerBand
    }
    sum += Math.max(0, ...combs(pooled, Math.min(84, mostAt(at(0)))))
  }
  return sum / bands
}
