// Answering a page: the notebook is computed as for a static page, cut into parts, and told as soon as
// each part is known, the drawings last. What was computed for the same text before is remembered.

import { type CheckResult, checkPattern } from "@roundwright/assessment"
import type { CirclePlan } from "../circle.ts"
import { type ComputeOptions, computeNotebook } from "../compute.ts"
import { finish, finishingKey } from "../finishing/finishing.ts"
import type { FinishingResult } from "../finishing/types.ts"
import { type LaidOutPattern, layOutInParts } from "../laid-out-pattern.ts"
import { together } from "../page/html.ts"
import { pageSoFar } from "../page/page-so-far.ts"
import { insideOf } from "../page/parts.ts"
import { squaringHtml } from "../page/squaring-html.ts"
import type { Cell, NotebookResult } from "../result.ts"
import { searchKey, squarePattern } from "../squaring.ts"
import { transitionsKey } from "../transitions.ts"
import type { NotebookProblem } from "../written-cell.ts"
import { drawingOf, gaugeOver, pageAnswer, patternCellOf } from "./answer-parts.ts"
import { figureOf } from "./figure-file.ts"
import type { Answer, NotebookQuestion, Question } from "./messages.ts"
import { pageWords } from "./page-words.ts"
import { Remembered } from "./remembered.ts"
import { type TriedRemedy, tryRemedies } from "./trials.ts"

/** Enough for the patterns of a long notebook and some steps back. */
const mostRemembered = 80

/** A shape holds some thousand numbers. */
const mostShapes = 24

/** Awaited between parts; when it gives false the rest of the answer is dropped. */
export type Rest = (before?: "heavy work") => Promise<boolean>

export interface Answerer {
  /** Answers in parts. `rest` lets a page without a worker look after its reader. */
  answer(question: Question, tell: (answer: Answer) => void, rest: Rest): Promise<void>
}

/**
 * An answerer with its memory.
 * @param sharing whether a reader shares the thread: then nothing is begun that would hold them up
 */
export function makeAnswerer(sharing: boolean): Answerer {
  const checks = new Remembered<CheckResult>(mostRemembered)
  const drawings = new Remembered<string>(mostRemembered)
  const trials = new Remembered<readonly (TriedRemedy | null)[]>(mostRemembered)
  const plans = new Remembered<CirclePlan>(mostRemembered)
  const finished = new Remembered<FinishingResult>(mostRemembered)
  const shapes = new Remembered<LaidOutPattern>(mostShapes)

  /** Lays out what is asked for. @returns false when the question was dropped */
  async function layOutAll(
    { layOut, id }: NotebookQuestion,
    tell: (answer: Answer) => void,
    rest: Rest,
  ): Promise<boolean> {
    for (const [index, text] of layOut.entries()) {
      if (shapes.known(text)) continue
      const of = layOut.length > 1 ? ` ${index + 1} of ${layOut.length}` : ""
      tell({ part: "working", id, doing: `laying out piece${of}` })
      if (!(await rest("heavy work"))) return false
      const effort = sharing ? "at-once" : "bounded"
      const laid = await layOutInParts(text, effort, () => rest("heavy work"))
      if (laid === null) return false
      tell({ part: "shape", id, text, found: shapes.get(text, () => laid).found })
    }
    return true
  }

  /** What is known, and the shapes just laid out. */
  function optionsFor({
    known,
    layOut,
  }: Pick<NotebookQuestion, "known" | "layOut">): ComputeOptions {
    return {
      check: (text) => checks.get(text, () => checkPattern(text, { remedies: false })),
      layOut: (text) => {
        const laid = layOut.includes(text) ? shapes.known(text) : undefined
        const found = known.shapes.get(text)
        return laid ?? (found ? { found, piece: null } : null)
      },
      square: (...asked) => known.searches.get(searchKey(...asked)) ?? null,
      plans: {
        get: (lines) => known.plans.get(lines) ?? plans.known(lines),
        set: (lines, plan) => plans.get(lines, () => plan),
      },
      finish: (kind, pattern, text) => {
        const key = finishingKey(kind, pattern, text)
        const found = known.finishing.get(key) ?? finished.known(key)
        // A match lays out a dozen pieces: it waits until the reader's own has been.
        if (!found && kind === "match" && sharing) return { fault: pageWords.noMatchHere, hint: "" }
        const later =
          kind === "match" &&
          pattern !== null &&
          !known.shapes.has(pattern) &&
          !shapes.known(pattern)
        return found ?? (later ? null : finished.get(key, () => finish(kind, pattern, text)))
      },
      transitions: (asked) => known.transitions.get(transitionsKey(asked)) ?? null,
    }
  }

  return {
    answer: async (question, tell, rest) => {
      const { id } = question
      if ("measure" in question) throw new Error("This page measures no pictures.")
      if ("request" in question) {
        const { own, gauge, request } = question
        if (sharing) {
          tell({ part: "failed", id, message: pageWords.noSearchHere })
          return
        }
        const result = squarePattern(own, gauge, request)
        tell({ part: "squaring", id, html: together(squaringHtml(request, result)).markup, result })
        tell({ part: "end", id })
        return
      }
      if ("figure" in question) {
        const found = await figureOf(question, (of) => optionsFor(of))
        tell(
          found
            ? { part: "figure", id, ...found }
            : { part: "failed", id, message: "There is no figure to keep." },
        )
        if (found) tell({ part: "end", id })
        return
      }
      if (!(await layOutAll(question, tell, rest))) return
      const result = await computeNotebook(question.markdown, optionsFor(question))
      if (!(await rest())) return
      const unread = unreadProblem(result)
      if (unread) {
        tell({ part: "failed", id, message: `${unread.message} ${unread.hint}`.trim() })
        return
      }
      tell(await pageAnswer(result, id))
      for (const cell of result.cells) {
        const drawing = drawingOf(cell)
        if (!drawing) continue
        if (!(await rest())) return
        const { key, shapeOf } = drawing
        const html = await drawings.later(key, () => insideOf(cell, pageSoFar(result)))
        const provisional = cell.content?.kind === "chart" && cell.content.pattern.unlaid
        tell({ part: "cell", id, cell: cell.index, html, shapeOf, provisional })
      }
      for (const cell of result.cells) {
        if (!(await rest())) return
        const tried = trialsFor(cell, result, trials, shapes)
        if (tried) tell({ part: "trials", id, cell: cell.index, ...tried })
      }
      tell({ part: "end", id })
    },
  }
}

/** Why a text could not be taken as a notebook at all; the page then keeps what it shows. */
function unreadProblem({ tree, problems }: NotebookResult): NotebookProblem | null {
  return tree.children.length === 0 ? (problems[0] ?? null) : null
}

function trialsFor(
  { content }: Cell,
  { cells }: NotebookResult,
  trials: Remembered<readonly (TriedRemedy | null)[]>,
  shapes: Remembered<LaidOutPattern>,
): { patternCell: number; trials: readonly (TriedRemedy | null)[] } | null {
  if (content?.kind !== "remedies" || content.pattern.result.remedies.length === 0) return null
  const { name, text, readText, result } = content.pattern
  const patternCell = patternCellOf(name, cells)
  if (patternCell === null) return null
  const own = text.replace(/\r\n?/g, "\n")
  const gauge = gaugeOver(name, cells)
  const key = JSON.stringify([own, gauge, result.remedies])
  const shape = shapes.known(readText)?.piece?.shape ?? null
  return {
    patternCell,
    trials: trials.get(key, () => tryRemedies(own, gauge, result.remedies, shape)),
  }
}
