// The triangle that makes the pointed edge of hexagons straight: two of its sides join two neighbours, its base is the edge.
// Worked in rows from the middle of the base, each row with an end stitch on the base at either end and a corner of 120
// degrees in its middle. Its sides lie half as far from that middle as a hexagon's from its own (sqrt(3)/4 of a side against
// sqrt(3)/2), so it takes half the rounds, and its sides end with the stitches of the hexagon's.

import { type Verdict, verdictOf } from "@roundwright/flatness"
import { RoundwrightError } from "@roundwright/numerics"
import {
  type BasicStitch,
  basicName,
  type Gauge,
  sizeOf,
  type Terms,
  turningChainCounts,
  turningChains,
} from "@roundwright/stitches"

export interface TriangleRow {
  readonly row: number
  readonly stitch: BasicStitch
  /** Stitches on each of the two sides; one more stands in the corner and one at either end. */
  readonly perSide: number
  readonly total: number
  /** Edge over flat edge so far. */
  readonly fullness: number
}

export interface EdgeTriangle {
  readonly rows: readonly TriangleRow[]
  readonly verdict: Verdict
  readonly text: readonly string[]
}

/** Edge of both sides that a height of one needs: 8 / sqrt(3). */
const flatGrowth = 8 / Math.sqrt(3)

/**
 * @param sideStitches on a side of the hexagon @param sideReachMm from its middle to a side @param basic stitch of its rounds
 * @throws RoundwrightError `bad-count`
 */
export function edgeTriangle(
  sideStitches: number,
  sideReachMm: number,
  basic: BasicStitch,
  gauge: Gauge,
  terms: Terms = "US",
): EdgeTriangle {
  if (!Number.isInteger(sideStitches) || sideStitches < 1 || !(sideReachMm > 0))
    throw new RoundwrightError(
      "bad-count",
      "A triangle needs the stitches and the size of the hexagon's side.",
      {
        numbers: { sideStitches, sideReachMm },
      },
    )
  const height = (one: BasicStitch) => sizeOf({ basic: one }, gauge, { turned: true }).heightMm
  const deepMm = sideReachMm / 2
  const stitches = rowsFor(deepMm, basic, height)
  let deep = 0
  let before = 1
  const whole = stitches.reduce((sum, one) => sum + height(one), 0)
  const rows = stitches.map((stitch, index): TriangleRow => {
    deep += height(stitch)
    const perSide = Math.max(before, Math.round((sideStitches * deep) / whole))
    before = perSide
    const { widthMm } = sizeOf({ basic: stitch }, gauge, { turned: true })
    // The corner's stitch and half of each end stand on the edge too.
    const edge = (2 * perSide + 2) * widthMm
    return {
      row: index + 1,
      stitch,
      perSide,
      total: 2 * perSide + 3,
      fullness: edge / (flatGrowth * deep),
    }
  })
  return {
    rows,
    verdict: verdictOf(rows.at(-1)!.fullness),
    text: rows.map((row, index) => rowText(row, rows[index - 1] ?? null, terms)),
  }
}

/**
 * Of what a side grows by in a row the corner of 120 degrees asks for a quarter (tan 30 against tan 30 + tan 60), its end on the
 * base for the rest.
 */
const cornerShare = 1 / 4

function rowText(row: TriangleRow, below: TriangleRow | null, terms: Terms): string {
  const { stitch, perSide, total } = row
  const name = basicName(stitch, terms)
  const chains = turningChains(stitch)
  const counts = turningChainCounts(stitch)
  const start = counts ? `ch ${chains} (counts as ${name}), ` : `ch ${chains}, `
  const first = counts ? 0 : 1
  if (below === null)
    return `Row ${row.row}: ${start}${total - 1 + first} ${name} in magic ring; turn. (${total} ${name})`
  const grown = Math.max(0, perSide - below.perSide)
  const corner = Math.round(grown * cornerShare)
  const end = grown - corner
  const inFirst = end + first
  const begin = inFirst === 0 ? "" : `${inFirst === 1 ? "" : `${inFirst} `}${name} in first st, `
  const along = `${name} in next ${below.perSide} sts`
  const several = (many: number) => (many === 1 ? name : `${many} ${name}`)
  return `Row ${row.row}: ${start}${begin}${along}, ${several(1 + 2 * corner)} in next st, ${along}, ${several(end + 1)} in last st; turn. (${total} ${name})`
}

/** Whole rows of the hexagon's stitch, the last one lower or taller where that comes nearer. */
function rowsFor(
  deepMm: number,
  basic: BasicStitch,
  height: (one: BasicStitch) => number,
): BasicStitch[] {
  const own = height(basic)
  const many = Math.max(0, Math.floor(deepMm / own - 0.3))
  const rest = deepMm - many * own
  const last = (["sc", "hdc", "dc", "tr"] as const).reduce((best, one) =>
    Math.abs(height(one) - rest) < Math.abs(height(best) - rest) ? one : best,
  )
  return [...Array<BasicStitch>(many).fill(basic), last]
}

/** What stands above its rows. */
export function triangleLead({ rows, verdict }: EdgeTriangle): string {
  const side = rows.at(-1)!.perSide
  const flat = verdict === "flat" ? "lies flat" : verdictSaid[verdict]
  return `Edge triangle, ${rows.length} rows from the middle of its base, ${flat}; ${side} stitches on each of its two sides, the corner between them`
}

const verdictSaid = {
  "blocks-flat": "blocks flat",
  cups: "draws in, so take a stitch or two more a row at its ends",
  ruffles: "ruffles, so take fewer at its ends",
} as const
