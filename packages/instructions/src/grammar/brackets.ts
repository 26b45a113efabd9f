// Parentheses and brackets: a group worked in one place, a repeat, a total, how a chain counts, or
// an aside. All that a bracket may be is kept; what follows it, and the counts, decide.

import { table } from "../base/table.ts"
import type { Place, Step, Times } from "../base/tree.ts"
import type { Lexeme } from "../words/lexemes.ts"
import type { Chart, Clause, Reading, Remark } from "./chart.ts"
import { clause } from "./clauses.ts"
import { readCountsNote, readSumNote } from "./counts-as.ts"
import type { Cursor } from "./cursor.ts"
import { acceptWork } from "./handling.ts"
import { gathered } from "./make.ts"
import { readNoun } from "./nouns.ts"
import { asPasses } from "./passes.ts"
import { atPlace, readPlace, readTarget } from "./places.ts"
import { readEnding } from "./repeat-endings.ts"
import { readCounted, readStitch } from "./stitch-names.ts"
import { readBracketTotal } from "./totals.ts"
import { readTimes, readUntil } from "./until.ts"

export const closers: Readonly<Record<string, string>> = table({ "(": ")", "[": "]", "{": "}" })

/** A bracket that is neither repeated nor placed is rarely meant for work. */
const bareBracketCost = 0.3
/** A bracket read over, besides what its words cost. */
const asideCost = 0.25
/** Most an aside costs: a long remark is no worse than a short one. */
const mostAsideCost = 2.4

export function readBracket(chart: Chart, at: number): readonly Clause[] {
  const opening = chart.lexemes[at]!
  const close = closers[opening.text]
  if (!close) return []
  const end = closingOf(chart, at)
  const note = readNote(chart, at + 1, end, opening.start)
  if (note && typeof note.steps !== "function") return [note]
  // "2-dc cluster in next loop (2-dc cluster: keeping last loop of each ...)": how it is made, no work.
  if (
    end < chart.lexemes.length &&
    defines(chart.lexemes.slice(at + 1, end)) &&
    namesMade(chart, at)
  )
    return [aside(chart, at, end, false)]
  const found: Clause[] = note ? [note] : []
  const each = eachTells(chart, at, end)
  if (each) found.push(each)
  const total = readBracketTotal(chart, at, end)
  if (total) found.push(total)
  // "3 dc, ch 3, 3 dc (shell) in next dc": a name for the list just told, and no further shell.
  const names =
    chart.lexemes[at - 1]?.type === "word" && namesOnly(chart.lexemes.slice(at + 1, end))
  for (const inner of names ? [] : chart.readInner(at + 1, end)) {
    if (inner.steps.length === 0) continue
    found.push(...afterGroup(chart, inner, at, end, total !== null))
  }
  found.push(aside(chart, at, end, total !== null))
  return found
}

/** "16 dc (2 in each st)", "24 tr (two per stitch)": how the stitches just counted are shared out. */
function eachTells(chart: Chart, at: number, end: number): Clause | null {
  const cursor = chart.from(at + 1)
  const start = chart.lexemes[at]!.start
  const count = cursor.takeCount(1)
  if (count === null) return null
  readStitch(cursor)
  const per = cursor.accept("per")
  if (!per && !cursor.take("in")) return null
  if (!cursor.take("each") && !per) return null
  const noun = readNoun(cursor)
  cursor.attempt(() => (cursor.take("around") ? true : null))
  if (!noun || cursor.at !== end) return null
  const place: Place = {
    start,
    end: cursor.lastEnd(),
    at: "each",
    nouns: [noun],
    until: { kind: "around" },
  }
  cursor.at = end + 1
  return clause(cursor, (before) => {
    const last = before[before.length - 1]
    if (last?.do !== "work" || last.place || last.count <= count) return null
    return [...before.slice(0, -1), { ...last, count, place, end: cursor.lastEnd() }]
  })
}

