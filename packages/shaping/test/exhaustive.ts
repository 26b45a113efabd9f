// Every candidate round over half a side, for small cases: what the search is measured against.

import type { RoundRules } from "../src/candidates.ts"
import type { HalfEdge } from "../src/half-edge.ts"
import { OutlineModel, turnsCorner } from "../src/outline-model.ts"
import type { Palette } from "../src/palette.ts"
import { type HalfPlan, topsOfHalf } from "../src/plan.ts"
import { scoreWhole } from "../src/plan-score.ts"

/** Most stitches in one place along a side, as the search has it. */
const mostInPlace = 3

/** The best one-round plan of all, and how many there are. */
export function tryEverything(
  edge: HalfEdge,
  palette: Palette,
  rules: RoundRules,
): { best: HalfPlan | null; score: number; candidates: number } {
  const model = new OutlineModel(palette)
  const count = { bounded: 0 }
  let best: HalfPlan | null = null
  let score = Number.POSITIVE_INFINITY
  for (const tops of everyCount(edge, rules))
    for (const cornerChains of rules.cornerChains) {
      const corner = tops.at(-1)!
      if (edge.shape.cornerOn && cornerChains > 0 && corner % 2 === 1) continue
      if (
        rules.sharpCorners &&
        !(edge.shape.cornerOn && turnsCorner(corner, edge.feet.at(-1)!.chains, cornerChains))
      )
        continue
      const size = topsOfHalf(edge.shape, tops)
      if (size === 0) continue
      for (const heights of everyChoice(rules.kinds, size)) {
        const plan = { tops, heights, cornerChains }
        const own = scoreWhole(edge, [plan], model, count)
        if (own < score) {
          score = own
          best = plan
        }
      }
    }
  return { best, score, candidates: count.bounded }
}

function everyCount(edge: HalfEdge, rules: RoundRules): number[][] {
  const last = edge.feet.length - 1
  const choices = edge.feet.map((_, i) => {
    const most = i === last && edge.shape.cornerOn ? rules.mostInCorner : mostInPlace
    return Array.from({ length: most + 1 }, (_, n) => n)
  })
  return choices.reduce<number[][]>(
    (all, own) => all.flatMap((tops) => own.map((n) => [...tops, n])),
    [[]],
  )
}

function* everyChoice(kinds: readonly number[], length: number): Generator<number[]> {
  const index = new Array<number>(length).fill(0)
  while (true) {
    yield index.map((i) => kinds[i]!)
    let at = 0
    while (at < length && ++index[at]! === kinds.length) index[at++] = 0
    if (at === length) return
  }
}
