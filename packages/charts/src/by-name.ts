// Charts of a checked pattern, by the name a notebook or a command asks for: those of the ledger, and those
// of the laid-out shape, which need the shape too.

import type { CheckResult } from "@roundwright/assessment"
import type { LedgerRow } from "@roundwright/flatness"
import type { Motif } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import type { LaidOutShape } from "@roundwright/relaxation"
import { curvatureChart } from "./curvature.ts"
import { fullnessChart } from "./fullness.ts"
import { growthChart } from "./growth.ts"
import type { LaidOutPiece } from "./laid-out-piece.ts"
import { outlineChart } from "./outline.ts"
import { profileChart } from "./profile.ts"
import { reachChart } from "./reach.ts"
import type { ChartOptions, ChartSpec } from "./spec.ts"
import { type DiagramOptions, stitchDiagram } from "./stitch-diagram.ts"
import { strainChart } from "./strain.ts"

type DrawLedger = (rows: readonly LedgerRow[], options: ChartOptions) => ChartSpec
type DrawShape = (motif: Motif, shape: LaidOutShape, options: DiagramOptions) => ChartSpec

const charts: ReadonlyMap<string, DrawLedger> = new Map<string, DrawLedger>([
  ["growth", growthChart],
  ["fullness", fullnessChart],
  ["curvature", curvatureChart],
  ["reach", reachChart],
])

const shapeCharts: ReadonlyMap<string, DrawShape> = new Map<string, DrawShape>([
  ["diagram", stitchDiagram],
  ["profile", profileChart],
  ["outline", outlineChart],
  ["strain", strainChart],
])

/** Charts of the ledger: every name `chartByName` knows without a shape. */
export const chartNames: readonly string[] = [...charts.keys()]

/** Charts of the laid-out shape: the names for which `chartByName` needs the piece. */
export const shapeChartNames: readonly string[] = [...shapeCharts.keys()]

/** What is drawn: `terms` name the stitches in a diagram's legend. */
export type ChartedResult = Pick<CheckResult, "ledger" | "gauge"> &
  Partial<Pick<CheckResult, "terms">>

/**
 * The chart of that name for a checked pattern.
 * @param piece the motif with its laid-out shape, for the charts of `shapeChartNames`
 * @throws RoundwrightError `unknown-chart`; `nothing-to-draw` when no round could be read; `needs-shape` when
 * a chart of the shape is asked for without one; what the chart itself refuses
 */
export function chartByName(
  name: string,
  result: ChartedResult,
  options: Omit<ChartOptions, "lengthUnit"> = {},
  piece?: LaidOutPiece,
): ChartSpec {
  const lengthUnit = result.gauge.absolute ? "mm" : "widths of one sc"
  const draw = charts.get(name)
  if (draw) return draw(result.ledger, { ...options, lengthUnit })
  const drawShape = shapeCharts.get(name)
  if (!drawShape)
    throw new RoundwrightError("unknown-chart", `There is no chart called "${name}".`, {
      hint: `Charts are ${[...chartNames, ...shapeChartNames].join(", ")}.`,
    })
  if (!piece?.shape)
    throw new RoundwrightError("needs-shape", `The chart "${name}" needs the laid-out shape.`, {
      hint: `Have the piece laid out, or take one of ${chartNames.join(", ")}.`,
    })
  const terms = result.terms ?? "US"
  return drawShape(piece.motif, piece.shape, { ...options, lengthUnit, terms })
}
