// The steps inside a step, as they are all worked: of a repeat the last time too.

import type { Step } from "./tree.ts"

/** What a group, a repeat or a pass is made of, the ending of its last time included; nothing for a single step. */
export function stepsWithin(step: Step): readonly Step[] {
  if (step.do === "group") return step.steps
  if (step.do === "repeat") return [...step.body, ...(step.last ?? [])]
  return step.do === "pass" ? step.cases : []
}
