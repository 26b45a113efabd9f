// One place inside a space, group or run: "3rd ch of next ch-5 loop", "centre dc of next 3-dc group",
// "2nd of the 2 sc", "3rd of next 6 sc", "6th dc from last tr".

import { readBeside } from "./next-place-grammar.ts"
import { readNoun } from "./nouns.ts"
import type { Noun, Pick, Place } from "../base/tree.ts"
import { readUntil } from "./until-grammar.ts"
import type { Words } from "./words.ts"

/** "each of the 5 centre sc of next group", "the 3 middle dc". */
export function readMiddleRun(words: Words, start: number): Place | null {
  if (words.accept("each", "all")) words.accept("of")
  words.accept("the", "next")
  if (!words.isNumber() || !/^(?:center|centre|middle|central)$/.test(words.text(1))) return null
  const count = words.value()
  words.at += 2
  const member = readNoun(words)
  if (member?.what !== "stitch" || count < 2 || !Number.isInteger(count)) return null
  words.attempt(() => {
    if (!words.accept("of", "in", "on")) return null
    words.accept("the")
    words.accept("next", "each", "every", "following", "same")
    return readNoun(words)
  })
  return {
    ...words.since(start),
    at: "next",
    noun: { what: "group" },
    count,
    pick: "centre",
    middle: true,
    each: true,
  }
}

/** "the 2 sts in the dip between two petals", "st in next dip". */
export function readDip(words: Words, start: number): Place | null {
  words.accept("the", "next")
  let count = 1
  if (words.isNumber()) {
    count = words.value()
    words.at += 1
  }
  if (words.accept("st", "sts", "stitch", "stitches")) {
    if (!words.accept("in", "at", "of")) return null
    words.accept("the", "each", "next")
  }
  words.accept("next", "centre", "center")
  if (!words.accept("dip", "dips", "hollow", "hollows", "valley", "valleys")) return null
  words.attempt(() => {
    if (!words.accept("between")) return null
    if (words.isNumber()) words.at += 1
    words.accept("the", "two", "each", "next")
    return readNoun(words)
  })
  if (!Number.isInteger(count) || count < 1) return null
  return { ...words.since(start), at: "next", noun: { what: "group" }, count, pick: "dip" }
}

/** "3rd ch of next ch-5 loop", "centre dc of next 3-dc group", "2nd of the 2 sc", "3rd of next 6 sc". */
export function readPicked(words: Words, start: number): Place | null {
  words.accept("the")
  let every = false
  if (words.accept("each", "every")) every = true
  else words.accept("next")
  const pick = readPick(words)
  if (pick === null) return null
  const pickNoun = words.attempt(() => {
    const noun = readNoun(words)
    return noun &&
      (words.text() === "of" ||
        words.text() === "in" ||
        words.text() === "on" ||
        (pick !== "last" && pick !== 1))
      ? noun
      : null
  })
  if (!words.accept("of", "in", "on")) {
    if (every) return null
    const beside = pickNoun && typeof pick === "number" ? readBeside(words, pick) : null
    if (beside && pickNoun)
      return { ...words.since(start), at: "next", noun: pickNoun, count: 1, order: "any", beside }
    if (
      pickNoun &&
      typeof pick === "number" &&
      words.attempt(() => (acceptFromLast(words) ? readNoun(words) : null))
    )
      return { ...words.since(start), at: "next", noun: pickNoun, count: pick, pick }
    if (!pickNoun) {
      // "in 3rd", after two were skipped: the next.
      if (typeof pick !== "number" || pick < 2) return null
      return {
        ...words.since(start),
        at: "next",
        noun: { what: "stitch" },
        count: pick,
        pick,
        afterSkip: true,
      }
    }
    // "in 5th ch", "in centre st": inside the space or group just used, or the next one.
    if (pickNoun.what === "chain")
      return {
        ...words.since(start),
        at: "next",
        noun: { what: "space" },
        count: 1,
        pick,
        pickNoun,
      }
    if (pickNoun.what === "stitch" && pick === "centre")
      return {
        ...words.since(start),
        at: "next",
        noun: { what: "group" },
        count: 1,
        pick,
        pickNoun,
      }
    if (pickNoun.what === "stitch" && typeof pick === "number")
      return { ...words.since(start), at: "next", noun: pickNoun, count: pick, pick }
    return null
  }
  words.accept("the")
  const each = words.accept("each", "every", "all") || every
  if (words.accept("any")) {
    const noun = readNoun(words)
    return noun
      ? {
          ...words.since(start),
          at: "next",
          noun,
          count: 1,
          pick,
          order: "any",
          ...(pickNoun ? { pickNoun } : {}),
        }
      : null
  }
  const said =
    !each && words.accept("next", "a", "same", "that", "this", "following", "first", "last")
  words.accept("the")
  let count = 1
  if (words.isNumber() && words.text(1) !== "-") {
    count = words.value()
    words.at += 1
  }
  const noun = readNoun(words)
  if (!noun) {
    if (count <= 1) return null
    return { ...words.since(start), at: "next", noun: pickNoun ?? { what: "stitch" }, count, pick }
  }
  const pickIt = pickNoun ? { pickNoun } : {}
  if (each) {
    const until = readUntil(words)
    return {
      ...words.since(start),
      at: "each",
      nouns: [asGroup(noun)],
      until: until ?? { kind: "around" },
      pick,
      ...pickIt,
    }
  }
  // "the 2nd of the 2 sc" speaks of a group of two, "of next 2 sc" of the next two.
  if (count > 1 && !said && noun.what === "stitch")
    return {
      ...words.since(start),
      at: "next",
      noun: { what: "group", size: count },
      count: 1,
      pick,
      ...pickIt,
    }
  if (count > 1)
    return {
      ...words.since(start),
      at: "next",
      noun,
      count,
      pick,
      ...pickIt,
    }
  return { ...words.since(start), at: "next", noun: asGroup(noun), count: 1, pick, ...pickIt }
}

/** "centre sc of next corner": the corner is then a group of stitches. */
function asGroup(noun: Noun): Noun {
  return noun.what === "corner" ? { what: "group", corner: true } : noun
}

function readPick(words: Words): Pick | null {
  const token = words.peek()
  if (!token) return null
  if (token.type === "ordinal") {
    words.at += 1
    return token.value
  }
  if (words.accept("center", "centre", "middle", "central", "tip")) return "centre"
  if (words.accept("first")) return 1
  if (words.accept("last")) return "last"
  return null
}

/** "from last", "from the last one made". */
function acceptFromLast(words: Words): boolean {
  if (!words.accept("from") || !words.accept("the", "last", "previous")) return false
  words.accept("last")
  words.accept("made")
  return true
}
