// A computed notebook as the parts of a page: runs of prose, and between them one part a cell. Static
// pages put them one after another; a live page exchanges them one by one.

import type { Cell, NotebookResult } from "../result.ts"
import type { NotebookProblem } from "../written-cell.ts"
import { cellContents, cellHtml, problemBox } from "./cells.ts"
import { type Child, element, type Html, together, trusted } from "./html.ts"
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
  const groups = besideGroups(result.cells, runs)
  const body: Child[] = [live ? element("div", { id: "stray" }, stray) : stray]
  for (const [index, run] of runs.entries()) {
    const cell = result.cells[index]
    const group = groups.get(index)
    if (group?.first) body.push(trusted('<div class="beside">'))
    const prose = live ? element("div", { class: "prose", id: `prose-${index}` }, run) : run
    // The words before a pattern stand above it and its verdict.
    if (group?.first) body.splice(-1, 0, prose, { markup: "\n" })
    else body.push(prose, { markup: "\n" })
    if (cell) body.push(await cellHtml(cell, page, group?.first ? "first" : null), { markup: "\n" })
    if (group?.last) body.push(trusted("</div>\n"))
  }
  return body
}

/** Kinds that may stand between a pattern and its verdict, beside the text. */
const between: ReadonlySet<string> = new Set(["gauge", "problems", "verdict"])

/**
 * Cells that a wide screen shows side by side: a pattern, and its verdict where no words come between. By the index of
 * the cell, whether it begins or ends the group.
 */
function besideGroups(
  cells: readonly Cell[],
  runs: readonly Html[],
): ReadonlyMap<number, { readonly first: boolean; readonly last: boolean }> {
  const groups = new Map<number, { first: boolean; last: boolean }>()
  cells.forEach((cell, start) => {
    if (cell.kind !== "pattern") return
    let end = start
    while (between.has(cells[end + 1]?.kind ?? "") && runs[end + 1]?.markup === "") end += 1
    while (end > start && cells[end]!.kind !== "verdict") end -= 1
    for (let k = start; end > start && k <= end; k++)
      groups.set(k, { first: k === start, last: k === end })
  })
  return groups
}

/** What stands inside the section of a cell, as markup. */
export async function insideOf(cell: Cell, page: PageSoFar): Promise<string> {
  return together(await cellContents(cell, page)).markup
}
