// Repeats marked by asterisks or daggers: "*...; rep from * around", "*...* 5 times", and lists repeated
// without a mark: "sc 1, inc 1; repeat around", "1 sc, inc x6".

import type { Place, Step, Times } from "../base/tree.ts"
import { type Chart, type Clause, isEndMark, type Reading, type Remark } from "./chart.ts"
import { clause, isUnplaced } from "./clauses.ts"
import type { Cursor } from "./cursor.ts"
import { asPasses, mirroredInSpace } from "./passes.ts"
import { readPlace } from "./places.ts"
import { type Ending, readEnding } from "./repeat-endings.ts"
import { readTimes } from "./until.ts"

/** True for "*", "**", daggers: the marks a repeat begins or ends at. */
export function isRepeatMark(text: string): boolean {
  const first = text.charCodeAt(0)
  return first === 42 || first === 0x2020 || first === 0x2021
}

/** Where a repeat's body may end, with what is said there. */
interface Close {
  /** Index after the body. */
  readonly bodyEnd: number
  /** Index of the first word after the mark or the word "rep". */
  readonly after: number
  readonly by: "mark" | "word" | "reference" | "end"
}

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

/** "... join with sl st. (45 dc) **In any sp, make a standing dc ...**": the round once more, begun in another way. */
function otherStart({ lexemes, openMarks }: Chart, at: number, mark: string): Clause | null {
  if (!/^\*\*+$/.test(mark) || openMarks.length > 0) return null
  let end = lexemes.length - 1
  while (end > at && lexemes[end]!.text === ".") end -= 1
  if (end <= at + 3 || lexemes[end]!.text !== mark) return null
  if (lexemes.slice(at + 1, end).some(({ text }) => text === mark)) return null
  if (!/^[.)\]]$/.test(lexemes[at - 1]?.text ?? "")) return null
  if (!lexemes.slice(0, at).some(({ classes }) => classes.has("join"))) return null
  const remarks: Remark[] = [
    { code: "other-way", start: lexemes[at]!.start, end: lexemes[end]!.end },
  ]
  return {
    end: end + 1,
    cost: 0.3,
    steps: (before) => (before.length > 0 ? before : null),
    remarks,
  }
}

/** "rep from **" comes later: the double mark opens a repeat inside another, and ends none. */
function isNamed({ lexemes }: Chart, at: number, mark: string): boolean {
  // "..., end at **": it is where the last one stops, whatever else is said of it.
  const ends = lexemes.some(
    ({ text }, k) => k > at && text === mark && lexemes[k - 1]!.text === "at",
  )
  if (ends) return false
  for (let k = at + 1; k < lexemes.length; k++)
    if (lexemes[k]!.text === mark && lexemes[k - 1]!.text === "from") return true
  return false
}

/** Possible ends, the surest first: a reference to the mark, the same mark again, the word alone, the end of the round. */
function closesOf(chart: Chart, at: number, mark: string): Close[] {
  const { lexemes, cursor } = chart
  const closes: Close[] = []
  let word: Close | null = null
  let depth = 0
  for (let k = at + 1; k < lexemes.length; k++) {
    const { text } = lexemes[k]!
    if (/^[([{]$/.test(text)) depth += 1
    if (/^[)\]}]$/.test(text)) depth -= 1
    if (depth < 0) break
    cursor.at = k
    if (text === mark && depth === 0) {
      const reference = lexemes[k - 1]?.classes.has("of") || lexemes[k - 1]?.classes.has("between")
      if (!reference) {
        closes.push({ bodyEnd: k, after: k + 1, by: "mark" })
        break
      }
    }
    const goesOn =
      /^(?:continue|cont|continues|continuing|working|work)$/.test(text) &&
      (cursor.is("of", 1) ||
        (cursor.is("around", 1) && cursor.is("of", 2)) ||
        cursor.is("in", 1) ||
        /^(?:in this way|this way|in pattern)$/.test(cursor.text(1)))
    if (depth === 0 && text !== mark && isEndMark(text) && lexemes[k + 1]?.classes.has("in")) {
      // "*dc, ch 2** in next sp; rep from * to **": where the stretch goes is told behind it.
      closes.push({ bodyEnd: k, after: k + 1, by: "mark" })
      break
    }
    if (!cursor.is("repeat") && !goesOn) continue
    const reference = referenceAt(cursor, mark)
    if (goesOn) {
      if (reference === null) continue
      // "continue around from *"
      const said = lexemes.slice(k, reference).some((lexeme) => lexeme.classes.has("of"))
      if (!said) continue
    }
    if (reference !== null) {
      const named = lexemes[reference - 1]!.text
      // "rep from **" ends the repeat that "**" began inside this one.
      if (named !== mark && lexemes.slice(at + 1, k).some((lexeme) => lexeme.text === named))
        continue
      closes.push({ bodyEnd: k, after: reference, by: "reference" })
      break
    }
    if (!word && depth === 0 && namesNoOther(cursor))
      word = { bodyEnd: k, after: k + 1, by: "word" }
  }
  // A word alone ends it before a mark that comes later can.
  if (
    word &&
    (closes.length === 0 || (closes[0]!.by === "mark" && closes[0]!.bodyEnd > word.bodyEnd))
  )
    closes.unshift(word)
  if (closes.length === 0) {
    const end = endOfRound(lexemes, at)
    closes.push({ bodyEnd: end, after: end, by: "end" })
  }
  cursor.at = at
  return closes
}

