// The patterns of a notebook: each is checked once, with the gauge cell that is set over it.
//
// A gauge cell holds heading lines (Yarn, Hook, Gauge, Size ...). They are read before the pattern's own
// text; headings of the pattern that no longer hold are left out (join-gauge.ts), so that one written
// pattern can be tried in another hand. Places stay those of the notebook.

import type { CheckResult } from "@roundwright/assessment"
import type { Problem } from "@roundwright/instructions"
import type { CirclePlan } from "./circle.ts"
import { joinGauge } from "./join-gauge.ts"
import { noPattern, type Report, twice } from "./problems.ts"
import type { CellContent, CheckedPattern } from "./result.ts"
import type { NotebookProblem, WrittenCell } from "./written-cell.ts"

/**
 * Checks every pattern of a notebook and fills in what pattern, circle and gauge cells gave.
 * @param plans what was planned in circle cells, by cell; a plan is a pattern by the name of its cell
 * @returns the patterns by name
 */
export function checkPatterns(
  cells: readonly WrittenCell[],
  plans: ReadonlyMap<number, CirclePlan>,
  contents: Map<number, CellContent>,
  report: Report,
  check: (text: string) => CheckResult,
): ReadonlyMap<string, CheckedPattern> {
  const gauges = new Map<string, GaugeLines>()
  const named = new Map<string, WrittenCell>()
  for (const cell of cells) {
    const name = cell.options?.name
    if (name === undefined || cell.kind === "chart") continue
    const first = named.get(name)
    if (first) report(twice(cell, `The name ${name} is given in line ${first.line} already.`))
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
    const plan = plans.get(cell.index)
    if (cell.kind !== "pattern" && !plan) continue
    const text = plan?.text ?? cell.text
    const gauge = gauges.get(name)
    const { result, readText, gaugeProblems } = checkUnderGauge(text, gauge, check)
    const pattern = { name, text, readText, result, unlaid: false, ...(plan ? { plan } : {}) }
    patterns.set(name, pattern)
    contents.set(
      cell.index,
      plan ? { kind: "circle", pattern, plan } : { kind: "pattern", pattern },
    )
    if (!plan) for (const problem of result.problems) report(moved(problem, cell))
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

interface GaugeLines {
  /** Index of the gauge cell. */
  readonly cell: number
  readonly lines: readonly string[]
}

interface PatternCheck {
  readonly result: CheckResult
  readonly readText: string
  /** Problems in the lines of the gauge cell; their lines count from 1 inside that cell. */
  readonly gaugeProblems: readonly Problem[]
}

/** Checks a pattern under a gauge cell. Lines in `result` count from 1 inside the pattern's cell. */
function checkUnderGauge(
  text: string,
  gauge: GaugeLines | undefined,
  check: (text: string) => CheckResult,
): PatternCheck {
  const nothing = gauge?.lines.every((line) => line.trim() === "") ?? true
  if (!gauge || nothing) return { result: check(text), readText: text, gaugeProblems: [] }
  const { joined, title, givesWay } = joinGauge(text, gauge.lines)
  const result = check(joined)
  const gaugeProblems: Problem[] = givesWay.map(({ line, why }) => ({
    severity: "note",
    code: "pattern-says-its-own",
    round: null,
    line: line + 1,
    column: 1,
    length: gauge.lines[line]!.length,
    message: why,
    hint: "",
  }))
  const problems: Problem[] = []
  for (const problem of result.problems) {
    const inGauge = problem.line - title
    if (inGauge >= 1 && inGauge <= gauge.lines.length)
      gaugeProblems.push({ ...problem, line: inGauge })
    else if (problem.line <= title) problems.push(problem)
    else problems.push({ ...problem, line: problem.line - gauge.lines.length })
  }
  return { result: { ...result, problems }, readText: joined, gaugeProblems }
}
