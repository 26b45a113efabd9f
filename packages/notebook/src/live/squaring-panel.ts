// Squaring in a live page: a search that is asked for and can be stopped, and proposals that can be taken over
// into the pattern.

/// <reference lib="dom" />

import type { SquaringResult } from "../squaring.ts"
import { button, make, setMarkup } from "./dom.ts"
import { type Engine, startEngine } from "./engine.ts"
import type { Known } from "./known.ts"
import type { Answer, Search } from "./messages.ts"
import { SquaringFields } from "./squaring-fields.ts"

export interface SquaringActions {
  /** The text of this or another cell, and taking a changed one. */
  text(cell?: number): string
  set(text: string, cell?: number): void
  /** Leads to the end of a pattern's text. */
  showEnd(patternCell: number): void
  speak(text: string): void
  /** Something was found and is known now. */
  found(): void
}

export class SquaringPanel {
  readonly #fields: SquaringFields
  readonly #go: HTMLButtonElement
  readonly #stop: HTMLButtonElement
  readonly #state: HTMLElement
  readonly #answer: HTMLElement
  #engine: Engine | null = null
  /** What the page would search for now, what is being searched for, and what is shown. */
  #now: Search | null = null
  #asked: Search | null = null
  #shownKey: string | null = null
  /** What was taken over last: it is spoken of as long as the pattern stands so. */
  #taken: { readonly patternCell: number; readonly text: string } | null = null

  constructor(
    private readonly section: HTMLElement,
    private readonly script: string,
    private readonly known: Known,
    private readonly actions: SquaringActions,
  ) {
    this.#fields = new SquaringFields(section.id, actions.text, actions.set)
    this.#go = button("Search", () => this.#search())
    this.#stop = button("Stop the search", () => this.#stopSearch(), { hidden: true })
    this.#state = make("p", { class: "after", role: "status" })
    this.#answer = make("div", { class: "answer" }, ...section.childNodes)
    section.replaceChildren(
      make("div", { class: "fields" }, ...this.#fields.parts, this.#go, this.#stop),
      this.#state,
      this.#answer,
    )
  }

  /** Shows what the cell's text asks for. */
  show(): void {
    this.#fields.show()
  }

  /** What the notebook as it stands would search for; null when the cell cannot be used. @param fault why, as markup */
  update(search: Search | null, fault: string | null): void {
    // An answer the page was opened with is the one to what it was opened with.
    const opened = this.#now === null && this.#shownKey === null && search
    const found = opened ? this.known.searches.get(search.key) : undefined
    if (opened && found) {
      this.#shownKey = search.key
      this.#offer(search, found)
    }
    this.#now = search
    if (search) this.#fields.setTerms(search.terms)
    if (fault !== null) {
      this.#shownKey = ""
      setMarkup(this.#answer, fault)
    }
    this.#showState()
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
      this.#taken = null
      setMarkup(this.#answer, answer.html)
      this.#offer(asked, answer.result)
      this.actions.found()
    }
    if (answer.part !== "end" && answer.part !== "failed") return
    this.#asked = null
    this.#showState()
    if (answer.part === "failed") {
      this.actions.speak(answer.message)
      return
    }
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
        if (this.#now?.key === search.key) this.#takeOver(patternCell, proposal.text.trimEnd())
      }
      item.append(
        button("Take over", take, {
          class: "try",
          "aria-label": `Take over proposal ${index + 1} into the pattern`,
        }),
      )
    })
  }

  #takeOver(patternCell: number, text: string): void {
    this.#taken = { patternCell, text }
    this.actions.set(text, patternCell)
    this.#showState()
    // The button that was pressed is soon of no more use.
    this.#state.querySelector("button")?.focus()
  }

  #showState(): void {
    const searching = this.#asked !== null
    const outdated =
      this.#now !== null && this.#shownKey !== null && this.#shownKey !== this.#now.key
    this.#go.disabled = searching || this.#now === null
    this.#stop.hidden = !searching
    this.section.classList.toggle("outdated", outdated)
    for (const take of this.#answer.querySelectorAll("button")) take.disabled = outdated
    const had = this.#state.contains(document.activeElement)
    this.#state.replaceChildren(...this.#stateWords(searching, outdated))
    if (had) (this.#state.querySelector("button") ?? this.#go).focus()
  }

  #stateWords(searching: boolean, outdated: boolean): (Node | string)[] {
    if (searching) return ["Searching: this takes some seconds. You can go on writing."]
    const taken = this.#taken
    if (taken && this.actions.text(taken.patternCell) === taken.text)
      return [
        "Taken over: the pattern ends with these rounds now. Undo takes them out again. ",
        button("Show the pattern", () => this.actions.showEnd(taken.patternCell)),
      ]
    return outdated ? ["The pattern or the wishes have changed since: search again."] : []
  }
}
