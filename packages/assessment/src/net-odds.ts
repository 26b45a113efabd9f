// Odds of the four verdicts by the laid-out shape. Hands differ in how tall they work a width: the piece is pressed
// flat as a few of them would make it, and the stretch it needs is read off between those.

import { type Odds, oddsOver, pieceSpread, summarisePiece } from "@roundwright/flatness"
import type { Motif } from "@roundwright/motif"
import { unlessRefused } from "@roundwright/numerics"
import {
  blockableStretch,
  flatStretchOf,
  type LaidOutShape,
  layOut,
  type ShapeVerdict,
  usualMaterial,
} from "@roundwright/relaxation"
import type { Gauge } from "@roundwright/stitches"

/** Hands laid out beside the usual one, in standard deviations: between them the stretch is nearly a straight line. */
const hands = [-2, -1, 1, 2]
/** A stretch that leaves a piece flat, as for the verdict of a flat shape. */
const flatStretch = flatStretchOf(usualMaterial)

/** @returns null where some hand's piece cannot be laid out */
export function oddsOfShape(shape: LaidOutShape, motif: Motif, gauge: Gauge): Odds | null {
  const spread = pieceSpread(summarisePiece(motif, gauge))
  const known = [{ z: 0, off: signed(shape) }]
  if (spread > 0)
    for (const z of hands) {
      const off = offAt(motif, gauge, Math.exp(spread * z))
      if (off === null) return null
      known.push({ z, off })
    }
  known.sort((a, b) => a.z - b.z)
  const flat = flatUpTo(shape)
  return oddsOver((z) => {
    const off = between(known, z)
    if (Math.abs(off) > blockableStretch) return off < 0 ? "cups" : "ruffles"
    return Math.abs(off) <= flat ? "flat" : "blocks-flat"
  })
}

/** Where flat ends, such that the piece itself gets the verdict that its lift has given it. */
function flatUpTo({ verdict, meanStretch }: ShapeVerdict): number {
  if (verdict === "flat") return Math.max(flatStretch, meanStretch)
  return verdict === "blocks-flat" ? Math.min(flatStretch, meanStretch * (1 - 1e-9)) : flatStretch
}

function offAt(motif: Motif, gauge: Gauge, heightFactor: number): number | null {
  return unlessRefused(
    () => signed(layOut(motif, gauge, { heightFactor, inSpace: false })),
    () => null,
  )
}

/** Mean stretch, negative where the edge is too short. */
function signed({ meanStretch, towards }: ShapeVerdict): number {
  return towards === "cups" ? -meanStretch : meanStretch
}

/** On the line through the nearest two, also beyond the last. */
function between(known: readonly { z: number; off: number }[], z: number): number {
  if (known.length === 1) return known[0]!.off
  const above = known.findIndex((one) => one.z >= z)
  const k = Math.max(1, above < 0 ? known.length - 1 : above)
  const [a, b] = [known[k - 1]!, known[k]!]
  return a.off + ((b.off - a.off) * (z - a.z)) / (b.z - a.z)
}
