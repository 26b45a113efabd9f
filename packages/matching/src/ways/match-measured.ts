// A piece matched to another that was measured round by round: where they part decides whether it is the hook at all.

import { RoundwrightError } from "@roundwright/numerics"
import { comparePieces } from "../compare/compare.ts"
import type { Comparison } from "../compare/result.ts"
import { lengthWords } from "../lengths.ts"
import { type MeasuredPiece, withComputedSizes } from "../measured/read-measured.ts"
import { matchPiece } from "./match.ts"
import type { PieceNow } from "./piece.ts"
import type { MatchResult } from "./result.ts"
import { type Along, alongOf } from "./sizes.ts"

export interface MeasuredMatch extends MatchResult {
  readonly comparison: Comparison
}

/** @throws RoundwrightError `no-size` where the other piece tells no size of its last round */
export function matchMeasured(
  piece: PieceNow,
  own: MeasuredPiece,
  other: MeasuredPiece,
): MeasuredMatch {
  const last = other.rounds.findLast(({ sizeMm }) => sizeMm !== null)
  if (!last?.sizeMm)
    throw new RoundwrightError("no-size", `${other.name} tells no size to match.`, {
      hint: 'Measure it round by round, such as "Rnd 3: 9 cm".',
    })
  const along: Along = other.across === "corners" ? "diagonal" : "across"
  const sized = withComputedSizes({ ...own, motif: piece.motif, gauge: piece.gauge })
  const comparison = comparePieces(sized, other)
  const end = piece.motif.rounds.at(-1)!.number
  const target = { mm: last.sizeMm, along, said: true }
  const matched = matchPiece(piece, target)
  // A hook is to blame only for what is off in every round alike.
  const sameAllThrough =
    comparison.cause === null || (comparison.cause === "ratio" && comparison.parting!.from === 0)
  const rounds = last.round - end
  const roundsApart = rounds !== 0 && !sameAllThrough
  const cause =
    matched.cause ??
    (roundsApart
      ? rounds > 0
        ? ("a round too few" as const)
        : ("a round too many" as const)
      : null) ??
    (sameAllThrough ? null : ("unknown" as const))
  const not =
    sameAllThrough || matched.cause !== null
      ? ""
      : "Not the hook: it would be off in every round alike. "
  const now = `${lengthWords(alongOf(piece.now, along))} now, ${lengthWords(last.sizeMm)} wished for.`
  return {
    ...matched,
    cause,
    comparison,
    text: `${not}${comparison.text} ${not ? `It is ${now} ${matched.ways[0]?.text ?? ""}`.trim() : matched.text}`,
  }
}
