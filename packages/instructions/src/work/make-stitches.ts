// Stitches into the places found: so many in each, one over several, or spread.

import type { Anchor } from "@roundwright/motif"
import type { StitchKind } from "@roundwright/stitches"
import type { Place, Span, Step, StitchName } from "../base/tree.ts"
import { shapedKind } from "./main-stitch.ts"
import type { RoundWork } from "./round-work.ts"

/** Puts `step.count` stitches to the places found, by what the words allow. */
export function makeAt(
  work: RoundWork,
  step: Extract<Step, { do: "work" }>,
  places: readonly (readonly Anchor[])[],
  place: Place | null,
): void {
  const { stitch, count } = step
  const each = place?.each === true
  if (stitch.shape === "increase") {
    for (const anchors of places)
      makeStitches(work, step, stitch, anchors, 2 * (each || places.length === 1 ? count : 1))
    return
  }
  if (stitch.tog && places.length > 1 && !each) {
    const legs = stitch.kind.gathered?.legs ?? places.length
    const flat = places.flat()
    // "dc3tog in next 3 sts" goes over them, "3-dc cluster in next 5 sts" into each.
    const over = place?.over === true || place?.at !== "next" || place.withLast === true
    const named = stitch.kind.gathered?.how === "together" && flat.length % legs === 0
    // "Cluster in next 3 dc", with as many legs as stitches: over them.
    const cluster =
      stitch.kind.gathered?.how === "cluster" &&
      place?.at === "next" &&
      place.noun.what === "stitch" &&
      legs === places.length &&
      count === 1
    if (over || named || cluster) {
      if (flat.length % legs === 0 && flat.length > legs) {
        for (let i = 0; i < flat.length; i += legs)
          makeStitches(work, step, stitch, flat.slice(i, i + legs), 1)
        return
      }
      makeStitches(work, step, stitch, spreadLegs(flat, Math.max(legs, flat.length)), count)
      return
    }
  }
  if (!each && places.length > 1 && count > 1) {
    const intoSpaces = place?.at === "next" && place.noun.what === "space"
    const several =
      !intoSpaces && count === places.length && count < 4
        ? work.choices.take(
            "several-in-several",
            // Three in each of three is rare, three in the next three is not.
            count > 2 || work.spreads ? ["one-each", "each"] : ["each", "one-each"],
          )
        : null
    const spread =
      place?.over === true ||
      several === "one-each" ||
      (several === null && !intoSpaces && count >= places.length && count < 2 * places.length)
    if (spread) {
      for (let i = 0; i < count; i++)
        makeStitches(work, step, stitch, places[Math.floor((i * places.length) / count)]!, 1)
      return
    }
  }
  for (const anchors of places) makeStitches(work, step, stitch, anchors, count)
}

function spreadLegs(anchors: readonly Anchor[], legs: number): Anchor[] {
  return Array.from({ length: legs }, (_, i) => anchors[Math.floor((i * anchors.length) / legs)]!)
}

export function makeStitches(
  work: RoundWork,
  span: Span,
  stitch: StitchName,
  anchors: readonly Anchor[],
  count: number,
): void {
  const kind = shapedKind(work, stitch)
  const legs = kind.gathered?.legs ?? 1
  const full = anchors.length === legs || anchors.length > 1 ? anchors : spreadLegs(anchors, legs)
  const onePlace = kind.gathered !== undefined && full.every((anchor) => anchor === full[0])
  const made: StitchKind =
    kind.gathered?.how === "together" && onePlace
      ? { ...kind, gathered: { how: "cluster", legs } }
      : kind.gathered && full.length > legs
        ? { ...kind, gathered: { ...kind.gathered, legs: full.length } }
        : kind
  for (let i = 0; i < count; i++) {
    work.stitch(made, full, span)
    if (work.between > 0) work.addChains(work.between, span)
    work.countStep(span)
  }
}
