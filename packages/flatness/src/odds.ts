// Odds of the four verdicts from the spread of the gauge: the same maker works all rounds, so her
// height over width departs from the default by one factor for the whole piece, taken as lognormal.

import { foldLedger } from "./fold.ts"
import { judgePiece } from "./judge.ts"
import type { Odds, Verdict } from "./result.ts"
import type { PieceSummary } from "./summary.ts"

/** Normal distribution sampled to three standard deviations (99.7 %) in steps of an eighth. */
const reach = 3
const steps = 48

/** Chances summing to 1; certainty when the gauge has no spread. */
export function oddsOf(piece: PieceSummary): Odds {
  const spread = pieceSpread(piece)
  return oddsOver((z) => judgePiece(foldLedger(piece, Math.exp(spread * z)), piece).verdict)
}

/** @param verdictAt the verdict on the work of a hand z standard deviations off the usual one */
export function oddsOver(verdictAt: (z: number) => Verdict): Odds {
  const chances = { flat: 0, blocksFlat: 0, cups: 0, ruffles: 0 }
  let total = 0
  for (let i = 0; i <= steps; i++) {
    const z = -reach + (2 * reach * i) / steps
    const weight = Math.exp((-z * z) / 2)
    const verdict = verdictAt(z)
    chances[verdict === "blocks-flat" ? "blocksFlat" : verdict] += weight
    total += weight
  }
  return {
    flat: chances.flat / total,
    blocksFlat: chances.blocksFlat / total,
    cups: chances.cups / total,
    ruffles: chances.ruffles / total,
  }
}

/** Spread of the piece's height over width: its rounds' spreads weighed by their edges. */
export function pieceSpread(piece: PieceSummary): number {
  let edge = 0
  let spread = 0
  for (const round of piece.rounds) {
    edge += round.solidMm
    spread += round.solidMm * round.ratioSpread
  }
  return edge > 0 ? spread / edge : 0
}
