// Stitches: how many go where, by what the words of a step say of count and place.

import type { Anchor } from "@roundwright/motif"
import { fewestOfLoop } from "../base/limits.ts"
import type { Noun, Place, Step } from "../base/tree.ts"
import { besideFirstLeg, workWithFirstLeg } from "./first-leg.ts"
import { makeAt, makeStitches } from "./make-stitches.ts"
import { goesOnAlong, turnBack, turnsBackUnsaid, workAlong } from "./own-chain.ts"
import { closeLoop, closesSpace, workOnMade } from "./perform-closing.ts"
import { passEach } from "./perform-pass.ts"
import type { RoundWork } from "./round-work.ts"
import { noPlace } from "./shortages.ts"
import { wholeLoop } from "./start-places.ts"
import { workEvenly } from "./work-evenly.ts"
import { nextSites } from "./work-places.ts"

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
    workWithFirstLeg(work, besideFirstLeg(step))
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
  if (step.corner)
    work.find({
      severity: "warning",
      code: "corner-not-said",
      start: step.start,
      end: step.end,
      message: `How many stitches a corner gets is not said; ${step.count} are taken.`,
      hint: `Write "${step.count} sc in each corner", or state the round's total.`,
    })
  const place = step.place
  if (turnsBackUnsaid(work, place)) work.own = turnBack(work, 0, step)
  if (place?.at === "list") {
    for (const part of place.places) performWork(work, { ...step, place: part })
    return
  }
  if (place?.at === "each" && place.unsaid && isWholeRound(work, step.count)) {
    workEvenly(work, { ...step, place: null, even: true })
    return
  }
  if (place?.at === "each" && !alongOwn(work, place)) {
    passEach(work, step)
    return
  }
  if (place?.at === "made") {
    workOnMade(work, step, place)
    return
  }
  if (place?.at === "hook-chain" && (work.index > 0 || endsInChain(work))) {
    const last = work.elements.at(-1)
    if (last?.type === "chain" && place.nth < last.chains) {
      work.own = turnBack(work, place.nth - 1, step)
      workAlong(work, step, 1, step.count)
    } else closeLoop(work, step)
    return
  }
  if (place && goesOnAlong(work, place) && place.at === "next") {
    const one = place.count === 1
    workAlong(work, step, one ? 1 : place.count, one || place.each ? step.count : 1)
    return
  }
  if (place?.at === "each" && work.own) {
    workAlong(work, step, work.own.next + 1, step.count)
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

/** "24 dc around" on twelve stitches: nobody works as many into each as there are stitches. */
function isWholeRound(work: RoundWork, count: number): boolean {
  if (count < fewestOfRound || work.inPlace) return false
  return count >= work.main.edge.cells.filter(({ type }) => type === "stitch").length
}

/** Stitches of the smallest round told by its total. */
const fewestOfRound = 6

/** "sc in each ch" while a chain of the round itself is being worked back along. */
function alongOwn(work: RoundWork, place: Extract<Place, { at: "each" }>): boolean {
  return (
    work.own !== null && work.own.next >= 0 && place.nouns.every((noun) => noun.what === "chain")
  )
}

/** The round itself has just made a chain to turn back on. */
function endsInChain(work: RoundWork): boolean {
  return !work.hookChainIsCentre && work.elements.at(-1)?.type === "chain"
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
      const { sites, position } = closesRound(work, leg.place)
        ? { sites: [work.startSite!], position: work.main }
        : nextSites(work, leg.place)
      for (const site of sites) work.use(position, site, "worked")
      work.current = sites[sites.length - 1] ?? work.current
      anchor = sites[0]?.anchor
    }
    if (!anchor) throw noPlace(leg.place, "This leg has no place to go into.")
    for (let i = 0; i < leg.count; i++) {
      work.countStep(leg.place)
      anchors.push(anchor)
    }
  }
  makeStitches(work, step, step.stitch, anchors, 1)
}

/** Legs shared all round: the last one goes where the first one went. */
function closesRound(work: RoundWork, place: Extract<Place, { at: "next" }>): boolean {
  if (!place.closes || !work.startTaken || !work.startSite) return false
  const { edge, at } = work.main
  let left = 0
  for (let k = at; k < work.end; k++)
    if (edge.cells[((k % edge.size) + edge.size) % edge.size]?.type === "stitch") left += 1
  return left === place.count - 1
}

