// A page brought to life: cells that can be changed get an editor, and every answer of the engine is
// put where the old one stood. Nothing is ever taken away before the new is there.

/// <reference lib="dom" />

import type { SquaringResult } from "../squaring.ts"
import { Bar } from "./bar.ts"
import { Book } from "./book.ts"
import { make, setMarkup } from "./dom.ts"
import { Editor } from "./editor.ts"
import { startEngine } from "./engine.ts"
import { GaugeForm } from "./gauge-form.ts"
import type { Answer, PageAnswer } from "./messages.ts"
import { carriedSource, download, fileName, pageFile } from "./save.ts"
import { editableKinds } from "./source.ts"
import { SquaringPanel } from "./squaring-panel.ts"
import { offerTrials } from "./trial-buttons.ts"
import { VerdictTeller } from "./verdict-teller.ts"

/** Rest after a key before the engine is asked, ms: keys struck in one go ask once. */
const restMs = 40

/** Work longer than this is told of, and can be stopped, ms. */
const longWorkMs = 500

/** @param script the text of the page's own script */
export function startPage(script: string): void {
  const carried = carriedSource()
  const book = new Book(carried.notebook, carried.original ?? carried.notebook)
  const sections = new Map<number, HTMLElement>()
  for (const { index } of book.cells) {
    const section = document.getElementById(`cell-${index + 1}`)
    if (section) sections.set(index, section)
  }
  if (sections.size > 0) new LivePage(script, book, sections, new Map(carried.searches)).open()
}

class LivePage {
  readonly #editors = new Map<number, Editor>()
  readonly #forms = new Map<number, GaugeForm>()
  readonly #panels = new Map<number, SquaringPanel>()
  readonly #bar: Bar
  readonly #engine: ReturnType<typeof startEngine>
  /** What each part of the page was last told to hold, to leave alone what stays the same. */
  readonly #shown = new Map<string, string>()
  readonly #teller: VerdictTeller
  #atHand: number | null = null
  #saved: string
  /** True while the page is to be saved with the next answer. */
  #bodyWanted = false
  #asking = 0
  #longWork = 0
  /** Changes made, and how many of them the last question knew of. */
  #changes = 0
  #asked = 0

