// The cells of a page made ready to be changed: an editor in each pattern, gauge, calculation and circle cell,
// fields beside a gauge, and the panel of a squaring cell.

/// <reference lib="dom" />

import { yieldTo } from "../hand-lines.ts"
import type { Book } from "./book.ts"
import { make } from "./dom.ts"
import { Editor } from "./editor.ts"
import { GaugeForm } from "./gauge-form.ts"
import type { Known } from "./known.ts"
import type { OpenPicturePanel, PicturePanelKind } from "./picture/panel-kind.ts"
import { editableKinds } from "./source.ts"
import { SquaringPanel } from "./squaring-panel.ts"

export interface CellActions {
  /** Cells were changed, by a key in an editor or otherwise. */
  changed(cells: readonly number[], byKey?: "by key"): void
  undo(): void
  takeInHand(cell: number): void
  speak(text: string): void
  /** A pasted pattern says these itself: the page's own lines of them give way. */
  gaveWay(what: readonly string[]): void
  /** A search has found something: other cells may show it. */
  found(): void
  /** What a cell holds now on a page without its script, where the engine does not know. */
  shown(cell: number, markup: string): void
}

/** What a fold over an editor says, for cells whose values are read more often than changed. */
const foldWords: ReadonlyMap<string, string> = new Map([
  ["calculation", "Change this calculation"],
  ["circle", "Change this plan"],
  ["match", "Change what is to match"],
  ["compare", "Change the other piece"],
  ["hand", "Change what was measured"],
  ["reckon", "Change these figures"],
  ["yarn", "Change what the yarn is for"],
  ["border", "Change this border"],
  ["blanket", "Change this blanket"],
  ["picture", "Change these lines"],
])

export class CellEditors {
  readonly editors = new Map<number, Editor>()
  readonly panels = new Map<number, SquaringPanel>()
  readonly #pictures = new Map<number, PicturePanelKind>()
  readonly #forms = new Map<number, GaugeForm>()

  constructor(
    private readonly script: string,
    private readonly book: Book,
    private readonly sections: ReadonlyMap<number, HTMLElement>,
    private readonly known: Known,
    private readonly actions: CellActions,
    private readonly openPicture: OpenPicturePanel | null,
  ) {
    for (const { kind, index } of book.cells) {
      const section = sections.get(index)
      if (section && editableKinds.has(kind)) this.#addEditor(index, section)
      if (section && kind === "squaring") this.#addPanel(index, section)
      if (section && kind === "picture") this.#addPicture(index, section)
    }
  }

  /** Shows the texts of cells that were changed from outside their editors. */
  show(cells: readonly number[], byKey: boolean): void {
    for (const cell of cells) {
      const text = this.book.text(cell)
      if (!byKey) this.editors.get(cell)?.show(text)
      this.panels.get(cell)?.show()
      this.#forms.get(cell)?.show(text)
      this.#pictures.get(cell)?.show()
    }
  }

  showEdited(edited: readonly number[]): void {
    for (const [cell, editor] of this.editors) editor.setEdited(edited.includes(cell))
  }

  /** Where the values of a cell stand whose editor is behind a fold. */
  valuesOf(cell: number): Element | null {
    return this.sections.get(cell)?.querySelector(":scope > .values") ?? null
  }

  #addEditor(index: number, section: HTMLElement): void {
    const cell = this.book.cells[index]!
    const written = section.querySelector(".label")?.textContent
    const kind = `${cell.kind[0]!.toUpperCase()}${cell.kind.slice(1)}`
    const label = foldWords.has(cell.kind)
      ? `${kind} ${patternOf(cell.info) ?? ""}`.trim()
      : written || `${kind} ${patternOf(cell.info) ?? ""}`.trim()
    const { book, actions } = this
    const editor = new Editor(
      section.id,
      label,
      book.text(index),
      {
        typed: (text, pasted) => {
          const before = book.text(index)
          book.type(index, text, performance.now())
          actions.changed([index], "by key")
          if (pasted) this.#yield(index, text, before)
        },
        undo: () => actions.undo(),
        redo: () => actions.changed(book.redo()),
        restore: () => {
          actions.changed(book.restore(index))
          editor.area.focus()
        },
        copied: () => actions.speak("Copied."),
      },
      cell.kind === "pattern",
    )
    this.editors.set(index, editor)
    const words = foldWords.get(cell.kind)
    if (words) {
      // The values stay where a reader reads; the text is behind a fold.
      const values = make("div", { class: "values" }, ...section.childNodes)
      const fold = make("details", { class: "fold" }, make("summary", {}, words), editor.root)
      section.replaceChildren(values, fold)
    } else section.replaceChildren(editor.root)
    if (cell.kind === "gauge") this.#addForm(index, editor)
    editor.area.addEventListener("focus", () => actions.takeInHand(index))
  }

  /** A pasted pattern's own headings go before what stood in the fields: those lines are kept, and give way. */
  #yield(pattern: number, text: string, before: string): void {
    const name = patternOf(this.book.cells[pattern]!.info)
    const gauge = this.book.cells.find(
      ({ kind, info }) => kind === "gauge" && name !== undefined && patternOf(info) === name,
    )
    if (!gauge) return
    const { text: yielded, moved } = yieldTo(text, this.book.text(gauge.index), before)
    if (moved.length === 0) return
    this.#change(gauge.index, yielded)
    this.actions.gaveWay(moved)
  }

  #addForm(index: number, editor: Editor): void {
    const form = new GaugeForm(
      editor.root.id,
      () => this.book.text(index),
      (text) => this.#change(index, text),
    )
    form.show(this.book.text(index))
    editor.root.append(form.root)
    this.#forms.set(index, form)
  }

  #addPanel(index: number, section: HTMLElement): void {
    const panel = new SquaringPanel(section, this.script, this.known, {
      text: (cell = index) => this.book.text(cell),
      set: (text, cell = index) => this.#change(cell, text),
      showEnd: (cell) => this.editors.get(cell)?.goToEnd(),
      speak: (text) => this.actions.speak(text),
      found: () => this.actions.found(),
    })
    this.panels.set(index, panel)
  }

  #addPicture(index: number, section: HTMLElement): void {
    const panel = this.openPicture?.(section, this.script, {
      text: () => this.book.text(index),
      set: (text) => this.#change(index, text),
      speak: (text) => this.actions.speak(text),
      shown: (markup) => this.actions.shown(index, markup),
    })
    if (panel) this.#pictures.set(index, panel)
  }

  #change(cell: number, text: string): void {
    this.book.change(cell, text)
    this.actions.changed([cell])
  }
}

/** The pattern the options of a cell name. */
export function patternOf(info: string): string | undefined {
  return /(?:name|for|of)="?([^\s"]*)/.exec(info)?.[1]
}
