// Stitches: "3 dc in next st", "dc in next 3 sts", "2 sc in each st around", "dc3tog over next 3 dc",
// "1 dark sc and 1 light sc in next sc", "36 sc evenly, increasing 6".

import type { Place, Span, Step, StitchName } from "../base/tree.ts"
import type { Chart, Clause } from "./chart.ts"
import { clause, isUnplaced } from "./clauses.ts"
import type { Cursor } from "./cursor.ts"
import { readEven, readGrowth } from "./evenly.ts"
import { gathered, isOneOrEach } from "./gathered-lists.ts"
import {
  readBetweenChains,
  readDoubled,
  readFirstAndLast,
  readLegs,
  readSpread,
} from "./make-extras.ts"
import { placed, readWorkPlace } from "./make-places.ts"
import { readPair, readShared } from "./make-shared.ts"
import { readNoun } from "./nouns.ts"
import { readPlace } from "./places.ts"
import { type CountedStitch, readCounted } from "./stitch-names.ts"
import { timesOfList } from "./times-of-list.ts"
import { readUntil } from "./until.ts"

/** Gathering the stitches before it into a place no bracket says is dearer than leaving them where they are. */
const looseListCost = 0.4

/** A round that has gone around goes on with a list only if a place for it follows. */
const afterRoundCost = 0.3

/** "Around" is said of the last stitch sooner than of the list before it. */
const listAroundCost = 0.2

/** Two stitches told without figures go into one place, unless the counts say otherwise. */
const pairCost = 0

/** "dc, ch 1, dc all in same st": one stitch alone is hardly meant. */
const allCost = 0.3

