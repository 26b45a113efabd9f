// Rounds told by their totals: "36 sc evenly, increasing 6", "inc 6 evenly around", "work even".

import type { Place, Span, Step, StitchName } from "../base/tree.ts"
import type { Cursor } from "./cursor.ts"
import { readPlace } from "./places.ts"
import { readStitch } from "./stitch-names.ts"
import { readUntil } from "./until.ts"

const sameStitch: StitchName = { kind: { basic: "sc" }, tog: false, shape: "same" }

/** "work even", "inc 6 evenly around", "dec 4 evenly": the round's own stitch over the whole round. */
export function readWholeRound(cursor: Cursor): Step[] | null {
  return cursor.attempt((): Step[] | null => {
    const start = cursor.start()
    cursor.take("work")
    if (cursor.is("even") && !cursor.is("stitch", 1)) {
      cursor.at += 1
      const named = cursor.attempt(() => (cursor.take("in", "with") ? readStitch(cursor) : null))
      readUntil(cursor)
      return [oneInEach(cursor.since(start), named ?? sameStitch)]
    }
    const plain = cursor.attempt(() => readRoundOf(cursor))
    if (plain) return [oneInEach(cursor.since(start), plain)]
    const growth = readGrowth(cursor)
    if (growth === null) return null
    readUntil(cursor)
    return [
      {
        ...cursor.since(start),
        do: "work",
        stitch: sameStitch,
        count: 0,
        place: null,
        even: true,
        extra: growth,
      },
    ]
  })
}

function oneInEach(span: Span, stitch: StitchName): Step {
  const place: Place = {
    ...span,
    at: "each",
    nouns: [{ what: "stitch" }],
    until: { kind: "around" },
  }
  return { ...span, do: "work", stitch, count: 1, place }
}

/** "one round of sc", "a plain round of dc": one in each stitch. */
function readRoundOf(cursor: Cursor): StitchName | null {
  if (cursor.isNumber() && cursor.takeCount(1) !== 1) return null
  cursor.accept("a", "one", "plain", "single")
  cursor.accept("plain", "more")
  if (!cursor.take("round") || !cursor.accept("of", "in")) return null
  const stitch = readStitch(cursor)
  readUntil(cursor)
  return stitch && /^[,;.]?$/.test(cursor.text()) ? stitch : null
}

/** ", increasing 6 sts evenly", "inc 6 evenly", "decreasing 4 evenly": how many more or fewer. */
export function readGrowth(cursor: Cursor): number | null {
  return cursor.attempt(() => {
    cursor.accept(",")
    cursor.take("and")
    cursor.take("with")
    const fewer = cursor.is("decrease")
    let count: number | null
    if (cursor.is("increase") || fewer) {
      cursor.at += 1
      count = cursor.takeCount(1)
    } else {
      // "with 6 increases evenly"
      count = cursor.takeCount(1)
      if (!cursor.is("increase")) return null
      cursor.at += 1
    }
    if (count === null) return null
    cursor.take("stitch", "times")
    readStitch(cursor)
    const at = cursor.at
    cursor.accept("spread", "spaced")
    if (!cursor.take("evenly")) acceptEachRound(cursor)
    if (cursor.at === at) return null
    acceptEachRound(cursor)
    return fewer ? -count : count
  })
}

/** "each round", "in every rnd", "on each side". */
export function acceptEachRound(cursor: Cursor): void {
  cursor.attempt(() => {
    cursor.take("in")
    if (!cursor.take("each") && !cursor.accept("per")) return null
    cursor.take("next")
    return cursor.take("round", "side", "times") ? true : null
  })
}

/** "evenly", "evenly, increasing 6", ", 9 increases spread evenly": the increases, 0 if none are named. */
export function readEven(cursor: Cursor): number | null {
  return cursor.attempt(() => {
    let increases = 0
    let even = cursor.take("evenly")
    if (even) cursor.accept("spaced", "spread")
    cursor.attempt(() => {
      cursor.accept(",")
      cursor.take("with", "and")
      if (cursor.is("increase") || cursor.is("decrease")) {
        cursor.at += 1
        const count = cursor.takeCount(1)
        if (count === null) return null
        increases = count
        cursor.take("stitch", "times")
        if (cursor.take("evenly")) even = true
        return true
      }
      const count = cursor.takeCount(1)
      if (count === null) return null
      cursor.take("evenly")
      cursor.accept("spaced")
      if (!cursor.take("increase")) return null
      cursor.accept("spread", "spaced", "placed", "distributed")
      if (cursor.take("evenly")) even = true
      increases = count
      return even ? true : null
    })
    if (!even) return null
    cursor.take("around")
    cursor.attempt(() => {
      // ", the first in the first st of the round" says where they begin.
      cursor.accept(",")
      if (!cursor.take("first")) return null
      const place = readPlace(cursor)
      if (!place) return null
      cursor.attempt(() => (cursor.accept("of") && cursor.take("round") ? true : null))
      return true
    })
    return increases
  })
}
