// The word of the lexicon that a misspelt one is a slip of.

import { isOneSlip, isSwap } from "./spellings.ts"

const nearest = new Map<string, string | null>()

/** Slips remembered: the same misspelling comes again in round after round. */
const mostRemembered = 2000

/** The one word of the lexicon that a longer word is a slip of: one letter wrong, missing, too many or two swapped. */
export function nearestWord(text: string, words: readonly string[]): string | null {
  if (text.length < 4 || text.length > 14) return null
  const before = nearest.get(text)
  if (before !== undefined) return before
  let found: string | null = null
  for (const word of words) {
    if (Math.abs(word.length - text.length) > 1 || word.charCodeAt(0) !== text.charCodeAt(0))
      continue
    if (text.length > 4 ? isOneSlip(text, word) : isSwap(text, word)) {
      found = word
      break
    }
  }
  if (nearest.size > mostRemembered) nearest.clear()
  nearest.set(text, found)
  return found
}
