// The one judge of a laid-out piece: growth ledger and net together. They fail on different pieces, the ledger on scallops,
// mixed heights and corners worked otherwise than it knows, the net where loops find a way to lie that fabric would not take. A
// misfit that only one of them sees is mostly none. So each round's misfit is for the most part the smaller of the two.

import {
  foldLedger,
  judgePiece,
  type LedgerRow,
  type Odds,
  type PieceSummary,
  summarisePiece,
  type Verdict,
  verdictOf,
} from "@roundwright/flatness"
import type { Motif } from "@roundwright/motif"
import type { Gauge } from "@roundwright/stitches"
import type { RoundMisfit } from "./round-misfits.ts"

export interface ShapeVerdict {
  readonly verdict: Verdict
  /** Number of the round, as the text gives it, from which the verdict holds to the edge; null when it lies flat. */
  readonly fromRound: number | null
  /** Edge over flat edge of the last round, by which the piece is judged: below 1 cups, above 1 ruffles. */
  readonly fullness: number
  readonly odds: Odds
  /** The rows of the growth ledger with fullness and verdict as judged. */
  readonly rows: readonly LedgerRow[]
  /** Stretch that pins the piece flat, of what is too short: 0.1 = a tenth. */
  readonly meanStretch: number
  /** Largest such stretch of any one round but the first, and the round as the text numbers it. */
  readonly blockingStretch: number
  readonly blockingRound: number
}

/** Share of the larger of the two misfits (fitted with the bands, see `bands` of the package flatness). */
const largerShare = 0.25

/** @param heightFactor as the net was built with */
export function judgeShape(
  motif: Motif,
  gauge: Gauge,
  misfits: readonly RoundMisfit[],
  heightFactor = 1,
): ShapeVerdict {
  const piece = summarisePiece(motif, gauge)
  const known = withoutFreeEdge(misfits, piece)
  const judged = judgePiece(
    foldLedger(piece, heightFactor).map((row, round) => together(row, known[round]!)),
    piece,
  )
  const { rows } = judged
  const worst = rows.slice(1).reduce((a, b) => (stretchOf(b) > stretchOf(a) ? b : a), rows.at(-1)!)
  return {
    ...judged,
    meanStretch: stretchFor(judged.fullness),
    blockingStretch: stretchOf(worst),
    blockingRound: worst.round,
  }
}

/**
 * Nothing holds the tops of the last round to their pitch: pressed flat its fans spread, and it looks less off than it is. A
 * round later it would be about as far off as the round below it. Where that is further off to the same side the middle of both is taken.
 */
function withoutFreeEdge(misfits: readonly RoundMisfit[], piece: PieceSummary): RoundMisfit[] {
  const ground = piece.rounds.flatMap((round, index) => (round.ground ? [index] : []))
  const [below, last] = [ground.at(-2), ground.at(-1)]
  return misfits.map((misfit, index) => {
    if (index !== last || below === undefined) return misfit
    const [own, under] = [logOf(misfit.fullness), logOf(misfits[below]!.fullness)]
    if (own * under <= 0 || Math.abs(under) <= Math.abs(own)) return misfit
    return { ...misfit, fullness: Math.exp((own + under) / 2) }
  })
}

function together(row: LedgerRow, { fullness, heldFullness }: RoundMisfit): LedgerRow {
  const accumulatedFullness = middleOf(row.accumulatedFullness, fullness)
  return {
    ...row,
    accumulatedFullness,
    heldFullness: Math.max(accumulatedFullness, middleOf(row.heldFullness, heldFullness)),
    verdict: verdictOf(accumulatedFullness),
  }
}

/** Of two fullnesses mostly the one nearer to 1, by their logarithms. */
function middleOf(a: number, b: number): number {
  const [one, other] = [logOf(a), logOf(b)]
  const [smaller, larger] = Math.abs(one) < Math.abs(other) ? [one, other] : [other, one]
  return Math.exp((1 - largerShare) * smaller + largerShare * larger)
}

/** An edge of nothing is told as a thousandth. */
const leastFullness = 1e-3

function logOf(fullness: number): number {
  return Math.log(Math.max(leastFullness, fullness))
}

function stretchOf({ accumulatedFullness }: LedgerRow): number {
  return stretchFor(accumulatedFullness)
}

function stretchFor(fullness: number): number {
  return Math.exp(Math.abs(logOf(fullness))) - 1
}
