// Stitches: how many go where, by what the words of a step say of count and place.

import type { Anchor } from "@roundwright/motif"
import type { StitchKind } from "@roundwright/stitches"
import { shapedKind } from "./main-stitch.ts"
import { closeLoop, closesSpace, workOnMade } from "./perform-closing.ts"
import { passEach } from "./perform-pass.ts"
import { workWithFirstLeg } from "./perform-start.ts"
import type { RoundWork } from "./round-work.ts"
import type { Place, Span, Step, StitchName } from "./tree.ts"
import { nextSites, noPlace } from "./work-places.ts"

/** Stitches of one step, wherever they go. */
export function performWork(work: RoundWork, step: Extract<Step, { do: "work" }>): void {
  if (step.between !== undefined) {
    work.between = step.between
    const { between: _between, ...plain } = step
    performWork(work, plain)
    work.between = 0
    return
  }
  if (work.pendingLeg) {
    workWithFirstLeg(work, step)
    return
  }
  if (step.even) {
    workEvenly(work, step)
    return
  }
  if (step.legs) {
    workByLegs(work, step, step.legs)
    return
  }
  const place = step.place
  if (place?.at === "list") {
    for (const part of place.places) performWork(work, { ...step, place: part })
    return
  }
  if (place?.at === "each") {
    passEach(work, step)
    return
  }
  if (place?.at === "made") {
    workOnMade(work, step, place)
    return
  }
  if (place?.at === "hook-chain" && work.index > 0) {
    closeLoop(work, step)
    return
  }
  if (closesSpace(work, step)) return
  if (!place) {
    workUnplaced(work, step)
    return
  }
  const anchors = placeAnchors(work, place)
  if (anchors) {
    makeAt(
      work,
      step,
      anchors.map((anchor) => [anchor]),
      place,
    )
    return
  }
  if (place.at !== "next") return
  const { sites, position } = nextSites(work, place)
  for (const site of sites) work.use(position, site, "worked")
  work.current = sites[sites.length - 1] ?? work.current
  makeAt(
    work,
    step,
    sites.map((site) => [site.anchor]),
    place,
  )
}

/** A gathered stitch whose legs are spelled out place by place. */
function workByLegs(
  work: RoundWork,
  step: Extract<Step, { do: "work" }>,
  legs: readonly { count: number; place: Place }[],
): void {
  const anchors: Anchor[] = []
  for (const leg of legs) {
    const fixed = placeAnchors(work, leg.place)
    let anchor = fixed?.[0]
    if (!anchor && leg.place.at === "next") {
      const { sites, position } = nextSites(work, leg.place)
      for (const site of sites) work.use(position, site, "worked")
      work.current = sites[sites.length - 1] ?? work.current
      anchor = sites[0]?.anchor
    }
    if (!anchor) throw noPlace(leg.place, "This leg has no place to go into.")
    for (let i = 0; i < leg.count; i++) anchors.push(anchor)
  }
  makeStitches(work, step, step.stitch, anchors, 1)
}

/** Places that need no search: the ring, the same place again. Null for others. */
export function placeAnchors(work: RoundWork, place: Place): Anchor[] | null {
  if (place.at === "ring" || (place.at === "hook-chain" && work.index === 0))
    return [{ at: "centre" }]
  if (place.at === "same") return [samePlace(work, place)]
  if (
    place.at === "next" &&
    work.index === 0 &&
    work.main.edge.size === 0 &&
    (place.noun.what === "chain" || place.noun.what === "ring" || place.noun.what === "space")
  )
    return [{ at: "centre" }]
  return null
}

function samePlace(work: RoundWork, place: Extract<Place, { at: "same" }>): Anchor {
  if (work.inPlace?.[0]) return work.inPlace[0]
  const site = work.current
  if (!site) {
    if (work.index === 0) return { at: "centre" }
    throw noPlace(place, "Nothing has been worked into yet, so there is no same place.")
  }
  if (site.anchor.at === "centre" || site.anchor.round === work.main.edge.round) {
    work.use(work.main, site, "worked")
    work.main.at = Math.max(work.main.at, site.to)
  }
  return site.anchor
}

