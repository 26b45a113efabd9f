// A whole piece laid out as a check of it would be, within the time a maker waits.

import type { Motif } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import { type LaidOutShape, layOut } from "@roundwright/relaxation"
import type { Gauge } from "@roundwright/stitches"

/** Stitches and chains beyond which the piece is pressed flat only: in space it would take many seconds. */
const mostInSpace = 4_000
/** Beyond this even pressing it flat takes seconds. */
const mostPressed = 12_000

/** Multiplications in space: a second or so, as much as a check of the text takes, so that both say the same. */
const mostWork = 1e9

/** Null for a piece that is too large or that the net refuses: then the ledger judges. */
export function layOutBounded(motif: Motif, gauge: Gauge): LaidOutShape | null {
  const size = motif.rounds.reduce((sum, { elements }) => {
    const own = elements.map((element) => (element.type === "stitch" ? 1 : element.chains))
    return sum + own.reduce((total, one) => total + one, 0)
  }, 0)
  if (size > mostPressed) return null
  try {
    return layOut(motif, gauge, { inSpace: size <= mostInSpace, space: { work: mostWork } })
  } catch (error) {
    if (error instanceof RoundwrightError) return null
    throw error
  }
}
