// How a squaring gets its shape, as a table for a terminal: from the middle of a side to its corner, how far each
// place must still move out, how far its stitch moves it, and what is left for the round after.

import { assumedScWidthMm } from "@roundwright/relaxation"
import type { HeightRow } from "@roundwright/shaping"
import type { Gauge } from "@roundwright/stitches"
import { alignColumns } from "./align.ts"
import { wrap } from "./wrap.ts"

export function heightsTable(rows: readonly HeightRow[], corners: number, gauge: Gauge): string[] {
  const mmPerUnit = gauge.absolute ? 1 : assumedScWidthMm / gauge.scWidthMm
  const mm = (value: number) => rounded(value * mmPerUnit, 1)
  const title = `How proposal 1 gets its shape: the stitches of half a side, from its middle (0°) to the corner (${(180 / corners).toFixed(0)}°), how far out each place must still go to the finished side, how far its stitch goes, and what is left. Lengths in mm.`
  const header = ["round", "angle", "must go", "goes", "left", "stitch", "in the text"]
  const body = rows.map((row) => [
    String(row.round),
    `${rounded(row.angleDeg, 0)}°`,
    mm(row.mustMm),
    mm(row.movesMm),
    mm(row.leftMm),
    row.stitch,
    row.written,
  ])
  return [wrap(title, 80), "", ...alignColumns([header, ...body])]
}

/** Never "-0". */
function rounded(value: number, digits: number): string {
  return (Number(value.toFixed(digits)) + 0).toFixed(digits)
}
