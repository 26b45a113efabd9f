// Words parted or glued where the page was copied: "fi rst" for first, "nextloop" for next loop.

import type { Token } from "./tokens.ts"

/** "fi rst", "fl ower": a word parted behind a ligature, as pages set in print are copied. */
export function isSplitWord(
  first: Token,
  second: Token | undefined,
  isName: (text: string) => boolean,
  isKnown: (text: string) => boolean,
): boolean {
  if (first.type !== "word" || second?.type !== "word" || !/f[filt]$/.test(first.text)) return false
  if (isKnown(first.text) || isName(first.text)) return false
  return isKnown(first.text + second.text) && !isName(second.text)
}

/** "nextloop", "eachst", "samespace": two words with the blank between them lost; null for any other. */
export function gluedWords(
  token: Token,
  isName: (text: string) => boolean,
  isKnown: (text: string) => boolean,
): [Token, Token] | null {
  if (token.type !== "word" || isKnown(token.text) || isName(token.text)) return null
  const front =
    /^(?:next|each|same|first|last|into|skip|miss|every|in(?=each|next|same|any|first)|[hst]?[dr]?c(?=(?:inc|dec)s?$)|tr(?=inc|dec))/.exec(
      token.text,
    )?.[0]
  const back = front === undefined ? "" : token.text.slice(front.length)
  if (front === undefined || (!isKnown(back) && !isName(back))) return null
  const middle = token.start + front.length
  return [
    { ...token, text: front, end: middle },
    { ...token, text: back, start: middle, spaced: false },
  ]
}
