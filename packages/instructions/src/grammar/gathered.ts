// Stitches spelled out hook by hook: a cluster as "(yo, insert hook in st, draw up a loop, yo, draw through
// 2 loops) 3 times, yo and draw through all loops", a popcorn as "5 dc in next st, drop loop, insert hook in
// first dc, draw dropped loop through", a cluster as "holding back last loop of each, 3 tr in next sp".

import type { BasicStitch, StitchKind } from "@roundwright/stitches"
import type { Place, Step } from "../base/tree.ts"
import type { Chart, Clause, Remark } from "./chart.ts"
import { clause } from "./clauses.ts"
import type { Cursor } from "./cursor.ts"
import { readPlace } from "./places.ts"
import { readKind } from "./stitch-names.ts"

/** Longest spelling of one stitch, in words. */
const longestSpelling = 60
const wrapWords = /^(?:yo|yoh|yrh|wrap|yarn|wool|thread)$/
const throughWords = /^(?:through|thru|draw through|pull|draw)$/

/** True where a wrap of the yarn begins. */
export function startsWrap(cursor: Cursor, ahead: number): boolean {
  const text = cursor.text(ahead)
  if (!wrapWords.test(text)) return false
  return /^yo|^yrh|^wrap/.test(text) || /^(?:over|round|around)$/.test(cursor.text(ahead + 1))
}

/** "(yo, insert hook in next st, draw up a loop, yo, draw through 2 loops) 3 times, yo, draw through all loops". */
export function spelledCluster(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const start = cursor.start()
  const opening = cursor.text()
  const close = opening === "(" ? ")" : opening === "[" ? "]" : opening === "*" ? "*" : null
  if (close) cursor.at += 1
  let wraps = 0
  while (startsWrap(cursor, 0)) {
    cursor.at += 1
    while (cursor.accept("over", "round", "around") || cursor.take("hook"));
    wraps += 1
    if (cursor.accept("twice")) wraps += 1
    cursor.accept(",")
    cursor.take("and")
  }
  if (wraps === 0 || !cursor.accept("insert", "put", "insert hook")) return []
  cursor.take("hook")
  const place = readPlace(cursor)
  let draws = 0
  for (let k = 0; k < longestSpelling; k++) {
    if (cursor.done()) return []
    const text = cursor.text()
    if (close ? text === close : text === ";" || text === ".") break
    if (saysOther(cursor)) return []
    if (cursor.isNumber() && cursor.value() === 2) draws += 1
    cursor.at += 1
  }
  let legs = 1
  if (close) {
    if (!cursor.accept(close)) return []
    cursor.accept("x")
    const count = cursor.text() === "twice" ? 2 : cursor.value()
    if (!Number.isInteger(count) || count < 2) return []
    cursor.at += 1
    cursor.take("times")
    legs = count
  }
  const after = cursor.is("in") ? readPlace(cursor) : null
  const closing = cursor.at
  if (close && !acceptDrawThroughAll(cursor)) return []
  if (!close) return []
  const remarks = otherLoops(chart, [closing, cursor.at], draws === 0 ? 2 * legs : legs)
  const inner = place ?? after
  const together = place !== null && after?.at !== "same"
  const how = draws === 0 ? ("puff" as const) : ("cluster" as const)
  const kind: StitchKind = { basic: basicOf(wraps, draws), gathered: { how, legs } }
  const each = inner?.at === "next" && inner.count === 1 && inner.noun.what === "stitch"
  const over: Place | null = each && together ? { ...inner, count: legs, over: true } : inner
  const step: Step = {
    ...cursor.since(start),
    do: "work",
    stitch: { kind, tog: draws > 0 },
    count: 1,
    place: over,
  }
  return [clause(cursor, [step], 0, { remarks })]
}

