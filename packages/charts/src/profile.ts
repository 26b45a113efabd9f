// The cross-section: height above the table against distance from the centre, round by round, with the
// lowest and highest stitch of each. Heights are drawn a whole number of times as tall as they are, and the
// chart says how many.

import type { Motif } from "@roundwright/motif"
import { requirePositive } from "@roundwright/numerics"
import type { LaidOutShape } from "@roundwright/relaxation"
import { tidy } from "./findings.ts"
import { unitOf } from "./laid-out-piece.ts"
import { heightsByRound, type RoundHeight } from "./round-heights.ts"
import { profileFinding } from "./shape-findings.ts"
import {
  type ChartLayer,
  type ChartOptions,
  type ChartSpec,
  frameChart,
  ink,
  plotWidth,
  type SpecValue,
  wholePx,
} from "./spec.ts"

/** Half a figure may stand out at the right. */
const rightPx = 16

/** Height of the plot, px, unless a tall piece needs more; at most as high as wide. */
const usualHeightPx = 220

/** Room over the highest point for the number of its round, as a share of the height. */
const topRoom = 1.16

/** How much taller than they are heights may be drawn: steps a reader can undo. */
const stretches = [1, 2, 3, 4, 5, 10, 20] as const

/**
 * @throws RoundwrightError `needs-shape` for a shape without its part in space, `nothing-to-draw`,
 * `not-finite`, `not-positive`, `chart-too-narrow`, `shape-of-another-motif`
 */
export function profileChart(
  motif: Motif,
  shape: LaidOutShape,
  options: ChartOptions = {},
): ChartSpec {
  const heights = heightsByRound(motif, shape)
  const unit = unitOf(shape, options)
  const reach = Math.max(...heights.map(({ distance }) => distance))
  requirePositive(reach, "The reach of the piece")
  const most = Math.max(...heights.map(({ highest }) => highest))
  const view = fitProfile(reach, most, plotWidth(options, rightPx))
  const numbered = numberedRounds(heights, view)
  const scale =
    view.stretch === 1 ? "Heights to scale" : `Heights drawn ${view.stretch} times as tall`
  const tell = ({ distance, mean, lowest, highest }: RoundHeight) =>
    `${tidy(distance, 1)} out, ${tidy(mean, 1)} high (${tidy(lowest, 1)} to ${tidy(highest, 1)})`
  const title = profileFinding(shape, heights, unit)
  return frameChart(
    {
      title,
      key: `Line: mean of each round. Bars: its lowest to its highest stitch. ${scale}.`,
      description: `${title}. Cross-section, lengths in ${unit}: ${heights
        .map(
          (height) => `${height.round === 0 ? "centre" : `round ${height.round}`}: ${tell(height)}`,
        )
        .join("; ")}.`,
    },
    `height above the table, ${unit}`,
    heights.map((height, order) => ({
      ...height,
      order,
      told: `${height.round === 0 ? "Centre" : `Round ${height.round}`}: ${tell(height)}`,
      label: numbered.has(order) ? String(height.round) : "",
      way: wayAt(heights, order, view.stretch),
    })),
    profileLayers(
      {
        field: "distance",
        type: "quantitative",
        scale: { domain: [0, view.reach], nice: false },
        axis: { title: `distance from the centre, ${unit}`, grid: false, tickCount: 6 },
      },
      {
        type: "quantitative",
        title: null,
        scale: { domain: [0, view.height], nice: false },
        axis: { tickCount: 5 },
      },
    ),
    options,
    { rightPx, heightPx: view.heightPx },
  )
}

/** Width of a figure of a round's number, its height, and the room between two, px. */
const figure = { widePx: 7, highPx: 12, gapPx: 3 } as const

