// Where something is worked: "in next ch-3 sp", "in each of next 2 sts", "in 3rd ch of next ch-5
// loop", "in same st", "over next 4 sc", "in centre dc of next 3-dc group", "in the back loop of each sc".
//
// A place is a preposition, which of several, and a noun. The first rule that fits is taken: places are told
// apart by their words alone, what stays open in them is decided when they are looked for on the edge.

import type { Noun, Place } from "../base/tree.ts"
import { gapIf } from "../edge/gap-sides.ts"
import { type Cursor, isBoundary, isStitchWord } from "./cursor.ts"
import { loopNamed } from "./loop-words.ts"
import { acceptTwo, readNoun } from "./nouns.ts"
import { readEach } from "./places-each.ts"
import { readMade, readSame } from "./places-made.ts"
import { readNext } from "./places-next.ts"
import { readDip, readMiddleRun, readPicked } from "./places-picked.ts"
import { readUnknownPlace } from "./places-unknown.ts"
import { readUntil } from "./until.ts"

/** True when a place with its preposition may start here. */
export function atPlace(cursor: Cursor): boolean {
  return (
    cursor.is("in") ||
    cursor.is("around") ||
    cursor.is("between") ||
    cursor.is("to") ||
    cursor.text() === "from" ||
    cursor.is("behind") ||
    cursor.is("front") ||
    (cursor.text() === "all" && cursor.is("in", 1)) ||
    (cursor.text() === "together" && cursor.is("in", 1)) ||
    (cursor.text() === "where" && /^(?:you|yarn|it|join|joined)$/.test(cursor.text(1)))
  )
}

/** A place with its preposition, stepped over; null when none is here. */
export function readPlace(cursor: Cursor): Place | null {
  // "along side to next ch-2 sp", "dc across each side" tell how far, not where.
  if (
    /^(?:along|across)$/.test(cursor.text()) &&
    cursor.is("side", cursor.is("each", 1) || cursor.is("rest", 1) ? 2 : 1)
  )
    return null
  // "(...) all the way around the circle": how far, too.
  if (cursor.is("around") && /^all /.test(cursor.text())) return null
  if (!atPlace(cursor)) return null
  if (cursor.text() === "where") return cursor.attempt(() => readWhereBegun(cursor))
  if (cursor.text() === "over" && cursor.text(1) === "all" && isBoundary(cursor.text(2))) {
    // "30 sc over all": over the ring and what was wound round it.
    const start = cursor.start()
    cursor.at += 2
    return { ...cursor.since(start), at: "ring" }
  }
  return cursor.attempt(() => {
    const start = cursor.start()
    cursor.accept("all", "together")
    const behind = cursor.is("behind") || cursor.is("behind", 1)
    const front = cursor.is("front")
    const preposition = cursor.text()
    let between = cursor.is("between")
    cursor.at += 1
    if (behind || front)
      cursor.attempt(() =>
        acceptPiece(cursor) && (cursor.is("in") || cursor.is("between")) ? true : null,
      )
    if ((behind || front) && cursor.take("between")) between = true
    // "into back of next tr": behind what has been worked since.
    cursor.take("behind")
    while (
      cursor.is("in") ||
      (cursor.is("around") && !cursor.is("until")) ||
      cursor.text() === "of"
    )
      cursor.at += 1
    const place = readTarget(cursor, start, between ? "between" : preposition)
    if (!place) return null
    if (
      /^(?:under|over)$/.test(preposition) &&
      place.at === "next" &&
      place.each &&
      place.noun.what === "chain" &&
      place.count < 20
    )
      // "3 dc under each 2 ch": the figure is the size of the loop.
      return {
        ...cursor.since(start),
        at: "each",
        nouns: [{ what: "space", size: place.count }],
        until: readUntil(cursor) ?? { kind: "around", implied: true },
      }
    if (
      /^(?:under|over)$/.test(preposition) &&
      place.at === "each" &&
      place.nouns.every((noun) => noun.what === "chain")
    ) {
      // "4 dc under each ch", "over each ch 2": over the chains, into their space.
      const size = cursor.attempt(() => cursor.takeCount(2))
      const space: Noun = { what: "space", ...(size === null ? {} : { size }) }
      return { ...place, ...cursor.since(start), nouns: [space] }
    }
    const over = preposition === "over" || preposition === "across" ? { over: true } : {}
    const passes = behind
      ? { passes: "behind" as const }
      : front
        ? { passes: "front" as const }
        : {}
    return withEarlierRound(cursor, { ...place, ...over, ...passes }, start)
  })
}

