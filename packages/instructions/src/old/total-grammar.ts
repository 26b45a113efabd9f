// Stated totals: "(24 dc)", "[24]", "= 24 sts", "(12 dc + 4 ch-3 sps; 24 sts with chains)", "24 sts
// at the end of the round", "(6 petals)"; and what makes one not firm ("if", "about", "or").

import { readNoun } from "./nouns.ts"
import { readKind } from "./stitch-grammar.ts"
import type { StatedItem, StatedTotal } from "../base/tree.ts"
import { isIgnored, isKnownWord } from "./vocabulary.ts"
import type { Words } from "./words.ts"

const groupUnits =
  /^(petals?|shells?|groups?|scallops?|fans?|points?|corners?|leaves|repeats?|reps?|trefoils?|sides?|wedges?|sections?|v|vs|clusters?|cls?|popcorns?|puffs?|bobbles?|holes?|bars?|spokes?|rays?)$/
const separators = new Set([
  "+",
  ",",
  ";",
  "and",
  "&",
  "-",
  "/",
  "=",
  ".",
  "with",
  "plus",
  "--",
  ":",
])
const softWords = new Set([
  "if",
  "about",
  "or",
  "between",
  "approx",
  "approximately",
  "roughly",
  "then",
  "than",
  "less",
  "over",
  "needs",
  "divide",
  "each",
  "per",
  "not",
])

const leadsTotal = new Set(
  "you that this which makes gives should have will now total there are is = : of - made count for a in all stitch sts".split(
    " ",
  ),
)

/** The total that stands here, up to `close` (a bracket) or the end of the sentence; null when none does. */
export function readTotal(words: Words, close: string | null): StatedTotal | null {
  return words.attempt(() => {
    const start = words.start()
    const items: StatedItem[] = []
    let firm = true
    let range: "between" | "or" | undefined
    let ranged = true
    let more = false
    while (leadsTotal.has(words.text())) {
      words.at += 1
      if (words.text() === close) break
    }
    while (!words.done() && words.text() !== close) {
      if (close === null && (words.text() === "." || words.text() === ";") && items.length > 0)
        break
      if (words.text() === "+" && items.length === 0) {
        firm = false
        more = true
      }
      if (separators.has(words.text())) {
        words.at += 1
        continue
      }
      if (softWords.has(words.text())) {
        firm = false
        if (ranged && words.text() === "between" && items.length === 0) range = "between"
        else if (ranged && words.text() === "or" && items.length === 1 && words.isNumber(1))
          range = "or"
        else if (words.text() !== "or") {
          range = undefined
          ranged = false
        }
      }
      const item = words.attempt(() => readItem(words))
      if (item) {
        items.push(item)
        continue
      }
      if (items.length === 0 && (close === null || firm)) return null
      if (close === null && words.peek()?.type === "mark") break
      // Words after a figure belong to the total ("24 sts at the end of the round").
      tellUnread(words)
      words.at += 1
    }
    if (items.length === 0) return null
    return {
      ...words.since(start),
      items,
      firm,
      ...(range && items.length === 2 ? { range } : {}),
      ...(more && items.length === 1 ? { more: true as const } : {}),
    }
  })
}

/** A word of the total that says nothing to this reader. */
function tellUnread(words: Words): void {
  const token = words.peek()
  if (
    token?.type !== "word" ||
    softWords.has(token.text) ||
    isIgnored(token.text) ||
    isKnownWord(token.text)
  )
    return
  words.report({
    severity: "note",
    code: "word-in-total",
    start: token.start,
    end: token.end,
    message: "This word of the total is not read.",
    hint: "",
  })
}

/** After the name of a stitch these make it part of a longer one: "3 dc groups". */
const partsOfNoun = new Set(
  "group groups sp sps loop loops petal petals scallop scallops -".split(" "),
)

function readItem(words: Words): StatedItem | null {
  const start = words.start()
  if (!words.isNumber() || !Number.isInteger(words.value())) return null
  const count = words.value()
  words.at += 1
  const span = () => words.since(start)
  const wordStart = words.at
  const word = () => {
    let said = words.tokens[wordStart]?.text ?? ""
    for (let i = wordStart + 1; i < words.at; i++) said += ` ${words.tokens[i]!.text}`
    return words.at > wordStart ? said : ""
  }
  if (
    words.text() === "small" ||
    words.text() === "side" ||
    words.text() === "corner" ||
    words.text() === "total"
  )
    words.at += 1
  if (words.accept("sts", "st", "stitches", "stitch")) {
    const chains =
      words.acceptAll("with", "chains") ||
      words.acceptAll("incl", "chains") ||
      words.acceptAll("including", "chains") ||
      words.acceptAll("with", "ch") ||
      words.acceptAll("including", "ch")
    words.accept("total", "stated", "each")
    return { ...span(), count, unit: chains ? "with-chains" : "stitches", word: word() }
  }
  const { at } = words
  const kind = readKind(words)
  const gathered = kind && !partsOfNoun.has(words.text()) ? kind : null
  if (!gathered) words.at = at
  if (gathered) {
    words.accept("stated")
    return { ...span(), count, unit: "kind", kind: gathered, word: word() }
  }
  if (words.accept("picots", "picot")) return { ...span(), count, unit: "picots", word: word() }
  if (words.accept("repeats", "reps", "repeat"))
    return { ...span(), count, unit: "repeats", word: word() }
  if (groupUnits.test(words.text())) {
    words.at += 1
    words.attempt(() => {
      // "6 petals of 6 sts"
      if (!words.accept("of") || !words.isNumber()) return null
      words.at += 1
      return readKind(words) ?? (words.accept("sts", "st", "stitches") ? true : null)
    })
    return { ...span(), count, unit: "groups", word: word() }
  }
  const noun = words.attempt(() => readNoun(words))
  if (noun?.what === "space" && words.accept("picots", "picot"))
    return {
      ...span(),
      count,
      unit: "picots",
      ...(noun.size === undefined ? {} : { size: noun.size }),
      word: word(),
    }
  if (noun?.what === "space" || noun?.what === "gap" || noun?.what === "corner") {
    words.accept("corners", "corner", "sides", "side", "points", "loops", "sps")
    if (noun.size === undefined && noun.what === "corner")
      return { ...span(), count, unit: "groups", word: word() }
    return {
      ...span(),
      count,
      unit: "space",
      ...(noun.size === undefined ? {} : { size: noun.size }),
      word: word(),
    }
  }
  if (noun?.what === "chain") return { ...span(), count, unit: "chains", word: word() }
  if (noun?.what === "group") return { ...span(), count, unit: "groups", word: word() }
  if (/^(or|to|then|and|-)$/.test(words.text()) && words.isNumber(1))
    return { ...span(), count, unit: "stitches", word: "" }
  if (
    words.done() ||
    words.text() === ")" ||
    words.text() === "]" ||
    words.text() === "." ||
    /^[},:/;]$/.test(words.text())
  )
    return { ...span(), count, unit: "stitches", word: "" }
  return null
}
