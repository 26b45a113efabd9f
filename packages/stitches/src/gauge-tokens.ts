// Cuts a gauge line into what it is made of: counts of stitches and rows, lengths, and words.
// Offsets are kept so that a problem can point at its place.

import type { StitchKind, Terms } from "./kinds.ts"
import { numberPattern, readNumber } from "./read-number.ts"
import { readStitchName } from "./read-stitch-name.ts"

interface Spot {
  readonly start: number
  readonly end: number
}

export type GaugeToken = Spot &
  (
    | { readonly type: "stitches"; readonly count: number; readonly kind: StitchKind | undefined }
    | { readonly type: "rows"; readonly count: number; readonly round: boolean }
    | {
        readonly type: "length"
        readonly value: number
        /** mm in one of its unit. */
        readonly mmEach: number
        readonly unit: "metric" | "inch"
      }
    | { readonly type: "direction"; readonly across: boolean }
    | { readonly type: "kind"; readonly kind: StitchKind }
    | { readonly type: "manner"; readonly worked: "rows" | "rounds" }
    | { readonly type: "number"; readonly value: number }
    | { readonly type: "range"; readonly least: number; readonly most: number }
    | { readonly type: "by" }
    | { readonly type: "break" }
    | { readonly type: "filler" }
    | { readonly type: "unknown" }
  )

/** Every piece of the line in order. Terms decide which stitch `dc` and `tr` are. */
export function cutGaugeLine(text: string, terms: Terms): GaugeToken[] {
  const tokens: GaugeToken[] = []
  let at = 0
  while (at < text.length) {
    const space = /^[\s\u00a0]+/.exec(text.slice(at))
    if (space !== null) {
      at += space[0].length
      continue
    }
    const token =
      readNumberAt(text, at) ??
      readUnitAt(text, at, tokens) ??
      readSignAt(text, at) ??
      readWordAt(text, at, terms, tokens)
    // A unit or a stitch's name swallows the number before it.
    while (tokens.length > 0 && tokens.at(-1)!.start >= token.start) tokens.pop()
    tokens.push(token)
    at = token.end
  }
  return tokens
}

const numberAt = new RegExp(`^${numberPattern}`)
const rangeAt = /^(\d{1,4})\s?[-–]\s?(\d{1,4})(?![\d/⁄.])/

function readNumberAt(text: string, at: number): GaugeToken | undefined {
  const rest = text.slice(at)
  const range = rangeAt.exec(rest)
  if (range !== null) {
    const [least, most] = [Number(range[1]), Number(range[2])]
    if (least < most) return { type: "range", least, most, start: at, end: at + range[0].length }
  }
  const match = numberAt.exec(rest)
  if (match === null) return undefined
  const value = readNumber(match[0])
  const spot = { start: at, end: at + match[0].length }
  return value === undefined ? { type: "unknown", ...spot } : { type: "number", value, ...spot }
}

