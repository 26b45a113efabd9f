// "In each": "in each st around", "in each of next 3 sps", "in every 2nd sc", "in each dc and ch-1 sp".

import { gapIf } from "../edge/gap-sides.ts"
import { countedNext } from "./next-place-grammar.ts"
import { chainOfSize, readNoun } from "./nouns.ts"
import type { Noun, Place } from "../base/tree.ts"
import { readUntil } from "./until-grammar.ts"
import type { Words } from "./words.ts"

export function readEach(words: Words, start: number, between: boolean): Place | null {
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
  if (
    words.accept("next", "following") ||
    (/^(?:first|last)$/.test(words.text()) && words.isNumber(1) && words.accept("first", "last"))
  ) {
    const next = countedNext(words, start, between)
    return next && { ...next, each: true }
  }
  if (words.isNumber() && words.text(1) !== "-" && !isSizedSpace(words)) {
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
      if (words.accept("of", "in", "on")) {
        words.accept("the", "this", "same")
        words.accept("next", "each", "first", "following", "same")
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
    nouns.push(gapIf(chainOfSize(words, noun), between))
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
  if (nouns.length === 0 && every === undefined && /^(?:[,;.(]?|around|round)$/.test(words.text()))
    // "2 sc in each.", "2 sc in each around": in each stitch there is.
    nouns.push({ what: "stitch" })
  if (nouns.length === 0 && every !== undefined && /^[,;.()]?$/.test(words.text()))
    // "2 sc in every 4th."
    nouns.push({ what: "stitch" })
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

/** "each 2ch sp": the size of the spaces, not how many. */
function isSizedSpace(words: Words): boolean {
  const after = words.text(2) === "-" ? words.text(3) : words.text(2)
  return (
    /^(?:ch|chain)$/.test(words.text(1)) &&
    /^(?:sp|sps|space|spaces|loop|loops|lp|lps|arch|arches)$/.test(after)
  )
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
