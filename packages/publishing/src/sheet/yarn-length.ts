// How much yarn a piece takes: as the designer states it, or else reckoned from its stitches, with its error beside it.
// A reckoned length is never told as hers: the list of what is left to say asks for the piece on the scale.

import type { Check } from "@roundwright/assessment"
import { estimateYarn } from "@roundwright/matching"
import { unlessRefused } from "@roundwright/numerics"
import { type Manuscript, sectionOf } from "../edit/manuscript.ts"

/** "95 m", as the designer states it; null where she does not. */
export function statedYarnLength(manuscript: Manuscript): string | null {
  const parts = [
    sectionOf(manuscript, "yarn"),
    sectionOf(manuscript, "materials"),
    sectionOf(manuscript, "notes"),
  ]
  for (const part of parts) {
    const found =
      /\b(?:about|approx(?:imately)?\.?)?\s?\d{1,4}(?:[.,]\d)?\s?(?:m|metres?|meters?|yds?|yards?)\b(?!\s?(?:per|\/|in a|=))/i.exec(
        part?.value ?? "",
      )
    if (found) return found[0].trim()
  }
  return null
}

const yardM = 0.9144

/** "about 14 m (16 yd), both tails included; reckoned from the stitches, give or take 27 %"; null where no size is known. */
export function reckonedYarnLength({ reading, gauge }: Check): string | null {
  if (!gauge?.absolute || reading.motif.rounds.length === 0) return null
  const total = unlessRefused(
    () => estimateYarn(reading.motif, gauge).total,
    () => null,
  )
  if (!total || total.metres === null || total.metresBand === null) return null
  const { metres, metresBand } = total
  const giveOrTake = Math.round(100 * (metresBand[1] / metres - 1))
  return `about ${whole(metres)} m (${whole(metres / yardM)} yd) for one, both tails included; reckoned from the stitches, give or take ${giveOrTake} %`
}

/** Rounded up: a piece that runs out of yarn helps nobody. Two figures are all the error allows. */
function whole(length: number): number {
  const step = length >= 100 ? 10 : 1
  return Math.ceil(length / step) * step
}
