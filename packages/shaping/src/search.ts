// The search: round after round of candidates over half a side, bounded by the fast model; of each
// round the best are kept in classes of how far the corner still lags behind, so that what is left for
// the next round stays varied; at the end the best whole plans are improved one change at a time.

import { eachCandidate, type RoundRules } from "./candidates.ts"
import type { HalfEdge } from "./half-edge.ts"
import { neighboursOf } from "./neighbours.ts"
import { type ModelledRound, OutlineModel } from "./outline-model.ts"
import type { Palette } from "./palette.ts"
import type { HalfPlan } from "./plan.ts"
import {
  addEase,
  easeOf,
  type SearchCount,
  scoreLaid,
  scorePlan,
  scoreWhole,
} from "./plan-score.ts"
import { remarkable } from "./score.ts"

export interface FoundPlan {
  readonly start: HalfEdge
  readonly rounds: readonly HalfPlan[]
  readonly score: number
}

/** Unfinished plans carried on, shared among the rounds still to come. */
const mostCarried = 24
/** Of these with about the same lag of the corner. */
const mostAlike = 3
/** A lag counts as the same within this many stitch widths. */
const lagClass = 0.4
/** Finished plans kept while searching. */
const mostFinished = 200
/** Finished plans that are improved further. */
const mostImproved = 16
/** Along half a side with more places than this each takes longer, and fewer are improved. */
const shortHalf = 8
/** The same where a single round is sought: each costs little then. */
const mostImprovedAlone = 60

interface Carried {
  readonly start: HalfEdge
  readonly edge: HalfEdge
  readonly rounds: readonly HalfPlan[]
  readonly strainEnergy: number
  readonly score: number
  readonly lagMm: number
}

/**
 * The best plans by the fast model, best first.
 * @param starts the edge below, in each way that a corner can fall on it
 * @param rules one for each round to work
 */
export function searchPlans(
  starts: readonly HalfEdge[],
  palette: Palette,
  rules: readonly RoundRules[],
  wanted: number,
  count: SearchCount = { bounded: 0 },
): FoundPlan[] {
  const model = new OutlineModel(palette)
  let carried: Carried[] = starts.map((start) => ({
    start,
    edge: start,
    rounds: [],
    strainEnergy: 0,
    score: 0,
    lagMm: 0,
  }))
  const finished: FoundPlan[] = []
  let cut = Number.POSITIVE_INFINITY
  rules.forEach((rule, index) => {
    const last = index === rules.length - 1
    const next: Carried[] = []
    for (const state of carried) {
      const before = easeOf(state.rounds)
      eachCandidate(state.edge, palette, rule, (plan) => {
        count.bounded++
        const laid = model.lay(state.edge, plan)
        const strainEnergy = state.strainEnergy + laid.strainEnergy
        if (last) {
          const score = scoreLaid(laid, strainEnergy, addEase(before, plan), state.edge.half)
          if (score < cut) {
            finished.push({ start: state.start, rounds: [...state.rounds, plan], score })
            if (finished.length >= 2 * mostFinished) cut = trim(finished)
          }
          return
        }
        const score = partialScore(laid, strainEnergy)
        if (!(score <= hopeless)) return
        const edge = model.edgeAfter(state.edge, plan)
        const lagMm = laid.cornerMm * Math.cos(edge.half) - laid.sideMm
        const rounds = [...state.rounds, plan]
        next.push({ start: state.start, edge, rounds, strainEnergy, score, lagMm })
      })
    }
    if (!last)
      carried = varied(next, palette.widthMm[0]!, Math.ceil(mostCarried / (rules.length - 1)))
  })
  const feet = Math.max(1, ...starts.map((start) => start.feet.length))
  const most = rules.length === 1 ? mostImprovedAlone : mostImproved
  const best = differentlySpread(finished.sort(byScore)).slice(
    0,
    Math.ceil(most * Math.min(1, shortHalf / feet)),
  )
  const improved = best.map((plan) => improve(plan, rules, model, count))
  return distinct([...improved, ...best].sort(byScore)).slice(0, wanted)
}

/**
 * The best last rounds over an edge as it was laid out, the rounds before it kept.
 * @param before the plan so far without its last round; its strains count in the score
 */
