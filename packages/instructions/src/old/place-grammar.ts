// Where something is worked: "in next ch-3 sp", "in each of next 2 sts", "in 3rd ch of next ch-5
// loop", "in same st", "over next 4 sc", "in centre dc of next 3-dc group", "in the back loop of each sc".

import { readEach } from "./each-place-grammar.ts"
import { readNext } from "./next-place-grammar.ts"
import { readNoun } from "./nouns.ts"
import { readDip, readMiddleRun, readPicked } from "./picked-place-grammar.ts"
import { readMade, readSame } from "./same-place-grammar.ts"
import type { Place } from "../base/tree.ts"
import { readUntil } from "./until-grammar.ts"
import type { Words } from "./words.ts"

const prepositions = new Set([
  "in",
  "into",
  "on",
  "onto",
  "over",
  "around",
  "round",
  "between",
  "through",
  "thru",
  "under",
  "at",
  "to",
  "inside",
  "across",
  "from",
])

/** True when a place may start here. */
export function atPlace(words: Words): boolean {
  return prepositions.has(words.text()) || saysAllIn(words)
}

/** "... all in same sp": of everything just named. */
function saysAllIn(words: Words): boolean {
  return words.text() === "all" && /^(?:in|into)$/.test(words.text(1))
}

/** A place with its preposition, stepped over; null when none is here. */
export function readPlace(words: Words): Place | null {
  return words.attempt(() => {
    const start = words.start()
    if (saysAllIn(words)) words.at += 1
    if (!prepositions.has(words.text())) return null
    const preposition = words.text()
    words.at += 1
    while (words.accept("in", "into", "around", "over", "on") && preposition !== words.text());
    const place = readTarget(words, start, preposition)
    if (!place) return null
    const over = preposition === "over" ? { over: true } : {}
    return withEarlierRound(words, { ...place, ...over }, start)
  })
}

type Details = {
  loops?: "front" | "back" | "third"
  post?: "front" | "back"
  passes?: "behind" | "front"
}

/** A place whose preposition has been read or is implied. */
export function readTarget(words: Words, start: number, preposition: string): Place | null {
  const details: Details = {}
  acceptTopOf(words)
  readLoopWords(words, details)
  if (words.acceptAll("post", "of") || words.acceptAll("the", "post", "of"))
    details.post = details.post ?? "front"
  const between = preposition === "between"
  const bare = readBare(words, start, between, preposition)
  if (!bare) {
    if (details.loops && words.at > 0)
      return { ...words.since(start), at: "next", noun: { what: "stitch" }, count: 1, ...details }
    return null
  }
  return { ...bare, ...details }
}

const startsLoops = new Set("the front back third 3rd both rear blo bl flo fl".split(" "))

/** "in top of next puff": every stitch is worked into its top. */
function acceptTopOf(words: Words): void {
  if (!/^t/.test(words.text())) return
  words.attempt(() => {
    words.accept("the")
    if (!words.accept("top", "tops") || !words.accept("of")) return null
    words.accept("the")
    return /^(?:next|each|every|any|same|following|both)$/.test(words.text()) ? true : null
  })
}

function readLoopWords(words: Words, details: Details): void {
  if (!startsLoops.has(words.text())) return
  words.attempt(() => {
    words.accept("the")
    const which = words.text()
    if (
      /^(front|back|third|3rd|both|rear)$/.test(which) &&
      /^(loop|loops|lp|lps|bar)$/.test(words.text(1))
    ) {
      words.at += 2
      words.accept("only")
      words.accept("of")
      if (which === "front") details.loops = "front"
      else if (which === "back" || which === "rear") details.loops = "back"
      else if (which === "third" || which === "3rd") details.loops = "third"
      return true
    }
    if (/^(blo|bl|flo|fl)$/.test(which)) {
      words.at += 1
      words.accept("only")
      words.accept("of")
      details.loops = which.startsWith("b") ? "back" : "front"
      return true
    }
    if (
      which === "back" &&
      words.text(1) === "of" &&
      /^(?:the|next|each|same|first|last)$/.test(words.text(2))
    ) {
      // "into back of next tr": behind what has been worked since.
      words.at += 2
      details.passes = "behind"
      return true
    }
    if ((which === "front" || which === "back") && words.text(1) === "post") {
      words.at += 2
      words.accept("of")
      details.post = which
      return true
    }
    return null
  })
}

function readBare(
  words: Words,
  start: number,
  between: boolean,
  preposition: string,
): Place | null {
  const usual = readUsual(words, start, between, preposition)
  if (usual !== undefined) return usual
  return (
    words.attempt(() => readRing(words, start)) ??
    words.attempt(() => readHookChain(words, start)) ??
    words.attempt(() => readDip(words, start)) ??
    words.attempt(() => readMiddleRun(words, start)) ??
    words.attempt(() => readBesideEach(words, start)) ??
    words.attempt(() => readSame(words, start)) ??
    words.attempt(() => readMade(words, start)) ??
    words.attempt(() => readPicked(words, start)) ??
    words.attempt(() => readEach(words, start, between)) ??
    words.attempt(() => readNext(words, start, between, preposition))
  )
}

