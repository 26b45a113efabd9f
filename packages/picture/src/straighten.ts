// A picture made straight: as it would be seen from right above, sampled through the homography from the
// straight picture to the one given.

import { brightnessAt, type GreyPicture } from "./grey.ts"
import { groundPlane } from "./ground.ts"
import { type Homography, project } from "./homography.ts"

/** Places outside the picture given look like its ground, with the same fall of light. */
export function straighten(
  picture: GreyPicture,
  toPicture: Homography,
  width: number,
  height: number,
): GreyPicture {
  const values = new Float32Array(width * height)
  const ground = groundPlane(picture)
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const from = project(toPicture, { x, y })
      const inside =
        from.x >= -0.5 &&
        from.y >= -0.5 &&
        from.x <= picture.width - 0.5 &&
        from.y <= picture.height - 0.5
      values[y * width + x] = inside
        ? brightnessAt(picture, from.x, from.y)
        : between0And1(ground.at(from.x, from.y))
    }
  return { width, height, values }
}

const between0And1 = (value: number) => Math.max(0, Math.min(1, value))
