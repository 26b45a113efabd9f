// The words of a cell as they are seen: a sheet under the text area, whose own letters are clear, with the heads of
// rounds in bold and the words of problems underlined. Sheet and text area set the same letters in the same places.

/// <reference lib="dom" />

import { headLength } from "../page/line-head.ts"
import { make } from "./dom.ts"
import { splitLine } from "./line-marks.ts"
import type { Mark } from "./messages.ts"

export function makeSheet(): HTMLElement {
  return make("pre", { class: "sheet", "aria-hidden": "true" })
}

/** Writes the lines anew. @param marks by line, from 1 */
export function writeSheet(
  sheet: HTMLElement,
  lines: readonly string[],
  marks: ReadonlyMap<number, readonly Mark[]>,
): void {
  sheet.replaceChildren(
    ...lines.map((line, index) =>
      make("span", { class: "line" }, ...wordsOf(line, marks.get(index + 1) ?? [])),
    ),
  )
}

function wordsOf(line: string, marks: readonly Mark[]): (Node | string)[] {
  const head = headLength(line)
  let at = 0
  return splitLine(line, marks).flatMap(({ text, severity }) => {
    const bold = Math.min(Math.max(0, head - at), text.length)
    at += text.length
    const words = [
      ...(bold > 0 ? [make("span", { class: "head" }, text.slice(0, bold))] : []),
      ...(bold < text.length ? [text.slice(bold)] : []),
    ]
    return severity ? [make("mark", { class: severity }, ...words)] : words
  })
}
