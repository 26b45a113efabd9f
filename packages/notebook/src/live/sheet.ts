// The words of a cell as they are seen: a sheet under the text area, whose own letters are clear, with the heads of
// rounds in bold and the words of problems underlined. Sheet and text area set the same letters in the same places:
// what wraps cannot hang, since no line of a text area after its first takes an indent of its own (in Chromium 156 not
// even by `text-indent: hanging each-line`, which works everywhere else). A hairline tells one round from the next.

/// <reference lib="dom" />

import { headLength, roundsOfLine } from "../page/line-head.ts"
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
      make(
        "span",
        {
          class: isRound(line) ? "line round" : "line",
          "data-round": roundsOfLine(line).join(" ") || false,
        },
        ...wordsOf(line, marks.get(index + 1) ?? []),
      ),
    ),
  )
}

function isRound(line: string): boolean {
  const head = headLength(line)
  return head > 0 && head < line.length
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