/** "draw through all 7 loops" of a stitch whose legs leave another number on the hook; the last one may be kept back. */
function otherLoops(chart: Chart, [from, to]: readonly [number, number], left: number): Remark[] {
  const loops = [left, left + 1]
  return chart.lexemes
    .slice(from, to)
    .filter(({ type, value }) => type === "number" && value > 1 && !loops.includes(value))
    .map(({ start, end }): Remark => ({ code: "figure-passed-over", start, end }))
}

/** Wraps before the hook goes in, and how often two loops are drawn through: a half treble has none. */
function basicOf(wraps: number, draws: number): BasicStitch {
  if (draws === 0) return "hdc"
  return wraps === 1 ? "dc" : wraps === 2 ? "tr" : "dtr"
}

/** ", yo and draw through all loops on hook, ch 1 to close". */
function acceptDrawThroughAll(cursor: Cursor): boolean {
  cursor.accept(",", ";", ".")
  cursor.take("and")
  if (!startsWrap(cursor, 0) && !wrapWords.test(cursor.text())) return false
  let through = false
  for (let k = 0; k < 16; k++) {
    const text = cursor.text()
    if (cursor.done() || /^[;.()[\]*]$/.test(text) || (text === "," && through)) break
    if (cursor.is("chain") && cursor.isNumber(1)) break
    if (!through && saysOther(cursor)) return false
    if (
      through &&
      text !== "all" &&
      (cursor.is("in") || cursor.isNumber(1)) &&
      !cursor.is("hook") &&
      !cursor.is("hook", 1)
    )
      break
    if (
      (throughWords.test(text) && /through|thru/.test(text)) ||
      (text === "off" && cursor.is("work", -1))
    )
      through = true
    cursor.at += 1
  }
  return through
}

const makingWords =
  /^(?:yo|yoh|yrh|wrap|wraps|yarn|wool|thread|insert|insert hook|put|draw.*|pull.*|through|thru|loops?|lps?|lp|hook|on hook|dropped|drop|tighten|close|remove|place|slip|pick up|keeping|leaving|all|remaining)$/

const otherWork = [
  "skip",
  "repeat",
  "turn",
  "end",
  "increase",
  "decrease",
  "picot",
  "unworked",
] as const

/** Words that are no part of how one stitch is made: others than its own, or a part between commas with none of these. */
function saysOther(cursor: Cursor): boolean {
  if (cursor.text() === ",") {
    for (let ahead = 1; ; ahead++) {
      const text = cursor.text(ahead)
      if (makingWords.test(text)) break
      if (text === "" || /^[,;.()[\]*]$/.test(text)) return ahead > 1
    }
  }
  if (cursor.text() === "using") return true
  return otherWork.some((word) => cursor.is(word))
}

/** "drop loop ... through": the stitches just worked in one place become one popcorn. */
export function droppedLoop(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  cursor.at += 1
  if (!cursor.accept("loop", "lp", "hook")) return []
  let through = false
  let chains: number | null = null
  for (let k = 0; k < longestSpelling; k++) {
    if (cursor.is("chain")) chains = namedAfter(cursor)
    if (cursor.done() || /^[*;[\].]$/.test(cursor.text()) || saysOther(cursor)) break
    if (/through|thru/.test(cursor.text())) {
      through = true
      cursor.at += 1
      break
    }
    cursor.at += 1
  }
  if (!through) return []
  while (
    cursor.accept("it", "loop", "this", "to", "dropped", "tighten", "close", "on hook") ||
    cursor.take("stitch", "that")
  );
  cursor.attempt(() => {
    // "(pc st)", "(another popcorn)": its name.
    if (!cursor.accept("(")) return null
    for (let k = 0; k < 4 && !cursor.done(); k++) {
      if (cursor.accept(")")) return true
      if (cursor.isNumber() || cursor.is("in")) return null
      cursor.at += 1
    }
    return null
  })
  const end = cursor.lastEnd()
  return [
    clause(cursor, (before) =>
      chains === null || makesChain(before, chains) ? asPopcorn(before, end) : null,
    ),
  ]
}

