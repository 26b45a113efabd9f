// The patterns of a notebook: each is checked once, with the gauge cell that is set over it.
//
// A gauge cell holds heading lines (Yarn, Hook, Gauge ...). They are read before the pattern's own
// text; headings of the same name in the pattern are left out, so that one written pattern can be
// tried with another hand. Places stay those of the notebook.

import type { CheckResult } from "@roundwright/assessment"
import type { Problem } from "@roundwright/instructions"

export interface GaugeLines {
  /** Index of the gauge cell. */
  readonly cell: number
  readonly lines: readonly string[]
}

export interface PatternCheck {
  readonly result: CheckResult
  /** Problems in the lines of the gauge cell; their lines count from 1 inside that cell. */
  readonly gaugeProblems: readonly Problem[]
}

/** Checks a pattern under a gauge cell. Lines in `result` count from 1 inside the pattern's cell. */
export function checkUnderGauge(
  text: string,
  gauge: GaugeLines | undefined,
  check: (text: string) => CheckResult,
): PatternCheck {
  if (!gauge) return { result: check(text), gaugeProblems: [] }
  const headings = new Set(gauge.lines.map(headingOf).filter((heading) => heading !== null))
  const lines = text.split(/\r\n|\r|\n/)
  const title = titleLine(lines)
  const own = lines.map((line) => (headings.has(headingOf(line) ?? "") ? "" : line))
  const before = own.slice(0, title)
  const joined = [...before, ...gauge.lines, ...own.slice(title)].join("\n")
  const result = check(joined)
  const gaugeProblems: Problem[] = []
  const problems: Problem[] = []
  for (const problem of result.problems) {
    const inGauge = problem.line - title
    if (inGauge >= 1 && inGauge <= gauge.lines.length)
      gaugeProblems.push({ ...problem, line: inGauge })
    else if (problem.line <= title) problems.push(problem)
    else problems.push({ ...problem, line: problem.line - gauge.lines.length })
  }
  return { result: { ...result, problems }, gaugeProblems }
}

/** `Hook: 4 mm` -> `hook`. */
function headingOf(line: string): string | null {
  return /^\s*([A-Za-z]{2,20})\s*:/.exec(line)?.[1]?.toLowerCase() ?? null
}

/** How many lines stand before the gauge: the title, when the text opens with one. */
function titleLine(lines: readonly string[]): number {
  const first = lines.findIndex((line) => line.trim() !== "")
  const line = lines[first]
  return line === undefined || line.includes(":") ? 0 : first + 1
}
