// The text under edit: what the reader makes of it, its rounds with their words, its headings, and how far the reader
// is sure. Where it is not, a finding is asked and not told: rounds behind words it passed over or a count it assumed.

import {
  type PatternReading,
  type Problem,
  type RoundReading,
  readPattern,
} from "@roundwright/instructions"
import type { Round } from "@roundwright/motif"
import type { Terms } from "@roundwright/stitches"
import { Lines } from "./lines.ts"
import { type Section, type SectionName, sectionsOf } from "./sections.ts"

export interface ManuscriptRound {
  readonly index: number
  readonly number: number
  readonly reading: RoundReading
  /** What the round makes; null where it could not be worked. */
  readonly round: Round | null
  /** Offsets of the whole, label included, and of the words behind the label. */
  readonly start: number
  readonly bodyStart: number
  readonly end: number
  readonly label: string
  readonly body: string
}

export interface Manuscript {
  readonly text: string
  readonly lines: Lines
  readonly reading: PatternReading
  readonly rounds: readonly ManuscriptRound[]
  readonly sections: readonly Section[]
  /** What stands before the first round. */
  readonly front: string
  /** What stands behind the words of the last round. */
  readonly problems: readonly Problem[]
}

/** "Rnd 3:", "Round 3 (right side) -", "R3.", "3rd rnd:". */
const labelled =
  /^[\s>•*_#-]{0,12}(?:(?:rnds?|rounds?|rows?|r)\b\.?\s{0,3}\d{1,3}(?:\s{0,2}[-–&]\s{0,2}\d{1,3})?|\d{1,3}(?:st|nd|rd|th)\s{0,3}(?:rnd|round|row))\b[^\S\n]{0,3}(?:\([^)\n]{0,30}\))?[\s*_]{0,4}[:.)–-]{0,2}[*_]{0,3}\s{0,3}/i

export function readManuscript(text: string): Manuscript {
  const plain = withTotalsInBrackets(text)
  const read = readPattern(plain)
  const terms = statedTerms(text, read)
  const reading =
    terms === null || (terms === read.terms && read.termsFrom === "stated")
      ? read
      : readPattern(plain, { terms })
  const lines = new Lines(text)
  const rounds = reading.rounds.map((round, index): ManuscriptRound => {
    const whole = text.slice(round.start, round.end).trimEnd()
    const label = labelled.exec(whole)?.[0] ?? ""
    const bodyStart = round.start + label.length
    const end = round.start + whole.length
    return {
      index,
      number: round.number,
      reading: round,
      round: workOf(reading, round, index),
      start: round.start,
      bodyStart,
      end,
      label,
      body: text.slice(bodyStart, end),
    }
  })
  const inRound = (offset: number) =>
    rounds.some(({ start, end }) => offset >= start && offset < end)
  return {
    text,
    lines,
    reading,
    rounds,
    sections: sectionsOf(lines, inRound),
    front: text.slice(0, rounds[0]?.start ?? text.length),
    problems: reading.problems,
  }
}

/** What a round makes. A foundation that is numbered like a round is none of the motif's, which then lags behind by one. */
function workOf({ motif }: PatternReading, { number }: RoundReading, index: number): Round | null {
  const own = motif.rounds[index]
  if (own?.number === number) return own
  const same = motif.rounds.filter((round) => round.number === number)
  return same.length === 1 && index > 0 ? same[0]! : null
}

export function sectionOf({ sections }: Manuscript, ...names: SectionName[]): Section | undefined {
  return sections.find(({ name }) => names.includes(name))
}

export function roundNumbered(
  { rounds }: Manuscript,
  number: number | null,
): ManuscriptRound | undefined {
  return number === null ? undefined : rounds.find((round) => round.number === number)
}

/** What the reader tells when it could not take the words as they stand. */
const unsure: ReadonlySet<string> = new Set([
  "words-passed-over",
  "figure-passed-over",
  "read-with-gap",
  "two-readings",
  "stands-on-doubt",
  "left-to-maker",
  "growth-implied",
  "growth-not-placed",
  "corner-not-said",
  "closing-chain-assumed",
  "second-piece",
  "rounds-by-paragraph",
  "round-without-label",
  "worked-along-chain",
  "terms-may-be-uk",
  "too-many-steps",
  "reading-chosen",
  "other-way",
])

/** Whether everything that a finding in this round rests on was understood: its own words and those of all rounds before. */
export function isSure(manuscript: Manuscript, number: number | null): boolean {
  const last =
    number === null
      ? manuscript.rounds.length - 1
      : manuscript.rounds.findIndex((round) => round.number === number)
  const upTo = manuscript.rounds.slice(0, last + 1)
  if (upTo.some(({ reading }) => reading.assumed || reading.counted === null)) return false
  const numbers = new Set(upTo.map((round) => round.number))
  return !manuscript.problems.some(
    ({ code, round, severity }) =>
      unsure.has(code) &&
      (severity !== "note" || code !== "words-passed-over") &&
      (round === null ? code === "terms-may-be-uk" && severity === "warning" : numbers.has(round)),
  )
}

/** Share of the other rounds whose stated total the reader meets, from which on the text is one it reads as it is meant. */
const borneOut = 0.6

/**
 * Whether the reader may be trusted in this round: sure of its words, and borne out by the totals of the other rounds. In a
 * text that states few totals nothing tells a slip of the maker from a turn of phrase that was misread.
 */
export function isBorneOut(manuscript: Manuscript, number: number | null): boolean {
  const others = manuscript.rounds.filter((round) => round.number !== number)
  const met = others.filter(({ reading }) => reading.agrees === true && !reading.assumed)
  return isSure(manuscript, number) && met.length > 0 && met.length >= borneOut * others.length
}

const behindDash =
  /(?<=[.;][ \t])[-–—] (\d{1,4} (?:sts?|stitches|ch|sc|hdc|htr|dc|tr|dtr|trtr|sps?)\b[^.()[\]\n\r]{0,60}?)(?=\.?[ \t]*$)/gm

/** "... join. – 24 dc" as "... join. (24 dc)", which is as long: behind a dash the words could be work. */
export function withTotalsInBrackets(text: string): string {
  return text.replace(behindDash, "($1)")
}

const statement =
  /^[\s>*_#-]{0,8}(?:terms?|terminology|crochet terms)[*_]{0,3}\s{0,3}:[*_\s]{0,4}(US|UK|American|British)\b(?!\s{0,3}(?:and|or|\/|&))/im

/**
 * The terms that a line of its own states, unless the rounds speak against it: where half of them use names that only the
 * other terms have, the line is the slip.
 */
function statedTerms(text: string, { rounds }: PatternReading): Terms | null {
  const front = text.slice(0, rounds[0]?.start ?? text.length)
  const word = statement.exec(front)?.[1] ?? onlyNamed(front)
  if (word === undefined) return null
  const terms: Terms = /^(?:US|American)$/i.test(word) ? "US" : "UK"
  const against = rounds.filter(({ start, end }) =>
    foreignNames[terms].test(text.slice(start, end)),
  )
  return 2 * against.length < rounds.length ? terms : null
}

const inWords =
  /\b(US|UK|American|British)(?:\s+(?:english|crochet|pattern|stitch))?\s+term(?:s|inology)\b(?!\s*(?:in (?:brackets|paren)|are (?:in|given)|below|\)))/gi

/** "... a 4 mm hook. UK terms!", where no other terms are spoken of. */
function onlyNamed(front: string): string | undefined {
  const named = [...front.matchAll(inWords)].map((match) => match[1]!)
  const sides = new Set(named.map((word) => /^(?:US|American)$/i.test(word)))
  return sides.size === 1 && !/\bconver(?:t|sion)|\bequivalent/i.test(front) ? named[0] : undefined
}

const foreignNames: Readonly<Record<Terms, RegExp>> = {
  US: /\b\d{0,2}(?:htr|half[ -]treble)\b/i,
  UK: /\b\d{0,2}(?:sc|hdc|single crochet|half double)\b/i,
}
