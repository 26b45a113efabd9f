// What one piece that is off does to the whole: a blanket whose gauge is taken over this piece comes out as much larger or
// smaller, and its yarn goes with the area.

import { formatPercent } from "@roundwright/assessment"
import { type LengthUnit, lengthWords } from "../lengths.ts"

export interface WholeTold {
  readonly widthMm: number
  readonly lengthMm: number
  /** Yarn over what the pattern says. */
  readonly yarn: number
  readonly text: string
}

/** @param factor size meant over size now @param whole what the pattern says of the whole, mm */
export function wholeAt(
  factor: number,
  whole: readonly [number, number],
  unit: LengthUnit = "cm",
): WholeTold {
  const [widthMm, lengthMm] = whole.map((mm) => mm / factor) as [number, number]
  const yarn = 1 / factor ** 2
  const both = (mm: readonly [number, number]) =>
    mm[0] === mm[1]
      ? lengthWords(mm[0], unit)
      : mm.map((one) => lengthWords(one, unit)).join(" by ")
  return {
    widthMm,
    lengthMm,
    yarn,
    text: `Worked on like this the whole comes to ${both([widthMm, lengthMm])} in place of ${both(whole)}, with about ${formatPercent(Math.abs(yarn - 1))} ${yarn > 1 ? "more" : "less"} yarn; the same size takes ${(factor).toFixed(2)} times the stitches or pieces each way.`,
  }
}
