// The lines of a squaring cell: how many corners, in how many rounds, of which stitches, and how it is to begin and end.

import type { CheckResult } from "@roundwright/assessment"
import { type CornerStyle, patternUpTo } from "@roundwright/shaping"
import type { Terms } from "@roundwright/stitches"
import type { Report } from "./problems.ts"
import { type Bounds, type RequestLines, readRequestLines } from "./request-lines.ts"
import { type SquaringRequest, type SquaringWishes, usualSquaring } from "./squaring.ts"
import type { WrittenCell } from "./written-cell.ts"

/** Corners of a polygon a maker would still see as one, and rounds a search ends in within a quarter of a minute. */
export const squaringBounds = {
  corners: { least: 3, most: 12 },
  rounds: { least: 1, most: 6 },
  "from round": { least: 1, most: 999 },
} as const

export const cornerStyles: readonly CornerStyle[] = ["any", "chains", "stitches"]

export const bothTerms: readonly Terms[] = ["US", "UK"]

/** Lines of wishes, for whatever is squared. */
export const wishLines = ["corners", "rounds", "stitches", "corner style", "straighten"] as const

export const wishExample =
  "Corners: 4, Rounds: 2, Stitches: sc, hdc, dc, Corner style: chains or Straighten: sc"

/** What must be known of the pattern that is asked about. */
export interface WrittenPattern {
  readonly text: string
  readonly result: Pick<CheckResult, "terms">
}

/** Reads the cell; what is not said is as usual. @returns null when something said cannot be used, reported */
export function readRequest(
  cell: WrittenCell,
  pattern: WrittenPattern,
  report: Report,
): SquaringRequest | null {
  const lines = readRequestLines(
    cell,
    [...wishLines, "from round", "terms"],
    `${wishExample}, From round: 3 or Terms: UK`,
    report,
  )
  const wishes = readWishes(lines, pattern.result.terms)
  const from = lines.whole("from round", squaringBounds["from round"], "round to begin on")
  if (from !== null) lines.attempt("from round", () => patternUpTo(pattern.text, from))
  const terms = lines.oneOf("terms", bothTerms)
  if (!lines.sound) return null
  return {
    ...wishes,
    ...(from === null ? {} : { fromRound: from }),
    ...(terms === null ? {} : { terms }),
  }
}

/**
 * Corners, rounds, stitches and corners' style, wherever they are asked for.
 * @param terms of stitches named in them
 * @param rounds that may be added
 */
export function readWishes(
  lines: RequestLines,
  terms: Terms,
  rounds: Bounds = squaringBounds.rounds,
): SquaringWishes {
  const { corners } = squaringBounds
  const stitches = lines.stitches("stitches", terms)
  const style = lines.oneOf("corner style", cornerStyles)
  const straighten = lines.oneStitch("straighten", terms)
  return {
    corners: lines.whole("corners", corners, "number of corners") ?? usualSquaring.corners,
    rounds: lines.whole("rounds", rounds, "number of rounds") ?? usualSquaring.rounds,
    ...(stitches === null ? {} : { stitches }),
    ...(style === null ? {} : { cornerStyle: style }),
    ...(straighten === null ? {} : { straighten }),
  }
}
