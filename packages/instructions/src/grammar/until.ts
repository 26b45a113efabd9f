// How far something goes and how often: "around", "to corner sp", "to last 2 sts", "5 more times", "twice".

import type { Times, Until } from "../base/tree.ts"
import type { Cursor } from "./cursor.ts"
import { readNoun } from "./nouns.ts"

/** Said of what a bracket or a pair of marks has just closed: whether so often in all or again is left to the counts. */
export function ofBracket(times: Times | null): Times | null {
  return times?.kind === "more" && times.plain ? { ...times, ofBracket: true } : times
}

/** "around", "to corner sp", "to last 2 sts", "to within last sc of group"; null when nothing is said. */
export function readUntil(cursor: Cursor): Until | null {
  return cursor.attempt(() => {
    const evenly = cursor.attempt(() =>
      cursor.take("evenly") && cursor.is("around") ? true : null,
    )
    if (!evenly && !cursor.is("around") && !cursor.is("until") && !cursor.is("to")) return null
    return readAround(cursor) ?? readUpTo(cursor)
  })
}

function readAround(cursor: Cursor): Until | null {
  if (!cursor.is("around") || /^(?:over|through|thru|under)$/.test(cursor.text())) return null
  return cursor.attempt((): Until | null => {
    const along = cursor.text() === "along" || cursor.text() === "across"
    cursor.at += 1
    cursor.take("around")
    if (along) {
      cursor.take("each", "rest")
      if (cursor.isNumber() && cursor.is("side", 1)) cursor.at += 1
      if (cursor.is("side")) {
        cursor.at += 1
        if (!cursor.is("until")) return { kind: "around", implied: true }
      }
    }
    cursor.attempt(() => {
      // "around circle", "around entire piece", "around edge of round".
      cursor.take("in")
      if (cursor.is("ring") && !cursor.is("drawn-ring")) cursor.at += 1
      else if (
        !cursor.take("round", "side") &&
        !cursor.accept("piece", "motif", "square", "hexagon", "flower", "circle", "row")
      )
        return null
      return startsThing(cursor) ? null : true
    })
    if (startsThing(cursor)) return null
    const whole = cursor.attempt(() => {
      if (!cursor.take("until")) return null
      return cursor.take("end", "joining", "start") ? true : null
    })
    if (whole) {
      cursor.attempt(() => (cursor.take("of") && cursor.take("round") ? true : null))
      return { kind: "around" }
    }
    if (cursor.is("until")) return readUpTo(cursor) ?? { kind: "around" }
    return { kind: "around" }
  })
}

/** "around next dc", "around the ring": a place, not an end. */
function startsThing(cursor: Cursor): boolean {
  return (
    cursor.is("next") ||
    cursor.is("each") ||
    cursor.is("same") ||
    cursor.is("post") ||
    cursor.is("that") ||
    cursor.is("bought-ring") ||
    cursor.is("chain") ||
    (cursor.is("stitch") && cursor.text() !== "stitch count") ||
    (cursor.is("space") && !cursor.is("around")) ||
    (cursor.is("ring") && !cursor.is("join"))
  )
}

function readUpTo(cursor: Cursor): Until | null {
  return cursor.attempt((): Until | null => {
    if (!cursor.take("until")) return null
    cursor.take("until")
    while (cursor.accept("you", "reach", "get", "come", "back", "are", "at") || cursor.take("to"));
    if (cursor.take("end")) {
      cursor.attempt(() => (cursor.take("of") && cursor.take("round", "side") ? true : null))
      return { kind: "around", rest: true }
    }
    if (cursor.text() === "join" && /^[,;.)]?$/.test(cursor.text(1))) return null
    if (cursor.take("start"))
      return readNoun(cursor) ||
        cursor.take("chain", "round", "of") ||
        /^[,;.)]?$/.test(cursor.text())
        ? { kind: "around", rest: true }
        : null
    if (cursor.accept("within", "before")) {
      cursor.take("last")
      const count = cursor.takeCount(1) ?? 1
      if (!readNoun(cursor)) return null
      const ofGroup =
        cursor.attempt(() => (cursor.take("of") && cursor.take("group") ? true : null)) !== null
      return { kind: "leaving", count, ofGroup }
    }
    if (cursor.take("last")) {
      // "to last 3ch space": the figure is the size of the space.
      const sized = cursor.is("chain", 1) && cursor.is("space", 2)
      const count = (sized ? null : cursor.takeCount(1)) ?? 1
      const noun = readNoun(cursor)
      if (!noun)
        return count > 1 || /^[,;.)]?$/.test(cursor.text())
          ? { kind: "leaving", count, ofGroup: false }
          : null
      cursor.attempt(() => (cursor.take("of") && cursor.take("round") ? true : null))
      return noun.what === "space" || noun.what === "corner"
        ? { kind: "leaving", count, ofGroup: false, noun }
        : { kind: "leaving", count, ofGroup: false }
    }
    const next = cursor.take("next")
    if (cursor.isNumber() && cursor.text(1) !== "-" && !next) {
      const count = cursor.takeCount(1) ?? 1
      readNoun(cursor)
      cursor.accept("are", "is")
      return cursor.take("rest") ||
        cursor.accept("remain", "remains", "left", "before") ||
        acceptAway(cursor)
        ? { kind: "leaving", count, ofGroup: false }
        : null
    }
    const noun = readNoun(cursor)
    return noun ? { kind: "to", noun } : null
  })
}

