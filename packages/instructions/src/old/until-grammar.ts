// How far something goes: "around", "to corner sp", "to last 2 sts", "to within last sc of group".

import { readNoun } from "./nouns.ts"
import type { Until } from "../base/tree.ts"
import type { Words } from "./words.ts"

const startsUntil = new Set(
  "all evenly the way around round across along on to until till up".split(" "),
)

/** "around", "to corner sp", "to last 2 sts", "to within last sc of group"; null when nothing is said. */
export function readUntil(words: Words): Until | null {
  if (!startsUntil.has(words.text())) return null
  return words.attempt((): Until | null => {
    words.accept("all", "evenly")
    words.accept("the")
    words.accept("way")
    if (words.accept("around", "round", "across")) {
      const whole = words.attempt(() => {
        if (!words.accept("to", "until")) return null
        words.accept("the")
        return words.accept("end", "join", "beg", "beginning") ? true : null
      })
      if (whole || !/^(?:to|until|till)$/.test(words.text())) {
        words.accept("to", "until")
        return { kind: "around" }
      }
    }
    if (words.accept("along", "on")) {
      words.accept("each", "every", "the", "all")
      words.accept("four")
      if (!words.accept("side", "edge", "sides", "edges")) return null
      if (!/^(?:to|until|till)$/.test(words.text())) return { kind: "around", implied: true }
    }
    if (!words.accept("to", "until", "till", "up")) return null
    words.accept("to", "you", "reach", "get")
    words.accept("reach", "the")
    words.accept("the")
    if (words.accept("end")) {
      words.attempt(() =>
        words.accept("of") && acceptThe(words) && words.accept("rnd", "round", "row") ? true : null,
      )
      return { kind: "around", rest: true }
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
      return words.accept("remain", "remains", "rem", "left", "remaining", "before")
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

function acceptCount(words: Words): number {
  if (!words.isNumber()) return 1
  const count = words.value()
  words.at += 1
  return count
}
