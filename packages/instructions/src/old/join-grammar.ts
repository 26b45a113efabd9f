// Joins that close a round or a ring, joins that start a round in a new place, and how rings are made.

import { readNoun } from "./nouns.ts"
import { readPlace, readTarget } from "./place-grammar.ts"
import { isColour, readKind, readStitch } from "./stitch-grammar.ts"
import type { Place, Step, StitchName } from "../base/tree.ts"
import type { Words } from "./words.ts"

const joinWords = new Set(["join", "joining", "attach", "rejoin", "connect"])

/** Joins that close a round, joins that start one in a new place, and rings. */
export function readJoin(words: Words, steps: readonly Step[]): Step[] | null {
  const ring = readRingStart(words) ?? readForming(words, steps)
  if (ring) return ring
  if (!joinWords.has(words.text())) return null
  return words.attempt((): Step[] | null => {
    const start = words.start()
    words.at += 1
    let joinedYarn = false
    for (;;) {
      const word = words.text()
      if (
        isColour(word) ||
        /^(yarn|color|colour|thread|mc|cc|rnd|round|it|last|leaf|petal|together|evenly|neatly|your|the|second|third|fourth|and|a|b|c|d)$/.test(
          word,
        )
      ) {
        if (/^(yarn|color|colour|thread|mc|cc|new)$/.test(word) || isColour(word)) joinedYarn = true
        words.at += 1
        continue
      }
      break
    }
    const tall = words.attempt(() => readStandingStitch(words))
    if (tall) {
      const place = readPlace(words)
      const work = { ...words.since(start), do: "work" as const, stitch: tall, count: 1 }
      if (hasWork(steps)) return [{ ...work, place }]
      const same: Place = { ...words.since(start), at: "same", noun: { what: "any" } }
      return [
        { ...words.since(start), do: "attach", place },
        { ...work, place: place?.at === "next" ? same : place },
      ]
    }
    words.attempt(() => readMeans(words))
    if (words.accept("to", "into") || words.text() === "in") {
      if (words.text() === "in") words.at += 1
      words.accept("a", "the")
      if (words.accept("form", "make", "create")) {
        words.accept("a", "the")
        words.accept("ring", "circle", "loop")
        return [{ ...words.since(start), do: "join", place: null, ring: true }]
      }
      if (isRing(words.text())) {
        // "join into a ring with a sl st"
        words.at += 1
        words.attempt(() => readMeans(words))
        return [{ ...words.since(start), do: "join", place: null, ring: true }]
      }
      const target = joinTarget(words, start)
      if (words.attempt(() => (words.accept("to") && words.accept("form", "make") ? true : null))) {
        words.accept("a", "the")
        words.accept("ring", "circle", "loop")
        return [{ ...words.since(start), do: "join", place: null, ring: true }]
      }
      const place = target.place
      if (joinedYarn || (place && place.at === "next" && !hasWork(steps)))
        return [{ ...words.since(start), do: "attach", place }]
      return [
        {
          ...words.since(start),
          do: "join",
          place,
          ...(target.chain === undefined ? {} : { chain: target.chain }),
        },
      ]
    }
    if (words.accept("into") || words.acceptAll("ring"))
      return [{ ...words.since(start), do: "join", place: null, ring: true }]
    const later = words.attempt(() => readPlace(words))
    if (later && (joinedYarn || !hasWork(steps)))
      return [{ ...words.since(start), do: "attach", place: later }]
    if (joinedYarn) return []
    return [{ ...words.since(start), do: "join", place: later }]
  })
}

/** "join with sl st, forming a ring". */
function readForming(words: Words, steps: readonly Step[]): Step[] | null {
  const before = steps[steps.length - 1]?.do
  if (words.text() !== "forming" || (before !== "join" && before !== "slip")) return null
  return words.attempt((): Step[] | null => {
    const start = words.start()
    words.at += 1
    words.accept("a", "the")
    if (!isRing(words.text())) return null
    words.at += 1
    return [{ ...words.since(start), do: "join", place: null, ring: true }]
  })
}

