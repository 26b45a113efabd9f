// How many words a round of fabric takes when it is written, near enough to compare rounds: what stands in a unit, the
// chains after it, runs of the same told once with their number, the corner's group.

import type { CornerWork, FabricRound, SideWork, UnitWork } from "./fabric-plan.ts"

/** "in next ch-2 sp" */
const place = 4
/** "ch 2" */
const chain = 2
/** "3 times" */
const times = 2

/** Words of one repeat, the sides of each class told once. */
export function wordsOfRound({ corners, sides }: FabricRound): number {
  let words = 0
  for (const corner of corners.values()) words += wordsOfCorner(corner)
  for (const side of sides.values()) words += wordsOfSide(side)
  return words
}

function wordsOfCorner({ each, inner, chains }: CornerWork): number {
  if (chains === 0) return 2 + place
  return 2 * wordsOfStitches({ stitches: each, inner }) + chain + place
}

function wordsOfStitches({ stitches, inner }: Pick<UnitWork, "stitches" | "inner">): number {
  if (inner === 0) return stitches === 1 ? 1 : 2
  return stitches + (stitches - 1) * chain
}

/** Runs of the same work with the same chains after it, each told once. */
function wordsOfSide({ works, gaps }: SideWork): number {
  let words = gaps[0]! > 0 ? chain : 0
  for (let i = 0; i < works.length; ) {
    const { kind, stitches, inner } = works[i]!
    const gap = gaps[i + 1]!
    let end = i + 1
    while (
      end < works.length &&
      works[end]!.kind === kind &&
      works[end]!.stitches === stitches &&
      works[end]!.inner === inner &&
      gaps[end + 1] === gap
    )
      end++
    words += wordsOfStitches(works[i]!) + place + (gap > 0 ? chain : 0)
    if (end > i + 1) words += times
    i = end
  }
  return words
}
