// A picture made straight: as it would be seen from right above, sampled through the homography from the
// straight picture to the one given.

import { median } from "./even.ts"
import { brightnessAt, type GreyPicture } from "./grey.ts"
import { type Homography, project } from "./homography.ts"

/** Places outside the picture given get the brightness of its border, so that they look like ground. */
export function straighten(
  picture: GreyPicture,
  toPicture: Homography,
  width: number,
  height: number,
): GreyPicture {
  const values = new Float32Array(width * height)
  const ground = borderBrightness(picture)
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const from = project(toPicture, { x, y })
      const inside =
        from.x >= -0.5 &&
        from.y >= -0.5 &&
        from.x <= picture.width - 0.5 &&
        from.y <= picture.height - 0.5
      values[y * width + x] = inside ? brightnessAt(picture, from.x, from.y) : ground
    }
  return { width, height, values }
}

function borderBrightness({ width, height, values }: GreyPicture): number {
  const border: number[] = []
  for (let x = 0; x < width; x++) border.push(values[x]!, values[(height - 1) * width + x]!)
  for (let y = 0; y < height; y++) border.push(values[y * width]!, values[y * width + width - 1]!)
  return median(border)
}