/** "5 more times", "3 times", "twice", "x 4", "around", "to last 2 sts"; null when nothing is said. */
export function readTimes(cursor: Cursor, afterOnce: boolean): Times | null {
  return cursor.attempt((): Times | null => {
    cursor.accept(",")
    const everywhere = afterOnce ? cursor.attempt(() => readEverywhere(cursor)) : null
    if (everywhere) return everywhere
    const filling = afterOnce ? cursor.attempt(() => readFilling(cursor)) : null
    if (filling) return filling
    cursor.accept("for", "total", "of")
    if (cursor.isNumber(1) && (cursor.is("times", 2) || cursor.is("more", 2)))
      cursor.accept("until")
    cursor.attempt(() => (cursor.accept("total") && cursor.accept("of") ? true : null))
    const inAll = cursor.accept("for total of", "total of")
    if (cursor.is("once")) return readOnce(cursor, afterOnce)
    if (cursor.accept("x")) {
      const count = cursor.takeCount(1)
      if (count === null) return null
      cursor.take("times")
      return afterOnce
        ? { kind: "more", count, plain: true, ofBracket: true }
        : { kind: "total", count }
    }
    if (inAll || (cursor.is("more") && cursor.isNumber(1))) {
      // "a total of 6 times", "a further 10 times".
      if (!inAll) cursor.at += 1
      const count = cursor.takeCount(1)
      if (count === null || !cursor.take("times")) return null
      return inAll ? { kind: "total", count } : { kind: "more", count, plain: false }
    }
    const said = cursor.attempt(() => readCountOfTimes(cursor, afterOnce))
    if (said) return said
    if (
      afterOnce &&
      cursor.is("round") &&
      !cursor.is("around") &&
      /^[,;.)\]]?$/.test(cursor.text(1))
    ) {
      // "repeat rnd".
      cursor.at += 1
      return { kind: "until", until: { kind: "around" } }
    }
    const made = cursor.attempt(() => readUntilMade(cursor))
    if (made) return made
    const goesOn = cursor.accept("continue", "continuing", "cont")
    const until = readUntil(cursor)
    if (!until || (goesOn && until.kind !== "around")) return null
    // "around eight times", "around x 6".
    const counted = until.kind === "around" ? cursor.attempt(() => readCountedTimes(cursor)) : null
    return counted ?? { kind: "until", until }
  })
}

/** "repeat from * to make a V-st in each sp": once in each. */
function readFilling(cursor: Cursor): Times | null {
  if (!cursor.take("to") || !cursor.take("work")) return null
  cursor.take("any")
  if (!readNoun(cursor) || !cursor.take("in") || !cursor.take("each") || !readNoun(cursor))
    return null
  cursor.take("around")
  return /^[,;.()[\]*]?$/.test(cursor.text())
    ? { kind: "until", until: { kind: "around", rest: true } }
    : null
}

/** "repeat in every ch-3 sp", "for each of the remaining 5 loops", "in next st": once in each, or in so many. */
function readEverywhere(cursor: Cursor): Times | null {
  if (!cursor.take("in") && !cursor.accept("for") && !cursor.is("each")) return null
  let every = false
  let next = false
  for (;;) {
    if (cursor.take("each", "rest")) every = true
    else if (cursor.take("next")) next = true
    else if (cursor.text() === "other" && cursor.isNumber(1)) {
      cursor.at += 1
      every = true
    } else if (!cursor.accept("other", "of") && !cursor.take("that")) break
  }
  if (!every && !next) return null
  const alternate = every && cursor.text(-1) === "other" && cursor.text(-2) === "every"
  const sized =
    cursor.is("chain", 1) && (cursor.is("space", 2) || cursor.is("space", 3) || !cursor.is("next"))
  const count = cursor.isNumber() && cursor.text(1) !== "-" && !sized ? cursor.takeCount(1) : null
  const noun = readNoun(cursor)
  // "in every other st" picks places, and tells of no repeat how often it is made.
  if (!noun || /^and$/.test(cursor.text()) || (alternate && noun.what === "stitch")) return null
  cursor.attempt(() =>
    (cursor.take("of", "in") && cursor.take("previous") && cursor.take("round")) ||
    cursor.take("around")
      ? true
      : null,
  )
  if (count !== null) return { kind: "more", count, plain: false }
  return every
    ? { kind: "until", until: { kind: "around", rest: true } }
    : { kind: "more", count: 1, plain: false }
}

