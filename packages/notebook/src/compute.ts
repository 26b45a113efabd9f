// Computing a notebook: Markdown in, data out.
//
// Order: circles are planned and all patterns checked (with their gauge cells), searches made, then the
// calculations in the order of the text, then the results and the values in the prose. So the first
// paragraph can tell what is worked out further down, and a name is given a value once only. Then every
// piece is laid out, which decides its verdict, and the calculations are made anew.

import { type CheckResult, checkPattern } from "@roundwright/assessment"
import { computeCalculation, type Scope } from "./calculation/cell.ts"
import { figuresOfPlan } from "./calculation/figures-of-plan.ts"
import { computeValues } from "./calculation/inline.ts"
import type { Figure } from "./calculation/names.ts"
import { namesOf } from "./calculation/names.ts"
import { findCells } from "./cells.ts"
import { type PlanMemory, planCell } from "./circle.ts"
import { computeResult } from "./compute-results.ts"
import { type Finish, runFinishing } from "./finishing/run-finishing.ts"
import { type LaidOutPattern, layOutPattern, withShape } from "./laid-out-pattern.ts"
import { brokenLimit, mostCells } from "./limits.ts"
import { cleanText, type MarkdownTree, parseMarkdown, plainText, startOf } from "./markdown.ts"
import { checkPatterns } from "./patterns.ts"
import { type PictureOf, runPictures } from "./picture/run-pictures.ts"
import { problemAt, type Report } from "./problems.ts"
import type { Cell, CellContent, CheckedPattern, InlineValue, NotebookResult } from "./result.ts"
import { runSearches, type SearchOptions } from "./searches.ts"
import type { NotebookProblem, WrittenCell } from "./written-cell.ts"

export interface ComputeOptions extends SearchOptions {
  /** Checks a pattern's text by the growth of its rounds; what to change is looked for when it is laid out. A page may pass one that remembers. */
  readonly check?: (text: string) => CheckResult
  /** Lays a pattern out; `layOutPattern` when absent. Null: it is not laid out now. */
  readonly layOut?: (text: string) => LaidOutPattern | null
  /** Answers a finishing cell; `finish` when absent. Null: it is not worked out now. */
  readonly finish?: Finish
  /** Measures the picture of a picture cell. Null, or absent: it is not at hand. */
  readonly picture?: PictureOf
  /** Plans of circle cells made before, and where new ones are kept. */
  readonly plans?: PlanMemory
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
  const plans = plansOf(written, report, options.plans)
  const patterns = new Map(
    checkPatterns(written, plans, contents, report, options.check ?? checkQuickly),
  )
  const searched = runSearches(written, patterns, contents, options, report)
  await runPictures(written, contents, options.picture, report)
  runFinishing(written, patterns, contents, options.finish, report)
  const planned = new Map(
    written.flatMap(({ index, options: own }) => {
      const plan = plans.get(index)
      return plan && own?.name ? [[own.name, figuresOfPlan(plan)] as const] : []
    }),
  )
  let reckoned = await reckon(written, tree, patterns, planned, searched, () => false)
  const pieces = new Map<string, LaidOutPattern>()
  const layOut = options.layOut ?? layOutPattern
  for (const [name, pattern] of patterns) {
    if (!pattern.result.laidOut) continue
    const laid = layOut(pattern.readText)
    if (laid) pieces.set(name, laid)
    patterns.set(name, laid ? withShape(pattern, laid) : { ...pattern, unlaid: true })
  }
  if (pieces.size > 0)
    reckoned = await reckon(written, tree, patterns, planned, searched, ({ unlaid }) => !unlaid)
  reckoned.problems.forEach(report)
  for (const [index, content] of reckoned.calculations) contents.set(index, content)
  for (const cell of written) {
    const content = computeResult(cell, patterns, pieces, contents.get(cell.index), report)
    if (content) contents.set(cell.index, content)
  }
  problems.sort((a, b) => a.line - b.line || a.column - b.column)
  return {
    title: titleOf(tree, reckoned.values),
    tree,
    cells: written.map((cell) => finished(cell, contents, problems)),
    values: reckoned.values,
    problems,
    patterns: [...patterns.values()],
  }
}

function checkQuickly(text: string): CheckResult {
  return checkPattern(text, { remedies: false })
}

function plansOf(written: readonly WrittenCell[], report: Report, plans?: PlanMemory) {
  return new Map(
    written.flatMap((cell) => {
      const plan = cell.kind === "circle" && cell.options ? planCell(cell, report, plans) : null
      return plan ? [[cell.index, plan] as const] : []
    }),
  )
}

/** Everything that is calculated by the writer's own lines. */
interface Reckoned {
  readonly calculations: ReadonlyMap<number, CellContent>
  readonly values: readonly InlineValue[]
  readonly problems: readonly NotebookProblem[]
}

type FiguresByName = ReadonlyMap<string, ReadonlyMap<string, Figure>>

async function reckon(
  written: readonly WrittenCell[],
  tree: MarkdownTree,
  patterns: ReadonlyMap<string, CheckedPattern>,
  planned: FiguresByName,
  searched: FiguresByName,
  isLaid: (pattern: CheckedPattern) => boolean,
): Promise<Reckoned> {
  const problems: NotebookProblem[] = []
  const report = (problem: NotebookProblem) => problems.push(problem)
  const scope: Scope = {
    values: new Map(),
    patterns: new Map([
      ...[...patterns].map(([name, pattern]) => {
        const own = namesOf(pattern.result, name, isLaid(pattern))
        const figures = new Map([...own, ...(planned.get(name) ?? [])])
        return [name, figures] as const
      }),
      ...searched,
    ]),
  }
  const calculations = new Map<number, CellContent>()
  for (const cell of written)
    if (cell.kind === "calculation" && cell.options)
      calculations.set(cell.index, await computeCalculation(cell, scope, report))
  return { calculations, values: await computeValues(tree, scope, report), problems }
}

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
    patterns: [],
  }
}
