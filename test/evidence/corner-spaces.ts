// Which elements of a round stand in the middle of a corner, as a maker sees them.

import { findCorners, type Motif, type RoundCorners } from "@roundwright/motif"

const known = new WeakMap<Motif, readonly RoundCorners[]>()

export function isCornerSpace(motif: Motif, round: number, element: number): boolean {
  const corners = known.get(motif) ?? findCorners(motif)
  known.set(motif, corners)
  const size = motif.rounds[round]?.elements.length ?? 0
  return (corners[round]?.groups ?? []).some(({ first, last }) => {
    const span = (last - first + size) % size
    return span % 2 === 0 && (first + span / 2) % size === element
  })
}
