// A square worked from a corner, growing by a stitch at one or both ends: the row on the hook or needle is its diagonal, the size
// is along its slanting edges.

import { requirePositive } from "@roundwright/numerics"
import { type LengthUnit, lengthWords } from "../lengths.ts"

export interface FromCorner {
  readonly diagonalMm: number
  readonly sideIfRowMm: number
  readonly text: string
}

/** @param toMm the side wished for @param rowMm the row now, where it is told */
export function fromCorner(
  toMm: number,
  rowMm: number | null,
  unit: LengthUnit = "cm",
): FromCorner {
  const side = requirePositive(toMm, "The side")
  const tell = (mm: number) => lengthWords(mm, unit)
  const now =
    rowMm === null
      ? ""
      : ` The row is ${tell(rowMm)} now, so the sides are ${tell(rowMm / Math.SQRT2)}: ${rowMm < side * Math.SQRT2 ? `go on increasing for ${tell(side - rowMm / Math.SQRT2)} more of side (${tell(side * Math.SQRT2 - rowMm)} more of row)` : "it is time to decrease"}.`
  return {
    diagonalMm: side * Math.SQRT2,
    sideIfRowMm: side / Math.SQRT2,
    text: `Measure along the slanting edge and begin to decrease when it is ${tell(side)}: the row is the diagonal and is ${tell(side * Math.SQRT2)} by then. Who stops when the row is ${tell(side)} gets sides of ${tell(side / Math.SQRT2)}. Not the hook: it is where one measures.${now}`,
  }
}
