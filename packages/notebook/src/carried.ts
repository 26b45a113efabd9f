// What takes seconds to find goes along with a live page: searches, plans, and the shapes of pieces.

import { type CirclePlan, planKey } from "./circle.ts"
import { finishingKey } from "./finishing/finishing.ts"
import type { FinishingAnswer } from "./finishing/types.ts"
import { type ShapeFound, shapeFound } from "./laid-out-pattern.ts"
import type { Cell, NotebookResult } from "./result.ts"
import { gaugeLinesOf } from "./searches.ts"
import { type SquaringResult, searchKey } from "./squaring.ts"
import { type TransitionsResult, transitionsKey } from "./transitions.ts"

/** Each list is absent when it would be empty; pairs of what was asked and what was found. */
export interface CarriedAnswers {
  readonly searches?: readonly (readonly [string, SquaringResult])[]
  readonly transitions?: readonly (readonly [string, TransitionsResult])[]
  readonly finishing?: readonly (readonly [string, FinishingAnswer])[]
  readonly plans?: readonly (readonly [string, CirclePlan])[]
  /** By the text that was read. */
  readonly shapes?: readonly (readonly [string, ShapeFound])[]
}

export function carriedAnswers({ cells, patterns }: NotebookResult): CarriedAnswers {
  const contents = cells.map(({ content }) => content)
  const searches = new Map<string, SquaringResult>()
  const transitions = new Map<string, TransitionsResult>()
  for (const content of contents) {
    if (content?.kind === "transitions" && content.found)
      transitions.set(transitionsKey(content.request), content.found)
    if ((content?.kind === "squaring" || content?.kind === "heights") && content.found) {
      const { name, text } = content.pattern
      searches.set(searchKey(text, gaugeLinesOf(contents, name), content.request), content.found)
    }
  }
  const finishing = finishingIn(cells)
  const plans = plansIn(cells)
  const shapes = patterns.flatMap(({ readText, result, unlaid }): [string, ShapeFound][] => {
    return result.laidOut && !unlaid ? [[readText, shapeFound(result)]] : []
  })
  return {
    ...(searches.size > 0 ? { searches: [...searches] } : {}),
    ...(transitions.size > 0 ? { transitions: [...transitions] } : {}),
    ...(finishing.length > 0 ? { finishing } : {}),
    ...(plans.length > 0 ? { plans } : {}),
    ...(shapes.length > 0 ? { shapes } : {}),
  }
}

/** The answers of finishing cells, each with what was asked. */
export function finishingIn(cells: readonly Cell[]): [string, FinishingAnswer][] {
  return cells.flatMap(({ content }): [string, FinishingAnswer][] =>
    content?.kind === "finishing" && content.found
      ? [
          [
            finishingKey(content.of, content.pattern?.readText ?? null, content.lines),
            content.found,
          ],
        ]
      : [],
  )
}

/** The plans of circle cells, each with the lines it was asked for with. */
export function plansIn(cells: readonly Cell[]): [string, CirclePlan][] {
  return cells.flatMap(({ text, content }): [string, CirclePlan][] =>
    content?.kind === "circle" ? [[planKey(text), content.plan]] : [],
  )
}
