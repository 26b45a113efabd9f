// The bar of a live page: what is said of the pattern at hand, whether the notebook was changed, and
// what can be done with it.

/// <reference lib="dom" />

import { button, make } from "./dom.ts"
import { pageWords } from "./page-words.ts"

export interface BarActions {
  undo(): void
  restoreAll(): void
  saveNotebook(): void
  savePage(): void
  print(): void
  stop(): void
}

export class Bar {
  readonly root: HTMLElement
  readonly #said: HTMLElement
  readonly #state: HTMLElement
  readonly #spoken: HTMLElement
  readonly #undo: HTMLButtonElement
  readonly #restore: HTMLButtonElement
  readonly #stop: HTMLButtonElement
  readonly #notices: HTMLElement

  constructor(actions: BarActions) {
    this.#said = make("p", { class: "saying" })
    this.#state = make("p", { class: "state" })
    this.#notices = make("div", { class: "notices" })
    this.#spoken = make("p", { class: "heard", role: "status", "aria-live": "polite" })
    this.#undo = button("Undo", actions.undo)
    this.#restore = button("Restore", actions.restoreAll, {
      "aria-label": "Restore the original of every cell",
    })
    this.#stop = button("Stop", actions.stop, { hidden: true })
    const save = make(
      "details",
      { class: "save" },
      make("summary", {}, "Save"),
      make(
        "div",
        { class: "choices" },
        button("Notebook, as Markdown", () => close(actions.saveNotebook)),
        button("This page, as HTML", () => close(actions.savePage)),
      ),
    )
    const close = (action: () => void) => {
      save.open = false
      action()
    }
    save.addEventListener("keydown", ({ key }) => {
      if (key !== "Escape" || !save.open) return
      save.open = false
      save.querySelector("summary")?.focus()
    })
    document.addEventListener("click", ({ target }) => {
      if (!save.contains(target as Node)) save.open = false
    })
    this.root = make(
      "aside",
      { class: "bar", "aria-label": "This notebook" },
      make("div", { class: "telling" }, this.#said, this.#state),
      make(
        "div",
        { class: "doing" },
        this.#stop,
        this.#undo,
        this.#restore,
        save,
        button("Print", actions.print),
      ),
      this.#notices,
      this.#spoken,
    )
    this.showEdits(0, false)
  }

  /** @param edited how many cells differ from the original */
  showEdits(edited: number, canUndo: boolean): void {
    this.#undo.disabled = !canUndo
    this.#restore.disabled = edited === 0
    this.#state.textContent =
      edited === 0
        ? "As it was written. Change any pattern, gauge or calculation."
        : `Edited: ${edited === 1 ? "1 cell differs" : `${edited} cells differ`} from the original.`
  }

  /** Says something that stays until it is dealt with: by one of the answers offered, or hidden. The same is said once. */
  notice(words: string, answers: readonly (readonly [label: string, action: () => void])[]): void {
    for (const said of this.#notices.children)
      if (said.firstChild?.textContent === words) said.remove()
    const notice = make("div", { class: "notice" }, make("p", {}, words))
    for (const [label, action] of [...answers, [pageWords.hide, () => {}] as const])
      notice.append(
        button(label, () => {
          notice.remove()
          action()
        }),
      )
    this.#notices.append(notice)
  }

  /** The verdict on the pattern at hand. */
  say(sentence: string): void {
    this.#said.textContent = sentence
  }

  /** Tells it to those who hear the page. */
  speak(text: string): void {
    this.#spoken.textContent = text
  }

  /** What is being done, where it takes long enough to be told. */
  tellWork(doing: string): void {
    if (!this.#stop.hidden) this.#state.textContent = doing
  }

  /** @param doing null when nothing is being worked out */
  showWork(doing: string | null): void {
    this.#stop.hidden = doing === null
    this.root.classList.toggle("busy", doing !== null)
    if (doing !== null) this.#state.textContent = doing
  }
}
