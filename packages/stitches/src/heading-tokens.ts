// Cuts the text of a heading into numbers, words and signs, each with its place. One pass from left to right: every piece is
// taken by a pattern of bounded length or of one class of characters, so the work grows with the length of the text.

import { numberPattern, readNumber } from "./read-number.ts"

export interface Spot {
  /** Offsets in UTF-16 units, the end behind the last one. */
  readonly start: number
  readonly end: number
}

export type HeadingToken = Spot & {
  /** As written; of a word in lower case. */
  readonly text: string
  /** Whether it follows the one before without a space. */
  readonly joined: boolean
} & (
    | { readonly type: "number"; readonly value: number }
    | { readonly type: "word"; readonly capital: boolean }
    | { readonly type: "sign" }
  )

/** A heading line is far shorter; what follows is left unread. */
export const longestHeading = 2000

const numberAt = new RegExp(numberPattern, "uy")
const digitsAt = /\d+/uy
const wordAt = /\p{L}[\p{L}\p{M}'’]*/uy
const spaceAt = /[\s\u00a0]+/uy
const inchSignAt = /''|’’|&quot;|[″”“"]/uy

/** Every piece of the first `longestHeading` characters. Never throws. */
export function cutHeading(whole: string): HeadingToken[] {
  const text = whole.slice(0, longestHeading)
  const tokens: HeadingToken[] = []
  let at = 0
  let joined = false
  const matchAt = (pattern: RegExp) => {
    pattern.lastIndex = at
    return pattern.exec(text)?.[0]
  }
  while (at < text.length) {
    const space = matchAt(spaceAt)
    if (space !== undefined) {
      at += space.length
      joined = false
      continue
    }
    const token = tokenAt(text, at, joined && tokens.length > 0, matchAt)
    tokens.push(token)
    at = token.end
    joined = true
  }
  return tokens
}

function tokenAt(
  text: string,
  at: number,
  joined: boolean,
  matchAt: (pattern: RegExp) => string | undefined,
): HeadingToken {
  const number = numberIn(matchAt(numberAt), text, at)
  if (number !== undefined) {
    const value = readNumber(number)
    const spot = { text: number, start: at, end: at + number.length, joined }
    return value === undefined ? { type: "sign", ...spot } : { type: "number", value, ...spot }
  }
  // Digits that are too many for a number stand together as something unknown.
  const rest = matchAt(digitsAt) ?? matchAt(inchSignAt)
  if (rest !== undefined)
    return { type: "sign", text: rest, start: at, end: at + rest.length, joined }
  const word = matchAt(wordAt)
  if (word !== undefined) {
    const capital = word[0] !== word[0]!.toLowerCase()
    return {
      type: "word",
      text: word.toLowerCase(),
      capital,
      start: at,
      end: at + word.length,
      joined,
    }
  }
  const sign = String.fromCodePoint(text.codePointAt(at)!)
  return { type: "sign", text: sign, start: at, end: at + sign.length, joined }
}

const plainFraction = /^(\d{1,2})[/⁄](\d{1,2})$/
const decimalsBehind = /^[.,]\d/

/** "8/5" in "H8/5 mm" and "1/2" in "B-1/2.25 mm" are two sizes and no fraction: only the first is taken. */
function numberIn(written: string | undefined, text: string, at: number): string | undefined {
  const fraction = written === undefined ? null : plainFraction.exec(written)
  if (fraction === null) return written
  const end = at + written!.length
  const improper = Number(fraction[1]) >= Number(fraction[2])
  return improper || decimalsBehind.test(text.slice(end, end + 2)) ? fraction[1] : written
}

/** Whether a token is that word, or one of those. */
export function isWord(token: HeadingToken | undefined, ...words: readonly string[]): boolean {
  return token?.type === "word" && words.includes(token.text)
}

/** Whether a token is that sign, or one of those. */
export function isSign(token: HeadingToken | undefined, ...signs: readonly string[]): boolean {
  return token?.type === "sign" && signs.includes(token.text)
}

/** Index behind a phrase that begins here, hyphens between its words allowed; -1 where it does not. */
export function behindPhrase(
  tokens: readonly HeadingToken[],
  from: number,
  phrase: readonly string[],
): number {
  let at = from
  for (const [k, word] of phrase.entries()) {
    if (k > 0 && isSign(tokens[at], "-", "‐", "‑", "–")) at++
    if (!isWord(tokens[at], word)) return -1
    at++
  }
  return at
}
