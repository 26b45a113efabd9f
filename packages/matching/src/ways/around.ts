// A length all round told as what it is across: a circle by pi, shapes of so many sides by their sides.

import { requirePositive } from "@roundwright/numerics"
import { type LengthUnit, lengthWords } from "../lengths.ts"

export interface AroundTold {
  readonly acrossMm: number
  readonly text: string
}

export function acrossOf(
  aroundMm: number,
  shape: "circle" | "square" | "hexagon",
  unit: LengthUnit = "cm",
): AroundTold {
  requirePositive(aroundMm, "The length all round")
  const tell = (mm: number) => lengthWords(mm, unit)
  if (shape === "circle") {
    const acrossMm = aroundMm / Math.PI
    return {
      acrossMm,
      text: `${tell(aroundMm)} round a circle is ${tell(acrossMm)} across (round over 3.14), ${tell(acrossMm / 2)} from the middle to the edge.`,
    }
  }
  const sides = shape === "square" ? 4 : 6
  const side = aroundMm / sides
  const acrossMm = shape === "square" ? side : side * Math.sqrt(3)
  return {
    acrossMm,
    text: `${tell(aroundMm)} round a ${shape} is ${tell(side)} a side, ${tell(acrossMm)} across and ${tell(shape === "square" ? side * Math.SQRT2 : 2 * side)} from corner to corner.`,
  }
}
