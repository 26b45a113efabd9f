// The cells that have to search: squaring a pattern, the heights of what it found, and squaring one circle
// after another. Each takes a second or more, so that a page may pass what was found before.

import { figuresOfTransitions } from "./calculation/figures-of-transitions.ts"
import type { Figure } from "./calculation/names.ts"
import { patternOf } from "./compute-results.ts"
import { problemAt, type Report } from "./problems.ts"
import type { CellContent, CheckedPattern } from "./result.ts"
import { type SquaringRequest, type SquaringResult, searchKey, squarePattern } from "./squaring.ts"
import { readRequest } from "./squaring-request.ts"
import {
  readTransitions,
  squareCircles,
  type TransitionsRequest,
  type TransitionsResult,
} from "./transitions.ts"
import type { WrittenCell } from "./written-cell.ts"

export interface SearchOptions {
  /** Searches for a squaring or heights cell; `squarePattern` when absent. Null: the search is not made now. */
  readonly square?: (
    own: string,
    gauge: readonly string[],
    request: SquaringRequest,
  ) => SquaringResult | null
  /** Searches for a transitions cell; `squareCircles` when absent. Null: the search is not made now. */
  readonly transitions?: (request: TransitionsRequest) => TransitionsResult | null
}

/** A search takes seconds. */
const mostSearches = 4

/**
 * Fills in the cells that search.
 * @returns the figures of transitions cells, by the name of the cell
 */
export function runSearches(
  cells: readonly WrittenCell[],
  patterns: ReadonlyMap<string, CheckedPattern>,
  contents: Map<number, CellContent>,
  options: SearchOptions,
  report: Report,
): ReadonlyMap<string, ReadonlyMap<string, Figure>> {
  const square = options.square ?? squarePattern
  const known = new Map<string, SquaringResult | null>()
  const figures = new Map<string, ReadonlyMap<string, Figure>>()
  let searches = 0
  const mayGoOn = (cell: WrittenCell) => {
    searches += 1
    if (searches > mostSearches) report(tooMany(cell))
    return searches <= mostSearches
  }
  for (const cell of cells) {
    if (!cell.options) continue
    if (cell.kind === "transitions") {
      const request = readTransitions(cell, report)
      if (!request) continue
      const found = mayGoOn(cell) ? (options.transitions ?? squareCircles)(request) : null
      contents.set(cell.index, { kind: "transitions", request, found, charts: null })
      figures.set(cell.options.name!, figuresOfTransitions(request, found))
    } else if (cell.kind === "squaring" || cell.kind === "heights") {
      const pattern = patternOf(cell, patterns, report)
      const request = pattern && readRequest(cell, pattern, report)
      if (!pattern || !request) continue
      const { name, text } = pattern
      const gauge = gaugeLinesOf(contents.values(), name)
      const key = searchKey(text, gauge, request)
      if (!known.has(key)) known.set(key, mayGoOn(cell) ? square(text, gauge, request) : null)
      const found = known.get(key) ?? null
      contents.set(
        cell.index,
        cell.kind === "squaring"
          ? { kind: "squaring", pattern, request, found }
          : { kind: "heights", pattern, request, found, charts: null },
      )
    }
  }
  return figures
}

function tooMany(cell: WrittenCell) {
  const message = `There are more than ${mostSearches} searches.`
  return {
    ...problemAt(cell.line, 1, "too-many-searches", message, "Split the notebook."),
    cell: cell.index,
  }
}

/** Lines of the gauge cell set over a pattern; empty when there is none. */
export function gaugeLinesOf(
  contents: Iterable<CellContent | null>,
  name: string,
): readonly string[] {
  for (const content of contents)
    if (content?.kind === "gauge" && content.of === name) return content.lines
  return []
}
