// Rounds told by how they grow on the round before: "1 more sc between increases each round", "as Rnd 4,
// working 3 sc between increases", "continue in this way".

import { readKind } from "./stitch-grammar.ts"
import type { Growth, Step } from "../base/tree.ts"
import type { Words } from "./words.ts"

/** The rule as a step that stands for an earlier round, grown; null when none is here. */
export function readGrowthRule(words: Words): Step[] | null {
  return words.attempt((): Step[] | null => {
    const start = words.start()
    const named = words.attempt(() => readNamedRound(words))
    const led = named === null && acceptLead(words)
    const at = words.at
    acceptLinks(words)
    const growth = words.attempt(() => readBetweenIncreases(words))
    if (growth)
      return [
        {
          ...words.since(start),
          do: "as-round",
          ...(named === null ? {} : { round: named }),
          growth,
        },
      ]
    words.at = at
    if (!led) return null
    // "continue in this way, increasing 6 evenly": the lead says nothing of its own.
    if (!/^[.;(]?$/.test(words.text())) return []
    return [
      { ...words.since(start), do: "as-round", growth: { plain: 1, how: "more", implied: true } },
    ]
  })
}

/** "as Rnd 4", "rep Rnd 4": the number. */
function readNamedRound(words: Words): number | null {
  words.accept("work", "same")
  if (!words.accept("as", "rep", "repeat", "like")) return null
  words.accept("as", "for", "in")
  if (!words.accept("rnd", "round", "row", "r") || !words.isNumber()) return null
  const round = words.value()
  words.at += 1
  return round
}

/** "continue in this way", "as established", "in the same manner". */
function acceptLead(words: Words): boolean {
  return (
    words.attempt(() => {
      const goesOn = words.accept("continue", "cont", "continuing", "proceed", "carry")
      if (goesOn) {
        words.accept("on")
        words.accept("to", "working", "increasing")
        words.accept("work", "increase", "inc")
      }
      const how = words.accept("in", "as", "with")
      if (!goesOn && !how) return null
      while (words.accept("the", "this", "that", "same", "established", "above")) {
        if (words.tokens[words.at - 1]?.text === "established" && how && !isWay(words.text()))
          return true
      }
      if (isWay(words.text())) {
        words.at += 1
        words.accept("as")
        words.accept("established", "set", "before")
        return true
      }
      return how && words.accept("before", "set", "established") ? true : null
    }) !== null
  )
}

function isWay(text: string): boolean {
  return /^(?:way|manner|fashion|pattern|patt|sequence)$/.test(text)
}

function acceptLinks(words: Words): void {
  while (
    words.accept(
      ",",
      "and",
      "with",
      "but",
      "working",
      "work",
      "having",
      "adding",
      "add",
      "making",
      "placing",
      "this",
      "time",
    )
  );
}

/** "1 more sc between increases each round", "3 sc between increases", "one extra st between each inc". */
function readBetweenIncreases(words: Words): Growth | null {
  let plain: number
  if (words.isNumber()) {
    plain = words.value()
    words.at += 1
  } else if (words.accept("an", "a")) plain = 1
  else return null
  let more = false
  while (/^(?:more|extra|additional|further|plain)$/.test(words.text())) {
    if (words.text() !== "plain") more = true
    words.at += 1
  }
  if (!words.accept("st", "sts", "stitch", "stitches")) words.attempt(() => readKind(words))
  if (!words.accept("between", "before")) return null
  words.accept("each", "every", "the", "all")
  words.accept("of")
  words.accept("the")
  if (!words.accept("inc", "incs", "increase", "increases", "corner", "corners")) return null
  acceptEachRound(words)
  if (!Number.isInteger(plain)) return null
  return { plain, how: more ? "more" : "exactly" }
}

/** "each round", "in every rnd", "on each side". */
export function acceptEachRound(words: Words): void {
  words.attempt(() => {
    words.accept("in", "on")
    if (!words.accept("each", "every", "per")) return null
    words.accept("subsequent", "following", "new")
    return words.accept("rnd", "round", "row", "side", "time") ? true : null
  })
}
