// The notebook as its reader has changed it: the texts of its cells, what they were, and the way back.

import { cutSource, type Source, type SourceCell } from "./source.ts"

/** One step back: what a cell held before. Several cells for a step that changed several. */
type Step = ReadonlyMap<number, string>

/** Keys struck within this time belong to one step back, ms: a pause for thought begins another. */
const sameStepMs = 900

/** Steps kept; older ones are forgotten. */
const mostSteps = 400

export class Book {
  readonly cells: readonly SourceCell[]
  readonly #source: Source
  readonly #original: ReadonlyMap<number, string>
  readonly #texts: Map<number, string>
  readonly #steps: Step[] = []
  /** Steps gone back, to go forward again; empty as soon as something else is changed. */
  readonly #forward: Step[] = []
  #lastTyped = { cell: -1, at: Number.NEGATIVE_INFINITY }

  /** @param original the notebook as it was first written, to compare with and to go back to */
  constructor(notebook: string, original: string) {
    this.#source = cutSource(original)
    this.cells = this.#source.cells
    this.#original = new Map(this.cells.map(({ index, text }) => [index, text]))
    this.#texts = new Map(this.#original)
    if (notebook === original) return
    for (const { index, text } of cutSource(notebook).cells)
      if (this.#texts.has(index)) this.#texts.set(index, text)
  }

  /** Takes the texts of its cells from another writing of the notebook, in one step. @returns the cells that changed */
  take(markdown: string): readonly number[] {
    const own = cutSource(markdown).cells.filter(
      ({ index, kind }) => this.cells[index]?.kind === kind,
    )
    return this.changeAll(new Map(own.map(({ index, text }) => [index, text])))
  }

  /** Changes several cells in one step. @returns those that are others now */
  changeAll(texts: ReadonlyMap<number, string>): readonly number[] {
    const changed = [...texts.keys()].filter((cell) => texts.get(cell) !== this.text(cell))
    if (changed.length === 0) return []
    this.#remember(changed)
    this.#pauseTyping()
    for (const cell of changed) this.#texts.set(cell, texts.get(cell)!)
    return changed
  }

  text(cell: number): string {
    return this.#texts.get(cell) ?? ""
  }

  /** Takes what was typed. @param now ms, to tell one step back from the next */
  type(cell: number, text: string, now: number): void {
    if (text === this.text(cell)) return
    const joined = this.#lastTyped.cell === cell && now - this.#lastTyped.at < sameStepMs
    if (!joined || this.#steps.length === 0) this.#remember([cell])
    this.#texts.set(cell, text)
    this.#lastTyped = { cell, at: now }
  }

  /** Changes a cell in one step of its own. */
  change(cell: number, text: string): void {
    if (text === this.text(cell)) return
    this.#remember([cell])
    this.#texts.set(cell, text)
    this.#pauseTyping()
  }

  /** Goes one step back. @returns the cells that changed */
  undo(): readonly number[] {
    return this.#go(this.#steps, this.#forward)
  }

  /** Goes forward again. @returns the cells that changed */
  redo(): readonly number[] {
    return this.#go(this.#forward, this.#steps)
  }

  get canUndo(): boolean {
    return this.#steps.length > 0
  }

  /** Back to the original: one cell, or all of them. @returns the cells that changed */
  restore(only?: number): readonly number[] {
    const changed = this.editedCells.filter((cell) => only === undefined || cell === only)
    if (changed.length === 0) return []
    this.#remember(changed)
    this.#pauseTyping()
    for (const cell of changed) this.#texts.set(cell, this.#original.get(cell)!)
    return changed
  }

  /** Cells that differ from the original. */
  get editedCells(): readonly number[] {
    return [...this.#texts].flatMap(([cell, text]) =>
      text === this.#original.get(cell) ? [] : [cell],
    )
  }

  /** The whole notebook as it stands, and as it was. */
  get markdown(): string {
    return this.#source.withTexts(this.#texts)
  }

  get original(): string {
    return this.#source.withTexts(new Map())
  }

  #go(from: Step[], to: Step[]): readonly number[] {
    this.#pauseTyping()
    const step = from.pop()
    if (!step) return []
    const cells = [...step.keys()]
    to.push(this.#standing(cells))
    for (const [cell, text] of step) this.#texts.set(cell, text)
    return cells
  }

  #standing(cells: readonly number[]): Step {
    return new Map(cells.map((cell) => [cell, this.text(cell)]))
  }

  #remember(cells: readonly number[]): void {
    this.#forward.length = 0
    this.#steps.push(this.#standing(cells))
    if (this.#steps.length > mostSteps) this.#steps.shift()
  }

  #pauseTyping(): void {
    this.#lastTyped = { cell: -1, at: Number.NEGATIVE_INFINITY }
  }
}