export function makeStitches(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  while (cursor.is("work") && !cursor.isNumber() && cursor.at < at + 3) cursor.at += 1
  const start = cursor.start()
  const named = cursor.at
  const shared = readShared(cursor, start)
  if (shared) return [clause(cursor, shared)]
  const pair = readPair(cursor, start)
  const paired = pair ? [clause(cursor, pair, pairCost)] : []
  if (pair) cursor.at = named
  const begins = chart.lexemes[at]!.classes.has("start")
  const sentence = chart.lexemes[at - 1]?.text === "."
  const counted = readCounted(cursor)
  if (!counted || (counted.stitch.kind.basic === "sl st" && !counted.stitch.kind.gathered))
    return []
  acceptOtherName(cursor, counted)
  // "beg cl (ch 2, 2-dc cl) in same sp": the bracket says how it is made.
  if (begins && counted.stitch.kind.gathered && /^[([]$/.test(cursor.text()))
    return [clause(cursor, [], 0.02)]
  const led = chart.lexemes[at - 1]?.classes
  const crossed = timesOfList(chart, cursor, counted, start)
  const goesOn =
    chart.lexemes[at]!.classes.has("work") || led?.has("and") === true || led?.has("with") === true
  const told = [...afterName(cursor, counted, start, sentence, goesOn), ...paired]
  return crossed === null ? told : [...told, crossed]
}

/** "dc3tog (3 dc cluster) in next st", "dc (double crochet)": the bracket names the same stitch again. */
function acceptOtherName(cursor: Cursor, { stitch }: CountedStitch): void {
  cursor.attempt(() => {
    if (!cursor.accept("(")) return null
    const again = readCounted(cursor)
    if (again?.count !== 1 || !cursor.accept(")")) return null
    const { basic, gathered } = again.stitch.kind
    const same = basic === stitch.kind.basic && gathered?.legs === stitch.kind.gathered?.legs
    return same ? true : null
  })
}

/** Everything that may follow the name of a stitch. */
function afterName(
  cursor: Cursor,
  { count, stitch, counted }: CountedStitch,
  start: number,
  sentence: boolean,
  goesOn: boolean,
): readonly Clause[] {
  const ends = readFirstAndLast(cursor, stitch, count, start)
  if (ends) return [clause(cursor, ends)]
  const legs = stitch.kind.gathered ? readLegs(cursor) : null
  if (legs)
    return [
      clause(cursor, [{ ...cursor.since(start), do: "work", stitch, count, place: null, legs }]),
    ]
  const even = readEven(cursor)
  if (even !== null) {
    const step: Step = {
      ...cursor.since(start),
      do: "work",
      stitch,
      count: (even > 0 && count === 1) || !counted ? 0 : count,
      place: null,
      even: true,
      ...(even > 0 ? { extra: even } : {}),
    }
    return [clause(cursor, [step])]
  }
  const until = aroundThing(cursor) ? null : readUntil(cursor)
  // "one hdc round" names a round rather than a stitch worked around.
  const roundNamed = counted && count === 1 && cursor.lexemes[cursor.at - 1]!.text === "round"
  if (until) {
    const around = clause(
      cursor,
      untilSteps(cursor, stitch, count, until, start),
      roundNamed ? 0.5 : 0,
    )
    return until.kind === "around"
      ? [around, listAround(cursor, stitch, count, until, start)]
      : [around]
  }
  // "dc again in same st".
  if (cursor.text() === "again" && cursor.is("in", 1)) cursor.at += 1
  const named = cursor.at
  const twice = readTwice(cursor)
  const all = cursor.text() === "all"
  const place = readWorkPlace(cursor)
  if (twice !== null && place) return [clause(cursor, placed(cursor, stitch, twice, place, start))]
  cursor.at = twice !== null && !place ? named : cursor.at
  if (place) {
    const growth = count === 1 && isEveryStitch(place) ? readGrowth(cursor) : null
    if (growth !== null) return [clause(cursor, [growing(cursor.since(start), stitch, growth)])]
  }
  const doubled = place || count < 2 ? null : readDoubled(cursor)
  if (doubled !== null)
    return [
      clause(cursor, [{ ...cursor.since(start), do: "work", stitch, count, place: null, doubled }]),
    ]
  const between = readBetweenChains(cursor)
  if (between !== null)
    return [clause(cursor, withBetween(cursor, stitch, count, place, between, start))]
  if (place && cursor.is("to")) acceptToJoin(cursor)
  const steps = placed(cursor, stitch, count, place, start)
  const plain = clause(
    cursor,
    place ? steps : (before) => (wentRound(before, sentence) ? null : [...before, ...steps]),
    all ? allCost : place || counted ? 0 : 0.02,
  )
  const alternatives = [plain]
  if (!place && goesOn)
    // "sc in each st around and 2 sc, ch 2, 2 sc in each corner": a list begins.
    alternatives.push(
      clause(
        cursor,
        (before) => (wentRound(before) ? [...before, ...steps] : null),
        afterRoundCost,
      ),
    )
  const gathers = place && isOneOrEach(place) && steps.length === 1 && !stitch.tog
  if (gathers) {
    const inner: Step = { ...cursor.since(start), do: "work", stitch, count, place: null }
    alternatives.push(
      clause(cursor, (before) => gathered(before, [inner], place), all ? 0 : looseListCost),
    )
  }
  const times = place ? readTimesAfter(cursor) : null
  if (times !== null && place?.at === "ring") {
    // "3 ch, 1 tr into the ring 4 times": the chains before it go with it.
    const span = cursor.since(start)
    alternatives.push(
      clause(cursor, (before) => {
        const last = before[before.length - 1]
        const chained = last?.do === "chain" && before.length > 1 && !last.countsAs
        const body = chained ? [last, steps[0]!] : [steps[0]!]
        const kept = chained ? before.slice(0, -1) : before
        return [
          ...kept,
          {
            ...span,
            do: "repeat",
            body,
            last: null,
            ending: null,
            times: { kind: "total", count: times },
          },
        ]
      }),
    )
  }
  if (times !== null && place?.at === "next" && place.count === 1)
    alternatives.push(clause(cursor, [repeated(cursor.since(start), { ...steps[0]! }, times)], 0))
  return alternatives
}

/** "1 sc, inc around": all of the list goes around, if the counts say so. */
function listAround(
  cursor: Cursor,
  stitch: StitchName,
  count: number,
  until: NonNullable<ReturnType<typeof readUntil>>,
  start: number,
): Clause {
  const span = cursor.since(start)
  const last: Step = { ...span, do: "work", stitch, count, place: null }
  return clause(
    cursor,
    (before) => {
      let from = before.length
      while (from > 0 && before[from - 1]?.do === "work" && isUnplaced(before[from - 1])) from -= 1
      if (from === before.length) return null
      const body = [...before.slice(from), last]
      const times = { kind: "until" as const, until }
      return [
        ...before.slice(0, from),
        { ...span, do: "repeat", body, last: null, ending: null, times },
      ]
    },
    listAroundCost,
  )
}

/** The round has been worked to its end or joined: a stitch with no place of its own is a total, or talk. */
function wentRound(before: readonly Step[], sentence = false): boolean {
  const last = before[before.length - 1]
  if (!last) return false
  if (last.do === "join") return !last.ring
  // "8 sc in ring; ss. 9 sc": a slip stitch at the end of a sentence joins.
  if (last.do === "slip")
    return last.place?.at === "made" || (sentence && last.place === null && before.length > 1)
  if (last.do === "repeat") return last.times.kind === "until" && last.times.until.kind === "around"
  if (last.do !== "work" && last.do !== "group") return false
  return (
    last.place?.at === "each" && last.place.until.kind === "around" && !last.place.until.implied
  )
}

/** "2 dc in next st 6 times", "dc in next st x 6". */
function readTimesAfter(cursor: Cursor): number | null {
  return cursor.attempt(() => {
    const crossed = cursor.accept("x")
    const count = cursor.takeCount(2)
    if (count === null) return null
    return crossed || cursor.take("times") ? count : null
  })
}

function repeated(span: Span, step: Step, count: number): Step {
  return {
    ...span,
    do: "repeat",
    body: [step],
    last: null,
    ending: null,
    times: { kind: "total", count },
  }
}

/** "dc twice in next st", "sc in same st twice" is told elsewhere. */
function readTwice(cursor: Cursor): number | null {
  if (!/^(?:twice|thrice|two times|three times)$/.test(cursor.text())) return null
  const count = /^(?:twice|two)/.test(cursor.text()) ? 2 : 3
  cursor.at += 1
  return count
}

function untilSteps(
  cursor: Cursor,
  stitch: StitchName,
  count: number,
  until: NonNullable<ReturnType<typeof readUntil>>,
  start: number,
): Step[] {
  if (stitch.tog && stitch.kind.gathered?.how === "together") {
    // "sc2tog around": one after the other until the round is used up.
    const body: Step[] = [{ ...cursor.since(start), do: "work", stitch, count, place: null }]
    return [
      {
        ...cursor.since(start),
        do: "repeat",
        body,
        last: null,
        ending: null,
        times: { kind: "until", until },
      },
    ]
  }
  const growth = readGrowth(cursor)
  if (growth !== null) return [growing(cursor.since(start), stitch, growth)]
  const place: Place = {
    ...cursor.since(start),
    at: "each",
    nouns: [{ what: "stitch" }],
    until,
    unsaid: true,
  }
  return [{ ...cursor.since(start), do: "work", stitch, count, place }]
}

function withBetween(
  cursor: Cursor,
  stitch: StitchName,
  count: number,
  place: Place | null,
  between: number,
  start: number,
): Step[] {
  if (!place && count > 1 && readSpread(cursor))
    return [{ ...cursor.since(start), do: "work", stitch, count, place: null, even: true, between }]
  const spaced = !place && count > 1 ? readPlace(cursor) : null
  if (spaced) {
    // "2 dc with ch 2 between in each ch-2 sp": all of it goes there.
    const span = cursor.since(start)
    const one: Step = { ...span, do: "work", stitch, count: 1, place: null }
    const chain: Step = { ...span, do: "chain", chains: between, place: null }
    const rest = Array.from({ length: Math.min(count, 50) - 1 }, () => [chain, one]).flat()
    return [{ ...span, do: "group", steps: [one, ...rest], place: spaced }]
  }
  return [{ ...cursor.since(start), do: "work", stitch, count, place, between }]
}

/** So many more than the round before has, spread evenly. */
export function growing(span: Span, stitch: StitchName, extra: number): Step {
  return { ...span, do: "work", stitch, count: 0, place: null, even: true, extra }
}

/** "in each st around": before ", increasing 6 evenly". */
function isEveryStitch(place: Place): boolean {
  return (
    place.at === "each" &&
    place.until.kind === "around" &&
    place.every === undefined &&
    place.pick === undefined &&
    place.nouns.length === 1 &&
    place.nouns[0]?.what === "stitch" &&
    !place.nouns[0].corner
  )
}

function acceptToJoin(cursor: Cursor): void {
  cursor.attempt(() => {
    if (!cursor.take("to") || !(cursor.is("join") || cursor.is("forms"))) return null
    cursor.at += 1
    cursor.take("round")
    return /^[,;.()]?$/.test(cursor.text()) ? true : null
  })
}

/** "around the ring", "around next dc": a place, not an end. */
function aroundThing(cursor: Cursor): boolean {
  if (!cursor.is("around") || cursor.is("until")) return false
  if (/^(?:over|through|thru|under)$/.test(cursor.text())) return true
  const one = (name: Parameters<Cursor["is"]>[0]) => cursor.is(name, 1)
  if (
    one("next") ||
    one("each") ||
    one("same") ||
    one("post") ||
    one("ring") ||
    one("bought-ring") ||
    one("that")
  ) {
    // "sc across each side": how far it goes.
    return !(cursor.text() === "along each side" || (one("each") && cursor.is("side", 2)))
  }
  // "23 dc round into the ring".
  if (one("in") && (cursor.is("ring", 2) || cursor.is("drawn-ring", 2))) {
    cursor.at += 1
    return true
  }
  if (/^(?:front|back|cord)$/.test(cursor.text(1))) return true
  // "FPdc around FPdc": the post of that one.
  const word = cursor.peek(1)
  if (word?.type !== "word" || word.classes.size > 0) return false
  const at = cursor.at
  cursor.at += 1
  const noun = readNoun(cursor)
  cursor.at = at
  return noun !== null
}