/** Index of the closing bracket, or the end of the round where none is. */
function closingOf(chart: Chart, at: number): number {
  let depth = 0
  for (let k = at; k < chart.lexemes.length; k++) {
    const { text } = chart.lexemes[k]!
    if (text in closers) depth += 1
    else if (text === ")" || text === "]" || text === "}") {
      depth -= 1
      if (depth === 0) return k
    }
  }
  return chart.lexemes.length
}

/** The words of a bracket passed over; what was made before it may be named in it ("shell made"). */
function aside(chart: Chart, at: number, end: number, isTotal: boolean): Clause {
  if (end >= chart.lexemes.length) {
    const { start, end: stop, text } = chart.lexemes[at]!
    return {
      end: at + 1,
      cost: 0.6,
      steps: [],
      remarks: [{ code: "bracket-not-closed", start, end: stop, said: text }],
    }
  }
  let cost = asideCost
  const skipped: number[] = []
  for (let k = at + 1; k < end; k++) {
    const word = chart.lexemes[k]!
    cost += word.skipCost
    if (word.skipCost > 0) skipped.push(k)
  }
  const inner = chart.lexemes.slice(at + 1, end)
  const told =
    !isTotal &&
    (tellsMade(inner) ||
      tellsOther(inner) ||
      namesOnly(inner) ||
      defines(inner) ||
      tellsWhere(inner) ||
      tellsChange(inner))
  if (told) cost = 0.05
  const name = told ? nameOf(inner) : null
  const opening = chart.lexemes[at]!
  const last = chart.lexemes[Math.min(end, chart.lexemes.length - 1)]!
  const remark: Remark = { code: "aside", start: opening.start, end: last.end }
  // A remark told whole: the words in it are not told one by one.
  const over = skipped.flatMap((k): Remark[] => {
    const { start, end: stop, unknown } = chart.lexemes[k]!
    return unknown ? [{ code: "read-over", start, end: stop, said: String(k) }] : []
  })
  const base = {
    end: end + 1,
    cost: Math.min(mostAsideCost, cost),
    remarks:
      (told && over.length === 0) || cost < 0.5
        ? tellsOther(inner)
          ? [remark, ...over]
          : []
        : [remark, ...over],
  }
  if (name === null) return { ...base, steps: [] }
  return {
    ...base,
    steps: (before) => before,
    names: [[name, []]],
  }
}

/** "(picot made)", "(5-dc shell made)" tells what has just been done. */
function tellsMade(inner: readonly { text: string }[]): boolean {
  return /^(?:made|formed|completed|complete)$/.test(inner[inner.length - 1]?.text ?? "")
}

/** "(cluster st: 3 tr in same space ...)": how a stitch just named is made. */
function defines(inner: readonly Lexeme[]): boolean {
  const at = inner.findIndex(({ text }) => text === ":" || text === "=")
  return (
    at > 0 &&
    at < 5 &&
    inner.length > at + 3 &&
    (inner[0]!.type === "word" || inner[0]!.type === "number")
  )
}

/** The bracket begins with a name that stands before it as well. */
function namesMade(chart: Chart, at: number): boolean {
  const name = chart.lexemes
    .slice(at + 1, at + 4)
    .find(
      ({ classes, text }) =>
        classes.has("group") ||
        classes.has("picot") ||
        /^(?:cluster|cl|popcorn|pc|puff|bobble)$/.test(text),
    )?.text
  return name !== undefined && chart.lexemes.slice(0, at).some(({ text }) => text === name)
}

/** "(between the 2 picots)", "(in the back loop)": where that is, told once more. */
function tellsWhere(inner: readonly Lexeme[]): boolean {
  const first = inner[0]?.classes
  return (
    first !== undefined &&
    (first.has("between") ||
      first.has("in") ||
      first.has("behind") ||
      (first.has("of") && inner.length < 4))
  )
}

