// What to change, of a piece that is judged already: the search takes longer than the verdict, so it comes after it.

import type { Motif } from "@roundwright/motif"
import type { LaidOutShape } from "@roundwright/relaxation"
import { searchMends } from "@roundwright/shaping"
import type { Gauge, Terms } from "@roundwright/stitches"
import type { CheckResult } from "./result.ts"

export interface Judged {
  readonly motif: Motif
  readonly gauge: Gauge
  readonly terms: Terms
  /** Null where the ledger judges. */
  readonly shape: LaidOutShape | null
}

/** The remedies, and what is said where not all was looked at. */
export function remediesFor({ motif, gauge, terms, shape }: Judged): {
  readonly remedies: CheckResult["remedies"]
  readonly notes: readonly string[]
} {
  const judge = shape ? ({ judge: "net", shape } as const) : {}
  const { mends, leftOut } = searchMends(motif, gauge, { terms, ...judge })
  return {
    remedies: mends.map(({ round, change, fullnessAfter, verdictAfter }) => ({
      round,
      change,
      fullnessAfter,
      verdictAfter,
    })),
    notes: leftOut === null ? [] : [leftOut],
  }
}
