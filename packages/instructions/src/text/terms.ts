// US or UK: what the text states, and the evidence when it does not. Nothing is converted on
// evidence alone; the reader is asked to state it.

import { type Terms, ukOnlyWords, usOnlyWords } from "@roundwright/stitches"
import type { PatternText } from "./layout.ts"
import type { Finding } from "../base/problem-list.ts"
import type { Span } from "../base/tree.ts"

export interface TermsFound {
  readonly terms: Terms
  readonly from: "stated" | "default"
  readonly findings: readonly Finding[]
}

const statement =
  /\b(?:terms?|terminology|abbreviations|stitch names?)\s*(?:used\s*)?(?:[:=-]|are|is|in)?\s*(?:in\s+)?(?:the\s+)?\(?(us|uk|u\.s\.|u\.k\.|american|british|english|usa)\b/i
const statementAfter =
  /\b(us|uk|u\.s\.?|u\.k\.?|american|british|usa|english(?=\s+(?:crochet\s+)?term))\s+(?:english\s+)?(?:crochet\s+)?(?:terms?|terminology|abbreviations|names|stitch(?:es)?)\b/i

export function findTerms(layout: PatternText, given: Terms | undefined): TermsFound {
  const text = layout.clean
  const stated = statement.exec(text) ?? statementAfter.exec(text)
  const word = stated?.[1]?.toLowerCase().replaceAll(".", "")
  const fromText: Terms | undefined =
    word === undefined ? undefined : /^(uk|british|english)$/.test(word) ? "UK" : "US"
  if (given !== undefined) {
    const findings: Finding[] = []
    if (fromText !== undefined && fromText !== given && stated)
      findings.push({
        severity: "note",
        code: "terms-overruled",
        start: stated.index,
        end: stated.index + stated[0].length,
        message: `The text states ${fromText} terms; it is read in ${given} terms as asked.`,
        hint: "",
      })
    return { terms: given, from: "stated", findings }
  }
  if (fromText !== undefined) return { terms: fromText, from: "stated", findings: [] }
  return { terms: "US", from: "default", findings: suspicion(layout) }
}

/** How much a sign says: two of one, or one of the other, make a warning; less is only told. */
const signs = { weak: 1, clear: 2 }

interface Sign extends Span {
  readonly weight: number
  readonly why: string
}

function suspicion(layout: PatternText): Finding[] {
  const lower = layout.clean.toLowerCase()
  if (usOnlyWords.some((word) => word !== "gauge" && word !== "skip" && hasWord(lower, word)))
    return []
  const found = [...bracketSigns(layout, lower), ...wordSigns(lower), ...chainSigns(layout, lower)]
  const first = found.sort((a, b) => a.start - b.start)[0]
  if (!first) return []
  const byReason = new Map(found.map((sign) => [sign.why, sign.weight]))
  const weight = [...byReason.values()].reduce((sum, each) => sum + each, 0)
  const why = [...byReason.keys()].slice(0, 3).join("; ")
  return [
    {
      severity: weight >= signs.clear ? "warning" : "note",
      code: "terms-may-be-uk",
      start: first.start,
      end: first.end,
      message: `The text does not say whether its terms are US or UK, and may be UK: ${why}. It is read in US terms.`,
      hint: 'Add a line "Terms: UK" or "Terms: US".',
    },
  ]
}

/** "Daisy (UK)" above the rounds: very likely its terms, though it does not say so. */
function bracketSigns(layout: PatternText, lower: string): Sign[] {
  const head = lower.slice(0, layout.rounds[0]?.start ?? 0)
  const found = /[([](?:uk|british)(?: version)?[)\]]/.exec(head)
  if (!found) return []
  const start = found.index
  const why = `"${found[0].slice(1, -1).toUpperCase()}" stands above the rounds`
  return [{ start, end: start + found[0].length, weight: signs.clear, why }]
}

function wordSigns(lower: string): Sign[] {
  const found: Sign[] = []
  for (const word of [...ukOnlyWords, "dtr crochet"]) {
    const start = wordAt(lower, word)
    if (start < 0) continue
    const british = word === "tension" || word === "miss"
    const why = british ? `"${word}" is the British word` : `"${word}" is a UK name`
    found.push({ start, end: start + word.length, weight: signs.clear, why })
  }
  return found
}

const chainOf = (count: number) => `(?:ch(?:ain)?\\s*-?${count}|${count}\\s*ch(?:ain)?)\\b`
const shortBeforeDc = new RegExp(
  `^${chainOf(1)}(?:\\s*\\([^)\\n]{0,40}\\))?\\s*[,;.:]?\\s*(?:\\d+\\s*)?dc\\b`,
)
const threeForTr = new RegExp(
  `^${chainOf(3)}[^.;\\n]{0,40}?(?:as|for|=)\\s+(?:an?\\s+|the\\s+)?(?:first\\s+|1\\s+|1st\\s+)?tr\\b`,
)
const fourForDtr = new RegExp(
  `^${chainOf(4)}[^.;\\n]{0,40}?(?:as|for|=)\\s+(?:an?\\s+|the\\s+)?(?:first\\s+|1\\s+|1st\\s+)?(?:dtr|double treble)\\b`,
)
/** Tr after a chain of 3, and the round joined to that chain, so that it is one of them. */
const threeJoinedTo = new RegExp(
  `^${chainOf(3)}\\s*,?\\s*\\d*\\s*tr\\b[^\\n]*\\b(?:top|3rd|third)\\b[^.;\\n]{0,24}\\b${chainOf(3)}`,
)
const threeBeforeTr = new RegExp(`^${chainOf(3)}\\s*,?\\s*\\d*\\s*tr\\b`)

/** "5 ch (for 1 tr and 2 ch)": the chains of the stitch are what the space leaves of them. */
const forTrAndSpace =
  /^(?:ch(?:ain)?\s*-?(\d+)|(\d+)\s*ch(?:ain)?)\b[^;\n]{0,40}?(?:as|for|=)\s+(?:an?\s+|the\s+)?(?:first\s+|1\s+|1st\s+)?tr\b\.?\s*(?:and|\+|,|plus)\s*(?:ch(?:ain)?\s*-?(\d+)|(\d+)\s*ch)/
/** Chains of a UK tr at the start of a round. */
const chainsOfUkTr = 3

/** Chains that start a round are as tall as its stitches; chains within it are spaces and say nothing. */
function chainSigns(layout: PatternText, lower: string): Sign[] {
  const found: Sign[] = []
  for (const round of layout.rounds) {
    const start = startingChain(lower, round.bodyStart, round.end)
    if (start === null) continue
    const text = lower.slice(start, round.end)
    for (const [pattern, weight, why] of [
      [shortBeforeDc, signs.weak, "a round starts with a chain of 1 before dc, which fits a UK dc"],
      [threeForTr, signs.clear, "a chain of 3 standing for a tr fits a UK tr"],
      [fourForDtr, signs.clear, "a chain of 4 standing for a dtr fits a UK dtr"],
      [threeJoinedTo, signs.clear, "a round of tr is joined to its chain of 3, which fits a UK tr"],
      [threeBeforeTr, signs.weak, "a round of tr starts with a chain of 3, which fits a UK tr"],
    ] as const) {
      const match = pattern.exec(text)
      if (match) found.push({ start, end: start + match[0].length, weight, why })
    }
    const both = forTrAndSpace.exec(text)
    if (both && Number(both[1] ?? both[2]) - Number(both[3] ?? both[4]) === chainsOfUkTr) {
      const why = "a chain of 3 standing for a tr fits a UK tr"
      found.push({ start, end: start + both[0].length, weight: signs.clear, why })
    }
  }
  return found
}

const leadingChain = /^[\s(]*(?=ch(?:ain)?\s*-?\d|\d+\s*ch(?:ain)?\b)/
const joinsNext = /^[^,;.]*\b(?:join|sl\s*st|ss|slip)\b/
const beforeChain = /\b(?:sl\s*st|ss|slip|join|joining|attach|turn|ring|with)\b|^\s*$/
const someWork = /[*[]|^[\s(]*(?:\d+\s*)?(?:dc|tr|htr)\b/

/** Where a round's starting chain stands: before it only joins, slip stitches and the ring. */
function startingChain(lower: string, from: number, to: number): number | null {
  const text = lower.slice(from, to)
  for (const clause of text.matchAll(/[^,;.\n]+/g)) {
    const chain = leadingChain.exec(clause[0])
    const after = text.slice(clause.index + clause[0].length + 1)
    if (chain && !joinsNext.test(clause[0]) && !joinsNext.test(after))
      return from + clause.index + chain[0].length
    if (chain) continue
    if (someWork.test(clause[0]) || !beforeChain.test(clause[0])) return null
  }
  return null
}

function hasWord(text: string, word: string): boolean {
  return wordAt(text, word) >= 0
}

function wordAt(text: string, word: string): number {
  for (let at = text.indexOf(word); at >= 0; at = text.indexOf(word, at + 1)) {
    const before = text.charAt(at - 1)
    const after = text.charAt(at + word.length)
    if (!/[a-z]/.test(before) && !/[a-z0-9]/.test(after)) return at
  }
  return -1
}