export function searchLastRound(
  edge: HalfEdge,
  before: readonly HalfPlan[],
  strainBefore: number,
  palette: Palette,
  rules: RoundRules,
  wanted: number,
  count: SearchCount,
): HalfPlan[] {
  const model = new OutlineModel(palette)
  const score = (plan: HalfPlan) => {
    count.bounded++
    const laid = model.lay(edge, plan)
    return scorePlan(laid, strainBefore + laid.strainEnergy, [...before, plan], edge.half)
  }
  let best: { plan: HalfPlan; score: number }[] = []
  eachCandidate(edge, palette, rules, (plan) => best.push({ plan, score: score(plan) }))
  best = best.sort(byScore).slice(0, wanted)
  const improved = best.map((start) => {
    let now = start
    for (let turn = 0; turn < mostTurns; turn++) {
      let better = now
      for (const [plan] of neighboursOf(edge, [now.plan], [rules])) {
        const own = score(plan!)
        if (own < better.score - leastGain) better = { plan: plan!, score: own }
      }
      if (better === now) break
      now = better
    }
    return now
  })
  const seen = new Set<string>()
  return [...improved, ...best].sort(byScore).flatMap(({ plan }) => {
    const key = JSON.stringify(plan)
    return seen.has(key) || !seen.add(key) ? [] : [plan]
  })
}

/** Beyond this an unfinished plan is torn or heaped up and no later round mends it. */
const hopeless = 40

function partialScore(laid: ModelledRound, strainEnergy: number): number {
  return (
    (2 * strainEnergy) / remarkable.strain ** 2 +
    ((laid.fullness - 1) / remarkable.fullness) ** 2 / 2
  )
}

/** Keeps the best of the finished plans; gives the score that a further one must beat. */
function trim(finished: FoundPlan[]): number {
  finished.sort(byScore)
  finished.length = mostFinished
  return finished.at(-1)!.score
}
function varied(states: Carried[], widthMm: number, most: number): Carried[] {
  const classes = new Map<string, number>()
  const kept: Carried[] = []
  for (const state of states.sort(byScore)) {
    const { cornerOn, midOn } = state.edge.shape
    const key = `${Math.round(state.lagMm / (lagClass * widthMm))}|${cornerOn}|${midOn}`
    const alike = classes.get(key) ?? 0
    if (alike >= mostAlike) continue
    classes.set(key, alike + 1)
    kept.push(state)
    if (kept.length === most) break
  }
  return kept
}

/** The best of the plans that differ only in heights: improving finds the heights again. */
function differentlySpread(plans: readonly FoundPlan[]): FoundPlan[] {
  const seen = new Set<string>()
  return distinct(plans).filter(({ start, rounds }) => {
    const spread = rounds.at(-1)!
    const key = JSON.stringify([start.shape, rounds.slice(0, -1), spread.tops, spread.cornerChains])
    return seen.has(key) ? false : seen.add(key)
  })
}

/** The last bits of sines and powers, in which engines differ, decide nothing: of alike plans the first found stays first. */
function byScore(a: { score: number }, b: { score: number }): number {
  return Math.round(a.score / scoreGrain) - Math.round(b.score / scoreGrain)
}

const scoreGrain = 1e-6

/** One change at a time - a stitch for the next taller or lower one - as long as one makes it better. */
function improve(
  plan: FoundPlan,
  rules: readonly RoundRules[],
  model: OutlineModel,
  count: SearchCount,
): FoundPlan {
  let best = plan
  for (let turn = 0; turn < mostTurns; turn++) {
    let better: FoundPlan | null = null
    for (const rounds of neighboursOf(best.start, best.rounds, rules)) {
      const score = scoreWhole(plan.start, rounds, model, count)
      if (score < (better ?? best).score - leastGain) better = { start: plan.start, rounds, score }
    }
    if (better === null) break
    best = better
  }
  return best
}

const mostTurns = 12
/** A gain below this is rounding. */
const leastGain = 1e-9
/** Plans with the same rounds before the last are alike: the laid-out shape shall have others to choose from. */
const mostSameBeginning = 2

function distinct(plans: readonly FoundPlan[]): FoundPlan[] {
  const seen = new Set<string>()
  const beginnings = new Map<string, number>()
  return plans.filter(({ start, rounds }) => {
    const key = JSON.stringify([start.shape, start.feet.length, rounds])
    if (seen.has(key)) return false
    seen.add(key)
    if (rounds.length === 1) return true
    const beginning = JSON.stringify([start.shape, rounds.slice(0, -1)])
    const same = beginnings.get(beginning) ?? 0
    beginnings.set(beginning, same + 1)
    return same < mostSameBeginning
  })
}
