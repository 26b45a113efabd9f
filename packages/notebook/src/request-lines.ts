// The lines of a cell that asks for something: `Corners: 4`, one to a line, each known by its name.

import type { WrittenCell } from "./cells.ts"
import { headingValue } from "./headings.ts"
import { problemAt, type Report } from "./problems.ts"

export interface RequestLines {
  /** What stands after the colon; null when the line is absent. */
  value(name: string): string | null
  /** A whole number within bounds; what is usual when the line is absent. A fault is reported. */
  whole(name: string, bounds: Bounds, usual: number): number
  /** Reports a fault at the line of that name. */
  fault(name: string, message: string, hint: string): void
  /** False as soon as a fault was reported. */
  readonly sound: boolean
}

export interface Bounds {
  readonly least: number
  readonly most: number
}

/**
 * @param names the lines the cell may hold
 * @param example how they are written, for hints
 */
export function readRequestLines(
  cell: WrittenCell,
  names: readonly string[],
  example: string,
  report: Report,
): RequestLines {
  const lines = cell.text.split(/\r\n|\r|\n/)
  const text = lines.join("\n")
  let sound = true
  const faultAt = (line: number, message: string, hint: string) => {
    sound = false
    const length = Math.max(1, lines[line - 1]?.length ?? 1)
    const problem = problemAt(cell.line + line, 1, `bad-${cell.kind}`, message, hint)
    report({ ...problem, length, cell: cell.index })
  }
  for (const [index, line] of lines.entries()) {
    const name = line
      .slice(0, Math.max(0, line.indexOf(":")))
      .trim()
      .toLowerCase()
    if (line.trim() !== "" && !names.includes(name))
      faultAt(index + 1, "This line is not understood here.", `Write ${example}.`)
  }
  const lineOf = (name: string) =>
    lines.findIndex((line) => line.trim().toLowerCase().startsWith(name)) + 1
  const fault = (name: string, message: string, hint: string) =>
    faultAt(lineOf(name), message, hint)
  return {
    value: (name) => headingValue(text, name),
    whole: (name, { least, most }, usual) => {
      const value = headingValue(text, name)
      if (value === null) return usual
      const number = /^\d{1,3}$/.test(value) ? Number(value) : Number.NaN
      if (number >= least && number <= most) return number
      fault(
        name,
        `The number of ${name} cannot be "${value.slice(0, 40)}".`,
        `Give a whole number from ${least} to ${most}.`,
      )
      return usual
    },
    fault,
    get sound() {
      return sound
    },
  }
}
