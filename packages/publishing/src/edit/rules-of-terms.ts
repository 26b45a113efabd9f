// US and UK words in one pattern. A stitch that only the other terms have must be mended; a word such as "miss" or
// "tension" is asked about.

import {
  basicName,
  fullKindName,
  readStitchName,
  type Terms,
  ukOnlyWords,
  usOnlyWords,
} from "@roundwright/stitches"
import type { Remark } from "./finding.ts"
import type { Manuscript } from "./manuscript.ts"

/** Words of one side for the other's: "sk" is written in both, "yoh" only in the UK. */
const words: Readonly<Record<Terms, Readonly<Record<string, string>>>> = {
  US: { gauge: "tension", skip: "miss" },
  UK: { miss: "skip", missing: "skipping", tension: "gauge", yoh: "yo" },
}

/** What only the other terms have, longest first. */
function foreignTo(terms: Terms): RegExp {
  const list = terms === "US" ? [...ukOnlyWords, "missing"] : usOnlyWords
  const spelled = [...list]
    .sort((a, b) => b.length - a.length)
    .map((word) => word.replace(/ /g, "[ -]"))
  return new RegExp(`\\b(?:\\d?)(${spelled.join("|")})\\b(?!\\s*=)`, "gi")
}

const foreign: Readonly<Record<Terms, RegExp>> = { US: foreignTo("US"), UK: foreignTo("UK") }

export function mixedTerms({ rounds, reading, text, front }: Manuscript): Remark[] {
  const { terms } = reading
  const other: Terms = terms === "US" ? "UK" : "US"
  const stated = reading.termsFrom === "stated"
  if (!stated && !usesNamesOf(terms, rounds.map(({ body }) => body).join("\n"))) return []
  const remarks: Remark[] = []
  for (const round of [null, ...rounds]) {
    const where = round ? round.body : front
    const from = round ? round.bodyStart : 0
    for (const match of where.matchAll(foreign[terms])) {
      const word = match[1]!
      const start = from + match.index + match[0].length - word.length
      const stitch = stitchOf(word, other)
      if (isGloss(where, match.index, word.length)) continue
      // Above the rounds a list may give both names, and "skip" and "gauge" are written everywhere.
      if (round === null && (stitch || !/^tension$/i.test(word))) continue
      if (terms === "UK" && !stitch) continue
      const own = stitch
        ? ownName(word, other, terms)
        : inCaseOf(word, words[other][word.toLowerCase()])
      remarks.push({
        severity: stitch && stated ? "must-mend" : "query",
        code: "terms-mixed",
        round: round?.number ?? null,
        start,
        end: start + word.length,
        message: stitch
          ? `"${word}" is a ${other} name in a pattern in ${terms} terms${own ? `; in ${terms} terms the stitch is ${own}` : ""}.`
          : `"${text.slice(start, start + word.length)}" is the ${other} word in a pattern in ${terms} terms${own ? `; ${terms} patterns say "${own}"` : ""}.`,
        ...(own ? { wording: own, ...(stated ? { sure: true as const } : {}) } : {}),
      })
    }
  }
  return remarks
}

/** "dc (US sc)", "dc = sc (US)": the other name beside the pattern's own, so that readers of both know. */
function isGloss(where: string, at: number, length: number): boolean {
  const before = where.slice(Math.max(0, at - 16), at)
  const after = where.slice(at + length, at + length + 16)
  return (
    /(?:\b(?:US|UK|American|British)\b[^A-Za-z]{0,4}|[=/([]\s{0,2})$/i.test(before) &&
    /(?:\b(?:US|UK|American|British)\b|=)/i.test(before + after)
  )
}

function usesNamesOf(terms: Terms, text: string): boolean {
  return new RegExp(foreign[terms === "US" ? "UK" : "US"].source, "i").test(text)
}

function stitchOf(word: string, terms: Terms) {
  return readStitchName(word, terms)
}

/** The same stitch in the pattern's terms, short or in full as it was written. */
function ownName(word: string, from: Terms, to: Terms): string | undefined {
  const kind = readStitchName(word, from)
  if (!kind) return undefined
  return word.includes(" ") || word.length > 6 ? fullKindName(kind, to) : basicName(kind.basic, to)
}

function inCaseOf(word: string, other: string | undefined): string | undefined {
  if (other === undefined) return undefined
  return /^[A-Z]/.test(word) ? other[0]!.toUpperCase() + other.slice(1) : other
}

/** Nothing says US or UK. */
export function termsNotStated({ reading, rounds, problems, front }: Manuscript): Remark[] {
  if (reading.termsFrom === "stated" || rounds.length === 0) return []
  if (problems.some(({ code, severity }) => code === "terms-may-be-uk" && severity !== "note"))
    return []
  if (/\b(?:US|UK|American|British)\b[^.\n]{0,20}\bterm/i.test(front)) return []
  return [
    {
      severity: "query",
      code: "terms-not-stated",
      round: null,
      start: rounds[0]!.start,
      end: rounds[0]!.start,
      message: `The text does not say whether its terms are US or UK; it is read in ${reading.terms} terms.`,
      wording: `Terms: ${reading.terms}\n\n`,
    },
  ]
}
