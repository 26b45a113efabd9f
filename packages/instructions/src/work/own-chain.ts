// Stitches worked back along a chain of the round itself: leaves, points, tendrils.

import type { Anchor } from "@roundwright/motif"
import type { Place, Span, Step } from "../base/tree.ts"
import { meaningOf } from "../edge/meanings.ts"
import { makeStitches } from "./make-stitches.ts"
import type { OwnChain } from "./round-parts.ts"
import { CannotWork, type RoundWork } from "./round-work.ts"
import { noPlace } from "./shortages.ts"

/** The chain just made, with the hook before the chain after those skipped. */
export function turnBack(work: RoundWork, skip: number, span: Span): OwnChain {
  const element = work.elements.length - 1
  const last = work.elements[element]
  if (last?.type !== "chain" || skip < 0)
    throw noPlace(span, "There is no chain just made to work back along.")
  return { element, next: last.chains - 1 - skip }
}

/** Fewest chains that a leaf or a point is worked back along; of fewer nobody says "each ch". */
const fewestOfLeaf = 2

/**
 * "ch 7, skip first chain, dc into each chain": chains are named, the round below has none, and the round has just
 * made some.
 */
export function turnsBackUnsaid(work: RoundWork, place: Place | null): boolean {
  if (!place || (work.own && work.own.next >= 0) || work.inPlace || work.index === 0) return false
  const nouns = place.at === "each" ? place.nouns : place.at === "next" ? [place.noun] : []
  if (nouns.length === 0 || !nouns.every(({ what }) => what === "chain")) return false
  if (place.at === "next" && (place.pick !== undefined || place.order === "any")) return false
  const last = work.elements[work.elements.length - 1]
  if (last?.type !== "chain" || last.chains < fewestOfLeaf) return false
  return !meaningOf(work.main.edge, { what: "chain" }).exists
}

/** True where the step goes on along a chain that is being worked back along. */
export function goesOnAlong(work: RoundWork, place: Place | null): boolean {
  const own = work.own
  if (!own || own.next < 0 || place?.at !== "next" || place.pick !== undefined) return false
  if (place.ofRound !== undefined || place.below !== undefined) return false
  const { noun } = place
  return noun.what === "chain" || (noun.what === "stitch" && !noun.kind && !place.order)
}

/** Stitches in the next chains of it, one in each or `step.count` in each. */
export function workAlong(
  work: RoundWork,
  step: Extract<Step, { do: "work" }>,
  places: number,
  each: number,
): void {
  const { stitch } = step
  const legs = stitch.tog ? (stitch.kind.gathered?.legs ?? 1) : 1
  const sets = stitch.tog && places % legs === 0 && places > 1 ? places / legs : places
  for (let i = 0; i < sets; i++) {
    work.countStep(step)
    const anchors = Array.from({ length: legs }, () => takeOwn(work, step))
    makeStitches(work, step, stitch, anchors, each)
  }
}

function takeOwn(work: RoundWork, span: Span): Anchor {
  const own = work.own
  if (!own || own.next < 0)
    throw new CannotWork({
      severity: "error",
      code: "chain-used-up",
      start: span.start,
      end: span.end,
      message: "All chains of the chain worked back along are used when it comes to this.",
      hint: "Count the chains and the stitches on them.",
    })
  const chain = own.next
  own.next -= 1
  return { at: "chain", round: work.index, element: own.element, chain }
}
