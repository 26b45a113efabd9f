// The centre of the piece: found by turning the picture into itself, then moved in ever smaller steps to
// where the rings repeat most clearly.

import { climbTo } from "./climb-to.ts"
import { combs, mostAt } from "./comb.ts"
import { concentricity } from "./concentric.ts"
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
/** Starts by turning that are followed up. */
const turnsKept = 3
/** Those that match much less than the first are none. */
const rivalShare = 0.7
/** Another start is taken for the first when its rings are clearer by this. */
const plainly = 0.15
/** Lines of thread that run all the way round carry this share of the variance at least, or they place no centre. */
const closedRings = 0.06
/** Where the turned picture matches nothing, they have nothing to confirm them. */
const closedAlone = 0.15
/** They are looked for on a grid as far about a start as the turned picture may be off, then by a climb; steps are shares of the radius. */
const [gridReach, gridStep] = [5, 0.012]
const topsClimbed = 5
const closedSteps = [0.006, 0.003, 0.0015] as const
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
  const turned = centresByTurning(piece, turnsKept)
  const score = turned[0]?.score ?? 0
  const matched = score >= leastScore
  const starts: readonly Start[] =
    turned.length > 0 && (matched || silhouette.touches > 0)
      ? turned
          .filter((one) => one.score >= rivalShare * score)
          .map((one) => ({ ...refineByTurning(piece, one), by: "turning" }))
      : [{ ...silhouette.centroid, by: "silhouette" }]
  const settled = starts.map((start) => settle(evened, start, meanReach(silhouette, width, start)))
  // The turned picture's own choice stays unless the rings say otherwise plainly.
  const best = settled.reduce((a, b) => (b.worth > a.worth + plainly ? b : a))
  const { x, y, clarity, by } = best
  return { x, y, clarity, score, by }
}

interface Start extends Point {
  readonly by: "turning" | "silhouette"
}

/** The best places of a grid about a start: closed lines make many small tops. */
function bestAround(start: Point, radius: number, valueAt: (point: Point) => number): Point[] {
  const places: { point: Point; value: number }[] = []
  for (let i = -gridReach; i <= gridReach; i++)
    for (let j = -gridReach; j <= gridReach; j++) {
      const point = { x: start.x + i * gridStep * radius, y: start.y + j * gridStep * radius }
      places.push({ point, value: valueAt(point) })
    }
  places.sort((a, b) => b.value - a.value)
  return places.slice(0, topsClimbed).map(({ point }) => point)
}

/** Moves a start to where the rings lie round it, or, where none closes, to where they repeat most clearly. */
function settle(evened: GreyPicture, start: Start, radius: number) {
  const roundness = (at: Point) => concentricity(evened, at, radius)
  const closed = bestAround(start, radius, roundness)
    .map((top) =>
      climbTo(
        top,
        closedSteps.map((share) => share * radius),
        roundness,
      ),
    )
    .reduce((a, b) => (b.value > a.value ? b : a))
  if (closed.value >= (start.by === "turning" ? closedRings : closedAlone)) {
    const clarity = ringClarity(evened, closed.point, radius)
    return { ...closed.point, by: start.by, clarity, worth: closed.value + clarity }
  }
  const climbed = climb(evened, start, radius)
  const { x, y } = climbed.clarity >= clearRings ? climbed : start
  return {
    x,
    y,
    by: start.by,
    clarity: climbed.clarity,
    worth: concentricity(evened, { x, y }, radius) + climbed.clarity,
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
