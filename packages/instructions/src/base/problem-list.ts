// Collecting problems with their places while reading.

import { placeOf, type SourceText } from "../text/source-text.ts"
import { mostProblems } from "./limits.ts"
import type { ProblemCode } from "./problem-codes.ts"
import type { Problem } from "./reading.ts"
import type { Severity } from "./severity.ts"

/** A problem before its place is turned into line and column. */
export interface Finding {
  readonly severity: Severity
  readonly code: ProblemCode
  readonly start: number
  readonly end: number
  readonly message: string
  readonly hint: string
}

const ranks: Readonly<Record<Severity, number>> = { error: 0, warning: 1, note: 2 }

/** Turns findings into problems in the order of the text; of two alike at one place one is kept. */
export function listProblems(
  source: SourceText,
  findings: readonly (Finding & { readonly round: number | null })[],
): Problem<ProblemCode>[] {
  const seen = new Set<string>()
  const sorted = [...findings].sort(
    (a, b) => a.start - b.start || ranks[a.severity] - ranks[b.severity] || a.end - b.end,
  )
  const problems: Problem<ProblemCode>[] = []
  let leftOut = 0
  for (const finding of sorted) {
    const key = `${finding.code}:${finding.start}:${finding.message}`
    if (seen.has(key)) continue
    seen.add(key)
    if (problems.length >= mostProblems) {
      leftOut += 1
      continue
    }
    const place = placeOf(source, finding.start, finding.end)
    problems.push({
      severity: finding.severity,
      code: finding.code,
      round: finding.round,
      line: place.line,
      column: place.column,
      length: place.length,
      message: finding.message,
      hint: finding.hint,
    })
  }
  if (leftOut > 0)
    problems.push({
      severity: "note",
      code: "more-problems",
      round: null,
      line: 1,
      column: 1,
      length: 0,
      message: `${leftOut} more problems are not listed.`,
      hint: "Mend the first ones and read the text again.",
    })
  return problems
}
