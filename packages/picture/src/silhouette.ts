// The piece apart from its ground: a plane is fitted to the brightness at the picture's border, whatever
// differs from it more than Otsu's threshold is thread; gaps of the lace are closed and holes filled, and
// the largest part is the piece.
// Source: N. Otsu, "A threshold selection method from gray-level histograms", IEEE Trans. SMC 9 (1979).

import { blur } from "./blur.ts"
import type { GreyPicture, Point } from "./grey.ts"
import { groundPlane } from "./ground.ts"
import { closeGaps, fillHoles, largestPart } from "./mask.ts"

export interface Silhouette {
  /** 1 where the piece is, width x height. */
  readonly mask: Uint8Array
  readonly centroid: Point
  /** Share of the picture it covers. */
  readonly share: number
  /** Share of the picture's border that it touches: above 0 the piece may go on outside. */
  readonly touches: number
  /** Thread lighter than the ground. */
  readonly light: boolean
  /** How far thread differs from ground against the scatter of the ground. */
  readonly contrast: number
}

/** Blur before thresholding and gap closing, of the longer side. */
const [blurShare, closeShare] = [0.004, 0.03]
/** Otsu parts thread from ground half-way; blurred thread is fainter than that. */
const otsuShare = 0.8

/** All that stands out from the ground, gaps closed and holes filled. */
export function standingOut(picture: GreyPicture) {
  const { width, height, values } = picture
  const longer = Math.max(width, height)
  const ground = groundPlane(picture)
  const signed = Float32Array.from(values, (value, i) => {
    const y = Math.floor(i / width)
    return value - ground.at(i - y * width, y)
  })
  const away = { width, height, values: signed.map((value) => Math.abs(value)) }
  const smooth = blur(away, blurShare * longer).values
  const threshold = otsuShare * otsu(smooth)
  const thread = Uint8Array.from(smooth, (value) => (value > threshold ? 1 : 0))
  const closed = closeGaps(thread, width, height, Math.round((closeShare * longer) / 2))
  return { mask: fillHoles(closed, width, height), thread, signed, ground }
}

export function findSilhouette(picture: GreyPicture): Silhouette {
  const { width, height } = picture
  const { mask: all, thread, signed, ground } = standingOut(picture)
  const mask = largestPart(all, width, height)
  let [count, sumX, sumY, border, bright, threads] = [0, 0, 0, 0, 0, 0]
  for (let i = 0; i < mask.length; i++) {
    if (mask[i] === 0) continue
    const y = Math.floor(i / width)
    const x = i - y * width
    count += 1
    sumX += x
    sumY += y
    if (x === 0 || y === 0 || x === width - 1 || y === height - 1) border += 1
    if (thread[i] === 1) {
      bright += signed[i]!
      threads += 1
    }
  }
  return {
    mask,
    centroid: count > 0 ? { x: sumX / count, y: sumY / count } : { x: width / 2, y: height / 2 },
    share: count / mask.length,
    touches: border / (2 * (width + height) - 4),
    light: bright >= 0,
    contrast: Math.abs(bright / Math.max(1, threads)) / (ground.scatter + 0.01),
  }
}

const bins = 256

/** Threshold that parts the values into two groups with the most variance between them. */
export function otsu(values: ArrayLike<number>): number {
  let top = 0
  for (let i = 0; i < values.length; i++) top = Math.max(top, values[i]!)
  if (!(top > 0)) return 0
  const histogram = new Float64Array(bins)
  let mean = 0
  for (let i = 0; i < values.length; i++) {
    const bin = Math.min(bins - 1, Math.floor((values[i]! / top) * bins))
    histogram[bin]! += 1 / values.length
    mean += bin / values.length
  }
  let [weight, below, best, bestBin] = [0, 0, -1, 0]
  for (let bin = 0; bin < bins - 1; bin++) {
    weight += histogram[bin]!
    below += bin * histogram[bin]!
    if (weight <= 0 || weight >= 1) continue
    const between = (mean * weight - below) ** 2 / (weight * (1 - weight))
    if (between > best) [best, bestBin] = [between, bin]
  }
  return ((bestBin + 1) / bins) * top
}
