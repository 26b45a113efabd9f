// Free layers: what stands in front of the ground and is no part of the edge that the next round grows from.

import type { Element, Motif } from "./model.ts"

/** For each round whether it is ground: worked into by a later round, or the last, and not free as a whole. */
export function groundRounds(motif: Motif): boolean[] {
  const worked = new Set<number>()
  motif.rounds.forEach((round, index) => {
    for (const element of round.elements)
      if (element.type === "stitch")
        for (const anchor of element.anchors)
          if (anchor.at !== "centre" && anchor.round < index) worked.add(anchor.round)
  })
  const last = motif.rounds.length - 1
  return motif.rounds.map(
    ({ elements }, index) => (index === last || worked.has(index)) && !elements.every(isFree),
  )
}

/** Whether an element is told to stand free of the ground. A picot adds nothing to an edge in any layer. */
export function isFree(element: Element): boolean {
  return element.type !== "picot" && element.free === true
}
