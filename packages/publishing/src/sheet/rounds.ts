// The rounds of the sheet, written by the one writer, with the size after each.

import { type Check, formatLength } from "@roundwright/assessment"
import { writePattern } from "@roundwright/instructions"
import { RoundwrightError } from "@roundwright/numerics"
import type { Terms } from "@roundwright/stitches"
import type { Manuscript } from "../edit/manuscript.ts"
import type { SheetRound } from "./sheet.ts"

const written = /^((?:Rnd|Row) \d+): (.*?)(?:\s(\([^()]*\)))?$/

/** @throws RoundwrightError `cannot-be-written` where a round has no plain wording in other terms than its own */
export function roundsOf(manuscript: Manuscript, check: Check, terms: Terms): SheetRound[] {
  const { reading } = manuscript
  const sizes = check.result.laidOut?.acrossAfterRoundMm ?? []
  const sizeOf = (index: number) => {
    const mm = sizes[index]
    return mm ? formatLength(mm) : null
  }
  const lines = linesOf(manuscript, terms)
  return reading.motif.rounds.map((round, index) => {
    const line = lines[index]!
    return { number: round.number, ...line, sizeSoFar: sizeOf(index) }
  })
}

type Line = Pick<SheetRound, "label" | "work" | "total">

function linesOf(manuscript: Manuscript, terms: Terms): Line[] {
  const { title: _, ...untitled } = manuscript.reading.motif
  try {
    return writePattern(untitled, terms, { fastenOff: false })
      .split("\n")
      .flatMap((line) => {
        const found = written.exec(line)
        return found ? [{ label: found[1]!, work: found[2]!.trim(), total: found[3] ?? "" }] : []
      })
  } catch (error) {
    // Words that the writer has none for are the designer's own, in her own terms.
    if (!(error instanceof RoundwrightError) || terms !== manuscript.reading.terms) throw error
    return manuscript.rounds.map(({ number, body }) => ({
      label: `Rnd ${number}`,
      work: body.replace(/\s+/g, " ").trim(),
      total: "",
    }))
  }
}