/** mm in each unit, by spelling. */
const units: readonly (readonly [RegExp, number, "metric" | "inch"])[] = [
  [/^(?:mm|millimet(?:re|er)s?)(?![\p{L}\d])\.?/iu, 1, "metric"],
  [/^(?:cms?|centimet(?:re|er)s?)(?![\p{L}\d])\.?/iu, 10, "metric"],
  [/^(?:inch(?:es)?|ins?)(?![\p{L}\d])\.?/iu, 25.4, "inch"],
  [/^(?:''|’’|″|”|“|"|&quot;)/u, 25.4, "inch"],
]

/** A unit makes a length with the number before it ("4 in"), or alone after per ("per inch"). */
function readUnitAt(
  text: string,
  at: number,
  before: readonly GaugeToken[],
): GaugeToken | undefined {
  const last = before.at(-1)
  const rest = text.slice(at)
  for (const [pattern, mmEach, unit] of units) {
    const match = pattern.exec(rest)
    if (match === null) continue
    const end = at + match[0].length
    const hyphenated = last?.type === "unknown" && text.slice(last.start, last.end) === "-"
    const number = hyphenated ? before.at(-2) : last
    if (number?.type === "number") {
      return { type: "length", value: number.value, mmEach, unit, start: number.start, end }
    }
    if (isPer(text, last)) return { type: "length", value: 1, mmEach, unit, start: at, end }
  }
  return undefined
}

function isPer(text: string, token: GaugeToken | undefined): boolean {
  if (token?.type !== "filler") return false
  return /^(?:per|to the|each|an|one|a|the)$/i.test(text.slice(token.start, token.end))
}

function readSignAt(text: string, at: number): GaugeToken | undefined {
  const character = text[at]!
  const spot = { start: at, end: at + 1 }
  if (/[×*]/.test(character)) return { type: "by", ...spot }
  if (/[;\n]/.test(character)) return { type: "break", ...spot }
  if (/[=:,.()[\]/&~≈]/.test(character)) return { type: "filler", ...spot }
  return /[\p{L}]/u.test(character) ? undefined : { type: "unknown", ...spot }
}

const fillers =
  /^(?:and|or|to|over|per|measures?|measuring|equals?|is|are|make|makes|gives?|about|approx|approximately|square|sq|in|of|with|a|an|the|each|gauge|tension|using|worked|working|both|one|pattern|plain|after|blocking|blocked|stitch|swatch|across|size|on|for|at|side|as|piece|should|be|your|my|by)$/i
const acrossWords = /^(?:wide|width|wd)$/i
const upWords = /^(?:high|height|tall|deep|long)$/i

const wordAt = /^\p{L}[\p{L}\d]*/u
/** Stitch names run to this many words: "half double crochet", "front post double crochet". */
const longestNameWords = 6

function readWordAt(
  text: string,
  at: number,
  terms: Terms,
  before: readonly GaugeToken[],
): GaugeToken {
  const rest = text.slice(at)
  const word = wordAt.exec(rest)![0]
  const spot = { start: at, end: at + word.length }
  const last = before.at(-1)
  const count =
    last?.type === "number"
      ? last.value
      : last?.type === "range"
        ? (last.least + last.most) / 2
        : undefined
  if (/^x$/i.test(word)) return { type: "by", ...spot }
  if (/^hooks?$/i.test(word) && (last?.type === "length" || last?.type === "number")) {
    // "with a 5 mm hook", "size 7 hook": that is no part of the gauge.
    return { type: "filler", start: last.start, end: spot.end }
  }
  const manner =
    /^(?:(?:worked )?in(?: the)? (rounds?|rnds?|rows?))(?!\p{L})|^(?:worked )?(flat)(?!\p{L})/iu.exec(
      rest,
    )
  if (manner !== null) {
    const rounds = /^r(?:ou)?nd/i.test(manner[1] ?? "")
    return {
      type: "manner",
      worked: rounds ? "rounds" : "rows",
      start: at,
      end: at + manner[0].length,
    }
  }
  if (/^(?:rows?|rnds?|rounds?)$/i.test(word) && count !== undefined) {
    const round = !/^row/i.test(word)
    return { type: "rows", count, round, start: last!.start, end: spot.end }
  }
  const named = readKindAt(rest, terms)
  if (named !== undefined) {
    const end = at + named.length
    if (count === undefined) return { type: "kind", kind: named.kind, start: at, end }
    return { type: "stitches", count, kind: named.kind, start: last!.start, end }
  }
  if (/^(?:sts?|stitches|stitch)$/i.test(word) && count !== undefined) {
    return { type: "stitches", count, kind: undefined, start: last!.start, end: spot.end }
  }
  if (acrossWords.test(word)) return { type: "direction", across: true, ...spot }
  if (upWords.test(word)) return { type: "direction", across: false, ...spot }
  return { type: fillers.test(word) ? "filler" : "unknown", ...spot }
}

/** The longest run of words from here that is one stitch's name; stops and hyphens may stand inside. */
function readKindAt(rest: string, terms: Terms): { kind: StitchKind; length: number } | undefined {
  let length = 0
  let best: { kind: StitchKind; length: number } | undefined
  for (let words = 0; words < longestNameWords; words++) {
    const next = /^[ \u00a0.-]{0,2}\p{L}[\p{L}\d]*\.?/u.exec(rest.slice(length))
    if (next === null) break
    length += next[0].length
    const kind = readStitchName(rest.slice(0, length), terms)
    if (kind !== undefined) best = { kind, length }
  }
  return best
}