/** Places in `heights` whose numbers stand apart on the drawing, from the outermost in. */
function numberedRounds(heights: readonly RoundHeight[], view: ProfileView): ReadonlySet<number> {
  const places = heights.map(({ round, distance, mean }) => ({
    x: distance * view.pxPerUnit,
    y: mean * view.pxPerUnit * view.stretch,
    halfWide: (figure.widePx * String(round).length) / 2,
  }))
  const kept: number[] = []
  for (let k = heights.length - 1; k >= 0; k--) {
    if (heights[k]!.round === 0) continue
    const own = places[k]!
    const apart = kept.every((other) => {
      const { x, y, halfWide } = places[other]!
      return (
        Math.abs(x - own.x) > own.halfWide + halfWide + figure.gapPx ||
        Math.abs(y - own.y) > figure.highPx
      )
    })
    if (apart) kept.push(k)
  }
  return new Set(kept)
}

/** The axis ends a little beyond the edge of the piece. */
const reachRoom = 1.04

/** A lift of less than this share of the reach is flat, and is not drawn up into something else. */
const flatShare = 1e-3

interface ProfileView {
  readonly heightPx: number
  /** Ends of the axes, in the unit of the chart. */
  readonly reach: number
  readonly height: number
  readonly stretch: number
  /** Along the table. */
  readonly pxPerUnit: number
}

/** One scale for both axes, heights stretched as far as they fit. */
function fitProfile(reach: number, most: number, widthPx: number): ProfileView {
  const [wide, high] = [reachRoom * reach, topRoom * most]
  const pxPerUnit = Math.min(widthPx / wide, high > 0 ? widthPx / high : Number.POSITIVE_INFINITY)
  const heightPx = wholePx(Math.max(usualHeightPx, high * pxPerUnit))
  const fits = stretches.findLast((stretch) => stretch * high * pxPerUnit <= heightPx) ?? 1
  const stretch = most > flatShare * reach ? fits : 1
  return {
    heightPx,
    reach: widthPx / pxPerUnit,
    height: heightPx / (pxPerUnit * stretch),
    stretch,
    pxPerUnit,
  }
}

function profileLayers(
  x: Readonly<Record<string, SpecValue>>,
  y: Readonly<Record<string, SpecValue>>,
): ChartLayer[] {
  return [
    {
      // Bars and no band: where a piece folds back under itself a band would cross itself.
      mark: { type: "rule", stroke: ink, strokeWidth: 10, opacity: 0.2 },
      encoding: { x, y: { ...y, field: "lowest" }, y2: { field: "highest" } },
    },
    {
      mark: { type: "line", stroke: ink, strokeWidth: 1.8 },
      encoding: { x, y: { ...y, field: "mean" }, order: { field: "order", type: "quantitative" } },
    },
    {
      mark: { type: "point", shape: "circle", size: 40, fill: ink, stroke: ink, opacity: 1 },
      encoding: { x, y: { ...y, field: "mean" } },
    },
    ...Object.entries(besideLine).map(([way, place]) => ({
      transform: [{ filter: { field: "way", equal: way } }],
      mark: { type: "text", ...place },
      encoding: {
        x,
        y: { ...y, field: "mean" },
        text: { field: "label", type: "nominal" },
      },
    })),
  ]
}

/** Where the number of a round stands: off the line, on its upper side. */
const besideLine = {
  up: { align: "right", baseline: "bottom", dx: -9, dy: -1 },
  level: { align: "center", baseline: "bottom", dy: -10 },
  down: { align: "left", baseline: "bottom", dx: 9, dy: -1 },
} as const

/** A line that climbs or falls less than this is level to the eye. */
const levelSlope = 0.35

/** Which way the drawn line runs at a round, from the one before to the one after. */
function wayAt(
  heights: readonly RoundHeight[],
  k: number,
  stretch: number,
): keyof typeof besideLine {
  const before = heights[Math.max(0, k - 1)]!
  const after = heights[Math.min(heights.length - 1, k + 1)]!
  const out = Math.abs(after.distance - before.distance)
  const slope = (stretch * (after.mean - before.mean)) / (out || Number.MIN_VALUE)
  if (Math.abs(slope) < levelSlope) return "level"
  return slope > 0 ? "up" : "down"
}
