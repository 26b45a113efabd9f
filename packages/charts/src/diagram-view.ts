// How a piece is placed in the plot of a stitch diagram, and how its marks become rows of data and an encoding:
// a point whose shape is the symbol, whose size is its length and whose angle is its direction.

import type { DiagramMark } from "./diagram-geometry.ts"
import type { FlatPlace } from "./laid-out-piece.ts"
import { type SpecValue, wholePx } from "./spec.ts"

/** How the piece is placed in the plot. */
export interface DiagramView {
  readonly widthPx: number
  readonly heightPx: number
  readonly pxPerUnit: number
  readonly x: Readonly<Record<string, SpecValue>>
  readonly y: Readonly<Record<string, SpecValue>>
  /** Rounds a coordinate to a hundredth of a pixel or so, to keep the data short. */
  readonly tidy: (value: number) => number
  readonly strokePx: number
  /** Where a place of the piece comes to lie in the plot, px from its upper left corner. */
  readonly inPx: (place: FlatPlace) => FlatPlace
}

/** Room for every mark, both axes in one scale. */
export function fitView(marks: readonly DiagramMark[], widthPx: number): DiagramView {
  let [left, right, low, high] = [0, 0, 0, 0]
  for (const { x, y, length } of marks) {
    left = Math.min(left, x - length / 2)
    right = Math.max(right, x + length / 2)
    low = Math.min(low, y - length / 2)
    high = Math.max(high, y + length / 2)
  }
  const pxPerUnit = Math.min(widthPx / (right - left), (mostHeightShare * widthPx) / (high - low))
  const heightPx = Math.max(leastHeightPx, wholePx((high - low) * pxPerUnit))
  const digits = Math.min(12, Math.max(0, Math.ceil(Math.log10(100 * pxPerUnit))))
  const axis = (from: number, to: number, px: number) => {
    const middle = (from + to) / 2
    const half = px / pxPerUnit / 2
    return {
      type: "quantitative",
      axis: null,
      scale: { domain: [middle - half, middle + half], nice: false, zero: false },
    }
  }
  const [middleX, middleY] = [(left + right) / 2, (low + high) / 2]
  const typical = median(marks.map(({ length }) => length)) * pxPerUnit
  return {
    widthPx,
    heightPx,
    pxPerUnit,
    x: axis(left, right, widthPx),
    y: axis(low, high, heightPx),
    tidy: (value) => Number(value.toFixed(digits)),
    strokePx: Math.min(1.4, Math.max(0.65, 0.055 * typical)),
    inPx: ({ x, y }) => ({
      x: widthPx / 2 + (x - middleX) * pxPerUnit,
      y: heightPx / 2 - (y - middleY) * pxPerUnit,
    }),
  }
}

/** A flat strip still gets room for its numbers. */
const leastHeightPx = 60

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b)
  return sorted[Math.floor(sorted.length / 2)] ?? 0
}

/** Places given in pixels of the plot. */
export const inPixels = {
  x: { field: "left", type: "quantitative", scale: null, axis: null },
  y: { field: "top", type: "quantitative", scale: null, axis: null },
} as const

export type Row = Readonly<Record<string, SpecValue>>

/** @param told what the mark says where it is pointed at; "" for nothing */
export function rowOf(mark: DiagramMark, view: DiagramView, faded: boolean, told: string): Row {
  return {
    x: view.tidy(mark.x),
    y: view.tidy(mark.y),
    symbol: mark.symbol.key,
    size: sizeOfLength(mark.length * view.pxPerUnit),
    angle: Math.round(mark.angle),
    opacity: faded ? fadedOpacity : 1,
    told,
  }
}

/** Symbols under a number step back so that it can be read. */
const fadedOpacity = 0.22

/** The size of a point, px2, whose box is that long; lengths to a quarter of a pixel, to keep the drawing short. */
export function sizeOfLength(px: number): number {
  return (Math.round(4 * px) / 4) ** 2
}

export function symbolEncoding(view: DiagramView, symbols: SpecValue): Row {
  const plain = (field: string): SpecValue => ({
    field,
    type: "quantitative",
    scale: null,
    legend: null,
  })
  return {
    x: { ...view.x, field: "x" },
    y: { ...view.y, field: "y" },
    shape: { field: "symbol", type: "nominal", scale: symbols, legend: null },
    size: plain("size"),
    angle: { field: "angle", type: "quantitative", scale: null },
    opacity: plain("opacity"),
  }
}

/** A piece higher than wide is drawn this much higher than wide at most. */
const mostHeightShare = 1.25