/** "until you have 8 petals", "until 8 clusters in all are made", "to form 6 petals": so many with what stands before. */
function readUntilMade(cursor: Cursor): Times | null {
  if (!cursor.take("until") && !cursor.accept("for")) return null
  while (cursor.take("forms", "chat", "says-total") || cursor.accept("form", "make", "have"));
  const count = cursor.takeCount(2)
  if (count === null) return null
  while (cursor.take("size", "colour") || cursor.accept("more"));
  const noun = readNoun(cursor)
  if (!noun) return null
  while (
    cursor.take("chat", "made", "says-total", "more") ||
    cursor.accept(
      "in",
      "all",
      "total",
      "in all",
      "altogether",
      "are",
      "is",
      "have",
      "has",
      "been",
      "complete",
    )
  );
  cursor.attempt(() => {
    // "six spaces and six shells".
    if (!cursor.take("and") || cursor.takeCount(2) === null) return null
    while (!cursor.done() && !/^[,;.()[\]*]$/.test(cursor.text())) cursor.at += 1
    return true
  })
  return /^[,;.()[\]*]?$/.test(cursor.text()) || cursor.is("join")
    ? { kind: "more", count: count - 1, plain: true, untilMade: true }
    : null
}

function readCountedTimes(cursor: Cursor): Times | null {
  cursor.accept("x")
  const count = cursor.takeCount(1)
  if (count === null) return null
  // "around 6 more times".
  if (cursor.take("more"))
    return cursor.take("times") ? { kind: "more", count, plain: false } : null
  return count > 1 && cursor.take("times") && !cursor.is("more") ? { kind: "total", count } : null
}

function readOnce(cursor: Cursor, afterOnce: boolean): Times {
  const word = cursor.text()
  cursor.at += 1
  const count = /^(?:once|one)/.test(word) ? 1 : /^(?:thrice|three)/.test(word) ? 3 : 2
  const more = / more/.test(word) || cursor.take("more")
  if (more) return { kind: "more", count, plain: false }
  return afterOnce ? { kind: "more", count, plain: true } : { kind: "total", count }
}

function readCountOfTimes(cursor: Cursor, afterOnce: boolean): Times | null {
  const count = cursor.takeCount(0)
  if (count === null) return null
  const more = cursor.take("more")
  if (cursor.accept("x") && !cursor.isNumber())
    // "repeat from * 2 x" is said after the first time, "*...* 2x" of all of them.
    return more || cursor.take("more")
      ? { kind: "more", count, plain: false }
      : afterOnce
        ? { kind: "more", count, plain: true }
        : { kind: "total", count }
  if (!cursor.take("times"))
    return more && endsHere(cursor) ? { kind: "more", count, plain: false } : null
  const moreAfter = cursor.take("more")
  const total =
    cursor.accept("in total", "in all", "total", "altogether") ||
    cursor.attempt(() => (cursor.accept("in") && cursor.accept("all", "total") ? true : null)) !==
      null ||
    cursor.attempt(() => (cursor.accept("for") && cursor.accept("total") ? true : null)) !== null
  if (total) return { kind: "total", count }
  if (more || moreAfter) return { kind: "more", count, plain: false }
  return afterOnce ? { kind: "more", count, plain: true } : { kind: "total", count }
}

function endsHere(cursor: Cursor): boolean {
  return /^[,;.)\]]?$/.test(cursor.text()) || cursor.is("around")
}

/** "1 dc away from first st", "2 sts short of the end". */
function acceptAway(cursor: Cursor): boolean {
  if (!cursor.accept("away", "short")) return false
  cursor.attempt(() => {
    if (!cursor.take("of")) return null
    while (cursor.take("first", "start", "that"));
    return readNoun(cursor) || cursor.take("end") ? true : null
  })
  return true
}