/** "ch-3", "ch 3": the chain that is named, whatever its dash. */
function namedAfter(cursor: Cursor): number | null {
  const ahead = cursor.text(1) === "-" ? 2 : 1
  return cursor.isNumber(ahead) ? cursor.value(ahead) : null
}

/** Chains that are joined to a ring are none that a stitch begins with. */
function makesChain(steps: readonly Step[], chains: number): boolean {
  return steps.some((step, k) => {
    const after = steps[k + 1]
    const ring = after?.do === "join" && (after.ring || after.place === null)
    return step.do === "chain" && step.chains === chains && !ring
  })
}

/** "complete as popcorn", "close to a popcorn". */
export function completedPopcorn(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  cursor.at += 1
  cursor.accept("as", "into", "to")
  cursor.take("forms")
  if (!cursor.accept("popcorn", "pc")) return []
  const end = cursor.lastEnd()
  return [clause(cursor, (before) => asPopcorn(before, end))]
}

function asPopcorn(before: readonly Step[], end: number): readonly Step[] | null {
  const last = before[before.length - 1]
  if (last?.do !== "work" || last.count < 3 || last.stitch.kind.gathered) return null
  const kind: StitchKind = { ...last.stitch.kind, gathered: { how: "popcorn", legs: last.count } }
  return [...before.slice(0, -1), { ...last, end, stitch: { kind, tog: false }, count: 1 }]
}

const holdingWords = /^(?:leaving|leave|holding|hold|keeping|keep|retaining)$/

/** True for words that may begin or hold "leaving last loop of each on hook". */
export function startsHolding(text: string): boolean {
  return holdingWords.test(text)
}

/**
 * "3 tr in next sp leaving last loop of each on hook, yo and draw through all loops", and with what is said of
 * the loops before the stitches.
 */
export function heldBack(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const start = cursor.start()
  const before = acceptHoldingBack(cursor)
  cursor.accept(",")
  while (cursor.is("work") && !cursor.isNumber()) cursor.at += 1
  const legs = cursor.takeCount(2) ?? (before ? null : null)
  if (legs === null) return []
  const kind = readKind(cursor)
  if (!kind || kind.gathered) return []
  const place = readPlace(cursor)
  if (!before) {
    cursor.accept(",")
    if (!acceptHoldingBack(cursor)) return []
  }
  const after = place ?? readPlace(cursor)
  const closing = cursor.at
  if (!acceptDrawThroughAll(cursor)) cursor.at = closing
  const remarks = otherLoops(chart, [closing, cursor.at], legs)
  const spread = after?.at === "next" && after.count === legs
  const gathered: StitchKind = { ...kind, gathered: { how: "cluster", legs } }
  const step: Step = {
    ...cursor.since(start),
    do: "work",
    stitch: { kind: gathered, tog: spread },
    count: 1,
    place: after,
  }
  return [clause(cursor, [step], 0, { remarks })]
}

/** Words between "leaving" and "on hook", at most. */
const longestHolding = 14

/** "leaving last loop of each on hook", "holding back the last loop of each tr", "keeping last loop on hook". */
function acceptHoldingBack(cursor: Cursor): boolean {
  return (
    cursor.attempt(() => {
      if (!holdingWords.test(cursor.text())) return null
      cursor.at += 1
      cursor.accept("back", "on")
      if (cursor.is("in") && cursor.is("hook", 1)) cursor.at += 2
      cursor.accept("on hook")
      if (!cursor.take("last")) return null
      if (!cursor.accept("loop", "lp", "loops")) return null
      for (let k = 0; k < longestHolding && !/^[,;.()]?$/.test(cursor.text()); k++) {
        if (cursor.accept("on hook") || cursor.take("hook")) break
        if (cursor.isNumber() || cursor.is("chain")) break
        if (
          cursor.is("in") &&
          (cursor.is("next", 1) || cursor.is("same", 1) || cursor.is("each", 1))
        )
          break
        if (!readKind(cursor)) cursor.at += 1
      }
      return true
    }) !== null
  )
}