/** By the first word, where it leaves few things open; undefined where it leaves more. */
function readUsual(
  words: Words,
  start: number,
  between: boolean,
  preposition: string,
): Place | null | undefined {
  const first = words.text()
  if (first === "ring") return readRing(words, start)
  if (first === "same") return readSame(words, start)
  const next = () => words.attempt(() => readNext(words, start, between, preposition))
  if (first === "ch" || first === "chain") return words.has("just") ? undefined : next()
  if (words.isNumber())
    return words.has("just") || hasDip(words) || /^c|^middle$/.test(words.text(1))
      ? undefined
      : next()
  if (first === "next" || first === "following") {
    if (words.isNumber(1) && /^c|^middle$/.test(words.text(2))) return undefined
    if (hasDip(words)) return undefined
    return words.attempt(() => readPicked(words, start)) ?? next()
  }
  if (first === "each") {
    const after = words.text(1) === "of" ? 2 : 1
    if (words.text(after) === "the" || words.text(after) === "next" || words.isNumber(after))
      return undefined
    return (
      words.attempt(() => readPicked(words, start)) ??
      words.attempt(() => readEach(words, start, between)) ??
      next()
    )
  }
  return undefined
}

const dipWords = ["dip", "dips", "hollow", "hollows", "valley", "valleys"] as const

function hasDip(words: Words): boolean {
  return dipWords.some((word) => words.has(word))
}

function readRing(words: Words, start: number): Place | null {
  if (words.text() === "all" && /^[,;.]?$/.test(words.text(1))) {
    words.at += 1
    return { ...words.since(start), at: "ring" }
  }
  while (
    words.accept("the", "center", "centre", "middle", "of", "a", "beg", "beginning", "this", "your")
  );
  const solid = words.accept("plastic", "bone", "metal", "wooden", "curtain", "solid", "brass")
  const drawn = words.accept("magic", "adjustable", "sliding")
  words.accept("foundation", "starting")
  const short = words.text() === "mr"
  const loop = drawn && words.accept("loop")
  if (!loop && !words.accept("ring", "mr", "circle", "rings")) return null
  const made = solid ? "solid" : drawn || short ? "adjustable" : undefined
  return { ...words.since(start), at: "ring", ...(made === undefined ? {} : { made }) }
}

/** "sp before each dc", "space after every st": the gap beside each of them. */
function readBesideEach(words: Words, start: number): Place | null {
  words.accept("the")
  if (!words.accept("sp", "space", "gap") || !words.accept("before", "after", "behind")) return null
  if (!words.accept("each", "every") || !readNoun(words)) return null
  const until = readUntil(words) ?? { kind: "around" as const, implied: true as const }
  return { ...words.since(start), at: "each", nouns: [{ what: "gap" }], until }
}

function readHookChain(words: Words, start: number): Place | null {
  words.accept("the")
  let nth: number
  const token = words.peek()
  if (token?.type === "ordinal") nth = token.value
  else if (token?.text === "first") nth = 1
  else return null
  words.at += 1
  if (!words.accept("ch", "chain", "st", "stitch")) return null
  if (!words.acceptAll("from", "hook") && !words.acceptAll("from", "the", "hook")) return null
  return { ...words.since(start), at: "hook-chain", nth }
}

const startsEarlier = new Set("of on from in the rnd round row below".split(" "))

/** "of Rnd 2", "of previous round", "4 rnds below", "in the rnd below". */
export function withEarlierRound(words: Words, place: Place, start: number): Place {
  if (!words.isNumber() && !startsEarlier.has(words.text()))
    return { ...place, ...words.since(start) }
  const named = words.attempt(() => {
    const joined = words.accept("of", "on", "from", "in")
    words.accept("the")
    if (joined && words.accept("previous", "prev", "last", "preceding")) {
      return words.accept("rnd", "round", "row", "rounds", "rnds") ? { ...place } : null
    }
    if (joined && words.peek()?.type === "ordinal" && /^(?:rnd|round|row)$/.test(words.text(1))) {
      const ofRound = words.value()
      words.at += 2
      return { ...place, ofRound }
    }
    if (joined && words.accept("rnd", "round", "row", "r") && words.isNumber()) {
      const ofRound = words.value()
      words.at += 1
      return { ...place, ofRound }
    }
    if (
      words.isNumber() &&
      /^(rnds|rnd|rounds|round|rows|row)$/.test(words.text(1)) &&
      words.text(2) === "below"
    ) {
      const below = words.value()
      words.at += 3
      return { ...place, below }
    }
    if (words.accept("rnd", "round", "row") && words.accept("below")) return { ...place, below: 1 }
    if (!joined && words.text() === "below") {
      words.at += 1
      return { ...place, below: 2 }
    }
    return null
  })
  return { ...(named ?? place), ...words.since(start) }
}
