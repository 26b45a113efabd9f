// What a place is called: "ch-3 sp", "corner sp", "3-dc group", "st", "next ch", "sp between groups".

import type { Noun } from "../base/tree.ts"
import { gapIf, sidesOf } from "../edge/gap-sides.ts"
import type { Cursor } from "./cursor.ts"
import { readKind } from "./stitch-names.ts"

/** Most words in front of a noun that only describe it. */
const mostAdjectives = 3

/** The noun here, stepped over; null when none is. */
export function readNoun(cursor: Cursor): Noun | null {
  return cursor.attempt(() => readPlainNoun(cursor))
}

function readPlainNoun(cursor: Cursor): Noun | null {
  if (cursor.is("unworked")) {
    cursor.at += 1
    const noun = readPlainNoun(cursor)
    return noun && { ...noun, unworked: true }
  }
  if (cursor.take("corner")) return afterCorner(cursor)
  const adjective = readAdjective(cursor)
  if (adjective) {
    const noun = readNoun(cursor)
    if (!noun) return null
    return adjective === "small" && noun.what === "space" ? { ...noun, small: true } : noun
  }
  const chain = cursor.attempt(() => readChainNoun(cursor))
  if (chain) return chain
  if (cursor.is("group") && ownsSpace(cursor)) {
    // "shell sp", "side ch-1 sp", "V-st sp".
    const side = cursor.is("side")
    const middle = !side && /^(?:shell|shells|fan|fans|v|v-st|vst|v-stitch)/.test(cursor.text())
    const parted = /^v/.test(cursor.text()) && cursor.text(1) === "-"
    cursor.at += parted ? 3 : 1
    const noun = readPlainNoun(cursor)
    if (noun?.what !== "space") return noun
    return { ...noun, ...(side ? { side: true } : middle ? { middle: true } : {}) }
  }
  const group = cursor.attempt(() => readGroupNoun(cursor))
  if (group) return group
  if (cursor.take("space")) return afterSpace(cursor)
  const several = /s$/.test(cursor.text())
  if (cursor.take("stitch"))
    // "next 2 sts of ch".
    return several && cursor.attempt(() => (cursor.take("of") && isBareChain(cursor) ? true : null))
      ? { what: "chain" }
      : { what: "stitch" }
  if (cursor.take("ring")) return { what: "ring" }
  if (cursor.take("picot")) return { what: "picot" }
  if (cursor.take("tip")) return afterTip(cursor)
  const kind = readKind(cursor)
  if (!kind) return null
  if (cursor.is("space")) {
    // "dc sp", "sc space": the gap beside it.
    cursor.at += 1
    return { what: "gap" }
  }
  if (cursor.is("group")) {
    cursor.at += 1
    return { what: "group" }
  }
  if (cursor.attempt(() => acceptBetweenPetals(cursor))) return { what: "gap", betweenGroups: true }
  return { what: "stitch", kind }
}

/** "ch", and neither "ch-3" nor "ch sp". */
function isBareChain(cursor: Cursor): boolean {
  return cursor.take("chain") && !cursor.is("space") && !/^[-\d]/.test(cursor.text())
}

/** "between any 2 dc": one stands on either side, so the figure is two where there is one. @returns false for another */
export function acceptTwo(cursor: Cursor): boolean {
  return !cursor.isNumber() || cursor.text(1) === "-" || cursor.takeCount(2) === 2
}

/** "dc between the petals": the low point where one meets the next. */
function acceptBetweenPetals(cursor: Cursor): true | null {
  if (!cursor.take("between")) return null
  while (cursor.take("each", "next"));
  if (!acceptTwo(cursor)) return null
  return cursor.accept("petals", "scallops", "shells", "leaves") ? true : null
}

/** "tip of petal", "tip": the middle of what was worked in one place. */
function afterTip(cursor: Cursor): Noun {
  cursor.attempt(() => {
    if (!cursor.take("of")) return null
    while (cursor.take("next", "each", "same", "that"));
    return readPlainNoun(cursor)
  })
  return { what: "group", middle: true }
}

/** A word in front of a noun that says nothing the edge could tell apart: "small", "white", "top", "joining". */
function readAdjective(cursor: Cursor): "small" | "plain" | null {
  for (let ahead = 1; ahead <= mostAdjectives; ahead++) {
    if (!isAdjective(cursor, ahead - 1)) return null
    if (!startsNoun(cursor, ahead)) continue
    const small = cursor.is("size") && /^(?:small|smaller|little|short)$/.test(cursor.text())
    cursor.at += ahead
    return small ? "small" : "plain"
  }
  return null
}

