// Lists repeated without a mark: "sc 1, inc 1; repeat around", "1 sc, inc x6".

import type { Place, Step, Times } from "../base/tree.ts"
import type { Chart, Clause, Remark } from "./chart.ts"
import { clause, isUnplaced } from "./clauses.ts"
import { asPasses } from "./passes.ts"
import { readEnding } from "./repeat-endings.ts"
import { isRepeatMark } from "./repeat-marks.ts"
import { readTimes } from "./until.ts"

/** "*1 dc in first st, 2 dc in second st; rep from *": inside a repeat the first, second, third are the next in turn. */
export function inTurn(steps: readonly Step[]): readonly Step[] {
  let turn = 0
  const changed = steps.map((step): Step => {
    if (step.do !== "work" || step.place?.at !== "next" || step.place.noun.what !== "stitch")
      return step
    const { place } = step
    const plain: Place = {
      start: place.start,
      end: place.end,
      at: "next",
      noun: place.noun,
      count: 1,
    }
    const first = place.order === "first" && place.count === 1 && place.pick === undefined
    if (first ? turn !== 0 : turn === 0 || place.pick !== turn + 1 || place.count !== turn + 1)
      return step
    turn += 1
    return { ...step, place: plain }
  })
  return turn >= 2 ? changed : steps
}

/** "in first loop", repeated: each time the next of them. */
export function inTurnPlace(place: Place): Place {
  if (place.at !== "next" || place.order !== "first" || place.pick !== undefined) return place
  const { order: _order, ...next } = place
  return next
}

function eachInTurn(steps: readonly Step[]): readonly Step[] {
  const placed = steps.filter((step) => "place" in step && step.place)
  if (placed.length !== 1) return steps
  return steps.map((step) =>
    (step.do === "work" || step.do === "group") && step.place
      ? { ...step, place: inTurnPlace(step.place) }
      : step,
  )
}

/** "in each st: 2 dc; repeat around": it goes round by itself. */
function goesRound(steps: readonly Step[]): boolean {
  return steps.every(
    (step) => (step.do === "work" || step.do === "group") && step.place?.at === "each",
  )
}

/** "sc 1, inc 1; repeat around", "rep from *" without a mark: all that was said, the start of the round left out. */
export function repeatAll(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  cursor.at += 1
  cursor.accept("this", "these", "that")
  cursor.accept("sequence", "pattern", "steps", "instructions", "last", "step")
  const unmarked = cursor.attempt(() => {
    if (!cursor.accept("from", "between")) return null
    const mark = cursor.text()
    if (!isRepeatMark(mark))
      return cursor.accept("beginning", "start", "beg") ||
        (cursor.is("around") && !chart.lexemes.slice(0, at).some(({ text }) => isRepeatMark(text)))
        ? true
        : null
    if (chart.lexemes.slice(0, at).some(({ text }) => text === mark)) return null
    cursor.at += 1
    if (cursor.text(1) === mark && (cursor.is("to") || cursor.is("and"))) cursor.at += 2
    return true
  })
  if (cursor.accept("[", "(", "{")) cursor.accept("]", ")", "}")
  const opens = chart.lexemes.slice(0, at).some(({ text }) => isRepeatMark(text))
  const implied: Times | null =
    !opens && !unmarked && /^[.;]?$/.test(cursor.text())
      ? { kind: "until", until: { kind: "around" } }
      : null
  const times = readTimes(cursor, true) ?? implied
  if (!times || (times.kind === "until" && times.until.kind !== "around")) return []
  return repeatsOfAll(chart, at, times, unmarked !== null, times === implied ? goesOnCost : 0)
}

