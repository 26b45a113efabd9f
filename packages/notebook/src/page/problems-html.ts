// What was found in the text of a pattern, as HTML.

import type { CheckResult } from "@roundwright/assessment"
import type { CheckedPattern } from "../result.ts"
import { ofPiece } from "./common.ts"
import { type Child, element, type Html } from "./html.ts"
import type { PageSoFar } from "./page-so-far.ts"

/** Problems past this usually follow from those before. */
const mostProblems = 60

/** Every problem in the text of a pattern, with its line. */
export function problemsHtml(pattern: CheckedPattern, { alone }: PageSoFar): Html[] {
  const { problems } = pattern.result
  const text = `the text${ofPiece(pattern, alone)}`
  if (problems.length === 0)
    return [element("p", { class: "after" }, `Nothing to mend in ${text}.`)]
  return [
    element("p", { class: "label" }, `Found in ${text}`),
    element("ul", {}, problemItems(problems)),
  ]
}

/** Problems as list items. */
export function problemItems(problems: CheckResult["problems"]): Child {
  const rest = problems.length - mostProblems
  return [
    problems.slice(0, mostProblems).map(({ severity, line, round, message, hint }) => {
      const where = `${severity}, line ${line}${round === null ? "" : `, round ${round}`}: `
      return element(
        "li",
        {},
        element("span", { class: "where" }, where),
        message,
        hint ? element("span", { class: "hint" }, hint) : null,
      )
    }),
    rest > 0 ? element("li", {}, `... and ${rest} more.`) : null,
  ]
}
