// A page brought to life: cells that can be changed get an editor, and every answer is put where the old one
// stood.

/// <reference lib="dom" />

import { textDigest } from "../page/text-digest.ts"
import { Asking } from "./asking.ts"
import { Bar } from "./bar.ts"
import { Book } from "./book.ts"
import { carriedSource } from "./carried-source.ts"
import { CellEditors, patternOf } from "./cell-editors.ts"
import { make } from "./dom.ts"
import { browserStores, Drafts } from "./drafts.ts"
import { Dressing } from "./dressing.ts"
import { textsEditedInFile } from "./edited-in-file.ts"
import { Known } from "./known.ts"
import type { Answer, PageAnswer } from "./messages.ts"
import { pageWords } from "./page-words.ts"
import type { OpenPicturePanel } from "./picture/panel-kind.ts"
import { Saving } from "./saving.ts"
import { Showing } from "./showing.ts"
import { editableKinds } from "./source.ts"
import { StillPage, type Unanswered } from "./still-page.ts"
import { offerTrials } from "./trial-buttons.ts"
import { VerdictTeller } from "./verdict-teller.ts"

/**
 * @param script the text of the page's own script
 * @param openPicture makes the panel of a picture cell; null where a page has none
 */
export function startPage(script: string, openPicture: OpenPicturePanel | null = null): void {
  const { source, told } = carriedSource()
  const main = document.querySelector("main")
  if (!main) return
  if (!source) {
    main.prepend(make("div", { class: "fault", role: "status" }, told.join(" ")))
    return
  }
  const book = new Book(source.notebook, source.original ?? source.notebook)
  const sections = new Map<number, HTMLElement>()
  for (const { index } of book.cells) {
    const section = document.getElementById(`cell-${index + 1}`)
    if (section) sections.set(index, section)
  }
  if (sections.size === 0) return
  const still = new StillPage(main, source.prose ?? [])
  const drafts = new Drafts(browserStores(), pageKey(book.original), crypto.randomUUID())
  const edited = textsEditedInFile(book, sections)
  new LivePage(script, book, sections, new Known(source), still, drafts, main, openPicture).open(
    told,
    edited,
  )
}

/** Tells this page from others that the browser keeps drafts of: where it is, and what it was. */
function pageKey(original: string): string {
  return `${textDigest(location.href.split("#", 1)[0]!)}${textDigest(original)}`
}

class LivePage {
  readonly #bar: Bar
  readonly #cells: CellEditors
  readonly #asking: Asking
  readonly #showing: Showing
  readonly #teller: VerdictTeller
  readonly #saving: Saving
  readonly #dressing: Dressing
  #atHand: number | null = null
  /** Changes made, and how many of them the last question knew of. */
  #changes = 0
  #asked = 0
  /** Texts of pieces the last quick answer lacks. */
  #missing = new Set<string>()
  /** Texts of the cells that were asked about last, and that the last answer is of. */
  #askedTexts: ReadonlyMap<number, string>
  #answeredTexts: ReadonlyMap<number, string>

