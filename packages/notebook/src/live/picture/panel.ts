// A picture cell in a live page: a picture is chosen or the page's own taken, measured by the page's worker, and shown with
// handles, fields and ticks. The lines of the cell are all there is to it: whatever is clicked or typed changes a line.

/// <reference lib="dom" />

import { askedBy, measuringKey, mergeLines, readLines } from "@roundwright/picture"
import { together } from "../../page/html.ts"
import { pictureHtml } from "../../page/picture-html.ts"
import type { PictureFault, PictureFound } from "../../picture/picture-answer.ts"
import { makeAnswerer } from "../answer.ts"
import { button, make, setMarkup } from "../dom.ts"
import { type Engine, startEngine } from "../engine.ts"
import type { Answer } from "../messages.ts"
import { withPictures } from "./answerer.ts"
import { countRing, findRing, forPicture, keepRing } from "./edit-lines.ts"
import { greyAddress, type OpenedPicture, openAddress, openFile } from "./open-picture.ts"
import type { PictureActions, PicturePanelKind } from "./panel-kind.ts"
import { ringFields } from "./ring-fields.ts"
import { onTap, type TappedRing } from "./strip-ticks.ts"
import { placesOver } from "./view-fields.ts"
import { pictureWords } from "./words.ts"

/** After a change of the lines the picture is measured when the reader has rested this long, ms. */
const restMs = 700

export class PicturePanel implements PicturePanelKind {
  readonly #values: Element
  readonly #state = make("p", { class: "after", role: "status" })
  readonly #go = button(pictureWords.measure, () => void this.#measure())
  readonly #stop = button(pictureWords.stop, () => this.#stopMeasuring(), { hidden: true })
  readonly #engine: Engine
  #opened: OpenedPicture | null = null
  /** Counts the pictures opened, to tell the worker one from another. */
  #pictures = 0
  #asking = false
  /** What the measurement shown is of. */
  #measuredKey: string
  #rest: ReturnType<typeof setTimeout> | undefined
  /** Ticks set by hand, by ring: shown as long as the ring has so many. */
  readonly #ticked = new Map<number, readonly number[]>()
  #rings: TappedRing[] = []

