// Crochet cotton by number: what a text calls the thread, and how wide a stitch of it comes out.
//
// Numbers rise as the thread grows finer; "size 10" is also the trade's "bedspread" and "10-count" cotton. Pearl
// cotton has numbers of its own, coarser thread for the same number; those are from memory of the shade cards.
//
// Width. Three gauges of size 10: 17 hdc in 2 in and 9 ch in 1 in (Knit-Cro-Sheen, steel 8 = 1.5 mm; a chain is 0.97
// of a stitch) and 6 dc in 1 in (steel 1 = 2.75 mm). On one hook a finer thread makes a narrower stitch: filet meshes
// of sizes 10, 30 and 50 on 1.5, 1.3 and 1.0 mm hooks measure 2.12, 1.59 and 1.41 mm, and with the hook's share (hook-law.ts)
// taken off their widths go with the number to the power -0.19 and -0.11. Rows in test/evidence/stitches-gauges.json.

import { cutHeading, type HeadingToken, isSign, isWord } from "./heading-tokens.ts"
import { hookFactor } from "./hook-law.ts"

/** Middle of the three gauges, each brought to a 1.5 mm hook: 2.99, 2.91 and 3.00 mm. */
export const threadWidth = { size: 10, hookMm: 1.5, widthMm: 2.99, gauges: 3 } as const
/** Between the two exponents of the filet meshes, so that it misses either width by the same 5 %. */
export const threadExponent = -0.14

/** Width of one sc or dc of a thread, mm. Without a hook, on the one the size 10 gauges were made with. */
export function threadScWidth(size: number, hookMm: number = threadWidth.hookMm): number {
  const { widthMm } = threadWidth
  return (
    widthMm *
    hookFactor({ threadSize: size }, threadWidth.hookMm, hookMm) *
    (size / threadWidth.size) ** threadExponent
  )
}

/** Sizes a text can mean by number. */
const sizes = [5, 8, 10, 15, 20, 30, 40, 50, 60, 70, 80, 100]
/** Crochet cotton as thick as pearl cotton of these numbers; from memory. */
const pearlSizes: Readonly<Record<string, number>> = { "3": 5, "5": 10, "8": 20, "12": 40 }
/** Thread of size 3 is sold as fingering yarn, weight 1 (a published gauge of it says so). */
const yarnLike = 3

/** The size of crochet cotton a text names: "size 20 crochet cotton", "no. 30 thread", "pearl cotton no. 5". */
export function readThreadSize(text: string): number | undefined {
  const tokens = cutHeading(text)
  for (let at = 0; at < tokens.length; at++) {
    const found = findThreadSize(tokens, at)
    if (found !== undefined) return found.size
  }
  return undefined
}

export interface ThreadFound {
  /** Undefined of thread that is as thick as a yarn. */
  readonly size: number | undefined
  readonly weight: 0 | 1
  /** Index of the token behind it. */
  readonly next: number
}

/** The thread named from this token on. */
export function findThreadSize(
  tokens: readonly HeadingToken[],
  at: number,
): ThreadFound | undefined {
  return (
    pearlAt(tokens, at) ??
    numberFirst(tokens, at) ??
    threadFirst(tokens, at) ??
    bedspreadAt(tokens, at)
  )
}

const threadNouns = ["thread", "threads", "cotton", "cottons", "cord"]
/** Words between a number and its thread: "size 10 white mercerized crochet cotton". */
const mostBetween = 7

/** Index of a number behind "size", "no.", "#", or undefined. */
function numberedAt(tokens: readonly HeadingToken[], at: number): number | undefined {
  let next = at
  if (isWord(tokens[next], "size", "sz", "no", "nr", "number")) {
    next++
    while (isSign(tokens[next], ".", "#", ":")) next++
  } else if (isSign(tokens[next], "#")) next++
  else return undefined
  return tokens[next]?.type === "number" ? next : undefined
}

function sized(token: HeadingToken, next: number): ThreadFound | undefined {
  const value = token.type === "number" ? token.value : 0
  if (sizes.includes(value)) return { size: value, weight: 0, next }
  return value === yarnLike ? { size: undefined, weight: 1, next } : undefined
}

