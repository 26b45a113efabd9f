// A whole piece laid out as a check of it would be, for its verdict and sizes: pressed flat, which is all the judge needs.

import { type Motif, stitchesAndChains } from "@roundwright/motif"
import { unlessRefused } from "@roundwright/numerics"
import { type LaidOutShape, layOut, mostNodesPressed } from "@roundwright/relaxation"
import type { Gauge } from "@roundwright/stitches"

/** Null for a piece that is too large or that the net refuses: then the ledger judges. */
export function layOutAsChecked(motif: Motif, gauge: Gauge): LaidOutShape | null {
  if (stitchesAndChains(motif) > mostNodesPressed) return null
  return unlessRefused(
    () => layOut(motif, gauge, { inSpace: false }),
    () => null,
  )
}
