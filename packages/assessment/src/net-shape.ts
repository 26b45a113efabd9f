// The laid-out shape as the elastic net solves it.

import type { Ledger } from "@roundwright/flatness"
import type { Motif } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import { type LaidOutShape, layOut } from "@roundwright/relaxation"
import type { Gauge } from "@roundwright/stitches"
import type { LaidOut } from "./result.ts"

/** Lays the motif out. A piece too large for the net, or one the net refuses, gives the reason in words instead. */
export function layOutMotif(motif: Motif, gauge: Gauge): LaidOutShape | { readonly fault: string } {
  try {
    return layOut(motif, gauge)
  } catch (error) {
    if (!(error instanceof RoundwrightError)) throw error
    return { fault: `The shape could not be laid out: ${error.message}` }
  }
}

/** Filled from the net; the odds are the ledger's, since they come from the spread between hands. */
export function laidOutFromNet(shape: LaidOutShape, ledger: Ledger, gauge: Gauge): LaidOut {
  const length = (value: number | null | undefined) => (gauge.absolute ? (value ?? null) : null)
  const { outline, lift } = shape
  return {
    by: "net",
    verdict: shape.verdict,
    odds: ledger.odds,
    fromRound: shape.fromRound,
    liftMm: length(lift?.liftMm),
    waves: lift?.waves ?? null,
    sideReachMm: length(outline.sideReachMm),
    cornerReachMm: length(outline.cornerReachMm),
    acrossMm: length(outline.acrossMm),
    bowMm: outline.corners > 0 ? length(outline.bowMm) : null,
    cornerAngleDeg: outline.cornerAngleDeg,
    skewDeg: shape.skewDeg,
    blockingStretch: shape.blockingStretch,
    acrossAfterRoundMm: shape.acrossAfterRound.map(length),
  }
}

/** What to say beside a laid-out shape: how it ended where that matters, and where it parts from the ledger. */
export function shapeNotes(shape: LaidOutShape, ledger: Ledger): string[] {
  const notes: string[] = []
  if (!shape.flat.how.settled || shape.space?.how.settled === false)
    notes.push("The shape had not come to rest when the search ended: take its figures as rough.")
  if (shape.verdict !== ledger.verdict)
    notes.push(
      `The ledger alone would say '${ledger.verdict}': the laid-out shape takes lace, mixed heights and corners into account, the ledger only in outline.`,
    )
  return notes
}
