// "*dc in ring, ch 1; rep from * around. (12 dc)": in a ring nothing is used up, and the stated total says how often.

import type { RoundTree, Step } from "../base/tree.ts"
import { workRound } from "./read-round.ts"
import type { RoundRequest, RoundResult } from "./round-result.ts"

type Repeat = Extract<Step, { do: "repeat" }>

/** The round with its endless repeat worked as often as its total wants; null where no number meets it. */
export function repeatedToTotal(
  request: RoundRequest,
): { request: RoundRequest; result: RoundResult } | null {
  const { tree, foundation } = request
  const steps = foundation?.steps ?? tree.steps
  const repeat = steps.find(isEndless)
  if (!repeat) return null
  const worked = (count: number): { request: RoundRequest; result: RoundResult } => {
    const told = steps.map(
      (step): Step => (step === repeat ? { ...repeat, times: { kind: "total", count } } : step),
    )
    const counted: RoundRequest = {
      ...request,
      tree: { ...tree, steps: told },
      foundation: foundation && { ...foundation, steps: told },
    }
    return { request: counted, result: workRound(counted) }
  }
  const [once, twice] = [worked(1), worked(2)].map(({ result }) => stitchesOf(result))
  if (once === undefined || twice === undefined || twice <= once) return null
  for (const stated of firmCounts(tree)) {
    const count = 1 + (stated - once) / (twice - once)
    if (!Number.isInteger(count) || count < 2) continue
    const found = worked(count)
    if (found.result.round && found.result.comparison.agrees === true) return found
  }
  return null
}

function isEndless(step: Step): step is Repeat {
  return step.do === "repeat" && step.times.kind === "until" && step.times.until.kind === "around"
}

function stitchesOf({ round }: RoundResult): number | undefined {
  return round?.elements.filter(({ type }) => type === "stitch").length
}

function firmCounts({ totals }: RoundTree): number[] {
  return totals.flatMap(({ items, firm }) => (firm ? items.map(({ count }) => count) : []))
}
