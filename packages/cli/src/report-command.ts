// `roundwright report NOTEBOOK` and `roundwright new`: a notebook to one HTML file.

import { basename } from "node:path"
import { readText, writePage } from "./files.ts"
import type { Surroundings } from "./surroundings.ts"

export interface ReportRequest {
  readonly files: readonly string[]
  readonly out: string | undefined
  /** Without the script that lets the page be changed: smaller, and complete all the same. */
  readonly plain: boolean
}

export async function runReport(request: ReportRequest, around: Surroundings): Promise<number> {
  const [file, ...more] = request.files
  if (file === undefined || more.length > 0) {
    around.err("roundwright report: name one notebook (a Markdown file).\n")
    return 2
  }
  const read = readText(around.cwd, file)
  if ("fault" in read) {
    around.err(`roundwright report: ${read.fault}\n`)
    return 2
  }
  const target = request.out ?? `${basename(file).replace(/\.(md|markdown)$/i, "")}.html`
  return writeNotebook("report", read.text, target, !request.plain, around)
}

/** A page for a motif of one's own: a pattern to write over, everything else following. */
export async function runNew(out: string | undefined, around: Surroundings): Promise<number> {
  const { blankNotebook } = await import("@roundwright/notebook")
  return writeNotebook("new", blankNotebook(), out ?? "my-motif.html", true, around)
}

async function writeNotebook(
  command: string,
  markdown: string,
  target: string,
  live: boolean,
  around: Surroundings,
): Promise<number> {
  // Loaded only here: pages need the chart and Markdown libraries, `check` does not.
  const { renderNotebook } = await import("@roundwright/notebook")
  const page = await renderNotebook(markdown, { live })
  const fault = writePage(around.cwd, target, page.html)
  if (fault) {
    around.err(`roundwright ${command}: ${fault}\n`)
    return 2
  }
  around.out(`${page.title}: written to ${target}\n`)
  const toMend = page.problems.filter((problem) => problem.severity !== "note")
  for (const problem of toMend) around.out(`  line ${problem.line}: ${problem.message}\n`)
  return toMend.length > 0 ? 1 : 0
}
