// Stitches: "3 dc in next st", "dc in next 3 sts", "2 sc in each st around", "dc3tog over next 3 dc",
// "36 sc evenly, increasing 6", "1 dark sc and 1 light sc in next sc".

import { endsTimes, readBracket } from "./bracket-grammar.ts"
import { readEven, readGrowth, readWholeRound } from "./even-grammar.ts"
import { readPlace, readTarget } from "./place-grammar.ts"
import { readLocal } from "./shell-grammar.ts"
import { readStitch } from "./stitch-grammar.ts"
import type { Place, Span, Step, StitchName } from "../base/tree.ts"
import { readUntil } from "./until-grammar.ts"
import { stitchNamed, type Words } from "./words.ts"
import {
  readBetween,
  readDoubled,
  readFirstAndLast,
  readLegs,
  readSpread,
} from "./work-extras-grammar.ts"

/** Work in one stitch or several, with its places; null when no stitch is named here. */
export function readWork(words: Words, _steps: readonly Step[]): Step[] | null {
  return words.attempt((): Step[] | null => {
    const start = words.start()
    const spelled = readBeginning(words)
    if (spelled) return spelled
    const shared = readShared(words, start)
    if (shared) return shared
    const local = readLocal(words, start)
    if (local) return local
    const plain = readWholeRound(words, start)
    if (plain) return plain
    const counted = readCounted(words)
    if (!counted) return null
    const { count } = counted
    let { stitch } = counted
    const ends = readFirstAndLast(words, stitch, count, start)
    if (ends) return ends
    const legs = stitch.kind.gathered ? readLegs(words) : null
    if (legs) return [{ ...words.since(start), do: "work", stitch, count, place: null, legs }]
    const even = readEven(words)
    if (even !== null)
      return [
        {
          ...words.since(start),
          do: "work",
          stitch,
          count: even > 0 && count === 1 ? 0 : count,
          place: null,
          even: true,
          ...(even > 0 ? { extra: even } : {}),
        },
      ]
    const until = aroundThing(words) ? null : readUntil(words)
    if (until && stitch.tog && stitch.kind.gathered?.how === "together") {
      // "sc2tog around": one after the other until the round is used up.
      const body: Step[] = [{ ...words.since(start), do: "work", stitch, count, place: null }]
      return [
        {
          ...words.since(start),
          do: "repeat",
          body,
          last: null,
          ending: null,
          times: { kind: "until", until },
        },
      ]
    }
    if (until) {
      const growth = readGrowth(words)
      if (growth !== null) return [growing(words.since(start), stitch, growth)]
      const place: Place = { ...words.since(start), at: "each", nouns: [{ what: "stitch" }], until }
      return [{ ...words.since(start), do: "work", stitch, count, place }]
    }
    const place = readWorkPlace(words)
    stitch = formed(stitch, place)
    const grows = count === 1 && isEveryStitch(place) ? readGrowth(words) : null
    if (grows !== null) return [growing(words.since(start), stitch, grows)]
    const doubled = place || count < 2 ? null : readDoubled(words)
    if (doubled !== null)
      return [{ ...words.since(start), do: "work", stitch, count, place: null, doubled }]
    const between = readBetween(words)
    const spread = between !== null && !place && count > 1 && readSpread(words)
    if (spread)
      return [
        { ...words.since(start), do: "work", stitch, count, place: null, even: true, between },
      ]
    const spaced = between !== null && !place && count > 1 ? readPlace(words) : null
    if (spaced && between !== null) {
      // "2 dc with ch 2 between in each ch-2 sp": all of it goes there.
      const span = words.since(start)
      const one: Step = { ...span, do: "work", stitch, count: 1, place: null }
      const chain: Step = { ...span, do: "chain", chains: between, place: null }
      const rest = Array.from({ length: Math.min(count, 50) - 1 }, () => [chain, one]).flat()
      return [{ ...span, do: "group", steps: [one, ...rest], place: spaced }]
    }
    // "dc in first sc to join": what it is for is plain from where it goes.
    if (place && words.text() === "to")
      words.attempt(() =>
        words.accept("to") && words.accept("join", "close") && isClauseEnd(words) ? true : null,
      )
    const step: Step = {
      ...words.since(start),
      do: "work",
      stitch,
      count,
      place,
      ...(between === null ? {} : { between }),
    }
    return [step, ...furtherPlaces(words, stitch, count, place)]
  })
}

/** So many more than the round before has, spread evenly. */
function growing(span: Span, stitch: StitchName, extra: number): Step {
  return { ...span, do: "work", stitch, count: 0, place: null, even: true, extra }
}

/** "in each st around": before ", increasing 6 evenly". */
function isEveryStitch(place: Place | null): boolean {
  return (
    place?.at === "each" &&
    place.until.kind === "around" &&
    place.every === undefined &&
    place.pick === undefined &&
    place.nouns.length === 1 &&
    place.nouns[0]?.what === "stitch" &&
    !place.nouns[0].corner
  )
}

const startsBeginning = new Set(["beg", "beginning", "starting", "first"])

