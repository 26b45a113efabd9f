// The piece unrolled: one row of samples round the centre for each radius, either along circles or along
// contours that go over from a circle to the outline's polygon.

import { brightnessAt, type GreyPicture, type Point } from "./grey.ts"

/** Samples a row; a power of two. Counts up to a sixth of it are read. */
export const samplesRound = 1024

/** Distance from the centre in a direction, as a multiple of the contour's radius to the middle of a side. */
export type Contour = (angle: number) => number

export const circle: Contour = () => 1

/** Samples `picture` at `radius` x contour for each of the angles, which default to even steps from 0. */
export function sampleRound(
  picture: GreyPicture,
  centre: Point,
  radius: number,
  contour: Contour = circle,
  angles: ArrayLike<number> = evenAngles,
): Float64Array {
  const row = new Float64Array(angles.length)
  for (let i = 0; i < row.length; i++) {
    const angle = angles[i]!
    const r = radius * contour(angle)
    row[i] = brightnessAt(picture, centre.x + r * Math.cos(angle), centre.y + r * Math.sin(angle))
  }
  return row
}

/** Even steps once round. */
export const evenAngles: Float64Array = Float64Array.from(
  { length: samplesRound },
  (_, i) => (2 * Math.PI * i) / samplesRound,
)

/** Angles at even steps of length along a contour, from angle 0: stitches along a side are even in length, not in angle. */
export function anglesAlong(contour: Contour, count = samplesRound): Float64Array {
  const fine = 2 * count
  const lengths = new Float64Array(fine + 1)
  const at = (i: number): [number, number] => {
    const angle = (2 * Math.PI * i) / fine
    const r = contour(angle)
    return [r * Math.cos(angle), r * Math.sin(angle)]
  }
  let before = at(0)
  for (let i = 1; i <= fine; i++) {
    const here = at(i)
    lengths[i] = lengths[i - 1]! + Math.hypot(here[0] - before[0], here[1] - before[1])
    before = here
  }
  const angles = new Float64Array(count)
  for (let k = 0, i = 0; k < count; k++) {
    const wanted = (lengths[fine]! * k) / count
    while (lengths[i + 1]! < wanted) i += 1
    const share = (wanted - lengths[i]!) / (lengths[i + 1]! - lengths[i]!)
    angles[k] = (2 * Math.PI * (i + share)) / fine
  }
  return angles
}
