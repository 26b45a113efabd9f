// A plain piece, read and measured, in place of a pattern where sizes alone are told.

import type { Check } from "@roundwright/assessment"
import { writePattern } from "@roundwright/instructions"
import type { Gauge } from "@roundwright/stitches"
import { type PieceNow, readPieceNow } from "./piece.ts"
import { grannyText, likelyRounds, type StandInShape, standIn } from "./stand-in.ts"
import type { Target } from "./target.ts"

/**
 * A plain piece in place of a pattern, where sizes alone are told.
 * @param rounds how many it has; as many as its size asks for where absent
 */
export function standInNow(
  now: Target,
  { rounds, shape = "square" }: { readonly rounds?: number; readonly shape?: StandInShape },
  another?: (check: Check) => Gauge | null,
): PieceNow {
  const many = rounds ?? likelyRounds(now.mm)
  const text = shape === "granny" ? grannyText(many) : writePattern(standIn(many, shape), "US")
  const piece = readPieceNow(text, now, another)
  const what =
    shape === "granny"
      ? `a granny square of ${many} rounds (its last has ${4 * many} groups of 3 dc, ${12 * many} dc, ${many} groups a side)`
      : `a plain ${shape} of ${many} rounds of dc`
  const note = `No pattern is given: ${what} stands in for the piece.`
  return { ...piece, standIn: note, roundsTold: rounds !== undefined }
}