  constructor(
    private readonly script: string,
    private readonly book: Book,
    private readonly sections: ReadonlyMap<number, HTMLElement>,
    private readonly searches: ReadonlyMap<string, SquaringResult>,
  ) {
    this.#saved = book.markdown
    this.#bar = new Bar({
      undo: () => this.#undo(),
      restoreAll: () => this.#changed(book.restore()),
      saveNotebook: () => this.#save("md", "text/markdown", book.markdown),
      savePage: () => {
        this.#bodyWanted = true
        this.#ask()
      },
      print: () => window.print(),
      stop: () => this.#stop(),
    })
    this.#teller = new VerdictTeller(this.#bar)
    this.#engine = startEngine(script, (answer) => this.#hear(answer))
    for (const { kind, index } of book.cells) {
      if (editableKinds.has(kind)) this.#addEditor(index)
      if (kind === "squaring") this.#addPanel(index)
    }
  }

  open(): void {
    document.body.classList.add("live")
    document.body.prepend(this.#bar.root)
    window.addEventListener("beforeunload", (event) => {
      if (this.book.markdown !== this.#saved) event.preventDefault()
    })
    this.#showEdits()
    this.#ask()
  }

  #addEditor(index: number): void {
    const section = this.sections.get(index)
    const cell = this.book.cells[index]
    if (!section || !cell) return
    const written = section.querySelector(".label")?.textContent
    const name = patternOf(cell.info) ?? ""
    const kind = `${cell.kind[0]!.toUpperCase()}${cell.kind.slice(1)}`
    const label = written || `${kind} ${name}`.trim()
    const editor = new Editor(
      section.id,
      label,
      this.book.text(index),
      {
        typed: (text) => {
          this.book.type(index, text, performance.now())
          this.#changed([index], false)
        },
        undo: () => this.#undo(),
        redo: () => this.#changed(this.book.redo()),
        restore: () => {
          this.#changed(this.book.restore(index))
          editor.area.focus()
        },
        copied: () => this.#bar.speak("Copied."),
      },
      cell.kind === "pattern",
    )
    this.#editors.set(index, editor)
    if (cell.kind === "calculation") {
      // The table of values stays where a reader reads; the text is behind a fold.
      const values = make("div", { class: "values" }, ...section.childNodes)
      const fold = make(
        "details",
        { class: "fold" },
        make("summary", {}, "Change this calculation"),
      )
      fold.append(editor.root)
      section.replaceChildren(values, fold)
    } else section.replaceChildren(editor.root)
    if (cell.kind === "gauge") this.#addForm(index, editor)
    editor.area.addEventListener("focus", () => this.#takeInHand(index))
  }

  #addForm(index: number, editor: Editor): void {
    const form = new GaugeForm(
      editor.root.id,
      () => this.book.text(index),
      (text) => {
        this.book.change(index, text)
        this.#changed([index])
      },
    )
    form.show(this.book.text(index))
    editor.root.append(form.root)
    this.#forms.set(index, form)
  }

  #addPanel(index: number): void {
    const section = this.sections.get(index)
    if (!section) return
    const change = (cell: number, text: string) => {
      this.book.change(cell, text)
      this.#changed([cell])
    }
    const panel = new SquaringPanel(section, this.script, this.searches, {
      text: () => this.book.text(index),
      set: (text) => change(index, text),
      takeOver: change,
      speak: (text) => this.#bar.speak(text),
    })
    this.#panels.set(index, panel)
  }

  /** What searches have found so far, by what was asked. */
  #searches(): ReadonlyMap<string, SquaringResult> {
    return new Map([
      ...this.searches,
      ...[...this.#panels.values()].flatMap(({ results }) => [...results]),
    ])
  }

  /** Cells were changed: show it, mark what is old now, and ask for the new. */
  #changed(cells: readonly number[], redraw = true): void {
    if (cells.length === 0) return
    this.#changes += 1
    if (redraw) for (const cell of cells) this.#editors.get(cell)?.show(this.book.text(cell))
    for (const cell of cells) this.#panels.get(cell)?.show()
    for (const cell of cells) this.#forms.get(cell)?.show(this.book.text(cell))
    this.#takeInHand(cells[0]!)
    this.#showEdits()
    document.body.classList.add("old", "waiting")
    clearTimeout(this.#asking)
    this.#asking = window.setTimeout(() => this.#ask(), restMs)
  }

  #undo(): void {
    const cells = this.book.undo()
    this.#changed(cells)
    // Shown, but not given the focus: the next press of the button goes one step further back.
    if (cells.length === 1) this.sections.get(cells[0]!)?.scrollIntoView({ block: "nearest" })
  }

  #ask(): void {
    document.body.classList.add("waiting")
    clearTimeout(this.#asking)
    clearTimeout(this.#longWork)
    this.#longWork = window.setTimeout(
      () => this.#bar.showWork("Working it out; earlier answers stay until then."),
      longWorkMs,
    )
    this.#asked = this.#changes
    this.#engine.ask({
      markdown: this.book.markdown,
      ...(this.#bodyWanted ? { body: { searches: this.#searches() } } : {}),
    })
  }

  #stop(): void {
    this.#engine.stop()
    this.#bodyWanted = false
    this.#rest()
    this.#bar.speak("Stopped. Earlier answers are shown.")
  }

  #rest(): void {
    document.body.classList.remove("waiting")
    clearTimeout(this.#longWork)
    this.#bar.showWork(null)
    this.#showEdits()
  }

  #hear(answer: Answer): void {
    switch (answer.part) {
      case "page":
        this.#showPage(answer)
        break
      case "cell":
        this.#put(`cell-${answer.cell + 1}`, answer.html)
        break
      case "squaring":
        break
      case "trials":
        this.#offerTrials(answer)
        break
      case "working":
        this.#bar.tellWork(`Working it out: ${answer.doing}; earlier answers stay until then.`)
        break
      case "body":
        this.#bodyWanted = false
        this.#save("html", "text/html", this.#pageFile(answer.html))
        break
      case "end":
        document.body.classList.remove("old")
        document.body.dataset.computedIn = this.#engine.where()
        this.#rest()
        break
      case "failed":
        this.#rest()
        this.#bar.say(`This could not be worked out. ${answer.message}`)
        this.#bar.speak(`This could not be worked out. ${answer.message}`)
        break
    }
  }

  #showPage({ title, stray, runs, cells, sayings, searches }: PageAnswer): void {
    document.title = title
    this.#put("stray", stray)
    for (const [index, run] of runs.entries()) this.#put(`prose-${index}`, run)
    for (const { index, kind, html, marks } of cells) {
      const editor = this.#editors.get(index)
      editor?.setMarks(marks)
      const panel = this.#panels.get(index)
      if (panel) {
        panel.update(searches.find(({ cell }) => cell === index) ?? null, html)
        continue
      }
      if (html === null) continue
      if (!editor) this.#put(`cell-${index + 1}`, html)
      else if (kind !== "calculation") editor.setBelow(html)
      else {
        const values = this.sections.get(index)?.querySelector(":scope > .values")
        if (values) this.#putInto(values, `values-${index}`, html)
      }
    }
    this.#teller.hear(sayings)
    this.#say()
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
      showLine: (line) => this.#editors.get(patternCell)?.goToLine(line),
    })
  }

  #put(id: string, markup: string): void {
    const element = document.getElementById(id)
    if (element) this.#putInto(element, id, markup)
  }

  #putInto(element: Element, key: string, markup: string): void {
    if (this.#shown.get(key) === markup) return
    this.#shown.set(key, markup)
    const hadFocus = element.contains(document.activeElement)
    setMarkup(element, markup)
    if (!hadFocus || !(element instanceof HTMLElement)) return
    element.tabIndex = -1
    element.focus({ preventScroll: true })
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
    for (const [cell, editor] of this.#editors) editor.setEdited(edited.includes(cell))
    this.#bar.showEdits(edited.length, this.book.canUndo)
  }

  #save(ending: string, type: string, text: string): void {
    const name = `${fileName(document.title)}.${ending}`
    download(name, type, text)
    this.#saved = this.book.markdown
    this.#bar.speak(`Saved as ${name}.`)
  }

  #pageFile(body: string): string {
    const { markdown, original, editedCells } = this.book
    const searches = [...this.#searches()]
    const source = {
      notebook: markdown,
      ...(editedCells.length > 0 ? { original } : {}),
      ...(searches.length > 0 ? { searches } : {}),
    }
    return pageFile(this.script, body, source)
  }
}

/** The pattern the options of a cell name. */
function patternOf(info: string): string | undefined {
  return /(?:name|for|of)="?([^\s"]*)/.exec(info)?.[1]
}
