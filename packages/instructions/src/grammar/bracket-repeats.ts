// How often, and where, what stands in a bracket is worked: "(...) 5 times", "(...) in next sp, in next 3 sps".

import type { Place, Step, Times } from "../base/tree.ts"
import type { Chart, Clause } from "./chart.ts"
import { clause, isUnplaced, repeatOf } from "./clauses.ts"
import type { Cursor } from "./cursor.ts"
import { gathered } from "./gathered-lists.ts"
import { atPlace, readPlace } from "./places.ts"
import { readEnding, withRemarks } from "./repeat-endings.ts"
import { readCounted } from "./stitch-names.ts"
import { ofBracket, readTimes, readUntil } from "./until.ts"

export function repeatedBracket(
  chart: Chart,
  body: readonly Step[],
  times: Exclude<Times, { kind: "until" }>,
  start: number,
  cost: number,
  extra: Pick<Clause, "totals" | "remarks" | "names">,
): Clause[] {
  const cursor = chart.cursor
  const repeat = repeatOf(cursor.since(start), body, times)
  const shared = cursor.attempt(() => readSharedPlace(cursor, repeat))
  if (shared) return [clause(cursor, shared, cost, extra)]
  const at = cursor.at
  const place = atPlace(cursor) && cursor.text() !== "to" ? readPlace(cursor) : null
  if (place)
    return [
      clause(
        cursor,
        [
          { ...cursor.since(start), do: "group", steps: [repeat], place },
          ...furtherGroups(cursor, [repeat]),
        ],
        cost,
        extra,
      ),
    ]
  cursor.at = at
  cursor.attempt(() => readUntil(cursor))
  const ended = cursor.attempt(() => {
    cursor.accept(",")
    if (!cursor.is("end") && !cursor.is("omit")) return null
    const found = readEnding(chart, { steps: body, markAt: null })
    return found?.last && found.how ? found : null
  })
  const plain = clause(
    cursor,
    [ended ? { ...repeat, last: ended.last, ending: ended.how, end: cursor.lastEnd() } : repeat],
    cost,
    withRemarks(extra, ended),
  )
  if (ended || !isCorner(body)) return [plain]
  const group: Step = {
    ...cursor.since(start),
    do: "group",
    steps: body,
    place: nextSpace(cursor, start),
  }
  const spaced = { ...repeat, body: [group] }
  return [
    plain,
    clause(cursor, (before) => [...beginsInSpace(before), spaced], cost + inSpaceCost, extra),
  ]
}

/** "Ch 3, 1 dc, ch 1, 2 dc, (2 dc, ch 1, 2 dc) 5 times": what comes before such brackets goes into the first space. */
function beginsInSpace(before: readonly Step[]): readonly Step[] {
  let from = before.length
  while (from > 0 && isUnplaced(before[from - 1])) from -= 1
  if (before[from]?.do === "chain") from += 1
  const steps = before.slice(from)
  const first = steps[0]
  if (!first || !steps.some(({ do: what }) => what === "work")) return before
  const { start, end } = first
  const place: Place = { start, end, at: "same", noun: { what: "space" } }
  return [...before.slice(0, from), { start, end, do: "group", steps, place }]
}

/** A bracket that names no place goes into a space only where it does not go otherwise. */
const inSpaceCost = 0.35

/** "3 dc, ch 2, 3 dc": stitches on both sides of chains, none with a place of its own. */
export function isCorner(body: readonly Step[]): boolean {
  const [first, last] = [body[0], body[body.length - 1]]
  if (first?.do !== "work" || last?.do !== "work" || first.count + last.count < 3) return false
  return (
    body.length > 2 &&
    body.every((step) => (step.do === "work" || step.do === "chain") && step.place === null)
  )
}

/** The next space, though none is named. */
export function nextSpace(cursor: Cursor, start: number): Place {
  return { ...cursor.since(start), at: "next", noun: { what: "space" }, count: 1, bare: true }
}

export function placedBracket(
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
    // "(...) in each loop to make 6 petals": what it comes to, and no further repeat.
    if (times?.kind === "more" && times.untilMade && place.at === "each") return null
    return times?.kind === "until" && place.at !== "next" ? null : times
  })
  if (place.at === "each" && !later && body.some(namesNext)) {
    // "(3 dc in next sp, ch 2) in each sp": over and over.
    const times: Times = { kind: "until", until: { kind: "around" } }
    const repeat = repeatOf(cursor.since(start), body, times)
    return [clause(cursor, [repeat], cost, extra)]
  }
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
    const inner = repeatOf(cursor.since(start), body, later)
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

/** Goes into the next of something by its own words. */
export function namesNext(step: Step): boolean {
  return (
    (step.do === "work" || step.do === "group" || step.do === "slip") &&
    step.place?.at === "next" &&
    step.place.order === undefined &&
    !(step.place.bare && step.place.noun.what === "gap")
  )
}

/** "(2 sc, inc) repeat 6 times", "(2 sc, inc) * 6": said of the bracket just closed. */
export function readBracketTimes(cursor: Cursor): Times | null {
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
      if (!times && cursor.is("end")) return { kind: "until", until: { kind: "around" } }
      return ofBracket(times)
    }
    // "(sc, inc) * 6", and "(sc3, inc)6 (30)" with its total behind it.
    const bare = cursor.isNumber() && /^[([]$/.test(cursor.text(1)) && cursor.isNumber(2)
    if (!bare && (cursor.text() !== "*" || !cursor.isNumber(1) || !endsTimes(cursor))) return null
    if (!bare) cursor.at += 1
    const count = cursor.value()
    cursor.at += 1
    return { kind: "total", count }
  })
}

/** After "* 6": the end, a total, or a join; a stitch would make the asterisk open a repeat. */
function endsTimes(cursor: Cursor): boolean {
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