  constructor(
    script: string,
    private readonly book: Book,
    private readonly sections: ReadonlyMap<number, HTMLElement>,
    private readonly known: Known,
    private readonly still: StillPage,
    private readonly drafts: Drafts,
    main: HTMLElement,
    openPicture: OpenPicturePanel | null,
  ) {
    this.#askedTexts = this.#texts()
    this.#answeredTexts = this.#askedTexts
    this.#bar = new Bar({
      undo: () => this.#undo(),
      restoreAll: () => this.#changed(book.restore()),
      saveNotebook: () => this.#saving.notebook(),
      savePage: () => this.#saving.page(still.written(this.#unanswered())),
      print: () => window.print(),
      stop: () => this.#asking.stop(),
    })
    this.#saving = new Saving(script, book, known, this.#bar, drafts)
    this.#teller = new VerdictTeller(this.#bar)
    this.#dressing = new Dressing(script, main, book, known, sections, {
      speak: (text) => this.#bar.speak(text),
      take: (cell, text) => {
        book.change(cell, text)
        this.#changed([cell])
      },
    })
    this.#showing = new Showing(sections, (element) => this.#dressing.dress([element]))
    this.#asking = new Asking(script, this.#bar, {
      question: () => {
        this.#asked = this.#changes
        this.#askedTexts = this.#texts()
        return { markdown: book.markdown, known: known.plain }
      },
      hear: (answer, quick) => this.#hear(answer, quick),
      toLayOut: () => [...this.#missing],
      rested: (done) => {
        if (done) document.body.dataset.computedIn = this.#asking.where()
        this.#showEdits()
      },
    })
    this.#cells = new CellEditors(
      script,
      book,
      sections,
      known,
      {
        changed: (cells, byKey) => this.#changed(cells, byKey !== undefined),
        undo: () => this.#undo(),
        takeInHand: (cell) => this.#takeInHand(cell),
        speak: (text) => this.#bar.speak(text),
        gaveWay: (what) => this.#bar.notice(pageWords.gaveWay(what), []),
        found: () => this.#asking.ask(),
        shown: (cell, markup) => still.put(`cell-${cell + 1}`, markup),
      },
      openPicture,
    )
  }

  /**
   * @param told what is to be said of what the page carries
   * @param edited texts of cells that were changed in the file
   */
  open(told: readonly string[], edited: ReadonlyMap<number, string>): void {
    document.body.classList.add("live")
    document.body.prepend(this.#bar.root)
    for (const words of told) this.#bar.notice(words, [])
    if (this.still.keepsAny) this.#bar.notice(pageWords.proseKept, [])
    this.#showEdits()
    this.#dressing.dress(this.sections.values())
    this.#asking.ask()
    if (edited.size > 0) {
      this.#bar.notice(pageWords.textEdited, [])
      this.#changed(this.book.changeAll(edited))
    }
    this.#offerDrafts()
  }

  /** Changes of this tab are back at once, those of others when they are asked for. */
  #offerDrafts(): void {
    const own = this.drafts.takeBack()
    const back = own === null ? [] : this.book.take(own)
    if (back.length > 0) {
      this.#bar.notice(pageWords.draftBack, [])
      this.#changed(back)
    } else if (own !== null) this.drafts.drop()
    const [other] = this.drafts.others.filter(({ markdown }) => markdown !== this.book.markdown)
    if (!other) return
    this.#bar.notice(pageWords.draftFound, [
      [pageWords.takeUp, () => this.#changed(this.book.take(other.take() ?? ""))],
      [pageWords.throwAway, () => other.throwAway()],
    ])
  }

  /** Cells were changed: show it, mark what is old now, and ask for the new. */
  #changed(cells: readonly number[], byKey = false): void {
    if (cells.length === 0) return
    this.#changes += 1
    this.#saving.keepDraft()
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
        this.#showing.drawing(answer.cell, answer.html, answer.shapeOf, answer.provisional)
        this.still.put(`cell-${answer.cell + 1}`, answer.html)
        break
      case "shape":
        this.known.shapes.set(answer.text, answer.found)
        break
      case "trials":
        this.#offerTrials(answer)
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
    for (const [asked, found] of answer.finishing) this.known.finishing.set(asked, found)
    for (const [lines, plan] of answer.plans) this.known.plans.set(lines, plan)
    this.#answeredTexts = this.#askedTexts
    this.#showing.put("stray", stray)
    this.still.put("stray", stray)
    const missing = runs.flatMap((run, index) => {
      const id = `prose-${index}`
      if (this.still.keeps(id)) return []
      if (run.html !== null) this.still.put(id, run.html)
      return this.#showing.run(index, run)
    })
    for (const cell of cells) {
      const { index, html, marks, waitsFor } = cell
      const still = cell.still ?? html
      if (still !== null) this.still.put(`cell-${index + 1}`, still)
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
    if (quick) this.#missing = new Set(missing)
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

  /** Texts of the cells a reader may change. */
  #texts(): ReadonlyMap<number, string> {
    const { cells } = this.book
    return new Map(
      cells.flatMap(({ index, kind }) =>
        editableKinds.has(kind) ? [[index, this.book.text(index)] as const] : [],
      ),
    )
  }

  /** What of the page is not of the text as it stands. */
  #unanswered(): Unanswered {
    const changed = new Map(
      [...this.#texts()].filter(([cell, text]) => text !== this.#answeredTexts.get(cell)),
    )
    const late = new Set([...document.querySelectorAll("main .late")].map(({ id }) => id))
    if (changed.size > 0)
      for (const { index, kind } of this.book.cells)
        if (!editableKinds.has(kind)) late.add(`cell-${index + 1}`)
    return { changed, late }
  }

  #showEdits(): void {
    const edited = this.book.editedCells
    this.#cells.showEdited(edited)
    this.#bar.showEdits(edited.length, this.book.canUndo)
  }
}
