// Gaussian blur by three running means in each direction, whose repeated box tends to the bell curve;
// the work does not grow with the width. Borders repeat the edge pixel.
// Source: P. Kovesi, "Fast almost-Gaussian filtering", DICTA 2010 (widths of the boxes for a given sigma).

import type { GreyPicture } from "./grey.ts"

const passes = 3

/** @param sigma standard deviation in pixels; below 0.3 the picture is returned as it is */
export function blur(picture: GreyPicture, sigma: number): GreyPicture {
  if (!(sigma >= 0.3)) return picture
  const { width, height } = picture
  let values = Float64Array.from(picture.values)
  for (const half of boxHalves(sigma)) {
    values = runningMean(values, width, height, half, 1, width)
    values = runningMean(values, height, width, half, width, 1)
  }
  return { width, height, values: Float32Array.from(values) }
}

/** Half widths of three boxes whose variances add up to about sigma squared. */
function boxHalves(sigma: number): number[] {
  const ideal = Math.sqrt((12 * sigma * sigma) / passes + 1)
  const odd = Math.max(1, 2 * Math.floor((ideal - 1) / 2) + 1)
  const smaller = Math.round(
    (12 * sigma * sigma - passes * odd * odd - 4 * passes * odd - 3 * passes) / (-4 * odd - 4),
  )
  return Array.from({ length: passes }, (_, k) => ((k < smaller ? odd : odd + 2) - 1) / 2)
}

/** Running means along lines of `length` values `step` apart; lines start `skip` apart. */
function runningMean(
  values: Float64Array,
  length: number,
  lines: number,
  half: number,
  step: number,
  skip: number,
): Float64Array<ArrayBuffer> {
  if (half === 0) return Float64Array.from(values)
  const out = new Float64Array(values.length)
  const share = 1 / (2 * half + 1)
  for (let line = 0; line < lines; line++) {
    const start = line * skip
    const at = (k: number) => values[start + step * (k < 0 ? 0 : k >= length ? length - 1 : k)]!
    let sum = 0
    for (let k = -half; k <= half; k++) sum += at(k)
    for (let k = 0; k < length; k++) {
      out[start + step * k] = sum * share
      sum += at(k + half + 1) - at(k - half)
    }
  }
  return out
}
