// The text as it was given and the same text made plain: typographic quotes, dashes, spaces and
// multiplication signs become their plain forms, one unit for one, so that offsets stay the same.

import type { Place } from "@roundwright/numerics"
import { table } from "../base/table.ts"
import { isInvisible, withoutInvisible } from "./invisible.ts"

export interface SourceText {
  readonly original: string
  /** Same length as `original`. */
  readonly plain: string
  /** Offset of the start of each line. */
  readonly lineStarts: readonly number[]
  /** Where each unit of `plain` stands in `original`, where invisible characters inside words moved any. */
  readonly origins: Int32Array | null
}

const plainForms: Readonly<Record<string, string>> = {
  "\u2018": "'",
  "\u2019": "'",
  "\u201a": "'",
  "\u2032": "'",
  "\u201c": '"',
  "\u201d": '"',
  "\u201e": '"',
  "\u2033": '"',
  "\u2010": "-",
  "\u2011": "-",
  "\u2012": "-",
  "\u2013": "-",
  "\u2014": "-",
  "\u2015": "-",
  "\u2212": "-",
  "\u00a0": " ",
  "\u2007": " ",
  "\u2009": " ",
  "\u202f": " ",
  "\t": " ",
  "\u00d7": "x",
  "\u2217": "*",
  "\u2731": "*",
  "\u2605": "*",
  "\u2606": "*",
  "\u2022": "-",
  "\u00b7": "-",
  "\u2026": ".",
  "\u00b4": "'",
  "~": "-",
  "\u2192": "-",
  "\uff0a": "*",
  "\uff08": "(",
  "\uff09": ")",
  "\uff1a": ":",
  "\uff0c": ",",
  "\uff1b": ";",
  "\uff0e": ".",
  "\u00ab": '"',
  "\u00bb": '"',
  "\u2039": '"',
  "\u203a": '"',
  "\u201f": '"',
}

/** Characters that saved web pages write as names; others by number. */
const entities: Readonly<Record<string, string>> = table({
  nbsp: " ",
  ensp: " ",
  emsp: " ",
  thinsp: " ",
  amp: "&",
  quot: '"',
  apos: "'",
  lsquo: "'",
  rsquo: "'",
  ldquo: '"',
  rdquo: '"',
  ndash: "-",
  mdash: "-",
  minus: "-",
  shy: "\u00ad",
  zwj: "\u200d",
  zwnj: "\u200c",
  times: "x",
  hellip: ".",
  bull: "-",
  middot: "-",
  ast: "*",
  dagger: "\u2020",
  Dagger: "\u2021",
  frac12: "\u00bd",
  frac14: "\u00bc",
  frac34: "\u00be",
  lt: "<",
  gt: ">",
})

/** The character an entity stands for and blanks after it, so that it takes up as much room. */
function plainEntity(found: string, name: string): string {
  let plain = entities[name]
  if (name.startsWith("#")) {
    const code = /^#x/i.test(name) ? Number.parseInt(name.slice(2), 16) : Number(name.slice(1))
    const character =
      code >= 32 && !(code >= 0xd800 && code < 0xe000) ? String.fromCharCode(code) : " "
    plain = plainForms[character] ?? character
  }
  return plain === undefined ? found : plain.padEnd(found.length, isInvisible(plain) ? plain : " ")
}

const toReplace = new RegExp(`[${Object.keys(plainForms).join("")}]`, "g")

/** Little pictures say nothing of the work. */
const pictures = /\p{Extended_Pictographic}/gu

export function readSource(original: string): SourceText {
  const named = original.replace(/&(#\d{1,5}|#x[\da-f]{1,4}|[a-z]{2,6}\d{0,2});/gi, plainEntity)
  const { text, origins } = withoutInvisible(named)
  const plain = text
    .replace(toReplace, (found) => plainForms[found] ?? found)
    .replace(pictures, (found) => " ".repeat(found.length))
    .replace(/(?<=[a-z])\(s\)/g, "   ")
  const lineStarts = [0]
  for (let i = 0; i < plain.length; i++) {
    const unit = plain.charCodeAt(i)
    if (unit === 10) lineStarts.push(i + 1)
    else if (unit === 13 && plain.charCodeAt(i + 1) !== 10) lineStarts.push(i + 1)
  }
  return { original, plain, lineStarts, origins }
}

/** Line and column from 1 of a stretch of text; its length is cut at the end of its first line. */
export function placeOf(source: SourceText, start: number, end: number): Place {
  const from = Math.max(0, Math.min(start, source.plain.length))
  const line = lineAt(source, from)
  const lineStart = source.lineStarts[line - 1] ?? 0
  const lineEnd = endOfLine(source, line)
  const to = Math.max(from, Math.min(end, lineEnd))
  const [first, last] = inOriginal(source, from, to)
  return { line, column: first - lineStart + 1, length: last - first }
}

/** Start and end, in the text as it was given, of a stretch of the plain one. */
export function inOriginal({ origins }: SourceText, start: number, end: number): [number, number] {
  if (!origins) return [start, end]
  const first = origins[start] ?? start
  return [first, end > start ? (origins[end - 1] ?? end - 1) + 1 : first]
}

/** Line from 1 that holds an offset. */
export function lineAt(source: SourceText, offset: number): number {
  let low = 0
  let high = source.lineStarts.length - 1
  while (low < high) {
    const middle = (low + high + 1) >> 1
    if ((source.lineStarts[middle] ?? 0) <= offset) low = middle
    else high = middle - 1
  }
  return low + 1
}

/** Offset just after the last unit of a line, its line break left out. */
export function endOfLine(source: SourceText, line: number): number {
  const next = source.lineStarts[line]
  if (next === undefined) return source.plain.length
  const start = source.lineStarts[line - 1] ?? 0
  let end = next
  while (end > start && /[\r\n]/.test(source.plain.charAt(end - 1))) end -= 1
  return end
}
