// Squaring in a live page: what is wanted as fields, a search that is asked for and can be stopped, and
// proposals that can be taken over into the pattern.

/// <reference lib="dom" />

import { headingValue, withHeading } from "../headings.ts"
import { type SquaringResult, usualSquaring } from "../squaring.ts"
import { squaringBounds } from "../squaring-request.ts"
import { button, make, setMarkup } from "./dom.ts"
import { type Engine, startEngine } from "./engine.ts"
import type { Known } from "./known.ts"
import type { Answer, Search } from "./messages.ts"

export interface SquaringActions {
  /** The cell's text, and taking a changed one. */
  text(): string
  set(text: string): void
  takeOver(patternCell: number, text: string): void
  speak(text: string): void
  /** Something was found and is known now. */
  found(): void
}

const stitchNames = ["sc", "hdc", "dc", "tr"] as const

export class SquaringPanel {
  readonly #corners: HTMLInputElement
  readonly #rounds: HTMLInputElement
  readonly #stitches: readonly HTMLInputElement[]
  readonly #go: HTMLButtonElement
  readonly #stop: HTMLButtonElement
  readonly #state: HTMLElement
  readonly #answer: HTMLElement
  #engine: Engine | null = null
  /** What the page would search for now, what is being searched for, and what is shown. */
  #now: Search | null = null
  #asked: Search | null = null
  #shownKey: string | null = null

  constructor(
    private readonly section: HTMLElement,
    private readonly script: string,
    private readonly known: Known,
    private readonly actions: SquaringActions,
  ) {
    const { id } = section
    this.#corners = whole(`${id}-corners`, squaringBounds.corners)
    this.#rounds = whole(`${id}-rounds`, squaringBounds.rounds)
    this.#stitches = stitchNames.map((name) =>
      make("input", { type: "checkbox", id: `${id}-${name}`, value: name }),
    )
    this.#go = button("Search", () => this.#search())
    this.#stop = button("Stop the search", () => this.#stopSearch(), { hidden: true })
    this.#state = make("p", { class: "after", role: "status" })
    this.#answer = make("div", { class: "answer" }, ...section.childNodes)
    section.replaceChildren(
      make(
        "div",
        { class: "fields" },
        field("Corners", this.#corners),
        field("Rounds to add", this.#rounds),
        make(
          "fieldset",
          { class: "field swatch" },
          make("legend", {}, "Stitches allowed"),
          ...this.#stitches.map((box) => make("label", { class: "tick" }, box, box.value)),
        ),
        this.#go,
        this.#stop,
      ),
      this.#state,
      this.#answer,
    )
    for (const input of [this.#corners, this.#rounds, ...this.#stitches])
      input.addEventListener("change", () => this.#changed())
    this.show()
  }

  /** Shows what the cell's text asks for. */
  show(): void {
    const text = this.actions.text()
    const value = (name: "corners" | "rounds") =>
      headingValue(text, name) ?? String(usualSquaring[name])
    this.#corners.value = value("corners")
    this.#rounds.value = value("rounds")
    const names = headingValue(text, "stitches") ?? usualSquaring.stitches
    const wanted = names.split(",").map((name) => name.trim())
    for (const box of this.#stitches) box.checked = wanted.includes(box.value)
  }

  /** What the notebook as it stands would search for; null when the cell cannot be used. @param fault why, as markup */
  update(search: Search | null, fault: string | null): void {
    // The answer the page was opened with is the one to what it was opened with.
    if (this.#now === null && this.#shownKey === null && search) {
      this.#shownKey = search.key
      const found = this.known.searches.get(search.key)
      if (found) this.#offer(search, found)
    }
    this.#now = search
    if (fault !== null) {
      this.#shownKey = ""
      setMarkup(this.#answer, fault)
    }
    this.#showState()
  }

  #changed(): void {
    const stitches = this.#stitches.filter((box) => box.checked).map((box) => box.value)
    let text = withHeading(this.actions.text(), "Corners", this.#corners.value)
    text = withHeading(text, "Rounds", this.#rounds.value)
    text = withHeading(text, "Stitches", stitches.join(", "))
    this.actions.set(text)
  }

  #search(): void {
    if (!this.#now) return
    this.#asked = this.#now
    this.#engine ??= startEngine(this.script, (answer) => this.#hear(answer))
    this.#engine.ask(this.#asked.question)
    this.#showState()
  }

  #stopSearch(): void {
    this.#engine?.stop()
    this.#asked = null
    this.#showState()
  }

  #hear(answer: Answer): void {
    const asked = this.#asked
    if (answer.part === "squaring" && asked) {
      this.known.searches.set(asked.key, answer.result)
      this.#shownKey = asked.key
      setMarkup(this.#answer, answer.html)
      this.#offer(asked, answer.result)
      this.actions.found()
    }
    if (answer.part !== "end" && answer.part !== "failed") return
    this.#asked = null
    this.#showState()
    const count = this.#answer.querySelectorAll(".proposals > li").length
    this.actions.speak(count === 1 ? "1 proposal found." : `${count} proposals found.`)
  }

  /** A button under each proposal. */
  #offer(search: Search, result: SquaringResult): void {
    const { patternCell } = search
    if (!("proposals" in result) || patternCell === null) return
    this.#answer.querySelectorAll(".proposals > li").forEach((item, index) => {
      const proposal = result.proposals[index]
      if (!proposal) return
      const take = () => {
        if (this.#now?.key === search.key)
          this.actions.takeOver(patternCell, proposal.text.trimEnd())
      }
      item.append(
        button("Take over", take, {
          class: "try",
          "aria-label": `Take over proposal ${index + 1} into the pattern`,
        }),
      )
    })
  }

  #showState(): void {
    const searching = this.#asked !== null
    const outdated = this.#now !== null && this.#shownKey !== this.#now.key
    this.#go.disabled = searching || this.#now === null
    this.#stop.hidden = !searching
    this.section.classList.toggle("outdated", outdated)
    for (const take of this.#answer.querySelectorAll("button")) take.disabled = outdated
    this.#state.textContent = searching
      ? "Searching: this takes some seconds. You can go on writing."
      : outdated
        ? "The pattern or the wishes have changed since: search again."
        : ""
  }
}

function whole(id: string, bounds: { readonly least: number; readonly most: number }) {
  const { least, most } = bounds
  return make("input", { id, type: "number", min: String(least), max: String(most), step: "1" })
}

function field(label: string, input: HTMLElement): HTMLElement {
  return make("div", { class: "field" }, make("label", { for: input.id }, label), input)
}
