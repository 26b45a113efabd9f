// A computed notebook to one self-contained HTML file: style and drawings inside, no script, nothing
// fetched, and a policy in the file that forbids both.

import { createHash } from "node:crypto"
import { type ComputeOptions, computeNotebook } from "../compute.ts"
import type { NotebookProblem, NotebookResult } from "../result.ts"
import { cellHtml, problemBox } from "./cells.ts"
import { type Child, element, type Html } from "./html.ts"
import { proseRuns } from "./prose.ts"
import { pageStyle } from "./style.ts"

export interface RenderOptions extends ComputeOptions {
  /** Language of the text, for the page's `lang`; `en` when absent. */
  readonly language?: string
}

export interface RenderedNotebook {
  readonly html: string
  readonly title: string
  readonly problems: readonly NotebookProblem[]
}

/** Computes and renders a notebook. The same text gives the same bytes; never throws on any text. */
export async function renderNotebook(
  markdown: string,
  options: RenderOptions = {},
): Promise<RenderedNotebook> {
  const result = await computeNotebook(markdown, options)
  const html = await renderPage(result, options)
  return { html, title: result.title, problems: result.problems }
}

/** The page of a notebook that is computed already. */
export async function renderPage(
  result: NotebookResult,
  options: RenderOptions = {},
): Promise<string> {
  const runs = await proseRuns(result.tree, result.values)
  const listed = new Set(
    result.cells.flatMap(({ content }) =>
      content?.kind === "problems" ? [content.pattern.name] : [],
    ),
  )
  const page = { listed, told: new Set<string>() }
  const body: Child[] = strayProblems(result).map(problemBox)
  for (const [index, run] of runs.entries()) {
    body.push(run, { markup: "\n" })
    const cell = result.cells[index]
    if (cell) body.push(await cellHtml(cell, page), { markup: "\n" })
  }
  return document(result.title, body, options.language ?? "en")
}

/** Problems that no cell and no value shows. */
function strayProblems({ problems, values }: NotebookResult): NotebookProblem[] {
  const shown = new Set(values.map((value) => value.problem))
  return problems.filter((problem) => problem.cell === null && !shown.has(problem))
}

function document(title: string, body: Child, language: string): string {
  const hash = createHash("sha256").update(pageStyle).digest("base64")
  const policy = [
    "default-src 'none'",
    `style-src 'sha256-${hash}'`,
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ")
  const head: Html[] = [
    element("meta", { charset: "utf-8" }),
    element("meta", { "http-equiv": "Content-Security-Policy", content: policy }),
    element("meta", { name: "viewport", content: "width=device-width, initial-scale=1" }),
    element("meta", { name: "referrer", content: "no-referrer" }),
    element("meta", { name: "generator", content: "Roundwright" }),
    element("title", {}, title),
    element("style", {}, { markup: pageStyle }),
  ]
  const page = element(
    "html",
    { lang: language },
    element("head", {}, head),
    element(
      "body",
      {},
      element("main", {}, body),
      element(
        "footer",
        {},
        element(
          "p",
          {},
          "Dotted figures are computed from the patterns on this page. Sizes are estimates; your own swatch beats them.",
        ),
      ),
    ),
  )
  return `<!doctype html>\n${page.markup}\n`
}
