// A computed notebook as the parts of a page: runs of prose, and between them one part a cell. Static
// pages put them one after another; a live page exchanges them one by one.

import type { Cell, NotebookResult } from "../result.ts"
import type { NotebookProblem } from "../written-cell.ts"
import { cellContents, cellHtml, problemBox } from "./cells.ts"
import { type Child, element, type Html, together } from "./html.ts"
import { type PageSoFar, pageSoFar } from "./page-so-far.ts"
import { proseRuns } from "./prose.ts"

/** Boxes for problems that no cell and no value shows. */
export function strayBoxes({ problems, values }: NotebookResult): Html {
  const shown = new Set(values.map((value) => value.problem))
  const stray = problems.filter((problem) => problem.cell === null && !shown.has(problem))
  return together(stray.map((problem: NotebookProblem) => problemBox(problem)))
}

/** Everything between the start and the end of `main`. */
export async function bodyHtml(result: NotebookResult, live: boolean): Promise<Child> {
  const runs = await proseRuns(result.tree, result.values)
  const page = pageSoFar(result)
  const stray = strayBoxes(result)
  const body: Child[] = [live ? element("div", { id: "stray" }, stray) : stray]
  for (const [index, run] of runs.entries()) {
    body.push(live ? element("div", { class: "prose", id: `prose-${index}` }, run) : run)
    body.push({ markup: "\n" })
    const cell = result.cells[index]
    if (cell) body.push(await cellHtml(cell, page), { markup: "\n" })
  }
  return body
}

/** What stands inside the section of a cell, as markup. */
export async function insideOf(cell: Cell, page: PageSoFar): Promise<string> {
  return together(await cellContents(cell, page)).markup
}