/** Places that need no search: the ring, the same place again. Null for others. */
export function placeAnchors(work: RoundWork, place: Place): Anchor[] | null {
  if (place.at === "ring" || (place.at === "hook-chain" && work.index === 0))
    return [{ at: "centre" }]
  if (place.at === "same") return [samePlace(work, place)]
  if (
    place.at === "next" &&
    work.index === 0 &&
    work.main.edge.round < 0 &&
    (place.noun.what === "ring" || place.noun.what === "space") &&
    place.pick === undefined
  )
    return [{ at: "centre" }]
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
  // "same place as beginning" at the end of a round is where it began.
  const begin =
    place.begins && work.elements.length > 0 && work.used.some((use) => use.use === "worked")
      ? work.startSite
      : null
  const site = begin ?? work.current
  if (!site) {
    if (work.index === 0) return { at: "centre" }
    throw noPlace(place, "Nothing has been worked into yet, so there is no same place.")
  }
  const loop = place.noun.what === "space" ? wholeLoop(work, site) : null
  if (loop) {
    // "Sl st in next ch, sc in same loop": the loop that chain is one of.
    work.use(work.main, loop, "worked")
    if (work.startSite === site) work.startSite = loop
    work.startTaken = true
    work.main.base = Math.min(work.main.base, loop.from)
    work.main.at = Math.max(work.main.at, loop.to)
    work.current = loop
    return loop.anchor
  }
  if (site.anchor.at === "centre" || site.anchor.round === work.main.edge.round) {
    work.use(work.main, site, "worked")
    work.main.at = Math.max(work.main.at, site.to)
  }
  return site.anchor
}

/** The hook stands in a space it was led to, and nothing has been made yet. */
function startsInSpace(work: RoundWork): boolean {
  return (
    work.used.some((use) => use.use === "slipped") &&
    work.elements.length === 0 &&
    work.repeatDepth === 0 &&
    !work.startTaken &&
    work.startSite?.anchor.at === "space"
  )
}

/** A loop lies between. */
function stepsOverLoop({ main, elements }: RoundWork, from: number, to: number): boolean {
  const last = elements[elements.length - 1]
  if (last?.type === "chain") return false
  for (let at = from; at < to; at++) {
    const element = main.edge.elementAt(((at % main.edge.size) + main.edge.size) % main.edge.size)
    if (element?.type === "chain" && element.chains >= fewestOfLoop) return true
  }
  return false
}

const anyStitch: Noun = { what: "stitch" }

/** Stitches with no place said: into the group's place, the ring, or one in each of the next. */
function workUnplaced(work: RoundWork, step: Extract<Step, { do: "work" }>): void {
  if (work.own && work.own.next >= 0) {
    workAlong(work, step, step.count, 1)
    return
  }
  if (work.inPlace) {
    makeAt(work, step, [work.inPlace], null)
    return
  }
  if (work.main.edge.round < 0) {
    makeAt(work, step, [[{ at: "centre" }]], null)
    return
  }
  if (startsInSpace(work)) {
    // "Join in any ch-1 sp. Beg cluster, ch 2, ...": into the space the yarn was joined in.
    work.use(work.main, work.startSite!, "worked")
    work.main.at = Math.max(work.main.at, work.startSite!.to)
    work.current = work.startSite
    makeAt(work, step, [[work.startSite!.anchor]], null)
    return
  }
  const { stitch } = step
  // "Join in any sp, ch 3, 3 dc, ch 1, *4 dc, ch 1; rep": the space the round is begun in, then each of the next.
  const opening =
    work.repeatDepth === 0 &&
    work.startTaken &&
    work.elements.length === 1 &&
    work.startSite?.anchor.at === "space"
  if (
    opening &&
    step.count > 1 &&
    step.count < 6 &&
    !stitch.tog &&
    work.choices.take("several-unplaced", ["in-space", "one-each"] as const) === "in-space"
  ) {
    makeAt(work, step, [[work.startSite!.anchor]], null)
    return
  }
  if (step.count > 1 && step.count < 6 && work.repeatDepth > 0 && !stitch.tog) {
    // "*work 1 sc, work 2 sc": several in one place, if the total says so.
    // A round begun in a space may mean the next space.
    const fromSpace = work.startSite?.anchor.at === "space"
    const how = work.choices.take(
      "several-unplaced",
      fromSpace
        ? (["one-each", "in-one", "in-space"] as const)
        : work.doubles
          ? (["in-one", "one-each"] as const)
          : (["one-each", "in-one"] as const),
    )
    if (how !== "one-each") {
      const noun: Noun = how === "in-space" ? { what: "space" } : anyStitch
      const one: Place = { start: step.start, end: step.end, at: "next", noun, count: 1 }
      performWork(work, { ...step, place: one })
      return
    }
  }
  const legs = stitch.tog ? (stitch.kind.gathered?.legs ?? 1) : 1
  const inside =
    step.doubled !== undefined &&
    work.choices.take("increase-inside", ["added", "inside"]) === "inside"
  const place: Place = {
    start: step.start,
    end: step.end,
    at: "next",
    noun: anyStitch,
    count: legs,
  }
  for (let i = 0; i < step.count - (inside ? 1 : 0); i++) {
    const from = work.main.at
    const { sites, position } = nextSites(work, place)
    work.overLoops ||= position === work.main && stepsOverLoop(work, from, sites[0]!.from)
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
        i + 1 === step.doubled ? 2 : 1,
      )
    work.countStep(step)
  }
}
