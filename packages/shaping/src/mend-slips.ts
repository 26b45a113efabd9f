// How likely a slip is: one stitch, one chain, one step of height or one repeat is soon miscounted, more of them seldom,
// and a whole round or all stitches of a piece seldomer still. In the unit of the misfit (mend-fault.ts).

import type { ElementChange } from "@roundwright/flatness"
import { yarnOvers } from "@roundwright/stitches"
import type { RoundFacts } from "./mend-summary.ts"

/** Weights of slips, in misfit; chosen with those of the pattern on mend trials with seeds below 1000. */
export const shapeWeight = 1
const perChain = 0.02
const perStitch = 0.06
const perStep = 0.03
const perShare = 0.15
const anotherPlan = 0.12
const wholeRound = 0.1
const allStitches = 0.12
const anotherHook = 0.05

/** How much less likely a slip is than one by a single stitch, chain or step of height, in misfit. */
export function slipCost(change: ElementChange, own: RoundFacts): number {
  switch (change.kind) {
    case "chains":
      return perChain * (Math.abs(change.to - change.from) - 1)
    case "group":
      return perStitch * (Math.abs(change.to - change.from) - 1)
    case "stitch": {
      const away = yarnOvers(change.to.basic) - yarnOvers((change.from ?? own.kind).basic)
      return perStep * Math.max(0, Math.abs(away) - 1)
    }
    case "count":
      return perShare * (Math.abs(change.stitches - own.stitches) / Math.max(1, own.stitches))
    case "increase":
      return anotherPlan
    default:
      return 0
  }
}

/** What a maker minds beyond the stitches made anew, in misfit: a round more or fewer, another hook, all stitches others. */
export function upheaval({ kind }: ElementChange): number {
  if (kind === "drop-round" || kind === "add-round") return wholeRound
  if (kind === "terms") return allStitches
  return kind === "hook" ? anotherHook : 0
}
