// What a stitch measures along the edge of lace. In solid fabric it is propped up by its neighbours' posts; beside a chain it
// has none on that side, and its head draws together.

/**
 * Half of a stitch that stands beside a chain, against the same half in solid fabric. In five published filet grids a dc and
 * two chains measure 0.92 to 1.25 of the dc's height; with full widths they would measure 1.4 (rows `filet_mesh` of the
 * gathered dimensions). Those grids fitted this and the chain's length; sizes of published pieces judge them.
 */
export const besideChainShare = 0.7

/**
 * Width of a stitch beside chains, in the unit of its width in solid fabric: each side that faces one counts by its share.
 * @param sides how many of its two neighbours along the round are chains
 */
export function widthBesideChains(widthMm: number, sides: 0 | 1 | 2): number {
  return widthMm * (1 - (sides / 2) * (1 - besideChainShare))
}
