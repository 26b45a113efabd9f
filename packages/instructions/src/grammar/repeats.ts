// Repeats marked by asterisks or daggers: "*...; rep from * around", "*...* 5 times", and lists repeated
// without a mark: "sc 1, inc 1; repeat around", "1 sc, inc x6".

import type { Place, Step, Times } from "../base/tree.ts"
import { namesNext } from "./bracket-repeats.ts"
import { type Chart, type Clause, type Reading, type Remark, toldWithin } from "./chart.ts"
import { clause } from "./clauses.ts"
import type { Cursor } from "./cursor.ts"
import { inTurn } from "./in-turn.ts"
import { namedAgain } from "./passages.ts"
import { asPasses, mirroredInSpace } from "./passes.ts"
import { readPlace } from "./places.ts"
import { type Ending, readEnding, withRemarks } from "./repeat-endings.ts"
import {
  type Close,
  closesOf,
  isNamed,
  isRepeatMark,
  namesNoOther,
  otherStart,
  referenceAt,
} from "./repeat-marks.ts"
import { ofBracket, readTimes } from "./until.ts"

/** A repeat whose end nothing tells is a guess. */
const openRepeatCost = 1

export function readStarred(chart: Chart, at: number): readonly Clause[] {
  const mark = chart.lexemes[at]!.text
  if (mark.length > 1 && mark[0] === "*" && chart.openMarks.length > 0 && !isNamed(chart, at, mark))
    return []
  const other = otherStart(chart, at, mark)
  if (other) return [other]
  const found: Clause[] = []
  for (const close of closesOf(chart, at, mark)) {
    chart.openMarks.push(mark)
    const bodies = chart.readInner(at + 1, close.bodyEnd)
    chart.openMarks.pop()
    for (const body of bodies)
      if (body.steps.length > 0) found.push(...afterBody(chart, body, at, mark, close))
    if (found.length > 0) break
  }
  return found
}

function afterBody(chart: Chart, body: Reading, at: number, mark: string, close: Close): Clause[] {
  const cursor = chart.from(close.after)
  const opening = chart.lexemes[at]!
  const start = opening.start
  const steps = mirroredInSpace(inTurn(asPasses(body.steps)))
  // What is told inside a repeat is no total of the round.
  const totals = body.totals.map((total) => ({ ...total, firm: false }))
  const extra = { totals, remarks: toldWithin(chart, body), names: body.names }
  const cost = body.cost
  let by = close.by
  if (by === "end") {
    const around: Times = { kind: "until", until: { kind: "around" } }
    const remarks: Remark[] = [
      ...extra.remarks,
      { code: "repeat-end-missing", start: opening.start, end: opening.end },
    ]
    return [
      clause(
        cursor,
        [
          {
            ...cursor.since(start),
            do: "repeat",
            body: steps,
            last: null,
            ending: null,
            times: around,
          },
        ],
        cost + openRepeatCost,
        { ...extra, remarks },
      ),
    ]
  }
  if (by === "mark") {
    while (cursor.accept(",", ";", ".", "-", "\u2022", ":"));
    skipNote(chart, cursor)
    const said = cursor.attempt(() => {
      cursor.take("and")
      if (!cursor.is("repeat")) return null
      if (cursor.text(1) === mark) {
        // "*2 dc, ch 3* Repeat the *2 dc, ch 3* four more times": told out once more.
        let end = cursor.at + 2
        while (end < chart.lexemes.length && chart.lexemes[end]!.text !== mark) end += 1
        const after = chart.lexemes[end + 1]
        if (
          after?.type === "number" ||
          after?.classes.has("once") ||
          after?.classes.has("around")
        ) {
          cursor.at = end + 1
          return "reference" as const
        }
      }
      const reference = referenceAt(cursor, mark)
      if (reference === null && !namesNoOther(cursor)) return null
      cursor.at = reference ?? cursor.at + 1
      return reference === null ? ("word" as const) : ("reference" as const)
    })
    if (!said) cursor.at = close.after
    by = said ?? "mark"
    if (!said && cursor.attempt(() => marksAgain(cursor, mark))) by = "reference"
  }
  if (by === "mark" || by === "reference") {
    const shared = placeOfPassage(cursor, steps, mark, start)
    if (shared) return [clause(cursor, shared, cost, extra)]
  }
  const before = timesBefore(chart, close, by)
  const upToMark = cursor.attempt(() => acceptUpToMark(cursor)) !== null
  const closedByMark = close.by === "mark"
  const named = cursor.at
  const behind = readRepeatTimes(cursor, closedByMark, by)
  const stated = behind ?? before
  // "rep 7 from * around": of two figures that say how often, one is not used.
  if (by === "reference" && (behind || !before))
    extra.remarks.push(...figuresBefore(chart, close.bodyEnd, named))
  if (!stated && closedByMark && by === "mark") {
    if (namedAgain(chart, cursor.at, mark)) return [clause(cursor, steps, cost, extra)]
    // "*...*" with nothing said of how often: around, or worked once as it stands.
    const around: Times = { kind: "until", until: { kind: "around" } }
    const once = clause(cursor, steps, cost + 0.6, extra)
    const ending = readEnding(chart, { steps, markAt: body.markAt })
    return [
      clause(
        cursor,
        withEnding(cursor, steps, ending, around, start),
        cost + 0.5,
        withRemarks(extra, ending),
      ),
      once,
    ]
  }
  const times: Times = stated ?? { kind: "until", until: { kind: "around" } }
  const unsaid = stated || by === "reference" ? 0 : openRepeatCost / 2
  const inOne = times.kind === "until" ? null : cursor.attempt(() => readPlaceOfAll(cursor))
  const span = cursor.since(start)
  if (inOne) {
    const repeat: Step = { ...span, do: "repeat", body: steps, last: null, ending: null, times }
    return [clause(cursor, [{ ...span, do: "group", steps: [repeat], place: inOne }], cost, extra)]
  }
  if (upToMark && body.markAt !== null)
    return [clause(cursor, upTo(span, steps, body.markAt, times), cost, extra)]
  const marked = { steps, markAt: body.markAt }
  const ending = readOnceMore(cursor, marked) ?? readEnding(chart, marked)
  return [
    clause(
      cursor,
      withEnding(cursor, steps, ending, times, start),
      cost + unsaid,
      withRemarks(extra, ending),
    ),
  ]
}

