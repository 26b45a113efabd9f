// The rows of the unrolled piece: for every radius, in steps of a pixel, the contour that follows the
// thread best (a circle in the middle of a square, its straight sides at the edge), samples along it, and
// how closed a line of thread lies there.

import { combs, mostAt } from "./comb.ts"
import { powerSpectrum } from "./fourier.ts"
import type { GreyPicture, Point } from "./grey.ts"
import { bendOf, type Outline, polygonContour } from "./outline.ts"
import { anglesAlong, type Contour, circle, evenAngles, sampleRound } from "./unroll.ts"

export interface Row {
  /** Radius to the middle of a side, or of the circle, pixels. */
  readonly radius: number
  /** 0 is a circle; 1 straight sides. */
  readonly bend: number
  readonly byAngle: Float64Array
  /** The same at even steps of length; the same array on circles. */
  readonly byLength: Float64Array
  /** The angles of `byLength`. */
  readonly along: Float64Array
  readonly angleCombs: Float64Array
  readonly lengthCombs: Float64Array
  /** Along the circle of the same mean radius: where the corners themselves are what repeats. */
  readonly onCircle: Float64Array
  /** Mean of the thread less half its spread: large where a line of thread runs all the way round. */
  readonly closed: number
}

export interface RowsRequest {
  /** Evened picture, thread positive. */
  readonly evened: GreyPicture
  readonly centre: Point
  readonly outline: Outline
}

const firstRadius = 3
/** Bends tried between the circle and a little beyond the outline's. */
const bendSteps = 11
const bendReach = 1.1
/** What a step of the bend costs against the scatter of closed lines, a row. */
const bendCost = 0.06
/** Below this bend steps of angle and of length are the same. */
const roundBend = 0.08
const coarse = Float64Array.from({ length: 256 }, (_, i) => (2 * Math.PI * i) / 256)

export function unrollPiece({ evened, centre, outline }: RowsRequest): Row[] {
  const last = Math.max(
    firstRadius + 8,
    Math.floor(outline.kind === "round" ? outline.cornerPx : outline.sidePx * 1.02),
  )
  const radii = Array.from({ length: last - firstRadius + 1 }, (_, i) => firstRadius + i)
  const bends = bendsTried(outline)
  const contours = bends.map((bend) => contourOf(outline, bend))
  const closed = radii.map((radius) =>
    contours.map((contour) => closedness(sampleRound(evened, centre, radius, contour, coarse))),
  )
  const chosen = bends.length === 1 ? radii.map(() => 0) : bendsAt(closed, bends, radii, outline)
  return radii.map((radius, i) => {
    const bend = chosen[i]!
    const contour = contourOf(outline, bend)
    const byAngle = sampleRound(evened, centre, radius, contour)
    const angleCombs = combs(powerSpectrum(byAngle), mostAt(radius))
    const same = bend < roundBend
    const along = same ? evenAngles : anglesAlong(contour)
    const byLength = same ? byAngle : sampleRound(evened, centre, radius, contour, along)
    const meanReach = evenAngles.reduce((sum, a) => sum + contour(a), 0) / evenAngles.length
    return {
      radius,
      bend,
      byAngle,
      byLength,
      along,
      onCircle: same ? byAngle : sampleRound(evened, centre, radius * meanReach),
      angleCombs,
      lengthCombs: same ? angleCombs : combs(powerSpectrum(byLength), mostAt(radius)),
      closed: closedness(byAngle),
    }
  })
}

function bendsTried(outline: Outline): number[] {
  if (outline.kind === "round") return [0]
  const full = bendReach * bendOf(outline.corners, outline.cornerPx / outline.sidePx)
  return Array.from({ length: bendSteps }, (_, i) => (full * i) / (bendSteps - 1))
}

function contourOf(outline: Outline, bend: number): Contour {
  return bend === 0 ? circle : polygonContour(outline.corners, outline.cornerAngle, bend)
}

/**
 * The bend of every row: as the closed lines and the outline say where they are, and between two of them going over
 * evenly from one to the other, as the stitches between them do.
 */
function bendsAt(
  closed: readonly (readonly number[])[],
  bends: readonly number[],
  radii: readonly number[],
  outline: Outline,
): number[] {
  const own = bendOf(outline.corners, outline.cornerPx / outline.sidePx)
  const ofOutline = bends.reduce(
    (best, bend, c) => (Math.abs(bend - own) < Math.abs(bends[best]! - own) ? c : best),
    0,
  )
  const atOutline = radii.findIndex((radius) => radius >= outline.sidePx)
  const gains = closed.map((row, i) =>
    row.map(
      (value, c) => Math.max(0, value) + (i === atOutline && c === ofOutline ? outlineGain : 0),
    ),
  )
  const path = smoothPath(gains)
  const gain = path.map((c, i) => gains[i]![c]!)
  const anchors = [0]
  for (let i = 1; i < path.length; i++) {
    const near = gain.slice(Math.max(0, i - nearRows), i + nearRows + 1)
    if (gain[i]! >= leastLine && gain[i]! >= Math.max(...near)) anchors.push(i)
  }
  if (anchors.at(-1) !== path.length - 1) anchors.push(path.length - 1)
  const out = path.map((c) => bends[c]!)
  for (let k = 1; k < anchors.length; k++) {
    const [from, to] = [anchors[k - 1]!, anchors[k]!]
    for (let i = from + 1; i < to; i++)
      out[i] = out[from]! + ((out[to]! - out[from]!) * (i - from)) / (to - from)
  }
  return out
}

/** What the outline's bend is worth at the piece's edge, against closed lines of thread. */
const outlineGain = 1
/** Rows this closed, and the most so within as many rows, are lines that say how their surroundings bend. */
const [leastLine, nearRows] = [0.15, 4]

function closedness(row: Float64Array): number {
  let [sum, squares] = [0, 0]
  for (const value of row) {
    sum += value
    squares += value * value
  }
  const mean = sum / row.length
  return mean - 0.5 * Math.sqrt(Math.max(0, squares / row.length - mean * mean))
}

/** One column a row so that the sum is large and neighbouring rows differ little; outwards the bend only grows. */
function smoothPath(gains: readonly (readonly number[])[]): number[] {
  const columns = gains[0]!.length
  let best = gains[0]!.map((gain, c) => gain - bendCost * c)
  const from: number[][] = []
  for (let r = 1; r < gains.length; r++) {
    const back: number[] = []
    best = gains[r]!.map((gain, c) => {
      let [top, at] = [Number.NEGATIVE_INFINITY, c]
      for (let b = 0; b <= c; b++) {
        const value = best[b]! - bendCost * (c - b)
        if (value > top) [top, at] = [value, b]
      }
      back[c] = at
      return top + gain
    })
    from.push(back)
  }
  let column = best.indexOf(Math.max(...best))
  const path = new Array<number>(gains.length).fill(0)
  for (let r = gains.length - 1; r >= 0; r--) {
    path[r] = Math.min(columns - 1, column)
    if (r > 0) column = from[r - 1]![column]!
  }
  return path
}