/** "in back of work, between next 2 petals": the piece itself. */
function acceptPiece(cursor: Cursor): boolean {
  if (!cursor.take("work") && !cursor.accept("piece", "motif", "flower", "petals", "petal"))
    return false
  cursor.accept(",")
  return true
}

type Details = {
  loops?: "front" | "back" | "third"
  post?: "front" | "back"
  passes?: "behind" | "front"
}

/** A place whose preposition has been read or is implied. */
export function readTarget(cursor: Cursor, start: number, preposition: string): Place | null {
  return cursor.attempt(() => {
    const details: Details = {}
    cursor.attempt(() => acceptTopOf(cursor))
    cursor.attempt(() => readLoopWords(cursor, details))
    cursor.attempt(() => readPostWords(cursor, details))
    const bare = readBare(cursor, start, preposition)
    if (bare?.at === "next" && (bare.noun.what === "stitch" || bare.noun.what === "chain"))
      cursor.attempt(() => acceptOwner(cursor))
    if (bare?.at === "next" && bare.noun.what === "space") {
      // "next hole of ch-2 space".
      const named = cursor.attempt(() => {
        if (!cursor.accept("of")) return null
        while (cursor.take("next", "that", "same"));
        const noun = readNoun(cursor)
        return noun?.what === "space" ? noun : null
      })
      if (named) return { ...bare, ...cursor.since(start), noun: named, ...details }
    }
    if (bare) return { ...bare, ...details }
    if (!details.loops && !details.post) return null
    return {
      ...cursor.since(start),
      at: "next",
      noun: { what: "stitch" },
      count: 1,
      bare: true,
      ...details,
    }
  })
}

/** "2 sts on next petal", "next dc of same shell": whose they are says nothing new. */
function acceptOwner(cursor: Cursor): true | null {
  // "next sc between petals".
  if (cursor.take("between")) return betweenOwners(cursor) ? true : null
  if (!cursor.accept("of", "on", "in", "from")) return null
  while (cursor.take("next", "same", "that", "first", "last", "each", "any"));
  if (cursor.take("top") && cursor.accept("of")) return readNoun(cursor) ? true : null
  if (
    !cursor.is("group") &&
    !cursor.is("space") &&
    !(cursor.is("chain") && cursor.isNumber(cursor.text(1) === "-" ? 2 : 1))
  )
    return null
  const noun = readNoun(cursor)
  return noun?.what === "group" || noun?.what === "space" ? true : null
}

/** "between petals", "between each loop", "between the two shells". */
function betweenOwners(cursor: Cursor): boolean {
  const each = cursor.take("each", "next", "that")
  if (!acceptTwo(cursor)) return false
  const owner = cursor.is("group") || cursor.is("space")
  if (!owner || (!each && !cursor.text().endsWith("s"))) return false
  return readNoun(cursor) !== null
}

/** "in top of next puff": every stitch is worked into its top. */
function acceptTopOf(cursor: Cursor): true | null {
  if (!cursor.take("top") || !cursor.accept("of")) return null
  return cursor.is("next") ||
    cursor.is("each") ||
    cursor.is("any") ||
    cursor.is("same") ||
    cursor.is("last")
    ? true
    : null
}

