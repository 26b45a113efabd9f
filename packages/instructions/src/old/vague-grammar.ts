// What a text leaves to the maker: "now and then 2 dc in one st as needed to stay flat", "fewer if the
// strip is thick". No count follows from it, so it is told and not worked.

import { readKind } from "./stitch-grammar.ts"
import type { Step } from "../base/tree.ts"
import { isWayToKeep } from "./vocabulary.ts"
import type { Words } from "./words.ts"

/** Most words such a clause may have. */
const longestClause = 24

const firstWords = new Set(
  "now here from occasionally fewer more increasing increase inc decreasing decrease as where when if".split(
    " ",
  ),
)

/** Steps over the clause and tells it; false when none begins here. */
export function readLeftToMaker(words: Words): boolean {
  if (!firstWords.has(words.text())) return false
  const start = words.start()
  const found = words.attempt(() => {
    if (!startsVague(words)) return null
    for (let i = 0; i < longestClause && !words.done(); i++) {
      if (/^[;.)(]$/.test(words.text())) break
      words.at += 1
    }
    return true
  })
  if (!found) return false
  words.report({
    severity: "warning",
    code: "left-to-maker",
    ...words.since(start),
    message: "How many and where is left to the maker here, so it is not counted.",
    hint: "Give the number if it is known.",
  })
  return true
}

/** Stitches an increase at a corner is taken for where their number is not said: common practice, no source. */
const usualCorner = 3

/** "increasing in each corner", "inc at every corner": how many is not said, so it is told until a total bears it out. */
export function readCornerIncrease(words: Words): Step[] | null {
  if (!words.text().startsWith("inc")) return null
  return words.attempt((): Step[] | null => {
    const start = words.start()
    if (!words.accept("increasing", "increase", "inc")) return null
    if (!words.accept("in", "at") || !words.accept("each", "every", "all", "the")) return null
    if (!words.accept("corner", "corners")) return null
    const span = words.since(start)
    return [
      {
        ...span,
        do: "work",
        stitch: { kind: { basic: "sc" }, tog: false, shape: "same" },
        count: usualCorner,
        corner: true,
        place: {
          ...span,
          at: "each",
          nouns: [{ what: "corner", corner: true }],
          until: { kind: "around" },
        },
      },
    ]
  })
}

function startsVague(words: Words): boolean {
  if (
    words.acceptAll("now", "and", "then") ||
    words.acceptAll("here", "and", "there") ||
    words.acceptAll("from", "time", "to", "time") ||
    words.accept("occasionally")
  )
    return true
  if (words.accept("fewer", "more") && words.accept("if", "when", "where")) return true
  if (words.accept("increasing", "increase", "inc", "decreasing", "decrease")) {
    words.accept("as", "where", "when", "wherever", "often", "enough", "just")
    words.accept("enough", "often")
    words.accept("as", "so", "to")
    return words.accept("needed", "necessary", "required", "that") || isWayToKeep(words.text())
  }
  return (
    words.accept("as", "where", "when", "if") &&
    words.accept("needed", "necessary", "required") &&
    words.accept("to", "for", "so") &&
    isWayToKeep(words.text())
  )
}

/** "...; then one sc round": a round told in passing, which has no number and is not worked. */
export function readUnlabelledRound(words: Words): boolean {
  return (
    words.attempt(() => {
      const start = words.start()
      words.at += 1
      words.accept("more", "plain", "final", "last")
      const kind = readKind(words)
      if (!kind || !words.accept("round", "rounds", "rnd", "rnds", "row", "rows")) return null
      words.report({
        severity: "warning",
        code: "round-without-label",
        ...words.since(start),
        message: "A further round is named here without a number of its own; it is not worked.",
        hint: 'Give it a line of its own, such as "Rnd 11: sc in each st around."',
      })
      return true
    }) !== null
  )
}
