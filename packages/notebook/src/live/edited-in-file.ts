// Patterns and gauges whose printed text was changed in the page's file: what stands there is what its writer meant.

/// <reference lib="dom" />

import type { Book } from "./book.ts"

/** Longer lines are cut where they are printed, and tell nothing. */
const mostShown = 2_000

/** Texts of cells as they are printed, where that is not what the page carries. Asked before editors take their place. */
export function textsEditedInFile(
  book: Book,
  sections: ReadonlyMap<number, HTMLElement>,
): ReadonlyMap<number, string> {
  const edited = new Map<number, string>()
  for (const { index, kind } of book.cells) {
    if (kind !== "pattern" && kind !== "gauge") continue
    const printed = sections.get(index)?.querySelector(":scope > pre")
    const text = book.text(index)
    if (!printed || text.split("\n").some((line) => line.length > mostShown)) continue
    const lines = [...printed.childNodes].map(({ textContent }) => textContent ?? "")
    const found = lines.join("\n")
    if (found.trimEnd() !== text.trimEnd()) edited.set(index, found)
  }
  return edited
}
