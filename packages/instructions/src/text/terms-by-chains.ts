// Chains that start a round are as tall as its stitches: what they say of the terms.

import type { PatternText } from "./layout.ts"
import { type Sign, signs } from "./term-signs.ts"

const chainOf = (count: number) => `(?:ch(?:ain)?\\s{0,9}-?${count}|${count}\\s{0,9}ch(?:ain)?)\\b`
const shortBeforeDc = new RegExp(
  `^${chainOf(1)}(?:\\s{0,9}\\([^)\\n]{0,40}\\))?\\s{0,9}[,;.:]?\\s{0,9}(?:\\d+\\s{0,9})?dc\\b`,
)
const tr = "(?:t|tr|trb)\\b"
const threeForTr = new RegExp(
  `^${chainOf(3)}[^.;\\n]{0,40}?(?:as|for|=)\\s+(?:an?\\s+|the\\s+|your\\s+)?(?:first\\s+|1\\s+|1st\\s+)?${tr}`,
)
/** "Replace the first tr of each round with 3 ch": said once for all rounds. */
const threeForEveryTr = new RegExp(
  `\\b(?:first|1st)\\s+${tr}[^.;\\n]{0,40}?\\b(?:with|by|as|for)\\s+${chainOf(3)}|\\b${chainOf(3)}[^.;\\n]{0,30}\\b(?:counts?|stands?|acts?)\\s+(?:as|for)\\s+(?:an?\\s+|the\\s+)?(?:first\\s+|1\\s+|1st\\s+)?${tr}`,
)
/** "18 t in ring": an old name of the British treble. */
const oldTreble = /\b\d+\s{0,9}t\s+(?:in|into)\b/
const fourForDtr = new RegExp(
  `^${chainOf(4)}[^.;\\n]{0,40}?(?:as|for|=)\\s+(?:an?\\s+|the\\s+)?(?:first\\s+|1\\s+|1st\\s+)?(?:dtr|double treble)\\b`,
)
/** Tr after a chain of 3, and the round joined to that chain, so that it is one of them. */
const threeJoinedTo = new RegExp(
  `^${chainOf(3)}\\s{0,9},?\\s{0,9}\\d{0,5}\\s{0,9}${tr}[^]{0,300}?\\b(?:top|3rd|third)\\b[^.;\\n]{0,24}\\b${chainOf(3)}`,
)
const threeBeforeTr = new RegExp(`^${chainOf(3)}\\s{0,9},?\\s{0,9}\\d{0,5}\\s{0,9}${tr}`)

/** "5 ch (for 1 tr and 2 ch)": the chains of the stitch are what the space leaves of them. */
const forTrAndSpace =
  /^(?:ch(?:ain)?\s{0,9}-?(\d+)|(\d+)\s{0,9}ch(?:ain)?)\b[^;\n]{0,40}?(?:as|for|=)\s+(?:an?\s+|the\s+)?(?:first\s+|1\s+|1st\s+)?tr\b\.?\s{0,9}(?:and|\+|,|plus)\s{0,9}(?:ch(?:ain)?\s{0,9}-?(\d+)|(\d+)\s{0,9}ch)/
/** Chains of a UK tr at the start of a round. */
const chainsOfUkTr = 3

/** Chains that start a round are as tall as its stitches; chains within it are spaces and say nothing. */
export function chainSigns(layout: PatternText, lower: string): Sign[] {
  const found: Sign[] = []
  for (const [pattern, why] of [
    [threeForEveryTr, "a chain of 3 standing for a tr fits a UK tr"],
    [oldTreble, '"t" is the old name of a UK treble'],
  ] as const) {
    const match = pattern.exec(lower)
    if (match)
      found.push({
        start: match.index,
        end: match.index + match[0].length,
        weight: signs.clear,
        why,
      })
  }
  for (const round of layout.rounds) {
    const start = startingChain(lower, round.bodyStart, round.end)
    if (start === null) continue
    const text = lower.slice(start, round.end)
    for (const [pattern, weight, why] of [
      [shortBeforeDc, signs.weak, "a round starts with a chain of 1 before dc, which fits a UK dc"],
      [threeForTr, signs.clear, "a chain of 3 standing for a tr fits a UK tr"],
      [fourForDtr, signs.clear, "a chain of 4 standing for a dtr fits a UK dtr"],
      [threeJoinedTo, signs.clear, "a round of tr is joined to its chain of 3, which fits a UK tr"],
      [threeBeforeTr, signs.weak, "a round of tr starts with a chain of 3, which fits a UK tr"],
    ] as const) {
      const match = pattern.exec(text)
      if (match) found.push({ start, end: start + match[0].length, weight, why })
    }
    const both = forTrAndSpace.exec(text)
    if (both && Number(both[1] ?? both[2]) - Number(both[3] ?? both[4]) === chainsOfUkTr) {
      const why = "a chain of 3 standing for a tr fits a UK tr"
      found.push({ start, end: start + both[0].length, weight: signs.clear, why })
    }
  }
  return found
}

const leadingChain =
  /^[\s(]*(?:(?:make|start with|begin with)\s+)?(?=ch(?:ain)?\s{0,9}-?\d|\d+\s{0,9}ch(?:ain)?\b)/
const joinsNext = /^[^,;.]*\b(?:join|sl\s{0,9}st|ss|slip)\b/
const beforeChain =
  /\b(?:sl\s{0,9}st|ss|slip|join|joining|attach|turn|ring|with)\b|^\s{0,9}(?:\([a-z ]{1,30}\)\s{0,9})?$/
const someWork = /[*[]|^[\s(]*(?:\d+\s{0,9})?(?:dc|tr|htr)\b/

/** Where a round's starting chain stands: before it only joins, slip stitches and the ring. */
function startingChain(lower: string, from: number, to: number): number | null {
  const text = lower.slice(from, to)
  for (const clause of text.matchAll(/[^,;.\n]+/g)) {
    const chain = leadingChain.exec(clause[0])
    const after = text.slice(clause.index + clause[0].length + 1)
    if (chain && !joinsNext.test(clause[0]) && !joinsNext.test(after))
      return from + clause.index + chain[0].length
    if (chain) continue
    if (someWork.test(clause[0]) || !beforeChain.test(clause[0])) return null
  }
  return null
}
