// N stitches joined or worked onto M: how many are skipped, or get two, and where; and squares of unlike counts in a grid.

import { RoundwrightError } from "@roundwright/numerics"
import { evenPlaces } from "./fit-repeat.ts"

export interface Ease {
  readonly from: number
  readonly to: number
  /** Stitches more (positive) or fewer. */
  readonly by: number
  /** Of the longer edge, places from 1 that are skipped; of the shorter, places that get two. */
  readonly skipped: readonly number[]
  readonly doubled: readonly number[]
  readonly text: string
}

/** @throws RoundwrightError `bad-count` */
export function easeOnto(from: number, to: number): Ease {
  for (const value of [from, to])
    if (!Number.isInteger(value) || value < 1 || value > 100_000)
      throw new RoundwrightError("bad-count", `There cannot be ${value} stitches on an edge.`, {
        hint: "Give whole numbers above 0.",
      })
  const by = to - from
  const many = Math.abs(by)
  const [longer, shorter] = [Math.max(from, to), Math.min(from, to)]
  const skipped = many < longer ? evenPlaces(longer, many) : []
  const doubled = many <= shorter ? evenPlaces(shorter, many) : []
  return { from, to, by, skipped, doubled, text: easeText(from, to, longer, shorter, many) }
}

function easeText(from: number, to: number, longer: number, shorter: number, many: number): string {
  if (many === 0) return `${from} onto ${to}: stitch for stitch`
  const every = (of: number) =>
    many === 1 ? "in the middle" : `about every ${ordinal(Math.round(of / many))} stitch`
  const skip = `skip ${many} of the ${longer}, ${every(longer)}`
  if (many > shorter)
    return `${from} onto ${to}: ${skip}; ${(longer / shorter).toFixed(1)} to each of the ${shorter}`
  return `${from} onto ${to}: ${skip}, or work 2 in 1 ${many === 1 ? "once" : `${many} times`} on the ${shorter}, ${every(shorter)}`
}

function ordinal(value: number): string {
  const tail =
    value % 100 >= 11 && value % 100 <= 13 ? "th" : (["th", "st", "nd", "rd"][value % 10] ?? "th")
  return `${value}${tail}`
}

export interface GridEdges {
  readonly top: number
  readonly right: number
  readonly bottom: number
  readonly left: number
  readonly all: number
  readonly joins: readonly Ease[]
}

/** "20 16 / 21 20": squares with that many stitches on every side, row by row. @throws RoundwrightError `bad-layout` */
export function edgesOfGrid(text: string): GridEdges {
  const rows = text.split(/[/;\n]/).map((row) =>
    row
      .trim()
      .split(/[\s,]+/)
      .map(Number),
  )
  const columns = rows[0]!.length
  if (
    rows.some(
      (row) => row.length !== columns || row.some((one) => !(Number.isInteger(one) && one > 0)),
    )
  )
    throw new RoundwrightError("bad-layout", `"${text.slice(0, 40)}" is no grid of counts.`, {
      hint: "Write the stitches a side of every square, rows parted by a stroke: 20 16 / 21 20.",
    })
  const sum = (values: readonly number[]) => values.reduce((all, one) => all + one, 0)
  const edges = {
    top: sum(rows[0]!),
    right: sum(rows.map((row) => row.at(-1)!)),
    bottom: sum(rows.at(-1)!),
    left: sum(rows.map((row) => row[0]!)),
  }
  const joins = rows.flatMap((row, r) =>
    row.flatMap((one, c) => [
      ...(c + 1 < columns ? [easeOnto(one, row[c + 1]!)] : []),
      ...(r + 1 < rows.length ? [easeOnto(one, rows[r + 1]![c]!)] : []),
    ]),
  )
  return { ...edges, all: sum(Object.values(edges)), joins }
}