/** "(1 sc increased)", "(6 increases)". */
function tellsChange(inner: readonly Lexeme[]): boolean {
  return (
    inner.length < 5 &&
    inner.some(({ text }) =>
      /^(?:increased?|decreased?|increases|decreases|inc made|worked|left|remain|remaining|skipped)$/.test(
        text,
      ),
    )
  )
}

/** "(petal)", "(corner)", "(first shell)": a name for what has just been told. */
function namesOnly(inner: readonly Lexeme[]): boolean {
  return (
    inner.length > 0 &&
    inner.length <= 3 &&
    inner.every(
      ({ type, classes, text }) =>
        type === "word" &&
        (classes.has("group") ||
          classes.has("corner") ||
          classes.has("first") ||
          classes.has("last") ||
          classes.has("size") ||
          classes.has("colour") ||
          classes.has("yarn") ||
          classes.has("ring") ||
          /^(?:cluster|cl|popcorn|puff|bobble)$/.test(text)),
    )
  )
}

/** "(or ch 2 ...)": another way of doing the same; "(not the ch 2)". */
function tellsOther(inner: readonly { text: string }[]): boolean {
  return (
    (inner[0]?.text === "or" && inner.length > 2) ||
    (inner[0]?.text === "counts" &&
      inner.some(({ text }) => /^(?:corner|side|point|petal|shell|group)s?$/.test(text))) ||
    /^(?:note|see|photo|pic|picture)$/.test(inner[0]?.text ?? "") ||
    (inner[0]?.text === "not" && !inner.some(({ text }) => /^count/.test(text)))
  )
}

function nameOf(inner: readonly Lexeme[]): string | null {
  const made = tellsMade(inner)
  if (!made && !inner.some(({ classes }) => classes.has("group"))) return null
  const named = made ? inner.slice(0, -1) : inner
  if (named.length === 0 || named.length > 3 || named.some(({ type }) => type === "number"))
    return null
  const name = named
    .map(({ text }) => text)
    .join("")
    .replace(/[^a-z]/g, "")
  return /^[a-z]{2,20}$/.test(name) ? name : null
}

function readNote(chart: Chart, at: number, end: number, start: number): Clause | null {
  const cursor = chart.from(at)
  const note = cursor.attempt(() => {
    const found = readCountsNote(cursor)
    // "..., now and throughout": what follows in the bracket makes nothing.
    while (found && cursor.at < end && saysNoWork(cursor.peek()!)) cursor.at += 1
    return found && cursor.at === end ? found : null
  })
  if (note) {
    cursor.at = Math.min(end + 1, chart.lexemes.length)
    return clause(cursor, [{ ...cursor.since(start), ...note, do: "note-counts" }])
  }
  const sum = cursor.attempt(() => {
    const found = readSumNote(cursor)
    return found && cursor.at === end ? found : null
  })
  if (!sum) return null
  cursor.at = Math.min(end + 1, chart.lexemes.length)
  const span = cursor.since(start)
  return clause(cursor, (before) => {
    const chain = before[before.length - 1]
    if (chain?.do !== "chain" || !sum.fits(chain.chains)) return null
    return [...before, { ...span, countsAs: sum.countsAs, do: "note-counts" }]
  })
}

