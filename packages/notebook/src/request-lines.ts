// The lines of a cell that asks for something: `Corners: 4`, one to a line, each known by its name.

import { unlessRefused } from "@roundwright/numerics"
import { readStitchList } from "@roundwright/shaping"
import { millimetresIn, type Terms } from "@roundwright/stitches"
import { headingName, headingValue } from "./headings.ts"
import { problemAt, type Report } from "./problems.ts"
import type { WrittenCell } from "./written-cell.ts"

/** Each gives null when the line is absent or cannot be used; what cannot be used is reported at its place. */
export interface RequestLines {
  /** What stands after the colon. */
  value(name: string): string | null
  /** A whole number within bounds. @param what it is, such as "number of corners" */
  whole(name: string, bounds: Bounds, what: string): number | null
  /** One of a few words, in any case. */
  oneOf<Word extends string>(name: string, words: readonly Word[]): Word | null
  /** A list of stitches that are known, as written. */
  stitches(name: string, terms: Terms): string | null
  /** The same for a single one. */
  oneStitch(name: string, terms: Terms): string | null
  /** `20 cm`, in mm. */
  lengthMm(name: string): number | null
  /** What a reader makes of it; an error is a fault of the line it is about. */
  attempt<Result>(about: string | ErrorPlaces, read: () => Result): Result | null
  /** Reports a fault at the line of that name. */
  fault(name: string, message: string, hint: string): void
  /** False as soon as a fault was reported. */
  readonly sound: boolean
}

/** The line that errors of a code are about. */
export type ErrorPlaces = (code: string) => string

export interface Bounds {
  readonly least: number
  readonly most: number
}

/** Names of all stitches there are, twice over. */
const mostStitchLetters = 60
const mostShown = 40
/**
 * @param names the lines the cell may hold, in lower case
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
  const found = lines.map(headingName)
  let sound = true
  const faultAt = (line: number, message: string, hint: string) => {
    sound = false
    const length = Math.max(1, lines[line - 1]?.length ?? 1)
    const problem = problemAt(cell.line + line, 1, `bad-${cell.kind}`, message, hint)
    report({ ...problem, length, cell: cell.index })
  }
  for (const [index, name] of found.entries()) {
    if (lines[index]!.trim() === "") continue
    if (!names.includes(name))
      faultAt(index + 1, "This line is not understood here.", `Write ${example}.`)
    else if (found.indexOf(name) < index)
      faultAt(
        index + 1,
        `This is said in line ${cell.line + found.indexOf(name) + 1} already.`,
        "Leave one of the two out.",
      )
  }
  const fault = (name: string, message: string, hint: string) =>
    faultAt(found.indexOf(name) + 1, message, hint)
  const attempt = <Result>(about: string | ErrorPlaces, read: () => Result): Result | null =>
    unlessRefused(read, ({ code, message, hint }) => {
      fault(typeof about === "string" ? about : about(code), message, hint)
      return null
    })
  const value = (name: string) => headingValue(text, name)
  const stitches = (name: string, terms: Terms, most: number) => {
    const written = value(name)
    if (written === null) return null
    const kinds = attempt(name, () => readStitchList(written, terms))
    if (kinds && (written.length > mostStitchLetters || kinds.length === 0))
      fault(name, "These stitches cannot be used.", `Name some of ${usualNames[terms]}.`)
    else if (kinds && kinds.length > most)
      fault(name, `"${clip(written)}" is more than one stitch.`, "Name a single one here.")
    return written
  }
  return {
    value,
    stitches: (name, terms) => stitches(name, terms, Number.POSITIVE_INFINITY),
    oneStitch: (name, terms) => stitches(name, terms, 1),
    whole: (name, { least, most }, what) => {
      const written = value(name)
      if (written === null) return null
      const number = /^\d{1,3}$/.test(written) ? Number(written) : Number.NaN
      if (number >= least && number <= most) return number
      fault(
        name,
        `The ${what} cannot be "${clip(written)}".`,
        `Give a whole number from ${least} to ${most}.`,
      )
      return null
    },
    oneOf: (name, words) => {
      const written = value(name)
      if (written === null) return null
      const word = words.find((one) => one.toLowerCase() === written.toLowerCase())
      if (word === undefined)
        fault(
          name,
          `"${clip(written)}" is not known here.`,
          `Write ${words.slice(0, -1).join(", ")} or ${words.at(-1)}.`,
        )
      return word ?? null
    },
    lengthMm: (name) => {
      const written = value(name)
      if (written === null) return null
      const match = /^(\d{1,5}(?:\.\d{1,3})?)\s*(mm|cm|in)$/i.exec(written)
      const mm = match ? Number(match[1]) * millimetresIn(match[2]!) : 0
      if (mm > 0) return mm
      fault(name, `"${clip(written)}" is no length.`, "Write it such as 20 cm.")
      return null
    },
    attempt,
    fault,
    get sound() {
      return sound
    },
  }
}

const usualNames: Readonly<Record<Terms, string>> = {
  US: "sc, hdc, dc and tr",
  UK: "dc, htr, tr and dtr",
}

function clip(text: string): string {
  return text.slice(0, mostShown)
}
