// The hand, hook or yarn as cause: where every round is off from flat by the same share, no count and no stitch of one round
// is wrong. The stitches are taken to be lower or taller for their width than those the piece was planned with.
//
// With every leg taller by the share t the flat edge of each round grows by t, so a piece that is t too full throughout lies
// flat. That a smaller hook and a thicker yarn make stitches narrower for their height is an experiment's: widths go with
// the hook, heights of rows about with its power 0.45.

import {
  foldLedger,
  judgePiece,
  type LedgerRow,
  type PieceSummary,
  planBand,
} from "@roundwright/flatness"
import type { Motif } from "@roundwright/motif"
import { misfitOf } from "./mend-fault.ts"
import type { Mend } from "./mend-result.ts"

/** Fewer rounds do not show that they are all off alike; round 1 is passed over, a few stitches round a hole. */
const fewestRounds = 4
/** Hands, hooks and yarns differ by no more: sc from 0.87 to 1.14 of its width, published gauges. */
const mostOff = 0.25
/** Rounds are off alike that differ by half of what the yarn gives. */
const sameShare = planBand / 2

/** Nothing where rounds are off by different shares, where all lie flat, or where no hand is so far off. */
export function handAsCause(motif: Motif, piece: PieceSummary, rows: readonly LedgerRow[]): Mend[] {
  const later = rows.slice(1)
  if (later.length < fewestRounds - 1 || later.every(({ verdict }) => verdict === "flat")) return []
  const off = later.map(({ accumulatedFullness }) => Math.log(Math.max(1e-3, accumulatedFullness)))
  const mean = off.reduce((sum, one) => sum + one, 0) / off.length
  if (off.some((one) => Math.abs(one - mean) > sameShare) || Math.abs(mean) > mostOff) return []
  const taller = Math.exp(mean)
  const after = foldLedger(piece, taller)
  const { verdict } = judgePiece(after, piece)
  if (verdict !== "flat") return []
  return [
    {
      kind: "hand",
      edit: { kind: "hand", taller },
      round: motif.rounds[1]!.number,
      change: handWords(taller),
      motif,
      judgedBy: "ledger",
      verdictAfter: verdict,
      fullnessAfter: after.at(-1)!.accumulatedFullness,
      misfit: misfitOf(after),
      disturbance: 0,
    },
  ]
}

export function handWords(taller: number): string {
  const share = Math.round(100 * Math.abs(taller - 1))
  const [full, tall, hook, yarn] =
    taller > 1 ? ["full", "taller", "smaller", "thicker"] : ["tight", "lower", "larger", "thinner"]
  return `Measure a swatch first: every round is too ${full} by the same ${share} %, as no slip in one round makes it. Stitches ${share} % ${tall} for their width lie flat with the counts as they are; a ${hook} hook or a ${yarn} yarn brings them nearer to that.`
}
