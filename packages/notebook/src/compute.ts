// Computing a notebook: Markdown in, data out.
//
// Order: all patterns are checked first (with their gauge cells), then the calculations in the order
// of the text, then the results, then the values in the prose. So the first paragraph can tell what
// is worked out further down, and a name is given a value once only.

import { type CheckResult, checkPattern } from "@roundwright/assessment"
import { chartByName } from "@roundwright/charts"
import { RoundwrightError } from "@roundwright/numerics"
import { computeCalculation, type Scope } from "./calculation/cell.ts"
import { computeValues } from "./calculation/inline.ts"
import { namesOf } from "./calculation/names.ts"
import { findCells, type WrittenCell } from "./cells.ts"
import { brokenLimit, mostCells } from "./limits.ts"
import { cleanText, type MarkdownTree, parseMarkdown, plainText, startOf } from "./markdown.ts"
import { checkPatterns } from "./patterns.ts"
import { noPattern, problemAt, type Report } from "./problems.ts"
import type {
  Cell,
  CellContent,
  CheckedPattern,
  InlineValue,
  NotebookProblem,
  NotebookResult,
} from "./result.ts"
import { type SquaringRequest, type SquaringResult, squarePattern } from "./squaring.ts"
import { readRequest } from "./squaring-request.ts"

export interface ComputeOptions {
  /** Checks a pattern's text; `checkPattern` when absent. A page may pass one that remembers. */
  readonly check?: (text: string) => CheckResult
  /** Searches for a squaring cell; `squarePattern` when absent. Null: the search is not made now. */
  readonly square?: (
    own: string,
    gauge: readonly string[],
    request: SquaringRequest,
  ) => SquaringResult | null
}

/** Computes every cell and value. Never throws on anything a text can hold. */
export async function computeNotebook(
  markdown: string,
  options: ComputeOptions = {},
): Promise<NotebookResult> {
  const text = cleanText(markdown)
  const broken = brokenLimit(text)
  if (broken) return unread(broken)
  let tree: MarkdownTree
  try {
    tree = parseMarkdown(text)
  } catch (error) {
    if (!(error instanceof RangeError)) throw error
    return unread(problemAt(1, 1, "too-deep", "The notebook is nested too deep to be read.", ""))
  }
  const { cells: written, strays } = findCells(tree, text)
  if (written.length > mostCells)
    return unread(
      problemAt(
        written[mostCells]!.line,
        1,
        "too-many-cells",
        `There are more than ${mostCells} cells.`,
        "Split the notebook.",
      ),
    )
  const problems: NotebookProblem[] = [...strays]
  const report = (problem: NotebookProblem) => problems.push(problem)
  for (const cell of written) cell.problems.forEach(report)
  const contents = new Map<number, CellContent>()
  const patterns = checkPatterns(written, contents, report, options.check ?? checkPattern)
  const scope: Scope = {
    values: new Map(),
    patterns: new Map([...patterns].map(([name, { result }]) => [name, namesOf(result)])),
  }
  for (const cell of written)
    if (cell.kind === "calculation" && cell.options)
      contents.set(cell.index, await computeCalculation(cell, scope, report))
  for (const cell of written) {
    const content = computeResult(cell, patterns, report)
    if (content) contents.set(cell.index, content)
    if (content?.kind === "squaring")
      contents.set(cell.index, searched(cell, content, contents, options, report))
  }
  const values = await computeValues(tree, scope, report)
  problems.sort((a, b) => a.line - b.line || a.column - b.column)
  return {
    title: titleOf(tree, values),
    tree,
    cells: written.map((cell) => finished(cell, contents, problems)),
    values,
    problems,
  }
}

function computeResult(
  cell: WrittenCell,
  patterns: ReadonlyMap<string, CheckedPattern>,
  report: Report,
): CellContent | null {
  const { kind, options } = cell
  if (!options || kind === "pattern" || kind === "gauge" || kind === "calculation") return null
  const only = patterns.size === 1 ? [...patterns.keys()][0] : undefined
  const name = options.of ?? only
  const pattern = name === undefined ? undefined : patterns.get(name)
  if (!pattern) {
    report(noPattern(cell, name, [...patterns.keys()]))
    return null
  }
  if (kind === "squaring") {
    const request = readRequest(cell, report)
    return request && { kind, pattern, request, found: null }
  }
  if (kind !== "chart") return { kind, pattern }
  const chart = options.name!
  try {
    const wide = chartByName(chart, pattern.result, { widthPx: chartWidths.wide })
    const narrow = chartByName(chart, pattern.result, { widthPx: chartWidths.narrow })
    return { kind, name: chart, pattern, wide, narrow }
  } catch (error) {
    if (!(error instanceof RoundwrightError)) throw error
    report({ ...problemAt(cell.line, 1, error.code, error.message, error.hint), cell: cell.index })
    return null
  }
}

type SquaringContent = Extract<CellContent, { kind: "squaring" }>

/** The content of a squaring cell with what the search found. */
function searched(
  cell: WrittenCell,
  content: SquaringContent,
  contents: ReadonlyMap<number, CellContent>,
  options: ComputeOptions,
  report: Report,
): SquaringContent {
  const { name, text } = content.pattern
  const others = [...contents.values()].filter((one) => one.kind === "squaring")
  if (others.length > mostSearches) {
    const message = `There are more than ${mostSearches} squaring cells.`
    report({
      ...problemAt(cell.line, 1, "too-many-searches", message, "Split the notebook."),
      cell: cell.index,
    })
    return content
  }
  const search = options.square ?? squarePattern
  return { ...content, found: search(text, gaugeLinesOf(contents.values(), name), content.request) }
}

/** A search takes seconds. */
const mostSearches = 4

/** Lines of the gauge cell set over a pattern; empty when there is none. */
export function gaugeLinesOf(
  contents: Iterable<CellContent | null>,
  name: string,
): readonly string[] {
  for (const content of contents)
    if (content?.kind === "gauge" && content.of === name) return content.lines
  return []
}

/** The reading measure of the page, and a phone of 360 px without its margins. */
const chartWidths = { wide: 640, narrow: 328 } as const

function finished(
  cell: WrittenCell,
  contents: ReadonlyMap<number, CellContent>,
  problems: readonly NotebookProblem[],
): Cell {
  const { index, kind, line, info, text } = cell
  const own = problems.filter((problem) => problem.cell === index)
  return { index, kind, line, info, text, content: contents.get(index) ?? null, problems: own }
}

function titleOf(tree: MarkdownTree, values: readonly InlineValue[]): string {
  const heading = tree.children.find((node) => node.type === "heading")
  if (!heading) return "Notebook"
  const text = plainText([heading], (node) => {
    if (node.type !== "inlineCode") return undefined
    const { line, column } = startOf(node)
    const value = values.find((one) => one.line === line && one.column === column)
    return value ? (value.value ?? "?") : undefined
  })
  return text.replace(/\s+/g, " ").trim().slice(0, 200) || "Notebook"
}

function unread(problem: NotebookProblem): NotebookResult {
  return {
    title: "Notebook",
    tree: { type: "root", children: [] },
    cells: [],
    values: [],
    problems: [problem],
  }
}