function isAdjective(cursor: Cursor, ahead: number): boolean {
  return (
    cursor.is("colour", ahead) ||
    cursor.is("size", ahead) ||
    cursor.is("adjective", ahead) ||
    cursor.is("start", ahead) ||
    (cursor.is("group", ahead) &&
      cursor.is("stitch", ahead + 1) &&
      !/^v/.test(cursor.text(ahead))) ||
    (cursor.text(ahead) === "-" && ahead > 0)
  )
}

function startsNoun(cursor: Cursor, ahead: number): boolean {
  return (
    cursor.is("stitch", ahead) ||
    cursor.is("space", ahead) ||
    cursor.is("chain", ahead) ||
    cursor.is("group", ahead) ||
    cursor.is("corner", ahead) ||
    cursor.is("ring", ahead) ||
    cursor.is("picot", ahead) ||
    cursor.isNumber(ahead) ||
    (cursor.peek(ahead)?.type === "word" && cursor.peek(ahead)!.classes.size === 0)
  )
}

function ownsSpace(cursor: Cursor): boolean {
  let ahead = 1
  if (cursor.text(ahead) === "-") ahead += 1
  if (cursor.is("stitch", ahead) && /^v/.test(cursor.text())) ahead += 1
  return (
    (cursor.is("space", ahead) && !cursor.is("group", ahead)) ||
    cursor.is("picot", ahead) ||
    (cursor.is("chain", ahead) && !cursor.isNumber(ahead + 1)) ||
    (cursor.is("chain", ahead) && cursor.is("space", ahead + 3)) ||
    (cursor.isNumber(ahead) && cursor.text(ahead + 1) === "-" && cursor.is("chain", ahead + 2))
  )
}

function afterCorner(cursor: Cursor): Noun {
  cursor.accept("-")
  const inner = cursor.attempt(() => {
    const noun = readPlainNoun(cursor)
    const names = noun?.what === "space" || noun?.what === "stitch" || noun?.what === "group"
    return names ? noun : null
  })
  if (inner) return { ...inner, corner: true }
  return { what: "corner", corner: true }
}

/** "ch-3 sp", "ch sp", "3-ch loop", "ch-5", "ch3sp", "ch", "loop of 4 ch". */
function readChainNoun(cursor: Cursor): Noun | null {
  let size: number | undefined
  let sizeFirst = false
  if (cursor.isNumber()) {
    const dash = cursor.text(1) === "-"
    const ahead = dash ? 2 : 1
    if (!cursor.is("chain", ahead)) return null
    sizeFirst = !dash
    const joined = dash || cursor.peek(1)?.spaced === false
    const after = cursor.text(ahead + 1) === "-" ? ahead + 2 : ahead + 1
    if (!joined && !cursor.is("space", after)) return null
    size = cursor.value()
    cursor.at += ahead + 1
  } else {
    if (!cursor.take("chain")) return null
    // "each ch - 8 sc" has a dash, "ch-8 sp" a hyphen.
    const dash = cursor.peek()?.spaced && cursor.peek(1)?.spaced
    if (cursor.text() === "-" && cursor.isNumber(1) && !dash) {
      size = cursor.value(1)
      cursor.at += 2
    } else if (cursor.isNumber() && namesSize(cursor)) {
      size = cursor.value()
      cursor.at += 1
    }
  }
  if (cursor.text() === "-" && (cursor.is("space", 1) || cursor.is("corner", 1))) cursor.at += 1
  const corner = cursor.take("corner")
  if (cursor.is("size") && cursor.is("space", 1)) cursor.at += 1
  if (cursor.take("space")) {
    const noun = afterSpace(cursor)
    if (noun.what === "gap") return noun
    const parted = cursor.lexemes[cursor.at - 2]?.text === "-"
    const several = sizeFirst && (parted || /s$/.test(cursor.lexemes[cursor.at - 1]!.text))
    return withSize(
      {
        ...noun,
        ...(corner ? { corner: true } : {}),
        ...(several ? { sizeOrCount: true as const } : {}),
      },
      size,
    )
  }
  if (corner) return withSize({ what: "space", corner: true }, size)
  return size === undefined ? { what: "chain" } : { what: "space", size }
}

function namesSize(cursor: Cursor): boolean {
  return (
    cursor.is("space", 1) ||
    (cursor.text(1) === "-" && cursor.is("space", 2)) ||
    (cursor.is("and", 1) && !cursor.is("work", 2) && !cursor.isNumber(2)) ||
    cursor.peek()?.spaced === false ||
    cursor.is("corner", 1)
  )
}

function withSize(noun: Noun, size: number | undefined): Noun {
  return size === undefined ? noun : { ...noun, size }
}

/** "loop of 4 ch": the size after the word. */
function readSizeAfter(cursor: Cursor): number | null {
  if (!cursor.accept("of")) return null
  const before = cursor.take("chain")
  if (before) cursor.accept("-")
  const size = cursor.takeCount(1)
  if (size === null) return null
  cursor.accept("-")
  return before || cursor.take("chain") ? size : null
}

