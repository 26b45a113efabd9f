// How likely a slip is: one stitch, one chain, one step of height or one repeat is soon miscounted, more of them seldom,
// and a whole round or all stitches of a piece seldomer still. In the unit of the misfit (mend-fault.ts).

import type { ElementChange } from "@roundwright/flatness"
import { type Terms, yarnOvers } from "@roundwright/stitches"
import type { RoundFacts } from "./mend-summary.ts"

/** Weights of slips, in misfit; chosen with those of the pattern on mend trials with seeds below 1000. */
export const shapeWeight = 0.7
const perChain = 0.03
const perStitch = 0.06
const perStep = 0.03
const perShare = 0.3
const anotherPlan = 0.12
const perRegrown = 0.05
const wholeRound = 0.1
const stoppedShort = 0.1
const mistakenTerms = 0.02
const allStitches = 0.2
const anotherHook = 0.05

/**
 * How much less likely a slip is than one by a single stitch, chain or step of height, in misfit.
 * @param index of the round that is changed first
 */
export function slipCost(
  change: ElementChange,
  index: number,
  facts: readonly RoundFacts[],
): number {
  const own = facts[index]!
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
      return anotherPlan + perRegrown * regrown(change.perRound, index, facts)
    case "drop-round":
      // A piece that ends a round sooner has its fault no longer, and is not mended.
      return index === facts.length - 1 ? stoppedShort : 0
    default:
      return 0
  }
}

/** How many growths the piece has that become another one: a plan that grew evenly has one. */
function regrown(perRound: number, index: number, facts: readonly RoundFacts[]): number {
  const count = (round: number): number => facts[round]?.stitches ?? 0
  const growths = facts.map((_, r) => count(r) - count(r - 1)).slice(index)
  return new Set(growths.filter((growth) => growth !== perRound)).size
}

/**
 * What a maker minds beyond the stitches made anew, in misfit: a round more or fewer, another hook, all stitches others.
 * Terms mistaken for the other ones are one slip alone.
 */
export function upheaval(change: ElementChange, terms: Terms): number {
  const { kind } = change
  if (kind === "drop-round" || kind === "add-round") return wholeRound
  if (kind === "terms") return areMistaken(terms, change.by) ? mistakenTerms : allStitches
  return kind === "hook" ? anotherHook : 0
}

/** A pattern in UK terms taken for US comes out a step too tall, one in US terms taken for UK a step too low. */
export function areMistaken(terms: Terms, by: 1 | -1): boolean {
  return terms === "US" ? by < 0 : by > 0
}
