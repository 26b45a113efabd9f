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
import { type MarkdownTree, parseMarkdown, plainText, startOf } from "./markdown.ts"
import { checkUnderGauge, type GaugeLines } from "./patterns.ts"
import type {
  Cell,
  CellContent,
  CheckedPattern,
  InlineValue,
  NotebookProblem,
  NotebookResult,
} from "./result.ts"

export interface ComputeOptions {
  /** Checks a pattern's text; `checkPattern` when absent. A page may pass one that remembers. */
  readonly check?: (text: string) => CheckResult
}

/** Computes every cell and value. Never throws on anything a text can hold. */
export async function computeNotebook(
  markdown: string,
  options: ComputeOptions = {},
): Promise<NotebookResult> {
  const text = markdown.replace(/^\uFEFF/, "").replace(/\0/g, "\uFFFD")
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

type Report = (problem: NotebookProblem) => void

function checkPatterns(
  cells: readonly WrittenCell[],
  contents: Map<number, CellContent>,
  report: Report,
  check: (text: string) => CheckResult,
): ReadonlyMap<string, CheckedPattern> {
  const gauges = new Map<string, GaugeLines>()
  const named = new Map<string, WrittenCell>()
  for (const cell of cells)
    if (cell.kind === "pattern" && cell.options) {
      const name = cell.options.name!
      const first = named.get(name)
      if (first)
        report(twice(cell, `A pattern called ${name} stands in line ${first.line} already.`))
      else named.set(name, cell)
    }
  for (const cell of cells)
    if (cell.kind === "gauge" && cell.options) {
      const name = cell.options.for!
      if (!named.has(name)) report(noPattern(cell, name, [...named.keys()]))
      else if (gauges.has(name))
        report(twice(cell, `The pattern ${name} has a gauge cell already.`))
      else {
        const lines = cell.text.split(/\r\n|\r|\n/)
        gauges.set(name, { cell: cell.index, lines })
        contents.set(cell.index, { kind: "gauge", of: name, lines })
      }
    }
  const patterns = new Map<string, CheckedPattern>()
  for (const [name, cell] of named) {
    const gauge = gauges.get(name)
    const { result, gaugeProblems } = checkUnderGauge(cell.text, gauge, check)
    const pattern = { name, text: cell.text, result }
    patterns.set(name, pattern)
    contents.set(cell.index, { kind: "pattern", pattern })
    for (const problem of result.problems) report(moved(problem, cell))
    if (gauge) for (const problem of gaugeProblems) report(moved(problem, cells[gauge.cell]!))
  }
  return patterns
}

/** A problem inside a cell's text, at its place in the notebook. */
function moved(
  problem: CheckedPattern["result"]["problems"][number],
  cell: WrittenCell,
): NotebookProblem {
  const { severity, code, column, length, message, hint } = problem
  return {
    severity,
    code,
    cell: cell.index,
    line: cell.line + problem.line,
    column,
    length,
    message,
    hint,
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

function noPattern(
  cell: WrittenCell,
  name: string | undefined,
  known: readonly string[],
): NotebookProblem {
  const key = cell.kind === "gauge" ? "for" : "of"
  const message =
    name === undefined
      ? `This ${cell.kind} cell does not say which pattern it is about.`
      : `There is no pattern called ${name}.`
  const hint =
    known.length === 0
      ? "Add a cell opened with pattern name=NAME."
      : `Write ${key}= with one of ${known.slice(0, 12).join(", ")}.`
  return { ...problemAt(cell.line, 1, "no-such-pattern", message, hint), cell: cell.index }
}

function twice(cell: WrittenCell, message: string): NotebookProblem {
  const hint = "Give this one another name, or take it out."
  return { ...problemAt(cell.line, 1, "name-taken", message, hint), cell: cell.index }
}

function problemAt(
  line: number,
  column: number,
  code: string,
  message: string,
  hint: string,
): NotebookProblem {
  return { severity: "error", code, cell: null, line, column, length: 3, message, hint }
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