/** After the word "sp": "between groups", "before next dc", "at top of petal", "of next shell". */
function afterSpace(cursor: Cursor): Noun {
  const found =
    cursor.attempt(() => readBetween(cursor)) ??
    cursor.attempt((): Noun | null => {
      if (!cursor.accept("before", "after")) return null
      cursor.take("next", "each")
      return readPlainNoun(cursor) ? { what: "gap", before: true } : null
    }) ??
    cursor.attempt((): Noun | null => {
      // "ch-2 sp of next shell", "sp at top of petal": the space in its middle.
      if (!cursor.take("of", "in")) return null
      const top = cursor.take("top", "tip", "centre")
      if (top) cursor.take("of")
      while (cursor.take("next", "each", "same", "any", "that"));
      const owner = readPlainNoun(cursor)
      if (owner?.what === "group") return { what: "space", middle: true }
      if (owner?.what === "corner") return { what: "space", corner: true }
      return top && owner ? { what: "space", middle: true } : null
    })
  if (found) return found
  const size = cursor.attempt(() => readSizeAfter(cursor))
  return size === null ? { what: "space" } : { what: "space", size }
}

function readBetween(cursor: Cursor): Noun | null {
  if (!cursor.take("between")) return null
  while (cursor.take("any", "each", "next", "last", "first", "same", "of"));
  if (!acceptTwo(cursor)) return null
  const chained = readCountedChain(cursor)
  const first = chained ? { what: "chain" as const } : readPlainNoun(cursor)
  if (!first) return null
  let second: Noun | null = null
  if (cursor.take("and")) {
    cursor.take("next")
    second = readPlainNoun(cursor)
  }
  const groups = first.what === "group" || first.kind?.gathered !== undefined
  if (!groups) return { what: "gap", ...sidesOf(first, second) }
  const { size } = first
  return { what: "gap", betweenGroups: true, ...(size === undefined ? {} : { groupSize: size }) }
}

/** "every chain of 3": the space, where no place inside it is asked for. */
export function chainOfSize(cursor: Cursor, noun: Noun): Noun {
  if (noun.what !== "chain") return noun
  const size = cursor.attempt(() => {
    if (!cursor.accept("of")) return null
    const count = cursor.takeCount(1)
    return count !== null && /^[,;.:*)\]]?$/.test(cursor.text()) ? count : null
  })
  return size === null ? noun : { what: "space", size }
}

/** "3dc group", "5dc-shell": the figure is the size of a group, no count of them. */
export function sizesGroup(cursor: Cursor): boolean {
  if (!cursor.isNumber() || cursor.peek(1)?.spaced !== false) return false
  return cursor.is("group", cursor.text(2) === "-" ? 3 : 2)
}

/** "3-dc group", "9-dc scallop", "petal", "group of 3 dc", "3dc cluster group". */
function readGroupNoun(cursor: Cursor): Noun | null {
  let size: number | undefined
  if (cursor.isNumber()) {
    const joined = cursor.text(1) === "-" || cursor.peek(1)?.spaced === false
    const value = cursor.takeCount(1)
    if (value === null || !joined) return null
    cursor.accept("-")
    if (!readKind(cursor) && !cursor.take("stitch")) return null
    cursor.accept("-")
    size = value
  }
  if (!cursor.is("group")) return null
  const word = cursor.text()
  if (word === "v" && cursor.text(1) !== "-" && !cursor.is("stitch", 1) && size === undefined)
    return null
  cursor.at += 1
  if (/^v/.test(word)) {
    cursor.accept("-")
    cursor.take("stitch")
  }
  const middle = /^(?:shell|shells|fan|fans|v|v-st|vst|v-stitch|v-stitches)$/.test(word)
  cursor.attempt(() => {
    if (!cursor.accept("of")) return null
    const count = cursor.takeCount(1)
    if (count !== null) size = count
    return readKind(cursor) ?? (cursor.take("stitch") ? true : null)
  })
  return withSize({ what: "group", ...(middle ? { middle: true } : {}) }, size)
}

export { gapIf }

/** "top of 3 ch": the starting chain with its number before it. */
export function readCountedChain(cursor: Cursor): Noun | null {
  if (!cursor.isNumber() || !cursor.is("chain", cursor.text(1) === "-" ? 2 : 1)) return null
  if (cursor.is("space", cursor.text(1) === "-" ? 3 : 2)) return null
  if (cursor.text(2) === "-" && cursor.is("space", 3)) return null
  cursor.at += cursor.text(1) === "-" ? 3 : 2
  return { what: "chain" }
}
