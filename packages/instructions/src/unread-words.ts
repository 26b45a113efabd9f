// Words the grammar has no place for: passed over when they say nothing of the work, reported otherwise.

import { atPlace } from "./place-grammar.ts"
import { isIgnored, isKnownWord, nearestWord } from "./vocabulary.ts"
import { stitchNamed, type Words } from "./words.ts"

/** Longest piece of the text quoted in a message. */
const longestQuote = 24

function shortened(text: string): string {
  return text.length > longestQuote ? `${text.slice(0, longestQuote)}...` : text
}

/** A word like "in" whose place is not understood: the word that spoils it is the one to report. */
function leadsToUnknown(words: Words): boolean {
  if (!atPlace(words)) return false
  for (let ahead = 1; ahead <= 4; ahead++) {
    const token = words.peek(ahead)
    if (!token || token.type === "mark") return false
    if (token.type !== "word" || /^(the|next|each|every|same|first|last|a|an|of)$/.test(token.text))
      continue
    return (
      !isIgnored(token.text) && !isKnownWord(token.text) && !stitchNamed(token.text, words.terms)
    )
  }
  return false
}

/** Passes over a word that means nothing to the work, or reports it. */
export function passWord(words: Words): void {
  const token = words.peek()
  if (!token) return
  if (leadsToUnknown(words)) {
    while (
      /^(in|into|on|onto|over|around|round|between|through|the|next|each|every|same|first|last|a|an|of|at|to|under)$/.test(
        words.text(),
      )
    )
      words.at += 1
    return
  }
  words.at += 1
  if (token.type === "word" && isIgnored(token.text)) return
  if (token.type === "mark" && /^["'.,;:!-]$/.test(token.text)) return
  const near = token.type === "word" ? nearestWord(token.text) : null
  const said =
    token.type === "number" || token.type === "ordinal"
      ? `the number ${token.text} has nothing to count here`
      : `"${shortened(token.text)}" is not understood here`
  words.report({
    severity: "error",
    code: token.type === "word" ? "unknown-word" : "misplaced-mark",
    start: token.start,
    end: token.end,
    message: `In this round ${said}.`,
    hint:
      near && near !== token.text
        ? `Did you mean "${near}"?`
        : "Write it in the usual words, or take it out if it says nothing about the stitches.",
  })
}
