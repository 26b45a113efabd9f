// Circle after circle squared, as a table.

import { verdictWord } from "@roundwright/assessment"
import type { TransitionsRequest, TransitionsResult } from "../transitions.ts"
import { scrollBox, signed } from "./common.ts"
import { element, type Html } from "./html.ts"

export function transitionsHtml(
  { corners }: TransitionsRequest,
  found: TransitionsResult | null,
): Html[] {
  if (!found) return [element("p", { class: "after" }, "Not searched yet.")]
  const heading = (title: string, word = false) =>
    element("th", { scope: "col", class: word ? "word" : null }, title)
  const number = (text: string) => element("td", {}, text)
  const body = found.transitions.map((one) =>
    element(
      "tr",
      {},
      number(String(one.count)),
      element("td", { class: "word" }, one.rounds.join(", then ")),
      element("td", { class: "word wrap" }, one.stitchKinds.join(", ")),
      number(signed(one.bowMm, 1)),
      number(`${signed(100 * one.bow, 1)} %`),
      number(`${signed(one.cornerAngleDeg, 0)}\u00b0`),
      element("td", { class: "word" }, verdictWord(one.verdict)),
    ),
  )
  return [
    scrollBox(
      `Circles squared, ${corners} corners`,
      element(
        "table",
        {},
        element(
          "thead",
          {},
          element(
            "tr",
            {},
            heading("Circle"),
            heading("Added rounds", true),
            heading("Stitches", true),
            heading("Bow, mm"),
            heading("Bow"),
            heading("Corner"),
            heading("Verdict", true),
          ),
        ),
        element("tbody", {}, body),
      ),
    ),
    ...found.unsolved.map(({ count, why }) =>
      element("p", { class: "after" }, `A circle of ${count}: ${why}`),
    ),
  ]
}
