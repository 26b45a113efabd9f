// "ch 3, dc in same st, dc in next dc": told once, and no word says that it goes around. Where else most of the round
// below is left, and nothing is when it does, it does.

import type { Finding } from "../base/problem-list.ts"
import { impliedRepeats } from "./implied-repeat.ts"
import { workRound } from "./read-round.ts"
import type { RoundRequest, RoundResult } from "./round-result.ts"

export interface WorkedAround {
  readonly request: RoundRequest
  readonly result: RoundResult
  /** Told once it leaves most of the round below. */
  readonly leaves: boolean
}

const leavesMuch: ReadonlySet<string> = new Set(["stitches-left-over", "spaces-left-over"])

/** The ways in which what is told once may go around; none where it fits as it is told. */
export function aroundAll(once: RoundRequest, told: RoundResult): WorkedAround[] {
  const leaves = told.findings.some(({ code }) => leavesMuch.has(code))
  if (once.index === 0 || (!leaves && !isScant(once, told))) return []
  return impliedRepeats(once.tree.steps).flatMap((steps): WorkedAround[] => {
    const request: RoundRequest = { ...once, tree: { ...once.tree, steps } }
    const result = workRound(request)
    const worse = leaves ? result.score >= told.score : result.score > told.score
    const fits = !result.findings.some(
      ({ code }) => leavesMuch.has(code) || code === "repeat-does-not-divide",
    )
    if (!result.round || worse || !fits) return []
    const finding: Finding = {
      // No word of the text says so, and unless its total does it may as well be cut short.
      severity: result.comparison.agrees === true ? "note" : "warning",
      code: "repeat-implied",
      ...once.span,
      message: "This is told once and worked around: then it fits the round before.",
      hint: 'Add "rep from * around" if that is meant.',
    }
    return [{ request, result: { ...result, findings: [...result.findings, finding] }, leaves }]
  })
}

/** A stitch or two on a round of many. */
function isScant({ shared, index }: RoundRequest, { round }: RoundResult): boolean {
  const below = shared.rounds[index - 1]
  return (
    round !== null &&
    below !== undefined &&
    round.elements.length <= 4 &&
    below.elements.length >= 12
  )
}
