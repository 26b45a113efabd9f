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
  const contours = contoursOf(outline)
  const closed = radii.map((radius) =>
    contours.map(({ contour }) => closedness(sampleRound(evened, centre, radius, contour, coarse))),
  )
  const chosen = contours.length === 1 ? radii.map(() => 0) : smoothPath(closed)
  return radii.map((radius, i) => {
    const { contour, bend, along, meanReach } = contours[chosen[i]!]!
    const byAngle = sampleRound(evened, centre, radius, contour)
    const angleCombs = combs(powerSpectrum(byAngle), mostAt(radius))
    const same = bend < roundBend
    const byLength = same ? byAngle : sampleRound(evened, centre, radius, contour, along)
    return {
      radius,
      bend,
      byAngle,
      byLength,
      onCircle: same ? byAngle : sampleRound(evened, centre, radius * meanReach),
      angleCombs,
      lengthCombs: same ? angleCombs : combs(powerSpectrum(byLength), mostAt(radius)),
      closed: closed[i]![chosen[i]!]!,
    }
  })
}

function contoursOf(
  outline: Outline,
): { bend: number; contour: Contour; along: Float64Array; meanReach: number }[] {
  if (outline.kind === "round")
    return [{ bend: 0, contour: circle, along: evenAngles, meanReach: 1 }]
  const full = bendReach * bendOf(outline.corners, outline.cornerPx / outline.sidePx)
  return Array.from({ length: bendSteps }, (_, i) => {
    const bend = (full * i) / (bendSteps - 1)
    const contour = polygonContour(outline.corners, outline.cornerAngle, bend)
    const meanReach = evenAngles.reduce((sum, a) => sum + contour(a), 0) / evenAngles.length
    return { bend, contour, along: anglesAlong(contour), meanReach }
  })
}

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
