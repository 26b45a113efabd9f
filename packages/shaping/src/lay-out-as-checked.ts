// A whole piece laid out as a check of it would be, within the time a maker waits.

import type { Motif } from "@roundwright/motif"
import { unlessRefused } from "@roundwright/numerics"
import { type LaidOutShape, layOutBounded } from "@roundwright/relaxation"
import type { Gauge } from "@roundwright/stitches"

/** Null for a piece that is too large or that the net refuses: then the ledger judges. */
export function layOutAsChecked(motif: Motif, gauge: Gauge): LaidOutShape | null {
  return unlessRefused(
    () => layOutBounded(motif, gauge),
    () => null,
  )
}
