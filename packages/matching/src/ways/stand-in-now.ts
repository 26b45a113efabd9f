// A plain piece, read and measured, in place of a pattern where sizes alone are told.

import type { Check } from "@roundwright/assessment"
import { readPattern, writePattern } from "@roundwright/instructions"
import type { Gauge } from "@roundwright/stitches"
import { plainByRule } from "./by-rule.ts"
import { type PieceNow, readPieceNow, scaledGauge } from "./piece.ts"
import { checkRounds, grannyText, likelyRounds, type StandInShape, standIn } from "./stand-in.ts"
import type { Target } from "./target.ts"

/** More rounds than these are not laid out. */
const mostLaidOut = 10
/** The middle of a larger piece that is. */
const middleRounds = 6

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
  checkRounds(many)
  const textOf = (of: number) =>
    shape === "granny" ? grannyText(of) : writePattern(standIn(of, shape), "US")
  const what =
    shape === "granny"
      ? `a granny square of ${many} rounds (its last has ${4 * many} groups of 3 dc, ${12 * many} dc, ${many} groups a side)`
      : `a plain ${shape} of ${many} rounds of dc`
  const told = {
    standIn: `No pattern is given: ${what} stands in for the piece.`,
    roundsTold: rounds !== undefined,
  }
  if (many <= mostLaidOut) return { ...readPieceNow(textOf(many), now, another), ...told }
  const middle = readPieceNow(
    textOf(middleRounds),
    { ...now, mm: (now.mm * middleRounds) / many },
    another,
  )
  const motif = shape === "granny" ? readPattern(textOf(many)).motif : standIn(many, shape)
  const { sized, factor } = plainByRule(motif, middle.gauge, middle.motif, middle.now, now)
  return {
    ...middle,
    motif,
    gauge: scaledGauge(middle.gauge, factor),
    now: sized,
    byRule: true,
    ...told,
  }
}
