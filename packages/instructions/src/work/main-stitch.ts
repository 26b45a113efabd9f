// The stitch a round is mostly made of, which "inc" and "dec" and a starting chain stand for.

import type { StitchKind } from "@roundwright/stitches"
import type { Step, StitchName } from "../base/tree.ts"
import type { RoundWork } from "./round-work.ts"

/** "inc" and "dec" are of the round's own stitch. */
export function shapedKind(work: RoundWork, stitch: StitchName): StitchKind {
  if (!stitch.shape) return stitch.kind
  return { ...stitch.kind, basic: mainBasic(work) }
}

/** The stitch a round is mostly made of, by its words, else by the round before. */
function mainBasic(work: RoundWork): StitchKind["basic"] {
  const named = firstBasic(work.allSteps)
  if (named) return named
  const before = work.shared.rounds[work.index - 1]?.elements.find(
    (element) => element.type === "stitch",
  )
  return before?.type === "stitch" ? before.kind.basic : "sc"
}

/** What a group, a repeat or a pass is made of, its last time apart; null for a single step. */
export function stepsInside(step: Step): readonly Step[] | null {
  if (step.do === "group") return step.steps
  if (step.do === "repeat") return step.body
  return step.do === "pass" ? step.cases : null
}

export function firstBasic(steps: readonly Step[]): StitchKind["basic"] | null {
  for (const step of steps) {
    if (step.do === "work" && !step.stitch.shape && step.stitch.kind.basic !== "sl st")
      return step.stitch.kind.basic
    const inner = stepsInside(step)
    const found = inner ? firstBasic(inner) : null
    if (found) return found
  }
  return null
}