/** "size 10 crochet cotton", "#20 thread", "10 count cotton". */
function numberFirst(tokens: readonly HeadingToken[], at: number): ThreadFound | undefined {
  const counted =
    tokens[at]?.type === "number" &&
    isWord(tokens[isSign(tokens[at + 1], "-") ? at + 2 : at + 1], "count")
  const number = counted ? at : numberedAt(tokens, at)
  if (number === undefined || isUnit(tokens[number + 1])) return undefined
  for (let next = number + 1; next <= number + mostBetween; next++) {
    const token = tokens[next]
    if (token === undefined || token.type === "number") return undefined
    if (isSign(token, ".", ";") || isWord(token, "hook", "hooks", "steel", "size", "no"))
      return undefined
    if (isWord(token, ...threadNouns)) return sized(tokens[number]!, next + 1)
  }
  return undefined
}

/** "thread, size 10", "cotton no. 30", "mercerized crochet, size 50". */
function threadFirst(tokens: readonly HeadingToken[], at: number): ThreadFound | undefined {
  const mercerized =
    isWord(tokens[at], "mercerized", "mercerised") && isWord(tokens[at + 1], "crochet")
  if (!mercerized && !isWord(tokens[at], ...threadNouns)) return undefined
  const first = mercerized ? at + 2 : at + 1
  for (let next = first; next <= first + 2; next++) {
    if (isSign(tokens[next], ";")) return undefined
    // A full stop parts a number from its thread only where no "size" stands behind it.
    if (isSign(tokens[next], ".") && !isWord(tokens[next + 1], "size")) return undefined
    const number = numberedAt(tokens, next)
    if (number === undefined) continue
    const after = isSign(tokens[number + 1], ",") ? undefined : tokens[number + 1]
    if (isUnit(after) || isWord(after, "steel", "hook")) return undefined
    return sized(tokens[number]!, number + 1)
  }
  return undefined
}

/** "pearl cotton no. 5", "perle cotton 8", "#5 pearl cotton", "size 8 perle". */
function pearlAt(tokens: readonly HeadingToken[], at: number): ThreadFound | undefined {
  const isPearl = (token: HeadingToken | undefined) => isWord(token, "pearl", "perle", "perlé")
  const before = numberedAt(tokens, at)
  if (before !== undefined && isPearl(tokens[before + 1])) {
    const size = pearlSizes[tokens[before]!.text]
    const next = isWord(tokens[before + 2], "cotton") ? before + 3 : before + 2
    return size === undefined ? undefined : { size, weight: 0, next }
  }
  if (!isPearl(tokens[at]) || !isWord(tokens[at + 1], "cotton")) return undefined
  let bare: number | undefined
  for (let next = at + 2; next <= at + mostBehindPearl; next++) {
    if (isSign(tokens[next], ";")) break
    const numbered = numberedAt(tokens, next)
    if (numbered !== undefined) return pearlOf(tokens, numbered)
    if (next <= at + 3 && tokens[next]?.type === "number") bare ??= next
  }
  return bare === undefined ? undefined : pearlOf(tokens, bare)
}

/** Words between pearl cotton and its number: ", article 90, size 5". */
const mostBehindPearl = 6

function pearlOf(tokens: readonly HeadingToken[], number: number): ThreadFound | undefined {
  const size = pearlSizes[tokens[number]!.text]
  return size === undefined ? undefined : { size, weight: 0, next: number + 1 }
}

/** "bedspread cotton", "bedspread weight thread": what the trade calls size 10. */
function bedspreadAt(tokens: readonly HeadingToken[], at: number): ThreadFound | undefined {
  if (!isWord(tokens[at], "bedspread")) return undefined
  let next = at + 1
  while (isSign(tokens[next], "-") || isWord(tokens[next], "weight")) next++
  const named = isWord(tokens[next], "cotton", "thread")
  return named || next > at + 1
    ? { size: threadWidth.size, weight: 0, next: named ? next + 1 : next }
    : undefined
}

function isUnit(token: HeadingToken | undefined): boolean {
  return isWord(token, "mm", "cm", "g", "oz", "m", "yd", "yds", "yards")
}