/** "beg cl (ch 2, 2-dc cl) in same sp": the bracket says how the first one is made. */
function readBeginning(words: Words): Step[] | null {
  if (!startsBeginning.has(words.text())) return null
  return words.attempt((): Step[] | null => {
    words.at += 1
    if (!readStitch(words) && !words.accept("shell", "corner", "v", "group")) return null
    words.accept("-", ":", "=")
    words.accept("st", "stitch")
    const chained =
      /^(?:ch|chain)$/.test(words.text(1)) ||
      (words.isNumber(1) && /^(?:ch|chain)$/.test(words.text(2)))
    return /^[([]$/.test(words.text()) && chained ? readBracket(words, [], []) : null
  })
}

function isClauseEnd(words: Words): boolean {
  words.accept("rnd", "round")
  return /^[,;.()]?$/.test(words.text())
}

/** "around the ring", "around next dc": a place, not an end. */
function aroundThing(words: Words): boolean {
  const text = words.text()
  if (text !== "around" && text !== "round" && text !== "across" && text !== "all") return false
  if (
    /^(the|a|each|next|post|front|back|cord|ring|same|every|this|plastic|entire)$/.test(
      words.text(1),
    )
  )
    return true
  // "FPdc around FPdc": the post of that one.
  const word = words.peek(1)
  return word?.type === "word" && stitchNamed(word.text, words.terms) !== null
}

/** "in back loop of", "around post of": the place says how the stitch is worked. */
function formed(stitch: StitchName, place: Place | null): StitchName {
  if (!place || (!place.loops && !place.post)) return stitch
  const kind = {
    ...stitch.kind,
    ...(place.loops ? { loops: place.loops } : {}),
    ...(place.post && !stitch.kind.post ? { post: place.post } : {}),
  }
  return { ...stitch, kind }
}

/** A place, or one without its preposition ("sc next st", "2 dc each st"). */
export function readWorkPlace(words: Words): Place | null {
  if (words.acceptAll("in", "the", "same", "place"))
    return { ...words.since(words.start()), at: "same", noun: { what: "any" } }
  const place = readPlace(words)
  if (place?.over && /^(in|into)$/.test(words.text())) {
    // "over ch-3 in 2nd tr of ...": what is worked over, then the place.
    const real = readPlace(words)
    if (real)
      return { ...real, passes: "front", ...(place.at === "next" ? { covers: place.noun } : {}) }
  }
  if (place) return place
  if (/^(next|each|every|same|blo|flo)$/.test(words.text()))
    return words.attempt(() => readTarget(words, words.start(), "in"))
  return null
}

/** "... and in next 2 dc", "..., and in each ch-1 sp". */
function furtherPlaces(
  words: Words,
  stitch: StitchName,
  count: number,
  first: Place | null,
): Step[] {
  const steps: Step[] = []
  if (!first) return steps
  for (;;) {
    const next = words.text() === "," ? words.text(1) : words.text()
    if (next !== "and" && next !== "&") return steps
    const start = words.start()
    const place = words.attempt(() => {
      words.accept(",")
      if (!words.accept("and", "&")) return null
      if (!/^(in|into|next|on|over|each)$/.test(words.text())) return null
      return readPlace(words) ?? readTarget(words, words.start(), "in")
    })
    if (!place) return steps
    steps.push({ ...words.since(start), do: "work", stitch, count, place })
  }
}

export function readCounted(words: Words): { count: number; stitch: StitchName } | null {
  return words.recall("counted", readCountedHere)
}

function readCountedHere(words: Words): { count: number; stitch: StitchName } | null {
  return words.attempt(() => {
    let count = 1
    let counted = false
    if (words.isNumber()) {
      count = words.value()
      // "3-dc cluster" is a name; "3 dc" a count and a name.
      const named = words.text(1) === "-" ? readStitch(words) : null
      if (named) return { count: 1, stitch: named }
      words.at += 1
      counted = true
      words.accept("x", "more")
    } else words.accept("a", "an", "one", "another")
    words.accept("work")
    const stitch = readStitch(words)
    if (
      stitch &&
      !counted &&
      words.isNumber() &&
      /^[,;.)\]*([]?$/.test(words.text(1)) &&
      words.peek()?.type === "number"
    ) {
      // "sc 2, inc 1": the count after the name.
      count = words.value()
      words.at += 1
    }
    const times =
      stitch && !counted && saysTimes(words) ? words.attempt(() => readStitchTimes(words)) : null
    if (times !== null) count = times
    if (!stitch || !Number.isInteger(count)) {
      if (counted) {
        words.at -= 1
      }
      return null
    }
    return { count, stitch }
  })
}

function saysTimes(words: Words): boolean {
  return words.isNumber() || words.text() === "x" || words.text() === "*"
}

/** "inc x 6", "dec 4 times": how many of them. */
function readStitchTimes(words: Words): number | null {
  if (words.text() === "*" && words.stars === 0 && words.isNumber(1) && endsTimes(words)) {
    // "inc*6"
    const count = words.value(1)
    words.at += 2
    words.accept("times")
    return count
  }
  const crossed = words.accept("x")
  if (!words.isNumber()) return null
  const count = words.value()
  words.at += 1
  return words.accept("times", "x") || crossed ? count : null
}

/** A counted stitch with "and" after it. */
function joinsAnother(words: Words): boolean {
  const { at } = words
  const joins = readCounted(words) !== null && /^(?:and|&|\+)$/.test(words.text())
  words.at = at
  return joins
}

/** "1 dark sc and 1 light sc in next sc": stitches of one place. */
function readShared(words: Words, start: number): Step[] | null {
  if (!joinsAnother(words)) return null
  return words.attempt((): Step[] | null => {
    const parts: Step[] = []
    for (;;) {
      const from = words.start()
      const part = readCounted(words)
      if (!part) return null
      parts.push({
        ...words.since(from),
        do: "work",
        stitch: part.stitch,
        count: part.count,
        place: null,
      })
      if (!words.accept("and", "&", "+")) break
      if (!words.isNumber()) return null
    }
    if (parts.length < 2) return null
    const place = readPlace(words)
    if (!place || place.at === "list") return null
    return [{ ...words.since(start), do: "group", steps: parts, place }]
  })
}