  constructor(
    private readonly section: HTMLElement,
    script: string,
    private readonly actions: PictureActions,
  ) {
    this.#values = section.querySelector(":scope > .values") ?? section
    this.#engine = startEngine(
      script,
      (answer) => this.#hear(answer),
      (sharing) => withPictures(makeAnswerer(sharing)),
    )
    const file = make("input", { type: "file", accept: "image/png,image/jpeg" })
    file.addEventListener("change", () => {
      const [chosen] = file.files ?? []
      if (chosen) void this.#open(chosen)
    })
    section.prepend(
      make(
        "div",
        { class: "fields picture-fields" },
        make("label", { class: "field" }, pictureWords.choose, file),
        this.#go,
        this.#stop,
      ),
      this.#state,
    )
    this.#measuredKey = keyOf(actions.text())
    this.#bringToLife()
  }

  /** The text has changed: it is measured again where it says something else of the picture. */
  show(): void {
    clearTimeout(this.#rest)
    if (keyOf(this.actions.text()) === this.#measuredKey || this.#address() === null) return
    this.#say(pictureWords.changed)
    this.#rest = setTimeout(() => void this.#measure(), restMs)
  }

  async #open(file: File): Promise<void> {
    this.#say(pictureWords.opening)
    try {
      this.#opened = await openFile(file)
    } catch (error) {
      this.#tell(error instanceof Error ? error.message : String(error))
      return
    }
    this.#pictures += 1
    this.#ticked.clear()
    this.#set(forPicture(this.actions.text(), file.name))
    await this.#measure()
  }

  async #measure(): Promise<void> {
    clearTimeout(this.#rest)
    try {
      this.#opened ??= await this.#ownPicture()
    } catch (error) {
      this.#tell(error instanceof Error ? error.message : String(error))
      return
    }
    if (this.#opened === null) {
      this.#tell(pictureWords.noPicture)
      return
    }
    const text = this.actions.text()
    this.#measuredKey = keyOf(text)
    this.#asking = true
    this.#showWork(pictureWords.stages.piece)
    const { decoded } = this.#opened
    this.#engine.ask({ measure: { picture: this.#pictures, decoded, text } })
  }

  #stopMeasuring(): void {
    this.#engine.stop()
    this.#asking = false
    this.#showWork(null)
    this.#tell(pictureWords.stopped)
  }

  #hear(answer: Answer): void {
    if (answer.part === "working" && this.#asking) this.#showWork(answer.doing)
    if (answer.part === "picture") this.#take(answer.found)
    if (answer.part === "failed") this.#tell(answer.message)
    if (answer.part !== "end" && answer.part !== "failed") return
    this.#asking = false
    this.#showWork(null)
  }

  #take(found: PictureFound | PictureFault): void {
    if ("fault" in found) {
      this.#tell(`${found.fault} ${found.hint}`.trim())
      return
    }
    const { strip, repeat, ...figures } = found
    const rings = figures.rings.map((ring, i) => {
      const ticks = this.#ticked.get(i + 1)
      return ticks && ticks.length === (ring.strands ?? ring.repeats) ? { ...ring, ticks } : ring
    })
    const images = {
      given: this.#opened!.address,
      strip: greyAddress(strip),
      repeat: repeat === null ? null : greyAddress(repeat),
    }
    const { markup } = together(pictureHtml(figures.lines, { ...figures, rings, images }))
    const focused = focusIn(this.#values)
    setMarkup(this.#values, markup)
    this.actions.shown(markup)
    this.#measuredKey = keyOf(figures.lines)
    this.#set(figures.lines)
    this.#bringToLife()
    focused()
    this.#tell(pictureWords.measured(rings.length, figures.questions.length))
  }

  /** Handles, fields and ticks in what stands there. */
  #bringToLife(): void {
    const lines = this.#lines()
    const table = this.#values.querySelector<HTMLTableElement>("table.rings")
    if (table) {
      table.id = `${this.section.id}-rings`
      ringFields(table, lines, {
        count: (ring, repeats, strands) => {
          this.#ticked.delete(ring)
          this.#set(countRing(this.#adopted(), ring, repeats, strands))
        },
        keep: (ring) => this.#set(keepRing(this.#adopted(), ring)),
        find: (ring) => this.#set(findRing(this.#adopted(), ring)),
        speak: (text) => this.actions.speak(text),
      })
    }
    const strip = this.#values.querySelector<SVGSVGElement>(".strip svg")
    if (strip) {
      this.#rings = ringsOf(strip)
      onTap(
        strip,
        () => this.#rings,
        (ring, ticks) => this.#tapped(ring, ticks),
      )
    }
    const figure = this.#values.querySelector<HTMLElement>("figure.given")
    const address = this.#address()
    const box = figure?.querySelector("svg")?.viewBox.baseVal
    if (figure && address !== null && box)
      placesOver(figure, address, box, lines, {
        text: () => this.#adopted(),
        set: (text) => this.#set(text),
        speak: (text) => this.actions.speak(text),
      })
  }

  #tapped(ring: number, ticks: readonly number[]): void {
    if (ticks.length === 0) return
    this.#ticked.set(ring, ticks)
    this.#rings = this.#rings.map((one, i) => (i + 1 === ring ? { ...one, ticks } : one))
    const text = this.#adopted()
    const repeats = readLines(text).rings.find(({ number }) => number === ring)?.repeats ?? 0
    const fits = repeats > 0 && ticks.length % repeats === 0
    this.#set(countRing(text, ring, fits ? repeats : ticks.length, ticks.length))
    this.#tell(pictureWords.counted(ring, ticks.length))
    void this.#measure()
  }

  /** Lines of what is shown: the cell's own, with what was found when the page was made. */
  #lines(): string {
    const shown = this.#values.querySelectorAll("pre.measured .line")
    return [...shown].map(({ textContent }) => textContent ?? "").join("\n")
  }

  /** The cell's text with all that is shown in it. */
  #adopted(): string {
    const text = this.actions.text()
    const missing = this.#lines()
      .split("\n")
      .filter((line) => line.trim() !== "")
    return mergeLines(text, missing)
  }

  #set(text: string): void {
    if (text !== this.actions.text()) this.actions.set(text)
  }

  async #ownPicture(): Promise<OpenedPicture | null> {
    const address = this.#address()
    const box = this.#values.querySelector<SVGSVGElement>("figure.given svg")?.viewBox.baseVal
    return address === null || !box ? null : openAddress(address, box.width, box.height)
  }

  #address(): string | null {
    return (
      this.#opened?.address ??
      this.#values.querySelector("figure.given image")?.getAttribute("href") ??
      null
    )
  }

  #showWork(doing: string | null): void {
    this.#stop.hidden = doing === null
    this.#go.disabled = doing !== null
    if (doing !== null) this.#say(doing)
  }

  #say(words: string): void {
    this.#state.textContent = words
  }

  #tell(words: string): void {
    this.#say(words)
    this.actions.speak(words)
  }
}

/** What a measurement depends on: the same lines, whatever the rest of the text holds, are measured once. */
function keyOf(text: string): string {
  const asked = askedBy(readLines(text))
  return JSON.stringify([measuringKey(asked), asked.known, [...asked.counts]])
}

function ringsOf(strip: SVGSVGElement): TappedRing[] {
  return [...strip.querySelectorAll<SVGGElement>("g.ring-row")].map(({ dataset }) => ({
    from: Number(dataset.from),
    to: Number(dataset.to),
    ticks: (dataset.ticks ?? "").split(" ").filter(Boolean).map(Number),
  }))
}

/** Remembers which field had the focus. @returns gives it back to the one that stands in its place */
function focusIn(element: Element): () => void {
  const label = element.contains(document.activeElement)
    ? document.activeElement?.getAttribute("aria-label")
    : null
  return () => {
    if (label)
      element.querySelector<HTMLElement>(`[aria-label="${CSS.escape(label)}"]`)?.focus({
        preventScroll: true,
      })
  }
}
