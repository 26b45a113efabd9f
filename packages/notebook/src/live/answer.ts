// Answering a page: the notebook is computed as for a static page, cut into parts, and told as soon as
// each part is known, the drawings last. What was computed for the same text before is remembered.

import { type CheckResult, checkPattern, verdictSentence } from "@roundwright/assessment"
import { type ComputeOptions, computeNotebook, gaugeLinesOf } from "../compute.ts"
import { faultHtml } from "../page/cells.ts"
import { together } from "../page/html.ts"
import { bodyHtml, insideOf, pageSoFar, strayBoxes } from "../page/parts.ts"
import { proseRuns } from "../page/prose.ts"
import { squaringHtml } from "../page/squaring-html.ts"
import type { Cell, NotebookProblem, NotebookResult } from "../result.ts"
import { searchKey, squarePattern } from "../squaring.ts"
import type { Answer, LiveCell, Mark, Question, Saying, Search } from "./messages.ts"
import { editableKinds } from "./source.ts"
import { type TriedRemedy, tryRemedies } from "./trials.ts"

/** Enough for the patterns of a long notebook and some steps back. */
const mostRemembered = 80

export interface Answerer {
  /**
   * Answers in parts. `rest` is awaited between parts, so that a page without a worker can look after
   * its reader; when it gives false the rest of the answer is dropped.
   */
  answer(
    question: Question,
    tell: (answer: Answer) => void,
    rest: () => Promise<boolean>,
  ): Promise<void>
}

/** An answerer with its memory. */
export function makeAnswerer(): Answerer {
  const checks = new Remembered<CheckResult>()
  const drawings = new Remembered<string>()
  const trials = new Remembered<TriedRemedy[]>()
  return {
    answer: async (question, tell, rest) => {
      const { id } = question
      if ("request" in question) {
        const { own, gauge, request } = question
        const result = squarePattern(own, gauge, request)
        tell({ part: "squaring", id, html: together(squaringHtml(request, result)).markup, result })
        tell({ part: "end", id })
        return
      }
      const { markdown } = question
      let checked = 0
      const check = (text: string) =>
        checks.get(text, () => {
          checked += 1
          tell({ part: "working", id, doing: `pattern ${checked}` })
          return checkPattern(text)
        })
      const result = await computeNotebook(markdown, { check, square: () => null })
      if (!(await rest())) return
      const unread = unreadProblem(result)
      if (unread) {
        tell({ part: "failed", id, message: `${unread.message} ${unread.hint}`.trim() })
        return
      }
      await tellPage(result, id, tell)
      for (const cell of result.cells) {
        if (cell.content?.kind !== "chart") continue
        const { wide, narrow } = cell.content
        if (!(await rest())) return
        const key = JSON.stringify([wide, narrow])
        const html = await drawings.later(key, () => insideOf(cell, pageSoFar(result)))
        tell({ part: "cell", id, cell: cell.index, html })
      }
      for (const cell of result.cells) {
        if (!(await rest())) return
        const tried = trialsFor(cell, result, trials)
        if (tried) tell({ part: "trials", id, cell: cell.index, ...tried })
      }
      if (question.body) {
        const { searches } = question.body
        const square: ComputeOptions["square"] = (...asked) =>
          searches.get(searchKey(...asked)) ?? squarePattern(...asked)
        const whole = await computeNotebook(markdown, { check, square })
        const html = together(await bodyHtml(whole, true)).markup
        tell({ part: "body", id, html })
      }
      tell({ part: "end", id })
    },
  }
}

/** Why a text could not be taken as a notebook at all; the page then keeps what it shows. */
function unreadProblem({ tree, problems }: NotebookResult): NotebookProblem | null {
  return tree.children.length === 0 ? (problems[0] ?? null) : null
}

async function tellPage(
  result: NotebookResult,
  id: number,
  tell: (answer: Answer) => void,
): Promise<void> {
  const page = pageSoFar(result)
  const runs = await proseRuns(result.tree, result.values)
  const cells: LiveCell[] = []
  for (const cell of result.cells) {
    const { index, kind } = cell
    // Drawings come later, and the answer of a search stays until there is another.
    const later = cell.content?.kind === "chart" || cell.content?.kind === "squaring"
    const html = later
      ? null
      : editableKinds.has(kind)
        ? await below(cell, page)
        : await insideOf(cell, page)
    cells.push({ index, kind, html, marks: marksOf(cell) })
  }
  tell({
    part: "page",
    id,
    title: result.title,
    stray: strayBoxes(result).markup,
    runs: runs.map((run) => run.markup),
    cells,
    sayings: result.cells.flatMap(sayingOf),
    searches: result.cells.flatMap((cell) => searchOf(cell, result)),
  })
}

/** What stands below an editor: the values of a calculation, or why the cell has failed. */
async function below(cell: Cell, page: ReturnType<typeof pageSoFar>): Promise<string> {
  if (!cell.content) return together(faultHtml(cell, false)).markup
  return cell.kind === "calculation" ? insideOf(cell, page) : ""
}

function searchOf({ index, content }: Cell, { cells }: NotebookResult): Search[] {
  if (content?.kind !== "squaring") return []
  const { name, text } = content.pattern
  const own = text.replace(/\r\n?/g, "\n")
  const { request } = content
  const gauge = gaugeLinesOf(
    cells.map((cell) => cell.content),
    name,
  )
  const patternCell = patternCellOf(name, cells)
  const key = searchKey(own, gauge, request)
  return [{ cell: index, patternCell, key, question: { own, gauge, request } }]
}

function patternCellOf(name: string, cells: readonly Cell[]): number {
  return cells.findIndex(
    ({ content }) => content?.kind === "pattern" && content.pattern.name === name,
  )
}

function trialsFor(
  { content }: Cell,
  { cells }: NotebookResult,
  trials: Remembered<TriedRemedy[]>,
): { patternCell: number; trials: TriedRemedy[] } | null {
  if (content?.kind !== "remedies" || content.pattern.result.remedies.length === 0) return null
  const { name, text } = content.pattern
  const own = text.replace(/\r\n?/g, "\n")
  const patternCell = patternCellOf(name, cells)
  const gauge = gaugeLinesOf(
    cells.map((cell) => cell.content),
    name,
  )
  const key = JSON.stringify([own, gauge])
  return { patternCell, trials: trials.get(key, () => tryRemedies(own, gauge)) }
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
  if (content?.kind !== "pattern") return []
  const { name, result } = content.pattern
  const partly = result.laidOut !== null && result.ledger.length < result.rounds.length
  const far = partly ? ` (${result.ledger.length} of ${result.rounds.length} rounds read)` : ""
  return [
    {
      cell: index,
      name,
      title: result.motif?.title ?? null,
      sentence: verdictSentence(result) + far,
      verdict: result.laidOut?.verdict ?? null,
    },
  ]
}

/** The latest results, by the text they were made from. */
class Remembered<T> {
  readonly #kept = new Map<string, T>()

  get(key: string, make: () => T): T {
    return this.#take(key) ?? this.#keep(key, make())
  }

  async later(key: string, make: () => Promise<T>): Promise<T> {
    return this.#take(key) ?? this.#keep(key, await make())
  }

  #take(key: string): T | undefined {
    const value = this.#kept.get(key)
    if (value !== undefined) this.#keep(key, value)
    return value
  }

  #keep(key: string, value: T): T {
    this.#kept.delete(key)
    this.#kept.set(key, value)
    if (this.#kept.size > mostRemembered) this.#kept.delete(this.#kept.keys().next().value!)
    return value
  }
}
