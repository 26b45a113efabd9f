// Rounds told by their totals: "36 sc evenly, increasing 6", "inc 6 evenly around", "work even".

import { acceptEachRound } from "./growth-grammar.ts"
import { readPlace } from "./place-grammar.ts"
import { readStitch } from "./stitch-grammar.ts"
import type { Place, Step, StitchName } from "../base/tree.ts"
import { readUntil } from "./until-grammar.ts"
import type { Words } from "./words.ts"

/** "work even", "inc 6 evenly around", "dec 4 evenly": the round's own stitch over the whole round. */
export function readWholeRound(words: Words, start: number): Step[] | null {
  if (!startsWhole.has(words.text())) return null
  return words.attempt((): Step[] | null => {
    const same: StitchName = { kind: { basic: "sc" }, tog: false, shape: "same" }
    if (words.accept("even") || words.acceptAll("work", "even")) {
      const named = words.attempt(() => (words.accept("in", "with") ? readStitch(words) : null))
      readUntil(words)
      const place: Place = {
        ...words.since(start),
        at: "each",
        nouns: [{ what: "stitch" }],
        until: { kind: "around" },
      }
      return [{ ...words.since(start), do: "work", stitch: named ?? same, count: 1, place }]
    }
    const growth = readGrowth(words)
    if (growth === null) return null
    readUntil(words)
    return [
      {
        ...words.since(start),
        do: "work",
        stitch: same,
        count: 0,
        place: null,
        even: true,
        extra: growth,
      },
    ]
  })
}

const startsGrowth = new Set(
  ", and with inc increase increasing dec decrease decreasing".split(" "),
)
const startsWhole = new Set([...startsGrowth, "even", "work"])

/** ", increasing 6 sts evenly", "inc 6 evenly", "decreasing 4 evenly": how many more or fewer. */
export function readGrowth(words: Words): number | null {
  if (!startsGrowth.has(words.text())) return null
  return words.attempt(() => {
    words.accept(",")
    words.accept("and", "with")
    const word = words.text()
    if (!words.accept("inc", "increase", "increasing", "dec", "decrease", "decreasing")) return null
    if (!words.isNumber() || !Number.isInteger(words.value())) return null
    const count = words.value()
    words.at += 1
    words.accept("st", "sts", "stitches", "times", "sc", "dc", "hdc")
    const at = words.at
    if (words.accept("evenly")) words.accept("spaced", "spread", "around")
    else {
      // "increasing 6 sts each round": evenly goes without saying.
      acceptEachRound(words)
      if (words.at === at) return null
    }
    acceptEachRound(words)
    return word.startsWith("d") ? -count : count
  })
}

const startsEven = new Set("evenly with increasing inc decreasing".split(" "))

/** "evenly", "evenly, increasing 6", ", 1 increase spread evenly": the increases, 0 if none are named. */
export function readEven(words: Words): number | null {
  const ahead = words.text() === "," ? 1 : 0
  if (!words.isNumber(ahead) && !startsEven.has(words.text(ahead))) return null
  return words.attempt(() => {
    let increases = 0
    let even = words.accept("evenly")
    if (even) words.accept("spaced", "spread", "around")
    words.attempt(() => {
      words.accept(",")
      words.accept("with")
      if (words.accept("increasing", "inc", "decreasing")) {
        if (!words.isNumber()) return null
        increases = words.value()
        words.at += 1
        words.accept("st", "sts", "stitches", "times")
        if (words.accept("evenly")) even = true
        return true
      }
      if (!words.isNumber()) return null
      const count = words.value()
      if (words.text(1) === "equally" || words.text(1) === "evenly") words.at += 1
      if (
        !/^(increase|increases|inc|incs|spaced)$/.test(words.text(1)) &&
        !/^(increases|increase)$/.test(words.text(2))
      )
        return null
      words.at += 2
      words.accept("increase", "increases")
      words.accept("spread", "spaced", "placed", "distributed")
      if (words.accept("evenly")) even = true
      increases = count
      return even ? true : null
    })
    if (!even) return null
    words.accept("around", "across")
    words.attempt(() => {
      // ", the first in the first st of the round" says where they begin.
      words.accept(",")
      words.accept("the")
      if (!words.accept("first")) return null
      const place = readPlace(words)
      if (!place) return null
      words.acceptAll("of", "the", "round") || words.acceptAll("of", "the", "rnd")
      return true
    })
    return increases
  })
}