/** "with dc", "with a standing sc": a stitch that is the first of the round, or stands for its last space. */
function readStandingStitch(words: Words): StitchName | null {
  if (!words.accept("with", "by", "using")) return null
  words.accept("a", "an")
  if (words.isNumber()) words.at += 1
  const stitch = readStitch(words)
  if (!stitch || stitch.kind.basic === "sl st" || stitch.kind.gathered) return null
  return /^(?:in|into|to|around|between)$/.test(words.text()) ? stitch : null
}

function isRing(text: string): boolean {
  return text === "ring" || text === "circle" || text === "loop"
}

/** "with a sl st", "by an invisible join", "using yarn B". */
function readMeans(words: Words): true | null {
  if (!words.accept("with", "by", "using")) return null
  words.accept("a", "an")
  if (words.accept("invisible")) {
    words.accept("join", "st", "stitch")
    return true
  }
  if (words.isNumber()) words.at += 1
  if (!readKind(words)) {
    const yarn = words.accept("yarn", "color", "colour", "a", "b", "c", "d")
    return yarn ? true : null
  }
  return true
}

export function joinTarget(words: Words, start: number): { place: Place | null; chain?: number } {
  const nth = words.attempt(() => {
    words.accept("the")
    words.accept("top")
    words.accept("of")
    words.accept("the")
    const token = words.peek()
    if (token?.type !== "ordinal") return null
    words.at += 1
    if (!words.accept("ch", "chain", "st", "stitch") && words.text() !== "of") return null
    words.attempt(() => {
      if (!words.accept("of", "in")) return null
      words.accept("the", "these", "first", "beg", "beginning", "starting", "initial", "turning")
      words.accept("beg", "first", "starting")
      const counted = words.isNumber() && words.text(1) !== "-"
      if (counted) words.at += 1
      const noun = readNoun(words)
      if (noun?.what === "chain" && words.isNumber()) words.at += 1
      words.attempt(() => {
        // "third stitch of chain with which the round commenced"
        if (!words.acceptAll("with", "which")) return null
        words.accept("the", "this")
        words.accept("rnd", "round", "row")
        return words.accept("commenced", "began", "begun", "started", "commences") ? true : null
      })
      // "3rd ch of 5": the chain is plain.
      return noun ?? (counted && /^[,;.()]?$/.test(words.text()) ? true : null)
    })
    return token.value
  })
  if (nth !== null) return { place: null, chain: nth }
  const place = readTarget(words, start, "in")
  // "last ch of starting ch": the chain named is not made here.
  words.attempt(() => {
    if (!words.accept("of")) return null
    words.accept("the", "this")
    if (!words.accept("beg", "beginning", "starting", "initial", "turning", "first")) return null
    const noun = readNoun(words)?.what
    if (noun === "chain" && words.isNumber()) words.at += 1
    return noun === "chain" || noun === "space" ? true : null
  })
  return { place }
}

function hasWork(steps: readonly Step[]): boolean {
  return steps.some(
    (step) =>
      step.do !== "attach" && step.do !== "slip" && step.do !== "mode" && step.do !== "turn",
  )
}

const startsRing = new Set(
  "make start begin form create with a an the by making magic adjustable sliding slip mr mc".split(
    " ",
  ),
)

/** "Make a magic ring", "start with an adjustable loop", "over a plastic ring of 2 cm". */
function readRingStart(words: Words): Step[] | null {
  if (!startsRing.has(words.text())) return null
  return words.attempt((): Step[] | null => {
    const start = words.start()
    while (
      words.accept(
        "make",
        "start",
        "begin",
        "form",
        "create",
        "with",
        "a",
        "an",
        "the",
        "by",
        "making",
      )
    );
    if (words.accept("magic", "adjustable", "sliding", "slip")) {
      if (!words.accept("ring", "loop", "circle", "knot-ring")) return null
      return [{ ...words.since(start), do: "ring", centre: "adjustable" }]
    }
    if (
      (words.text() === "mr" &&
        (/^[,;.]?$/.test(words.text(1)) || words.isNumber(1)) &&
        words.accept("mr")) ||
      (words.text() === "mc" && /^[,;.]?$/.test(words.text(1)) && words.accept("mc"))
    )
      return [{ ...words.since(start), do: "ring", centre: "adjustable" }]
    return null
  })
}
