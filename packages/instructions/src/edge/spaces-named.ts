// Spaces as a round names them and as the round before has them.

import type { Step } from "../base/tree.ts"
import type { Edge } from "./edge.ts"

const named = new WeakMap<readonly Step[], boolean>()

/** The steps speak of spaces between groups somewhere; remembered, as it is asked for at every space. */
export function namesGaps(steps: readonly Step[]): boolean {
  const known = named.get(steps)
  if (known !== undefined) return known
  const found = namesGapsIn(steps)
  named.set(steps, found)
  return found
}

function namesGapsIn(steps: readonly Step[]): boolean {
  return steps.some((step) => {
    if (step.do === "repeat") return namesGapsIn(step.body)
    if (step.do === "pass") return namesGapsIn(step.cases)
    if (step.do !== "work" && step.do !== "group") return false
    return step.place?.at === "next" && step.place.noun.betweenGroups === true
  })
}

/** "ch-2 and ch-5": the spaces an edge has. */
export function sizesThere(edge: Edge): string {
  const sizes = [
    ...new Set(edge.elements.map((element) => (element.type === "chain" ? element.chains : 0))),
  ]
    .filter((size) => size > 0)
    .sort((a, b) => a - b)
  return `spaces of ${sizes.slice(0, 4).join(", ")} chains`
}
