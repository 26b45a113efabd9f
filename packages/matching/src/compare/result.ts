// What a comparison of two pieces gives.

import type { Parting, PartKind } from "./models.ts"
import type { Slip } from "./slipped.ts"

export interface ComparedRound {
  readonly round: number
  /** Stitches, or mm across, as `by` says; null where a piece has no figure. */
  readonly a: number | null
  readonly b: number | null
  /** b over a. */
  readonly ratio: number | null
}

export interface Comparison {
  /** The first round that differs, by its number; null where they do not part. */
  readonly partAtRound: number | null
  /** `ratio`, `offset` or `step`; null where they do not part. */
  readonly cause: PartKind | null
  /** What was set side by side: what is in `rounds`. */
  readonly by: "counts" | "sizes"
  readonly rounds: readonly ComparedRound[]
  /** b over a for a ratio; b less a, in stitches or mm, for an offset or a step. */
  readonly amount: number | null
  /** Whose count is out of its own run; null where neither or it cannot be told. */
  readonly whose: "a" | "b" | null
  readonly slip: Slip | null
  readonly parting: Parting | null
  /** Whether the counts agree where both are known; null where they are not. */
  readonly countsAgree: boolean | null
  readonly text: string
}
