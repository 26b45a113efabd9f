// Evens the light: what is left is how much lighter or darker each place is than its surroundings, in
// units of how much the surroundings vary. Whether thread is light or dark never matters afterwards.

import { blur } from "./blur.ts"
import type { GreyPicture } from "./grey.ts"

/** Surroundings reach this share of the longer side: several stitches, less than the fall of light. */
const surroundings = 0.08
/** Added to the local spread so that empty ground does not turn into noise: half the median and a floor. */
const [medianShare, floor] = [0.5, 0.02]

export function evenLight(picture: GreyPicture): GreyPicture {
  const { width, height, values } = picture
  const sigma = surroundings * Math.max(width, height)
  const mean = blur(picture, sigma).values
  const away = Float32Array.from(values, (value, i) => value - mean[i]!)
  const variance = blur({ width, height, values: away.map((value) => value * value) }, sigma).values
  const spread = variance.map((value) => Math.sqrt(Math.max(0, value)))
  const extra = medianShare * median(spread) + floor
  return { width, height, values: away.map((value, i) => value / (spread[i]! + extra)) }
}

export function median(values: ArrayLike<number>): number {
  const sorted = Float64Array.from(values).sort()
  if (sorted.length === 0) return 0
  const middle = sorted.length >> 1
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2
}
