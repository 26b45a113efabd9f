// Rounds that nothing labels: a text of lines, or of bulleted items, each of which is one round.

import type { RoundLabel } from "./labels.ts"
import { looksLikeWork } from "./talk.ts"

/** Fewest lines with work in them that make such a list. */
const fewestRounds = 3
/** A line of talk no longer than this ("Yellow:") does not end the list. */
const longestBetween = 40

interface Item {
  readonly start: number
  readonly text: string
}

/** A label of no length before every item; none where the text is no such list. */
export function unlabelledRounds(text: string, written: string): RoundLabel[] {
  const bulleted = items(written, /^[ \t]*[-•*][ \t]+(?=[A-Z(\d*])/gm)
  const found = roundsIn(bulleted)
  const list = found.length >= fewestRounds ? found : roundsIn(items(text, /^(?=[A-Z(\d*])/gm))
  if (list.length < fewestRounds) return []
  return list.map(({ start }, i) => ({ from: i + 1, to: i + 1, row: false, start, end: start, markAt: start, inferred: true }))
}

function items(text: string, opening: RegExp): Item[] {
  const starts = [...text.matchAll(opening)].map((match) => (match.index ?? 0) + match[0].length)
  return starts.map((start, i) => ({ start, text: text.slice(start, starts[i + 1] ?? text.length) }))
}

/** From the line that makes the ring, or the first that is worked, as long as work follows work. */
function roundsIn(list: readonly Item[]): Item[] {
  const first = list.findIndex(({ text }) => opensRing.test(text))
  if (first < 0) return []
  const found: Item[] = []
  for (const item of list.slice(first)) {
    if (makesOnlyRing.test(item.text)) continue
    if (closesRound.test(item.text) && looksLikeWork(item.text)) found.push(item)
    else if (item.text.length > longestBetween || found.length === 0) break
  }
  return found
}

/** The text begins with a ring or the chain that makes one. */
const opensRing = /\b(?:ring|magic (?:loop|circle)|mr|circle)\b/i
/** "Ch 5, join with sl st to form ring": no stitches yet. */
const makesOnlyRing = /^\s*(?:ch|chain)\b[^;.]{0,40}\b(?:ring|circle)\b\W*$/i
/** What a round ends with, or how far it goes. */
const closesRound = /\b(?:join|sl ?st|slip ?st(?:itch)?|slst|ss|around|turn|to end|all round|rep(?:eat)?)\b/i
