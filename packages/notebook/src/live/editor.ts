// A cell's text, changed in place: a plain text area over the sheet on which its words are seen, and a list below in
// which each problem leads to its words.

/// <reference lib="dom" />

import { button, make, setMarkup } from "./dom.ts"
import { type LineMarks, marksByLine, moveMarks } from "./line-marks.ts"
import type { Mark } from "./messages.ts"
import { makeSheet, writeSheet } from "./sheet.ts"

export interface EditorActions {
  /** @param pasted whether the text came in whole, from somewhere else */
  typed(text: string, pasted: boolean): void
  undo(): void
  redo(): void
  restore(): void
  copied(): void
}

/** More problems than this usually follow from those before. */
const mostListed = 40

/** Longer texts scroll in a box of their own, without underlines: laying them out twice takes too long. */
const mostUnderlined = 60_000

/** What stops the reading stands before what is only told. */
const weight = { error: 0, warning: 1, note: 2 } as const

export class Editor {
  readonly root: HTMLElement
  readonly area: HTMLTextAreaElement
  readonly #sheet: HTMLElement
  readonly #list: HTMLElement
  readonly #below: HTMLElement
  readonly #edited: HTMLElement
  readonly #restore: HTMLButtonElement
  #marks: LineMarks = new Map()
  #lines: readonly string[] = []

  /** @param label what the cell is, for its heading and for those who hear the page */
  constructor(id: string, label: string, text: string, actions: EditorActions, copy: boolean) {
    this.#list = make("ul", { class: "found", id: `${id}-found`, hidden: true })
    this.#sheet = makeSheet()
    this.area = make("textarea", {
      id: `${id}-text`,
      spellcheck: "false",
      autocapitalize: "off",
      autocomplete: "off",
      autocorrect: "off",
      rows: "1",
      "aria-describedby": `${id}-found`,
    })
    this.#edited = make("span", { class: "edited", hidden: true }, "edited")
    this.#restore = button("Restore", actions.restore, {
      "aria-label": `Restore the original of ${label}`,
      hidden: true,
    })
    this.#below = make("div", { class: "below" })
    const tools = make("span", { class: "tools" }, this.#edited, this.#restore)
    if (copy)
      tools.append(
        button("Copy", () => void copyText(this.area).then(actions.copied), {
          "aria-label": `Copy ${label}`,
        }),
      )
    const heading = make("label", { class: "label", for: `${id}-text` }, label)
    this.root = make(
      "div",
      { class: "editor", id: `${id}-editor` },
      make("div", { class: "heading" }, heading, tools),
      make("div", { class: "paper" }, this.#sheet, this.area),
      this.#list,
      this.#below,
    )
    this.show(text)
    this.area.addEventListener("input", (event) => {
      this.#redraw()
      const how = event instanceof InputEvent ? event.inputType : ""
      actions.typed(this.area.value, how === "insertFromPaste" || how === "insertFromDrop")
    })
    this.area.addEventListener("keydown", (event) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return
      const key = event.key.toLowerCase()
      if (key !== "z" && key !== "y") return
      event.preventDefault()
      if (key === "y" || event.shiftKey) actions.redo()
      else actions.undo()
    })
  }

  /** Sets the text from outside, keeping the caret where it can stay. */
  show(text: string): void {
    if (this.area.value !== text) {
      const caret = Math.min(this.area.selectionStart, text.length)
      this.area.value = text
      if (document.activeElement === this.area) this.area.setSelectionRange(caret, caret)
    }
    this.#redraw()
  }

  setMarks(marks: readonly Mark[]): void {
    this.#marks = marksByLine(marks)
    this.#lines = this.area.value.split("\n")
    this.#redraw()
    const listed = [...marks].sort((a, b) => weight[a.severity] - weight[b.severity])
    this.#list.replaceChildren(...listed.slice(0, mostListed).map((mark) => this.#item(mark)))
    const rest = marks.length - mostListed
    if (rest > 0) this.#list.append(make("li", {}, `... and ${rest} more.`))
    this.#list.hidden = marks.length === 0
    this.area.setAttribute(
      "aria-invalid",
      String(marks.some(({ severity }) => severity === "error")),
    )
  }

  /** What the engine has to say below the text. */
  setBelow(markup: string): void {
    setMarkup(this.#below, markup)
  }

  setEdited(edited: boolean): void {
    this.#edited.hidden = !edited
    this.#restore.hidden = !edited
  }

  /** Writes the words anew under the text area; marks stay with the lines that did not change. */
  #redraw(): void {
    const long = this.area.value.length > mostUnderlined
    this.root.classList.toggle("long", long)
    if (long) {
      this.#sheet.replaceChildren()
      return
    }
    const lines = this.area.value.split("\n")
    this.#marks = moveMarks(this.#marks, this.#lines, lines)
    this.#lines = lines
    writeSheet(this.#sheet, lines, this.#marks)
  }

  #item(mark: Mark): HTMLElement {
    const { severity, line, round, message, hint } = mark
    const where = `${severity}, line ${line}${round === null ? "" : `, round ${round}`}`
    const item = make(
      "li",
      { class: severity },
      button(where, () => this.#goTo(mark), { class: "where" }),
      ` ${message}`,
    )
    if (hint) item.append(make("span", { class: "hint" }, hint))
    return item
  }

  /** Leads to a line of the text, from 1, and selects it. */
  goToLine(line: number): void {
    const length = this.area.value.split("\n")[line - 1]?.length ?? 0
    this.#goTo({ line, column: 1, length })
  }

  /** Leads to the end of the text. */
  goToEnd(): void {
    this.goToLine(this.area.value.trimEnd().split("\n").length)
  }

  #goTo({ line, column, length }: Pick<Mark, "line" | "column" | "length">): void {
    const lines = this.area.value.split("\n")
    let start = Math.min(column - 1, lines[line - 1]?.length ?? 0)
    for (const before of lines.slice(0, line - 1)) start += before.length + 1
    this.area.focus()
    this.area.setSelectionRange(start, Math.min(start + length, this.area.value.length))
  }
}

/** Copies by the clipboard of the page, or as a selection where the page has none. */
async function copyText(area: HTMLTextAreaElement): Promise<void> {
  try {
    await navigator.clipboard.writeText(area.value)
  } catch {
    area.focus()
    area.select()
    document.execCommand("copy")
  }
}
