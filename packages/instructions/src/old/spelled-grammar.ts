// Stitches spelled out hook by hook: a cluster as "(yo, insert hook in st, draw up a loop, yo, draw through
// 2 loops) 3 times, yo and draw through all loops", a popcorn as "5 dc in next st, drop loop, insert hook in
// first dc, draw dropped loop through".

import type { BasicStitch, StitchKind } from "@roundwright/stitches"
import { readPlace } from "./place-grammar.ts"
import { readKind } from "./stitch-grammar.ts"
import type { Place, Step } from "../base/tree.ts"
import type { Words } from "./words.ts"

/** Longest spelling of one stitch, in words. */
const longestSpelling = 60

const endsPopcorn = new Set("complete finish close drop remove withdraw take".split(" "))

/** "drop loop ... through": the stitches just worked in one place become one popcorn. */
export function readDroppedLoop(words: Words, steps: readonly Step[]): Step[] | null {
  if (!endsPopcorn.has(words.text())) return null
  if (/^(?:complete|finish|close)$/.test(words.text())) return readCompleted(words, steps)
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
    while (words.accept("yo", "yoh", "yrh", "wrap", "yarn")) {
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

/**
 * "3 tr in next sp leaving last loop of each on hook, yo and draw through all loops", and with what is said of
 * the loops before the stitches.
 */
export function readHeldBack(words: Words): Step[] | null {
  if (!holdingWords.some((word) => words.has(word))) return null
  return words.attempt((): Step[] | null => {
    const start = words.start()
    const before = acceptHoldingBack(words)
    words.accept(",")
    words.accept("work", "make", "and")
    if (!words.isNumber()) return null
    const legs = words.value()
    words.at += 1
    const kind = readKind(words)
    if (!kind || kind.gathered || !Number.isInteger(legs) || legs < 2) return null
    const place = readPlace(words)
    if (!before) {
      words.accept(",")
      if (!acceptHoldingBack(words)) return null
    }
    const after = place ?? readPlace(words)
    if (!acceptDrawThroughAll(words)) return null
    const spread = after?.at === "next" && after.count === legs
    const gathered: StitchKind = { ...kind, gathered: { how: "cluster", legs } }
    return [
      {
        ...words.since(start),
        do: "work",
        stitch: { kind: gathered, tog: spread },
        count: 1,
        place: after,
      },
    ]
  })
}

const holdingWords = [
  "leaving",
  "leave",
  "holding",
  "hold",
  "keeping",
  "keep",
  "retaining",
] as const

/** What may be said of the loops on the hook. */
const aboutLoops =
  /^(?:all|the|your|both|of|each|every|st|sts|stitch|stitches|on|onto|hook|loop|loops|lp|lps|remaining|rem|left|at|once|together|for|same|to|time)$/

/** Words between "leaving" and "on hook", at most. */
const longestHolding = 12

/** "leaving last loop of each on hook", "holding back the last loop of each tr", "keeping last loop on hook". */
function acceptHoldingBack(words: Words): boolean {
  return (
    words.attempt(() => {
      if (!words.accept(...holdingWords)) return null
      words.accept("back", "on")
      words.accept("the")
      if (!words.accept("last") || !words.accept("loop", "lp", "loops")) return null
      for (let i = 0; i < longestHolding && !/^[,;.(]?$/.test(words.text()); i++) {
        if (words.accept("hook")) break
        if (!aboutLoops.test(words.text()) && !readKind(words)) return null
        else if (aboutLoops.test(words.text())) words.at += 1
      }
      return true
    }) !== null
  )
}

/** ", yo and draw through all loops on hook, ch 1 to close". */
function acceptDrawThroughAll(words: Words): boolean {
  words.accept(",", ";")
  words.accept("then", "and")
  if (!words.accept("yo", "yoh", "yrh", "yarn", "wrap", "thread", "w")) return false
  words.accept("over", "round", "around", "yarn", "hook")
  words.accept("the")
  words.accept("hook")
  words.accept(",", "and")
  if (!words.accept("draw", "pull")) return false
  words.accept("yarn", "loop", "it", "thread")
  if (!words.accept("through", "thru")) return false
  for (let i = 0; i < 8; i++) {
    if (!aboutLoops.test(words.text()) && !words.isNumber()) break
    words.at += 1
  }
  return true
}

/** Wraps before the hook goes in, and how often two loops are drawn through: a half treble has none. */
function basicOf(wraps: number, draws: number): BasicStitch {
  if (draws === 0) return "hdc"
  return wraps === 1 ? "dc" : wraps === 2 ? "tr" : "dtr"
}