/** What is done with a bracket's steps: repeated, worked in one place, or simply worked. */
function afterGroup(
  chart: Chart,
  inner: Reading,
  at: number,
  end: number,
  isTotal: boolean,
): Clause[] {
  const start = chart.lexemes[at]!.start
  const closed = end < chart.lexemes.length
  const cursor = chart.from(Math.min(end + 1, chart.lexemes.length))
  const body = asPasses(inner.steps)
  const extra = {
    totals: inner.totals,
    remarks: [
      ...inner.remarks,
      ...skippedRemarks(chart, inner),
      ...(closed
        ? []
        : [
            {
              code: opensRepeat(inner, closed)
                ? ("bracket-opens-repeat" as const)
                : ("bracket-not-closed" as const),
              start,
              end: start + 1,
            },
          ]),
    ],
    names: inner.names,
  }
  const cost = inner.cost + (closed ? 0 : opensRepeat(inner, closed) ? 0.1 : 1)
  // "(...)* repeat to end", "[...]* 2 more times": the asterisk names the bracket.
  if (
    /^\*+$/.test(cursor.text()) &&
    (cursor.is("repeat", 1) ||
      (cursor.isNumber(1) && cursor.is("times", cursor.is("more", 2) ? 3 : 2)))
  )
    cursor.at += 1
  const after = cursor.at
  const times = readBracketTimes(cursor) ?? readTimes(cursor, false)
  // "(3 dc in each sp) around": each goes round by itself.
  if (times?.kind === "until" && times.until.kind === "around" && goesRound(body))
    return [clause(cursor, body, cost, extra)]
  const bare = { end: after, cost: cost + bareBracketCost + 0.1, steps: body, ...extra }
  if (times && times.kind !== "until")
    return [repeatedBracket(chart, body, times, start, cost, extra), bare]
  const said = cursor.at
  if (times && !atPlaceOf(chart, after)) {
    const ending = readEnding(chart, { steps: body, markAt: inner.markAt })
    const last = ending?.last ?? null
    const repeat: Step = {
      ...cursor.since(start),
      do: "repeat",
      body,
      last,
      ending: ending?.how ?? null,
      times,
      ...(ending?.tail ? { tail: ending.tail } : {}),
    }
    return [clause(cursor, [repeat], cost, extra), bare]
  }
  cursor.at = after
  acceptWork(cursor)
  const place =
    atPlace(cursor) && cursor.text() !== "to"
      ? readPlace(cursor)
      : cursor.is("next") || cursor.is("each") || cursor.is("same")
        ? readBarePlace(cursor)
        : null
  if (place) return [...placedBracket(cursor, body, place, start, cost, extra), bare]
  if (times) {
    cursor.at = said
    return [
      clause(
        cursor,
        [{ ...cursor.since(start), do: "repeat", body, last: null, ending: null, times }],
        cost,
        extra,
      ),
    ]
  }
  cursor.at = after
  if (cursor.is("corner") && !atPlace(cursor)) {
    // "(2 dc, ch 2, 2 dc) corners": one in each.
    cursor.at += 1
    const corners: Place = {
      ...cursor.since(start),
      at: "each",
      nouns: [{ what: "corner", corner: true }],
      until: { kind: "around" },
    }
    return [
      clause(
        cursor,
        [{ ...cursor.since(start), do: "group", steps: body, place: corners }],
        cost,
        extra,
      ),
    ]
  }
  const listCost = cost + (opensRepeat(inner, closed) ? 0 : bareBracketCost) + (isTotal ? 1 : 0)
  const list = clause(cursor, body, listCost, extra)
  if (!isCorner(body)) return [list]
  // "*ch 1, (3 dc, ch 2, 3 dc); rep from *": a corner goes into one space though none is named.
  const next: Place = {
    ...cursor.since(start),
    at: "next",
    noun: { what: "space" },
    count: 1,
    bare: true,
  }
  return [
    list,
    clause(
      cursor,
      [{ ...cursor.since(start), do: "group", steps: body, place: next }],
      listCost + 0.05,
      extra,
    ),
  ]
}

/** "3 dc, ch 2, 3 dc": stitches on both sides of chains, none with a place of its own. */
function isCorner(body: readonly Step[]): boolean {
  const [first, last] = [body[0], body[body.length - 1]]
  if (first?.do !== "work" || last?.do !== "work" || first.count + last.count < 3) return false
  return (
    body.length > 2 &&
    body.every((step) => (step.do === "work" || step.do === "chain") && step.place === null)
  )
}

/** "(ch 3, sc in next loop; repeat rnd": never closed, it only marks where the repeat begins. */
function opensRepeat(inner: Reading, closed: boolean): boolean {
  const first = inner.steps[0]
  return !closed && first?.do === "repeat" && first.times.kind === "until"
}

