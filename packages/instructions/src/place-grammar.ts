// Where something is worked: "in next ch-3 sp", "in each of next 2 sts", "in 3rd ch of next ch-5
// loop", "in same st", "over next 4 sc", "in centre dc of next 3-dc group", "in the back loop of each sc".

import { readNoun } from "./nouns.ts"
import { readKind } from "./stitch-grammar.ts"
import type { Noun, Pick, Place, Until } from "./tree.ts"
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
  return prepositions.has(words.text())
}

/** A place with its preposition, stepped over; null when none is here. */
export function readPlace(words: Words): Place | null {
  return words.attempt(() => {
    const start = words.start()
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

function readLoopWords(words: Words, details: Details): void {
  words.attempt(() => {
    words.accept("the")
    const which = words.text()
    if (
      /^(front|back|third|both|rear)$/.test(which) &&
      /^(loop|loops|lp|lps|bar)$/.test(words.text(1))
    ) {
      words.at += 2
      words.accept("only")
      words.accept("of")
      if (which === "front") details.loops = "front"
      else if (which === "back" || which === "rear") details.loops = "back"
      else if (which === "third") details.loops = "third"
      return true
    }
    if (/^(blo|bl|flo|fl)$/.test(which)) {
      words.at += 1
      words.accept("only")
      words.accept("of")
      details.loops = which.startsWith("b") ? "back" : "front"
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
  return (
    words.attempt(() => readRing(words, start)) ??
    words.attempt(() => readHookChain(words, start)) ??
    words.attempt(() => readSame(words, start)) ??
    words.attempt(() => readMade(words, start)) ??
    words.attempt(() => readPicked(words, start)) ??
    words.attempt(() => readEach(words, start, between)) ??
    words.attempt(() => readNext(words, start, between, preposition))
  )
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
  if (!words.accept("ring", "mr", "circle", "rings")) return null
  const made = solid ? "solid" : drawn || short ? "adjustable" : undefined
  return { ...words.since(start), at: "ring", ...(made === undefined ? {} : { made }) }
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

function readSame(words: Words, start: number): Place | null {
  words.accept("the", "that", "very")
  if (words.text() === "st" && /^(last|just)$/.test(words.text(1)) && words.text(2) === "worked") {
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
    words.accept("the", "beg", "beginning", "starting", "turning")
    if (!readNoun(words)) return null
    return { ...words.since(start), at: "same", noun: { what: "any" } }
  }
  if (
    words.accept("joining", "joined") &&
    (words.accept("st", "stitch", "sp", "space", "sl") || true)
  ) {
    words.accept("st", "stitch")
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
function readMade(words: Words, start: number): Place | null {
  words.accept("the")
  if (words.acceptAll("top", "of") || words.acceptAll("top")) {
    words.accept("the")
    if (words.accept("that", "this", "last", "previous")) {
      words.accept("last")
      const noun = readNoun(words)
      if (!noun) return null
      words.accept("made")
      return { ...words.since(start), at: "made", which: "last", noun }
    }
    words.accept("first", "beg", "beginning", "starting", "initial", "turning")
    const noun = readNoun(words)
    if (!noun) return null
    if (noun.what === "chain" && words.isNumber()) words.at += 1
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

/** "3rd ch of next ch-5 loop", "centre dc of next 3-dc group", "2nd of the 2 sc", "3rd of next 6 sc". */
function readPicked(words: Words, start: number): Place | null {
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
      noun: ungrouped(noun),
      count,
      pick,
      ...pickIt,
    }
  return { ...words.since(start), at: "next", noun: asGroup(noun), count: 1, pick, ...pickIt }
}

function ungrouped(noun: Noun): Noun {
  return noun
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

function readEach(words: Words, start: number, between: boolean): Place | null {
  words.accept("the")
  let every: number | undefined
  if (
    /^(each|all|the)$/.test(words.text()) &&
    /^(other|others|rest)$/.test(words.text(1)) &&
    !/^(st|sts|stitch|sc|dc|hdc|tr|ch)$/.test(words.text(2))
  ) {
    words.at += 2
    return {
      ...words.since(start),
      at: "each",
      nouns: [{ what: "stitch" }],
      until: { kind: "around", implied: true },
      others: true,
    }
  }
  if (words.accept("every", "each", "all", "both", "remaining", "rem")) {
    if (words.accept("other", "alternate")) every = 2
    else if (words.peek()?.type === "ordinal") {
      every = words.value()
      words.at += 1
    }
  } else if (words.accept("alternate")) every = 2
  else return null
  words.accept("of")
  words.accept("the")
  words.accept("remaining", "rem", "following")
  if (words.accept("next", "following")) {
    const next = countedNext(words, start, between)
    return next && { ...next, each: true }
  }
  if (words.isNumber() && words.text(1) !== "-") {
    const total = words.value()
    const at = words.at
    words.at += 1
    const first = words.accept("next")
    const noun = readNoun(words)
    if (noun && first)
      return {
        ...words.since(start),
        at: "next",
        noun: gapIf(noun, between),
        count: total,
        each: true,
      }
    if (noun) {
      if (words.accept("of")) {
        words.accept("next", "each", "the", "this")
        readNoun(words)
        return { ...words.since(start), at: "next", noun, count: total, each: true }
      }
      const startAt = readStartingAt(words)
      if (startAt !== null)
        return { ...words.since(start), at: "next", noun, count: total, startAt, each: true }
      if (noun.corner)
        return {
          ...words.since(start),
          at: "each",
          nouns: [noun],
          until: readUntil(words) ?? { kind: "around" },
          total,
        }
      return {
        ...words.since(start),
        at: "next",
        noun: gapIf(noun, between),
        count: total,
        each: true,
      }
    }
    words.at = at
  }
  const nouns: Noun[] = []
  let rest = /^(rem|remaining)$/.test(words.tokens[words.at - 1]?.text ?? "")
  for (;;) {
    if (words.accept("rem", "remaining")) rest = true
    const noun = readNoun(words)
    if (!noun) break
    nouns.push(gapIf(noun, between))
    const more = words.attempt(() => {
      if (!words.accept("and", "&", "or", "/")) return null
      words.accept("in")
      words.accept("each", "every")
      words.accept("of")
      words.accept("the")
      const at = words.at
      const next = readNoun(words)
      words.at = at
      return next ? true : null
    })
    if (!more) break
  }
  if (nouns.length === 0) return null
  if (words.accept("of")) {
    words.accept("the", "this", "next", "each", "same")
    const owner = readNoun(words)
    if (owner?.what === "group")
      return {
        ...words.since(start),
        at: "each",
        nouns,
        until: { kind: "to", noun: { what: "space" } },
      }
    if (!owner) words.at -= 1
  }
  const until =
    readUntil(words) ??
    (rest ? { kind: "around" as const, rest: true } : { kind: "around" as const, implied: true })
  return {
    ...words.since(start),
    at: "each",
    nouns,
    until,
    ...(every === undefined ? {} : { every }),
  }
}

function gapIf(noun: Noun, between: boolean): Noun {
  if (!between) return noun
  return noun.what === "group" || noun.kind?.gathered
    ? { what: "gap", betweenGroups: true }
    : { what: "gap" }
}

/** "starting at the 5th of a group". */
function readStartingAt(words: Words): number | null {
  return words.attempt(() => {
    if (!words.accept("starting", "beginning")) return null
    words.accept("at", "in", "with")
    words.accept("the")
    const token = words.peek()
    if (token?.type !== "ordinal") return null
    words.at += 1
    words.accept("of")
    words.accept("a", "each", "the")
    readNoun(words)
    return token.value
  })
}

function readNext(
  words: Words,
  start: number,
  between: boolean,
  preposition: string,
): Place | null {
  words.accept("the")
  let order: "first" | "last" | "any" | undefined
  if (words.accept("next", "following")) {
    if (words.text() === "and" || words.text() === "&") {
      words.at += 1
      const each = words.accept("each") && words.accept("of")
      void each
      words.accept("following")
    }
    const picked = readPicked(words, start)
    if (picked) return picked
  } else if (words.accept("any", "a", "an")) order = "any"
  else if (words.accept("first")) order = "first"
  else if (words.accept("last")) order = "last"
  words.accept("remaining", "rem", "unused", "free")
  const placed = countedNext(words, start, between)
  if (placed?.at !== "next") return placed
  const beside = readBeside(words, 1)
  if (beside) return { ...placed, order: "any", beside }
  if (placed.noun.what === "chain" && preposition === "over" && placed.count === 1) {
    return { ...placed, noun: { what: "space" } }
  }
  return order === undefined ? placed : { ...placed, order }
}

/** "left of any corner", "before any corner st". */
function readBeside(
  words: Words,
  nth: number,
): { noun: Noun; side: "after" | "before"; nth: number } | null {
  return words.attempt(() => {
    const word = words.text()
    if (!words.accept("left", "right", "after", "before")) return null
    words.accept("of")
    if (!words.accept("any", "a", "each")) return null
    const noun = readNoun(words)
    if (!noun?.corner) return null
    return {
      noun,
      side: word === "before" || word === "right" ? ("before" as const) : ("after" as const),
      nth,
    }
  })
}

function countedNext(words: Words, start: number, between: boolean): Place | null {
  let count = 1
  if (
    words.isNumber() &&
    words.text(1) !== "-" &&
    !(isChainWord(words.text(1)) && /^(sp|sps|loop|loops|lp)$/.test(words.text(2)))
  ) {
    count = words.value()
    words.at += 1
  }
  words.accept("consecutive", "adjacent", "more")
  const noun = readNoun(words)
  if (!noun) {
    if (count > 1) return { ...words.since(start), at: "next", noun: { what: "stitch" }, count }
    // "in next" alone: the next stitch.
    const previous = words.tokens[words.at - 1]?.text
    if (previous === "next" || previous === "last" || previous === "first")
      return { ...words.since(start), at: "next", noun: { what: "stitch" }, count: 1 }
    return null
  }
  if (between && (words.text() === "and" || words.text() === "&")) {
    words.attempt(() => {
      words.at += 1
      words.accept("next", "the")
      return readNoun(words)
    })
  }
  if (between) {
    const what = gapIf(noun, true)
    const everywhere = words.attempt(() => {
      if (!words.accept("on", "along", "at")) return null
      words.accept("each", "every", "all")
      return words.accept("side", "sides", "edge") ? true : null
    })
    if (everywhere)
      return { ...words.since(start), at: "each", nouns: [what], until: { kind: "around" } }
    return { ...words.since(start), at: "next", noun: what, count: 1 }
  }
  const places: Place[] = [{ ...words.since(start), at: "next", noun, count }]
  for (;;) {
    const more = words.attempt((): Place | null => {
      if (!words.accept("and", "&")) return null
      if (words.accept("in") || words.accept("next")) return null
      if (words.isNumber() && words.text(1) === "-") return null
      if (words.isNumber() && (readKind(words) || isChainWord(words.text(1)))) return null
      const from = words.start()
      const other = readNoun(words)
      return other ? { ...words.since(from), at: "next", noun: other, count: 1 } : null
    })
    if (!more) break
    places.push(more)
  }
  words.attempt(() => {
    // "next sc between petals": says where it lies, not which.
    if (!words.accept("between")) return null
    words.accept("the", "two", "2")
    words.accept("pairs")
    words.accept("of")
    return readNoun(words)
  })
  if (places.length > 1) return { ...words.since(start), at: "list", places }
  return { ...words.since(start), at: "next", noun, count }
}

function isChainWord(text: string): boolean {
  return text === "ch" || text === "chs" || text === "chain" || text === "chains"
}

/** "around", "to corner sp", "to last 2 sts", "to within last sc of group"; null when nothing is said. */
export function readUntil(words: Words): Until | null {
  return words.attempt((): Until | null => {
    words.accept("all", "evenly")
    words.accept("the")
    words.accept("way")
    if (words.accept("around", "round", "across")) {
      words.accept("to", "until") && words.accept("end", "join", "beg", "beginning")
      return { kind: "around" }
    }
    words.accept("along") && words.accept("side", "edge")
    if (!words.accept("to", "until", "till", "up")) return null
    words.accept("to", "you", "reach", "get")
    words.accept("reach", "the")
    words.accept("the")
    if (words.accept("end")) {
      words.attempt(() =>
        words.accept("of") && acceptThe(words) && words.accept("rnd", "round", "row") ? true : null,
      )
      return { kind: "around" }
    }
    if (words.accept("within")) {
      words.accept("the")
      words.accept("last")
      const count = acceptCount(words)
      if (!readNoun(words)) return null
      const ofGroup = words.acceptAll("of", "group") || words.acceptAll("of", "the", "group")
      return { kind: "leaving", count, ofGroup }
    }
    if (words.accept("last")) {
      const count = acceptCount(words)
      const noun = readNoun(words)
      if (!noun) return null
      if (noun.what === "space" || noun.what === "corner")
        return { kind: "leaving", count, ofGroup: false, noun }
      return { kind: "leaving", count, ofGroup: false }
    }
    const next = words.accept("next")
    if (words.isNumber() && words.text(1) !== "-" && !next) {
      const count = acceptCount(words)
      readNoun(words)
      return words.accept("remain", "rem", "left", "remaining", "before")
        ? { kind: "leaving", count, ofGroup: false }
        : null
    }
    const noun = readNoun(words)
    return noun ? { kind: "to", noun } : null
  })
}

function acceptThe(words: Words): true {
  words.accept("the")
  return true
}

/** "from last", "from the last one made". */
function acceptFromLast(words: Words): boolean {
  if (!words.accept("from") || !words.accept("the", "last", "previous")) return false
  words.accept("last")
  words.accept("made")
  return true
}

function acceptCount(words: Words): number {
  if (!words.isNumber()) return 1
  const count = words.value()
  words.at += 1
  return count
}

/** "of Rnd 2", "of previous round", "4 rnds below", "in the rnd below". */
export function withEarlierRound(words: Words, place: Place, start: number): Place {
  const named = words.attempt(() => {
    const joined = words.accept("of", "on", "from", "in")
    words.accept("the")
    if (joined && words.accept("previous", "prev", "last", "preceding")) {
      return words.accept("rnd", "round", "row", "rounds", "rnds") ? { ...place } : null
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
