// Growth against flat growth: how much longer each round makes the edge, beside how much longer it
// would have to get for the round to lie flat (2 pi d for a circle of depth d, 2 k tan(pi/k) d for k
// mitred corners).

import type { LedgerRow } from "@roundwright/flatness"
import {
  furthestFrom,
  growthFinding,
  lengthWords,
  tellOne,
  tellRounds,
  tidy,
  unevenRounds,
} from "./findings.ts"
import { drawableRows, figuresFit, roundAxis, valueAxis } from "./parts.ts"
import { type ChartOptions, type ChartSpec, frameChart, ink, plotWidth } from "./spec.ts"

/** The axis ends this much above the highest mark, so that a figure fits over it. */
const figureRoom = 1.1

/** Nothing is named at the right; half a figure may stand out. */
const rightPx = 12

/** @throws RoundwrightError `nothing-to-draw`, `not-finite`, `chart-too-narrow` */
export function growthChart(rows: readonly LedgerRow[], options: ChartOptions = {}): ChartSpec {
  drawableRows(rows)
  const unit = options.lengthUnit ?? "mm"
  const uneven = unevenRounds(rows)
  const told = figuresFit(rows.length, plotWidth(options, rightPx))
    ? new Set(uneven)
    : new Set([furthestFrom(uneven, (row) => row.fullness - 1)])
  const tell = (row: LedgerRow) =>
    `${lengthWords(row.growthMm, unit)}, flat needs ${lengthWords(row.flatGrowthMm, unit)}`
  const values = rows.map((row) => ({
    round: row.round,
    told: tellOne(row, tell),
    growth: row.growthMm,
    flatGrowth: row.flatGrowthMm,
    label: told.has(row) ? `\u00d7${tidy(row.fullness, 2)}` : "",
    top: Math.max(row.growthMm, row.flatGrowthMm, 0),
  }))
  const top = Math.max(...values.map((value) => value.top))
  const scale = top > 0 ? { domainMax: figureRoom * top } : {}
  const y = { type: "quantitative", stack: null, scale, ...valueAxis }
  const title = growthFinding(rows)
  return frameChart(
    {
      title,
      key: "Bar: what the round adds. Heavy line: what it must add to lie flat.",
      description: `${title}. Growth of the edge in ${unit}, beside what flat needs. ${tellRounds(
        rows,
        tell,
      )}`,
    },
    `growth of the edge, ${unit}`,
    values,
    [
      {
        mark: {
          type: "bar",
          fill: ink,
          fillOpacity: 0.22,
          stroke: ink,
          strokeWidth: 1,
          width: { band: 0.56 },
        },
        encoding: { x: roundAxis, y: { ...y, field: "growth" } },
      },
      {
        mark: { type: "tick", color: ink, thickness: 3, width: { band: 0.86 } },
        encoding: { x: roundAxis, y: { ...y, field: "flatGrowth" } },
      },
      {
        mark: { type: "text", baseline: "bottom", dy: -6 },
        encoding: {
          x: roundAxis,
          y: { ...y, field: "top" },
          text: { field: "label", type: "nominal" },
        },
      },
    ],
    options,
    { rightPx },
  )
}
