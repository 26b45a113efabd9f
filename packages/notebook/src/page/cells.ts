// One cell as HTML: what it gave, or, in its place, why it failed.

import type { Cell, ChartPair } from "../result.ts"
import type { NotebookProblem } from "../written-cell.ts"
import { circleHtml } from "./circle-html.ts"
import { editHtml } from "./edit-html.ts"
import { finishingHtml } from "./finishing-html.ts"
import { heightsHtml } from "./heights-html.ts"
import { type Child, element, type Html, together } from "./html.ts"
import { ledgerHtml } from "./ledger-html.ts"
import type { PageSoFar } from "./page-so-far.ts"
import { pictureHtml } from "./picture-html.ts"
import { problemsHtml } from "./problems-html.ts"
import { publishedHtml } from "./published-html.ts"
import { remediesHtml } from "./remedies-html.ts"
import { squaringHtml } from "./squaring-html.ts"
import { drawChart } from "./svg.ts"
import { transitionsHtml } from "./transitions-html.ts"
import { verdictHtml } from "./verdict-html.ts"
import { calculationHtml, gaugeHtml, patternHtml } from "./written.ts"

/** @param place a class more, for where it stands */
export async function cellHtml(
  cell: Cell,
  page: PageSoFar,
  place: string | null = null,
): Promise<Html> {
  const attributes = {
    class: `cell ${cell.kind}${place === null ? "" : ` ${place}`}`,
    id: `cell-${cell.index + 1}`,
    "data-of":
      cell.content && "pattern" in cell.content ? (cell.content.pattern?.name ?? null) : null,
  }
  return element("section", attributes, await cellContents(cell, page))
}

/** What stands inside the section of a cell: what it gave, or why it failed. */
export async function cellContents(cell: Cell, page: PageSoFar): Promise<Child> {
  return cell.content ? contentHtml(cell, cell.content, page) : faultHtml(cell)
}

async function contentHtml(
  cell: Cell,
  content: NonNullable<Cell["content"]>,
  page: PageSoFar,
): Promise<Child> {
  switch (content.kind) {
    case "pattern":
      return patternHtml(content.pattern, page)
    case "gauge":
      return [gaugeHtml(content.of, content.lines, page), cell.problems.map(problemBox)]
    case "calculation":
      return calculationHtml(cell.index + 1, content.lines, faultsBySource(cell))
    case "verdict":
      return verdictHtml(content.pattern, page)
    case "ledger":
      return ledgerHtml(content.pattern, page)
    case "remedies":
      return remediesHtml(content.pattern, page)
    case "problems":
      return problemsHtml(content.pattern, page)
    case "edit":
      return editHtml(cell.index, content.pattern, content.report, page)
    case "sheet":
      return publishedHtml(content.sheet)
    case "squaring":
      return squaringHtml(content.request, content.found)
    case "heights":
      return [heightsHtml(content.found), await chartHtml(content.charts)]
    case "circle":
      return circleHtml(content.pattern, content.plan)
    case "transitions":
      return [await chartHtml(content.charts), transitionsHtml(content.request, content.found)]
    case "finishing":
      return finishingHtml(content.found)
    case "picture":
      return pictureHtml(content.lines, content.found)
    case "chart":
      return content.charts
        ? chartHtml(content.charts)
        : element("p", { class: "after" }, "Nothing to draw: no round could be read.")
    case "later":
      return element("p", { class: "after" }, "Still being worked out.")
  }
}

/** A drawing for a page's measure and one for a phone; the look of the page shows one of them. */
async function chartHtml(charts: ChartPair | null): Promise<Child> {
  if (!charts) return null
  return element(
    "figure",
    {},
    element("div", { class: "wide" }, await drawChart(charts.wide)),
    element("div", { class: "narrow" }, await drawChart(charts.narrow)),
  )
}

/** Why a cell failed, with what was written in it unless that is shown anyway. */
export function faultHtml(cell: Cell, withSource = true): Html {
  const source = `${cell.kind} ${cell.info}\n${cell.text}`.trim()
  return element(
    "div",
    { class: "fault" },
    element("p", {}, element("strong", {}, `This ${cell.kind} cell could not be computed.`)),
    cell.problems.map(problemText),
    withSource
      ? element("pre", {}, source.length > 600 ? `${source.slice(0, 600)}...` : source)
      : null,
  )
}

/** A problem of the notebook in a box of its own. */
export function problemBox(problem: NotebookProblem): Html {
  return element("div", { class: "fault" }, problemText(problem))
}

function problemText({ line, message, hint }: NotebookProblem): Html {
  return element(
    "div",
    {},
    element("span", { class: "where" }, `Line ${line}: `),
    together([message, hint ? element("span", { class: "hint" }, hint) : null]),
  )
}

function faultsBySource(cell: Cell): ReadonlyMap<string, NotebookProblem> {
  const written = cell.text.split(/\r\n|\r|\n/)
  return new Map(
    cell.problems.map((problem) => {
      const line = written[problem.line - cell.line - 1] ?? ""
      return [line.split("#")[0]!.trim(), problem]
    }),
  )
}
