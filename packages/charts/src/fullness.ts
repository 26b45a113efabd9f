// Fullness by round and accumulated from the centre, with the band that counts as flat and the
// limits past which blocking cannot help.

import { bands, type LedgerRow } from "@roundwright/flatness"
import { fullnessFinding, tellOne, tellRounds, tidy } from "./findings.ts"
import { drawableRows, lineWithPoints, nameRoomPx, namesAtEnd, roundAxis } from "./parts.ts"
import { type ChartLayer, type ChartOptions, type ChartSpec, frameChart, ink } from "./spec.ts"

/** Values outside are drawn at the edge with their figure: one wild round must not flatten the rest. */
const drawnFullness = { least: 0, most: 2.5 } as const

/** @throws RoundwrightError `nothing-to-draw`, `not-finite`, `chart-too-narrow` */
export function fullnessChart(rows: readonly LedgerRow[], options: ChartOptions = {}): ChartSpec {
  drawableRows(rows)
  const tell = (row: LedgerRow) =>
    `${tidy(row.fullness, 2)} alone, ${tidy(row.accumulatedFullness, 2)} so far`
  const values = rows.map((row) => ({
    round: row.round,
    told: tellOne(row, tell),
    own: clamp(row.fullness),
    accumulated: clamp(row.accumulatedFullness),
    label: outside(row) && row !== rows.at(-1) ? tidy(row.fullness, 2) : "",
  }))
  const drawn = values.flatMap((value) => [value.own, value.accumulated])
  const low = Math.min(...drawn, 1 - 2 * bands.flat) - 0.05
  const high = Math.max(...drawn, 1 + 2 * bands.flat) + 0.05
  const scale = { domain: [low, high], nice: false, zero: false }
  const y = { scale, axis: { format: ".2~f", tickCount: 6 } }
  const title = fullnessFinding(rows)
  const last = values.at(-1)!
  const lastRow = rows.at(-1)!
  return frameChart(
    {
      title,
      key: "1 is flat, more ruffles, less cups. Grey band: flat as it is. Dotted: as far as blocking helps.",
      description: `${title}. Fullness, growth over flat growth, where 1 is flat; ${tidy(1 - bands.flat, 2)} to ${tidy(1 + bands.flat, 2)} counts as flat. ${tellRounds(
        rows,
        tell,
      )}`,
    },
    "fullness: growth over flat growth",
    values,
    [
      ...bandLayers(low, high, scale),
      ...lineWithPoints({
        field: "own",
        dash: [4, 4],
        shape: "square",
        filled: false,
        y,
      }),
      ...lineWithPoints({
        field: "accumulated",
        dash: [1, 0],
        shape: "circle",
        filled: true,
        y,
      }),
      outsideLabels(scale),
      ...namesAtEnd(
        [
          {
            text: outside(lastRow) ? `alone ${tidy(lastRow.fullness, 2)}` : "round alone",
            value: last.own,
          },
          { text: "piece so far", value: last.accumulated },
        ],
        last.round,
        high - low,
        "own",
      ),
    ],
    options,
    { rightPx: nameRoomPx },
  )
}

type Scale = { readonly domain: number[]; readonly nice: boolean; readonly zero: boolean }

/** The flat band, the line at 1, and those limits of blocking that fall inside the drawing. */
function bandLayers(low: number, high: number, scale: Scale): ChartLayer[] {
  const limits = [1 - bands.blocksLean, 1 + bands.blocksFull].filter(
    (limit) => limit > low && limit < high,
  )
  return [
    {
      data: { values: [{ least: 1 - bands.flat, most: 1 + bands.flat }] },
      mark: { type: "rect", fill: ink, opacity: 0.13 },
      encoding: {
        y: { field: "least", type: "quantitative", scale },
        y2: { field: "most" },
      },
    },
    {
      data: { values: [{ at: 1 }] },
      mark: { type: "rule", stroke: ink, strokeWidth: 1 },
      encoding: { y: { field: "at", type: "quantitative", scale } },
    },
    {
      data: { values: limits.map((at) => ({ at })) },
      mark: { type: "rule", stroke: ink, strokeWidth: 1.2, strokeDash: [1, 4] },
      encoding: { y: { field: "at", type: "quantitative", scale } },
    },
  ]
}

function outsideLabels(scale: Scale): ChartLayer {
  return {
    mark: { type: "text", baseline: "middle", align: "left", dx: 8 },
    encoding: {
      x: roundAxis,
      y: { field: "own", type: "quantitative", scale },
      text: { field: "label", type: "nominal" },
    },
  }
}

function outside(row: LedgerRow): boolean {
  return row.fullness !== clamp(row.fullness)
}

function clamp(fullness: number): number {
  return Math.min(drawnFullness.most, Math.max(drawnFullness.least, fullness))
}
