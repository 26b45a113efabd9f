// Beside each finding of an edit that brings a wording a button that takes it, and one that takes all nothing speaks against.

/// <reference lib="dom" />

import { button, make } from "./dom.ts"

export interface WordingActions {
  /** The text as it was edited. */
  readonly text: string
  /** Takes the text with wordings put in. */
  take(text: string): void
}

interface Wording {
  readonly start: number
  readonly end: number
  readonly words: string
}

export function offerWordings(section: Element, { text, take }: WordingActions): void {
  for (const old of section.querySelectorAll(".take")) old.remove()
  const starts = lineStarts(text)
  const sure: Wording[] = []
  section.querySelectorAll<HTMLElement>("li[data-wording]").forEach((item) => {
    const [line, column, length] = (item.dataset.place ?? "").split(":").map(Number)
    const start = (starts[line! - 1] ?? Number.NaN) + column! - 1
    if (!(start + length! <= text.length)) return
    const wording = { start, end: start + length!, words: item.dataset.wording! }
    if (item.hasAttribute("data-sure")) sure.push(wording)
    const number = item.querySelector(".where")?.textContent ?? ""
    item.append(
      button("Take it", () => take(withWordings(text, [wording])), {
        class: "take",
        "aria-label": `Take it: the wording of finding ${number}`,
      }),
    )
  })
  if (sure.length < 2) return
  const all = button(`Take the ${sure.length} that nothing speaks against`, () =>
    take(withWordings(text, sure)),
  )
  section.querySelector("pre")?.after(make("p", { class: "take" }, all))
}

/** The text with wordings put in, of two that overlap the first. */
export function withWordings(text: string, wordings: readonly Wording[]): string {
  let taken = text
  let before = Number.POSITIVE_INFINITY
  for (const { start, end, words } of [...wordings].sort((a, b) => b.start - a.start)) {
    if (end > before) continue
    taken = taken.slice(0, start) + words + taken.slice(end)
    before = start
  }
  return taken
}

/** Offsets at which lines begin. */
function lineStarts(text: string): number[] {
  return [0, ...[...text.matchAll(/\n/g)].map(({ index }) => index + 1)]
}
