// What is said after a list of steps of the whole of it: "repeat around", "x6", "all in ring".

import { atPlace, readPlace } from "./place-grammar.ts"
import { readTimes } from "./repeat-grammar.ts"
import type { StatedTotal, Step } from "../base/tree.ts"
import type { Words } from "./words.ts"

/** "sc 1, inc 1; repeat around": all that was said, the start of the round left out. */
export function repeatAll(words: Words, steps: readonly Step[]): Step[] | null {
  return words.attempt(() => {
    const opening = words.peek()
    words.at += 1
    words.accept("this", "these", "the")
    words.accept("sequence", "pattern", "steps")
    const unmarked = acceptMissingMark(words)
    if (words.accept("[", "(", "{")) words.accept("]", ")", "}")
    const times = readTimes(words, true)
    if (!times || (times.kind === "until" && times.until.kind !== "around")) return null
    const first = steps.findIndex(
      (step) =>
        step.do === "work" || step.do === "group" || step.do === "repeat" || step.do === "skip",
    )
    if (first < 0) return null
    const body = steps.slice(first)
    const span = { start: body[0]!.start, end: words.lastEnd() }
    if (unmarked && opening)
      words.report({
        severity: "warning",
        code: "repeat-start-missing",
        start: opening.start,
        end: words.lastEnd(),
        message:
          "Where this repeat begins is not marked; it is taken from the first stitch of the round.",
        hint: 'Put a "*" where the repeat begins.',
      })
    return [
      ...steps.slice(0, first),
      { ...span, do: "repeat" as const, body, last: null, ending: null, times },
    ]
  })
}

/** "rep from *" where no asterisk stands before. */
function acceptMissingMark(words: Words): boolean {
  return (
    words.attempt(() => {
      if (!words.accept("from")) return null
      const mark = words.text()
      if (!/^\*+$/.test(mark)) return null
      const open = words.tokens.slice(0, words.at - 1).some((token) => token.text === mark)
      if (open) return null
      words.at += 1
      return true
    }) !== null
  )
}

/** "1sc, 1inc x6" with no bracket: the whole list, where nothing but a total follows. */
export function listTimes(
  words: Words,
  steps: readonly Step[],
  totals: readonly StatedTotal[],
): Step[] | null {
  if (words.text() !== "x" || !words.isNumber(1) || totals.length > 0 || words.stars > 0)
    return null
  return words.attempt(() => {
    words.at += 1
    const count = words.value()
    words.at += 1
    words.accept("times")
    if (!/^[.;([={]?$/.test(words.text())) return null
    const first = steps.findIndex((step) => step.do === "work")
    const body = steps.slice(first)
    if (first < 0 || body.length < 2 || !body.every((step) => step.do === "work" && !step.even))
      return null
    return [
      ...steps.slice(0, first),
      {
        start: body[0]!.start,
        end: words.lastEnd(),
        do: "repeat" as const,
        body,
        last: null,
        ending: null,
        times: { kind: "total" as const, count },
      },
    ]
  })
}

/** "..., all in ring": everything since the ring was made. */
export function wrapAll(words: Words, steps: readonly Step[]): Step[] | null {
  return words.attempt((): Step[] | null => {
    const place = atPlace(words) ? readPlace(words) : null
    if (place?.at !== "ring") return null
    const made = steps.findLastIndex(
      (step) => step.do === "ring" || (step.do === "join" && step.ring === true),
    )
    const opened = steps[made]?.do === "join" || made >= 0 ? made + 1 : closedChain(steps)
    const inner = steps.slice(opened)
    if (inner.length === 0) return null
    const span = { start: inner[0]!.start, end: words.lastEnd() }
    return [...steps.slice(0, opened), { ...span, do: "group", steps: inner, place }]
  })
}

/** After "ch 4, join": where the work into that ring begins. */
function closedChain(steps: readonly Step[]): number {
  const [first, second] = steps
  return first?.do === "chain" && (second?.do === "join" || second?.do === "slip") ? 2 : 0
}
