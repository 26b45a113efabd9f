// What a squaring is to be like, as fields: corners, rounds, where to begin, corners' style and the stitches allowed. The cell's text stays what
// counts: the fields show what can be read of it, and set its lines.

/// <reference lib="dom" />

import { readStitchList, usualStitches } from "@roundwright/shaping"
import { kindName, type Terms } from "@roundwright/stitches"
import { headingValue, withHeading } from "../headings.ts"
import { usualSquaring } from "../squaring.ts"
import { cornerStyles, squaringBounds } from "../squaring-request.ts"
import { make } from "./dom.ts"

const styleWords = {
  any: "stitches or chains",
  chains: "chain spaces",
  stitches: "stitches",
} as const

export class SquaringFields {
  readonly parts: readonly HTMLElement[]
  readonly #numbers: ReadonlyMap<WholeName, HTMLInputElement>
  readonly #style: HTMLSelectElement
  readonly #straighten: HTMLSelectElement
  readonly #stitches: HTMLFieldSetElement
  #terms: Terms = "US"

  /** @param id to name the fields by @param text the cell as it stands @param set takes the changed text */
  constructor(
    private readonly id: string,
    private readonly text: () => string,
    private readonly set: (text: string) => void,
  ) {
    this.#numbers = new Map(
      wholeNames.map((name) => {
        const input = whole(`${id}-${name.replace(" ", "-")}`, squaringBounds[name])
        const line = capitalised(name)
        input.addEventListener("change", () => this.#write(line, input.value || null))
        return [name, input]
      }),
    )
    this.#style = make("select", { id: `${id}-style` })
    this.#style.append(
      ...cornerStyles.map((style) => make("option", { value: style }, styleWords[style])),
    )
    this.#style.addEventListener("change", () =>
      this.#write("Corner style", this.#style.value === "any" ? null : this.#style.value),
    )
    this.#straighten = make("select", { id: `${id}-straighten` })
    this.#straighten.addEventListener("change", () =>
      this.#write("Straighten", this.#straighten.value || null),
    )
    this.#stitches = make("fieldset", { class: "field swatch" })
    const number = (name: WholeName) => this.#numbers.get(name)!
    this.parts = [
      field("Corners", number("corners")),
      field("Rounds to add", number("rounds")),
      field("On round (empty: the last)", number("from round")),
      field("Corner style", this.#style),
      field("Straightening round of", this.#straighten),
      this.#stitches,
    ]
    this.#name()
    this.show()
  }

  /** Names the stitches in the terms of the pattern. */
  setTerms(terms: Terms): void {
    if (terms === this.#terms) return
    this.#terms = terms
    this.#name()
    this.show()
  }

  /** Shows what the cell's text asks for. */
  show(): void {
    const text = this.text()
    for (const [name, input] of this.#numbers)
      input.value = headingValue(text, name) ?? usualOf(name)
    this.#style.value = headingValue(text, "corner style")?.toLowerCase() ?? "any"
    this.#straighten.value = this.#named("straighten")[0] ?? ""
    const wanted = this.#wanted()
    for (const box of this.#boxes()) box.checked = wanted.includes(box.value)
  }

  /** Stitches in a line by name, in the pattern's terms; none where the line is absent or cannot be read. */
  #named(line: string): string[] {
    try {
      const kinds = readStitchList(headingValue(this.text(), line) ?? "", this.#terms)
      return kinds.map((kind) => kindName(kind, this.#terms))
    } catch {
      return []
    }
  }

  #wanted(): string[] {
    return headingValue(this.text(), "stitches") === null ? this.#usual() : this.#named("stitches")
  }

  #usual(): string[] {
    return usualStitches.map((kind) => kindName(kind, this.#terms))
  }

  #boxes(): HTMLInputElement[] {
    return [...this.#stitches.querySelectorAll("input")]
  }

  #name(): void {
    const names = this.#usual()
    this.#stitches.replaceChildren(
      make("legend", {}, "Stitches allowed"),
      ...names.map((name) => {
        const box = make("input", { type: "checkbox", id: `${this.id}-${name}`, value: name })
        box.addEventListener("change", () => this.#writeStitches())
        return make("label", { class: "tick" }, box, name)
      }),
    )
    this.#straighten.replaceChildren(
      make("option", { value: "" }, "none"),
      ...names.map((name) => make("option", { value: name }, name)),
    )
  }

  /** What is ticked, and what else the line names. */
  #writeStitches(): void {
    const boxes = this.#boxes()
    const ticked = boxes.filter((box) => box.checked).map((box) => box.value)
    const others = this.#wanted().filter((name) => boxes.every((box) => box.value !== name))
    this.#write("Stitches", [...ticked, ...others].join(", "))
  }

  #write(line: string, value: string | null): void {
    this.set(withHeading(this.text(), line, value))
  }
}

const wholeNames = ["corners", "rounds", "from round"] as const
type WholeName = (typeof wholeNames)[number]

function usualOf(name: WholeName): string {
  return name === "from round" ? "" : String(usualSquaring[name])
}

function capitalised(name: string): string {
  return `${name[0]!.toUpperCase()}${name.slice(1)}`
}

function whole(id: string, bounds: { readonly least: number; readonly most: number }) {
  const { least, most } = bounds
  return make("input", { id, type: "number", min: String(least), max: String(most), step: "1" })
}

function field(label: string, input: HTMLElement): HTMLElement {
  return make("div", { class: "field" }, make("label", { for: input.id }, label), input)
}