function goesRound(body: readonly Step[]): boolean {
  const only = body[0]
  return (
    body.length === 1 && (only?.do === "work" || only?.do === "group") && only.place?.at === "each"
  )
}

function readBarePlace(cursor: Cursor): Place | null {
  const start = cursor.start()
  return readPlace(cursor) ?? readTarget(cursor, start, "in")
}

/** "around" may begin a place ("around ring"); then it is no end of a repeat. */
function atPlaceOf(chart: Chart, at: number): boolean {
  const cursor = chart.cursor
  const before = cursor.at
  cursor.at = at
  const place = atPlace(cursor) && cursor.text() !== "to" ? readPlace(cursor) : null
  cursor.at = before
  return place !== null
}

/** Words passed over inside a bracket are told where the bracket is. */
function skippedRemarks(chart: Chart, inner: Reading): Remark[] {
  return inner.skipped.map((k) => {
    const word = chart.lexemes[k]!
    return { code: "skipped", start: word.start, end: word.end, said: String(k) }
  })
}

function repeatedBracket(
  chart: Chart,
  body: readonly Step[],
  times: Exclude<Times, { kind: "until" }>,
  start: number,
  cost: number,
  extra: Pick<Clause, "totals" | "remarks" | "names">,
): Clause {
  const cursor = chart.cursor
  const repeat: Step = {
    ...cursor.since(start),
    do: "repeat",
    body,
    last: null,
    ending: null,
    times,
  }
  const shared = cursor.attempt(() => readSharedPlace(cursor, repeat))
  if (shared) return clause(cursor, shared, cost, extra)
  const at = cursor.at
  const place = atPlace(cursor) && cursor.text() !== "to" ? readPlace(cursor) : null
  if (place)
    return clause(
      cursor,
      [
        { ...cursor.since(start), do: "group", steps: [repeat], place },
        ...furtherGroups(cursor, [repeat]),
      ],
      cost,
      extra,
    )
  cursor.at = at
  cursor.attempt(() => readUntil(cursor))
  const ended = cursor.attempt(() => {
    cursor.accept(",")
    if (!cursor.is("end") && !cursor.is("omit")) return null
    const found = readEnding(chart, { steps: body, markAt: null })
    return found?.last && found.how ? found : null
  })
  return clause(
    cursor,
    [ended ? { ...repeat, last: ended.last, ending: ended.how, end: cursor.lastEnd() } : repeat],
    cost,
    extra,
  )
}

function placedBracket(
  cursor: Cursor,
  body: readonly Step[],
  place: Place,
  start: number,
  cost: number,
  extra: Pick<Clause, "totals" | "remarks" | "names">,
): Clause[] {
  const later = cursor.attempt(() => {
    // "in each st *6 times": the asterisk says no more than "times" does.
    if (cursor.text() === "*" && cursor.isNumber(1) && cursor.is("times", 2)) cursor.at += 1
    const times = readTimes(cursor, false)
    return times?.kind === "until" && place.at !== "next" ? null : times
  })
  const group: Step = { ...cursor.since(start), do: "group", steps: body, place }
  if (later?.kind === "total" && place.at === "each" && place.nouns[0] && !place.total) {
    // So many times in all: one place each time.
    const next: Place = { ...cursor.since(start), at: "next", noun: place.nouns[0], count: 1 }
    const one: Step[] = [{ ...group, place: next }]
    return [
      clause(
        cursor,
        [
          {
            ...cursor.since(start),
            do: "repeat",
            body: one,
            last: null,
            ending: null,
            times: later,
          },
        ],
        cost,
        extra,
      ),
    ]
  }
  if (later && place.at === "ring" && later.kind !== "until") {
    const inner: Step = {
      ...cursor.since(start),
      do: "repeat",
      body,
      last: null,
      ending: null,
      times: later,
    }
    return [clause(cursor, [{ ...group, steps: [inner] }], cost, extra)]
  }
  if (later)
    return [
      clause(
        cursor,
        [
          {
            ...cursor.since(start),
            do: "repeat",
            body: [group],
            last: null,
            ending: null,
            times: later,
          },
        ],
        cost,
        extra,
      ),
    ]
  const further = furtherGroups(cursor, body)
  const plain = clause(cursor, [group, ...further], cost, extra)
  // "2 dc, (ch 2, 2 dc) in next sp": what stands before the bracket may belong to it.
  const wide = clause(cursor, (before) => gathered(before, body, place), cost + 0.8, extra)
  return further.length === 0 && place.at !== "ring" ? [plain, wide] : [plain]
}

