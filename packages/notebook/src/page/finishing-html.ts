// What a finishing cell gave, as HTML.

import type { FinishingAnswer } from "../finishing/types.ts"
import { keepUnits } from "./common.ts"
import { type Child, element, type Html, trusted } from "./html.ts"
import { dataTable } from "./table.ts"
import { markedLine } from "./written.ts"

export function finishingHtml(found: FinishingAnswer | null): Child {
  if (!found) return element("p", { class: "after" }, "Not worked out yet.")
  const { lead, items, table, notes, drawing } = found
  return [
    leadHtml(lead),
    drawing ? element("figure", { class: "layout" }, trusted(drawing)) : null,
    items.length > 0
      ? element(
          "ol",
          { class: "proposals" },
          items.map(({ text, rounds }) =>
            element("li", {}, keepUnits(text), rounds.length > 0 ? roundsHtml(rounds) : null),
          ),
        )
      : null,
    table ? tableHtml(table) : null,
    notes.length > 0
      ? element(
          "ul",
          { class: "notes" },
          notes.map((note) => element("li", {}, keepUnits(note))),
        )
      : null,
  ]
}

/** Its first sentence carries the weight. */
function leadHtml(lead: string): Html {
  const end = /[.:] (?=[A-Z])/.exec(lead)
  const at = end ? end.index + 1 : lead.length
  return element(
    "p",
    {},
    element("strong", {}, keepUnits(lead.slice(0, at))),
    keepUnits(lead.slice(at)),
  )
}

function roundsHtml(rounds: readonly string[]): Html {
  return element(
    "pre",
    { class: "rounds" },
    rounds.map((line) => element("span", { class: "line" }, markedLine(line, []))),
  )
}

function tableHtml({ label, head, rows }: NonNullable<FinishingAnswer["table"]>): Html {
  const last = head.length - 1
  return dataTable(
    label,
    head.map((title, k) => (k === last ? { words: title } : title)),
    rows.map((row) =>
      element(
        "tr",
        {},
        row.map((cell, k) => element("td", { class: k === last ? "word" : null }, cell)),
      ),
    ),
  )
}
