// Lists in one place: "in next ch-2 sp work 2 dc, ch 2, 2 dc" with the place first, "sc, hdc, dc, hdc, sc
// all in next sp" with it last. Where such a list ends, or begins, no bracket says: every end is kept.

import type { Place, Step } from "../base/tree.ts"
import { type Chart, type Clause, toldWithin } from "./chart.ts"
import { clause, hasWork, isUnplaced } from "./clauses.ts"
import type { Cursor } from "./cursor.ts"
import { isOneOrEach } from "./gathered-lists.ts"
import { acceptWork } from "./handling.ts"
import { inTurnPlace } from "./in-turn.ts"
import { asPasses } from "./passes.ts"
import { readPlace, readTarget } from "./places.ts"
import { isRepeatMark } from "./repeat-marks.ts"
import { readUntil } from "./until.ts"

/** Every clause less of a list than there could be is a little dearer: the list usually goes on. */
const shorterListCost = 0.12
/** A place in front that no verb follows. */
const noVerbCost = 0.15
/** A place right behind a bracket that is taken for one that leads. */
const ofBracketCost = 2
/** Most clauses of a list of which every end is tried. */
const mostEnds = 8

/** "In next ch-2 sp, work 2 dc, ch 2, 2 dc": the place, then what goes there. */
export function placeFirst(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const start = cursor.start()
  const before = chart.lexemes[at - 1]
  // A place stands first where a clause begins.
  if (
    before &&
    before.type !== "mark" &&
    !before.classes.has("and") &&
    !before.classes.has("work") &&
    !before.classes.has("group") &&
    chart.lexemes[at + 1]?.text !== "which" &&
    !(before.classes.has("start") && at === 1)
  )
    return []
  const fills = cursor.accept("fill", "filling")
  const told = fills ? readTarget(cursor, start, "in") : readPlace(cursor)
  const place = told && eachOfSeveral(cursor, told)
  if (!place || place.at === "made" || !isPlaceOfWork(place)) return []
  const begins = fills ? [] : attached(chart, at, place, start)
  cursor.accept(",", ":")
  const verb = cursor.at
  if (fills && !cursor.take("with")) return []
  acceptWork(cursor)
  cursor.accept(":", ",")
  if (cursor.at > verb) cursor.accept(";", "-")
  const worked = cursor.at > verb
  const from = cursor.at
  if (cursor.done()) return begins
  const opening = cursor.text()
  if (cursor.isNumber() && cursor.is("times", 1))
    return [...begins, ...timesFirst(chart, from, place, start)]
  if (isRepeatMark(opening) && place.at === "each" && worked) {
    // "in each sp work *hdc, dc, hdc*": the marks set off what goes there.
    const close = chart.lexemes.findIndex(({ text }, k) => k > from && text === opening)
    const inner = close > 0 ? chart.readInner(from + 1, close)[0] : undefined
    const again = chart.lexemes[close + 1]?.classes.has("repeat")
    if (inner && inner.steps.length > 0 && inner.steps.every(isUnplaced) && !again) {
      cursor.at = close + 1
      const steps = asPasses(inner.steps)
      const group: Step = { start, end: cursor.lastEnd(), do: "group", steps, place }
      return [...begins, clause(cursor, [group], inner.cost, { remarks: toldWithin(chart, inner) })]
    }
  }
  if (isRepeatMark(opening) && place.at === "next")
    return [...begins, ...starred(chart, from, place, start, worked ? 0 : noVerbCost)]
  if (opening === "(" || opening === "[") {
    const bracket = chart.clausesAt(from).filter(
      (inner) =>
        typeof inner.steps !== "function" &&
        inner.steps.length > 0 &&
        // A bracket with a place of its own does not go into this one as well.
        (place.at === "ring" ||
          !inner.steps.some((step) => step.do === "group" && step.place.at === "next")),
    )
    if (bracket.length > 0)
      return [
        ...begins,
        ...bracket.slice(0, 2).map(
          (inner): Clause => ({
            ...inner,
            end: afterAround(chart, inner.end, place),
            cost: Math.max(0, inner.cost - 0.25),
            steps: [
              bracketIn(
                place,
                inner.steps as readonly Step[],
                start,
                chart.lexemes[inner.end - 1]!.end,
              ),
            ],
          }),
        ),
      ]
  }
  // "(tr, ch 9, tr) in next sp, 3 dtr": the place is the bracket's.
  const ofBracket = before && /^[)\]}]$/.test(before.text) ? ofBracketCost : 0
  return [
    ...begins,
    ...ends(
      chart,
      from,
      place,
      start,
      ofBracket + (worked ? 0 : noVerbCost) + (begins.length > 0 ? 0.15 : 0),
    ),
  ]
}

