// Putting answers where the old ones stood: what stays the same is left alone, what is still to come is marked
// as an earlier answer, and nothing is ever taken away before the new is there.

/// <reference lib="dom" />

import { setMarkup } from "./dom.ts"
import type { LiveCell, LiveRun } from "./messages.ts"

export class Showing {
  /** What each part of the page was last told to hold. */
  readonly #shown = new Map<string, string>()
  /** Text of the piece whose shape a cell shows. */
  readonly #shapes = new Map<number, string>()

  /** @param onPut hears of every element whose markup was put anew */
  constructor(
    private readonly sections: ReadonlyMap<number, HTMLElement>,
    private readonly onPut: (element: Element) => void,
  ) {}

  /** Puts markup into the element of that id. */
  put(id: string, markup: string): void {
    const element = document.getElementById(id)
    if (element) this.putInto(element, id, markup)
  }

  putInto(element: Element, key: string, markup: string): void {
    element.closest(".cell, .prose")?.classList.remove("late")
    if (this.#shown.get(key) === markup) return
    this.#shown.set(key, markup)
    const hadFocus = element.contains(document.activeElement)
    setMarkup(element, markup)
    this.onPut(element)
    if (!hadFocus || !(element instanceof HTMLElement)) return
    element.tabIndex = -1
    element.focus({ preventScroll: true })
  }

  /** The page was opened with that shape drawn in the cell. */
  showsAlready(cell: number, shapeOf: string): void {
    if (!this.#shapes.has(cell)) this.#shapes.set(cell, shapeOf)
  }

  drawing(cell: number, markup: string, shapeOf: string | null, provisional: boolean): void {
    if (shapeOf !== null) this.#shapes.set(cell, shapeOf)
    this.put(`cell-${cell + 1}`, markup)
    this.setProvisional(cell, provisional)
  }

  /** What stands in the cell is a first answer, which that of the laid-out shape will replace. */
  setProvisional(cell: number, provisional: boolean): void {
    this.sections.get(cell)?.classList.toggle("provisional", provisional)
  }

  /** Texts of the pieces a cell still waits for; the cell is marked when there are any. */
  missing({ index, kind, html, waitsFor }: LiveCell): readonly string[] {
    const shown = (kind === "chart" || kind === "sheet") && this.#shapes.get(index) === waitsFor[0]
    const missing = shown ? [] : waitsFor
    this.setProvisional(index, html !== null && missing.length > 0)
    this.sections.get(index)?.classList.toggle("late", missing.length > 0)
    return missing
  }

  run(index: number, { html, waitsFor }: LiveRun): readonly string[] {
    const id = `prose-${index}`
    if (html !== null) this.put(id, html)
    else document.getElementById(id)?.classList.add("late")
    return waitsFor
  }
}
