// What may follow a stitch: chains between, legs spelled out, spacing, "first and last of the side".

import { readNoun } from "./nouns.ts"
import { readPlace } from "./place-grammar.ts"
import { readKind } from "./stitch-grammar.ts"
import type { Place, Step, StitchName } from "../base/tree.ts"
import type { Words } from "./words.ts"
import { readCounted } from "./work-grammar.ts"

/** "with ch 2 between", ", ch 3 between each": chains after every stitch. */
export function readBetween(words: Words): number | null {
  const ahead = words.text() === "," ? 1 : 0
  if (!words.isNumber(ahead) && !/^(?:with|ch|chain)$/.test(words.text(ahead))) return null
  return words.attempt(() => {
    words.accept(",")
    words.accept("with")
    const before = words.isNumber() && /^(?:ch|chs|chain|chains)$/.test(words.text(1))
    if (!before && (!words.accept("ch", "chain") || !words.isNumber())) return null
    const chains = words.value()
    words.at += before ? 2 : 1
    if (!words.accept("between")) return null
    words.accept("each", "every", "them", "the")
    // "ch 1 between groups" is said of whole groups.
    if (/^(?:groups?|shells?|sets|clusters?)$/.test(words.text())) return null
    words.accept("of")
    if (!words.accept("st", "sts", "stitch", "one")) words.attempt(() => readKind(words))
    return chains
  })
}

/** "2 dc in first and last dc of the side, 1 dc in each between": three steps of one side. */
export function readFirstAndLast(
  words: Words,
  stitch: StitchName,
  count: number,
  start: number,
): Step[] | null {
  if (words.text() !== "in" || (words.text(1) !== "first" && words.text(2) !== "first")) return null
  return words.attempt((): Step[] | null => {
    if (!words.accept("in")) return null
    words.accept("the")
    if (!words.acceptAll("first", "and", "last")) return null
    words.accept("of")
    readNoun(words)
    if (words.accept("of", "on")) {
      words.accept("the", "each", "a", "next")
      readNoun(words)
    }
    words.accept(",", ";")
    words.accept("and")
    const inner = readCounted(words)
    if (!inner || !words.accept("in", "into")) return null
    if (!words.accept("each", "all")) return null
    words.accept("st", "stitch", "of")
    words.accept("the", "those")
    words.accept("sts", "stitches", "others")
    words.accept("between", "in", "other", "others")
    words.accept("between")
    const span = words.since(start)
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
export function readSpread(words: Words): boolean {
  return (
    words.attempt(() => {
      words.accept(",")
      if (words.accept("evenly")) {
        words.accept("spaced", "placed", "around")
        return true
      }
      if (!words.accept("placed", "spaced", "set")) return null
      if (words.accept("evenly")) return true
      words.accept("by", "in")
      words.accept("turns", "turn")
      while (words.isNumber() || words.accept("and", "or", ",")) if (words.isNumber()) words.at += 1
      readNoun(words)
      return words.accept("apart", "between") ? true : null
    }) !== null
  )
}

/** Legs spelled out: "tr4tog (3 legs in next ch-3 sp, 1 leg in next dc)". */
export function readLegs(words: Words): { count: number; place: Place }[] | null {
  return words.attempt(() => {
    if (!words.accept("(", "[")) return null
    const legs: { count: number; place: Place }[] = []
    while (!words.done() && !/^[)\]]$/.test(words.text())) {
      if (words.accept(",", "and", ";", "&")) continue
      if (!words.isNumber()) return null
      const count = words.value()
      words.at += 1
      if (!words.accept("leg", "legs")) return null
      const place = readPlace(words)
      if (!place) return null
      legs.push({ count, place })
    }
    if (!words.accept(")", "]") || legs.length === 0) return null
    return legs
  })
}

/** "with 1 increase in the 4th": which stitch of the run is doubled. */
export function readDoubled(words: Words): number | null {
  return words.attempt(() => {
    words.accept(",")
    if (!words.accept("with")) return null
    words.accept("1", "one", "an", "a")
    if (!words.accept("increase", "inc") || !words.accept("in", "on")) return null
    words.accept("the")
    const token = words.peek()
    if (token?.type !== "ordinal") return null
    words.at += 1
    words.accept("st", "stitch", "sc", "dc")
    return token.value
  })
}
