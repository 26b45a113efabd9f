// Stitches spelled out hook by hook: a cluster as "(yo, insert hook in st, draw up a loop, yo, draw through
// 2 loops) 3 times, yo and draw through all loops", a popcorn as "5 dc in next st, drop loop, insert hook in
// first dc, draw dropped loop through".

import type { BasicStitch, StitchKind } from "@roundwright/stitches"
import { readPlace } from "./place-grammar.ts"
import type { Place, Step } from "./tree.ts"
import type { Words } from "./words.ts"

/** Longest spelling of one stitch, in words. */
const longestSpelling = 60

/** "drop loop ... through": the stitches just worked in one place become one popcorn. */
export function readDroppedLoop(words: Words, steps: readonly Step[]): Step[] | null {
  if (/^(?:complete|finish|close)$/.test(words.text())) return readCompleted(words, steps)
  if (!/^(?:drop|remove|withdraw|take)$/.test(words.text())) return null
  return words.attempt((): Step[] | null => {
    if (!words.accept("drop", "remove", "withdraw", "take")) return null
    words.accept("the", "your")
    if (!words.accept("loop", "lp", "hook")) return null
    for (let i = 0; i < longestSpelling; i++) {
      if (words.done() || /^[*;[\]]$/.test(words.text())) return null
      if (words.accept("through", "thru")) break
      words.at += 1
    }
    words.accept("it", "st", "stitch", "this", "to")
    words.accept("st", "close", "tighten")
    const last = steps[steps.length - 1]
    if (last?.do !== "work" || last.count < 3 || last.stitch.kind.gathered) return null
    const kind: StitchKind = { ...last.stitch.kind, gathered: { how: "popcorn", legs: last.count } }
    return [{ ...last, end: words.lastEnd(), stitch: { kind, tog: false }, count: 1 }]
  })
}

/** "4 dc in ring, complete as popcorn". */
function readCompleted(words: Words, steps: readonly Step[]): Step[] | null {
  return words.attempt((): Step[] | null => {
    words.at += 1
    words.accept("as", "into", "to")
    words.accept("a", "the", "form")
    if (!words.accept("popcorn", "pc")) return null
    const last = steps[steps.length - 1]
    if (last?.do !== "work" || last.count < 3 || last.stitch.kind.gathered) return null
    const kind: StitchKind = { ...last.stitch.kind, gathered: { how: "popcorn", legs: last.count } }
    return [{ ...last, end: words.lastEnd(), stitch: { kind, tog: false }, count: 1 }]
  })
}

/** "(yo, insert hook in next st, draw up a loop, yo, draw through 2 loops) 3 times, yo, draw through all loops". */
export function readSpelledCluster(words: Words): Step[] | null {
  return words.attempt((): Step[] | null => {
    const start = words.start()
    const opening = words.text()
    const close = opening === "(" ? ")" : opening === "[" ? "]" : opening === "*" ? "*" : null
    if (!close) return null
    words.at += 1
    let wraps = 0
    while (words.accept("yo", "yoh", "wrap", "yarn")) {
      if (words.tokens[words.at - 1]?.text === "yarn") words.accept("over", "round")
      wraps += 1
      words.accept("hook")
      if (words.accept("twice")) wraps += 1
      words.accept(",", "and")
    }
    if (wraps === 0 || !words.accept("insert", "put")) return null
    words.accept("your", "the")
    words.accept("hook")
    const place = readPlace(words)
    let draws = 0
    for (let i = 0; i < longestSpelling; i++) {
      if (words.done()) return null
      if (words.text() === close) break
      if (words.text() === "2" || words.text() === "two") draws += 1
      words.at += 1
    }
    if (!words.accept(close)) return null
    words.accept("x")
    const legs = words.isNumber() ? words.value() : words.text() === "twice" ? 2 : Number.NaN
    if (!Number.isInteger(legs) || legs < 2) return null
    words.at += 1
    words.accept("times")
    const after = words.text() === "in" || words.text() === "into" ? readPlace(words) : null
    const inner = place ?? after
    const together = place !== null && after?.at !== "same"
    if (!acceptDrawThroughAll(words)) return null
    const basic = basicOf(wraps, draws)
    const how = draws === 0 ? ("puff" as const) : ("cluster" as const)
    const kind: StitchKind = { basic, gathered: { how, legs } }
    const each = inner?.at === "next" && inner.count === 1 && inner.noun.what === "stitch"
    const over: Place | null = each && together ? { ...inner, count: legs, over: true } : inner
    return [
      {
        ...words.since(start),
        do: "work",
        stitch: { kind, tog: draws > 0 },
        count: 1,
        place: over,
      },
    ]
  })
}

/** ", yo and draw through all loops on hook, ch 1 to close". */
function acceptDrawThroughAll(words: Words): boolean {
  words.accept(",", ";")
  words.accept("then", "and")
  if (!words.accept("yo", "yoh", "yarn")) return false
  words.accept("over", "hook")
  words.accept(",", "and")
  if (!words.accept("draw", "pull")) return false
  words.accept("yarn", "loop", "it")
  if (!words.accept("through", "thru")) return false
  for (let i = 0; i < 8; i++) {
    if (/^(?:[,;.)*\]]|ch)?$/.test(words.text())) break
    words.at += 1
  }
  return true
}

/** Wraps before the hook goes in, and how often two loops are drawn through: a half treble has none. */
function basicOf(wraps: number, draws: number): BasicStitch {
  if (draws === 0) return "hdc"
  return wraps === 1 ? "dc" : wraps === 2 ? "tr" : "dtr"
}
