// Where the corners of a round are: the chain space or the middle stitch of each corner group; of a round that only carries
// its corners on, the stitch over the corner below.

import { findCorners, type Motif } from "@roundwright/motif"

/** Elements of the round that are its corners, in working order; empty for a round outline. */
export function cornerPlaces(motif: Motif, round: number): number[] {
  const found = findCorners(motif)[round]
  if (!found || found.count === 0) return []
  const { elements } = motif.rounds[round]!
  const n = elements.length
  if (found.groups.length > 0)
    return found.groups
      .map(({ first, last }) => {
        const span = (last - first + n) % n
        const inside = Array.from({ length: span + 1 }, (_, k) => (first + k) % n)
        const chains = inside.filter((e) => elements[e]!.type === "chain")
        const middle = inside[Math.floor(span / 2)]!
        if (chains.length === 0) return middle
        return chains[Math.floor((chains.length - 1) / 2)]!
      })
      .sort((a, b) => a - b)
  if (round === 0) return []
  return cornerPlaces(motif, round - 1)
    .flatMap((corner) => {
      const over = elements.flatMap((element, e) =>
        element.type === "stitch" &&
        element.anchors.some(
          (anchor) =>
            anchor.at !== "centre" && anchor.round === round - 1 && anchor.element === corner,
        )
          ? [e]
          : [],
      )
      return over.length === 0 ? [] : [over[Math.floor((over.length - 1) / 2)]!]
    })
    .sort((a, b) => a - b)
}
