// Stitches picked up along the ends of rows: whether so many fit so many rows, and how many rows carry them where only the stitches
// are told. A row of sc takes one, of hdc three in two rows, of dc two, of tr three (by height over width); knitted rows are lower
// than their stitches are wide, so three stitches go on four rows (four on five to two on three, as knitters do).

import { formatPercent } from "@roundwright/assessment"
import { RoundwrightError } from "@roundwright/numerics"
import { pickUpText } from "./groups.ts"

export const edgeRows = ["sc", "hdc", "dc", "tr", "knit", "garter"] as const
export type EdgeRow = (typeof edgeRows)[number]

/** Stitches to a row: usual, least and most. */
const perRow: Readonly<Record<EdgeRow, readonly [number, number, number]>> = {
  sc: [1, 0.9, 1],
  hdc: [1.5, 1.25, 1.5],
  dc: [2, 1.75, 2],
  tr: [3, 2.5, 3],
  knit: [0.75, 2 / 3, 0.8],
  garter: [0.5, 0.5, 2 / 3],
}

export interface PickUp {
  /** Stitches to a row. */
  readonly rate: number
  readonly rows: number | null
  readonly text: string
}

/** @param rows null where only the stitches are told @throws RoundwrightError `bad-count` */
export function pickUpAlong(stitches: number, rows: number | null, row: EdgeRow): PickUp {
  for (const value of [stitches, rows ?? 1])
    if (!Number.isInteger(value) || value < 1)
      throw new RoundwrightError("bad-count", `There cannot be ${value} stitches or rows.`)
  const [usual, least, most] = perRow[row]
  if (rows === null) return unknownRows(stitches, row)
  const rate = stitches / rows
  const wanted = Math.round(usual * rows)
  const range = [Math.round(least * rows), Math.round(most * rows)] as const
  const off = rate > most * 1.03 ? "long" : rate < least * 0.97 ? "short" : null
  const verdict =
    off === null
      ? "that fits, the edge lies flat"
      : off === "long"
        ? `the edge is ${formatPercent(rate / usual - 1)} too long and waves`
        : `the edge is ${formatPercent(1 - rate / usual)} too short and draws in`
  const between = range[0] === range[1] ? `${range[0]}` : `${range[0]} to ${range[1]}`
  const even = stitches <= rows ? pickUpText(rows, stitches) : ""
  return {
    rate,
    rows,
    text: `${stitches} on ${rows} rows of ${row} are ${rate.toFixed(2)} to a row; ${ratioWords(row)} is usual, ${wanted} here (${between}): ${verdict}. One in every row would be ${rows}, ${(1 / usual).toFixed(2)} times the usual.${even === "" ? "" : ` ${even}`} Not the hook: it is the count along the edge.`,
  }
}

function unknownRows(stitches: number, row: EdgeRow): PickUp {
  const [usual, least, most] = perRow[row]
  const rows = Math.round(stitches / usual)
  const range = [Math.round(stitches / most), Math.round(stitches / least)] as const
  const between = range[0] === range[1] ? "" : ` (${range[0]} to ${range[1]})`
  const everyRow =
    usual < 1
      ? ` One in every row makes the edge ${(1 / usual).toFixed(2)} times as long as it is, about ${formatPercent(1 / usual - 1)} too long, and it waves: where there are more rows than ${stitches}, leave out as many as there are over, spread evenly.`
      : ""
  return {
    rate: usual,
    rows,
    text: `${stitches} stitches fit about ${rows} rows of ${row}${between}, at ${ratioWords(row)}.${everyRow} Tell your rows (--rows) to have them spaced.`,
  }
}

function ratioWords(row: EdgeRow): string {
  const words: Readonly<Record<EdgeRow, string>> = {
    sc: "1 to a row",
    hdc: "3 to 2 rows",
    dc: "2 to a row",
    tr: "3 to a row",
    knit: "3 from 4 rows (4 from 5 to 2 from 3)",
    garter: "1 to 2 rows, a ridge (to 2 from 3)",
  }
  return words[row]
}
