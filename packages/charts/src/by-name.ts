// Charts of a checked pattern, by the name a notebook or a command asks for: those of the ledger, and those
// of the laid-out shape, which need the shape too.

import type { CheckResult } from "@roundwright/assessment"
import type { LedgerRow } from "@roundwright/flatness"
import type { Motif } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import type { LaidOutShape } from "@roundwright/relaxation"
import { basicName } from "@roundwright/stitches"
import { curvatureChart } from "./curvature.ts"
import { fullnessChart } from "./fullness.ts"
import { growthChart } from "./growth.ts"
import type { LaidOutPiece } from "./laid-out-piece.ts"
import { outlineChart } from "./outline.ts"
import { profileChart } from "./profile.ts"
import { laidOutReachChart, reachChart } from "./reach.ts"
import type { ChartOptions, ChartSpec, LengthUnit } from "./spec.ts"
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

/** Charts of the ledger that are surer by the laid-out shape, where there is one. */
const surerCharts: ReadonlyMap<string, DrawShape> = new Map<string, DrawShape>([
  ["reach", laidOutReachChart],
])

/** Charts of the ledger: every name `chartByName` knows without a shape. */
export const chartNames: readonly string[] = [...charts.keys()]

/** Charts of the laid-out shape: the names for which `chartByName` needs the piece. */
export const shapeChartNames: readonly string[] = [...shapeCharts.keys()]

/** Whether a chart of that name waits for the piece to be laid out: those that need its shape or are surer by it. */
export function asksForShape(name: string): boolean {
  return shapeCharts.has(name) || surerCharts.has(name)
}

/** What is drawn: `terms` name the stitches in a diagram's legend and the one whose width lengths are in. */
export type ChartedResult = Pick<CheckResult, "ledger" | "gauge"> &
  Partial<Pick<CheckResult, "terms">>

/** The rounds that grow from one another; all where nothing is ground. */
function groundOf(ledger: readonly LedgerRow[]): readonly LedgerRow[] {
  const ground = ledger.filter(({ inFront }) => !inFront)
  return ground.length > 0 ? ground : ledger
}

/**
 * The chart of that name for a checked pattern.
 * @param piece the motif with its laid-out shape, for the charts that ask for it
 * @throws RoundwrightError `unknown-chart`; `nothing-to-draw` when no round could be read; `needs-shape` when
 * a chart of the shape is asked for without one; what the chart itself refuses
 */
export function chartByName(
  name: string,
  result: ChartedResult,
  options: Omit<ChartOptions, "lengthUnit"> = {},
  piece?: LaidOutPiece,
): ChartSpec {
  const terms = result.terms ?? "US"
  const lengthUnit: LengthUnit = result.gauge.absolute
    ? "mm"
    : `widths of one ${basicName("sc", terms)}`
  const drawShape = surerCharts.get(name) ?? shapeCharts.get(name)
  if (drawShape && piece?.shape)
    return drawShape(piece.motif, piece.shape, { ...options, lengthUnit, terms })
  const draw = charts.get(name)
  if (draw) return draw(groundOf(result.ledger), { ...options, lengthUnit })
  if (!drawShape)
    throw new RoundwrightError("unknown-chart", `There is no chart called "${name}".`, {
      hint: `Charts are ${[...chartNames, ...shapeChartNames].join(", ")}.`,
    })
  throw new RoundwrightError("needs-shape", `The chart "${name}" needs the laid-out shape.`, {
    hint: `Have the piece laid out, or take one of ${chartNames.join(", ")}.`,
  })
}
