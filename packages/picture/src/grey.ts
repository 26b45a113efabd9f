// A picture as numbers: one brightness a pixel, 0 black to 1 white, rows from the top. Pixel (x, y) covers
// the unit square about its centre, so the middle of the first pixel is at (0, 0). All positions of this
// package are in these pixels, x to the right and y down; angles turn from x towards y.

import { RoundwrightError } from "@roundwright/numerics"

export interface GreyPicture {
  readonly width: number
  readonly height: number
  /** width x height values, row after row. */
  readonly values: Float32Array
}

export interface Point {
  readonly x: number
  readonly y: number
}

/** A place of a picture in the same picture shrunk to `scale`. */
export function rescaled({ x, y }: Point, scale: number): Point {
  return { x: (x + 0.5) * scale - 0.5, y: (y + 0.5) * scale - 0.5 }
}

/** A part of a picture: left upper corner and size in pixels. */
export interface Box {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

/** Smaller than this no ring has enough pixels to be told from noise. */
export const leastSidePx = 24

/** @throws RoundwrightError `picture-too-small`, `picture-odd-length` */
export function greyPicture(width: number, height: number, values: Float32Array): GreyPicture {
  if (!(width >= leastSidePx && height >= leastSidePx))
    throw new RoundwrightError(
      "picture-too-small",
      `The picture is ${width} x ${height} pixels: too small to measure anything in it.`,
      {
        hint: `Take one on which the motif is at least 200 pixels across.`,
        numbers: { width, height },
      },
    )
  if (values.length !== width * height)
    throw new RoundwrightError(
      "picture-odd-length",
      `A picture of ${width} x ${height} pixels has ${width * height} values, not ${values.length}.`,
    )
  for (const value of values)
    if (!Number.isFinite(value))
      throw new RoundwrightError("not-finite", "A picture's brightness must be finite everywhere.")
  return { width, height, values }
}

/** Weights of red, green and blue in brightness (ITU-R BT.601). */
const [redWeight, greenWeight, blueWeight] = [0.299, 0.587, 0.114]

/** Bytes red, green, blue, opacity a pixel, as a browser's canvas gives them; clear parts count as white. */
export function greyOfRgba(
  width: number,
  height: number,
  bytes: Uint8ClampedArray | Uint8Array,
): GreyPicture {
  const values = new Float32Array(width * height)
  for (let i = 0; i < values.length; i++) {
    const opacity = bytes[4 * i + 3]! / 255
    const bright =
      redWeight * bytes[4 * i]! + greenWeight * bytes[4 * i + 1]! + blueWeight * bytes[4 * i + 2]!
    values[i] = (bright / 255) * opacity + (1 - opacity)
  }
  return greyPicture(width, height, values)
}

/** Brightness between pixels by bilinear interpolation; outside, the nearest edge. */
export function brightnessAt(picture: GreyPicture, x: number, y: number): number {
  const { width, height, values } = picture
  const cx = Math.max(0, Math.min(width - 1, x))
  const cy = Math.max(0, Math.min(height - 1, y))
  const i = Math.min(Math.floor(cx), width - 2)
  const j = Math.min(Math.floor(cy), height - 2)
  const [u, v] = [cx - i, cy - j]
  const at = j * width + i
  return (
    (values[at]! * (1 - u) + values[at + 1]! * u) * (1 - v) +
    (values[at + width]! * (1 - u) + values[at + width + 1]! * u) * v
  )
}

/** Cuts out a box, kept within the picture. @throws RoundwrightError `box-outside` */
export function cutOut(picture: GreyPicture, box: Box): GreyPicture {
  const left = Math.max(0, Math.round(box.x))
  const top = Math.max(0, Math.round(box.y))
  const right = Math.min(picture.width, Math.round(box.x + box.width))
  const bottom = Math.min(picture.height, Math.round(box.y + box.height))
  const [width, height] = [right - left, bottom - top]
  if (!(width >= leastSidePx && height >= leastSidePx))
    throw new RoundwrightError(
      "box-outside",
      `The box ${box.x}, ${box.y}, ${box.width} x ${box.height} leaves too little of a picture of ${picture.width} x ${picture.height} pixels.`,
      { hint: "Give left, top, width and height in pixels of the picture." },
    )
  const values = new Float32Array(width * height)
  for (let y = 0; y < height; y++)
    values.set(
      picture.values.subarray(
        (top + y) * picture.width + left,
        (top + y) * picture.width + left + width,
      ),
      y * width,
    )
  return { width, height, values }
}

/**
 * Shrinks so that the longer side is at most `side`, averaging the area each new pixel covers; a smaller
 * picture stays as it is. A position p of the picture is (p + 0.5) x scale - 0.5 in the small one.
 */
export function shrink(
  picture: GreyPicture,
  side: number,
): { readonly picture: GreyPicture; readonly scale: number } {
  const longer = Math.max(picture.width, picture.height)
  if (longer <= side) return { picture, scale: 1 }
  const scale = side / longer
  const width = Math.max(1, Math.round(picture.width * scale))
  const height = Math.max(1, Math.round(picture.height * scale))
  const across = averageRows(picture.values, picture.width, picture.height, width, scale)
  const turned = averageRows(
    transpose(across, width, picture.height),
    picture.height,
    width,
    height,
    scale,
  )
  return { picture: { width, height, values: transpose(turned, height, width) }, scale }
}

/** Each row of `from` values brought to `to`, every new value the mean over 1 / scale old ones. */
function averageRows(
  values: Float32Array,
  from: number,
  rows: number,
  to: number,
  scale: number,
): Float32Array {
  const out = new Float32Array(to * rows)
  for (let k = 0; k < to; k++) {
    const start = k / scale
    const end = Math.min(from, (k + 1) / scale)
    const first = Math.min(from - 1, Math.floor(start))
    const last = Math.min(from - 1, Math.ceil(end) - 1)
    for (let row = 0; row < rows; row++) {
      let [sum, weight] = [0, 0]
      for (let i = first; i <= last; i++) {
        const w = Math.max(1e-6, Math.min(i + 1, end) - Math.max(i, start))
        sum += w * values[row * from + i]!
        weight += w
      }
      out[row * to + k] = sum / weight
    }
  }
  return out
}

function transpose(values: Float32Array, width: number, height: number): Float32Array {
  const out = new Float32Array(values.length)
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) out[x * height + y] = values[y * width + x]!
  return out
}
