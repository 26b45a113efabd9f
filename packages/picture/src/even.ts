// Evens the light: what is left is how much lighter or darker each place is than its surroundings, in
// units of how much the surroundings vary. Whether thread is light or dark never matters afterwards.

import { blur } from "./blur.ts"
import type { GreyPicture } from "./grey.ts"

/** Surroundings reach this share of the longer side: several stitches, less than the fall of light. */
const surroundings = 0.08
/** Added to the local spread so that empty ground does not turn into noise: half the median and a floor. */
const [medianShare, floor] = [0.5, 0.02]

/** @param mask 1 where the piece is: only there the fall of light is looked for */
export function evenLight(given: GreyPicture, mask?: Uint8Array): GreyPicture {
  const picture = mask ? withoutFall(given, mask) : given
  const { width, height, values } = picture
  const sigma = surroundings * Math.max(width, height)
  const mean = blur(picture, sigma).values
  const away = Float32Array.from(values, (value, i) => value - mean[i]!)
  const variance = blur({ width, height, values: away.map((value) => value * value) }, sigma).values
  const spread = variance.map((value) => Math.sqrt(Math.max(0, value)))
  const extra = medianShare * median(spread) + floor
  return { width, height, values: away.map((value, i) => value / (spread[i]! + extra)) }
}

/**
 * Light that falls off across the picture takes the contrast of the thread with it: a plane through the
 * logarithm of the local contrast on the piece is divided out, about the picture's mean brightness there.
 */
function withoutFall(picture: GreyPicture, mask: Uint8Array): GreyPicture {
  const { width, height, values } = picture
  const sigma = surroundings * Math.max(width, height)
  const mean = blur(picture, sigma).values
  const squares = Float32Array.from(values, (value, i) => (value - mean[i]!) ** 2)
  const variance = blur({ width, height, values: squares }, sigma).values
  const onPiece = [...variance.keys()].filter((i) => mask[i] === 1 && i % sampled === 0)
  const usual = median(onPiece.map((i) => variance[i]!))
  const rows = onPiece
    .filter((i) => variance[i]! > faint * usual)
    .map((i) => ({
      x: (i % width) / width - 0.5,
      y: Math.floor(i / width) / height - 0.5,
      log: 0.5 * Math.log(variance[i]!),
    }))
  if (rows.length < leastRows) return picture
  const plane = planeThrough(rows)
  return {
    width,
    height,
    values: values.map((value, i) => {
      const fall =
        plane.x * ((i % width) / width - 0.5) + plane.y * (Math.floor(i / width) / height - 0.5)
      return value / Math.exp(Math.max(-mostFall, Math.min(mostFall, fall)))
    }),
  }
}

/** Every so many pixels are looked at; contrast below this share of the usual is a gap; fewer places tell no fall. */
const [sampled, faint, leastRows] = [7, 0.1, 60]
/** Light is never made up for by more than this, as a logarithm. */
const mostFall = 1.2

function planeThrough(rows: readonly { x: number; y: number; log: number }[]) {
  const n = rows.length
  const [mx, my, ml] = [
    rows.reduce((s, r) => s + r.x, 0) / n,
    rows.reduce((s, r) => s + r.y, 0) / n,
    rows.reduce((s, r) => s + r.log, 0) / n,
  ]
  let [xx, xy, yy, xl, yl] = [1e-9, 0, 1e-9, 0, 0]
  for (const { x, y, log } of rows) {
    xx += (x - mx) ** 2
    xy += (x - mx) * (y - my)
    yy += (y - my) ** 2
    xl += (x - mx) * (log - ml)
    yl += (y - my) * (log - ml)
  }
  const det = xx * yy - xy * xy
  return { x: (xl * yy - yl * xy) / det, y: (yl * xx - xl * xy) / det }
}

export function median(values: ArrayLike<number>): number {
  const sorted = Float64Array.from(values).sort()
  if (sorted.length === 0) return 0
  const middle = sorted.length >> 1
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2
}
