// How a round ends in words: what it is joined into.

import type { Round } from "@roundwright/motif"
import { ordinal } from "../base/wording.ts"
import type { Voice } from "./house-style.ts"

/** "join in top of beg ch-3", "join in first sc": with a slip stitch, as all joins are. */
export function joinWords(round: Round, voice: Voice, into: boolean): string {
  const place = into ? joinPlace(round, voice) : null
  return place === null ? "join" : `join in ${place}`
}

function joinPlace({ elements, startChain }: Round, voice: Voice): string | null {
  const [first] = elements
  if (first?.type === "chain") return "first ch"
  if (first?.type !== "stitch") return null
  if (first.kind.gathered) return "first st"
  if (first.madeOfChains !== undefined && startChain?.counts) {
    const { chains } = startChain
    return chains > first.madeOfChains
      ? `${ordinal(first.madeOfChains)} ch of beg ch-${chains}`
      : `top of beg ch-${chains}`
  }
  const { loops: _, ...kind } = first.kind
  return `first ${voice.name(kind)}`
}
