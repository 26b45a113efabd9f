// What a squaring is to be like, as fields: corners, rounds and the stitches allowed. The cell's text stays what
// counts: the fields show what can be read of it, and set its lines.

/// <reference lib="dom" />

import { headingValue, withHeading } from "../headings.ts"
import { usualSquaring } from "../squaring.ts"
import { squaringBounds } from "../squaring-request.ts"
import { make } from "./dom.ts"

const stitchNames = ["sc", "hdc", "dc", "tr"] as const

export class SquaringFields {
  readonly parts: readonly HTMLElement[]
  readonly #corners: HTMLInputElement
  readonly #rounds: HTMLInputElement
  readonly #stitches: readonly HTMLInputElement[]

  /** @param id to name the fields by @param text the cell as it stands @param set takes the changed text */
  constructor(
    id: string,
    private readonly text: () => string,
    set: (text: string) => void,
  ) {
    this.#corners = whole(`${id}-corners`, squaringBounds.corners)
    this.#rounds = whole(`${id}-rounds`, squaringBounds.rounds)
    this.#stitches = stitchNames.map((name) =>
      make("input", { type: "checkbox", id: `${id}-${name}`, value: name }),
    )
    this.parts = [
      field("Corners", this.#corners),
      field("Rounds to add", this.#rounds),
      make(
        "fieldset",
        { class: "field swatch" },
        make("legend", {}, "Stitches allowed"),
        ...this.#stitches.map((box) => make("label", { class: "tick" }, box, box.value)),
      ),
    ]
    for (const input of [this.#corners, this.#rounds, ...this.#stitches])
      input.addEventListener("change", () => set(this.#changed()))
    this.show()
  }

  /** Shows what the cell's text asks for. */
  show(): void {
    const text = this.text()
    const value = (name: "corners" | "rounds") =>
      headingValue(text, name) ?? String(usualSquaring[name])
    this.#corners.value = value("corners")
    this.#rounds.value = value("rounds")
    const names = headingValue(text, "stitches") ?? usualSquaring.stitches
    const wanted = names.split(",").map((name) => name.trim())
    for (const box of this.#stitches) box.checked = wanted.includes(box.value)
  }

  #changed(): string {
    const stitches = this.#stitches.filter((box) => box.checked).map((box) => box.value)
    let text = withHeading(this.text(), "Corners", this.#corners.value)
    text = withHeading(text, "Rounds", this.#rounds.value)
    return withHeading(text, "Stitches", stitches.join(", "))
  }
}

function whole(id: string, bounds: { readonly least: number; readonly most: number }) {
  const { least, most } = bounds
  return make("input", { id, type: "number", min: String(least), max: String(most), step: "1" })
}

function field(label: string, input: HTMLElement): HTMLElement {
  return make("div", { class: "field" }, make("label", { for: input.id }, label), input)
}