function saysNoWork(word: Lexeme): boolean {
  return (
    word.type === "mark" || (word.type === "word" && (word.classes.size > 0 || word.skipCost < 1.5))
  )
}

/** "(2 sc, inc) repeat 6 times", "(2 sc, inc) * 6": said of the bracket just closed. */
function readBracketTimes(cursor: Cursor): Times | null {
  return cursor.attempt((): Times | null => {
    cursor.accept(",")
    if (cursor.is("repeat")) {
      cursor.at += 1
      cursor.attempt(() => {
        // "repeat from * to *", "repeat between brackets".
        if (!cursor.accept("from", "between")) return null
        while (
          /^\*+$/.test(cursor.text()) ||
          cursor.accept("to", "and", "-", "brackets", "parentheses", "(", ")", "[", "]")
        )
          if (/^\*+$/.test(cursor.text())) cursor.at += 1
        return true
      })
      cursor.accept("this", "these", "that")
      cursor.accept(
        "sequence",
        "pattern",
        "steps",
        "step",
        "brackets",
        "bracket",
        "parentheses",
        "instructions",
      )
      const times = readTimes(cursor, true)
      if (times?.kind !== "more") return times
      return times.plain ? { ...times, ofBracket: true } : times
    }
    if (cursor.text() !== "*" || !cursor.isNumber(1) || !endsTimes(cursor)) return null
    const count = cursor.value(1)
    cursor.at += 2
    return { kind: "total", count }
  })
}

/** After "* 6": the end, a total, or a join; a stitch would make the asterisk open a repeat. */
export function endsTimes(cursor: Cursor): boolean {
  // "(sc, inc) * 6 -> 18"
  if (cursor.text(2) === "-" && cursor.text(3) === ">") return true
  return (
    /^$|^[.,;=([]$/.test(cursor.text(2)) ||
    cursor.is("join", 2) ||
    /^(?:sl|slst|ss)$/.test(cursor.text(2))
  )
}

/** "(...) in same sp and in each ch-3 sp around": the same group again in other places. */
function furtherGroups(cursor: Cursor, steps: readonly Step[]): Step[] {
  const groups: Step[] = []
  for (;;) {
    const start = cursor.start()
    const place = cursor.attempt(() => {
      cursor.accept(",")
      if (!cursor.take("and")) return null
      if (cursor.is("repeat")) {
        // "... and repeat in each sp around".
        cursor.at += 1
      }
      return atPlace(cursor) && !cursor.is("until") ? readPlace(cursor) : null
    })
    if (!place) return groups
    groups.push({ ...cursor.since(start), do: "group", steps, place })
  }
}

/** "(1 sc, ch 3) twice and 1 sc in top of that dc": the place is that of the whole. */
function readSharedPlace(cursor: Cursor, repeat: Step): Step[] | null {
  if (!cursor.take("and")) return null
  const start = cursor.start()
  const last = readCounted(cursor)
  const place = last ? readPlace(cursor) : null
  if (!last || !place || place.at === "each") return null
  const step: Step = {
    ...cursor.since(start),
    do: "work",
    stitch: last.stitch,
    count: last.count,
    place: null,
  }
  return [{ ...cursor.since(repeat.start), do: "group", steps: [repeat, step], place }]
}
