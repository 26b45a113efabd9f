// Parentheses and brackets: a group worked in one place, a repeat, a total, how a chain counts, or
// an aside. All that a bracket may be is kept; what follows it, and the counts, decide.

import { table } from "../base/table.ts"
import type { Place, Step } from "../base/tree.ts"
import { aside, defines, namesMade, namesOnly, readNote, tellsLastRound } from "./asides.ts"
import {
  isCorner,
  namesNext,
  nextSpace,
  placedBracket,
  readBracketTimes,
  repeatedBracket,
} from "./bracket-repeats.ts"
import { type Chart, type Clause, type Reading, toldWithin } from "./chart.ts"
import { clause } from "./clauses.ts"
import type { Cursor } from "./cursor.ts"
import { acceptWork } from "./handling.ts"
import { readNoun } from "./nouns.ts"
import { asPasses } from "./passes.ts"
import { atPlace, readPlace, readTarget } from "./places.ts"
import { readEnding, withRemarks } from "./repeat-endings.ts"
import { isRepeatMark } from "./repeat-marks.ts"
import { readStitch } from "./stitch-names.ts"
import { readBracketTotal } from "./totals.ts"
import { readTimes } from "./until.ts"

export const closers: Readonly<Record<string, string>> = table({ "(": ")", "[": "]", "{": "}" })

/** A bracket that is neither repeated nor placed is rarely meant for work. */
const bareBracketCost = 0.3

/** Most stitches that a bracket holds together in one place. */
const mostInOne = 5

/** A bracket that nothing says is repeated. */
const impliedAroundCost = 0.6

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
  if (end < chart.lexemes.length && tellsLastRound(chart.lexemes.slice(at + 1, end)))
    return [aside(chart, at, end, false)]
  const found: Clause[] = note ? [note] : []
  const each = eachTells(chart, at, end)
  if (each) found.push(each)
  // "*(2 dc, 1 dc)*": what a repeat begins with is no total.
  const opensMark = isRepeatMark(chart.lexemes[at - 1]?.text ?? "") && chart.openMarks.length > 0
  const total = opensMark ? null : readBracketTotal(chart, at, end)
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
      ...toldWithin(chart, inner),
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
    return [...repeatedBracket(chart, body, times, start, cost, extra), bare]
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
    return [clause(cursor, [repeat], cost, withRemarks(extra, ending)), bare]
  }
  cursor.at = after
  // "(sc, hdc) - in the next st".
  if (cursor.text() === "-" && cursor.is("in", 1)) cursor.at += 1
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
  const only = body.length === 1 ? body[0] : undefined
  if (
    chart.openMarks.length > 0 &&
    only?.do === "work" &&
    only.place === null &&
    only.count > 1 &&
    only.count <= mostInOne &&
    !only.stitch.tog
  ) {
    // "*(2 hdc), ch 1*": what a bracket holds together goes into one stitch.
    const span = cursor.since(start)
    const one: Place = { ...span, at: "next", noun: { what: "stitch" }, count: 1 }
    return [clause(cursor, [{ ...only, ...span, place: one }], listCost - 0.05, extra), list]
  }
  if (opensInSpace(body)) {
    // "Join in any sp, (ch 3, dc, ch 1, 2 dc)": all of it goes where the yarn was joined.
    const span = cursor.since(start)
    const there: Place = { ...span, at: "same", noun: { what: "space" } }
    const group: Step = { ...span, do: "group", steps: body, place: there }
    const begins = clause(
      cursor,
      (before) => (leadsIntoSpace(before[before.length - 1]) ? [...before, group] : null),
      Math.max(0, listCost - bareBracketCost),
      extra,
    )
    return [begins, list]
  }
  if (closed && body.some(namesNext) && /^[.,;]?$/.test(cursor.text())) {
    // "ch 3, 2 dc in sp, (ch 1, 3 dc in next sp), ch 1, join": the bracket goes around, if that fits.
    const around: Step = {
      ...cursor.since(start),
      do: "repeat",
      body,
      last: null,
      ending: null,
      times: { kind: "until", until: { kind: "around", implied: true } },
    }
    return [list, clause(cursor, [around], listCost + impliedAroundCost, extra)]
  }
  if (!isCorner(body)) return [list]
  // "*ch 1, (3 dc, ch 2, 3 dc); rep from *": a corner goes into one space though none is named.
  const next = nextSpace(cursor, start)
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

/** "ch 3, dc, ch 1, 2 dc": a start of chains and stitches with no place of their own. */
function opensInSpace(body: readonly Step[]): boolean {
  return (
    body[0]?.do === "chain" &&
    body.some(({ do: what }) => what === "work") &&
    body.every((step) => (step.do === "work" || step.do === "chain") && step.place === null)
  )
}

function leadsIntoSpace(step: Step | undefined): boolean {
  if (step?.do !== "attach" && step?.do !== "slip") return false
  return step.place?.at === "next" && /^(?:space|corner)$/.test(step.place.noun.what)
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