/** Stitches with no place said: into the group's place, the ring, or one in each of the next. */
function workUnplaced(work: RoundWork, step: Extract<Step, { do: "work" }>): void {
  if (work.inPlace) {
    makeAt(work, step, [work.inPlace.slice()], null)
    return
  }
  if (work.main.edge.round < 0) {
    makeAt(work, step, [[{ at: "centre" }]], null)
    return
  }
  const { stitch } = step
  const legs = stitch.tog ? (stitch.kind.gathered?.legs ?? 1) : 1
  for (let i = 0; i < step.count; i++) {
    const place: Place = {
      start: step.start,
      end: step.end,
      at: "next",
      noun: { what: "stitch" },
      count: legs,
    }
    const { sites, position } = nextSites(work, place)
    for (const site of sites) work.use(position, site, "worked")
    work.current = sites[sites.length - 1] ?? work.current
    if (stitch.shape === "increase")
      makeStitches(
        work,
        step,
        stitch,
        sites.map((s) => s.anchor),
        2,
      )
    else
      makeStitches(
        work,
        step,
        stitch,
        sites.map((s) => s.anchor),
        1,
      )
    work.countStep(step)
  }
}

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
    if (over || named) {
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
    const several =
      count === places.length && count < 4
        ? work.choices.take("several-in-several", ["each", "one-each"])
        : null
    const spread =
      place?.over === true ||
      several === "one-each" ||
      (several === null && count >= places.length && count < 2 * places.length)
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

function makeStitches(
  work: RoundWork,
  span: Span,
  stitch: StitchName,
  anchors: readonly Anchor[],
  count: number,
): void {
  const kind = shapedKind(work, stitch)
  const legs = kind.gathered?.legs ?? 1
  const full = anchors.length === legs || anchors.length > 1 ? anchors : spreadLegs(anchors, legs)
  const onePlace = full.every((anchor) => anchor === full[0])
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

/** "36 sc evenly, increasing 6": so many stitches spread over the whole round below. */
function workEvenly(work: RoundWork, step: Extract<Step, { do: "work" }>): void {
  const { edge } = work.main
  const below: number[] = []
  edge.cells.forEach((cell, index) => {
    if (cell.type === "stitch" || (cell.type === "chain" && edge.round < 0)) below.push(index)
  })
  if (below.length === 0)
    edge.cells.forEach((cell, index) => {
      if (cell.type === "chain") below.push(index)
    })
  const count = step.count > 0 ? step.count : Math.max(1, below.length + (step.extra ?? 0))
  if (below.length === 0) {
    makeStitches(work, step, step.stitch, [{ at: "centre" }], count)
    return
  }
  const place = (k: number) => edge.anchorAt(below[k]!, false)
  if (work.startTaken && work.between > 0 && count < below.length) {
    // The starting stitch is the first of them.
    for (let i = 1; i <= count; i++)
      makeStitches(
        work,
        step,
        step.stitch,
        [place(Math.floor((i * below.length) / (count + 1)))],
        1,
      )
  } else if (count >= below.length) {
    // The increases stand evenly, the first in the first stitch.
    let made = 0
    for (let k = 0; k < below.length; k++) {
      const upTo = Math.ceil(((k + 1) * count) / below.length - 1e-9)
      makeStitches(work, step, step.stitch, [place(k)], upTo - made)
      made = upTo
    }
  } else
    for (let i = 0; i < count; i++) {
      const anchors: Anchor[] = []
      for (
        let k = Math.floor((i * below.length) / count);
        k < Math.floor(((i + 1) * below.length) / count);
        k++
      )
        anchors.push(place(k))
      const kind: StitchKind =
        anchors.length > 1
          ? { ...step.stitch.kind, gathered: { how: "together", legs: anchors.length } }
          : step.stitch.kind
      makeStitches(work, step, { kind, tog: false }, anchors, 1)
    }
  for (const index of below)
    work.use(work.main, { from: index, to: index + 1, anchor: place(0) }, "worked")
  work.main.at = work.end
  work.find({
    severity: "note",
    code: "spread-evenly",
    start: step.start,
    end: step.end,
    message: `${count} stitches are spread evenly over the ${below.length} below; where the increases or decreases stand is not said.`,
    hint: "Write the repeat out if their places matter.",
  })
}
