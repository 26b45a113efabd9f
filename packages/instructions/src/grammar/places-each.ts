// "In each": "in each st around", "in each of next 3 sps", "in every 2nd sc", "in each dc and ch-1 sp".

import type { Noun, Place, Until } from "../base/tree.ts"
import { gapIf } from "../edge/gap-sides.ts"
import { type Cursor, isBoundary } from "./cursor.ts"
import { chainOfSize, readNoun } from "./nouns.ts"
import { countedNext } from "./places-next.ts"
import { readUntil } from "./until.ts"

export function readEach(cursor: Cursor, start: number, between: boolean): Place | null {
  let every: number | undefined
  let rest = false
  const others =
    cursor.attempt(() => readOthers(cursor, start)) ??
    cursor.attempt(() => readNextAndOthers(cursor, start))
  if (others) return others
  if (cursor.is("each") || (cursor.is("rest") && !cursor.is("alternate"))) {
    rest = cursor.is("rest")
    const several = / of$|^all$/.test(cursor.text())
    cursor.at += 1
    if ((cursor.accept("of") || several) && cursor.text() === "other") {
      // "in each of the other spaces", "in all other loops": those that are left.
      rest = true
      cursor.at += 1
    } else if (cursor.is("alternate")) {
      every = 2
      cursor.at += 1
    } else if (cursor.isOrdinal()) {
      every = cursor.value()
      cursor.at += 1
    }
  } else if (cursor.text() === "other" && cursor.isNumber(1)) {
    // "in the other 11 stitches".
    rest = true
    cursor.at += 1
  } else if (/^alt/.test(cursor.text())) {
    every = 2
    cursor.at += 1
  } else return null
  const of = cursor.accept("of") || /of$/.test(cursor.lexemes[cursor.at - 1]!.text)
  if (of) cursor.take("that")
  if (cursor.is("rest")) {
    rest = true
    cursor.at += 1
    cursor.accept("of")
  }
  if (cursor.is("next") || ((cursor.is("first") || cursor.is("last")) && cursor.isNumber(1))) {
    const last = cursor.is("last")
    const following = /^(?:following|subsequent)$/.test(cursor.text())
    cursor.at += 1
    const figure = cursor.isNumber()
    const next = countedNext(cursor, start, between)
    if (!next) return null
    if (!of && !last && !figure && next.at === "next" && (following || isPlural(cursor)))
      // "all subsequent spaces", "each following space": those that are left.
      return {
        ...cursor.since(start),
        at: "each",
        nouns: [next.noun],
        until: { kind: "around", rest: true },
      }
    if (next.at === "next" && every !== undefined && every > 1)
      // "every other of next 6 sts": told as a pass that stops.
      return { ...next, each: true, every }
    return last && next.at === "next" && next.count === 1
      ? { ...next, order: "last", each: true }
      : { ...next, each: true }
  }
  cursor.attempt(() => {
    // "in each of the previous row's stitches".
    if (!cursor.take("previous", "last") || !cursor.take("round")) return null
    while (cursor.accept("'", "s"));
    return cursor.is("stitch") || cursor.is("space") || cursor.is("chain") ? true : null
  })
  const counted = cursor.attempt(() => readCountOfPlaces(cursor, start, between))
  if (counted) return counted
  const nouns = readNouns(cursor, between)
  if (cursor.is("rest") && nouns.length > 0) {
    rest = true
    cursor.at += 1
  }
  if (
    nouns.length === 0 &&
    every === undefined &&
    (/^[,;.(]?$/.test(cursor.text()) || cursor.is("around") || cursor.is("place"))
  )
    // "2 sc in each.", "2 sc in each around": in each stitch there is.
    nouns.push({ what: "stitch" })
  if (nouns.length === 0 && every !== undefined && /^[,;.()]?$/.test(cursor.text()))
    nouns.push({ what: "stitch" })
  const forNext = cursor.attempt(() => {
    // "in each st for the next 15 sts".
    if (nouns.length !== 1 || !cursor.accept("for") || !cursor.take("next")) return null
    const count = cursor.takeCount(1)
    return count !== null && readNoun(cursor) ? count : null
  })
  if (forNext !== null)
    return { ...cursor.since(start), at: "next", noun: nouns[0]!, count: forNext, each: true }
  cursor.take("place")
  // "7 dc in each sp, sc in each dc between".
  if (cursor.is("between") && /^[,;.*)]?$/.test(cursor.text(1))) cursor.at += 1
  if (nouns.length === 0) return null
  const chains =
    nouns.length === 1 && (nouns[0]!.what === "stitch" || nouns[0]!.what === "chain")
      ? cursor.attempt(() => readChainsOf(cursor))
      : null
  if (chains !== null)
    return {
      ...cursor.since(start),
      at: "next",
      noun: { what: "chain" },
      count: chains,
      each: true,
    }
  if (cursor.text() === "of") {
    const at = cursor.at
    cursor.at += 1
    while (cursor.take("next", "each", "same", "that"));
    const owner = readNoun(cursor)
    if (owner?.what === "group")
      return {
        ...cursor.since(start),
        at: "each",
        nouns,
        until: { kind: "to", noun: { what: "space" } },
      }
    if (!owner || owner.what === "ring") cursor.at = at
  }
  // "each ch sp from the previous row", "each ch sp in rnd"; "in rnd 2" names another.
  cursor.attempt(() => {
    if (!cursor.take("of", "in")) return null
    cursor.take("previous", "last")
    return cursor.take("round") && !cursor.isNumber() ? true : null
  })
  if (nouns.length === 1 && nouns[0]!.what === "chain") cursor.attempt(() => acceptBackDown(cursor))
  const across = cursor.text() === "across"
  const until =
    acrossSide(readUntilAfterComma(cursor) ?? readUntil(cursor), across) ??
    (rest ? { kind: "around" as const, rest: true } : { kind: "around" as const, implied: true })
  return {
    ...cursor.since(start),
    at: "each",
    nouns,
    until,
    ...(every === undefined ? {} : { every }),
  }
}

