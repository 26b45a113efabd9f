// Remedies as HTML: what to change, and what each change leads to.

import { formatFullness, verdictWord } from "@roundwright/assessment"
import type { CheckedPattern } from "../result.ts"
import { ofPiece } from "./common.ts"
import { element, type Html } from "./html.ts"
import type { PageSoFar } from "./page-so-far.ts"

/** What to change, least disturbing first, and what each change leads to. */
export function remediesHtml(pattern: CheckedPattern, { alone }: PageSoFar): Html[] {
  const { result } = pattern
  if (result.remedies.length === 0) {
    const said =
      result.laidOut?.verdict === "flat"
        ? "Nothing to change: it lies flat."
        : "No single change found that would mend it."
    return [element("p", {}, result.laidOut ? said : "Nothing to propose: no round could be read.")]
  }
  const items = result.remedies.map((remedy) =>
    element(
      "li",
      {},
      remedy.change,
      element(
        "span",
        { class: "after" },
        `Then it ${verdictWord(remedy.verdictAfter)} (fullness ${formatFullness(remedy.fullnessAfter)}).`,
      ),
    ),
  )
  return [
    element(
      "p",
      { class: "label" },
      alone
        ? "Least disturbing first"
        : `What to change${ofPiece(pattern, alone, "in")}, least disturbing first`,
    ),
    element("ol", {}, items),
  ]
}
