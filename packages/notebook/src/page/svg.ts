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
  return `<svg xmlns="http://www.w3.org/2000/svg" role="img" viewBox="${box}" aria-label="${escapeText(description)}">${inner}`
}
