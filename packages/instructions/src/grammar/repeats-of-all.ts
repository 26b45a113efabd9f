// "Repeat around" with no mark: where the repeat begins is not said, so every likely beginning is a reading.

import type { Step, Times } from "../base/tree.ts"
import { namesNext } from "./bracket-repeats.ts"
import type { Chart, Clause, Remark } from "./chart.ts"
import { clause, isUnplaced } from "./clauses.ts"
import { eachInTurn } from "./in-turn.ts"
import { readEnding } from "./repeat-endings.ts"

/** "in each st: 2 dc; repeat around": it goes round by itself. */
function goesRound(steps: readonly Step[]): boolean {
  return steps.every(
    (step) => (step.do === "work" || step.do === "group") && step.place?.at === "each",
  )
}

/** All that was said, repeated: a reading for every place where the repeat may begin, the likeliest first. */
export function repeatsOfAll(
  chart: Chart,
  at: number,
  times: Times,
  unmarked: boolean,
  cost: number,
): readonly Clause[] {
  const { cursor } = chart
  const opening = chart.lexemes[at]!
  const end = cursor.lastEnd()
  const remarks: Remark[] = unmarked
    ? [{ code: "repeat-start-missing", start: opening.start, end }]
    : []
  const ending = readEnding(chart, { steps: [], markAt: null })
  const tail = ending?.last && ending.how === "follows" ? ending.last : null
  const repeatOf = (body: readonly Step[]): Step => ({
    start: body[0]!.start,
    end,
    do: "repeat",
    body,
    last: tail,
    ending: tail ? "follows" : null,
    times,
  })
  return [
    clause(
      cursor,
      (before) => {
        const body = repeated(before)
        if (!body || (unmarked && beginsWithLoop(before))) return null
        const first = before.length - body.length
        if (times.kind === "until" && goesRound(body)) return before
        return [...before.slice(0, first), repeatOf(eachInTurn(body))]
      },
      0.15 + cost,
      { remarks },
    ),
    // "sc in first st, ch 4, skip 1, sc in next st; repeat around": the first of them is where the round begins.
    clause(
      cursor,
      (before) => {
        const work = before.findIndex((step) => step.do === "work" || step.do === "group")
        const chain = work + 1
        if (work < 0 || before[chain]?.do !== "chain" || before.length < chain + 2) return null
        const body = before.slice(chain)
        if (!body.some((step) => step.do === "work" || step.do === "group")) return null
        return [...before.slice(0, chain), repeatOf(body)]
      },
      0.2 + cost,
      { remarks },
    ),
    // "ch 3, 2 dc in same sp. Ch 1, 3 dc in next sp, repeat": what the start is made of is not repeated.
    clause(
      cursor,
      (before) => {
        const from = afterStart(before)
        const body = before.slice(from)
        if (from === 0 || !body.some(namesNext)) return null
        return [...before.slice(0, from), repeatOf(body)]
      },
      0.14 + cost,
      { remarks },
    ),
    // "ch 3, 2 dc in ring, ch 2, 3 dc in ring, ch 2; repeat": the start is the first of them.
    clause(
      cursor,
      (before) => {
        if (/^[)\]}]$/.test(chart.lexemes[at - 1]?.text ?? "")) return null
        const from = afterFirstGroup(before)
        return from > 0 ? [...before.slice(0, from), repeatOf(before.slice(from))] : null
      },
      0.13 + cost,
      { remarks },
    ),
    // "In any loop: sl st, ch 3, 2 dc, ch 3, sl st, ch 1. Repeat this around": the petal goes into every loop.
    clause(
      cursor,
      (before) => {
        const body = petalInLoop(before)
        return body && [before[0]!, repeatOf(body)]
      },
      0.1 + cost,
      { remarks },
    ),
    // With the chains it begins with: "ch 6, sc in next loop, ch 6, sc in next loop, repeat all around".
    clause(
      cursor,
      (before) => {
        const first = before.findIndex((step) => step.do === "chain")
        const from = before.findIndex((step) => step.do === "work" || step.do === "group")
        if (first < 0 || from < first || (before[first]?.do === "chain" && before[first].countsAs))
          return null
        const body = shortestPeriod(before.slice(first))
        return [...before.slice(0, first), repeatOf(body)]
      },
      unmarked ? 0.16 : 0.3,
      { remarks },
    ),
    // The repeat may begin where a sentence does.
    ...sentencesBefore(chart, at).map((from, i) =>
      clause(
        cursor,
        (before) => {
          const first = before.findIndex((step) => step.start >= from)
          const body = first > 0 ? before.slice(first) : []
          if (!body.some((step) => step.do === "work" || step.do === "group")) return null
          return [...before.slice(0, first), repeatOf(body)]
        },
        0.22 + cost + 0.02 * i,
        { remarks },
      ),
    ),
    // The mark is lost: the repeat may begin at any step after the first.
    ...(unmarked ? [1, 2, 3, 4, 5, 6] : []).map((skip) =>
      clause(
        cursor,
        (before) => {
          const body = repeated(before)?.slice(skip)
          if (!body || body.length === 0) return null
          return [...before.slice(0, before.length - body.length), repeatOf(body)]
        },
        0.18 + 0.02 * skip,
        { remarks },
      ),
    ),
    // Loops and stitches in turn: the chains it begins with are the first of the loops.
    clause(
      cursor,
      (before) => {
        const first = before.findIndex((step) => step.do === "chain")
        const list = before.slice(first)
        if (first < 0 || list.length < 4 || list.length % 2 > 0) return null
        const inTurn = list.every((step, i) => step.do === (i % 2 === 0 ? "chain" : "work"))
        if (
          !inTurn ||
          list[0]?.do !== "chain" ||
          list[0].countsAs ||
          !list.every((step) => step.do !== "chain" || step.chains >= 3)
        )
          return null
        const body = shortestPeriod(list)
        return [...before.slice(0, first), repeatOf(body)]
      },
      0.1,
      { remarks },
    ),
    // Only the last of them may be meant.
    clause(
      cursor,
      (before) => {
        const last = before[before.length - 1]
        if (!last || before.length < 2 || (last.do !== "work" && last.do !== "group")) return null
        return [
          ...before.slice(0, -1),
          { start: last.start, end, do: "repeat", body: [last], last: null, ending: null, times },
        ]
      },
      0.7,
      { remarks },
    ),
  ]
}