function isPlural(cursor: Cursor): boolean {
  const word = cursor.lexemes[cursor.at - 1]!.text
  return word.endsWith("s") && !word.endsWith("ss")
}

/** "each ch back down [to the dc you chained from]": along the chain, as far as it goes. */
function acceptBackDown(cursor: Cursor): true | null {
  if (!cursor.accept("back down", "back up", "back", "down", "back along")) return null
  cursor.accept("ch")
  cursor.attempt(() => {
    if (!cursor.take("to", "in", "until")) return null
    for (let k = 0; k < longestOrigin && !isBoundary(cursor.text()); k++) cursor.at += 1
    return isBoundary(cursor.text()) ? true : null
  })
  return isBoundary(cursor.text()) ? true : null
}

/** Words that tell where a chain began, at most. */
const longestOrigin = 9

/** "each st of ch 5": so many chains. */
function readChainsOf(cursor: Cursor): number | null {
  if (!cursor.accept("of")) return null
  cursor.take("next", "that", "same")
  if (cursor.isNumber() && cursor.is("chain", 1) && !cursor.is("space", 2)) {
    const count = cursor.takeCount(1)
    cursor.at += 1
    return count
  }
  if (!cursor.take("chain")) return null
  cursor.accept("-")
  return cursor.is("space", 1) ? null : cursor.takeCount(1)
}

