// What may follow a stitch: chains between, legs spelled out, spacing, "first and last of the side".

import type { Place, Step, StitchName } from "../base/tree.ts"
import type { Cursor } from "./cursor.ts"
import { readNoun } from "./nouns.ts"
import { readPlace } from "./places.ts"
import { readCounted, readKind } from "./stitch-names.ts"

/** "ch 2", "2 ch": how many chains; null when none are told. */
export function readChainCount(cursor: Cursor): number | null {
  return cursor.attempt(() => {
    if (cursor.isNumber()) {
      const before = cursor.takeCount(1)
      cursor.accept("-")
      return before !== null && cursor.take("chain") ? before : null
    }
    if (!cursor.take("chain")) return null
    cursor.accept("-")
    cursor.attempt(() => (cursor.accept("of") && cursor.isNumber() ? true : null))
    return cursor.takeCount(1)
  })
}

/** "with ch 2 between", ", ch 3 between each", "separated by ch 1": chains after every stitch. */
export function readBetweenChains(cursor: Cursor): number | null {
  return cursor.attempt(() => {
    cursor.accept(",")
    if (cursor.accept("separated", "parted", "divided")) {
      cursor.accept("by")
      cursor.take("with")
      return readChainCount(cursor)
    }
    cursor.take("with")
    const chains = readChainCount(cursor)
    if (chains === null || !cursor.take("between")) return null
    cursor.take("each", "that")
    // "ch 1 between groups" is said of whole groups.
    if (cursor.is("group")) return null
    cursor.accept("of", "them")
    if (!cursor.take("stitch", "place")) cursor.attempt(() => readKind(cursor))
    return chains
  })
}

/** "2 dc in first and last dc of the side, 1 dc in each between": three steps of one side. */
export function readFirstAndLast(
  cursor: Cursor,
  stitch: StitchName,
  count: number,
  start: number,
): Step[] | null {
  if (!cursor.is("in") || !cursor.is("first", 1)) return null
  return cursor.attempt((): Step[] | null => {
    cursor.at += 2
    if (!cursor.take("and") || !cursor.take("last")) return null
    cursor.accept("of")
    readNoun(cursor)
    if (cursor.take("of", "in")) {
      cursor.take("each", "next")
      readNoun(cursor)
    }
    cursor.accept(",", ";")
    cursor.take("and")
    const inner = readCounted(cursor)
    if (!inner || !cursor.take("in") || !cursor.take("each")) return null
    cursor.take("stitch")
    cursor.accept("of")
    cursor.take("that", "stitch", "rest")
    cursor.take("between", "in", "rest")
    cursor.take("between")
    const span = cursor.since(start)
    const next: Place = { ...span, at: "next", noun: { what: "stitch" }, count: 1 }
    const between: Place = {
      ...span,
      at: "each",
      nouns: [{ what: "stitch" }],
      until: { kind: "leaving", count: 1, ofGroup: true },
    }
    return [
      { ...span, do: "work", stitch, count, place: next },
      { ...span, do: "work", stitch: inner.stitch, count: inner.count, place: between },
      { ...span, do: "work", stitch, count, place: next },
    ]
  })
}

/** ", placed by turns 2 and 3 dc apart", ", evenly spaced". */
export function readSpread(cursor: Cursor): boolean {
  return (
    cursor.attempt(() => {
      cursor.accept(",")
      if (cursor.take("evenly")) return true
      if (!cursor.accept("placed", "spaced", "set")) return null
      if (cursor.take("evenly")) return true
      cursor.accept("by", "in")
      cursor.accept("turns", "turn")
      while (cursor.isNumber() || cursor.take("and") || cursor.accept("or", ","))
        if (cursor.isNumber()) cursor.at += 1
      readNoun(cursor)
      return cursor.accept("apart", "between") ? true : null
    }) !== null
  )
}

/** Legs spelled out: "tr4tog (3 legs in next ch-3 sp, 1 leg in next dc)". */
export function readLegs(cursor: Cursor): { count: number; place: Place }[] | null {
  return cursor.attempt(() => {
    if (!cursor.accept("(", "[")) return null
    const legs: { count: number; place: Place }[] = []
    while (!cursor.done() && !/^[)\]]$/.test(cursor.text())) {
      if (cursor.accept(",", ";") || cursor.take("and")) continue
      const count = cursor.takeCount(1)
      if (count === null || !cursor.accept("leg", "legs")) return null
      const place = readPlace(cursor)
      if (!place) return null
      legs.push({ count, place })
    }
    return cursor.accept(")", "]") && legs.length > 0 ? legs : null
  })
}

/** "with 1 increase in the 4th": which stitch of the run is doubled. */
export function readDoubled(cursor: Cursor): number | null {
  return cursor.attempt(() => {
    cursor.accept(",")
    if (!cursor.take("with")) return null
    cursor.takeCount(1)
    if (!cursor.take("increase") || !cursor.take("in")) return null
    const token = cursor.peek()
    if (token?.type !== "ordinal") return null
    cursor.at += 1
    cursor.take("stitch")
    cursor.accept("sc", "dc")
    return token.value
  })
}
