// The chart against the text: rounds in which one has other stitches than the other, as when a text was mended after its
// chart was drawn. The file of the chart is one that `printChart` made; what a picture shows is not guessed at.

import { inTerms } from "@roundwright/assessment"
import { type SymbolCounts, symbolsOfChart, symbolsOfMotif } from "@roundwright/charts"
import { RoundwrightError } from "@roundwright/numerics"
import type { Terms } from "@roundwright/stitches"
import type { Remark } from "./finding.ts"
import { isSure, type Manuscript, type ManuscriptRound } from "./manuscript.ts"

/** @throws RoundwrightError `chart-not-read` for a drawing that does not say what its marks are */
export function chartAgainstText(manuscript: Manuscript, chart: string): Remark[] {
  const drawn = symbolsOfChart(chart)
  if (!drawn)
    throw new RoundwrightError(
      "chart-not-read",
      "The chart does not say which stitches its marks are.",
      {
        hint: "Only the SVG that 'roundwright chart' writes can be held against a text.",
      },
    )
  const { reading, rounds } = manuscript
  const written = symbolsOfMotif(reading.motif)
  const numbers = [...new Set([...written.keys(), ...drawn.keys()])].sort((a, b) => a - b)
  return numbers.flatMap((number): Remark[] => {
    const round = rounds.find((one) => one.number === number)
    const [own, theirs] = [written.get(number), drawn.get(number)]
    // Where the text could not be read nothing can be held against it.
    if (round && !own) return []
    if (!round || !own) return [remark(manuscript, rounds.at(-1), number, missingInText(number))]
    if (!theirs) return [remark(manuscript, round, number, missingInChart(number))]
    const told = difference(own, theirs, reading.terms)
    return told === "" ? [] : [remark(manuscript, round, number, `In round ${number} ${told}.`)]
  })
}

function missingInText(number: number): string {
  return `The chart has a round ${number}, the text has none.`
}

function missingInChart(number: number): string {
  return `The text has a round ${number}, the chart has none.`
}

/** "the chart has 26 dc and the text 24", or nothing where they agree. */
function difference(written: SymbolCounts, drawn: SymbolCounts, terms: Terms): string {
  const names = [...new Set([...written.keys(), ...drawn.keys()])]
  return names
    .filter((name) => written.get(name) !== drawn.get(name))
    .map((name) => {
      const [inText, inChart] = [written.get(name) ?? 0, drawn.get(name) ?? 0]
      return `the chart has ${inChart} ${inTerms(name, terms)} and the text ${inText}`
    })
    .join(", ")
}

function remark(
  manuscript: Manuscript,
  round: ManuscriptRound | undefined,
  number: number,
  message: string,
): Remark {
  const start = round?.start ?? 0
  return {
    severity: round && isSure(manuscript, round.number) ? "must-mend" : "query",
    code: "chart-differs",
    round: number,
    start,
    end: round ? round.start + Math.max(1, round.label.trimEnd().length) : 0,
    message,
  }
}