/** Before the join, or the total, that ends the round: as far as a repeat goes that nothing ends. */
function endOfRound(lexemes: Chart["lexemes"], at: number): number {
  let end = lexemes.length
  for (let k = at + 1; k < lexemes.length; k++) {
    const lexeme = lexemes[k]!
    const total =
      /^[([]$/.test(lexeme.text) &&
      lexemes[k + 1]?.type === "number" &&
      lexemes.slice(k, k + 7).some(({ text }) => /^[)\]]$/.test(text)) &&
      /^[.)\]]?$/.test(lexemes[k - 1]?.text ?? "")
    if (lexeme.text === "." || lexeme.classes.has("join") || total) {
      end = k
      // "... work a sl st in next st to join": the slip stitch is the join's.
      for (let back = k - 1; lexeme.classes.has("join") && back > Math.max(at, k - 9); back--)
        if (/^(?:sl|ss|slst|slip)$/.test(lexemes[back]!.text))
          end = lexemes[back - 1]?.classes.has("work") ? back - 1 : back
      break
    }
  }
  return end
}

/** "rep from *", "rep between *s", "rep from * to *": index after it; null when another mark, or none, is named. */
function referenceAt(cursor: Cursor, mark: string): number | null {
  const first = cursor.at
  for (let k = 1; k <= 7; k++) {
    const text = cursor.text(k)
    if (text === mark || text === mark + mark) {
      let after = first + k + 1
      const { lexemes } = cursor
      // "from * to *", "between * and *": the marks named again; "to **" is an end mark.
      while (/^['"]$/.test(lexemes[after]?.text ?? "") && lexemes[after + 1]?.text !== "s")
        after += 1
      for (;;) {
        const link = lexemes[after]
        const again = lexemes[after + 1]
        if (link?.text === mark && lexemes[after - 2]?.classes.has("between")) after += 1
        else if (link?.text === "'" && again?.text === "s") after += 2
        else if (link?.text === "s") after += 1
        else if (
          link &&
          again?.text === mark &&
          (link.classes.has("to") || link.classes.has("and") || link.text === "-")
        )
          after += 2
        else break
      }
      return after
    }
    if (isRepeatMark(text) || cursor.is("round", k) || cursor.done()) return null
    if (/^[,;.)\]]$/.test(text)) return null
  }
  return null
}

/** "rep around", "repeat 5 times", "rep to last 2 sts": how often, though no mark is named. */
function namesNoOther(cursor: Cursor): boolean {
  // "repeat from [-] twice" is said of a bracket.
  if (cursor.is("of", 1) && /^[([]$/.test(cursor.text(2)) && /^[-)\]]$/.test(cursor.text(3)))
    return false
  if (cursor.is("round", 1) && /^[,;.)\]]?$/.test(cursor.text(2))) return true
  for (let k = 1; k <= 6; k++) {
    const text = cursor.text(k)
    if (isRepeatMark(text) || cursor.is("round", k)) return cursor.is("around", k)
    if (text === "" || /^[,;.)\]]$/.test(text)) break
  }
  return (
    cursor.is("around", 1) ||
    cursor.isNumber(1) ||
    cursor.is("once", 1) ||
    cursor.is("until", 1) ||
    cursor.is("of", 1) ||
    /^[,;.)]?$/.test(cursor.text(1)) ||
    cursor.text(1) === "this" ||
    cursor.is("in", 1)
  )
}

