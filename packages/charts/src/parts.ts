// Parts that several charts are put together from: the axis of rounds, a line with its points, and
// names written beside the ends of lines instead of a legend.

import type { LedgerRow } from "@roundwright/flatness"
import { RoundwrightError, requireFinite } from "@roundwright/numerics"
import { type ChartLayer, ink, type SpecValue } from "./spec.ts"

/** Room for a name beside the end of a line, px. */
export const nameRoomPx = 92

/** A figure above a bar or point takes this much, px; where rounds stand closer only one is told. */
const figureRoomPx = 40

/** True when a figure fits above every round. */
export function figuresFit(rounds: number, plotWidthPx: number): boolean {
  return rounds * figureRoomPx <= plotWidthPx
}

/** @throws RoundwrightError `nothing-to-draw` without rounds, `not-finite` for a value that is none */
export function drawableRows(rows: readonly LedgerRow[]): readonly LedgerRow[] {
  if (rows.length === 0)
    throw new RoundwrightError("nothing-to-draw", "There is no round to draw.", {
      hint: "The pattern must have at least one round that could be read.",
    })
  for (const row of rows)
    for (const [name, value] of Object.entries(row))
      if (typeof value === "number") requireFinite(value, `${name} of round ${row.round}`)
  return rows
}

/** Rounds along the bottom, in working order. */
export const roundAxis: SpecValue = {
  field: "round",
  type: "ordinal",
  sort: null,
  axis: { title: "round", labelAngle: 0, grid: false },
}

/** The y axis: few lines, no title of its own (the frame sets it level above). */
export const valueAxis = { title: null, axis: { tickCount: 6 } } as const

export interface LineStyle {
  readonly field: string
  readonly dash: readonly number[]
  readonly shape: "circle" | "square" | "diamond"
  readonly filled: boolean
  /** Extra properties of the y encoding, a scale for example. */
  readonly y?: Readonly<Record<string, SpecValue>>
}

/** A line and a point at every round. */
export function lineWithPoints(style: LineStyle): ChartLayer[] {
  const y: SpecValue = {
    field: style.field,
    type: "quantitative",
    ...valueAxis,
    ...style.y,
  }
  const encoding = { x: roundAxis, y }
  return [
    {
      mark: { type: "line", stroke: ink, strokeWidth: 1.6, strokeDash: [...style.dash] },
      encoding,
    },
    {
      mark: {
        type: "point",
        shape: style.shape,
        size: 46,
        strokeWidth: 1.5,
        stroke: ink,
        fill: style.filled ? ink : "transparent",
        opacity: 1,
      },
      encoding,
    },
  ]
}

export interface EndName {
  readonly text: string
  readonly value: number
}

/** Least distance between two names, as a share of the height of the plot: one line of text. */
const nameGap = 0.08

/**
 * Names at the right of the plot, at the height of their last round, moved apart where they would overlap.
 * @param span from the lowest to the highest value of the y axis
 */
export function namesAtEnd(
  names: readonly EndName[],
  round: number,
  span: number,
  field: string,
): ChartLayer[] {
  const sorted = [...names].sort((a, b) => a.value - b.value)
  return sorted.map((name, index) => {
    const below = sorted[index - 1]
    const above = sorted[index + 1]
    const near = (other: EndName | undefined) =>
      other !== undefined && Math.abs(other.value - name.value) < nameGap * span
    return {
      data: { values: [{ round, [field]: name.value, name: name.text }] },
      mark: {
        type: "text",
        align: "left",
        baseline: "middle",
        dx: 6,
        dy: near(below) ? -8 : near(above) ? 8 : 0,
        limit: 0,
      },
      encoding: {
        x: { value: "width" },
        y: { field, type: "quantitative" },
        text: { field: "name", type: "nominal" },
      },
    }
  })
}
