// The cross-section: height above the table against distance from the centre, round by round, with the
// lowest and highest stitch of each. Heights are drawn a whole number of times as tall as they are, and the
// chart says how many.

import type { Motif } from "@roundwright/motif"
import { RoundwrightError, requireFinite, requirePositive } from "@roundwright/numerics"
import { type LaidOutShape, middle } from "@roundwright/relaxation"
import { tidy } from "./findings.ts"
import { requireSamePiece, unitOf } from "./laid-out-piece.ts"
import { profileFinding } from "./shape-findings.ts"
import {
  type ChartLayer,
  type ChartOptions,
  type ChartSpec,
  frameChart,
  ink,
  plotWidth,
  type SpecValue,
} from "./spec.ts"

/** The height of one round over the table; the centre is told as round 0. */
export interface RoundHeight {
  readonly round: number
  /** Mean distance from the centre, as seen from above. */
  readonly distance: number
  readonly mean: number
  readonly lowest: number
  readonly highest: number
}

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
  const scale =
    view.stretch === 1 ? "Heights to scale" : `Heights drawn ${view.stretch} times as tall`
  const title = profileFinding(shape, heights, unit)
  return frameChart(
    {
      title,
      key: `Line: mean of each round. Bars: its lowest to its highest stitch. ${scale}.`,
      description: `${title}. Cross-section, lengths in ${unit}: ${heights
        .map(
          ({ round, distance, mean, lowest, highest }) =>
            `${round === 0 ? "centre" : `round ${round}`}: ${tidy(distance, 1)} out, ${tidy(mean, 1)} high (${tidy(lowest, 1)} to ${tidy(highest, 1)})`,
        )
        .join("; ")}.`,
    },
    `height above the table, ${unit}`,
    heights.map((height, order) => ({
      ...height,
      order,
      label: height.round === 0 ? "" : String(height.round),
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

/** The axis ends a little beyond the edge of the piece. */
const reachRoom = 1.04

/** @throws RoundwrightError `needs-shape`, `not-finite`, `not-positive`, `shape-of-another-motif` */
export function heightsByRound(motif: Motif, shape: LaidOutShape): RoundHeight[] {
  const { net, space } = shape
  requireSamePiece(motif, net)
  if (space === null)
    throw new RoundwrightError("needs-shape", "The piece was laid out flat only.", {
      hint: "Lay it out in space as well to see its profile.",
    })
  const { xyz } = space
  const unit = requirePositive(shape.mmPerUnit, "The length of a unit")
  for (const value of xyz) requireFinite(value, "A coordinate of the shape in space")
  const [cx, cy] = middle(net, xyz, 3)
  let lowest = Number.POSITIVE_INFINITY
  for (let k = 2; k < xyz.length; k += 3) lowest = Math.min(lowest, xyz[k]!)
  const measure = (round: number, nodes: readonly number[]): RoundHeight => {
    const height = nodes.map((node) => (xyz[3 * node + 2]! - lowest) / unit)
    const away = nodes.map((node) => Math.hypot(xyz[3 * node]! - cx, xyz[3 * node + 1]! - cy))
    return {
      round,
      distance: mean(away) / unit,
      mean: mean(height),
      lowest: Math.min(...height),
      highest: Math.max(...height),
    }
  }
  return [
    measure(0, net.centre),
    ...net.edges.map(({ nodes }, round) => measure(motif.rounds[round]!.number, nodes)),
  ]
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length
}

/** A lift of less than this share of the reach is flat, and is not drawn up into something else. */
const flatShare = 1e-3

interface ProfileView {
  readonly heightPx: number
  /** Ends of the axes, in the unit of the chart. */
  readonly reach: number
  readonly height: number
  readonly stretch: number
}

/** One scale for both axes, heights stretched as far as they fit. */
function fitProfile(reach: number, most: number, widthPx: number): ProfileView {
  const [wide, high] = [reachRoom * reach, topRoom * most]
  const pxPerUnit = Math.min(widthPx / wide, high > 0 ? widthPx / high : Number.POSITIVE_INFINITY)
  const heightPx = Math.ceil(Math.max(usualHeightPx, high * pxPerUnit))
  const fits = stretches.findLast((stretch) => stretch * high * pxPerUnit <= heightPx) ?? 1
  const stretch = most > flatShare * reach ? fits : 1
  return {
    heightPx,
    reach: widthPx / pxPerUnit,
    height: heightPx / (pxPerUnit * stretch),
    stretch,
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
    {
      mark: { type: "text", dy: -12, baseline: "bottom" },
      encoding: {
        x,
        y: { ...y, field: "mean" },
        text: { field: "label", type: "nominal" },
      },
    },
  ]
}
