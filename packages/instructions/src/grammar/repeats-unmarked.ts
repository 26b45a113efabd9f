// Lists repeated without a mark: "sc 1, inc 1; repeat around", "1 sc, inc x6".

import type { Times } from "../base/tree.ts"
import { type Chart, type Clause, toldWithin } from "./chart.ts"
import { clause, isUnplaced, repeatOf } from "./clauses.ts"
import type { Cursor } from "./cursor.ts"
import { readNoun } from "./nouns.ts"
import { asPasses } from "./passes.ts"
import { isRepeatMark } from "./repeat-marks.ts"
import { repeatsOfAll } from "./repeats-of-all.ts"
import { readTimes } from "./until.ts"

/** "sc 1, inc 1; repeat around", "rep from *" without a mark: all that was said, the start of the round left out. */
export function repeatAll(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  cursor.at += 1
  // "Repeat the same in every space".
  const same = cursor.take("same")
  if (same) cursor.take("in")
  else if (cursor.accept("this", "these", "that") && cursor.isNumber()) cursor.at += 1
  cursor.accept("sequence", "pattern", "steps", "instructions", "last", "step")
  // "rep from beginning": where it begins is said.
  let told = false
  const unmarked = cursor.attempt(() => {
    if (!cursor.accept("from", "between")) return null
    const mark = cursor.text()
    told = !isRepeatMark(mark) && cursor.accept("beginning", "start", "beg")
    if (!isRepeatMark(mark))
      return told ||
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
    !opens && /^[.;]?$/.test(cursor.text()) ? { kind: "until", until: { kind: "around" } } : null
  const times = readTimes(cursor, true) ?? implied
  if (!times || (times.kind === "until" && times.until.kind !== "around")) return []
  return repeatsOfAll(
    chart,
    at,
    times,
    unmarked !== null && !told,
    times === implied ? goesOnCost : 0,
  )
}

/** "Repeat 6 times *...*", "repeat (...) 6 times", "repeat the following 6 times: ...": how often, told in front. */
export function repeatedFirst(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const start = cursor.start()
  // "in the ring work 6 times *2 dc, ch 1*".
  const figure = cursor.isNumber()
  if (figure && cursor.is("more", 1)) return moreOfBracket(chart, at)
  // "6x (2 dc, 1 dc)" where a clause begins, "work 6 times *...*".
  const before = chart.lexemes[at - 1]
  const begins = !before || (before.type === "mark" && !/^[([{]$/.test(before.text))
  const opens = figure && begins && /^[([]$/.test(cursor.text(2))
  if (figure && !opens && !before?.classes.has("work")) return []
  const placed = opens ? moreOfBracket(chart, at) : []
  if (placed.length > 0) return placed
  chart.from(at)
  if (!figure) cursor.at += 1
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
      { remarks: toldWithin(chart, inner) },
    ),
  ]
}

/** "Work 11 more (dc3tog, ch 3) into the ring", "make 5 more petals (sc, 3 dc, sc) in next sp". */
function moreOfBracket(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const start = cursor.start()
  const count = cursor.takeCount(2)
  cursor.at += 1
  cursor.take("group")
  if (count === null || !/^[([{]$/.test(cursor.text())) return []
  return chart.clausesAt(cursor.at).flatMap((inner): Clause[] => {
    if (typeof inner.steps === "function" || inner.steps.length !== 1) return []
    const [step] = inner.steps
    if (!step || step.do === "repeat") return []
    const times: Times = { kind: "total", count }
    const inRing = step.do === "group" && step.place.at === "ring"
    const body = inRing ? step.steps : [step]
    const repeat = repeatOf({ start, end: step.end }, body, times)
    return [{ ...inner, steps: [inRing ? { ...step, steps: [repeat] } : repeat] }]
  })
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
    // "in all 6 loops" names them.
    const all = cursor.is("each") && (cursor.isNumber(1) || cursor.is("space", 1))
    if (all || (!talk && !does && !wayWords.test(cursor.text()))) break
    cursor.at += 1
  }
  const times = cursor.attempt(() => inTheOthers(cursor)) ?? readTimes(cursor, true)
  const whole = times?.kind === "until" && times.until.kind === "around"
  if (times && !whole && times.kind === "until") return []
  if (!times && !/^[.;([]?$/.test(cursor.text())) return []
  const { lexemes } = chart
  // What a mark has begun to repeat is told to go on by the mark.
  if (lexemes.slice(0, at).some(({ text }) => isRepeatMark(text))) return []
  const implied: Times = { kind: "until", until: { kind: "around" } }
  return repeatsOfAll(chart, at, times ?? implied, false, times && !around ? 0 : goesOnCost).slice(
    0,
    3,
  )
}

/** "Do the same in the other three spaces", "in all 6 loops", "in each of the other spaces". */
function inTheOthers(cursor: Cursor): Times | null {
  const each = cursor.take("each")
  if (each) cursor.accept("of")
  if (!cursor.take("rest") && !cursor.accept("other", "others", "all") && !each) return null
  cursor.takeCount(1)
  return readNoun(cursor) && { kind: "until", until: { kind: "around" } }
}

const wayWords = /^(?:way|manner|fashion|pattern|patt|sequence|established|such|on|doing|all)$/
/** Most words between "continue" and "around". */
const longestGoesOn = 6
/** "Continue in this way." may be said of the rounds to come. */
const goesOnCost = 0.3

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
            (step) =>
              !isUnplaced(step) &&
              !(step.do === "work" && (step.place?.at === "next" || step.place?.at === "ring")),
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
