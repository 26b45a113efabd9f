// Places already touched: "in same st", "in joining st", "loop just made", and what this round has made:
// "top of that dc", "last sc", "first cluster".

import type { Noun, Place } from "../base/tree.ts"
import type { Cursor } from "./cursor.ts"
import { readCountedChain, readNoun } from "./nouns.ts"
import { readNext } from "./places-next.ts"

const anyPlace: Noun = { what: "any" }

export function readSame(cursor: Cursor, start: number): Place | null {
  return (
    cursor.attempt(() => readLastWorked(cursor, start)) ??
    cursor.attempt(() => readBaseOf(cursor, start)) ??
    cursor.attempt(() => readJoiningPlace(cursor, start)) ??
    cursor.attempt(() => readSamePlace(cursor, start)) ??
    cursor.attempt(() => readJustMade(cursor, start)) ??
    cursor.attempt(() => readWhereJoined(cursor, start))
  )
}

/** "st last worked in and next 4". */
function readLastWorked(cursor: Cursor, start: number): Place | null {
  cursor.take("that")
  if (!cursor.take("stitch", "space") || !cursor.accept("last worked", "just worked")) return null
  cursor.take("in")
  return withNext(cursor, start) ?? { ...cursor.since(start), at: "same", noun: anyPlace }
}

/** "base of ch-3", "st at base of beg ch", "bottom of these ch". */
function readBaseOf(cursor: Cursor, start: number): Place | null {
  if (cursor.take("same")) cursor.take("stitch", "place", "space")
  else cursor.attempt(() => (cursor.take("stitch", "space") && cursor.is("in") ? true : null))
  cursor.take("in")
  if (!cursor.take("base")) return null
  if (/^[,;.)]?$/.test(cursor.text())) return { ...cursor.since(start), at: "same", noun: anyPlace }
  if (!cursor.accept("of")) return null
  const begins = cursor.is("start") || cursor.is("first")
  while (cursor.take("first", "start", "that", "same"));
  const counted = readCountedChain(cursor)
  if (!counted && !readNoun(cursor)) return null
  if (!counted && cursor.isNumber() && cursor.lexemes[cursor.at - 1]?.classes.has("chain"))
    cursor.at += 1
  return { ...cursor.since(start), at: "same", noun: anyPlace, ...(begins ? { begins: true } : {}) }
}

/** "joining st", "join", "joining sl st", "st with join". */
function readJoiningPlace(cursor: Cursor, start: number): Place | null {
  cursor.take("same")
  if (!cursor.take("joining")) return null
  cursor.accept("sl", "sl st", "slst", "slip")
  if (
    !cursor.take("stitch", "space", "place", "chain") &&
    !readNoun(cursor) &&
    !/^[,;.()]?$/.test(cursor.text()) &&
    !cursor.peek()?.newLine
  )
    return null
  return { ...cursor.since(start), at: "same", noun: anyPlace, begins: true }
}

function readSamePlace(cursor: Cursor, start: number): Place | null {
  if (!cursor.take("same")) return null
  cursor.take("joining", "first")
  const noun = readNoun(cursor)
  if (!noun) {
    cursor.take("centre", "base")
    if (!cursor.take("place")) readNoun(cursor)
  }
  const where = acceptAsWhich(cursor)
  const next = withNext(cursor, start)
  if (next) return next
  return {
    ...cursor.since(start),
    at: "same",
    noun: noun ?? anyPlace,
    ...(where ? { begins: true } : {}),
  }
}

/** "... as sl st", "where you joined", "as beg ch-3", "you made the sl st in". */
function acceptAsWhich(cursor: Cursor): boolean {
  let begins = false
  cursor.attempt(() => {
    if (!cursor.accept("as", "with", "where", "that", "of", "from", "in")) return null
    const link = cursor.lexemes[cursor.at - 1]?.text
    // "ch-3 loop from previous round" is no place already touched.
    if (
      /^(?:of|from|in)$/.test(link ?? "") &&
      (cursor.is("round", 1) || (cursor.is("previous") && cursor.is("round", 2)))
    )
      return null
    let known = false
    for (let words = 0; words < 9; words++) {
      if (cursor.is("joining") || cursor.is("start") || cursor.is("first")) begins = true
      if (cursor.take("joining", "start", "previous", "made", "first", "that", "last")) {
        known = true
        continue
      }
      if (
        cursor.accept(
          "you",
          "you've",
          "was",
          "is",
          "were",
          "sl",
          "slip",
          "it",
          "came from",
          "with",
          "into",
          "in",
          "your",
        )
      )
        continue
      const noun =
        readCountedChain(cursor) ??
        (known || link === "as" || link === "where" ? readNoun(cursor) : null)
      if (noun) {
        known = true
        if (cursor.isNumber() && noun.what === "chain") cursor.at += 1
        continue
      }
      break
    }
    return known ? true : null
  })
  return begins
}

/** "st where you joined", "st that was joined", "the st you slip stitched into". */
function readWhereJoined(cursor: Cursor, start: number): Place | null {
  cursor.take("that")
  if (!readNoun(cursor)) return null
  const at = cursor.at
  acceptAsWhich(cursor)
  if (cursor.at === at) {
    // "st you just joined in".
    if (!cursor.accept("you", "where")) return null
    cursor.accept("you")
    if (!cursor.take("joining", "made") && !cursor.accept("sl", "slip")) return null
    cursor.take("stitch")
    cursor.take("in")
  }
  return { ...cursor.since(start), at: "same", noun: anyPlace }
}

