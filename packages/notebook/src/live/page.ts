// A page brought to life: cells that can be changed get an editor, and every answer is put where the old one
// stood.

/// <reference lib="dom" />

import { Asking } from "./asking.ts"
import { Bar } from "./bar.ts"
import { Book } from "./book.ts"
import { CellEditors, patternOf } from "./cell-editors.ts"
import { Known } from "./known.ts"
import type { Answer, PageAnswer } from "./messages.ts"
import { carriedSource } from "./save.ts"
import { Saving } from "./saving.ts"
import { Showing } from "./showing.ts"
import { offerTrials } from "./trial-buttons.ts"
import { VerdictTeller } from "./verdict-teller.ts"

/** @param script the text of the page's own script */
export function startPage(script: string): void {
  const carried = carriedSource()
  const book = new Book(carried.notebook, carried.original ?? carried.notebook)
  const sections = new Map<number, HTMLElement>()
  for (const { index } of book.cells) {
    const section = document.getElementById(`cell-${index + 1}`)
    if (section) sections.set(index, section)
  }
  if (sections.size > 0) new LivePage(script, book, sections, new Known(carried)).open()
}

class LivePage {
  readonly #bar: Bar
  readonly #cells: CellEditors
  readonly #asking: Asking
  readonly #showing: Showing
  readonly #teller: VerdictTeller
  readonly #saving: Saving
  #atHand: number | null = null
  /** Changes made, and how many of them the last question knew of. */
  #changes = 0
  #asked = 0
  /** Texts of pieces the last quick answer lacks, and of all pieces that are drawn. */
  #missing = new Set<string>()
  #drawn = new Set<string>()

  constructor(
    script: string,
    private readonly book: Book,
    private readonly sections: ReadonlyMap<number, HTMLElement>,
    private readonly known: Known,
  ) {
    this.#bar = new Bar({
      undo: () => this.#undo(),
      restoreAll: () => this.#changed(book.restore()),
      saveNotebook: () => this.#saving.notebook(),
      savePage: () => this.#asking.askForBody(),
      print: () => window.print(),
      stop: () => this.#asking.stop(),
    })
    this.#saving = new Saving(script, book, known, this.#bar)
    this.#teller = new VerdictTeller(this.#bar)
    this.#showing = new Showing(sections)
    this.#asking = new Asking(script, this.#bar, {
      question: () => {
        this.#asked = this.#changes
        return { markdown: book.markdown, known: known.plain }
      },
      hear: (answer, quick) => this.#hear(answer, quick),
      toLayOut: (body) => [...(body ? this.#drawn : this.#missing)],
      rested: (done) => {
        if (done) document.body.dataset.computedIn = this.#asking.where()
        this.#showEdits()
      },
    })
    this.#cells = new CellEditors(script, book, sections, known, {
      changed: (cells, byKey) => this.#changed(cells, byKey !== undefined),
      undo: () => this.#undo(),
      takeInHand: (cell) => this.#takeInHand(cell),
      speak: (text) => this.#bar.speak(text),
      found: () => this.#asking.ask(),
    })
  }

  open(): void {
    document.body.classList.add("live")
    document.body.prepend(this.#bar.root)
    this.#showEdits()
    this.#asking.ask()
  }

  /** Cells were changed: show it, mark what is old now, and ask for the new. */
  #changed(cells: readonly number[], byKey = false): void {
    if (cells.length === 0) return
    this.#changes += 1
    this.#cells.show(cells, byKey)
    this.#takeInHand(cells[0]!)
    this.#showEdits()
    this.#asking.askSoon()
  }

  #undo(): void {
    const cells = this.book.undo()
    this.#changed(cells)
    // Shown, but not given the focus: the next press of the button goes one step further back.
    if (cells.length === 1) this.sections.get(cells[0]!)?.scrollIntoView({ block: "nearest" })
  }

  #hear(answer: Answer, quick: boolean): void {
    switch (answer.part) {
      case "page":
        this.#showPage(answer, quick)
        break
      case "cell":
        this.#showing.drawing(answer.cell, answer.html, answer.shapeOf)
        break
      case "shape":
        this.known.shapes.set(answer.text, answer.found)
        break
      case "trials":
        this.#offerTrials(answer)
        break
      case "body":
        this.#saving.page(answer.html)
        break
      case "failed":
        this.#bar.say(`This could not be worked out. ${answer.message}`)
        this.#bar.speak(`This could not be worked out. ${answer.message}`)
        break
    }
  }

  #showPage(answer: PageAnswer, quick: boolean): void {
    const { title, stray, runs, cells, sayings, searches } = answer
    document.title = title
    for (const [lines, plan] of answer.plans) this.known.plans.set(lines, plan)
    this.#showing.put("stray", stray)
    const missing = runs.flatMap((run, index) => this.#showing.run(index, run))
    for (const cell of cells) {
      const { index, html, marks, waitsFor } = cell
      const [shapeOf] = waitsFor
      // The page was opened with all its drawings; nothing is laid out before something is changed.
      if (this.#changes === 0 && shapeOf !== undefined && this.known.shapes.has(shapeOf))
        this.#showing.showsAlready(index, shapeOf)
      const editor = this.#cells.editors.get(index)
      editor?.setMarks(marks)
      missing.push(...this.#showing.missing(cell))
      const panel = this.#cells.panels.get(index)
      if (panel) panel.update(searches.find((search) => search.cell === index) ?? null, html)
      else if (html !== null) this.#putCell(index, html)
    }
    if (quick) {
      this.#missing = new Set(missing)
      this.#drawn = new Set(cells.flatMap(({ waitsFor }) => waitsFor))
    }
    this.#teller.hear(sayings)
    this.#say()
  }

  #putCell(index: number, html: string): void {
    const editor = this.#cells.editors.get(index)
    const values = this.#cells.valuesOf(index)
    if (!editor) this.#showing.put(`cell-${index + 1}`, html)
    else if (values) this.#showing.putInto(values, `values-${index}`, html)
    else editor.setBelow(html)
  }

  /** An answer to what was asked before the last change would put back what was changed. */
  #offerTrials({ cell, patternCell, trials }: Extract<Answer, { part: "trials" }>): void {
    const offered = this.#changes
    if (offered !== this.#asked) return
    offerTrials(this.sections.get(cell)?.querySelectorAll("ol > li") ?? [], trials, {
      take: (text) => {
        if (offered !== this.#changes) return
        this.book.change(patternCell, text)
        this.#changed([patternCell])
      },
      showLine: (line) => this.#cells.editors.get(patternCell)?.goToLine(line),
    })
  }

  #takeInHand(cell: number): void {
    this.#atHand = cell
    this.#say()
  }

  /** The verdict of the pattern at hand: the one changed last, or the first. */
  #say(): void {
    const about = this.#atHand === null ? undefined : this.book.cells[this.#atHand]
    this.#teller.tell(about && patternOf(about.info), this.book.canUndo)
  }

  #showEdits(): void {
    const edited = this.book.editedCells
    this.#cells.showEdited(edited)
    this.#bar.showEdits(edited.length, this.book.canUndo)
  }
}
