// One thing to do about a piece, and what comes of it.

import type { Remedy } from "@roundwright/flatness"
import type { Motif } from "@roundwright/motif"

export interface Mend extends Remedy {
  readonly kind: Remedy["edit"]["kind"]
  /** The changed piece; the piece itself for `leave`, `block` and `hand`, null where no stitch changes (another hook). */
  readonly motif: Motif | null
  /** Who gives `verdictAfter`. */
  readonly judgedBy: "net" | "ledger"
  /** Departure from flat over all rounds after the change (mend-fault.ts). */
  readonly misfit: number
}
