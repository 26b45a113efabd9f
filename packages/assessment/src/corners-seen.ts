// Corners that can be seen. A last round worked with twelve scallops makes a round doily and no shape of twelve corners:
// what stands out no farther than the yarn gives is patted away, and where there are many of them the eye takes the
// outline for a circle. A regular polygon's corners stand out by 1 / cos(pi / k) - 1 of the reach of its sides: 41 % for
// a square, 8 % for eight corners, 3.5 % for twelve.

import { usualMaterial } from "@roundwright/relaxation"

export interface Reaches {
  readonly corners: number
  /** Centre to the middle of a side, and to a corner, in one unit. */
  readonly sideReachMm: number
  readonly cornerReachMm: number
}

/** More corners than these are no polygon to the eye; it sees the points of a star (common practice, no source). */
export const mostOfPolygon = 8

/** Points stand out farther than any regular polygon's corners of that number: by twice the give, 7 %. */
const starShare = 2 * usualMaterial.give

/** The corners of an outline as far as they show; 0 for one that is round to the eye. */
export function cornersSeen({ corners, sideReachMm, cornerReachMm }: Reaches): number {
  const least = corners > mostOfPolygon ? starShare : usualMaterial.give
  return cornerReachMm > sideReachMm * (1 + least) ? corners : 0
}