/** "Repeat 6 times *...*", "repeat (...) 6 times", "repeat the following 6 times: ...": how often, told in front. */
export function repeatedFirst(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const start = cursor.start()
  cursor.at += 1
  const following = cursor.accept("next") || cursor.take("next") || cursor.accept("this", "these")
  if (following) cursor.accept("steps", "sequence", "pattern", "instructions")
  if (/^[([{]$/.test(cursor.text())) return [clause(cursor, [], 0.05)]
  const times = readTimes(cursor, false)
  if (times?.kind !== "total" && times?.kind !== "more") return []
  const colon = cursor.accept(":")
  const from = cursor.at
  const mark = cursor.text()
  const marked = isRepeatMark(mark) || /^[([{]$/.test(mark)
  if (!marked && !(following && colon)) return []
  let to = from
  if (marked) {
    const close = isRepeatMark(mark) ? mark : mark === "(" ? ")" : mark === "[" ? "]" : "}"
    to = chart.lexemes.findIndex(({ text }, k) => k > from && text === close)
    if (to < 0) return []
  } else while (to < chart.lexemes.length && !/^[.;]$/.test(chart.lexemes[to]!.text)) to += 1
  const inner = chart.readInner(marked ? from + 1 : from, to)[0]
  if (!inner || inner.steps.length === 0) return []
  cursor.at = marked ? to + 1 : to
  const body = asPasses(inner.steps)
  return [
    clause(
      cursor,
      [
        {
          ...cursor.since(start),
          do: "repeat",
          body,
          last: null,
          ending: null,
          times: { kind: "total", count: times.count },
        },
      ],
      inner.cost,
    ),
  ]
}

/** "Continue around", "continue like this to the end", "and so on": the same as "repeat around". */
export function goesOn(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const around = cursor.is("around")
  // "..., sc in next sc, around": after a comma it is said of the list.
  if (around && chart.lexemes[at - 1]?.text !== ",") return []
  if (!around) cursor.at += 1
  for (let k = 0; k < longestGoesOn && !cursor.is("around") && !cursor.is("until"); k++) {
    const talk = cursor.is("chat") || cursor.is("that") || cursor.is("same") || cursor.is("in")
    const does = cursor.is("work") || cursor.is("repeat") || cursor.is("of")
    if (!talk && !does && !wayWords.test(cursor.text())) break
    cursor.at += 1
  }
  const times = readTimes(cursor, true)
  const whole = times?.kind === "until" && times.until.kind === "around"
  if (times && !whole && times.kind === "until") return []
  if (!times && !/^[.;([]?$/.test(cursor.text())) return []
  const { lexemes } = chart
  // What a mark has begun to repeat is told to go on by the mark.
  if (lexemes.slice(0, at).some(({ text }) => isRepeatMark(text))) return []
  const implied: Times = { kind: "until", until: { kind: "around" } }
  return repeatsOfAll(chart, at, times ?? implied, false, times && !around ? 0 : goesOnCost).slice(
    0,
    2,
  )
}

const wayWords = /^(?:way|manner|fashion|pattern|patt|sequence|established|such|on|doing|all)$/
/** Most words between "continue" and "around". */
const longestGoesOn = 6
/** "Continue in this way." may be said of the rounds to come. */
const goesOnCost = 0.3

function repeatsOfAll(
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
        if (!body) return null
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

/** "2 sc, inc x 6", "dc, ch 1 six times": a list with no mark, and how often it is worked in all. */
export function listTimes(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  cursor.accept("for")
  const crossed =
    cursor.accept("x") ||
    cursor.attempt(() => (cursor.accept("repeat", "rep") && cursor.accept("of") ? true : null)) !==
      null
  const count = cursor.takeCount(2)
  if (count === null || (!cursor.take("times") && !crossed) || cursor.is("more")) return []
  if (!/^[.;([={,]?$/.test(cursor.text()) && !cursor.is("join") && !cursor.is("and")) return []
  const end = cursor.lastEnd()
  return [
    clause(
      cursor,
      (before) => {
        const from =
          before.findLastIndex(
            (step) => !isUnplaced(step) && !(step.do === "work" && step.place?.at === "next"),
          ) + 1
        const body = before.slice(before[from]?.do === "chain" ? from + 1 : from)
        const first = before.length - body.length
        if (body.length < 2 || !body.some((step) => step.do === "work")) return null
        return [
          ...before.slice(0, first),
          {
            start: body[0]!.start,
            end,
            do: "repeat",
            body,
            last: null,
            ending: null,
            times: { kind: "total", count },
          },
        ]
      },
      crossed ? 0 : 0.3,
    ),
  ]
}
