// The lines of a squaring cell: how many corners, in how many rounds, of which stitches.

import { RoundwrightError } from "@roundwright/numerics"
import { readStitchList } from "@roundwright/shaping"
import type { WrittenCell } from "./cells.ts"
import type { Report } from "./problems.ts"
import { type RequestLines, readRequestLines } from "./request-lines.ts"
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
  const lines = readRequestLines(
    cell,
    ["corners", "rounds", "stitches"],
    "Corners: 4, Rounds: 2 or Stitches: sc, hdc, dc",
    report,
  )
  const request = readWishes(lines)
  return lines.sound ? request : null
}

/** Corners, rounds and stitches, wherever they are asked for. */
export function readWishes(lines: RequestLines): SquaringRequest {
  return {
    corners: lines.whole("corners", squaringBounds.corners, usualSquaring.corners),
    rounds: lines.whole("rounds", squaringBounds.rounds, usualSquaring.rounds),
    stitches: readStitches(lines, "stitches", usualSquaring.stitches),
  }
}

/** A list of stitches that are known. */
export function readStitches(lines: RequestLines, name: string, usual: string): string {
  const stitches = lines.value(name) ?? usual
  try {
    if (stitches.length > mostStitchLetters || readStitchList(stitches).length === 0)
      lines.fault(name, "These stitches cannot be used.", "Name some of sc, hdc, dc and tr.")
  } catch (error) {
    if (!(error instanceof RoundwrightError)) throw error
    lines.fault(name, error.message, error.hint)
  }
  return stitches
}