/** The figures between the word "rep" and the mark it names. */
function figuresBefore(chart: Chart, from: number, to: number): Remark[] {
  const found: Remark[] = []
  for (let k = from; k < to; k++) {
    const word = chart.lexemes[k]!
    if (word.type === "number")
      found.push({ code: "skipped", start: word.start, end: word.end, said: String(k) })
  }
  return found
}

/** "repeat 7x from * to *": how often, told before the mark is named. */
function timesBefore(chart: Chart, close: Close, by: string): Times | null {
  if (by !== "reference") return null
  const { cursor, lexemes } = chart
  const at = cursor.at
  let k = close.by === "mark" ? close.after : close.bodyEnd
  while (k < at && !lexemes[k]!.classes.has("repeat")) k += 1
  cursor.at = k + 1
  const times = cursor.isNumber() || cursor.is("once") ? readTimes(cursor, true) : null
  const inside = cursor.at < at
  cursor.at = at
  return inside ? times : null
}

/** "*1 sc, 3 dc, 1 sc** in same sp; rep from * to ** in next 7 sps": the stretch in one place, then in others. */
function placeOfPassage(
  cursor: Cursor,
  body: readonly Step[],
  mark: string,
  start: number,
): Step[] | null {
  return cursor.attempt(() => {
    const end = isRepeatMark(cursor.text()) && cursor.text() !== mark
    if (end) cursor.at += 1
    if (!cursor.is("in") || body.length === 0) return null
    const place = readPlace(cursor)
    if (!place || body.some(namesNext)) return null
    const group: Step = { ...cursor.since(start), do: "group", steps: body, place }
    cursor.accept(",", ";", ".")
    cursor.take("and")
    if (!cursor.is("repeat")) return end || place.at === "each" ? [group] : null
    const from = cursor.start()
    const after = referenceAt(cursor, mark)
    if (after === null) return null
    cursor.at = after
    cursor.accept("to")
    if (isRepeatMark(cursor.text())) cursor.at += 1
    const further = cursor.is("in") ? readPlace(cursor) : null
    if (further) return [group, { ...cursor.since(from), do: "group", steps: body, place: further }]
    const times = readTimes(cursor, true) ?? {
      kind: "until" as const,
      until: { kind: "around" as const },
    }
    return [
      { ...cursor.since(start), do: "repeat", body: [group], last: null, ending: null, times },
    ]
  })
}

/** "*...* (Note: ...). Repeat from *": a remark between a stretch and what is said of it. */
function skipNote(chart: Chart, cursor: Cursor): void {
  cursor.attempt(() => {
    if (
      cursor.text() !== "(" ||
      !/^(?:note|see|this|you|counts|made|there|above|photo|picture)$/.test(cursor.text(1))
    )
      return null
    while (!cursor.done() && cursor.text() !== ")") cursor.at += 1
    cursor.at += 1
    cursor.accept(",", ";", ".")
    return cursor.at < chart.lexemes.length && cursor.is("repeat") ? true : null
  })
}

/** "*to* 5x", "crochet *-* 3 times": the marks named again without the word repeat. */
function marksAgain(cursor: Cursor, mark: string): true | null {
  cursor.accept(",", ";", ".")
  while (cursor.take("work") || cursor.accept("go", "from", "continue", "do", "again"));
  if (!cursor.accept(mark) || !(cursor.take("to") || cursor.accept("-")) || !cursor.accept(mark))
    return null
  return cursor.isNumber() || cursor.is("around") || cursor.is("once") ? true : null
}