function readLoopWords(cursor: Cursor, details: Details): true | null {
  const which = loopNamed(cursor)
  if (
    (cursor.is("rest") || cursor.is("unworked")) &&
    cursor.is("loop-part", 1) &&
    cursor.is("of", 2)
  ) {
    // "in remaining loop of each ch": along the other side.
    cursor.at += 3
    return true
  }
  if (which) {
    cursor.at += 1
    details.loops = which
  } else if (cursor.text() === "both" && cursor.is("loop-part", 1)) cursor.at += 2
  else if (cursor.text() === "back" && cursor.text(1) === "of") {
    // "into back of next tr": behind what has been worked since.
    if (!cursor.is("next", 2) && !cursor.is("each", 2) && !cursor.is("same", 2)) return null
    details.passes = "behind"
    cursor.at += 2
    return true
  } else return null
  cursor.accept("only")
  cursor.attempt(() => (cursor.accept("of") ? true : null))
  return true
}

function readPostWords(cursor: Cursor, details: Details): true | null {
  let post: "front" | "back" = "front"
  if (/^(?:front|back)$/.test(cursor.text()) && cursor.is("post", 1)) {
    if (cursor.text() === "back") post = "back"
    cursor.at += 1
  }
  if (!cursor.take("post")) return null
  if (!cursor.take("of") && !/^[,;.)*]?$/.test(cursor.text())) return null
  details.post = post
  return true
}

function readBare(cursor: Cursor, start: number, preposition: string): Place | null {
  const between = preposition === "between"
  if (between && namesNoGap(cursor)) return null
  return (
    cursor.attempt(() => readRing(cursor, start)) ??
    cursor.attempt(() => readHookChain(cursor, start)) ??
    cursor.attempt(() => readDip(cursor, start)) ??
    cursor.attempt(() => readMiddleRun(cursor, start)) ??
    cursor.attempt(() => readBesideEach(cursor, start)) ??
    (between ? cursor.attempt(() => readThisAndNext(cursor, start)) : null) ??
    (between ? null : cursor.attempt(() => readSame(cursor, start))) ??
    (between ? null : cursor.attempt(() => readMade(cursor, start))) ??
    cursor.attempt(() => readPicked(cursor, start)) ??
    cursor.attempt(() => readEach(cursor, start, between)) ??
    cursor.attempt(() => readNext(cursor, start, between, preposition)) ??
    cursor.attempt(() => readUnknownPlace(cursor, start))
  )
}

/** "between any 8 dc": a gap lies between two. */
function namesNoGap(cursor: Cursor): boolean {
  let ahead = 0
  while (/^(?:any|each|next|last|first|of|the)$/.test(cursor.text(ahead))) ahead += 1
  return (
    cursor.isNumber(ahead) &&
    cursor.value(ahead) !== 2 &&
    isStitchWord(cursor.text(ahead + 1), cursor.terms) &&
    !cursor.is("group", ahead + 2)
  )
}

function readRing(cursor: Cursor, start: number): Place | null {
  const bare =
    /^[,;.*)]?$/.test(cursor.text(1)) ||
    (cursor.is("chain", 1) && cursor.isNumber(2)) ||
    cursor.is("and", 1)
  if (cursor.is("centre") && bare && cursor.text() !== "mid") {
    // "3 dc into the centre".
    cursor.at += 1
    return { ...cursor.since(start), at: "ring" }
  }
  while (cursor.take("centre", "start") || cursor.accept("of", "foundation", "this"));
  if (cursor.accept("which")) {
    // "a magic ring, in which you work 12 dc".
    cursor.accept("you", "we", "one")
    return cursor.is("work") ? { ...cursor.since(start), at: "ring" } : null
  }
  const solid = cursor.take("bought-ring")
  const drawn = cursor.is("drawn-ring")
  if (!cursor.take("ring")) return null
  if (/^(?:center|centre)$/.test(cursor.text()) && !cursor.is("stitch", 1) && !cursor.is("of", 1))
    cursor.at += 1
  const made = solid ? "solid" : drawn ? "adjustable" : undefined
  return { ...cursor.since(start), at: "ring", ...(made === undefined ? {} : { made }) }
}

