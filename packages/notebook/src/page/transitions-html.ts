// Circle after circle squared, as a table.

import { verdictWord } from "@roundwright/assessment"
import type { TransitionsRequest, TransitionsResult } from "../transitions.ts"
import { signed } from "./common.ts"
import { element, type Html } from "./html.ts"
import { dataTable } from "./table.ts"

export function transitionsHtml(
  { corners }: TransitionsRequest,
  found: TransitionsResult | null,
): Html[] {
  if (!found) return [element("p", { class: "after" }, "Not searched yet.")]
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
    dataTable(
      `Circles squared, ${corners} corners`,
      [
        "Circle",
        { words: "Added rounds" },
        { words: "Stitches" },
        ...["Bow, mm", "Bow", "Corner"],
        { words: "Verdict" },
      ],
      body,
    ),
    ...found.unsolved.map(({ count, why }) =>
      element("p", { class: "after" }, `A circle of ${count}: ${why}`),
    ),
  ]
}