/** "in each other", "in all the others": those the case before leaves out. */
function readOthers(cursor: Cursor, start: number): Place | null {
  if (cursor.text() === "other" && /^[,;.(]?$/.test(cursor.text(1))) cursor.at += 1
  else {
    if (!cursor.is("each") || cursor.text() === "every") return null
    cursor.at += 1
    if (!cursor.accept("other", "others", "rest", "other ones")) return null
    if (cursor.is("stitch") || cursor.is("chain") || cursor.is("space")) return null
  }
  if (cursor.isNumber() || (cursor.peek()?.type === "word" && !cursor.is("around"))) return null
  return {
    ...cursor.since(start),
    at: "each",
    nouns: [{ what: "stitch" }],
    until: { kind: "around", implied: true },
    others: true,
  }
}

/** "in next and all other sps", "in next (and each following) sp": those that are left. */
function readNextAndOthers(cursor: Cursor, start: number): Place | null {
  if (!cursor.take("next")) return null
  const named = readNoun(cursor)
  const bracket = cursor.accept("(")
  if (!cursor.take("and") || !cursor.take("each")) return null
  cursor.accept("of")
  while (cursor.accept("other") || cursor.take("next", "rest", "that"));
  const noun = readNoun(cursor) ?? named
  if (!noun || (bracket && !cursor.accept(")"))) return null
  readUntil(cursor)
  return {
    ...cursor.since(start),
    at: "each",
    nouns: [noun],
    until: { kind: "around", rest: true },
  }
}

/** "in each ch-1 sp across": as far as what is worked next, which is the end of a side or of the round. */
function acrossSide(until: Until | null, across: boolean): Until | null {
  return across && until?.kind === "around" ? { kind: "around", implied: true, side: true } : until
}

function readNouns(cursor: Cursor, between: boolean): Noun[] {
  const nouns: Noun[] = []
  for (;;) {
    const noun = readNoun(cursor)
    if (!noun) break
    nouns.push(gapIf(chainOfSize(cursor, noun), between))
    const more = cursor.attempt(() => {
      if (!cursor.take("and") && !cursor.accept("or", "/", ",")) return null
      const comma = cursor.lexemes[cursor.at - 1]?.text === ","
      if (comma && !cursor.take("and")) return null
      cursor.attempt(() => (cursor.take("in") && cursor.is("each") ? true : null))
      if (cursor.take("each")) cursor.accept("of")
      const at = cursor.at
      const next = readNoun(cursor)
      // "each st and 3 sc in corner": the work goes on.
      const work = cursor.is("in") && next?.what === "stitch"
      cursor.at = at
      return next && !cursor.isNumber() && !work ? true : null
    })
    if (!more) break
  }
  return nouns
}

/** "each of 3 sc", "all 4 corners", "both next dc", "each 2 ch sp". */
function readCountOfPlaces(cursor: Cursor, start: number, between: boolean): Place | null {
  if (!cursor.isNumber() || cursor.text(1) === "-" || isSizedSpace(cursor)) return null
  const total = cursor.takeCount(1)
  if (total === null) return null
  const first = cursor.take("next")
  // "sc in all 12."
  const noun =
    readNoun(cursor) ??
    (total > 1 && isBoundary(cursor.text()) ? ({ what: "stitch" } as const) : null)
  if (!noun) return null
  if (between && total === 2 && !first)
    // "between each 2 dc": in every gap.
    return {
      ...cursor.since(start),
      at: "each",
      nouns: [gapIf(noun, true)],
      until: readUntil(cursor) ?? { kind: "around", implied: true },
    }
  if (!first && cursor.accept("of", "in", "on")) {
    while (cursor.take("that", "same", "next", "each", "first"));
    readNoun(cursor)
    return { ...cursor.since(start), at: "next", noun, count: total, each: true }
  }
  const startAt = first ? null : cursor.attempt(() => readStartingAt(cursor))
  if (startAt !== null)
    return { ...cursor.since(start), at: "next", noun, count: total, startAt, each: true }
  if (!first && noun.corner)
    return {
      ...cursor.since(start),
      at: "each",
      nouns: [noun],
      until: readUntil(cursor) ?? { kind: "around" },
      total,
    }
  return {
    ...cursor.since(start),
    at: "next",
    noun: gapIf(noun, between),
    count: total,
    each: true,
  }
}

/** "each 2ch sp": the size of the spaces, not how many. */
function isSizedSpace(cursor: Cursor): boolean {
  return (
    cursor.is("chain", 1) &&
    (cursor.is("space", 2) || (cursor.text(2) === "-" && cursor.is("space", 3)))
  )
}

/** "starting at the 5th of a group". */
function readStartingAt(cursor: Cursor): number | null {
  if (!cursor.take("start")) return null
  cursor.accept("at", "in", "with")
  const token = cursor.peek()
  if (token?.type !== "ordinal") return null
  cursor.at += 1
  cursor.accept("of")
  cursor.take("each")
  readNoun(cursor)
  return token.value
}

/** "in each sc around, until 1 sc remains": where it stops, set off by a comma. */
function readUntilAfterComma(cursor: Cursor): Until | null {
  return cursor.attempt(() => {
    readUntil(cursor)
    if (!cursor.accept(",") || !/^(?:until|till|til)$/.test(cursor.text())) return null
    const until = readUntil(cursor)
    return until?.kind === "leaving" ? until : null
  })
}