/** "A, A, repeat": A is what is repeated. */
function shortestPeriod(steps: readonly Step[]): readonly Step[] {
  const half = steps.length / 2
  if (!Number.isInteger(half)) return steps
  const alike = steps.slice(0, half).every((step, i) => isAlike(step, steps[half + i]!))
  return alike ? steps.slice(0, half) : steps
}

function isAlike(a: Step, b: Step): boolean {
  if (a.do === "chain") return b.do === "chain" && a.chains === b.chains
  if (
    a.do !== "work" ||
    b.do !== "work" ||
    a.count !== b.count ||
    a.stitch.kind.basic !== b.stitch.kind.basic
  )
    return false
  return a.place?.at !== "next" || b.place?.at !== "next" || a.place.noun.what === b.place.noun.what
}

/** The steps that a repeat without a mark is of: those after the start of the round. */
function repeated(before: readonly Step[]): readonly Step[] | null {
  const first = before.findIndex(
    (step) =>
      step.do === "work" || step.do === "group" || step.do === "repeat" || step.do === "skip",
  )
  if (first < 0) return null
  return before.slice(first)
}

/** New yarn in a loop, then a list from slip stitch to slip stitch: a petal, and the chains that lead to the next. */
function petalInLoop([start, ...list]: readonly Step[]): readonly Step[] | null {
  if (start?.do !== "attach" || start.place?.at !== "next" || start.place.noun.what !== "space")
    return null
  const chains = list[list.length - 1]?.do === "chain" ? list.slice(-1) : []
  const petal = chains.length > 0 ? list.slice(0, -1) : list
  const [first, last] = [petal[0], petal[petal.length - 1]]
  if (first?.do !== "slip" || last?.do !== "slip" || petal.length < 3) return null
  if (first.place || last.place || !petal.slice(1, -1).every(isUnplaced)) return null
  const { order: _order, ...place } = start.place
  return [
    { start: first.start, end: last.end, do: "group", steps: petal, place: { ...place, count: 1 } },
    ...chains,
  ]
}

/** "ch 3, 2 sc in next sp, ...": as high as no single crochet is, so the chains are a loop and repeated too. */
function beginsWithLoop([loop, first]: readonly Step[]): boolean {
  if (loop?.do !== "chain" || loop.chains < 2 || loop.countsAs || first?.do !== "work") return false
  return first.stitch.kind.basic === "sc" && first.place?.at === "next"
}

/** How many steps a first group takes: its chain, a stitch fewer than the next has, and the chains; 0 where none does. */
function afterFirstGroup(before: readonly Step[]): number {
  const chain = before.findIndex((step) => step.do === "chain")
  const [start, first, space, next] = before.slice(chain)
  if (start?.do !== "chain" || first?.do !== "work" || space?.do !== "chain") return 0
  const alike =
    next?.do === "work" &&
    next.stitch.kind.basic === first.stitch.kind.basic &&
    next.count === first.count + 1
  return alike ? chain + 3 : 0
}

function goesSame(step: Step): boolean {
  return (step.do === "work" || step.do === "group") && step.place?.at === "same"
}

/** How many steps the start of the round takes: the way to it, its chain, and what goes into the same place. */
function afterStart(before: readonly Step[]): number {
  const chain = before.findIndex((step) => step.do !== "slip" && step.do !== "attach")
  if (before[chain]?.do !== "chain") return 0
  let from = chain + 1
  let works = 0
  for (; from < before.length; from++) {
    const step = before[from]!
    const same = goesSame(step)
    if (step.do === "note-counts") continue
    // "ch 3, 2 dc, ch 2, 3 dc in same sp": the chain stands inside what goes there.
    if (step.do === "chain" && before.slice(from + 1, from + 3).some(goesSame)) continue
    if (!same && !(step.do === "work" && isUnplaced(step))) break
    works += 1
  }
  return works > 0 ? from : 0
}

/** Where the last few sentences before the word "repeat" begin, the nearest first. */
function sentencesBefore(chart: Chart, at: number): number[] {
  const found: number[] = []
  for (let k = at - 2; k > 0 && found.length < mostSentences; k--)
    if (/^[.;]$/.test(chart.lexemes[k - 1]!.text)) found.push(chart.lexemes[k]!.start)
  return found
}

/** A repeat hardly goes back further. */
const mostSentences = 3
