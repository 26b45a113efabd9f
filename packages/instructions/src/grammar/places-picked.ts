// One place out of several: "3rd ch of next ch-5 loop", "centre dc of next 3-dc group", "tip of petal",
// "each of the 5 centre sc of next group", "dip between two groups".

import type { Noun, Pick, Place } from "../base/tree.ts"
import type { Cursor } from "./cursor.ts"
import { readCountedChain, readNoun, sizesGroup } from "./nouns.ts"
import { readBeside } from "./places-beside.ts"
import { readUntil } from "./until.ts"

/** "each of the 5 centre sc of next group", "next 3 middle dc": so many at its middle. */
export function readMiddleRun(cursor: Cursor, start: number): Place | null {
  const each = cursor.take("each")
  cursor.take("of")
  cursor.take("next")
  const before = cursor.take("centre")
  const count = cursor.takeCount(2)
  if (count === null) return null
  if (!before && !cursor.take("centre")) return null
  const noun = readNoun(cursor)
  if (noun?.what !== "stitch") return null
  cursor.attempt(() => {
    if (!cursor.take("of", "in")) return null
    while (cursor.take("next", "each", "same"));
    return readNoun(cursor)
  })
  return {
    ...cursor.since(start),
    at: "next",
    noun,
    count,
    middle: true,
    ...(each ? { each: true } : {}),
  }
}

/** "dip between two petals", "next dip", "valley": half-way between one group and the next. */
export function readDip(cursor: Cursor, start: number): Place | null {
  const each = cursor.take("each")
  cursor.take("next")
  const count = cursor.takeCount(1) ?? 1
  const stitch = cursor.take("stitch")
  if (!cursor.take("dip")) {
    // "st between petals"
    const dip =
      stitch &&
      !each &&
      cursor.attempt(() => {
        if (!cursor.take("between")) return null
        if (cursor.isNumber()) cursor.at += 1
        while (cursor.take("each", "next"));
        return readNoun(cursor)?.what === "group" ? true : null
      })
    return dip
      ? { ...cursor.since(start), at: "next", noun: { what: "group" }, count, pick: "dip" }
      : null
  }
  cursor.attempt(() => {
    if (!cursor.take("between")) return null
    if (cursor.isNumber()) cursor.at += 1
    while (cursor.take("each", "next"));
    return readNoun(cursor)
  })
  if (each && count === 1)
    return {
      ...cursor.since(start),
      at: "each",
      nouns: [{ what: "group" }],
      until: readUntil(cursor) ?? { kind: "around" },
      pick: "dip",
    }
  return { ...cursor.since(start), at: "next", noun: { what: "group" }, count, pick: "dip" }
}

export function readPicked(cursor: Cursor, start: number): Place | null {
  const every = cursor.is("each") && !cursor.is("rest")
  if (every) cursor.at += 1
  else cursor.take("next")
  const pick = readPick(cursor)
  if (pick === null) return null
  const pickNoun = cursor.attempt(() => {
    const noun = readNoun(cursor)
    return noun && (cursor.is("of") || cursor.is("in") || (pick !== "last" && pick !== 1))
      ? noun
      : null
  })
  const fromLast = cursor.text() === "from" && cursor.is("last", 1)
  if (fromLast) {
    // "in 6th dc from last tr": counted on from where the last one stands.
    cursor.at += 2
    readNoun(cursor)
  }
  if (fromLast || (!cursor.take("of") && !cursor.accept("in", "on")))
    return withoutOwner(cursor, start, pick, pickNoun, every)
  const each = cursor.take("each") || every
  const begins =
    typeof pick === "number" && pickNoun?.what === "chain"
      ? cursor.attempt(() => readStartChain(cursor))
      : null
  if (begins) return { ...cursor.since(start), at: "made", which: "first", noun: begins }
  cursor.accept("of")
  if (cursor.take("any")) {
    const noun = readNoun(cursor)
    return (
      noun && {
        ...cursor.since(start),
        at: "next",
        noun,
        count: 1,
        pick,
        order: "any",
        ...(pickNoun ? { pickNoun } : {}),
      }
    )
  }
  const said = !each && (cursor.take("next", "same", "that", "first") || cursor.take("last"))
  let count = 1
  const sized =
    cursor.is("chain", 1) &&
    (cursor.is("space", 2) || (cursor.text(2) === "-" && cursor.is("space", 3)))
  const glued =
    cursor.peek(1)?.type === "word" &&
    cursor.peek(1)?.spaced === false &&
    !/^(?:sc|hdc|dc|tr|htr)s?$/.test(cursor.text(1))
  if (cursor.isNumber() && cursor.text(1) !== "-" && !sized && !glued && !sizesGroup(cursor))
    count = cursor.takeCount(1) ?? 1
  const noun = readNoun(cursor)
  if (!noun) {
    if (count <= 1) return null
    return { ...cursor.since(start), at: "next", noun: pickNoun ?? { what: "stitch" }, count, pick }
  }
  const pickIt = pickNoun ? { pickNoun } : {}
  if (each) {
    const until = readUntil(cursor)
    return {
      ...cursor.since(start),
      at: "each",
      nouns: [asGroup(noun)],
      until: until ?? { kind: "around" },
      pick,
      ...pickIt,
    }
  }
  // "the 2nd of the 2 sc" speaks of a group of two, "of next 2 sc" of the next two.
  if (
    noun.what === "stitch" &&
    noun.kind &&
    count === 1 &&
    !said &&
    cursor.lexemes[cursor.at - 2]?.type === "number" &&
    pick === "centre"
  )
    return {
      ...cursor.since(start),
      at: "next",
      noun: { what: "group", size: cursor.lexemes[cursor.at - 2]!.value },
      count: 1,
      pick,
      ...pickIt,
    }
  if (count > 1 && !said && noun.what === "stitch")
    return {
      ...cursor.since(start),
      at: "next",
      noun: { what: "group", size: count },
      count: 1,
      pick,
      ...pickIt,
    }
  if (count > 1) return { ...cursor.since(start), at: "next", noun, count, pick, ...pickIt }
  return { ...cursor.since(start), at: "next", noun: asGroup(noun), count: 1, pick, ...pickIt }
}

