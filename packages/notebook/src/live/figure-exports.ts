// Below every figure a way to keep it: as SVG, as PNG, and, where it is drawn from a specification, that specification for
// Vega-Lite and its data as CSV. The specification is asked of an engine of its own when it is wanted.

/// <reference lib="dom" />

import { button, make } from "./dom.ts"
import { type Engine, startEngine } from "./engine.ts"
import type { NotebookQuestion } from "./messages.ts"
import { pageWords } from "./page-words.ts"
import { download, downloadBlob, fileName } from "./save.ts"

/** Cells whose figures are drawn from a specification. */
const drawn: ReadonlySet<string> = new Set(["chart", "heights", "transitions"])

/** Pixels of a PNG for one of the drawing, and at least this many across. */
const [pngScale, leastPngPx] = [2, 1600] as const

export interface ExportActions {
  question(): Pick<NotebookQuestion, "markdown" | "known">
  kindOf(cell: number): string | undefined
  say(text: string): void
}

export class FigureExports {
  #engine: Engine | null = null
  #waiting: ((answer: { readonly spec: string; readonly csv: string }) => void) | null = null

  constructor(
    private readonly script: string,
    private readonly actions: ExportActions,
  ) {}

  /** Puts the ways to keep it below every figure of a cell that has none yet. */
  dress(section: Element, cell: number): void {
    const figures = section.querySelectorAll("figure, .sheet-page .chart")
    figures.forEach((figure, place) => {
      if (!figure.querySelector("svg") || figure.nextElementSibling?.classList.contains("export"))
        return
      const name = () =>
        fileName(`${document.title} ${cell + 1}${figures.length > 1 ? ` ${place + 1}` : ""}`)
      const choices = [
        button("SVG", () => download(`${name()}.svg`, "image/svg+xml", svgOf(figure))),
        button("PNG", () => void this.#png(figure, `${name()}.png`)),
      ]
      if (drawn.has(this.actions.kindOf(cell) ?? ""))
        choices.push(
          button("Vega-Lite", () =>
            this.#ask(cell, ({ spec }) => download(`${name()}.vl.json`, "application/json", spec)),
          ),
          button("Data (CSV)", () =>
            this.#ask(cell, ({ csv }) => download(`${name()}.csv`, "text/csv", csv)),
          ),
        )
      const summary = make("summary", {}, "Keep this figure")
      figure.after(make("details", { class: "export fold" }, summary, make("div", {}, ...choices)))
    })
  }

  async #png(figure: Element, name: string): Promise<void> {
    const image = new Image()
    image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svgOf(figure))}`
    await image.decode()
    const scale = Math.max(pngScale, leastPngPx / image.width)
    const canvas = make("canvas")
    canvas.width = Math.round(scale * image.width)
    canvas.height = Math.round(scale * image.height)
    const pen = canvas.getContext("2d")
    if (!pen) return
    pen.fillStyle = "#fff"
    pen.fillRect(0, 0, canvas.width, canvas.height)
    pen.drawImage(image, 0, 0, canvas.width, canvas.height)
    canvas.toBlob((blob) => {
      if (blob) downloadBlob(name, blob)
    })
  }

  #ask(
    figure: number,
    then: (answer: { readonly spec: string; readonly csv: string }) => void,
  ): void {
    this.#waiting = then
    this.actions.say(pageWords.figureAsked)
    this.#engine ??= startEngine(this.script, (answer) => {
      if (answer.part === "figure") {
        this.#waiting?.(answer)
        this.actions.say("")
      }
      if (answer.part === "failed") this.actions.say(answer.message)
    })
    this.#engine.ask({ ...this.actions.question(), figure })
  }
}

/** The drawing as a file of its own, in black whatever the page is in, with its description. */
function svgOf(figure: Element): string {
  const found = figure.querySelector(".wide svg") ?? figure.querySelector("svg")
  const svg = found!.cloneNode(true) as SVGElement
  svg.setAttribute("xmlns", "http://www.w3.org/2000/svg")
  for (const chosen of svg.querySelectorAll(".chosen")) chosen.classList.remove("chosen")
  const [, , width = "600", height = "400"] = (svg.getAttribute("viewBox") ?? "").split(/[\s,]+/)
  if (!svg.hasAttribute("width")) {
    svg.setAttribute("width", width)
    svg.setAttribute("height", height)
  }
  const label = svg.getAttribute("aria-label")
  if (label !== null && !svg.querySelector(":scope > title")) {
    const title = document.createElementNS("http://www.w3.org/2000/svg", "title")
    title.textContent = label
    svg.prepend(title)
  }
  return new XMLSerializer().serializeToString(svg)
}
