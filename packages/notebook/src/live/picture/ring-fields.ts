// The table of rings made ready to be changed: a count field, a box "sure" and the next best as a button in every row.

/// <reference lib="dom" />

import { button, make } from "../dom.ts"
import { ringsIn } from "./edit-lines.ts"
import { pictureWords } from "./words.ts"

export interface RingActions {
  count(ring: number, repeats: number, strands: number): void
  keep(ring: number): void
  find(ring: number): void
  speak(text: string): void
}

const mostRepeats = 400

/** @param table as it stands in a page without its script: a row a ring, in the order of the lines */
export function ringFields(table: HTMLTableElement, lines: string, actions: RingActions): void {
  const rings = [...ringsIn(lines).values()]
  table.querySelectorAll("tbody tr").forEach((row, i) => {
    const ring = rings[i]
    const [, , repeatsCell, strandsCell, knownCell] = row.querySelectorAll("td")
    if (!ring || !repeatsCell || !strandsCell || !knownCell) return
    const { number, repeats, strands, sureness, nextBest } = ring
    const field = (what: string, value: number | null) =>
      make("input", {
        type: "number",
        min: "1",
        max: String(mostRepeats),
        value: value === null ? "" : String(value),
        "aria-label": `Ring ${number}, ${what}`,
      })
    const repeated = field("repeats", repeats)
    const stranded = field("strands", strands ?? repeats)
    const changed = (of: HTMLInputElement) => {
      const count = Math.round(of.valueAsNumber)
      if (!(count >= 1 && count <= mostRepeats)) return
      const set = of === repeated ? count : (repeats ?? count)
      const fits = of === stranded && count % set === 0
      actions.count(number, fits || of === repeated ? set : count, count)
    }
    for (const one of [repeated, stranded]) one.addEventListener("change", () => changed(one))
    const sure = make("input", { type: "checkbox", id: `${table.id}-sure-${number}` })
    sure.checked = repeats !== null && sureness === null
    sure.disabled = repeats === null
    sure.addEventListener("change", () =>
      sure.checked ? actions.keep(number) : actions.find(number),
    )
    const words = knownCell.textContent ?? ""
    knownCell.replaceChildren(
      make("label", { class: "tick" }, sure, "sure"),
      make("span", { class: "known-by" }, words.replace(/; or \d+$/, "")),
      ...(nextBest === null
        ? []
        : [
            button(`or ${nextBest}`, () => actions.count(number, nextBest, nextBest), {
              "aria-label": `Ring ${number}: or ${nextBest} repeats, the next best`,
            }),
          ]),
    )
    repeatsCell.replaceChildren(repeated)
    strandsCell.replaceChildren(stranded)
    row.addEventListener("focusin", (event) => {
      if (row.contains((event as FocusEvent).relatedTarget as Node)) return
      actions.speak(
        pictureWords.ring(number, repeats, sureness === null && repeats !== null, nextBest),
      )
    })
  })
}
