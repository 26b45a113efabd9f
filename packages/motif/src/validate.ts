// A motif that reaches the geometry must hold together: every anchor names an element that exists
// on an earlier round (or earlier in the same round), of the type the anchor says.

import { RoundwrightError } from "@roundwright/numerics"
import type { Anchor, Motif } from "./model.ts"

/** @throws RoundwrightError `broken-motif` naming the round and element at fault */
export function validateMotif(motif: Motif): void {
  motif.rounds.forEach((round, roundIndex) => {
    if (round.elements.length === 0) fail("has no stitches", round.number, 0)
    round.elements.forEach((element, index) => {
      if (element.type !== "stitch") {
        if (!Number.isInteger(element.chains) || element.chains < 1)
          fail("holds a run of chains that is not a whole number above 0", round.number, index)
        return
      }
      if (element.anchors.length === 0)
        fail("holds a stitch worked into nothing", round.number, index)
      for (const anchor of element.anchors) {
        const fault = faultOf(anchor, motif, roundIndex, index)
        if (fault) fail(fault, round.number, index)
      }
    })
  })
}

function faultOf(anchor: Anchor, motif: Motif, roundIndex: number, index: number): string | null {
  if (anchor.at === "centre") return null
  const target = motif.rounds[anchor.round]?.elements[anchor.element]
  if (!target) return "works into an element that does not exist"
  const earlier =
    anchor.round < roundIndex || (anchor.round === roundIndex && anchor.element < index)
  if (!earlier) return "works into something made later"
  if (anchor.at === "stitch" && target.type !== "stitch") return "takes a chain for a stitch"
  if (anchor.at === "picot" && target.type !== "picot") return "takes something else for a picot"
  if ((anchor.at === "space" || anchor.at === "chain") && target.type !== "chain")
    return "takes a stitch for a chain space"
  if (anchor.at === "chain" && target.type === "chain" && anchor.chain >= target.chains)
    return "works into a chain beyond the end of its run"
  return null
}

function fail(fault: string, round: number, element: number): never {
  throw new RoundwrightError("broken-motif", `Round ${round} ${fault} (element ${element}).`, {
    hint: "This is a fault in how the motif was built, not in the pattern.",
    numbers: { round, element },
  })
}
