// How much of its last page the words of a sheet fill, reckoned from their length, so that the chart takes what is left
// below them, or a page of its own in full width, and no page stays half empty.

import type { Sheet } from "./sheet.ts"

/** Between the margins, mm. */
const papers = [297 - 24, 279.4 - 24] as const
const lineMm = 4.56
const headingMm = 9.3
/** Letters to a line of the whole width, beside the labels of rounds, of a column, and beside the names in a column. */
const letters = { whole: 92, round: 74, column: 44, beside: 25 } as const
/** Measured in a browser the words of 19 sheets took 0.87 to 0.94 of what is reckoned from their lengths. */
const measuredShare = 0.905
/** What that leaves the reckoning off by, as a share of the words. */
const offBy = 0.05
/** Symbols of a smaller chart are hard to read, mm. */
const leastChartMm = 85
const mostChartMm = 145

/** Height for a chart below the words, mm; null where it has to have a page of its own. */
export function roomForChart(sheet: Sheet): number | null {
  const used = measuredShare * wordsMm(sheet)
  const rooms = papers.map((high) => {
    const [least, most] = [used * (1 - offBy), used * (1 + offBy)]
    // The words may end on either side of the edge of a page.
    if (Math.floor(least / high) !== Math.floor(most / high)) return 0
    return high - (most % high) - headingMm
  })
  const room = Math.min(...rooms)
  return room < leastChartMm ? null : Math.min(mostChartMm, Math.floor(room))
}

function wordsMm(sheet: Sheet): number {
  const { own, materials, gauge, size, abbreviations, special, notes, rounds } = sheet
  const facts = Math.max(
    part(
      materials.map(({ text }) => text),
      letters.beside,
    ),
    part(gauge, letters.column) + part(size, letters.column),
  )
  const worked = rounds.map(
    ({ work, total }) => lines([`${work} ${total}`], letters.round) * lineMm + 1.8,
  )
  const ends = Math.max(
    part(sheet.flatness, letters.column) + part(sheet.cautions, letters.column),
    part(sheet.care, letters.column),
  )
  return (
    20 +
    (own.length + 1) * lineMm +
    facts +
    part(Array(Math.ceil(abbreviations.length / 3.5)).fill(""), letters.whole) +
    part(
      special.map(({ how }) => how),
      letters.round,
    ) +
    part(notes, letters.whole) +
    headingMm +
    3 * lineMm +
    worked.reduce((sum, one) => sum + one, 0) +
    ends
  )
}

/** A heading and what stands below it; nothing where there is nothing. */
function part(texts: readonly string[], perLine: number): number {
  return texts.length === 0 ? 0 : headingMm + lines(texts, perLine) * lineMm
}

function lines(texts: readonly string[], perLine: number): number {
  return texts.reduce((sum, text) => sum + Math.max(1, Math.ceil(text.length / perLine)), 0)
}
