// The page as it would stand without its script, kept beside the live one and brought up to date with every answer. So
// the page can be saved at any moment, whatever is still being worked out.

/// <reference lib="dom" />

import { textDigest } from "../page/text-digest.ts"
import { make, setMarkup } from "./dom.ts"
import { pageWords } from "./page-words.ts"

/** What is not of the present text when the page is saved. */
export interface Unanswered {
  /** Cells that were changed since the last answer, with their texts. */
  readonly changed: ReadonlyMap<number, string>
  /** Cells and runs of prose that still wait for theirs, by the id of their element. */
  readonly late: ReadonlySet<string>
}

export class StillPage {
  readonly #main: HTMLElement
  /** Runs of prose that were changed in the file, by id, with the digest they had: they stay as they stand. */
  readonly #kept = new Map<string, string>()

  /**
   * @param main the main part of the page, before anything in it is replaced
   * @param prose digests of the words of its runs as they were written; empty where it brings none
   */
  constructor(main: HTMLElement, prose: readonly string[]) {
    this.#main = main.cloneNode(true) as HTMLElement
    this.#main.querySelectorAll(".prose").forEach(({ id, textContent }, index) => {
      const written = prose[index]
      if (written !== undefined && written !== textDigest(textContent ?? ""))
        this.#kept.set(id, written)
    })
  }

  /** True for a run of prose that was changed in the file. */
  keeps(id: string): boolean {
    return this.#kept.has(id)
  }

  get keepsAny(): boolean {
    return this.#kept.size > 0
  }

  /** Takes over what stands in an element from now on. */
  put(id: string, markup: string): void {
    const element = this.keeps(id) ? null : this.#find(this.#main, id)
    if (element) setMarkup(element, markup)
  }

  /** The main part as markup, where what is not of the present text says so, and the digests of its prose. */
  written({ changed, late }: Unanswered): { readonly body: string; readonly prose: string[] } {
    const main = this.#main.cloneNode(true) as HTMLElement
    for (const [cell, text] of changed) {
      const lines = text.split("\n").map((line) => make("span", { class: "line" }, line))
      this.#find(main, `cell-${cell + 1}`)?.replaceChildren(
        make("p", { class: "label" }, pageWords.notWorkedOut),
        make("pre", {}, ...lines),
      )
    }
    for (const id of late)
      this.#find(main, id)?.prepend(make("p", { class: "after earlier" }, pageWords.earlier))
    const prose = [...main.querySelectorAll(".prose")].map(
      ({ id, textContent }) => this.#kept.get(id) ?? textDigest(textContent ?? ""),
    )
    return { body: main.innerHTML, prose }
  }

  #find(main: HTMLElement, id: string): Element | null {
    return main.querySelector(`#${CSS.escape(id)}`)
  }
}
