// The cells that show what was found of a pattern: verdict, tables, remedies and charts.

import {
  asksForShape,
  bowsByCountChart,
  type ChartSpec,
  chartByName,
  shapeChartNames,
  sideAndCornerChart,
} from "@roundwright/charts"
import { RoundwrightError } from "@roundwright/numerics"
import type { LaidOutPattern } from "./laid-out-pattern.ts"
import { noPattern, problemAt, type Report } from "./problems.ts"
import { publishingContent } from "./publishing.ts"
import type { CellContent, ChartPair, CheckedPattern } from "./result.ts"
import { straightBow } from "./transitions.ts"
import type { WrittenCell } from "./written-cell.ts"

/** The reading measure of the page, and a phone of 360 px without its margins. */
const chartWidths = { wide: 544, narrow: 328 } as const

/**
 * @param pieces the patterns that were laid out
 * @param before what is known of the cell already, for those that show what was searched for
 */
export function computeResult(
  cell: WrittenCell,
  patterns: ReadonlyMap<string, CheckedPattern>,
  pieces: ReadonlyMap<string, LaidOutPattern>,
  before: CellContent | undefined,
  report: Report,
): CellContent | null {
  const { kind, options } = cell
  if (before?.kind === "heights" || before?.kind === "transitions")
    return { ...before, charts: chartsOf(before, cell, report) }
  if (before?.kind === "finishing")
    return before.pattern ? { ...before, pattern: patterns.get(before.pattern.name)! } : before
  if (before?.kind === "picture") return before
  if (before?.kind === "pattern" || before?.kind === "circle")
    return { ...before, pattern: patterns.get(before.pattern.name)! }
  if (
    !options ||
    !(
      kind === "verdict" ||
      kind === "ledger" ||
      kind === "remedies" ||
      kind === "problems" ||
      kind === "edit" ||
      kind === "sheet" ||
      kind === "chart"
    )
  )
    return null
  const pattern = patternOf(cell, patterns, report)
  if (!pattern) return null
  if (kind === "edit" || kind === "sheet")
    return publishingContent(kind, pattern, pieces.get(pattern.name), options.terms)
  if (kind !== "chart") return { kind, pattern }
  const name = options.name!
  if (pattern.result.ledger.length === 0) return { kind, name, pattern, charts: null }
  const piece = pieces.get(pattern.name)?.piece ?? undefined
  if (asksForShape(name) && !piece && pattern.result.laidOut)
    return { kind: "later", wanted: [{ wanted: { pattern: pattern.name } }] }
  if (shapeChartNames.includes(name) && piece && !piece.shape) {
    const why = pattern.result.notes.find((note) => note.startsWith("The shape"))
    report({
      ...problemAt(cell.line, 1, "needs-shape", why ?? "The shape could not be laid out.", ""),
      cell: cell.index,
    })
    return null
  }
  const charts = attempt(cell, report, (widthPx) =>
    chartByName(name, pattern.result, { widthPx }, piece),
  )
  return charts && { kind, name, pattern, charts }
}

/** The pattern a cell is about: the one it names, or the only one; a fault is reported. */
export function patternOf(
  cell: WrittenCell,
  patterns: ReadonlyMap<string, CheckedPattern>,
  report: Report,
): CheckedPattern | null {
  const name = cell.options?.of ?? onlyOf(patterns)
  const pattern = name === undefined ? undefined : patterns.get(name)
  if (!pattern) report(noPattern(cell, name, [...patterns.keys()]))
  return pattern ?? null
}

function onlyOf(patterns: ReadonlyMap<string, unknown>): string | undefined {
  return patterns.size === 1 ? [...patterns.keys()][0] : undefined
}

function chartsOf(
  content: Extract<CellContent, { kind: "heights" | "transitions" }>,
  cell: WrittenCell,
  report: Report,
): ChartPair | null {
  if (content.kind === "transitions") {
    const rows = content.found?.transitions ?? []
    if (rows.length === 0) return null
    return attempt(cell, report, (widthPx) => bowsByCountChart(rows, straightBow, { widthPx }))
  }
  const rows = content.found && "heights" in content.found ? content.found.heights : []
  if (rows.length === 0) return null
  return attempt(cell, report, (widthPx) => sideAndCornerChart(rows, { widthPx }))
}

/** A chart at both widths, or null where it cannot be drawn, reported. */
function attempt(
  cell: WrittenCell,
  report: Report,
  draw: (widthPx: number) => ChartSpec,
): ChartPair | null {
  try {
    return { wide: draw(chartWidths.wide), narrow: draw(chartWidths.narrow) }
  } catch (error) {
    if (!(error instanceof RoundwrightError)) throw error
    report({ ...problemAt(cell.line, 1, error.code, error.message, error.hint), cell: cell.index })
    return null
  }
}
