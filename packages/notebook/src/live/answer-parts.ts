// A computed notebook cut into the parts a page is told.

import { asksForShape } from "@roundwright/charts"
import { finishingIn, plansIn } from "../carried.ts"
import { faultHtml } from "../page/cells.ts"
import { planSaid } from "../page/circle-html.ts"
import { together } from "../page/html.ts"
import { type PageSoFar, pageSoFar } from "../page/page-so-far.ts"
import { insideOf, strayBoxes } from "../page/parts.ts"
import { proseRuns } from "../page/prose.ts"
import { verdictSaid } from "../page/verdict-html.ts"
import type { Cell, CheckedPattern, InlineValue, NotebookResult } from "../result.ts"
import { gaugeLinesOf } from "../searches.ts"
import { searchKey } from "../squaring.ts"
import type { LiveCell, LiveRun, Mark, PageAnswer, Saying, Search } from "./messages.ts"
import { editableKinds } from "./source.ts"

/** All of the page but its drawings, which come later. */
export async function pageAnswer(result: NotebookResult, id: number): Promise<PageAnswer> {
  const page = pageSoFar(result)
  const cells: LiveCell[] = []
  for (const cell of result.cells) {
    const { index, kind } = cell
    const html = comesLater(cell)
      ? null
      : editableKinds.has(kind)
        ? await below(cell, page)
        : await insideOf(cell, page)
    const differs = editableKinds.has(kind) || kind === "squaring"
    // The page measures its pictures itself.
    const elsewhere = cell.content?.kind === "later" || cell.content?.kind === "picture"
    const still = differs && !elsewhere ? await insideOf(cell, page) : null
    cells.push({ index, kind, html, still, marks: marksOf(cell), waitsFor: waitsFor(cell, result) })
  }
  return {
    part: "page",
    id,
    title: result.title,
    stray: strayBoxes(result).markup,
    runs: await runsOf(result),
    cells,
    sayings: result.cells.flatMap(sayingOf),
    searches: result.cells.flatMap((cell) => searchOf(cell, result)),
    finishing: finishingIn(result.cells),
    plans: plansIn(result.cells),
  }
}

/** Drawings, and what must be laid out first; the answer of a search stays until there is another. */
function comesLater({ content }: Cell): boolean {
  switch (content?.kind) {
    case "chart":
    case "sheet":
    case "later":
    case "squaring":
    case "picture":
      return true
    case "heights":
    case "transitions":
      return content.charts !== null || content.found === null
    default:
      return false
  }
}

/** The key of a drawing, the charts it shows, and the text of the piece it is of; null for other cells. */
export function drawingOf(
  cell: Cell,
): { readonly key: string; readonly shapeOf: string | null } | null {
  const { content } = cell
  if (content?.kind === "chart") {
    const ofShape = asksForShape(content.name)
    return {
      key: JSON.stringify(content.charts),
      shapeOf: ofShape ? content.pattern.readText : null,
    }
  }
  if (content?.kind === "sheet")
    return { key: JSON.stringify(content.sheet), shapeOf: content.pattern.readText }
  if ((content?.kind === "heights" || content?.kind === "transitions") && content.charts)
    return { key: JSON.stringify([content.charts, content.found]), shapeOf: null }
  return null
}

async function runsOf({ tree, values, cells, patterns }: NotebookResult): Promise<LiveRun[]> {
  const waiting = values.filter(({ wanted }) => wanted)
  const runs = await proseRuns(tree, values)
  return runs.map((run, index) => {
    const from = index === 0 ? 0 : cells[index - 1]!.line
    const to = cells[index]?.line ?? Number.POSITIVE_INFINITY
    const own = waiting.filter(({ line }) => line > from && line < to)
    return own.length === 0
      ? { html: run.markup, waitsFor: [] }
      : { html: null, waitsFor: textsFor(own, patterns) }
  })
}

function textsFor(
  wanting: readonly Pick<InlineValue, "wanted">[],
  patterns: readonly CheckedPattern[],
): string[] {
  const names = new Set(wanting.map(({ wanted }) => wanted?.pattern))
  return patterns.flatMap(({ name, readText }) => (names.has(name) ? [readText] : []))
}

function waitsFor({ content }: Cell, { patterns }: NotebookResult): string[] {
  if (content?.kind === "later") return textsFor(content.wanted, patterns)
  const judged =
    content?.kind === "verdict" || content?.kind === "remedies" || content?.kind === "ledger"
  return judged && content.pattern.unlaid ? [content.pattern.readText] : []
}

/** What stands below an editor: the values of a calculation, a plan, or why the cell has failed. */
async function below(cell: Cell, page: PageSoFar): Promise<string> {
  if (!cell.content) return together(faultHtml(cell, false)).markup
  const values =
    cell.kind === "calculation" || cell.kind === "circle" || cell.content.kind === "finishing"
  return values ? insideOf(cell, page) : ""
}

function searchOf({ index, content }: Cell, { cells }: NotebookResult): Search[] {
  if (content?.kind !== "squaring") return []
  const { request, pattern } = content
  const own = pattern.text.replace(/\r\n?/g, "\n")
  const gauge = gaugeOver(pattern.name, cells)
  const key = searchKey(own, gauge, request)
  const patternCell = patternCellOf(pattern.name, cells)
  const { terms } = pattern.result
  return [{ cell: index, patternCell, key, terms, question: { own, gauge, request } }]
}

/** Lines of the gauge cell over a pattern. */
export function gaugeOver(name: string, cells: readonly Cell[]): readonly string[] {
  return gaugeLinesOf(
    cells.map((cell) => cell.content),
    name,
  )
}

/** The cell a pattern is written in; null where it is a plan. */
export function patternCellOf(name: string, cells: readonly Cell[]): number | null {
  const cell = cells.find(
    ({ content }) => content?.kind === "pattern" && content.pattern.name === name,
  )
  return cell?.index ?? null
}

function marksOf(cell: Cell): Mark[] {
  if (cell.content?.kind === "pattern") return cell.content.pattern.result.problems
  if (!editableKinds.has(cell.kind)) return []
  return cell.problems.flatMap((problem) => {
    const line = problem.line - cell.line
    return line < 1 ? [] : [{ ...problem, round: null, line }]
  })
}

function sayingOf({ index, content }: Cell): Saying[] {
  if (content?.kind !== "pattern" && content?.kind !== "circle") return []
  const { name, result } = content.pattern
  const plan = content.kind === "circle" ? content.plan : null
  return [
    {
      cell: index,
      name,
      title: result.motif?.title ?? null,
      sentence: plan ? planSaid(content.pattern, plan) : verdictSaid(result),
      provisional: content.pattern.unlaid,
      verdict: result.laidOut?.verdict ?? plan?.verdict ?? null,
    },
  ]
}