function withEnding(
  cursor: Cursor,
  body: readonly Step[],
  ending: Ending | null,
  times: Times,
  start: number,
): Step[] {
  const last = ending?.last ?? null
  const closing = last ? asJoin(last[last.length - 1]) : undefined
  const base = { ...cursor.since(start), do: "repeat" as const, body, times }
  if (
    ending?.how === "follows" &&
    last?.length === 1 &&
    closing &&
    (closing.do === "slip" || closing.do === "join") &&
    !body.some((step) => step.do === "slip")
  )
    // "and finish with a sl st in first st": nothing but the join.
    return [{ ...base, last: null, ending: null }, closing]
  if (
    last &&
    last.length > 1 &&
    closing &&
    (closing.do === "slip" || closing.do === "join") &&
    body[body.length - 1]?.do !== "slip"
  )
    // "ending ch 3, sl st in first dc": the slip stitch joins the round.
    return [
      {
        ...base,
        last: last.slice(0, -1),
        ending: ending!.how,
        ...(ending!.tail ? { tail: ending!.tail.slice(0, -1) } : {}),
        joins: true,
      },
      closing,
    ]
  return [
    { ...base, last, ending: ending?.how ?? null, ...(ending?.tail ? { tail: ending.tail } : {}) },
  ]
}

/** "*1 dc, ch 1*, rep between *s 11 times in ring": where all of it goes. */
function readPlaceOfAll(cursor: Cursor): Place | null {
  if (!cursor.is("in")) return null
  const place = readPlace(cursor)
  return place?.at === "ring" || place?.at === "same" ? place : null
}

/** How often; said of a stretch just closed, "5 times" may count it. */
function readRepeatTimes(
  cursor: Cursor,
  closedByMark: boolean,
  by: "mark" | "word" | "reference" | "end",
): Times | null {
  // "repeat this 5 more times".
  cursor.attempt(() => {
    if (!cursor.accept("this", "these", "that", "it", "process")) return null
    cursor.accept("step", "steps", "sequence", "pattern", "process", "section", "part")
    return cursor.isNumber() || cursor.is("once") || cursor.is("around") || cursor.is("until")
      ? true
      : null
  })
  if (!closedByMark) return readTimes(cursor, true)
  if (by === "reference") {
    const times = readTimes(cursor, true)
    // "*...*, go from * to * 5x": of all of them.
    if (times?.kind === "more" && times.plain && cursor.lexemes[cursor.at - 1]?.text === "x")
      return { kind: "total", count: times.count }
    // "*...*; repeat * to * 8 times": nine of anything is rare, so eight in all are likelier.
    return times?.kind === "more" && times.plain && times.count % 2 === 0 && times.count > 2
      ? { ...times, ofBracket: true }
      : times
  }
  return ofBracket(readTimes(cursor, by !== "mark"))
}

/** "rep from * to ** twice more": what stands before the second mark, so often again. */
function upTo(
  span: { start: number; end: number },
  steps: readonly Step[],
  markAt: number,
  times: Times,
): Step[] {
  const marked = steps.slice(0, markAt)
  if (
    times.kind === "until" &&
    times.until.kind === "around" &&
    marked.length > 0 &&
    marked.length < steps.length
  )
    // "*...**, 1 tr in next, rep from * to **": the last time stops at the second mark.
    return [{ ...span, do: "repeat", body: steps, last: marked, ending: "replaces", times }]
  if (marked.length === steps.length || times.kind === "until")
    return [{ ...span, do: "repeat", body: steps, last: null, ending: null, times }]
  const again: Times = { kind: "total", count: times.count }
  return [...steps, { ...span, do: "repeat", body: marked, last: null, ending: null, times: again }]
}

function acceptUpToMark(cursor: Cursor): true | null {
  if (!cursor.take("to", "until", "and") || !isRepeatMark(cursor.text())) return null
  cursor.at += 1
  return true
}

/** "rep from * twice more, then from * to ** once": the last time goes only so far. */
function readOnceMore(
  cursor: Cursor,
  run: { steps: readonly Step[]; markAt: number | null },
): Ending | null {
  if (run.markAt === null) return null
  return cursor.attempt((): Ending | null => {
    cursor.accept(",", ";", ".")
    cursor.take("and", "end")
    cursor.take("with")
    cursor.accept("by", "with")
    if (cursor.is("repeat") || cursor.is("work")) cursor.at += 1
    cursor.accept("from", "between")
    if (!isRepeatMark(cursor.text())) return null
    cursor.at += 1
    if (!acceptUpToMark(cursor)) return null
    cursor.take("once")
    cursor.take("more")
    return { last: run.steps.slice(0, run.markAt ?? 0), how: "follows" }
  })
}

/** "ending sl st in 3rd ch of ch 4": a slip stitch into a chain of the start, told last, joins the round. */
function asJoin(step: Step | undefined): Step | undefined {
  if (step?.do !== "slip" || !step.place) return step
  const { start, end, place } = step
  if (place.at === "same" && place.begins) return { start, end, do: "join", place: null }
  if (place.at !== "next" || place.pickNoun?.what !== "chain") return step
  return {
    start,
    end,
    do: "join",
    place: null,
    ...(typeof place.pick === "number" ? { chain: place.pick } : {}),
  }
}
