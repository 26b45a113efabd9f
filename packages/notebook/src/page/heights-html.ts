// Side and corner heights of a squaring as HTML: for every added stitch how far the outline must still move
// out, how far the stitch moves it, and what is left.

import type { SquaringResult } from "../squaring.ts"
import { signed } from "./common.ts"
import { element, type Html } from "./html.ts"
import { dataTable } from "./table.ts"

export function heightsHtml(found: SquaringResult | null): Html[] {
  if (!found) return [element("p", { class: "after" }, "Not searched yet.")]
  if ("fault" in found) return [element("p", {}, `No heights to show. ${found.fault}`)]
  if (found.heights.length === 0) return [element("p", {}, "No heights to show.")]
  const number = (text: string) => element("td", {}, text)
  const body = found.heights.map((row, index) =>
    element(
      "tr",
      { class: row.round !== found.heights[index - 1]?.round ? "first" : null },
      number(String(row.round)),
      element("td", { class: "word" }, row.stitch),
      element("td", { class: "word" }, row.written),
      number(`${signed(row.angleDeg, 0)}\u00b0`),
      ...[row.mustMm, row.movesMm, row.leftMm].map((value) => number(signed(value, 1))),
    ),
  )
  return [
    element("p", { class: "label" }, "From the middle of a side to its corner, stitch by stitch"),
    dataTable(
      "Side and corner heights",
      [
        "Round",
        { words: "Stitch" },
        { words: "In the text" },
        ...["Off mid-side", "Must move, mm", "Moves, mm", "Left, mm"],
      ],
      body,
    ),
  ]
}
