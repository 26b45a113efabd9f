// How much of the gathered patterns is read, and how well: each round's counts against the totals the
// facts give, with and without the reader seeing those totals.
//
// A round is right when it was worked and meets the total the facts give for it; where they give
// none, when it was worked and nothing in it is doubted. A clash printed in the source is right when
// it is told. A misread in silence is a round whose counts miss the known total without any warning.

import { type PatternReading, readPattern } from "@roundwright/instructions"
import { caseText, type EvidenceCase } from "./cases.ts"
import { isSummary, knownTotal, meets, printedClashes } from "./known-totals.ts"

export interface ReadingCoverage {
  /** Rounds with a text of their own, whether or not a total is known. */
  readonly rounds: number
  readonly right: number
  /** Rounds a practised maker could work from the text alone, and how many of them are right. */
  readonly complete: number
  readonly completeRight: number
  /** Rounds with a firm total in the facts, and how many of them are met. */
  readonly withTotal: number
  readonly totalsMet: number
  readonly silentMisreads: number
  /** Rounds with an error or a warning. */
  readonly flagged: number
  /** Clashes recorded by the facts, and how many of them are told. */
  readonly clashes: number
  readonly clashesTold: number
  /** Rounds whose total is met and which are doubted all the same. */
  readonly falseAlarms: number
  /** The same texts with every stated total taken out. */
  readonly unaided: { readonly totalsMet: number; readonly silentMisreads: number }
  /** What is not right, a line each. */
  readonly missed: readonly string[]
}

export function readingCoverage(cases: readonly EvidenceCase[]): ReadingCoverage {
  const sums = {
    rounds: 0,
    right: 0,
    complete: 0,
    completeRight: 0,
    withTotal: 0,
    totalsMet: 0,
    silentMisreads: 0,
    flagged: 0,
    clashes: 0,
    clashesTold: 0,
    falseAlarms: 0,
  }
  const unaided = { totalsMet: 0, silentMisreads: 0 }
  const missed: string[] = []
  for (const evidence of cases) {
    const texts = evidence.rounds.filter((round) => isNumbered(round.text))
    const reading = readPattern(caseText(evidence, texts))
    const blind = readPattern(
      caseText(
        evidence,
        texts.map((round) => ({ ...round, text: withoutTotal(round.text) })),
      ),
    )
    for (const round of texts.flatMap(eachOfRange)) {
      const known = knownTotal(evidence, round)
      const clash = printedClashes[evidence.id]?.includes(round.n) === true
      const seen = judge(reading, round.n)
      sums.rounds += 1
      if (seen.flagged) sums.flagged += 1
      if (clash) {
        sums.clashes += 1
        if (seen.flagged) sums.clashesTold += 1
      }
      // A round that stands for its total meets it in any case: it is not read.
      const met =
        known !== null && seen.counted !== null && !seen.assumed && meets(seen.counted, known)
      const right = clash ? seen.flagged : known ? met : seen.counted !== null && !seen.flagged
      const summary = isSummary(evidence, round)
      if (!summary) sums.complete += 1
      if (right) {
        sums.right += 1
        if (!summary) sums.completeRight += 1
      } else {
        const how = seen.flagged ? "flagged" : "silent"
        missed.push(`${evidence.id} ${round.n}: ${how}${summary ? " (a summary)" : ""}`)
      }
      if (known && !clash) {
        sums.withTotal += 1
        if (met) sums.totalsMet += 1
        if (met && seen.flagged) sums.falseAlarms += 1
        if (!met && !seen.flagged && !seen.assumed) sums.silentMisreads += 1
        const alone = judge(blind, round.n)
        if (alone.counted !== null && meets(alone.counted, known)) unaided.totalsMet += 1
        else if (!alone.flagged) {
          unaided.silentMisreads += 1
          missed.push(`${evidence.id} ${round.n}: silent when its total is taken out`)
        }
      }
    }
  }
  return { ...sums, unaided, missed }
}

function judge(reading: PatternReading, number: number) {
  const round = reading.rounds.find((one) => one.number === number)
  const flagged =
    round === undefined ||
    round.counted === null ||
    reading.problems.some((problem) => problem.round === number && problem.severity !== "note")
  return { counted: round?.counted ?? null, flagged, assumed: round?.assumed === true }
}

/** A numbered round or range of rounds with its own text, not a rule for every round or a remark. */
function isNumbered(text: string): boolean {
  return /^Rnds? \d+(?:-\d+)?:/.test(text)
}

/** "Rnds 2-6: ...": each of them a round; what its bracket says of all of them is no total of one. */
function eachOfRange(round: { n: number; text: string }): { n: number; text: string }[] {
  const range = /^Rnds (\d+)-(\d+):/.exec(round.text)
  if (!range) return [round]
  const [from, to] = [Number(range[1]), Number(range[2])]
  const text = withoutTotal(round.text)
  return Array.from({ length: to - from + 1 }, (_, i) => ({ n: from + i, text }))
}

function withoutTotal(text: string): string {
  return text.replace(/\s*\([^()]*\)\.?\s*$/, "").replace(/[.\s]*$/, ".")
}
