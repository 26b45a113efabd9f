// Remedies as HTML: what to change, and what each change leads to.

import { type CheckResult, formatFullness, verdictWord } from "@roundwright/assessment"
import type { CheckedPattern } from "../result.ts"
import { keepUnits, ofPiece } from "./common.ts"
import { element, type Html } from "./html.ts"
import type { PageSoFar } from "./page-so-far.ts"

/** What to change, least disturbing first, and what each change leads to. */
export function remediesHtml(pattern: CheckedPattern, { alone }: PageSoFar): Html[] {
  const { result } = pattern
  if (result.remedies.length === 0) return [element("p", {}, nothingToChange(result))]
  const items = result.remedies.map((remedy) =>
    element(
      "li",
      {},
      keepUnits(remedy.change),
      changesNothing(remedy, result)
        ? null
        : element(
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

/** Where a piece is left as it is, what it then is has been said. */
function changesNothing(
  { verdictAfter, fullnessAfter }: CheckResult["remedies"][number],
  { laidOut, ledger }: CheckResult,
): boolean {
  return verdictAfter === laidOut?.verdict && fullnessAfter === ledger.at(-1)?.accumulatedFullness
}

function nothingToChange(result: CheckResult): string {
  if (!result.laidOut) return "Nothing to propose: no round could be read."
  if (result.laidOut.verdict !== "flat") return "No single change found that would mend it."
  return result.ledger.length < result.rounds.length
    ? "Nothing to change as far as it is read: mend the text first."
    : "Nothing to change: it lies flat."
}