function afterBody(chart: Chart, body: Reading, at: number, mark: string, close: Close): Clause[] {
  const cursor = chart.from(close.after)
  const opening = chart.lexemes[at]!
  const start = opening.start
  const steps = mirroredInSpace(inTurn(asPasses(body.steps)))
  // What is told inside a repeat is no total of the round.
  const totals = body.totals.map((total) => ({ ...total, firm: false }))
  const extra = { totals, remarks: [...body.remarks, ...skippedIn(chart, body)], names: body.names }
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
    cursor.accept(",", ";", ".")
    skipNote(chart, cursor)
    const said = cursor.attempt(() => {
      cursor.take("and")
      if (!cursor.is("repeat")) return null
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
      clause(cursor, withEnding(cursor, steps, ending, around, start), cost + 0.5, extra),
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
  return [clause(cursor, withEnding(cursor, steps, ending, times, start), cost + unsaid, extra)]
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

/** "*1 dc in first st, 2 dc in second st; rep from *": inside a repeat the first, second, third are the next in turn. */
function inTurn(steps: readonly Step[]): readonly Step[] {
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
    if (!place) return null
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

export function skippedIn(chart: Chart, body: Reading): Remark[] {
  return body.skipped.map((k): Remark => {
    const word = chart.lexemes[k]!
    return { code: "skipped", start: word.start, end: word.end, said: String(k) }
  })
}

/** "*...* (Note: ...). Repeat from *": a remark between a stretch and what is said of it. */
function skipNote(chart: Chart, cursor: Cursor): void {
  cursor.attempt(() => {
    if (cursor.text() !== "(" || !/^(?:note|see|this|you|counts|made|there)$/.test(cursor.text(1)))
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
  const closing = last ? last[last.length - 1] : undefined
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
  if (by === "mark") return readTimes(cursor, false)
  const times = readTimes(cursor, true)
  return times?.kind === "more" && times.plain ? { ...times, ofBracket: true } : times
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

/** "from \u2020 to \u2020" comes later in the round: the stretch just closed is worked once here and named again there. */
function namedAgain(chart: Chart, from: number, mark: string): boolean {
  for (let k = from + 1; k < chart.lexemes.length - 2; k++) {
    const link = chart.lexemes[k + 1]!
    if (chart.lexemes[k]!.text !== mark || !(link.classes.has("to") || link.classes.has("and")))
      continue
    if (chart.lexemes[k + 2]!.text !== mark) continue
    const lead = chart.lexemes[k - 1]!
    if (lead.classes.has("of") || lead.classes.has("between") || /^[,;.)\]]$/.test(lead.text))
      return true
  }
  return false
}

/** "rep from \u2020 to \u2020 once": the stretch between these marks again; its steps stand earlier in the round. */
export function readPassage(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  if (!isRepeatMark(cursor.text())) {
    cursor.at += 1
    cursor.accept("from", "between")
  }
  const mark = cursor.text()
  if (!isRepeatMark(mark)) return []
  cursor.at += 1
  if (!cursor.take("to", "and") || cursor.text() !== mark) return []
  cursor.at += 1
  const after = cursor.at
  const first = chart.lexemes.findIndex(({ text }) => text === mark)
  const second = chart.lexemes.findIndex(({ text }, k) => k > first && text === mark)
  if (first < 0 || second < 0 || second >= at) return []
  const body = chart.readInner(first + 1, second)[0]
  if (!body || body.steps.length === 0) return []
  cursor.at = after
  const times = readTimes(cursor, false)
  const span = cursor.since(chart.lexemes[at]!.start)
  const steps = asPasses(body.steps)
  if (!times || times.kind === "until") return [clause(cursor, steps)]
  const again: Times = { kind: "total", count: times.count }
  return [
    clause(cursor, [
      { ...span, do: "repeat", body: steps, last: null, ending: null, times: again },
    ]),
  ]
}

/** "sc 1, inc 1; repeat around", "rep from *" without a mark: all that was said, the start of the round left out. */
export function repeatAll(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const opening = chart.lexemes[at]!
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
  const times = readTimes(cursor, true)
  if (!times || (times.kind === "until" && times.until.kind !== "around")) return []
  const end = cursor.lastEnd()
  const remarks: Remark[] = unmarked
    ? [{ code: "repeat-start-missing", start: opening.start, end }]
    : []
  const ending = readEnding(chart, { steps: [], markAt: null })
  const tail = ending?.last && ending.how === "follows" ? ending.last : null
  return [
    clause(
      cursor,
      (before) => {
        const body = repeated(before)
        if (!body) return null
        const first = before.length - body.length
        return [
          ...before.slice(0, first),
          {
            start: body[0]!.start,
            end,
            do: "repeat",
            body,
            last: tail,
            ending: tail ? "follows" : null,
            times,
          },
        ]
      },
      0.15,
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
        return [
          ...before.slice(0, first),
          {
            start: body[0]!.start,
            end,
            do: "repeat",
            body,
            last: tail,
            ending: tail ? "follows" : null,
            times,
          },
        ]
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
          return [
            ...before.slice(0, before.length - body.length),
            {
              start: body[0]!.start,
              end,
              do: "repeat",
              body,
              last: tail,
              ending: tail ? "follows" : null,
              times,
            },
          ]
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
        return [
          ...before.slice(0, first),
          {
            start: body[0]!.start,
            end,
            do: "repeat",
            body,
            last: tail,
            ending: tail ? "follows" : null,
            times,
          },
        ]
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
