// The places of a motif's last round that the next one is worked into, in working order.

import type { Anchor, Motif } from "@roundwright/motif"
import { chainSize, type Gauge, sizeOf } from "@roundwright/stitches"

export interface Foot {
  readonly anchor: Anchor
  /** Chains of the run, 0 for a stitch. */
  readonly chains: number
  /** Length of edge it carries, mm. */
  readonly widthMm: number
  /** Index of its element in the round. */
  readonly element: number
}

/** Feet of the last round; picots are passed over, nothing is worked into them. */
export function feetOf(motif: Motif, gauge: Gauge): Foot[] {
  const round = motif.rounds.length - 1
  const last = motif.rounds[round]
  if (!last) return []
  const chainMm = chainSize(gauge).lengthMm
  return last.elements.flatMap((element, index): Foot[] => {
    if (element.type === "picot") return []
    if (element.type === "chain")
      return [
        {
          anchor: { at: "space", round, element: index },
          chains: element.chains,
          widthMm: element.chains * chainMm,
          element: index,
        },
      ]
    const { widthMm } = sizeOf(element.kind, gauge, { turned: last.turned })
    return [{ anchor: { at: "stitch", round, element: index }, chains: 0, widthMm, element: index }]
  })
}

/** Places of the last round one stitch each: every chain of a space is one. */
export function feetOfRound(motif: Motif): Anchor[] {
  const round = motif.rounds.length - 1
  return (motif.rounds[round]?.elements ?? []).flatMap((element, index): Anchor[] => {
    if (element.type === "picot") return []
    if (element.type === "stitch") return [{ at: "stitch", round, element: index }]
    return Array.from({ length: element.chains }, () => ({ at: "space", round, element: index }))
  })
}
