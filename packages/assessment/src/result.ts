// The published result of checking one pattern: stable keys, for other programs (`check --json`).
// Every version keeps these keys and may add others; what is absent is null.

import type { LedgerRow, Odds, Verdict } from "@roundwright/flatness"
import type { Counts, Problem } from "@roundwright/instructions"

export interface CheckedRound {
  round: number
  counted: Counts | null
  stated: number | null
  agrees: boolean | null
  /** Present where the words could not be worked and the round stands for its stated total; absent otherwise. */
  assumed?: true
  edgeMm: number | null
  depthMm: number | null
  radiusMm: number | null
  growthMm: number | null
  flatGrowthMm: number | null
  fullness: number | null
  accumulatedFullness: number | null
  curvatureDeg: number | null
  verdict: Verdict | null
}

/** The shape the piece takes. `by` says whether the ledger or the net found it. */
export interface LaidOut {
  by: "ledger" | "net"
  verdict: Verdict
  odds: Odds
  fromRound: number | null
  liftMm: number | null
  waves: number | null
  sideReachMm: number | null
  cornerReachMm: number | null
  acrossMm: number | null
  /** Corners of the last outline as far as they show: 0 where it is round to the eye, whatever `motif.corners` counts; words go by it. */
  corners?: number
  bowMm: number | null
  cornerAngleDeg: number | null
  skewDeg: number | null
  /** Largest stretch of a round that pins the piece flat, and the round; the mean over the piece, which judges. */
  blockingStretch: number | null
  blockingRound: number | null
  meanStretch: number | null
  acrossAfterRoundMm: (number | null)[]
  /** Of each run of chains its length over the way it takes, less one: 0.2 = a fifth hangs slack. Null without a net. */
  slack: { round: number; element: number; slack: number }[] | null
  /** Whether the net came to rest within the work it was given; null without a net. */
  settled: boolean | null
}

export interface CheckResult {
  file: string | null
  motif: { title: string | null; rounds: number; corners: number; symmetry: number } | null
  terms: "US" | "UK"
  gauge: { source: string; absolute: boolean; notes: string[] } & Record<string, unknown>
  rounds: CheckedRound[]
  laidOut: LaidOut | null
  remedies: { round: number; change: string; fullnessAfter: number; verdictAfter: Verdict }[]
  problems: Problem[]
  /** The whole ledger, for charts and reports. */
  ledger: LedgerRow[]
  notes: string[]
  /** 0 = read and flat, 1 = read and something to mend, 2 = could not be read or used. */
  exitStatus: 0 | 1 | 2
}
