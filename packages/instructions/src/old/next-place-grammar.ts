// "In next": "in next 2 sts", "in next ch-3 sp", "in any corner", "in last sc", "in next sc and hdc".

import { gapIf } from "../edge/gap-sides.ts"
import { chainOfSize, readNoun } from "./nouns.ts"
import { readPicked } from "./picked-place-grammar.ts"
import { readKind } from "./stitch-grammar.ts"
import type { Noun, Place } from "../base/tree.ts"
import type { Words } from "./words.ts"

export function readNext(
  words: Words,
  start: number,
  between: boolean,
  preposition: string,
): Place | null {
  words.accept("the")
  let order: "first" | "last" | "any" | undefined
  const said = words.text() === "next" || words.text() === "following"
  if (words.accept("next", "following")) {
    if (words.text() === "and" || words.text() === "&") {
      words.at += 1
      if (words.accept("each")) words.accept("of")
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
  const plural = words.tokens[words.at - 1]?.text ?? ""
  if (
    order === undefined &&
    !said &&
    placed.count === 1 &&
    preposition === "in" &&
    (placed.noun.what === "space" || placed.noun.what === "corner") &&
    /^(?:sps|spaces|loops|lps|corners|arches)$/.test(plural)
  )
    // "in corners", "in side sps": in each of them.
    return { ...words.since(start), at: "each", nouns: [placed.noun], until: { kind: "around" } }
  const beside = readBeside(words, 1)
  if (beside) return { ...placed, order: "any", beside }
  if (
    placed.noun.what === "chain" &&
    (preposition === "over" || preposition === "under") &&
    placed.count === 1
  ) {
    // "under next 2 ch", "under ch 2": all of the chains there.
    const size = words.isNumber() ? words.value() : undefined
    if (size !== undefined) words.at += 1
    const noun: Noun = { what: "space", ...(size === undefined ? {} : { size }) }
    return { ...placed, ...words.since(start), noun, ...(said ? {} : { bare: true }) }
  }
  if (placed.noun.what === "chain" && preposition === "under")
    return { ...placed, noun: { what: "space", size: placed.count }, count: 1 }
  if (order !== undefined) return { ...placed, order }
  return said ? placed : { ...placed, bare: true }
}

/** "left of any corner", "before any corner st". */
export function readBeside(
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

export function countedNext(words: Words, start: number, between: boolean): Place | null {
  let count = 1
  if (
    words.isNumber() &&
    words.text(1) !== "-" &&
    !(isChainWord(words.text(1)) && isSpaceWord(words.text(words.text(2) === "-" ? 3 : 2)))
  ) {
    count = words.value()
    words.at += 1
  }
  words.accept("consecutive", "adjacent", "more")
  // "in next (corner) sc": an aside that says which it is.
  if (
    /^[([]$/.test(words.text()) &&
    /^(?:corner|center|centre|middle|marked|same)$/.test(words.text(1)) &&
    /^[)\]]$/.test(words.text(2))
  )
    words.at += 3
  const named = readNoun(words)
  const noun = named && count === 1 ? chainOfSize(words, named) : named
  if (!noun) {
    if (count > 1) return { ...words.since(start), at: "next", noun: { what: "stitch" }, count }
    // "in next" alone: the next stitch.
    const previous = words.tokens[words.at - 1]?.text
    if (previous === "next" || previous === "last" || previous === "first" || previous === "one")
      return { ...words.since(start), at: "next", noun: { what: "stitch" }, count: 1 }
    return null
  }
  if (noun.what === "picot")
    words.attempt(() => {
      // "in picot of next point": whose it is says nothing new.
      if (!words.accept("of", "on", "at")) return null
      words.accept("the", "next", "each")
      words.accept("next")
      const owner = readNoun(words)
      return owner?.what === "group" || owner?.what === "corner" ? true : null
    })
  let other: Noun | null = null
  if (between && (words.text() === "and" || words.text() === "&")) {
    other = words.attempt(() => {
      words.at += 1
      words.accept("next", "the")
      return readNoun(words)
    })
  }
  if (between) {
    acceptOwner(words)
    const what = gapIf(noun, true, other)
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
      if (words.isNumber() && words.text(1) === "-" && !isChainWord(words.text(2))) return null
      if (words.isNumber() && (readKind(words) || isBareChains(words))) return null
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

/** "the 2 sc of neighbouring petals": whose they are says nothing new. */
function acceptOwner(words: Words): void {
  words.attempt(() => {
    if (!words.accept("of")) return null
    words.accept(
      "the",
      "each",
      "next",
      "two",
      "adjoining",
      "neighbouring",
      "neighboring",
      "adjacent",
    )
    const noun = readNoun(words)
    return noun?.what === "group" ? true : null
  })
}

/** "... and 2 ch": chains to make; "... and 2ch sp" is a place. */
function isBareChains(words: Words): boolean {
  return isChainWord(words.text(1)) && !isSpaceWord(words.text(words.text(2) === "-" ? 3 : 2))
}

function isSpaceWord(text: string): boolean {
  return /^(?:sp|sps|space|spaces|loop|loops|lp|lps)$/.test(text)
}

function isChainWord(text: string): boolean {
  return text === "ch" || text === "chs" || text === "chain" || text === "chains"
}
