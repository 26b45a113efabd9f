// Labels of rounds: "Rnd 1:", "Round 2 -", "R3", "1st round.", "Rnds 4-6:", "Row 2:", with a remark in
// parentheses or a colour after it; numbered lines; ordinals that a scan has spoiled.

import type { Span } from "../base/tree.ts"

export interface RoundLabel extends Span {
  readonly from: number
  /** Last round of a range; equal to `from` for a single one. */
  readonly to: number
  /** "Row" rather than round. */
  readonly row: boolean
  /** Where the mark after its number ("Rnd 1:") begins. */
  readonly markAt: number
  /** True for "Every round" and the like, which name no round. */
  readonly unnumbered?: boolean
  /** The number cannot be read ("lith row"): it is that after the label before. */
  readonly inferred?: boolean
  /** The rounds it names where they do not follow on one another: "Rnds 4, 6 and 8". */
  readonly list?: readonly number[]
  /** A label only where it counts on from the one before. */
  readonly weak?: true
  /** Nothing labels the round: a paragraph is taken for it. */
  readonly unlabelled?: true
}

export type BareLabel = RoundLabel

const words =
  "one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|twenty"
const ordinals =
  "first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|eleventh|twelfth|thirteenth|fourteenth|fifteenth"
const wordList = words.split("|")
const ordinalList = ordinals.split("|")
const roman = "viii|vii|iii|iv|vi|ix|ii|xii|xi|x|v|i".split("|")
const romanValue: Readonly<Record<string, number>> = {
  i: 1,
  ii: 2,
  iii: 3,
  iv: 4,
  v: 5,
  vi: 6,
  vii: 7,
  viii: 8,
  ix: 9,
  x: 10,
  xi: 11,
  xii: 12,
}

const numbered = new RegExp(
  `(rounds?|rnds?|rds?|rows?|tier|r)(?![a-z])\\.?(?:[ \\t]\\((?:rnd|rd|r)\\.?s?\\))?(?:[ \\t]{0,4}|-(?=\\d{1,3}[ \\t:.)])|[ \\t]{1,2}:[ \\t]{0,2}(?=\\d{1,3}[ \\t]{0,3}[-:.)])|[ \\t]?\\n[ \\t]?(?=\\d{1,2}:))(?:no\\.?)?#?[ \\t]{0,4}(\\d{1,9}|(?:${words})(?![a-z])|(?:${roman.join("|")})(?![a-z]))(?:[ \\t]{0,3}(?:-|to|through|thru|and|&|,)[ \\t]{0,3}(?:r(?:ounds?|nds?|ows?)?\\.?[ \\t]{0,3})?(\\d{1,9}))?((?:[ \\t]{0,3}(?:,|&|,?[ \\t]and)[ \\t]{0,3}\\d{1,9}){0,9})`,
  "iy",
)
const ordinal = new RegExp(
  `(\\d{1,9}(?:st|nd|rd|th|d)|(?:${ordinals}))((?:[ \\t]{0,3}(?:-|to|,?[ \\t]?and|&|,)[ \\t]{0,3}\\d{1,9}(?:st|nd|rd|th|d)){0,9})(?:,?[ \\t](?:and|&)[ \\t]all[ \\t](?:succeeding|following|subsequent|other))?\\s{1,3}(rounds?|rnds?|rds?|rows?)\\.?`,
  "iy",
)
/** "1st colour: ..." in a text that changes colour with every round. */
const byColour = new RegExp(`(\\d{1,2}(?:st|nd|rd|th)|(?:${ordinals})) colou?r(?=\\s?[:-])`, "iy")
/** "2 round:", "1. row -", "3 circle:": the number first, as translations have it. */
const numberFirst =
  /(\d{1,3})(?:\.?[ \t](?:round|rnd|rd|row|lap|circle)|(?:-(\d{1,3}))?(?:st|nd|rd|th)?\.?[ \t](?:laps?|circles?|series))(?=[ \t]?[:.)-])/iy
/** "8th: Sl st ..." among rounds that are all told so. */
const ordinalOnly = /(\d{1,2})(?:st|nd|rd|th)(?=[ \t]?[:)-])/iy
const spoiled = /(?:\S{1,4}th|[il]st) (rows?|rnds?|rounds?)(?![a-z])\.?/iy
const every = /(?:every|each|all)\s{1,3}(?:rnds?|rounds?|rows?)/iy
const remark =
  /[ \t]{0,4}(?:and\s(?:all|every)\s(?:(?:other|following)\s)?(?:odd|even|alternate|uneven)?(?:[ -]numbered)?\s{0,2}(?:rounds?|rnds?|rows?)(?=\s{0,2}[:.-])|[a-z]+(?: [a-z]+)?(?=\s{0,2}:)|[-,][ \t]{0,3}[a-z]+(?: [a-z]+){0,2}(?=\s{0,2}:)|\([^()\n]{1,40}\)|,?[ \t]{0,3}(?:with|in|using|colou?r)\s[\w ]{1,20}?(?=\s{0,2}[:-]))/iy
