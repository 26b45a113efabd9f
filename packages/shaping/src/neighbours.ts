// Plans one small change away from a plan.

import { leavesSpace, type RoundRules } from "./candidates.ts"
import type { HalfEdge } from "./half-edge.ts"
import { turnsCorner } from "./outline-model.ts"
import { type HalfPlan, type HalfShape, shapeAfter, topsOfHalf } from "./plan.ts"
import { countReversals } from "./score.ts"
import { mostInPlace } from "./spreads.ts"

/** Plans that differ in the height of one stitch, in the corner chains, or in the stitches of a place of the last round. */
export function* neighboursOf(
  start: HalfEdge,
  rounds: readonly HalfPlan[],
  rules: readonly RoundRules[],
): Generator<readonly HalfPlan[]> {
  for (const changed of everyNeighbour(start, rounds, rules)) {
    const r = changed.findIndex((round, i) => round !== rounds[i])
    if (r === 0 && leavesSpace(start, changed[0]!.tops)) continue
    if (keepsGrading(changed[r]!, rounds[r]!, rules[r]!)) yield changed
  }
}

/** A graded round goes on rising or falling only, a plain one keeps one height and its places along the side. */
function keepsGrading(changed: HalfPlan, before: HalfPlan, { grading }: RoundRules): boolean {
  if (grading === "any") return true
  if (countReversals(changed.heights) > 0) return false
  if (grading === "graded") return true
  const last = changed.tops.length - 1
  return (
    changed.heights.every((height) => height === changed.heights[0]) &&
    changed.tops.every((count, i) => i === last || count === before.tops[i])
  )
}

function* everyNeighbour(
  start: HalfEdge,
  rounds: readonly HalfPlan[],
  rules: readonly RoundRules[],
): Generator<readonly HalfPlan[]> {
  for (const [r, plan] of rounds.entries()) {
    const { kinds, cornerChains } = rules[r]!
    const withPlan = (changed: HalfPlan) => rounds.map((round, i) => (i === r ? changed : round))
    if (rules[r]!.grading === "plain")
      for (const other of kinds)
        if (other !== plan.heights[0])
          yield withPlan({ ...plan, heights: plan.heights.map(() => other) })
    for (const [j, height] of plan.heights.entries()) {
      const place = kinds.indexOf(height)
      for (const other of [kinds[place - 1], kinds[place + 1]])
        if (other !== undefined)
          yield withPlan({
            ...plan,
            heights: plan.heights.map((h, i) => (i === j ? other : h)),
          })
    }
    if (plan.cornerChains > 0)
      for (const chains of cornerChains)
        if (chains > 0 && Math.abs(chains - plan.cornerChains) === 1)
          yield withPlan({ ...plan, cornerChains: chains })
    if (r < rounds.length - 1) continue
    const shape = rounds.slice(0, -1).reduce<HalfShape>(shapeAfter, start.shape)
    const below = rounds.length === 1 ? start.feet.at(-1)!.chains : rounds[r - 1]!.cornerChains
    for (const changed of withOtherCounts(plan, shape))
      if (allowed(changed, shape, rules[r]!, below)) yield withPlan(changed)
  }
}

/** So few places along half a side that stitches are also moved between any two of them. */
const fewPlaces = 4

/** One stitch more or fewer in one place, or moved from a place to another; heights as of the stitch beside. */
function* withOtherCounts(plan: HalfPlan, shape: HalfShape): Generator<HalfPlan> {
  const n = plan.tops.length
  const steps = (i: number) =>
    (i === 0 && shape.midOn) || (i === n - 1 && shape.cornerOn) ? [-2, -1, 1, 2] : [-1, 1]
  for (let i = 0; i < n; i++)
    for (const by of steps(i)) {
      const one = withCount(plan, shape, i, by)
      if (one === null) continue
      yield one
      if (n > fewPlaces) continue
      for (let j = 0; j < n; j++)
        if (j !== i)
          for (const back of steps(j))
            if (back * by < 0) {
              const two = withCount(one, shape, j, back)
              if (two !== null) yield two
            }
    }
}

function withCount(plan: HalfPlan, shape: HalfShape, place: number, by: number): HalfPlan | null {
  const count = plan.tops[place]! + by
  if (count < 0) return null
  const tops = plan.tops.map((own, i) => (i === place ? count : own))
  const before = topsOfHalf(shape, plan.tops)
  const change = topsOfHalf(shape, tops) - before
  if (before + change === 0) return null
  const first = ownStart(shape, plan.tops, place)
  const heights = [...plan.heights]
  for (let k = 0; k < Math.abs(change); k++)
    if (change > 0) heights.splice(first, 0, heights[Math.min(first, heights.length - 1)]!)
    else heights.splice(first, 1)
  return { ...plan, tops, heights }
}

/** Index in the heights of a place's first stitch. */
function ownStart(shape: HalfShape, tops: readonly number[], place: number): number {
  let at = 0
  for (let i = 0; i < place; i++) at += i === 0 && shape.midOn ? (tops[i]! + 1) >> 1 : tops[i]!
  return at
}

function allowed(plan: HalfPlan, shape: HalfShape, rules: RoundRules, below: number): boolean {
  const last = plan.tops.length - 1
  const corner = plan.tops[last]!
  if (shape.cornerOn) {
    if (plan.cornerChains > 0 && corner % 2 === 1) return false
    if (corner < 1 || corner > rules.mostInCorner) return false
    if (rules.sharpCorners && !turnsCorner(corner, below, plan.cornerChains)) return false
  }
  return plan.tops.every((count, i) => (i === last && shape.cornerOn) || count <= mostInPlace)
}
