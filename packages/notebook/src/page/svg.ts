// A chart specification to SVG, on the server: no canvas, no window, no string evaluated as code.
// Vega reads its expressions into a tree ({ast: true}) and vega-interpreter walks it.

import type { ChartSpec } from "@roundwright/charts"
import { escapeText, type Html, trusted } from "./html.ts"

/** Draws a chart. The libraries are loaded at the first. */
export async function drawChart(spec: ChartSpec): Promise<Html> {
  const parts = await import("./drawing-parts.ts")
  const compiled = parts.compile(structuredClone(spec) as never).spec
  const runtime = parts.parse(compiled, undefined, { ast: true })
  // Charts carry their data; nothing is ever fetched for them.
  const loader = parts.loader()
  loader.load = () => Promise.reject(new Error("Charts load nothing."))
  const view = new parts.View(runtime, {
    renderer: "none",
    expr: parts.expressionInterpreter,
    loader,
    logLevel: parts.errorsOnly,
  })
  try {
    return trusted(named(await view.toSVG(), spec.description))
  } finally {
    view.finalize()
  }
}

/** Gives the drawing its description, and a size that follows the page. */
function named(svg: string, description: string): string {
  const box = /viewBox="([^"]*)"/.exec(svg)?.[1] ?? "0 0 640 352"
  // To those who hear it the drawing is one picture with one description; its parts are not told.
  const inner = svg
    .slice(svg.indexOf(">") + 1)
    .replace(/<g\b[^>]*>/g, (tag) => tag.replace(/ (?:role|aria-[a-z]+)="[^"]*"/g, ""))
  return `<svg xmlns="http://www.w3.org/2000/svg" role="img" viewBox="${box}" aria-label="${escapeText(description)}">${shortened(withWords(inner))}`
}

/** What a mark says of itself stands behind what it looks like, so that marks that look and say alike are one group. */
function withWords(svg: string): string {
  return svg.replace(
    /<(path|line) aria-label="([^"]*)" role="[^"]*" aria-roledescription="[^"]*"([^>]*)\/>/g,
    (_, tag, words, look) => {
      const told = words === "" ? "" : ` told="${words}"`
      return tag === "path" ? `<path${look}${told}/>` : spoken("line", look, told, "")
    },
  )
}

/** An element with its words as a title, which browsers show where it is pointed at, and the round it is of. */
function spoken(tag: string, look: string, told: string, inner: string): string {
  const words = / told="([^"]*)"/.exec(told)?.[1]
  const plain = look.replace(/ told="[^"]*"/, "")
  if (words === undefined)
    return inner === "" ? `<${tag}${plain}/>` : `<${tag}${plain}>${inner}</${tag}>`
  const round = /^Round (\d+)/.exec(words)?.[1]
  const of = round === undefined ? "" : ` data-round="${round}"`
  return `<${tag}${plain}${of}><title>${words}</title>${inner}</${tag}>`
}

/**
 * The same drawing in fewer letters: a stitch diagram has hundreds of marks. What has no effect is left out,
 * places are told to a hundredth of a pixel, and what neighbouring marks share is said once for them all.
 */
function shortened(svg: string): string {
  return svg
    .replace(/ stroke="[^"]*" stroke-width="0"/g, "")
    .replace(/ opacity="1"(?=[ />])/g, "")
    .replace(/ (?:d|transform)="[^"]*"/g, (attribute) =>
      attribute.replace(/-?\d{1,30}\.\d{3,}(?:e-?\d+)?/g, (number) => String(hundredths(number))),
    )
    .replace(/(?:<path(?: transform="[^"]*")? d="[^"]*"[^>]*\/>)+/g, groupAlike)
}

function hundredths(number: string): number {
  const rounded = Math.round(100 * Number(number)) / 100
  return rounded === 0 ? 0 : rounded
}

/** Neighbouring marks that look alike, in a group that says how they look. */
function groupAlike(marks: string): string {
  const groups: { look: string; shapes: string[] }[] = []
  for (const [, shape, look] of marks.matchAll(
    /<path((?: transform="[^"]*")? d="[^"]*")([^>]*)\/>/g,
  )) {
    const last = groups.at(-1)
    if (last !== undefined && last.look === look) last.shapes.push(shape!)
    else groups.push({ look: look!, shapes: [shape!] })
  }
  return groups
    .map(({ look, shapes }) => {
      if (shapes.length < fewestAlike)
        return shapes.map((one) => spoken("path", one + look, look, "")).join("")
      // Marks that show through one another must go on doing so: a group is seen through as a whole.
      const through = / opacity="[^"]*"/.exec(look)?.[0] ?? ""
      const own = shapes.map((one) => `<path${one}${through}/>`).join("")
      return spoken("g", look.replace(through, ""), look, own)
    })
    .join("")
}

/** From here on a group is shorter than its marks. */
const fewestAlike = 3
