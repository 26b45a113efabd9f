// So many border stitches on an edge of a length: whether that ruffles or draws in, and how many to pass over or to add.

import { formatPercent } from "@roundwright/assessment"
import { planBand } from "@roundwright/flatness"
import type { BasicStitch, Gauge } from "@roundwright/stitches"
import { easeOnto } from "./ease.ts"
import { sideByLength } from "./side-count.ts"

export interface EdgeJudged {
  readonly stitches: number
  readonly flat: number
  readonly fullness: number
  readonly text: string
}

/** @throws RoundwrightError what `sideByLength` and `easeOnto` throw */
export function judgeEdge(
  edgeMm: number,
  stitches: number,
  gauge: Gauge,
  basic: BasicStitch = "sc",
): EdgeJudged {
  const flat = sideByLength(edgeMm, gauge, basic).between
  const fullness = stitches / flat
  const off = formatPercent(Math.abs(fullness - 1))
  const judged =
    Math.abs(fullness - 1) <= planBand
      ? "it lies flat"
      : fullness > 1
        ? `${off} too many: it ruffles or waves`
        : `${off} too few: it draws in and the corners curl`
  const cure = stitches === flat ? "" : ` Come to it evenly: ${easeOnto(flat, stitches).text}.`
  return {
    stitches,
    flat,
    fullness,
    text: `On that edge ${flat} ${basic} lie flat, and ${stitches} are worked: ${judged}.${Math.abs(fullness - 1) <= planBand ? "" : cure}`,
  }
}
