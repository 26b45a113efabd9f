// Values in the prose: inline code that begins with an equals sign and a space.

import { RoundwrightError } from "@roundwright/numerics"
import { mostValues } from "../limits.ts"
import { type MarkdownTree, startOf, walkMarkdown } from "../markdown.ts"
import type { InlineValue } from "../result.ts"
import type { NotebookProblem } from "../written-cell.ts"
import { evaluate } from "./evaluate.ts"
import { StillToCome } from "./faults.ts"
import { formatValue } from "./format.ts"
import { loadMath } from "./math.ts"
import { namesIn, type Scope } from "./scope.ts"

/** The expression of an inline value, or null for any other inline code. */
export function expressionIn(code: string): string | null {
  return /^=\s/.test(code) ? code.slice(1).trim() : null
}

/** Computes all of them; each that fails has its problem. */
export async function computeValues(
  tree: MarkdownTree,
  scope: Scope,
  report: (problem: NotebookProblem) => void,
): Promise<readonly InlineValue[]> {
  const found: { line: number; column: number; expression: string }[] = []
  walkMarkdown(tree, (node) => {
    const expression = node.type === "inlineCode" ? expressionIn(node.value) : null
    if (expression !== null) found.push({ ...startOf(node), expression })
  })
  if (found.length === 0) return []
  const math = await loadMath()
  const names = namesIn(scope)
  return found.map((place, index) => {
    const fail = (code: string, message: string, hint: string): InlineValue => {
      const { line, column, expression } = place
      const length = expression.length + 4
      const severity = "error"
      const problem = { severity, code, cell: null, line, column, length, message, hint } as const
      report(problem)
      return { ...place, value: null, problem }
    }
    if (index >= mostValues)
      return fail("too-many-values", `There are more than ${mostValues} values.`, "Split it.")
    try {
      const { name, value } = evaluate(place.expression, names, math)
      if (name === null) return { ...place, value: formatValue(value, math), problem: null }
      return fail(
        "bad-expression",
        "A value in the prose cannot name anything.",
        "Give it a name in a calculation cell.",
      )
    } catch (error) {
      if (error instanceof StillToCome)
        return { ...place, value: null, problem: null, wanted: error.wanted }
      if (!(error instanceof RoundwrightError)) throw error
      return fail(error.code, error.message, error.hint)
    }
  })
}