/** "In the ring work 6 times (2 dc, ch 1)". */
function timesFirst(chart: Chart, at: number, place: Place, start: number): Clause[] {
  return chart.clausesAt(at).flatMap((inner): Clause[] => {
    const [repeat] = typeof inner.steps === "function" ? [] : inner.steps
    if (repeat?.do !== "repeat") return []
    return [{ ...inner, steps: [{ start, end: repeat.end, do: "group", steps: [repeat], place }] }]
  })
}

/** "In next loop work * sc, 3 dc, sc; sl st in next st; rep from *": the mark stands a little late. */
function starred(chart: Chart, at: number, place: Place, start: number, cost: number): Clause[] {
  const found: Clause[] = []
  for (const inner of chart.clausesAt(at)) {
    const repeat = typeof inner.steps === "function" ? undefined : inner.steps[0]
    if (repeat?.do !== "repeat") continue
    let to = 0
    while (to < repeat.body.length && isUnplaced(repeat.body[to])) to += 1
    const inside = repeat.body.slice(0, to)
    if (!inside.some(({ do: what }) => what === "work")) continue
    const group: Step = {
      start,
      end: repeat.end,
      do: "group",
      steps: inside,
      place: inTurnPlace(place),
    }
    const whole: Step = { ...repeat, start, body: [group, ...repeat.body.slice(to)] }
    found.push({
      ...inner,
      cost: inner.cost + cost,
      steps: [whole, ...(inner.steps as readonly Step[]).slice(1)],
    })
  }
  return found
}

/** "in first loop (...), repeat in all other loops": each time in the next of them; else all of it in the one place. */
function bracketIn(place: Place, steps: readonly Step[], start: number, end: number): Step {
  const only = steps.length === 1 ? steps[0] : undefined
  if (only?.do !== "repeat" || only.times.kind !== "until" || place.at !== "next")
    return { start, end, do: "group", steps, place }
  return {
    ...only,
    start,
    end,
    body: [{ start, end, do: "group", steps: only.body, place: inTurnPlace(place) }],
  }
}

/** "in each sp: (...) around", "in each st: (...) in same st": said twice. */
function afterAround(chart: Chart, at: number, place: Place): number {
  if (place.at !== "each") return at
  const cursor = chart.from(at)
  const again = cursor.attempt(() => readPlace(cursor))
  if (again?.at !== "same" && again?.at !== "each") cursor.at = at
  cursor.attempt(() => readUntil(cursor))
  return cursor.at
}

/** "In any ch-2 sp, ch 3, ...": where the round begins. */
function attached(chart: Chart, at: number, place: Place, start: number): Clause[] {
  const { cursor } = chart
  if (at === 1 && cursor.is("with") && cursor.is("chain", 1)) cursor.at += 1
  if (place.at !== "next" || place.count !== 1 || cursor.is("work")) return []
  const begins = at === 1 && cursor.text() === "."
  if (!/^[,:-]$/.test(cursor.text()) && !cursor.is("chain") && !begins) return []
  if (place.order !== "any" && (at > 2 || chart.openMarks.length > 0)) return []
  // "Into first st: 2 dc": that is what goes there.
  if (place.order !== "any" && cursor.text() === ":" && cursor.isNumber(1)) return []
  // "In front loops only": how the stitches are worked, not where the round begins.
  if (place.bare && (place.loops || place.post)) return []
  const end = cursor.lastEnd()
  return [
    clause(
      cursor,
      (before) => (hasWork(before) ? null : [...before, { start, end, do: "attach", place }]),
      0.02,
    ),
  ]
}

/** "In the next 5 sps: 2 dc, ch 1, 2 dc", "in next 3 sps work (...)": each of them has all of it. */
function eachOfSeveral(cursor: Cursor, place: Place): Place {
  const several = place.at === "next" && place.count > 1 && place.pick === undefined
  const leads = cursor.text() === ":" || cursor.is("work") || cursor.is("work", 1)
  return several && leads ? { ...place, each: true } : place
}

function isPlaceOfWork(place: Place): boolean {
  return place.at === "ring" || place.at === "hook-chain" || isOneOrEach(place)
}

