// A piece laid out within the time a maker waits: a second or two. Work is counted, not timed, so that the same piece
// always comes out in the same shape.

import { type Motif, stitchesAndChains } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import type { Gauge } from "@roundwright/stitches"
import type { NetOptions } from "./build-net.ts"
import { type LaidOutShape, layOut } from "./lay-out.ts"

/** Multiplications in space: a second or so. */
const mostWork = 5e9
/** Where whoever waits can do nothing else meanwhile: a blink, and a piece of some ten rounds. */
const mostNodesAtOnce = 800
const mostWorkAtOnce = 3e8
/** More nodes are pressed flat only: in space the work would be over before the search had begun. */
const mostNodesInSpace = 4_000
/** More nodes are refused: pressing them flat takes seconds. */
export const mostNodesPressed = 12_000

export interface BoundOptions extends NetOptions {
  /** The thread is shared with a reader, who cannot do anything while it lays out: small pieces only. */
  readonly atOnce?: boolean
}

/**
 * The lowest shape found within the work; of a large piece, and of one that lies flat, the flat shape alone.
 * @throws RoundwrightError `too-large-at-once`, and what `layOut` throws
 */
export function layOutBounded(
  motif: Motif,
  gauge: Gauge,
  options: BoundOptions = {},
): LaidOutShape {
  const nodes = stitchesAndChains(motif)
  if (nodes > (options.atOnce ? mostNodesAtOnce : mostNodesPressed))
    throw new RoundwrightError("too-large-at-once", "The piece is too large to be done at once.", {
      hint: "Lay it out without a bound on the work, or fewer rounds of it.",
      numbers: { nodes },
    })
  return layOut(motif, gauge, {
    ...options,
    inSpace: nodes <= mostNodesInSpace ? "off" : false,
    space: { work: options.atOnce ? mostWorkAtOnce : mostWork },
  })
}
