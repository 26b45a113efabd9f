// Names for places, so that two stitches worked into the same place can be told.

import type { Anchor } from "./model.ts"

/** Equal for equal places, different for different ones. */
export function anchorKey(anchor: Anchor): string {
  switch (anchor.at) {
    case "centre":
      return anchor.chain === undefined ? "centre" : `centre:${anchor.chain}`
    case "chain":
      return `chain:${anchor.round}:${anchor.element}:${anchor.chain}`
    default:
      return `${anchor.at}:${anchor.round}:${anchor.element}`
  }
}

/** Index of the round an anchor lies on; -1 for the centre. */
export function anchorRound(anchor: Anchor): number {
  return anchor.at === "centre" ? -1 : anchor.round
}
