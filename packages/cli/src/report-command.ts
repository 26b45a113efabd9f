// `roundwright report NOTEBOOK`: one Markdown notebook to one HTML file.

import { basename } from "node:path"
import { readText, writePage } from "./files.ts"
import type { Surroundings } from "./run.ts"

export async function runReport(
  files: readonly string[],
  out: string | undefined,
  around: Surroundings,
): Promise<number> {
  const [file, ...more] = files
  if (file === undefined || more.length > 0) {
    around.err("roundwright report: name one notebook (a Markdown file).\n")
    return 2
  }
  const read = readText(around.cwd, file)
  if ("fault" in read) {
    around.err(`roundwright report: ${read.fault}\n`)
    return 2
  }
  // Loaded only here: pages need the chart and Markdown libraries, `check` does not.
  const { renderNotebook } = await import("@roundwright/notebook")
  const page = await renderNotebook(read.text)
  const target = out ?? `${basename(file).replace(/\.(md|markdown)$/i, "")}.html`
  const fault = writePage(around.cwd, target, page.html)
  if (fault) {
    around.err(`roundwright report: ${fault}\n`)
    return 2
  }
  around.out(`${page.title}: written to ${target}\n`)
  for (const problem of page.problems) around.out(`  ${problem.message}\n`)
  return page.problems.length > 0 ? 1 : 0
}
