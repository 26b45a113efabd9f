// What a squaring is asked to reach: sides that bow by less than 2 % of their length, corners within 3 degrees of the
// polygon's.

/** Bow as a share of the side, and degrees off the polygon's corner. */
export const squaringTarget = { bow: 0.02, angleDeg: 3 } as const
