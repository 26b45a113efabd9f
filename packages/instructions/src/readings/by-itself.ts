// A round counted by its own words alone, where the round below is not known or has not what is asked for: worked on
// the ground it asks for, and taken if everything then agrees.

import type { Round } from "@roundwright/motif"
import type { Finding } from "../base/problem-list.ts"
import type { Span, Step } from "../base/tree.ts"
import type { Gap } from "../grammar/read-words.ts"
import { groundAskedFor } from "./asked-ground.ts"
import { workRound } from "./read-round.ts"
import type { RoundRequest, RoundResult } from "./round-result.ts"

export interface ByItself {
  /** What it stands on. */
  readonly ground: Round
  readonly round: Round
  readonly result: RoundResult
  /** Its words leave nothing open of how often things are repeated. */
  readonly sure: boolean
}

/**
 * @param request its `index` that of the round; of the rounds before it the one below is not looked at
 * @param gaps words of it passed over: where they may be stitches or figures nothing is counted
 */
export function countedByItself(request: RoundRequest, gaps: readonly Gap[]): ByItself | null {
  if (gaps.some(mayCount)) return null
  const { steps } = request.tree
  // What is told once, and nowhere that it is repeated, may be a part of the round.
  if (request.index === 0 || !steps.some(({ do: what }) => what === "repeat")) return null
  for (const leads of [true, false]) {
    const ground = groundAskedFor(steps, leads, {
      number: request.number - 1,
      index: request.index - 1,
    })
    if (!ground) continue
    const before = request.shared.rounds.slice(0, request.index - 1)
    const result = workRound({
      ...request,
      turned: false,
      shared: { ...request.shared, rounds: [...before, ground] },
    })
    if (result.round && result.score === 0)
      return {
        ground,
        round: result.round,
        result,
        sure: gaps.every(({ cost }) => cost < 1) && !leavesTimesOpen(steps),
      }
  }
  return null
}

/** A figure, a repeat or a word nobody knows may be stitches. */
function mayCount({ words, cost }: Gap): boolean {
  return (
    cost >= 1 &&
    words.some(
      (word) =>
        word.type === "number" ||
        word.classes.has("repeat") ||
        word.classes.has("times") ||
        word.classes.has("each"),
    )
  )
}

/** "Repeat from * 3 times": nothing says whether the first time is counted. */
function leavesTimesOpen(steps: readonly Step[]): boolean {
  return steps.some(
    (step) =>
      step.do === "repeat" &&
      ((step.times.kind === "more" && step.times.plain) || leavesTimesOpen(step.body)),
  )
}

export function byItselfFinding(number: number, { sure }: ByItself, label: Span): Finding {
  return {
    severity: sure ? "note" : "warning",
    code: "counted-by-itself",
    ...label,
    message: `Round ${number} is counted by its own words: it is taken to stand on what it asks for.`,
    hint: sure
      ? "Mend the first error above; then it is worked on the round before."
      : "Mend the first error above, and say how many times each repeat is worked in all.",
  }
}
