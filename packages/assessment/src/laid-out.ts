// The laid-out shape as far as the ledger alone can tell it.

import { bands, type Ledger, type LedgerRow } from "@roundwright/flatness"
import type { Gauge } from "@roundwright/stitches"
import { mostOfPolygon } from "./corners-seen.ts"
import type { LaidOut } from "./result.ts"

/** Filled from the ledger; what only the solved shape can tell is null. */
export function laidOutFromLedger(ledger: Ledger, gauge: Gauge): LaidOut {
  const last = ledger.rows.at(-1)
  const length = (value: number | null | undefined) => (gauge.absolute ? (value ?? null) : null)
  return {
    by: "ledger",
    verdict: ledger.verdict,
    odds: ledger.odds,
    fromRound: ledger.fromRound,
    liftMm: length(liftOf(ledger.rows)),
    waves: null,
    sideReachMm: length(last?.radiusMm),
    cornerReachMm: length(last?.cornerReachMm),
    acrossMm: length(last && acrossOf(last)),
    corners: last ? cornersOf(last) : 0,
    bowMm: null,
    cornerAngleDeg: null,
    skewDeg: null,
    blockingStretch: last ? stretchOf(ledger, last) : null,
    blockingRound: null,
    meanStretch: null,
    acrossAfterRoundMm: ledger.rows.map((row) => length(acrossOf(row))),
    slack: null,
    settled: null,
  }
}

/** A short edge rounds the ledger's corners, or cups: which of them, only a laid-out shape tells. So it tells them as counted. */
function cornersOf({ outline: { corners } }: LedgerRow): number {
  return corners > mostOfPolygon ? 0 : corners
}

/** From edge to edge through the centre: side to side, or side to corner when the corners are odd. */
export function acrossOf(row: LedgerRow): number {
  return row.outline.corners % 2 === 1 ? row.radiusMm + row.cornerReachMm : 2 * row.radiusMm
}

/**
 * Rim height of the surface of revolution the rounds make: each round rises sqrt(1 - fullness^2)
 * times its depth where it is leaner than the give of the fabric takes up. Null where a round is too full for one (it waves instead).
 * Source: cone with slant s and rim radius s sin(alpha), depth s cos(alpha).
 */
function liftOf(rows: readonly LedgerRow[]): number | null {
  let lift = 0
  for (const row of rows) {
    if (row.verdict === "ruffles") return null
    const slope = Math.min(1, Math.max(0, row.fullness + bands.flat))
    lift += row.depthMm * Math.sqrt(1 - slope * slope)
  }
  return lift
}

/**
 * Share by which the shorter of edge and flat edge must be stretched to meet the other: of the last
 * round, or of the worst from the round the verdict starts at.
 */
function stretchOf(ledger: Ledger, last: LedgerRow): number {
  const from = ledger.rows.findIndex((row) => row.round === ledger.fromRound)
  const rows = from < 0 ? [last] : ledger.rows.slice(from)
  return Math.max(
    ...rows.map(({ accumulatedFullness: fullness }) =>
      fullness > 0 ? Math.max(fullness, 1 / fullness) - 1 : 1,
    ),
  )
}
