// Curvature angle by round, 2 pi (1 - fullness) in degrees: the wedge that a flat disc would lack
// (positive, it cups) or have too much (negative, it ruffles). Gauss-Bonnet; a paper cone is the
// picture behind it.

import { bands, type LedgerRow } from "@roundwright/flatness"
import { curvatureFinding, furthestFrom, tellOne, tellRounds, tidy } from "./findings.ts"
import { drawableRows, figuresFit, roundAxis, valueAxis } from "./parts.ts"
import {
  type ChartLayer,
  type ChartOptions,
  type ChartSpec,
  frameChart,
  ink,
  plotWidth,
} from "./spec.ts"

/** The angle at which the flat band of fullness ends. */
const flatDegrees = 360 * bands.flat

/** Nothing is named at the right; half a figure may stand out. */
const rightPx = 12

/** @throws RoundwrightError `nothing-to-draw`, `not-finite`, `chart-too-narrow` */
export function curvatureChart(rows: readonly LedgerRow[], options: ChartOptions = {}): ChartSpec {
  drawableRows(rows)
  const all = figuresFit(rows.length, plotWidth(options, rightPx))
  const furthest = furthestFrom(rows, (row) => row.curvatureDeg)
  const tell = (row: LedgerRow) => `${tidy(row.curvatureDeg, 0)} degrees`
  const values = rows.map((row) => ({
    round: row.round,
    told: tellOne(row, tell),
    degrees: row.curvatureDeg,
    label:
      all || row === furthest ? `${tidy(row.curvatureDeg, 0).replace("-", "\u2212")}\u00b0` : "",
  }))
  const title = curvatureFinding(rows)
  return frameChart(
    {
      title,
      key: "Filled bars up: towards a cup. Hollow bars down: towards a ruffle. Grey band: flat as it is.",
      description: `${title}. Curvature angle in degrees; above 0 cups, below 0 ruffles. ${tellRounds(
        rows,
        tell,
      )}`,
    },
    "curvature angle, degrees",
    values,
    [
      {
        data: { values: [{ low: -flatDegrees, high: flatDegrees }] },
        mark: { type: "rect", fill: ink, opacity: 0.13 },
        encoding: { y: { ...yAxis, field: "low" }, y2: { field: "high" } },
      },
      bars(values, (degrees) => degrees >= 0, 0.55),
      bars(values, (degrees) => degrees < 0, 0),
      {
        data: { values: [{ zero: 0 }] },
        mark: { type: "rule", stroke: ink, strokeWidth: 1 },
        encoding: { y: { ...yAxis, field: "zero" } },
      },
      labels(values, (degrees) => degrees >= 0, "bottom", -4),
      labels(values, (degrees) => degrees < 0, "top", 5),
    ],
    options,
    { rightPx },
  )
}

type Value = { readonly round: number; readonly degrees: number; readonly label: string }

const yAxis = {
  field: "degrees",
  type: "quantitative",
  stack: null,
  // Room for the figures beyond the ends of the bars, px.
  scale: { padding: 18 },
  ...valueAxis,
  // Whole degrees without marks between thousands, for which there is no room.
  axis: { ...valueAxis.axis, format: "d" },
}

function bars(
  values: readonly Value[],
  take: (degrees: number) => boolean,
  fillOpacity: number,
): ChartLayer {
  return {
    data: { values: values.filter((value) => take(value.degrees)) },
    mark: { type: "bar", fill: ink, fillOpacity, stroke: ink, width: { band: 0.6 } },
    encoding: { x: { ...(roundAxis as object), scale: roundsOf(values) }, y: yAxis },
  }
}

function labels(
  values: readonly Value[],
  take: (degrees: number) => boolean,
  baseline: string,
  dy: number,
): ChartLayer {
  return {
    data: { values: values.filter((value) => take(value.degrees)) },
    mark: { type: "text", baseline, dy },
    encoding: {
      x: { ...(roundAxis as object), scale: roundsOf(values) },
      y: yAxis,
      text: { field: "label", type: "nominal" },
    },
  }
}

/** All rounds in working order, since each layer holds only some of them. */
function roundsOf(values: readonly Value[]): { domain: number[] } {
  return { domain: [...new Set(values.map((value) => value.round))] }
}
