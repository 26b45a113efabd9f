// Places already touched: "in same st", "in joining st", "loop just made", and what this round has made:
// "top of that dc", "last sc", "first cluster".

import { readNext } from "./next-place-grammar.ts"
import { readNoun } from "./nouns.ts"
import { readKind } from "./stitch-grammar.ts"
import type { Noun, Place } from "../base/tree.ts"
import type { Words } from "./words.ts"

export function readSame(words: Words, start: number): Place | null {
  words.accept("the", "that", "very")
  if (
    /^(?:st|stitch)$/.test(words.text()) &&
    /^(last|just)$/.test(words.text(1)) &&
    words.text(2) === "worked"
  ) {
    words.at += 3
    words.accept("in", "into")
    if (words.accept("and", "&")) {
      const rest = readNext(words, start, false, "in")
      if (rest?.at === "next") return { ...rest, ...words.since(start), withLast: true }
    }
    return { ...words.since(start), at: "same", noun: { what: "any" } }
  }
  if (
    words.acceptAll("base", "of") ||
    words.acceptAll("st", "at", "base", "of") ||
    words.acceptAll("stitch", "at", "base", "of")
  ) {
    words.accept("the", "first", "beg", "beginning", "starting", "turning", "these")
    const counted = readCountedChain(words)
    if (!counted && !readNoun(words)) return null
    if (!counted && words.isNumber() && /^ch/.test(words.tokens[words.at - 1]?.text ?? ""))
      words.at += 1
    return { ...words.since(start), at: "same", noun: { what: "any" } }
  }
  if (
    words.accept("joining", "joined") &&
    (words.accept("st", "stitch", "sp", "space", "sl") || true)
  ) {
    if (!words.accept("st", "stitch")) words.attempt(() => readKind(words))
    return { ...words.since(start), at: "same", noun: { what: "any" } }
  }
  if (!words.accept("same")) {
    const just = words.attempt(() => {
      const noun = readNoun(words)
      if (!noun || !words.accept("just") || !words.accept("made", "formed", "completed"))
        return null
      return noun
    })
    return just ? { ...words.since(start), at: "same", noun: just } : null
  }
  const noun = readNoun(words)
  if (!noun && !words.accept("place", "spot", "hole")) {
    if (words.text() === "center" || words.text() === "centre" || words.text() === "middle")
      words.at += 1
    readNoun(words)
  }
  words.attempt(() => {
    if (!words.accept("as", "with", "where")) return null
    words.accept("you", "the", "first", "last", "beg", "you've")
    words.accept("join", "joined", "joining", "sl", "slip", "beg", "previous", "prev")
    words.accept("st", "stitch", "ch", "chain", "sts")
    readNoun(words)
    words.accept("just", "last")
    words.accept("made", "worked", "completed")
    return true
  })
  if (
    words.text() === "and" &&
    /^(in|next|into|each)$/.test(words.text(1)) &&
    words.text(1) === "next"
  ) {
    words.at += 1
    const rest = readNext(words, start, false, "in")
    if (rest?.at === "next") return { ...rest, ...words.since(start), withLast: true }
  }
  return { ...words.since(start), at: "same", noun: noun ?? { what: "any" } }
}

/** Things of the round being made: "top of that dc", "last sc made", "top of ch-3", "first cluster". */
export function readMade(words: Words, start: number): Place | null {
  words.accept("the")
  if (words.accept("top")) {
    // "top st of starting chain"
    if (words.text(1) === "of") words.accept("st", "stitch", "ch", "chain")
    words.accept("of")
    words.accept("the")
    if (words.accept("that", "this", "last", "previous")) {
      words.accept("last")
      const noun = readNoun(words)
      if (!noun) return null
      words.accept("made")
      return { ...words.since(start), at: "made", which: "last", noun }
    }
    words.accept("first", "beg", "beginning", "starting", "initial", "turning")
    const counted = readCountedChain(words)
    const noun = counted ?? readNoun(words)
    if (!noun) return null
    if (!counted && noun.what === "chain" && words.isNumber()) words.at += 1
    words.attempt(() => {
      // "top of ch 3 at beg of rnd"
      words.accept("made")
      if (!words.accept("at")) return null
      words.accept("the")
      if (!words.accept("beg", "beginning", "start")) return null
      if (words.accept("of")) words.accept("this", "the")
      words.accept("rnd", "round", "row")
      return true
    })
    return { ...words.since(start), at: "made", which: "first", noun }
  }
  if (words.accept("that", "these", "those")) {
    const noun = readNoun(words)
    return noun ? { ...words.since(start), at: "made", which: "last", noun } : null
  }
  if (words.accept("beg", "beginning", "starting")) {
    const noun = readNoun(words)
    return noun ? { ...words.since(start), at: "made", which: "first", noun } : null
  }
  return null
}

/** "top of 3 ch": the starting chain with its number before it. */
function readCountedChain(words: Words): Noun | null {
  if (!words.isNumber() || !/^(ch|chs|chain|chains)$/.test(words.text(1))) return null
  words.at += 2
  return { what: "chain" }
}
