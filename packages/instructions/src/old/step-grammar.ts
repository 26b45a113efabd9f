// Slip stitches and skips: "sl st in next 2 dc and in ch-2 sp", "skip next sc and hdc".

import { readSteps } from "./grammar.ts"
import { joinTarget } from "./join-grammar.ts"
import { readPlace, readTarget, withEarlierRound } from "./place-grammar.ts"
import { isColour, readKind } from "./stitch-grammar.ts"
import type { Step } from "../base/tree.ts"
import type { Words } from "./words.ts"

/** "sl st in next 2 dc", "sl st to next ch-3 sp", "sl st across to corner". */
export function readSlip(words: Words, _steps: readonly Step[]): Step[] | null {
  return words.attempt((): Step[] | null => {
    const start = words.start()
    let count = 1
    if (words.isNumber() && words.text(1) !== "-") {
      count = words.value()
      words.at += 1
    }
    while (isColour(words.text()) || words.accept("surface")) {
      if (isColour(words.text())) words.at += 1
    }
    const kind = readKind(words)
    if (kind?.basic !== "sl st" || kind.gathered) return null
    if (/^(over|across|along|up)$/.test(words.text()) && words.text(1) === "to") words.at += 1
    const to = words.text() === "to" || words.text() === "into" || words.text() === "across"
    if (to && (words.text(1) === "join" || words.text(1) === "close")) {
      words.at += 2
      const where = readPlace(words)
      return [{ ...words.since(start), do: "join", place: where }]
    }
    const steps: Step[] = []
    const nth = words.attempt(() => {
      if (!words.accept("to", "in", "into")) return null
      const target = joinTarget(words, start)
      return target.chain === undefined || words.text() === "from" ? null : target
    })
    if (nth)
      return [
        {
          ...words.since(start),
          do: "join",
          place: null,
          ...(nth.chain === undefined ? {} : { chain: nth.chain }),
        },
      ]
    const place = readPlace(words)
    if (words.attempt(() => (words.accept("to") && words.accept("form", "make") ? true : null))) {
      words.accept("a", "the")
      words.accept("ring", "circle", "loop")
      return [{ ...words.since(start), do: "join", place: null, ring: true }]
    }
    if (words.acceptAll("to", "join") || words.acceptAll("to", "close"))
      return [{ ...words.since(start), do: "join", place }]
    steps.push({
      ...words.since(start),
      do: "slip",
      count,
      place,
      to,
      ...(kind.loops ? { kind } : {}),
    })
    for (;;) {
      const from = words.start()
      const more = words.attempt(() => {
        if (!words.accept("and", "&")) return null
        return (
          readPlace(words) ??
          (words.text() === "next" ? readTarget(words, words.start(), "in") : null)
        )
      })
      if (!more) break
      steps.push({ ...words.since(from), do: "slip", count: 1, place: more, to })
    }
    return steps
  })
}

const skipWords = new Set("skip skips sk miss seek skipping missing skp omit".split(" "))

/** "skip 2 sc", "sk next ch-3 sp", "miss 1", "sk next sc and hdc", "sk (ch 3, sl st, sl st, ch 3)". */
export function readSkip(words: Words): Step[] | null {
  if (!skipWords.has(words.text())) return null
  return words.attempt((): Step[] | null => {
    const start = words.start()
    words.at += 1
    if (words.text() === "(") {
      words.at += 1
      const run = readSteps(words, () => false)
      words.accept(")")
      return [{ ...words.since(start), do: "skip", place: null, steps: run.steps }]
    }
    words.accept("over")
    if (words.isNumber() && isBoundary(words.tokens[words.at + 1]?.text ?? "")) {
      const count = words.value()
      words.at += 1
      return [
        {
          ...words.since(start),
          do: "skip",
          place: { ...words.since(start), at: "next", noun: { what: "stitch" }, count },
        },
      ]
    }
    const target = readTarget(words, start, "skip")
    if (!target) return null
    const place = withEarlierRound(words, target, start)
    return [{ ...words.since(start), do: "skip", place }]
  })
}

export function isBoundary(text: string): boolean {
  return (
    text === "," ||
    text === ";" ||
    text === "." ||
    text === ")" ||
    text === "]" ||
    text === "*" ||
    text === ""
  )
}