/** "third chain of beginning ch 3": what the round began with. */
function readStartChain(cursor: Cursor): Noun | null {
  cursor.take("first", "that")
  if (!cursor.take("start")) return null
  const counted = readCountedChain(cursor)
  if (counted) return counted
  if (!cursor.take("chain")) return null
  cursor.accept("-")
  cursor.takeCount(1)
  return { what: "chain" }
}

/** "in 3rd", "in 5th ch", "in centre st": inside the space or group just used, or the next one. */
function withoutOwner(
  cursor: Cursor,
  start: number,
  pick: Pick,
  pickNoun: Noun | null,
  every: boolean,
): Place | null {
  if (every) {
    // "in each centre sc", "in each corner's middle st".
    if (pick !== "centre" || pickNoun?.what !== "stitch") return null
    return {
      ...cursor.since(start),
      at: "each",
      nouns: [{ what: "group" }],
      until: readUntil(cursor) ?? { kind: "around" },
      pick,
      pickNoun,
    }
  }
  const beside = pickNoun && typeof pick === "number" ? readBeside(cursor, pick) : null
  if (beside && pickNoun)
    return { ...cursor.since(start), at: "next", noun: pickNoun, count: 1, order: "any", beside }
  if (
    pickNoun &&
    typeof pick === "number" &&
    cursor.attempt(() => (acceptFromLast(cursor) ? readNoun(cursor) : null))
  )
    return { ...cursor.since(start), at: "next", noun: pickNoun, count: pick, pick }
  if (!pickNoun) {
    // "in 3rd", after two were skipped: the next.
    if (typeof pick !== "number" || pick < 2) return null
    return {
      ...cursor.since(start),
      at: "next",
      noun: { what: "stitch" },
      count: pick,
      pick,
      afterSkip: true,
    }
  }
  if (pickNoun.what === "space" || pickNoun.what === "corner") {
    if (pick === "centre")
      return {
        ...cursor.since(start),
        at: "next",
        noun: { ...pickNoun, middle: true } as Noun,
        count: 1,
      }
    return typeof pick === "number"
      ? { ...cursor.since(start), at: "next", noun: pickNoun, count: pick, pick }
      : null
  }
  if (pickNoun.what === "chain")
    return { ...cursor.since(start), at: "next", noun: { what: "space" }, count: 1, pick, pickNoun }
  if (pickNoun.what === "stitch" && pick === "centre")
    return { ...cursor.since(start), at: "next", noun: { what: "group" }, count: 1, pick, pickNoun }
  if (pickNoun.what === "stitch" && typeof pick === "number")
    return {
      ...cursor.since(start),
      at: "next",
      noun: pickNoun,
      count: pick,
      pick,
      ...(pick > 1 ? { afterSkip: true } : {}),
    }
  return null
}

/** "centre sc of next corner": the corner is then a group of stitches. */
function asGroup(noun: Noun): Noun {
  return noun.what === "corner" ? { what: "group", corner: true } : noun
}

function readPick(cursor: Cursor): Pick | null {
  if (cursor.isOrdinal()) {
    const { value } = cursor.peek()!
    cursor.at += 1
    return value
  }
  if (cursor.take("centre")) return "centre"
  if (cursor.is("tip") && cursor.is("of", 1)) {
    cursor.at += 1
    return "centre"
  }
  if (cursor.is("first")) {
    cursor.at += 1
    return 1
  }
  if (cursor.is("last")) {
    cursor.at += 1
    return "last"
  }
  return null
}

/** "from last", "from the last one made". */
function acceptFromLast(cursor: Cursor): boolean {
  if (!cursor.accept("from") || !(cursor.is("last") || cursor.is("previous"))) return false
  cursor.at += 1
  cursor.take("made")
  return true
}
