// US or UK: what the text states, and the evidence when it does not. Nothing is converted on
// evidence alone; the reader is asked to state it.

import { type Terms, ukOnlyWords, usOnlyWords } from "@roundwright/stitches"
import type { Finding } from "./problem-list.ts"

export interface TermsFound {
  readonly terms: Terms
  readonly from: "stated" | "default"
  readonly findings: readonly Finding[]
}

const statement =
  /\b(?:terms?|terminology|abbreviations|stitch names?)\s*(?:used\s*)?(?:[:=]|are|is|in)?\s*(?:in\s+)?(?:the\s+)?\(?(us|uk|u\.s\.|u\.k\.|american|british|english|usa)\b/i
const statementAfter =
  /\b(us|uk|u\.s\.?|u\.k\.?|american|british|usa)\s+(?:crochet\s+)?(?:terms?|terminology|abbreviations|names|stitch(?:es)?)\b/i

export function findTerms(text: string, given: Terms | undefined): TermsFound {
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
  return { terms: "US", from: "default", findings: suspicion(text) }
}

function suspicion(text: string): Finding[] {
  const lower = text.toLowerCase()
  if (usOnlyWords.some((word) => word !== "gauge" && word !== "skip" && hasWord(lower, word)))
    return []
  const reasons: { start: number; end: number; why: string }[] = []
  for (const word of [...ukOnlyWords, "dtr crochet"]) {
    const found = wordAt(lower, word)
    if (found >= 0)
      reasons.push({
        start: found,
        end: found + word.length,
        why:
          word === "tension" || word === "miss"
            ? `"${word}" is the British word`
            : `"${word}" is a UK name`,
      })
  }
  const chain = /\bch(?:ain)?\s*1\b[^.;\n]{0,40}?[,;]\s*(?:\d+\s*)?dc\b/.exec(lower)
  if (chain)
    reasons.push({
      start: chain.index,
      end: chain.index + chain[0].length,
      why: "a chain of 1 before dc fits a UK dc",
    })
  const treble =
    /\bch(?:ain)?\s*3\b[^.;\n]{0,40}?(?:as|for)\s+(?:a\s+|first\s+|1\s+|1st\s+)?tr\b/.exec(lower) ??
    /\bch(?:ain)?\s*3\b\s*,?\s*\d+\s*tr\b/.exec(lower)
  if (treble)
    reasons.push({
      start: treble.index,
      end: treble.index + treble[0].length,
      why: "a chain of 3 standing for a tr fits a UK tr",
    })
  const first = reasons.sort((a, b) => a.start - b.start)[0]
  if (!first) return []
  const why = [...new Set(reasons.map((reason) => reason.why))].slice(0, 3).join("; ")
  return [
    {
      severity: "warning",
      code: "terms-may-be-uk",
      start: first.start,
      end: first.end,
      message: `The text does not say whether its terms are US or UK, and may be UK: ${why}. It is read in US terms.`,
      hint: 'Add a line "Terms: UK" or "Terms: US".',
    },
  ]
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
