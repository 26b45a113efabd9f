// Leaving a piece as it is, or blocking it, where that is an answer: computed, not a manner of speaking.

import { bands, type Ledger, type LedgerRow } from "@roundwright/flatness"
import type { Motif } from "@roundwright/motif"
import type { ShapeVerdict } from "@roundwright/relaxation"
import { misfitOf, worksOutBy } from "./mend-fault.ts"
import type { Mend } from "./mend-result.ts"

/** A lean piece is pinned out by as much as a full one: 1 / (1 - 0.17) and 1 + 0.2 are one stretch, give or take rounding. */
const mostPinned = Math.max(bands.blocksFull, 1 / (1 - bands.blocksLean) - 1)

/** @param shape the piece laid out; null where the ledger alone judges */
export function asItIs(motif: Motif, ledger: Ledger, shape: ShapeVerdict | null): Mend[] {
  const { verdict, stretch, round } = shape
    ? { verdict: shape.verdict, stretch: shape.meanStretch, round: shape.blockingRound }
    : worstOf(ledger)
  const same = {
    motif,
    judgedBy: shape ? ("net" as const) : ("ledger" as const),
    fullnessAfter: shape?.fullness ?? ledger.fullness,
    misfit: misfitOf(ledger.rows),
    disturbance: 0,
  }
  if (stretch > mostPinned && verdict !== "flat") return []
  const settled = worksOutBy(ledger.rows)
  if (ledger.verdict === "flat" && verdict === "flat" && settled !== null)
    return [
      {
        ...same,
        kind: "leave",
        edit: { kind: "leave" },
        round: settled.by,
        change: `Leave it: what is off in round ${settled.from} works itself out by round ${settled.by}.`,
        verdictAfter: verdict,
      },
    ]
  if (verdict !== "blocks-flat") return []
  return [
    {
      ...same,
      kind: "block",
      edit: { kind: "block" },
      round,
      change: `Leave it and block it: pinned out it takes a stretch of ${Math.round(100 * stretch)} %${shape ? ", most of it" : ""} in round ${round}.`,
      verdictAfter: "blocks-flat",
    },
  ]
}

/** The stretch by which the shorter of edge and flat edge meets the other, where it is greatest; round 1 is a few stitches round a hole. */
function worstOf(ledger: Ledger): { verdict: Ledger["verdict"]; stretch: number; round: number } {
  const off = ({ accumulatedFullness: fullness }: LedgerRow) =>
    fullness > 0 ? Math.max(fullness, 1 / fullness) - 1 : 1
  const from = Math.max(
    Math.min(1, ledger.rows.length - 1),
    ledger.rows.findIndex((row) => row.round === ledger.fromRound),
  )
  const worst = ledger.rows.slice(from).reduce((a, b) => (off(b) > off(a) ? b : a))
  return { verdict: ledger.verdict, stretch: off(worst), round: worst.round }
}
