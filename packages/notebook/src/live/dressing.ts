// What a live page adds to a cell whenever its markup was put there: ways to keep its figures, buttons beside the findings
// of an edit, a way to print a sheet, and the mark of the round that was chosen.

/// <reference lib="dom" />

import type { Book } from "./book.ts"
import { patternOf } from "./cell-editors.ts"
import { ChosenRound } from "./chosen-round.ts"
import { FigureExports } from "./figure-exports.ts"
import type { Known } from "./known.ts"
import { offerPrint } from "./print-sheet.ts"
import { offerWordings } from "./wordings.ts"

export interface DressingActions {
  speak(text: string): void
  /** A wording was taken into the text of a pattern. */
  take(patternCell: number, text: string): void
}

export class Dressing {
  readonly #figures: FigureExports
  readonly #round: ChosenRound

  constructor(
    script: string,
    main: HTMLElement,
    private readonly book: Book,
    known: Known,
    private readonly sections: ReadonlyMap<number, HTMLElement>,
    private readonly actions: DressingActions,
  ) {
    this.#round = new ChosenRound(main, (words) => actions.speak(words))
    this.#figures = new FigureExports(script, {
      question: () => ({ markdown: book.markdown, known: known.plain }),
      kindOf: (cell) => book.cells[cell]?.kind,
      say: (words) => actions.speak(words),
    })
  }

  /** @param parts elements that were put anew */
  dress(parts: Iterable<Element>): void {
    const fresh = new Set([...parts].map((part) => part.closest(".cell")))
    for (const [cell, section] of this.sections) if (fresh.has(section)) this.#cell(cell, section)
    this.#round.mark()
  }

  #cell(cell: number, section: HTMLElement): void {
    this.#figures.dress(section, cell)
    const { kind, info } = this.book.cells[cell]!
    if (kind === "sheet") offerPrint(section)
    if (kind !== "edit") return
    const patternCell = this.#patternCell(patternOf(info))
    if (patternCell === null) return
    const text = this.book.text(patternCell)
    offerWordings(section, { text, take: (taken) => this.actions.take(patternCell, taken) })
  }

  /** The cell a pattern is written in: the one of that name, or the only one. */
  #patternCell(name: string | undefined): number | null {
    const patterns = this.book.cells.filter(({ kind }) => kind === "pattern")
    const found = patterns.find(({ info }) => patternOf(info) === name)
    return found?.index ?? (name === undefined && patterns.length === 1 ? patterns[0]!.index : null)
  }
}
