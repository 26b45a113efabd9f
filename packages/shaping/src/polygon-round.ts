// One more round of a solid polygon: every place of the round below gets one stitch, the k corner places more,
// by an even number where that comes near enough to flat, so that each corner keeps a stitch on its mirror line; else by
// any number, and the corner stands left and right of its line by turns.

import type { Anchor, Element, Motif, Round } from "@roundwright/motif"
import type { StitchKind } from "@roundwright/stitches"

/** More than seven stitches do not fit side by side in one place. */
const mostInCorner = 7

/** The same number in every round whatever the count; or a multiple of `step`, whichever comes nearest to flat. */
export type CornerGroups = { readonly steady: number } | { readonly step: 1 | 2 }

/**
 * @param flat the count that lies flat; the round comes as near to it as the groups allow
 * @param groups stitches to add at each corner
 */
export function polygonRound(
  motif: Motif,
  kind: StitchKind,
  corners: number,
  flat: number,
  groups: CornerGroups,
): Round {
  const round = motif.rounds.length
  const below = motif.rounds.at(-1)?.elements.length ?? 0
  const number = round + 1
  if (round === 0) {
    const each = "steady" in groups ? groups.steady : Math.round(flat / corners)
    const count = corners * Math.max(1, each)
    const anchors: Anchor[] = [{ at: "centre" }]
    const elements = Array.from(
      { length: count },
      (): Element => ({ type: "stitch", kind, anchors }),
    )
    return { number, elements, turned: false, closing: "joined" }
  }
  const wanted = (flat - below) / corners
  const extra = "steady" in groups ? groups.steady : nearestGroup(wanted, groups.step)
  const side = below / corners
  const elements: Element[] = []
  const corner = cornerPlace(motif, side)
  for (let element = 0; element < below; element++) {
    const anchors: Anchor[] = [{ at: "stitch", round: round - 1, element }]
    const tops = element % side === corner ? 1 + extra : 1
    for (let top = 0; top < tops; top++) elements.push({ type: "stitch", kind, anchors })
  }
  return { number, elements, turned: false, closing: "joined" }
}

function nearestGroup(wanted: number, step: 1 | 2): number {
  return Math.min(mostInCorner - 1, Math.max(0, step * Math.round(wanted / step)))
}

/**
 * Place of a side that stands on its corner: the middle of the corner group below; the first of a round start. A group
 * of an even number has no middle: the place before or after it, by turns.
 */
function cornerPlace(motif: Motif, side: number): number {
  const last = motif.rounds.at(-1)!
  if (motif.rounds.length === 1) return 0
  const counts = new Map<number, number[]>()
  last.elements.forEach((element, i) => {
    if (element.type !== "stitch" || i >= side) return
    const anchor = element.anchors[0]!
    if (anchor.at === "stitch")
      counts.set(anchor.element, [...(counts.get(anchor.element) ?? []), i])
  })
  const own = motif.rounds.length > 2 ? { ...motif, rounds: motif.rounds.slice(0, -1) } : motif
  const before = own.rounds.at(-1)!.elements.length
  const corner =
    motif.rounds.length > 2 ? cornerPlace(own, before / (last.elements.length / side)) : 0
  const group = counts.get(corner) ?? [0]
  const turn = group.length % 2 === 0 ? motif.rounds.length % 2 : 0
  return group[Math.floor(group.length / 2) - turn]!
}
