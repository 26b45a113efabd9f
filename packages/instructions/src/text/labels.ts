// Labels of rounds: "Rnd 1:", "Round 2 -", "R3", "1st round.", "Rnds 4-6:", "Row 2:", with a colour
// before or after, or a remark in parentheses.

import type { Span } from "../base/tree.ts"

export interface RoundLabel extends Span {
  readonly from: number
  /** Last round of a range; equal to `from` for a single one. */
  readonly to: number
  /** "Row" rather than round. */
  readonly row: boolean
  /** True for "Every round" and the like, which name no round. */
  readonly unnumbered?: boolean
}

const words =
  "one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|twenty"
const ordinals =
  "first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|eleventh|twelfth|thirteenth|fourteenth|fifteenth"
const wordList = words.split("|")
const ordinalList = ordinals.split("|")

const numbered = new RegExp(
  `(rounds?|rnds?|rds?|rows?|r)(?![a-z])\\.?\\s*#?\\s*(\\d{1,9}|(?:${words})(?![a-z]))(?:\\s*(?:-|to|through|thru|and|&|,)\\s*(?:r(?:ounds?|nds?|ows?)?\\.?\\s*)?(\\d{1,9}))?(?:\\s*,\\s*\\d{1,9})*`,
  "iy",
)
const ordinal = new RegExp(
  `(\\d{1,9}(?:st|nd|rd|th|d)|(?:${ordinals}))(?:\\s*(?:-|to|and|&)\\s*(\\d{1,9})(?:st|nd|rd|th))?\\s+(rounds?|rnds?|rds?|rows?)(?![a-z])\\.?`,
  "iy",
)
const every = /(?:every|each|all)\s+(?:rnds?|rounds?|rows?)/iy
const colourBefore = /[a-z][a-z ]{1,24}\s*[-:,]\s*(?=r(?:ound|nd|ow|d)s?\b)/iy
const remark =
  /\s*(?:and\s+(?:all|every)\s+(?:(?:other|following)\s+)?(?:odd|even|alternate|uneven)?(?:[ -]numbered)?\s*(?:rounds?|rnds?|rows?)(?=\s*[:.-])|[a-z]+(?: [a-z]+)?(?=\s*:)|[-,]\s*[a-z]+(?: [a-z]+){0,2}(?=\s*:)|\([^()\n]{1,40}\)|,?\s*(?:with|in|using|colou?r)\s+[\w ]{1,20}?(?=\s*[:-]))?/iy
const separator = /["']?\s*(?:[:.,)\]-]+["']?|(?=\s|$))/iy
const closing = /\s*(?::|-\s|\.\s|\)\s)/iy
/** "2nd row-2 d c into each", "3d round, 2 single in each": after an ordinal a mark is enough. */
const closingOrdinal = /\s*[-,:.]/iy

/** Circled figures 1 to 20, as in diagrams. */
const firstCircled = 0x2460
const lastCircled = 0x2473

/** "1) 6 sc in ring", "(2) 2 sc in each", a circled 3: a numbered line, where a text labels its rounds in no other way. */
export function matchBareNumber(text: string, at: number, end: number): RoundLabel | null {
  const unit = text.charCodeAt(at)
  if (unit >= firstCircled && unit <= lastCircled) {
    const circled = unit - firstCircled + 1
    return { from: circled, to: circled, row: false, start: at, end: at + 1 }
  }
  const found = /^\(?(\d{1,3})\s*[.):]\s+(?=\S)/.exec(text.slice(at, Math.min(end, at + 12)))
  if (!found) return null
  const from = Number(found[1])
  return { from, to: from, row: false, start: at, end: at + found[0].length }
}

/** The label that starts at `at`, or null. `lineStart` tells that nothing stands before it. */
export function matchLabel(
  text: string,
  at: number,
  end: number,
  lineStart: boolean,
): RoundLabel | null {
  let start = at
  if (lineStart) {
    // A label set in quotation marks.
    while (/["']/.test(text.charAt(start)) && start < end) start += 1
    colourBefore.lastIndex = start
    const colour = colourBefore.exec(text)
    if (colour && start + colour[0].length < end) start += colour[0].length
  }
  const found =
    numberedLabel(text, start) ??
    ordinalLabel(text, start) ??
    (lineStart ? everyLabel(text, start) : null)
  if (!found || found.end > end) return null
  remark.lastIndex = found.end
  const aside = remark.exec(text)
  let stop = found.end
  const inner = aside ? aside[0].trim() : ""
  if (aside && inner !== "" && !looksLikeTotalOrWork(inner)) stop += aside[0].length
  if (!lineStart) {
    const ends =
      /^\d*[a-z]+\s/i.test(text.slice(at, at + 12)) && !/^r/i.test(text.slice(at, at + 1))
    const end = ends ? closingOrdinal : closing
    end.lastIndex = stop
    if (!end.test(text)) return null
  }
  separator.lastIndex = stop
  const mark = separator.exec(text)
  if (mark) stop += mark[0].length
  else if (!lineStart) return null
  return { ...found, start: at, end: Math.min(stop, end) }
}

function looksLikeTotalOrWork(remarkText: string): boolean {
  if (/\d/.test(remarkText) && remarkText.startsWith("(")) return true
  return /\b(?:sc|dc|hdc|htr|tr|dtr|ch|sps?|sts?|inc|dec|sl|each|next|loops?|ring)\b/i.test(
    remarkText,
  )
}

function numberedLabel(text: string, at: number) {
  numbered.lastIndex = at
  const found = numbered.exec(text)
  if (!found) return null
  const unit = (found[1] ?? "").toLowerCase()
  const from = numberOf(found[2] ?? "", wordList)
  const row = unit.startsWith("row")
  const end = at + found[0].length
  const several = unit.endsWith("s") || found[3] === undefined
  if (!several && !/^\s*(?:[:.)\](-]|$)/.test(text.slice(end, end + 4))) {
    // "Rnd 1 - 8 sc": a dash after the label, not a range.
    const alone = new RegExp(
      `^${escaped(found[1] ?? "")}\\.?\\s*#?\\s*${escaped(found[2] ?? "")}`,
      "i",
    ).exec(found[0])
    return { from, to: from, row, start: at, end: at + (alone?.[0].length ?? found[0].length) }
  }
  const to = found[3] === undefined ? from : Number(found[3])
  return { from, to: Math.max(to, from), row, start: at, end }
}

function escaped(text: string): string {
  return text.replace(/[^a-z0-9]/gi, "\\$&")
}

function ordinalLabel(text: string, at: number) {
  ordinal.lastIndex = at
  const found = ordinal.exec(text)
  if (!found) return null
  const from = numberOf(
    (found[1] ?? "").replace(/(st|nd|rd|th|d)$/i, (_, s: string) =>
      /^\d/.test(found[1] ?? "") ? "" : s,
    ),
    ordinalList,
  )
  const to = found[2] === undefined ? from : Number(found[2])
  const row = (found[3] ?? "").toLowerCase().startsWith("row")
  return { from, to: Math.max(to, from), row, start: at, end: at + found[0].length }
}

function everyLabel(text: string, at: number) {
  every.lastIndex = at
  const found = every.exec(text)
  if (!found) return null
  return { from: 0, to: 0, row: false, unnumbered: true, start: at, end: at + found[0].length }
}

function numberOf(word: string, list: readonly string[]): number {
  const value = Number(word)
  return Number.isFinite(value) && word !== "" ? value : list.indexOf(word.toLowerCase()) + 1
}
