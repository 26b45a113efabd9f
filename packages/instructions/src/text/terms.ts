// US or UK: what the text states, and the evidence of its names. A statement made in passing ("for those who
// use UK terms") does not stand against the names themselves; nothing is converted on evidence alone.

import { type Terms, ukOnlyWords, usOnlyWords } from "@roundwright/stitches"
import type { Finding } from "../base/problem-list.ts"
import type { Span } from "../base/tree.ts"
import type { PatternText } from "./layout.ts"
import { type Sign, signs } from "./term-signs.ts"
import { chainSigns } from "./terms-by-chains.ts"
import { hasWord, wordAt } from "./word-at.ts"

export interface TermsFound {
  readonly terms: Terms
  readonly from: "stated" | "default"
  readonly findings: readonly Finding[]
}

const statement =
  /\b(?:terms?|terminology|abbreviations|stitch names?)\s{0,3}(?:(?:used|i use|i used|i am using)\s{0,3})?(?:[:=-]|are|is|in)?\s{0,3}(?:in\s+)?(?:the\s+)?\(?(us|uk|u\.s\.|u\.k\.|american|british|english|usa)\b/gi
const statementAfter =
  /\b(us|uk|u\.s\.?|u\.k\.?|american|british|usa|english(?=\s+(?:crochet\s+)?term))\s+(?:english\s+)?(?:crochet\s+)?(?:terms?|terminology|abbreviations|names|stitch(?:es)?|pattern)\b/gi

/** "My UK Coaster Pattern": a name that says it. */
const namesPattern = /\b(?:my|this|the)\s(us|uk|american|british)\s(?:\w{2,12}\s){0,2}pattern\b/gi
/** "dc = US single crochet", "treble (US double crochet)": the names used are those of the other side. */
const explained =
  /\b(?:d|dc|double crochet|t|tr|treble(?: crochet)?)\b[^.;\n]{0,24}?\b(us|american)\b[ =:]{0,3}(?:term\w*\s)?(?:for\s)?(?:sc|single|dc|double)\b|\b(?:sc|single crochet|dc|double crochet)\b[^.;\n]{0,24}?\b(uk|british)\b[ =:]{0,3}(?:term\w*\s)?(?:for\s)?(?:dc|double|tr|treble)\b/gi
/** Words that say whose terms are meant: those of this pattern. */
const ofThisPattern = /\b(?:this|my|i use|i used|following|below|here)\b|\bpattern (?:is|uses)\b/i

const givenBesides =
  /^(?: terms?| names| stitches)?\s?(?:are |is |given |shown ){0,2}(?:with)?in (?:square |round )?(?:brackets|parentheses|braces|italics)/

interface Statement extends Span {
  readonly terms: Terms
  /** Said of this pattern and no other. */
  readonly own: boolean
}

function statementsIn(text: string): Statement[] {
  const found: Statement[] = []
  for (const match of text.matchAll(explained)) {
    const terms: Terms = match[1] === undefined ? "US" : "UK"
    found.push({ terms, own: true, start: match.index, end: match.index + match[0].length })
  }
  for (const pattern of [statement, statementAfter, namesPattern])
    for (const match of text.matchAll(pattern)) {
      // "(US terms in brackets)": the other names, given besides.
      if (
        givenBesides.test(
          text.slice(match.index + match[0].length, match.index + match[0].length + 40),
        )
      )
        continue
      const word = match[1]!.toLowerCase().replaceAll(".", "")
      const terms: Terms = /^(?:uk|british|english)$/.test(word) ? "UK" : "US"
      const sentence = text.slice(Math.max(0, match.index - 60), match.index + match[0].length)
      const own = ofThisPattern.test(sentence.split(/[.!?\n]/).pop() ?? "")
      found.push({ terms, own, start: match.index, end: match.index + match[0].length })
    }
  return found.sort((a, b) => a.start - b.start)
}

export function findTerms(layout: PatternText, given: Terms | undefined): TermsFound {
  const statements = statementsIn(layout.clean)
  const used = namesUsed(layout)
  const ofBoth = new Set(statements.map(({ terms }) => terms)).size > 1
  const owned = new Set(statements.filter(({ own }) => own).map(({ terms }) => terms))
  const both = ofBoth && owned.size !== 1
  const told = ofBoth && !both ? statements.filter(({ own }) => own) : statements
  // Where both are spoken of, or the names say otherwise, the names decide.
  const stated =
    told.find(({ terms }) => !both && terms !== contradicts(used)) ??
    (both ? statements.find(({ terms }) => terms === used) : undefined)
  if (given !== undefined) {
    const findings: Finding[] = []
    if (stated && stated.terms !== given)
      findings.push({
        severity: "note",
        code: "terms-overruled",
        start: stated.start,
        end: stated.end,
        message: `The text states ${stated.terms} terms; it is read in ${given} terms as asked.`,
        hint: "",
      })
    return { terms: given, from: "stated", findings }
  }
  if (stated) return { terms: stated.terms, from: "stated", findings: [] }
  const against = statements[0]
  if (against && used)
    return {
      terms: used,
      from: "default",
      findings: [
        {
          severity: "note",
          code: "terms-by-names",
          start: against.start,
          end: against.end,
          message: `Both sets of terms are spoken of, or the names do not fit the one stated; the rounds use ${used} names and are read in ${used} terms.`,
          hint: `Add a line "Terms: ${used}" if that is right.`,
        },
      ],
    }
  if (used === "UK")
    // Names that only UK texts use cannot be read otherwise; it is told all the same.
    return {
      terms: "UK",
      from: "default",
      findings: suspicion(layout).map((finding) => ({
        ...finding,
        severity: "warning",
        message: finding.message.replace(
          "It is read in US terms.",
          "It is read in UK terms, as it uses names that only they have.",
        ),
      })),
    }
  return { terms: "US", from: "default", findings: suspicion(layout) }
}

/** The terms only whose names the rounds use; null where they use neither, or both. */
function namesUsed(layout: PatternText): Terms | null {
  // "dc (UK) = sc (US)": names that are only explained are not used.
  const text = layout.rounds
    .map(({ bodyStart, end }) => layout.clean.slice(bodyStart, end))
    .join("\n")
    .toLowerCase()
    .replace(/[^.;\n]{0,80}\b(?:us|uk|usa)\b[^.;\n]{0,80}/g, " ")
  const us = usOnlyWords.some((word) => word !== "gauge" && word !== "skip" && hasWord(text, word))
  const uk = ukOnlyWords.some(
    (word) => word !== "tension" && word !== "miss" && hasWord(text, word),
  )
  return us === uk ? null : us ? "US" : "UK"
}

function contradicts(used: Terms | null): Terms | null {
  return used === null ? null : used === "US" ? "UK" : "US"
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
