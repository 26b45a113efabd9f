// The lines of a squaring cell: how many corners, in how many rounds, of which stitches.

import { RoundwrightError } from "@roundwright/numerics"
import { readStitchList } from "@roundwright/shaping"
import type { WrittenCell } from "./cells.ts"
import { headingValue } from "./headings.ts"
import { problemAt, type Report } from "./problems.ts"
import { type SquaringRequest, usualSquaring } from "./squaring.ts"

/** Corners of a polygon a maker would still see as one, and rounds a search ends in within seconds. */
export const squaringBounds = {
  corners: { least: 3, most: 12 },
  rounds: { least: 1, most: 3 },
} as const

/** The stitches that may be asked for, shortest first. */
const mostStitchLetters = 60

/** Reads the cell; what is not said is as usual. @returns null when something said cannot be used, reported */
export function readRequest(cell: WrittenCell, report: Report): SquaringRequest | null {
  let sound = true
  const fault = (line: number, message: string, hint: string) => {
    sound = false
    const length = cell.text.split("\n")[line - 1]?.length ?? 1
    const problem = problemAt(cell.line + line, 1, "bad-squaring", message, hint)
    report({ ...problem, length: Math.max(1, length), cell: cell.index })
  }
  const lines = cell.text.split(/\r\n|\r|\n/)
  for (const [index, line] of lines.entries())
    if (line.trim() !== "" && !/^\s*(?:corners|rounds|stitches)\s*:/i.test(line))
      fault(
        index + 1,
        "This line is not understood here.",
        "Write Corners: 4, Rounds: 2 or Stitches: sc, hdc, dc.",
      )
  const text = lines.join("\n")
  const lineOf = (name: string) =>
    lines.findIndex((line) => line.trim().toLowerCase().startsWith(name)) + 1
  const whole = (name: "corners" | "rounds"): number => {
    const value = headingValue(text, name)
    if (value === null) return usualSquaring[name]
    const { least, most } = squaringBounds[name]
    const number = /^\d{1,3}$/.test(value) ? Number(value) : Number.NaN
    if (!(number >= least && number <= most))
      fault(
        lineOf(name),
        `The number of ${name} cannot be "${value.slice(0, 40)}".`,
        `Give a whole number from ${least} to ${most}.`,
      )
    return number
  }
  const request = {
    corners: whole("corners"),
    rounds: whole("rounds"),
    stitches: headingValue(text, "stitches") ?? usualSquaring.stitches,
  }
  try {
    if (
      request.stitches.length > mostStitchLetters ||
      readStitchList(request.stitches).length === 0
    )
      fault(
        lineOf("stitches"),
        "These stitches cannot be used.",
        "Name some of sc, hdc, dc and tr.",
      )
  } catch (error) {
    if (!(error instanceof RoundwrightError)) throw error
    fault(lineOf("stitches"), error.message, error.hint)
  }
  return sound ? request : null
}