/** "between this dc and the next". */
function readThisAndNext(cursor: Cursor, start: number): Place | null {
  if (!cursor.take("that", "same")) return null
  const noun = readNoun(cursor)
  if (!noun || !cursor.take("and") || !cursor.take("next")) return null
  readNoun(cursor)
  return { ...cursor.since(start), at: "next", noun: gapIf(noun, true), count: 1 }
}

/** "sp before each dc", "space after every st": the gap beside each of them. */
function readBesideEach(cursor: Cursor, start: number): Place | null {
  if (!cursor.take("space")) return null
  const between = cursor.take("between")
  if (!between && !cursor.accept("before", "after", "behind")) return null
  if (!cursor.take("each")) return null
  if (between && cursor.isNumber() && cursor.value() === 2 && cursor.text(1) !== "-") cursor.at += 1
  const noun = readNoun(cursor)
  if (!noun || (between && noun.what !== "stitch" && noun.what !== "group")) return null
  const until = readUntil(cursor) ?? { kind: "around" as const, implied: true as const }
  const gap: Noun = between ? gapIf(noun, true) : { what: "gap" }
  return { ...cursor.since(start), at: "each", nouns: [gap], until }
}

/** "4th ch from hook", "first ch from the hook", "ch furthest from hook". */
export function readHookChain(cursor: Cursor, start: number): Place | null {
  let nth: number
  if (cursor.isOrdinal()) nth = cursor.value()
  else if (cursor.is("first")) nth = 1
  else return null
  cursor.at += 1
  cursor.take("chain")
  cursor.take("stitch", "space")
  if (!cursor.accept("from", "of") || !cursor.take("hook")) return null
  return { ...cursor.since(start), at: "hook-chain", nth }
}

/** "of Rnd 2", "of previous round", "4 rnds below", "in the rnd below". */
export function withEarlierRound(cursor: Cursor, place: Place, start: number): Place {
  const named = cursor.attempt((): Place | null => {
    const bracket = cursor.accept("(")
    const found = readEarlierRound(cursor, place)
    if (!found || (bracket && !cursor.accept(")"))) return null
    return found
  })
  return { ...(named ?? place), ...cursor.since(start) }
}

function readEarlierRound(cursor: Cursor, place: Place): Place | null {
  cursor.accept("made", "worked", "left")
  const joined = cursor.take("of", "in")
  if (joined && cursor.is("round") && cursor.text(1) === "before") {
    cursor.at += 2
    return { ...place }
  }
  if (joined && (cursor.take("previous", "last") || cursor.take("that"))) {
    cursor.accept("two", "2")
    return cursor.take("round") ? { ...place } : null
  }
  if (joined && (cursor.isOrdinal() || cursor.is("first")) && cursor.is("round", 1)) {
    const ofRound = cursor.is("first") ? 1 : cursor.value()
    cursor.at += 2
    return { ...place, ofRound }
  }
  if (cursor.is("round") && cursor.isNumber(1)) {
    if (!joined) return null
    const ofRound = cursor.value(1)
    cursor.at += 2
    cursor.take("below")
    return { ...place, ofRound }
  }
  if (cursor.isNumber() && cursor.is("round", 1) && cursor.is("below", 2)) {
    const below = cursor.value()
    cursor.at += 3
    return { ...place, below }
  }
  if (cursor.is("round") && cursor.is("below", 1)) {
    cursor.at += 2
    return { ...place, below: 1 }
  }
  if (cursor.text() === "round below") {
    cursor.at += 1
    return { ...place, below: 1 }
  }
  if (!joined && cursor.text() === "below") {
    cursor.at += 1
    return { ...place, below: 2 }
  }
  return null
}

/** "where you joined", "where yarn was joined", with no preposition. */
function readWhereBegun(cursor: Cursor): Place | null {
  const start = cursor.start()
  cursor.at += 1
  while (cursor.accept("you", "it", "was", "is", "have", "just") || cursor.take("yarn"));
  if (!cursor.take("joining") && !cursor.accept("started", "began", "slip stitched", "attached"))
    return null
  cursor.take("to", "in")
  return { ...cursor.since(start), at: "same", noun: { what: "any" }, begins: true }
}
