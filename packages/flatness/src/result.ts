// What the growth ledger gives: one row a round, a verdict for the piece, and what to change.
// Lengths in mm (in sc widths when the gauge is not absolute), angles in degrees where named so.

import type { ElementChange } from "./change.ts"

export type Verdict = "flat" | "blocks-flat" | "cups" | "ruffles"

/** Chances of the four verdicts, summing to 1, from the spread of the gauge. */
export interface Odds {
  readonly flat: number
  readonly blocksFlat: number
  readonly cups: number
  readonly ruffles: number
}

/** The shape a round's edge takes: round (0 corners) or k corners, from rounded (0) to sharp (1). */
export interface Outline {
  readonly corners: number
  readonly sharpness: number
}

export interface LedgerRow {
  /** The round's number as the text gives it. */
  readonly round: number
  /** Edge with every chain drawn out. */
  readonly edgeMm: number
  /** Edge with every chain loop slack: what cannot be gathered any shorter. */
  readonly gatheredEdgeMm: number
  /** How far the round moves the edge out, in the middle of a side. */
  readonly depthMm: number
  /** Centre to edge: in the middle of a side, and at a corner (equal for a round outline). */
  readonly radiusMm: number
  readonly cornerReachMm: number
  readonly growthMm: number
  /** What the edge must grow by for the round to lie flat in its outline. */
  readonly flatGrowthMm: number
  /** growth / flat growth of this round alone; 1 where slack chains take up the difference. */
  readonly fullness: number
  /** Edge / flat edge at this radius: the same judged from the centre. */
  readonly accumulatedFullness: number
  /**
   * Between what that fullness may come to lie: least with every loop slack, every scallop open and corners sharp, most with
   * loops drawn out and the outline round. Flat is any round whose range holds 1.
   */
  readonly fullnessRange: readonly [number, number]
  /** The accumulated fullness if no scallop of this round opened: equal to it without scallops. */
  readonly heldFullness: number
  /** 2 pi (1 - fullness) in degrees: positive cups, negative ruffles. */
  readonly curvatureDeg: number
  readonly outline: Outline
  /** Length of chain the round holds beyond what its edge needs: slack in loops, not a ruffle. */
  readonly slackMm: number
  /** Judged on the accumulated fullness. */
  readonly verdict: Verdict
  /** Set on a round that stands in front of the ground: petals and other free layers say nothing of how the piece lies. */
  readonly inFront?: true
}

export interface Remedy {
  /** The round to change, as numbered in the text. */
  readonly round: number
  /** The change in words, ready to print. */
  readonly change: string
  readonly fullnessAfter: number
  readonly verdictAfter: Verdict
  /** 0 (nothing) upwards: how much of the piece the change disturbs. Remedies come sorted by it. */
  readonly disturbance: number
  readonly edit: ElementChange
}

export interface Ledger {
  readonly rows: readonly LedgerRow[]
  readonly verdict: Verdict
  /** Fullness by which the piece is judged. */
  readonly fullness: number
  readonly odds: Odds
  /** First round from which the verdict holds to the end; null when the piece lies flat. */
  readonly fromRound: number | null
  /** What must be said beside the verdict: extrapolated sizes, doubtful rounds, slack that explains much. */
  readonly notes: readonly string[]
  /** What the edge's length says of bowed sides, where no laid-out shape tells it; null when they are straight. */
  readonly bowed: string | null
  /** That a round repeats otherwise than the corners do, so that sides differ; null where they are alike. */
  readonly uneven: string | null
}
