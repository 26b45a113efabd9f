// A round chosen in the table, the text or a drawing of a piece is marked in the others, for the keyboard as for the mouse:
// the number of a round in the table is a link, and in the text the caret chooses.

/// <reference lib="dom" />

import { roundsOfLine } from "../page/line-head.ts"

export class ChosenRound {
  #pattern = ""
  #round = 0

  /** @param tell says what was chosen to those who hear the page */
  constructor(
    private readonly main: HTMLElement,
    private readonly tell: (words: string) => void,
  ) {
    main.addEventListener("click", (event) => {
      const place = (event.target as Element).closest("[data-round]")
      if (!place || place.closest("pre")) return
      if ((event.target as Element).closest("a.round")) event.preventDefault()
      this.#choose(place, Number(place.getAttribute("data-round")))
    })
    for (const kind of ["click", "keyup"] as const)
      main.addEventListener(kind, ({ target }) => {
        if (target instanceof HTMLTextAreaElement && target.closest(".cell.pattern"))
          this.#choose(target, roundAt(target))
      })
  }

  /** Marks the round in what was put into the page since. */
  mark(): void {
    for (const old of this.main.querySelectorAll(".chosen")) old.classList.remove("chosen")
    if (this.#round === 0) return
    const of = `[data-of="${CSS.escape(this.#pattern)}"] [data-round~="${this.#round}"]`
    for (const place of this.main.querySelectorAll(of)) place.classList.add("chosen")
  }

  #choose(place: Element, round: number): void {
    const pattern = place.closest("[data-of]")?.getAttribute("data-of") ?? ""
    if (pattern === this.#pattern && round === this.#round) return
    this.#pattern = pattern
    this.#round = round
    this.mark()
    if (round > 0) this.tell(`Round ${round} is marked.`)
  }
}

/** The round in whose line the caret stands, or 0. */
function roundAt({ value, selectionStart }: HTMLTextAreaElement): number {
  const from = value.lastIndexOf("\n", selectionStart - 1) + 1
  return roundsOfLine(value.slice(from).split("\n", 1)[0]!)[0] ?? 0
}
