// The shell of every table of figures: a box that scrolls by itself, a row of headings, and the rows of its body.

import { scrollBox } from "./common.ts"
import { element, type Html } from "./html.ts"

/** A heading over figures, or over words, which stand to the left. */
export type TableHeading = string | { readonly words: string }

/** @param label what the table holds, for those who hear the page @param rows its `tr` elements */
export function dataTable(
  label: string,
  headings: readonly TableHeading[],
  rows: readonly Html[],
): Html {
  const cells = headings.map((heading) =>
    typeof heading === "string"
      ? element("th", { scope: "col" }, heading)
      : element("th", { scope: "col", class: "word" }, heading.words),
  )
  const head = element("thead", {}, element("tr", {}, cells))
  return scrollBox(label, element("table", {}, head, element("tbody", {}, rows)))
}