/** "loop just made", "ch-3 sp formed". */
function readJustMade(cursor: Cursor, start: number): Place | null {
  cursor.take("that")
  if (cursor.text() === "side" && cursor.text(1) === "of") return null
  const noun = readNoun(cursor)
  if (!noun || !cursor.take("made")) return null
  return { ...cursor.since(start), at: "same", noun }
}

/** "same and next 2", "same st and in next st". */
function withNext(cursor: Cursor, start: number): Place | null {
  return cursor.attempt(() => {
    if (!cursor.take("and")) return null
    cursor.take("in")
    if (cursor.take("each")) cursor.accept("of")
    if (!cursor.is("next")) return null
    const rest = readNext(cursor, start, false, "in")
    return rest?.at === "next" ? { ...rest, ...cursor.since(start), withLast: true } : null
  })
}

/** Things of the round being made: "top of that dc", "last sc made", "top of ch-3", "first cluster". */
export function readMade(cursor: Cursor, start: number): Place | null {
  return (
    cursor.attempt(() => readTopOf(cursor, start)) ??
    cursor.attempt(() => {
      if (!cursor.is("that") || cursor.is("round", 1)) return null
      cursor.at += 1
      cursor.take("same")
      const begins = cursor.is("start") && cursor.is("group", 1)
      const noun = readNoun(cursor)
      // "over this starting shell": that of the round below.
      if (begins && noun && !cursor.is("made"))
        return { ...cursor.since(start), at: "next", noun, count: 1, bare: true }
      if (noun?.what === "space" && !cursor.is("made"))
        return { ...cursor.since(start), at: "same", noun }
      cursor.take("made")
      return noun && { ...cursor.since(start), at: "made", which: "last", noun }
    }) ??
    cursor.attempt(() => {
      // "last dc made", "last tr worked".
      if (!cursor.is("last")) return null
      cursor.at += 1
      const noun = readNoun(cursor)
      return noun && cursor.take("made")
        ? { ...cursor.since(start), at: "made", which: "last", noun }
        : null
    }) ??
    cursor.attempt(() => {
      // "into first of 16 ch": where the round began.
      if (!cursor.take("first") || !cursor.accept("of")) return null
      cursor.take("start", "first", "that")
      return (
        readCountedChain(cursor) && {
          ...cursor.since(start),
          at: "made",
          which: "first",
          noun: { what: "chain" },
        }
      )
    }) ??
    cursor.attempt(() => {
      if (!cursor.take("start")) return null
      const noun = readCountedChain(cursor) ?? readNoun(cursor)
      if (!noun) return null
      if (noun.what === "chain" && cursor.isNumber()) cursor.at += 1
      acceptAtBeginning(cursor)
      return { ...cursor.since(start), at: "made", which: "first", noun }
    })
  )
}

function readTopOf(cursor: Cursor, start: number): Place | null {
  // "in side of sc just made": on it, as in its top.
  if (cursor.text() === "side" && cursor.text(1) === "of") cursor.at += 1
  else if (!cursor.take("top")) return null
  // "top st of starting chain"
  if (cursor.text(1) === "of") cursor.take("stitch", "chain")
  cursor.accept("of")
  const atEnd = cursor.lexemes
    .slice(cursor.at, cursor.at + 9)
    .some(({ classes, text }) => classes.has("join") || /^(?:ss|slst|sl)$/.test(text))
  const last = cursor.attempt(() => {
    if (!cursor.take("that") && !cursor.is("last") && !cursor.is("previous")) return null
    const said = cursor.is("last") && !cursor.lexemes[cursor.at - 1]?.classes.has("that")
    if (cursor.is("last") || cursor.is("previous")) cursor.at += 1
    const noun = readNoun(cursor)
    // "into top of last dc" is the last one of the round below, "of last dc made" of this one.
    const made = cursor.take("made")
    return said && !made && noun?.kind && atEnd ? null : noun
  })
  if (last && last.what !== "chain")
    return { ...cursor.since(start), at: "made", which: "last", noun: last }
  while (cursor.take("first", "start", "that"));
  const counted = readCountedChain(cursor)
  const noun = counted ?? readNoun(cursor) ?? last
  if (!noun) return null
  if (!counted && noun.what === "chain" && cursor.isNumber()) cursor.at += 1
  if (noun.what !== "chain" && cursor.take("made"))
    return { ...cursor.since(start), at: "made", which: "last", noun }
  acceptAtBeginning(cursor)
  return { ...cursor.since(start), at: "made", which: "first", noun }
}

/** "... at beg of rnd", "... from start of round", "... made". */
function acceptAtBeginning(cursor: Cursor): void {
  cursor.attempt(() => {
    cursor.take("made")
    cursor.accept("done")
    if (!cursor.take("in", "of")) return null
    const begins = cursor.take("start")
    if (begins) cursor.accept("of")
    cursor.take("that", "same")
    return cursor.take("round") && !cursor.isNumber() ? true : null
  })
}
