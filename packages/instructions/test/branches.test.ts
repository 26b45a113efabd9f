// A try that fails leaves nothing behind: whatever way a round has been worked in, the usual way comes to the same
// afterwards, and the rounds before are as they were.

import type { Round } from "@roundwright/motif"
import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { CannotWork } from "../src/base/cannot-work.ts"
import { mostStepsPerText } from "../src/base/limits.ts"
import type { Step } from "../src/base/tree.ts"
import { centreEdge, roundEdge } from "../src/edge/edge.ts"
import { readWords, type TreeReading } from "../src/grammar/read-words.ts"
import { readPattern } from "../src/index.ts"
import { readFoundation } from "../src/readings/foundation.ts"
import { otherReadingsOf, workRoundAs } from "../src/readings/read-round.ts"
import type { RoundRequest } from "../src/readings/round-result.ts"
import { layOut } from "../src/text/layout.ts"
import { readProse } from "../src/text/prose.ts"
import { readSource } from "../src/text/source-text.ts"
import { Choices } from "../src/work/choices.ts"
import { performers } from "../src/work/perform.ts"
import { RoundWork } from "../src/work/round-work.ts"
import { comesTo } from "./help.ts"
import { soundPatterns } from "./mutate.ts"
import * as nets from "./varied-nets.ts"
import * as squares from "./varied-squares.ts"
import { patterns as ukPatterns } from "./varied-uk.ts"
import { patterns as usPatterns } from "./varied-us.ts"
import { patterns as morePatterns } from "./varied-us-more.ts"

const texts = [
  ...soundPatterns,
  ...[usPatterns, morePatterns, ukPatterns, squares.us, squares.uk, nets.us, nets.uk].flatMap(
    (set) => set.map(({ text }) => text),
  ),
]

/** Trees of one round that are tried, the likeliest first. */
const mostTrees = 3

/** A round of a text, as it is asked to be worked on the rounds before it; null where the text has no such round. */
function requestOf(text: string, nth: number, tree: number): RoundRequest | null {
  const { motif, terms } = readPattern(text)
  const layout = layOut(readSource(text))
  const prose = readProse(layout, terms)
  const at = nth % Math.max(1, layout.rounds.length)
  const round = layout.rounds[at]
  if (!round || at > motif.rounds.length) return null
  const words = readWords(layout.clean, round.bodyStart, round.end, terms, prose.locals)
  const trees: TreeReading[] = []
  for (const found of words.trees()) {
    if (found.steps.length > 0) trees.push(found)
    if (trees.length >= mostTrees) break
  }
  const chosen = trees[tree % Math.max(1, trees.length)]
  if (!chosen) return null
  return {
    shared: {
      rounds: frozen(motif.rounds.slice(0, at)),
      centre: null,
      budget: { stepsLeft: mostStepsPerText },
      startCounts: prose.startCounts,
      saidCounts: new Map(),
    },
    index: at,
    number: round.label.from,
    tree: chosen,
    foundation: at === 0 ? readFoundation([...prose.foundation, ...chosen.steps], false) : null,
    turned: false,
    row: false,
    span: { start: round.start, end: round.end },
  }
}

/** Writing to any part of it throws. */
function frozen(rounds: readonly Round[]): readonly Round[] {
  const freeze = (value: unknown): void => {
    if (typeof value !== "object" || value === null || Object.isFrozen(value)) return
    Object.freeze(value)
    Object.values(value).forEach(freeze)
  }
  freeze(rounds)
  return rounds
}

function workOf({ shared, index, number }: RoundRequest, steps: readonly Step[]): RoundWork {
  const below = shared.rounds[index - 1]
  const edge = below ? roundEdge(below, index - 1, false) : centreEdge({ kind: "adjustable-ring" })
  return new RoundWork(shared, index, number, edge, new Choices(), steps, performers)
}

/** False where the steps could not be worked to the end. */
function attempt(work: RoundWork, steps: readonly Step[]): boolean {
  try {
    performers.steps(work, steps)
    return true
  } catch (stop) {
    if (!(stop instanceof CannotWork)) throw stop
    return false
  }
}

/** All of a round in work that its steps change, but for what is only counted up: steps taken, choices asked. */
function stateOf(work: RoundWork): unknown {
  const { shared: _shared, steps: _steps, choices: _choices, main, used, others, ...rest } = work
  const { allSteps: _all, performers: _performers, ...changed } = rest
  return structuredClone({
    ...changed,
    at: [main.at, main.base],
    used: used.map(({ from, to, use, edge }) => [from, to, use, edge.round]),
    others: [...others].map(([round, { at, base }]) => [round, at, base]),
  })
}

describe("a way of working a round", () => {
  it("leaves the usual way, and the rounds before, as they were", () => {
    let worked = 0
    fc.assert(
      fc.property(
        fc.nat(texts.length - 1),
        fc.nat(12),
        fc.nat(mostTrees - 1),
        fc.array(fc.nat(40), { minLength: 1, maxLength: 4 }),
        (text, nth, tree, ways) => {
          const request = requestOf(texts[text]!, nth, tree)
          if (!request) return
          worked += 1
          const before = structuredClone(request.shared.rounds)
          const usual = workRoundAs(request, new Map())
          const others = otherReadingsOf(request)
          for (const way of ways)
            if (others.length > 0) workRoundAs(request, others[way % others.length]!)
          expect(workRoundAs(request, new Map())).toEqual(usual)
          expect(request.shared.rounds).toEqual(before)
        },
      ),
      { numRuns: 400, seed: 3 },
    )
    expect(worked).toBeGreaterThan(300)
  }, 300_000)

  it("is taken back whole to a mark, wherever the round stood and whatever was tried", () => {
    let tried = 0
    fc.assert(
      fc.property(
        fc.nat(texts.length - 1),
        fc.nat(12),
        fc.nat(8),
        fc.nat(8),
        fc.nat(8),
        (text, nth, done, from, count) => {
          const request = requestOf(texts[text]!, nth, 0)
          if (!request) return
          const { steps } = request.foundation ?? request.tree
          const work = workOf(request, steps)
          if (!attempt(work, steps.slice(0, done % (steps.length + 1)))) return
          const before = stateOf(work)
          const mark = work.mark()
          attempt(work, steps.slice(from % steps.length).slice(0, count))
          tried += 1
          work.backTo(mark)
          expect(stateOf(work)).toEqual(before)
        },
      ),
      { numRuns: 600, seed: 5 },
    )
    expect(tried).toBeGreaterThan(300)
  }, 300_000)

  it("leaves no chains between stitches where a repeat breaks off", () => {
    comesTo(
      "9/12/6",
      "7 dc in magic ring; join.",
      "*dc in next 2 sts with ch 2 between; rep from * around, ending 3 dc in last st.",
    )
  })
})
