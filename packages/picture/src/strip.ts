// The unrolled piece as a picture: direction across, from 0 once round; radius upwards, the centre at the bottom.

import type { GreyPicture } from "./grey.ts"
import type { PictureMeasurement } from "./measure.ts"
import { polygonContour } from "./outline.ts"
import { sampleRound } from "./unroll.ts"

/** One row a row of the measurement, sampled from the straight picture as it looks. */
export function stripOf(measured: PictureMeasurement): GreyPicture {
  const { rows, view, centre, outline } = measured
  const width = rows[0]?.byAngle.length ?? 0
  const values = new Float32Array(width * rows.length)
  rows.forEach((row, i) => {
    const contour =
      outline.corners > 0
        ? polygonContour(outline.corners, outline.cornerAngle, row.bend)
        : undefined
    values.set(
      sampleRound(view.picture, centre, row.radius, contour),
      (rows.length - 1 - i) * width,
    )
  })
  return { width, height: rows.length, values }
}
