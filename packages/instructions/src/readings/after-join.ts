// What is told after the join of a round begins the next one: "join, ch 3, turn", "join. Sl st to next ch-2 sp".

import { makesStitches } from "../account/idle-steps.ts"
import type { Finding } from "../base/problem-list.ts"
import type { RoundTree, Step } from "../base/tree.ts"
import { plural } from "../base/wording.ts"
import { intoSameSpace } from "../grammar/same-space.ts"

/** The tree with the chains and slip stitches after its join set apart. */
export function apartFromNext(tree: RoundTree): RoundTree {
  const joined = tree.steps.findLastIndex(joins)
  const after = tree.steps.slice(joined + 1)
  const works = tree.steps.slice(0, Math.max(0, joined)).some(makesStitches)
  const next = after.filter(begins)
  if (!works || next.length === 0 || !after.every((step) => begins(step) || staysBehind(step)))
    return tree
  const steps = [...tree.steps.slice(0, joined + 1), ...after.filter(staysBehind)]
  return { ...tree, steps, next }
}

/** All that the round tells, in the order told: for rounds worked like it. */
export function withNext({ steps, totals, next = [] }: RoundTree): RoundTree {
  return { steps: [...steps, ...next], totals }
}

/** The tree with what the round before told of its beginning, unless it tells its own. */
export function begunBy(carried: readonly Step[], tree: RoundTree): RoundTree {
  const first = tree.steps.find(({ do: what }) => what !== "mode" && what !== "turn")
  if (carried.length === 0 || !first || first.do === "attach") return tree
  const own = tree.steps.slice(0, tree.steps.findIndex(makesStitches))
  const kept = carried.filter(({ do: what }) => !own.some((step) => step.do === what))
  return kept.length === 0 ? tree : { ...tree, steps: intoSameSpace([...kept, ...tree.steps]) }
}

/** "join, ch 3; turn" before a round that begins with ch 1: the chains of the join are not made. */
export function otherChainsBegun(carried: readonly Step[], tree: RoundTree): Finding[] {
  const own = tree.steps.find((step) => step.do === "chain" || makesStitches(step))
  const chain = carried.find(({ do: what }) => what === "chain")
  if (own?.do !== "chain" || chain?.do !== "chain" || own.chains === chain.chains) return []
  return [
    {
      severity: "note",
      code: "step-without-effect",
      start: chain.start,
      end: chain.end,
      message: `The next round begins with ${plural(own.chains, "chain", "chains")} of its own; these are not made.`,
      hint: "",
    },
  ]
}

function joins(step: Step): boolean {
  if (step.do === "join") return !step.ring
  return step.do === "slip" && step.place?.at === "made"
}

function begins(step: Step): boolean {
  return step.do === "chain" || (step.do === "slip" && step.place?.at !== "made")
}

function staysBehind({ do: what }: Step): boolean {
  return what === "turn" || what === "mode"
}
