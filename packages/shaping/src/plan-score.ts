// The score of a whole plan by the fast model.

import type { HalfEdge } from "./half-edge.ts"
import type { ModelledRound, OutlineModel } from "./outline-model.ts"
import type { HalfPlan } from "./plan.ts"
import { countReversals, scoreOf } from "./score.ts"

export interface SearchCount {
  /** Candidate rounds that were laid out by the model. */
  bounded: number
}

/** The score of a finished plan by the fast model. */
export function scorePlan(
  laid: ModelledRound,
  strainEnergy: number,
  rounds: readonly HalfPlan[],
  half: number,
): number {
  return scoreLaid(laid, strainEnergy, easeOf(rounds), half)
}

export function scoreLaid(
  laid: ModelledRound,
  strainEnergy: number,
  ease: Ease,
  half: number,
): number {
  const side = 2 * laid.cornerMm * Math.sin(half)
  return scoreOf({
    bow: laid.bowMm / side,
    uneven: laid.unevenMm / side,
    angleOffDeg: 0,
    fullnessOff: laid.fullness - 1,
    strainEnergy,
    kinds: countBits(ease.used),
    reversals: ease.reversals,
    skips: ease.skips,
    runs: ease.runs,
  })
}

/** What makes a plan easy to follow: few stitches (one bit each), one direction of grading, no gaps. */
export interface Ease {
  readonly used: number
  readonly reversals: number
  readonly skips: number
  readonly runs: number
}

const noRounds: Ease = { used: 0, reversals: 0, skips: 0, runs: 0 }

export function easeOf(rounds: readonly HalfPlan[]): Ease & { readonly kinds: number } {
  const ease = rounds.reduce(addEase, noRounds)
  return { ...ease, kinds: countBits(ease.used) }
}

/** The ease of one round more. */
export function addEase(ease: Ease, { heights, tops }: HalfPlan): Ease {
  let { used, skips } = ease
  for (const height of heights) used |= 1 << height
  for (const count of tops) if (count === 0) skips++
  return {
    used,
    skips,
    reversals: ease.reversals + countReversals(heights),
    runs: ease.runs + countRuns(tops, heights),
  }
}

/** Changes of stitch or count along the half side, the corner's own left out. */
function countRuns(tops: readonly number[], heights: readonly number[]): number {
  let runs = 0
  for (let i = 1; i < heights.length; i++) if (heights[i] !== heights[i - 1]) runs++
  for (let i = 1; i + 1 < tops.length; i++) if (tops[i] !== tops[i - 1]) runs++
  return runs
}

function countBits(bits: number): number {
  let count = 0
  for (let rest = bits; rest !== 0; rest &= rest - 1) count++
  return count
}

/** Lays out and scores a whole plan; infinite when a round does not fit the edge below it. */
export function scoreWhole(
  start: HalfEdge,
  rounds: readonly HalfPlan[],
  model: OutlineModel,
  count: SearchCount,
): number {
  let edge = start
  let strainEnergy = 0
  for (const [index, plan] of rounds.entries()) {
    count.bounded++
    const laid = model.lay(edge, plan)
    strainEnergy += laid.strainEnergy
    if (index === rounds.length - 1) return scorePlan(laid, strainEnergy, rounds, start.half)
    edge = model.edgeAfter(edge, plan)
  }
  return Number.POSITIVE_INFINITY
}