/** The list from here on, ended after each of its clauses: the longest first. */
function ends(chart: Chart, from: number, place: Place, start: number, cost: number): Clause[] {
  const whole = stopOf(chart, from)
  // "into every sp put 2 dc and 1 ch all the way round".
  const around = place.at === "each" && chart.lexemes[whole - 1]?.classes.has("around")
  const stop = around ? whole - 1 : whole
  const cuts: number[] = [stop]
  for (let k = stop - 1; k > from && cuts.length < mostEnds; k--) {
    const word = chart.lexemes[k]!
    if (word.text === "," || (word.classes.has("and") && chart.lexemes[k - 1]?.text !== ","))
      cuts.push(k)
  }
  const found: Clause[] = []
  for (const [i, to] of cuts.entries()) {
    const reading = chart.readInner(from, to)[0]
    if (!reading || reading.steps.length === 0 || reading.cost > 1.5) continue
    let steps = asPasses(reading.steps)
    let inside = steps.length
    while (inside > 0 && closesRound(steps[inside - 1]!, place)) inside -= 1
    if (
      inside === 0 ||
      !steps
        .slice(0, inside)
        .some((step) => step.do === "work" || step.do === "repeat" || step.do === "chain")
    )
      continue
    const rest = steps.slice(inside)
    steps = steps.slice(0, inside)
    // What names another place of its own goes there and not into this one.
    const elsewhere = steps.some(
      (step) =>
        (step.do === "work" || step.do === "group") &&
        step.place !== null &&
        step.place.at !== "same" &&
        step.place.at !== "own-chain" &&
        place.at !== "ring",
    )
    const extra = elsewhere ? 1.2 : 0
    const group: Step = { start, end: chart.lexemes[to - 1]!.end, do: "group", steps, place }
    found.push({
      end: to === stop ? whole : to,
      cost: cost + reading.cost + i * shorterListCost + extra,
      steps: [group, ...rest],
      totals: reading.totals,
      remarks: toldWithin(chart, reading),
      names: reading.names,
    })
  }
  return found
}

/** The list is over at the end of the sentence, at a mark or where a repeat is named. */
function stopOf(chart: Chart, from: number): number {
  let depth = 0
  let k = from
  for (; k < chart.lexemes.length; k++) {
    const word = chart.lexemes[k]!
    if (/^[([{]$/.test(word.text)) {
      // A total ends it as well.
      if (
        depth === 0 &&
        chart.lexemes[k + 1]?.type === "number" &&
        /^[)\]]$/.test(chart.lexemes[k + 3]?.text ?? "")
      )
        break
      depth += 1
    }
    if (/^[)\]}]$/.test(word.text)) {
      depth -= 1
      if (depth < 0) break
    }
    if (depth > 0) continue
    if (
      word.text === ";" ||
      word.text === "." ||
      /^\*+$/.test(word.text) ||
      /^[\u2020\u2021]+$/.test(word.text)
    )
      break
    if (word.classes.has("repeat")) break
  }
  return k
}

/** The join after what goes into the ring is no part of it. */
function closesRound(step: Step, of: Place): boolean {
  if (step.do === "join" || step.do === "turn") return true
  if (step.do !== "slip") return false
  const { place } = step
  if (of.at === "ring" && place === null) return true
  return place?.at === "made" || (place?.at === "next" && place.order === "first")
}

/** "... all in same st": of everything just named; "(all in the ring)" too. */
export function allInOne(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const place = readPlace(cursor)
  if (!place || !isPlaceOfWork(place)) return []
  const end = cursor.lastEnd()
  return [
    clause(cursor, (before) => {
      let from = before.length
      const ring = place.at === "ring"
      while (from > 0 && (ring ? !opensRing(before, from) : isUnplaced(before[from - 1]))) from -= 1
      if (!ring && from === 0 && before[0]?.do === "chain") from = 1
      const inner = before.slice(from)
      if (inner.length === 0) return null
      return [
        ...before.slice(0, from),
        { start: inner[0]!.start, end, do: "group", steps: inner, place },
      ]
    }),
  ]
}

/** What stands before made the ring. */
function opensRing(before: readonly Step[], from: number): boolean {
  const step = before[from - 1]
  return step?.do === "ring" || step?.do === "join" || (step?.do === "slip" && from <= 2)
}

/** ", in next st", alone after a list, or "to next sp": where the list just told goes. */
export function listPlace(chart: Chart, at: number): readonly Clause[] {
  const before = chart.lexemes[at - 1]
  if (
    !before ||
    (!/^[,)\]]$/.test(before.text) && !before.classes.has("chain") && before.type !== "number")
  )
    return []
  const cursor = chart.from(at)
  const place = readPlace(cursor)
  if (!place || !isOneOrEach(place) || cursor.is("work")) return []
  const leads = cursor.text() === ","
  const end = cursor.lastEnd()
  return [
    clause(
      cursor,
      (steps) => {
        let from = steps.length
        while (from > 0 && isUnplaced(steps[from - 1])) from -= 1
        if (from === 0 && steps[0]?.do === "chain") from = 1
        const inner = steps.slice(from)
        if (!inner.some((step) => step.do === "work")) return null
        return [
          ...steps.slice(0, from),
          { start: inner[0]!.start, end, do: "group", steps: inner, place },
        ]
      },
      leads ? 0.6 : 0.3,
    ),
  ]
}
