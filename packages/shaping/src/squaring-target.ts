// What a squaring is asked to reach: sides that bow by less than 2 % of their length, corners within 3 degrees of the
// polygon's, and sides of one length but for what blocking evens out.

/** Bow as a share of the side, degrees off the polygon's corner, and longest less shortest side as a share of their mean. */
export const squaringTarget = { bow: 0.02, angleDeg: 3, sideSpread: 0.1 } as const

/** Longest less shortest side as a share of their mean. */
export function sideSpread(sides: readonly { readonly lengthMm: number }[]): number {
  const lengths = sides.map(({ lengthMm }) => lengthMm)
  const mean = lengths.reduce((sum, length) => sum + length, 0) / lengths.length
  return (Math.max(...lengths) - Math.min(...lengths)) / mean
}
