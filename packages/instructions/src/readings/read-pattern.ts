// Reads a written pattern: headings, terms, then round after round, each worked on the one before.

import type { Terms } from "@roundwright/stitches"
import { longestText } from "../base/limits.ts"
import { type Finding, listProblems } from "../base/problem-list.ts"
import type { PatternReading, RoundReading } from "../base/reading.ts"
import { gaugeOf } from "../text/gauge-headings.ts"
import { layOut } from "../text/layout.ts"
import { readProse } from "../text/prose.ts"
import { inOriginal, readSource, type SourceText } from "../text/source-text.ts"
import { findTerms } from "../text/terms.ts"
import { unreadable } from "../text/unreadable.ts"
import type { Located } from "./list-rounds.ts"
import { readRounds } from "./read-rounds.ts"
import { trimmed } from "./reader.ts"

export interface ReadOptions {
  /** Terms to read in, over anything the text states. */
  readonly terms?: Terms
}

/**
 * Reads a written pattern in US or UK terms. Never throws; whatever is wrong is a problem with its
 * place. The motif holds the rounds before the first that could not be worked.
 */
export function readPattern(text: string, options: ReadOptions = {}): PatternReading {
  const refused = unreadable(text)
  if (refused) return nothingRead(options.terms, refused)
  const source = readSource(text.length > longestText ? "" : text)
  const layout = layOut(source)
  const terms = findTerms(layout, options.terms)
  const gauge = gaugeOf(layout, terms.terms)
  const prose = readProse(layout, terms.terms)
  const findings: Located[] = [...terms.findings, ...gauge.findings].map((finding) => ({
    ...finding,
    round: null,
  }))
  for (const stray of prose.stray)
    findings.push({
      severity: "note",
      code: "outside-rounds",
      ...trimmed(layout.clean, stray),
      round: null,
      message: "This line stands outside the rounds and is not worked.",
      hint: 'Give it a label such as "Rnd 1:" if it is a round.',
    })
  for (const aside of layout.asides)
    findings.push({
      severity: "note",
      code: "not-of-the-work",
      ...trimmed(source.plain, aside),
      round: null,
      message: "This says nothing of the work and is passed over.",
      hint: "",
    })
  const rounds = readRounds(source, layout, terms.terms, prose, findings)
  return {
    title: layout.title,
    terms: terms.terms,
    termsFrom: terms.from,
    gauge: gauge.input,
    motif: {
      ...(layout.title === null ? {} : { title: layout.title }),
      centre: rounds.centre,
      rounds: rounds.motif,
    },
    rounds: rounds.readings.map((round) => placedInOriginal(source, round)),
    problems: listProblems(source, findings),
  }
}

/** The places of a round in the text as it was given. */
function placedInOriginal(source: SourceText, reading: RoundReading): RoundReading {
  if (!source.origins) return reading
  const [start, end] = inOriginal(source, reading.start, reading.end)
  const elementPlaces = reading.elementPlaces?.map(([from, to]) => inOriginal(source, from, to))
  return { ...reading, start, end, ...(elementPlaces ? { elementPlaces } : {}) }
}

function nothingRead(terms: Terms | undefined, problem: Finding): PatternReading {
  const source = readSource("")
  return {
    title: null,
    terms: terms ?? "US",
    termsFrom: terms ? "stated" : "default",
    gauge: { swatches: [] },
    motif: { centre: { kind: "adjustable-ring" }, rounds: [] },
    rounds: [],
    problems: listProblems(source, [{ ...problem, round: null }]),
  }
}
