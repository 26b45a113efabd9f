// How the straight picture was got: as it is, by four corners, by the piece's
// own regularity, or by the edge of a round piece.

import type { GreyPicture, Point } from "./grey.ts"
import { fitHomography, type Homography } from "./homography.ts"
import type { RegularView } from "./regularity.ts"
import { straighten } from "./straighten.ts"

export interface View {
  readonly by: "as it is" | "corners" | "regularity" | "round edge"
  /** The straight picture, on which everything is measured. */
  readonly picture: GreyPicture
  /** From the straight picture to the working picture. */
  readonly toWorking: Homography
  /** What the piece's own regularity said, where it was asked. */
  readonly regular?: RegularView
  /** Shorter over longer axis of the round edge, where the view was made straight by it. */
  readonly flattened?: number
}

/** Room left round the square of the corners, of its side: the piece may stand out beyond it. */
const margin = 0.12

/**
 * @param corners of something square, in order round it, in pixels of the working picture
 * @throws RoundwrightError `points-in-line`, `too-few-points`
 */
export function cornersView(working: GreyPicture, corners: readonly Point[]): View {
  const sides = corners.map((corner, i) => {
    const next = corners[(i + 1) % corners.length]!
    return Math.hypot(next.x - corner.x, next.y - corner.y)
  })
  // Of the mean length, so that a pixel straight is about a pixel of the picture.
  const side = sides.reduce((sum, length) => sum + length, 0) / Math.max(1, sides.length)
  const room = Math.round(margin * side)
  const square = [
    [0, 0],
    [1, 0],
    [1, 1],
    [0, 1],
  ].map(([x, y]) => ({ x: room + x! * side, y: room + y! * side }))
  const { matrix } = fitHomography(square, corners)
  const size = Math.round(side + 2 * room)
  return {
    by: "corners",
    picture: straighten(working, matrix, size, size),
    toWorking: matrix,
  }
}
