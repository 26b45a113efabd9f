// A planned circle as HTML: what it comes to, its counts beside the exact ones, and its rounds.

import { capitalised, verdictWord } from "@roundwright/assessment"
import type { CirclePlan } from "../circle.ts"
import type { CheckedPattern } from "../result.ts"
import { scrollBox, signed } from "./common.ts"
import { element, type Html } from "./html.ts"

export function circleHtml(pattern: CheckedPattern, plan: CirclePlan): Html[] {
  const { counts, flatCounts, added, words } = plan
  const verdict = pattern.result.laidOut?.verdict ?? plan.verdict
  const heading = (title: string) => element("th", { scope: "col" }, title)
  const number = (text: string) => element("td", {}, text)
  const body = counts.map((count, index) =>
    element(
      "tr",
      {},
      number(String(index + 1)),
      number(String(count)),
      number(signed(added[index]!, 0)),
      number(signed(flatCounts[index]!, 1)),
      number(signed(count / flatCounts[index]!, 2)),
    ),
  )
  return [
    element("p", { class: "said" }, `${capitalised(verdictWord(verdict))}. ${words.join(" ")}`),
    scrollBox(
      `Counts of ${pattern.name}`,
      element(
        "table",
        {},
        element(
          "thead",
          {},
          element(
            "tr",
            {},
            ["Round", "Stitches", "More", "Exactly flat", "Ratio"].map((title) => heading(title)),
          ),
        ),
        element("tbody", {}, body),
      ),
    ),
    element(
      "pre",
      { class: "rounds" },
      plan.text
        .trimEnd()
        .split("\n")
        .map((line) => element("span", { class: "line" }, line)),
    ),
  ]
}
