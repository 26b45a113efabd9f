// Proposals that differ: no two shown have a round in common, as long as there are ideas enough.

import type { Motif } from "@roundwright/motif"
import type { Proposal } from "./proposal.ts"

/** The first that has no round in common with those chosen before; null where all have. */
export function firstWithout(
  candidates: readonly Proposal[],
  chosen: readonly Proposal[],
): Proposal | null {
  const taken = new Set(chosen.flatMap(roundsOf))
  return candidates.find((one) => roundsOf(one).every((round) => !taken.has(round))) ?? null
}

/** Each added round as a text that is equal for equal rounds, wherever they begin. */
function roundsOf({ motif, from }: Proposal): string[] {
  return motif.rounds.slice(from).map((_, i) => roundKey(motif, from + i))
}

function roundKey(motif: Motif, index: number): string {
  const { elements } = motif.rounds[index]!
  const words = elements.map((element) =>
    element.type === "stitch"
      ? JSON.stringify([
          element.kind,
          element.anchors.length,
          placeBelow(motif, element.anchors[0]),
        ])
      : JSON.stringify([element.type, element.chains]),
  )
  return smallestTurn(words).join(";")
}

/** What a stitch is worked into, without its number: the same round may begin elsewhere. */
function placeBelow(
  motif: Motif,
  anchor: { readonly at: string; round?: number; element?: number } | undefined,
) {
  if (anchor === undefined || anchor.round === undefined || anchor.element === undefined) return ""
  const below = motif.rounds[anchor.round]!.elements[anchor.element]!
  return below.type === "chain" ? `ch ${below.chains}` : below.type
}

function smallestTurn(words: readonly string[]): readonly string[] {
  let best = words
  for (let i = 1; i < words.length; i++) {
    const turned = [...words.slice(i), ...words.slice(0, i)]
    for (let k = 0; k < words.length; k++) {
      if (turned[k] === best[k]) continue
      if (turned[k]! < best[k]!) best = turned
      break
    }
  }
  return best
}
