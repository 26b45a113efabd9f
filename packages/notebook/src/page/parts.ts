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
    if (group?.opens) body.push(trusted('<div class="beside">'))
    const prose = live ? element("div", { class: "prose", id: `prose-${index}` }, run) : run
    // The words before a pattern and its verdict stand above both.
    if (group?.opens) body.splice(-1, 0, prose, { markup: "\n" })
    else body.push(prose, { markup: "\n" })
    const place = group && cell?.kind === "pattern" ? "first" : null
    if (cell) body.push(await cellHtml(cell, page, place), { markup: "\n" })
    if (group?.closes) body.push(trusted("</div>\n"))
  }
  return body
}

/** Kinds that may stand between a pattern and its verdict, beside the text. */
const between: ReadonlySet<string> = new Set(["gauge", "problems", "verdict"])

interface InGroup {
  readonly opens: boolean
  readonly closes: boolean
}

/**
 * Cells that a wide screen shows side by side: a pattern, and its verdict, behind it or before, where no words come
 * between. By the index of the cell.
 */
function besideGroups(cells: readonly Cell[], runs: readonly Html[]): ReadonlyMap<number, InGroup> {
  const groups = new Map<number, InGroup>()
  const joins = (k: number) => runs[k]?.markup === ""
  const isBetween = (k: number) => between.has(cells[k]?.kind ?? "")
  const isVerdict = (k: number) => cells[k]?.kind === "verdict"
  cells.forEach((cell, at) => {
    if (cell.kind !== "pattern") return
    let [start, end] = [at, at]
    while (isBetween(end + 1) && joins(end + 1)) end += 1
    while (end > at && !isVerdict(end)) end -= 1
    // A verdict before belongs to this pattern where none follows and no other pattern has it.
    if (end === at) {
      while (isBetween(start - 1) && joins(start) && !groups.has(start - 1)) start -= 1
      while (start < at && !isVerdict(start)) start += 1
    }
    for (let k = start; end > start && k <= end; k++)
      groups.set(k, { opens: k === start, closes: k === end })
  })
  return groups
}

/** What stands inside the section of a cell, as markup. */
export async function insideOf(cell: Cell, page: PageSoFar): Promise<string> {
  return together(await cellContents(cell, page)).markup
}
