// From the straight picture, in which all radii are measured, to the picture given, and back.

import type { Point } from "./grey.ts"
import { type Homography, invert, project } from "./homography.ts"

export interface Given {
  /** Pixels of the working picture a pixel of the picture given. */
  readonly scale: number
  /** Where the box begins in the picture given. */
  readonly offset: Point
  readonly view: { readonly toWorking: Homography }
}

/** @param p in the straight picture @returns the same place in the picture given, pixels */
export function toGiven({ scale, offset, view }: Given, p: Point): Point {
  const { x, y } = project(view.toWorking, p)
  return { x: (x + 0.5) / scale - 0.5 + offset.x, y: (y + 0.5) / scale - 0.5 + offset.y }
}

/** The other way. */
export function fromGiven({ scale, offset, view }: Given, p: Point): Point {
  return project(invert(view.toWorking), {
    x: (p.x - offset.x + 0.5) * scale - 0.5,
    y: (p.y - offset.y + 0.5) * scale - 0.5,
  })
}
