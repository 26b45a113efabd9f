// Spellings of scans and old texts, and slips of the pen: what a word set otherwise stands for.

import { table } from "../base/table.ts"
import type { Token } from "./tokens.ts"

/** "1/2 dc", "\u00bd d c": a half double; the index of its last token. */
export function halfDouble(tokens: readonly Token[], from: number): number | null {
  let at = from
  if (tokens[at]!.value === 0.5) at += 1
  else if (tokens[at]!.value === 1 && tokens[at + 1]?.text === "/" && tokens[at + 2]?.value === 2)
    at += 3
  else return null
  if (tokens[at]?.text === "dc" || tokens[at]?.text === "double") return at
  return tokens[at]?.text === "d" && tokens[at + 1]?.text === "c" ? at + 1 : null
}

/** Parts of abbreviations that old texts set apart: "s c", "d c", "h d c", "tr c", "d tr", "tr tr". */
const nameParts = /^(?:s|d|h|t|hd|tr|dbl|db|trip|half|ch)$/

const lastParts = /^(?:c|dc|tr|tre|cr)$/

export function partedName(
  tokens: readonly Token[],
  from: number,
  isName: (text: string) => boolean,
): { text: string; last: number } | null {
  if (!nameParts.test(tokens[from]!.text) || tokens[from]!.text === "half") return null
  let text = tokens[from]!.text
  let at = from
  let best: { text: string; last: number } | null = null
  for (let k = 1; k <= 3; k++) {
    at += 1
    if (tokens[at]?.text === ".") at += 1
    const token = tokens[at]
    if (token?.type !== "word" || (!nameParts.test(token.text) && !lastParts.test(token.text)))
      break
    text += token.text
    if (isName(text)) best = { text, last: at }
  }
  return best
}

/** Slips of a scan that turns printed letters into others; none of them is a word of patterns. */
export const misscanned: Readonly<Record<string, string>> = table({
  de: "dc",
  se: "sc",
  eh: "ch",
  cb: "ch",
  ehs: "chs",
  chi: "ch",
  ail: "all",
  ali: "all",
  frem: "from",
  puli: "pull",
  si: "sl",
  trb: "tr",
  trbl: "tr",
  tc: "tr",
  htc: "htr",
  sch: "ch",
  trble: "tr",
  treb: "tr",
  tp: "tr",
  ssj: "join",
  fro: "from",
  frm: "from",
  teh: "the",
  thd: "the",
  hte: "the",
  adn: "and",
  stst: "slst",
  sls: "slst",
  slp: "sl",
  ino: "into",
  inot: "into",
  unill: "until",
  untill: "until",
  hk: "hook",
  thr: "the",
  clstr: "cluster",
  ckuster: "cluster",
  chsps: "chsps",
  wit: "with",
  whit: "with",
  firs: "first",
  fist: "first",
})

/** Marks that may be passed over freely; others say something. */
export const markCosts: Readonly<Record<string, number>> = table({
  ",": 0,
  ";": 0,
  ".": 0,
  "/": 0.3,
  ":": 0.1,
  "-": 0.1,
  "!": 0,
  "?": 0.1,
  "'": 0,
  '"': 0,
  "#": 0.2,
  "=": 0.3,
  "%": 0.3,
  ">": 0.1,
  "<": 0.1,
  "\\": 0,
  "@": 0.3,
  _: 0,
  "^": 0.2,
})

/** Equal but for two neighbours swapped. */
export function isSwap(a: string, b: string): boolean {
  return (
    a.length === b.length && isOneSlip(a, b) && [...a].sort().join("") === [...b].sort().join("")
  )
}

/** Equal but for one letter changed, left out, put in, or two neighbours swapped. */
export function isOneSlip(a: string, b: string): boolean {
  let from = 0
  while (from < a.length && from < b.length && a[from] === b[from]) from += 1
  let endA = a.length
  let endB = b.length
  while (endA > from && endB > from && a[endA - 1] === b[endB - 1]) {
    endA -= 1
    endB -= 1
  }
  const left = endA - from
  const right = endB - from
  if (left <= 1 && right <= 1) return true
  return left === 2 && right === 2 && a[from] === b[from + 1] && a[from + 1] === b[from]
}

/** "dcfp", "trbp": a post stitch named the other way round. */
export function postFirst(text: string): string | undefined {
  const parts = /^(?:sc|dc|hdc|tr|dtr|htr)(?:fp|bp)$/.test(text) ? text : undefined
  return parts && `${parts.slice(-2)}${parts.slice(0, -2)}`
}

/** Two single figures with a blank between them before a stitch, after words that no count belongs to. */
export function isParted(
  before: Token | undefined,
  a: Token,
  b: Token | undefined,
  c: Token | undefined,
  isName: (text: string) => boolean,
): boolean {
  if (a.type !== "number" || b?.type !== "number" || c?.type !== "word" || !isName(c.text))
    return false
  if (!/^\d$/.test(a.text) || !/^\d$/.test(b.text) || b.spaced === false || c.spaced === false)
    return false
  return !before || /^(?:[,;.*([]|work|make|crochet|and|ring|then)$/.test(before.text)
}

export function isBasicName(text: string): boolean {
  return /^(?:sc|hdc|dc|tr|dtr|htr)$/.test(text)
}

/** A figure passed over is dear: it counts something. */
export function numberCost(token: Token): number {
  return token.type === "number" ? 2.2 : token.type === "ordinal" ? 1.8 : 0.8
}

export function closeOf(tokens: readonly Token[], at: number): number {
  return tokens.findIndex(({ text }, k) => k > at && text === ")")
}

/** "(US = hdc)", "(= UK tr)" behind the name of a stitch: what it is called elsewhere. */
export function isOtherTerm(
  tokens: readonly Token[],
  at: number,
  isName: (text: string) => boolean,
): boolean {
  const close = closeOf(tokens, at)
  if (close < at + 3 || close > at + 6 || !isName(tokens[at - 1]?.text ?? "")) return false
  const inner = tokens.slice(at + 1, close).map(({ text }) => text)
  return (
    inner.some((text) => /^(?:us|uk|usa|american|british|english)$/.test(text)) &&
    inner.some((text) => isName(text) || isBasicName(text))
  )
}