const separator = /["']?[ \t]{0,4}(?:[:.,)\]+-]+["']?|(?=\s|$))/iy

/** "Rnds 1-3 = 2 in", "Rounds 1 to 4 measure 7 cm": the size of some rounds. */
const measures =
  /^(?:-\d{1,2})?[ \t]{0,3}(?:=|measures?\b)[ \t]{0,3}\d[\d. /\u00bc-\u00be]{0,6}(?:"|''|in\b|inch|cm\b|mm\b)/i

/** Circled figures 1 to 20, as in diagrams. */
const firstCircled = 0x2460
const lastCircled = 0x2473

/** "1) 6 sc in ring", "(2) 2 sc in each", "3- ch 5", a circled 3. */
export function bareLabelAt(text: string, at: number, line: boolean): BareLabel | null {
  const unit = text.charCodeAt(at)
  if (unit >= firstCircled && unit <= lastCircled) {
    const circled = unit - firstCircled + 1
    return { from: circled, to: circled, row: false, start: at, end: at + 1, markAt: at + 1 }
  }
  const plain = line ? plainNumberAt(text, at) : null
  if (plain) return plain
  const found = (
    line
      ? /^\(?(\d{1,3})(?:[ \t]?-[ \t]?(\d{1,3})(?=[ \t]?[.):]))?[ \t]?[.):-][ \t]{0,4}(?=\S)/
      : /^(\d{1,3})[.):-][ \t]{0,4}(?=[A-Za-z([*])/
  ).exec(text.slice(at, at + 18))
  if (!found) return null
  // "1-2 sts", "3.5 mm" are no labels.
  if (/\d/.test(text.charAt(at + found[0].length)) && !/[ \t]$/.test(found[0])) return null
  const from = Number(found[1])
  const to = Math.max(from, Number(found[2] ?? from))
  const end = at + found[0].length
  let markAt = end
  while (!/\d/.test(text.charAt(markAt - 1))) markAt -= 1
  return { from, to, row: false, start: at, end, markAt }
}

/** "3 Change colour, *sc in next sp, ch 2*": a line that begins with its number, and no mark behind it. */
function plainNumberAt(text: string, at: number): BareLabel | null {
  const found =
    /^(\d{1,2})[ \t]{1,4}(?=\*|ch[ \t]?\d|chain|change|join|with|using|in |into |sl |ss |work|make|turn|attach)/i.exec(
      text.slice(at, at + 18),
    )
  if (!found) return null
  const from = Number(found[1])
  const markAt = at + found[1]!.length
  return { from, to: from, row: false, start: at, end: at + found[0].length, markAt }
}

/** The label that starts at `at`, or null. `lineStart` tells that nothing stands before it on its line. */
export function labelAt(text: string, at: number, lineStart: boolean): RoundLabel | null {
  const found =
    numberedLabel(text, at) ??
    ordinalLabel(text, at) ??
    (lineStart ? plainNumber(text, at) : null) ??
    (lineStart ? colourLabel(text, at) : null) ??
    (lineStart ? everyLabel(text, at) : null) ??
    spoiledLabel(text, at)
  if (!found || measures.test(text.slice(found.end, found.end + 24))) return null
  remark.lastIndex = found.end
  const aside = remark.exec(text)
  let stop = found.end
  const inner = aside ? aside[0].trim() : ""
  if (aside && inner !== "" && !looksLikeTotalOrWork(inner)) stop += aside[0].length
  separator.lastIndex = stop
  const mark = separator.exec(text)
  const markAt = stop
  if (mark) stop += mark[0].length
  else if (!lineStart) return null
  return { ...found, start: at, end: stop, markAt }
}

function looksLikeTotalOrWork(remarkText: string): boolean {
  if (/\d/.test(remarkText) && remarkText.startsWith("(")) return true
  return /\b(?:sc|dc|hdc|htr|tr|dtr|ch|sps?|sts?|inc|dec|sl|each|next|loops?|ring)\b/i.test(
    remarkText,
  )
}

interface Numbered extends Span {
  readonly from: number
  readonly to: number
  readonly row: boolean
  readonly list?: readonly number[]
  readonly unnumbered?: boolean
  readonly inferred?: boolean
  readonly weak?: true
}

function numberedLabel(text: string, at: number): Numbered | null {
  numbered.lastIndex = at
  const found = numbered.exec(text)
  if (!found) return null
  const unit = (found[1] ?? "").toLowerCase()
  const said = (found[2] ?? "").toLowerCase()
  // "R i" is no label.
  if (unit === "r" && romanValue[said] !== undefined) return null
  const from = romanValue[said] ?? numberOf(said, wordList)
  const row = unit.startsWith("row")
  const end = at + found[0].length
  const several = unit.endsWith("s") || found[3] === undefined
  if (!several && !/^[ \t]{0,4}(?:[:.)\](-]|$|\n)/.test(text.slice(end, end + 5))) {
    // "Rnd 1 - 8 sc": a dash after the label, not a range.
    const alone = /\d|[a-z]$/i.test(found[0])
      ? found[0].indexOf(found[2]!) + found[2]!.length
      : found[0].length
    return { from, to: from, row, start: at, end: at + alone }
  }
  const named = found[0].slice(found[0].indexOf(found[2]!) + found[2]!.length)
  return { ...roundsNamed(from, named), row, start: at, end }
}

/** What is named behind a first number: "-6", ", 7 and 9th", "to 8". */
function roundsNamed(from: number, rest: string): Pick<Numbered, "from" | "to" | "list"> {
  const others = (rest.match(/\d+/g) ?? []).map(Number)
  const to = Math.max(from, ...others)
  const numbers = [from, ...others]
  const rises = numbers.every((number, i) => i === 0 || number > numbers[i - 1]!)
  const isRange = /-|\b(?:to|through|thru)\b/i.test(rest) || to - from === others.length
  return { from, to, ...(rises && !isRange ? { list: numbers } : {}) }
}

function ordinalLabel(text: string, at: number): Numbered | null {
  ordinal.lastIndex = at
  const found = ordinal.exec(text)
  // "4th roundWorking behind": only a small letter goes on the word.
  if (!found || /\p{Ll}/u.test(text.charAt(at + found[0].length))) return null
  const said = found[1] ?? ""
  const digits = /^\d+/.exec(said)?.[0]
  const from = digits === undefined ? numberOf(said, ordinalList) : Number(digits)
  const row = (found[3] ?? "").toLowerCase().startsWith("row")
  return { ...roundsNamed(from, found[2] ?? ""), row, start: at, end: at + found[0].length }
}

function plainNumber(text: string, at: number): Numbered | null {
  numberFirst.lastIndex = at
  ordinalOnly.lastIndex = at
  const first = numberFirst.exec(text)
  const found = first ?? ordinalOnly.exec(text)
  if (!found) return null
  const from = Number(found[1])
  const to = first?.[2] === undefined ? from : Math.max(from, Number(first[2]))
  const label = { from, to, row: /row/i.test(found[0]), start: at, end: at + found[0].length }
  return first ? label : { ...label, weak: true }
}

function colourLabel(text: string, at: number): Numbered | null {
  byColour.lastIndex = at
  const found = byColour.exec(text)
  if (!found) return null
  const digits = /^\d+/.exec(found[1]!)?.[0]
  const from = digits === undefined ? numberOf(found[1]!, ordinalList) : Number(digits)
  return { from, to: from, row: false, start: at, end: at + found[0].length }
}

/** "lith row", "%th row": a scan has spoiled the number. */
function spoiledLabel(text: string, at: number): Numbered | null {
  spoiled.lastIndex = at
  const found = spoiled.exec(text)
  if (!found || /^(?:with|both|four|six|fif|ten|nin)th/i.test(found[0])) return null
  if (/^[il]st/i.test(found[0]))
    return {
      from: 1,
      to: 1,
      row: /row/i.test(found[1] ?? ""),
      start: at,
      end: at + found[0].length,
    }
  return {
    from: 0,
    to: 0,
    row: /row/i.test(found[1] ?? ""),
    inferred: true,
    start: at,
    end: at + found[0].length,
  }
}

function everyLabel(text: string, at: number): Numbered | null {
  every.lastIndex = at
  const found = every.exec(text)
  if (!found) return null
  return { from: 0, to: 0, row: false, unnumbered: true, start: at, end: at + found[0].length }
}

/** "4", "four", null for any other word. */
export function countOf(word: string): number | null {
  return numberOf(word, wordList) || null
}

function numberOf(word: string, list: readonly string[]): number {
  const value = Number(word)
  return Number.isFinite(value) && word !== "" ? value : list.indexOf(word.toLowerCase()) + 1
}
