// Works the steps of a round one by one.

import type { Anchor } from "@roundwright/motif"
import { type StitchKind, turningChains } from "@roundwright/stitches"
import { mostChains } from "./limits.ts"
import { passAround, passEach } from "./perform-pass.ts"
import { repeatSteps } from "./perform-repeat.ts"
import { isStartChain, workStartChain, workWithFirstLeg } from "./perform-start.ts"
import { CannotWork, type RoundWork } from "./round-work.ts"
import type { Site } from "./sites.ts"
import { findSite, meaningOf } from "./sites.ts"
import type { Noun, Place, Span, Step, StitchName } from "./tree.ts"
import { nextSites, noPlace, overrun, positionFor } from "./work-places.ts"

/** @throws CannotWork at the first step that cannot be worked */
export function perform(work: RoundWork, steps: readonly Step[]): void {
  for (let i = 0; i < steps.length; i++) {
    const step = steps[i]!
    work.countStep(step)
    performOne(work, step, steps, i)
  }
}

function performOne(work: RoundWork, step: Step, steps: readonly Step[], i: number): void {
  switch (step.do) {
    case "work":
      return performWork(work, step)
    case "group":
      return performGroup(work, step)
    case "chain":
      if (isStartChain(work, step)) return workStartChain(work, step, steps, i)
      return makeChains(work, step, steps[i + 1])
    case "skip":
      return performSkip(work, step)
    case "slip":
      return performSlip(work, step, i === steps.length - 1)
    case "attach":
      if (work.elements.length === 0 && step.place) move(work, step.place, true)
      return
    case "join":
      work.joined = true
      if (step.chain !== undefined) work.joinChain = step.chain
      return
    case "repeat":
      return repeatSteps(work, step)
    case "pass":
      return passAround(work, step.cases)
    case "picot":
      return makePicot(work, step)
    case "mode":
      if (step.loops) work.loops = step.loops
      if (step.passes) work.passes = step.passes
      if (step.ofRound !== undefined && step.ofRound > 0) work.modeRound = step.ofRound
      return
    case "turn":
      work.turned = true
      return
    default:
      return
  }
}

function makeChains(
  work: RoundWork,
  step: Extract<Step, { do: "chain" }>,
  next: Step | undefined,
): void {
  if (step.chains > mostChains)
    throw new CannotWork({
      severity: "error",
      code: "too-many-chains",
      start: step.start,
      end: step.end,
      message: `A run of ${step.chains} chains is more than this reader works with (${mostChains}).`,
      hint: "Look at the number.",
    })
  if (step.chains < 1) return
  const last = work.elements[work.elements.length - 1]
  // A chain 1 that closes a cluster is no part of the edge when the space's own chains follow.
  if (
    step.chains === 1 &&
    last?.type === "stitch" &&
    last.kind.gathered &&
    (next?.do === "chain" || (next?.do === "repeat" && next.body[0]?.do === "chain"))
  )
    return
  const before = work.elements[work.elements.length - 2]
  if (
    last?.type === "chain" &&
    last.chains === 1 &&
    step.chains > 1 &&
    before?.type === "stitch" &&
    before.kind.gathered
  ) {
    work.elements[work.elements.length - 1] = { type: "chain", chains: step.chains }
    return
  }
  if (work.elements.length === 0 && work.index > 0) leaveStart(work)
  work.addChains(step.chains, step)
}

/** A loop begun at the join starts from that stitch, so "next" is the one after it. */
function leaveStart(work: RoundWork): void {
  const before = work.shared.rounds[work.index - 1]
  const site = work.startSite
  if (
    before?.closing !== "joined" ||
    !site ||
    work.startPassed ||
    work.startTaken ||
    site.anchor.at !== "stitch"
  )
    return
  if (work.main.at !== site.from) return
  work.startPassed = true
  work.main.at = site.to
}

function makePicot(work: RoundWork, step: Extract<Step, { do: "picot" }>): void {
  if (step.every === undefined) {
    work.add({ type: "picot", chains: step.chains }, step)
    return
  }
  const elements = [...work.elements]
  const spans = [...work.spans]
  work.elements.length = 0
  work.spans.length = 0
  let stitches = 0
  elements.forEach((element, i) => {
    work.add(element, spans[i]!)
    if (element.type === "stitch") stitches += 1
    if (element.type === "stitch" && stitches % step.every! === 0)
      work.add({ type: "picot", chains: step.chains }, step)
  })
}

/** Stitches of one step, wherever they go. */
export function performWork(work: RoundWork, step: Extract<Step, { do: "work" }>): void {
  if (step.between !== undefined) {
    work.between = step.between
    const { between: _between, ...plain } = step
    performWork(work, plain)
    work.between = 0
    return
  }
  if (work.pendingLeg) return workWithFirstLeg(work, step)
  if (step.even) return workEvenly(work, step)
  if (step.legs) return workByLegs(work, step, step.legs)
  const place = step.place
  if (place?.at === "list") {
    for (const part of place.places) performWork(work, { ...step, place: part })
    return
  }
  if (place?.at === "each") return passEach(work, step)
  if (place?.at === "made") return workOnMade(work, step, place)
  if (place?.at === "hook-chain" && work.index > 0) return closeLoop(work, step)
  if (closesSpace(work, step)) return
  if (!place) return workUnplaced(work, step)
  const anchors = placeAnchors(work, place)
  if (anchors)
    return makeAt(
      work,
      step,
      anchors.map((anchor) => [anchor]),
      place,
    )
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
function placeAnchors(work: RoundWork, place: Place): Anchor[] | null {
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
  if (work.inPlace) return makeAt(work, step, [work.inPlace.slice()], null)
  if (work.main.edge.round < 0) return makeAt(work, step, [[{ at: "centre" }]], null)
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
function makeAt(
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
    if (flat.length % legs === 0 && flat.length > legs) {
      for (let i = 0; i < flat.length; i += legs)
        makeStitches(work, step, stitch, flat.slice(i, i + legs), 1)
      return
    }
    makeStitches(work, step, stitch, spreadLegs(flat, Math.max(legs, flat.length)), count)
    return
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

/** "inc" and "dec" are of the round's own stitch. */
function shapedKind(work: RoundWork, stitch: StitchName): StitchKind {
  if (!stitch.shape) return stitch.kind
  return { ...stitch.kind, basic: mainBasic(work) }
}

/** The stitch a round is mostly made of, by its words, else by the round before. */
export function mainBasic(work: RoundWork): StitchKind["basic"] {
  const named = firstBasic(work.allSteps)
  if (named) return named
  const before = work.shared.rounds[work.index - 1]?.elements.find(
    (element) => element.type === "stitch",
  )
  return before?.type === "stitch" ? before.kind.basic : "sc"
}

export function firstBasic(steps: readonly Step[]): StitchKind["basic"] | null {
  for (const step of steps) {
    if (step.do === "work" && !step.stitch.shape && step.stitch.kind.basic !== "sl st")
      return step.stitch.kind.basic
    const inner =
      step.do === "group"
        ? step.steps
        : step.do === "repeat"
          ? step.body
          : step.do === "pass"
            ? step.cases
            : null
    const found = inner ? firstBasic(inner) : null
    if (found) return found
  }
  return null
}

/** "36 sc evenly, increasing 6": so many stitches spread over the whole round below. */
function workEvenly(work: RoundWork, step: Extract<Step, { do: "work" }>): void {
  const { edge } = work.main
  const below: number[] = []
  edge.cells.forEach((cell, index) => {
    if (cell.type === "stitch" || (cell.type === "chain" && edge.round < 0)) below.push(index)
  })
  if (below.length === 0)
    edge.cells.forEach((cell, index) => cell.type === "chain" && below.push(index))
  const count = step.count
  if (below.length === 0) {
    makeStitches(work, step, step.stitch, [{ at: "centre" }], count)
    return
  }
  const place = (k: number) => edge.anchorAt(below[k]!, false)
  if (count >= below.length) {
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

/** "1 sc in top of that dc": a stitch on one made just before, or the end of the round on its first. */
function workOnMade(
  work: RoundWork,
  step: Extract<Step, { do: "work" }>,
  place: Extract<Place, { at: "made" }>,
): void {
  if (place.which === "first" && closeWith(work, step)) return
  const target = madeElement(work, place)
  if (target === null) throw noPlace(place, "Nothing of that name has been made in this round yet.")
  makeAt(work, step, [[{ at: "stitch", round: work.index, element: target }]], place)
}

function madeElement(work: RoundWork, place: Extract<Place, { at: "made" }>): number | null {
  const fits = (i: number) => work.elements[i]?.type === "stitch"
  if (place.which === "first") {
    for (let i = 0; i < work.elements.length; i++) if (fits(i)) return i
    return null
  }
  const wanted = place.noun.what === "stitch" ? place.noun.kind?.basic : undefined
  for (let i = work.elements.length - 1; i >= 0; i--) {
    const element = work.elements[i]
    if (element?.type === "stitch" && (wanted === undefined || element.kind.basic === wanted)) {
      // Not onto a stitch that itself stands on one of this round.
      const anchor = element.anchors[0]
      if (anchor && anchor.at === "stitch" && anchor.round === work.index) return anchor.element
      return i
    }
  }
  return null
}

/** A tall stitch that stands for the last chains of the round: "ch 2, dc in first sc". */
function closesSpace(work: RoundWork, step: Extract<Step, { do: "work" }>): boolean {
  const place = step.place
  if (!place || place.at !== "next" || step.count !== 1) return false
  if (turningChains(step.stitch.kind.basic) < 2) return false
  if (place.noun.what !== "stitch") return false
  const onSlip =
    place.noun.kind?.basic === "sl st" && meaningOf(work.main.edge, place.noun).stretched !== null
  const onStart =
    place.order === "last" &&
    work.startPassed &&
    !work.startTaken &&
    work.startSite?.anchor.at === "space"
  const onFirst =
    place.order === "first" &&
    work.elements.length > 0 &&
    (work.elements[0]?.type === "stitch" || work.elements[0]?.type === "chain")
  if (!onSlip && !onStart && !onFirst) return false
  return closeWith(work, step)
}

function closeWith(work: RoundWork, step: Extract<Step, { do: "work" }>): boolean {
  const last = work.elements[work.elements.length - 1]
  if (last?.type !== "chain" || work.elements.length < 2) return false
  const stands =
    step.countsAs?.space !== undefined
      ? Math.max(1, step.countsAs.space - last.chains)
      : turningChains(step.stitch.kind.basic)
  work.elements[work.elements.length - 1] = {
    ...last,
    chains: last.chains + stands,
    closedWith: step.stitch.kind,
  }
  const first = work.elements[0]
  if (first?.type === "chain" && work.startSite) {
    // The point where both loops meet: the first one starts in the stitch that closed the round before.
    work.elements.unshift({
      type: "stitch",
      kind: { basic: "sl st" },
      anchors: [work.startSite.anchor],
    })
    work.spans.unshift({ start: step.start, end: step.end })
    work.startTaken = true
  }
  if (work.startPassed && work.startSite) work.use(work.main, work.startSite, "worked")
  work.joined = true
  return true
}

/** "ch 13, dc in 13th ch from hook": the chain becomes a loop standing on the edge. */
function closeLoop(work: RoundWork, step: Extract<Step, { do: "work" }>): void {
  const last = work.elements[work.elements.length - 1]
  if (last?.type !== "chain") throw noPlace(step, "There is no chain just made to work into.")
  work.elements[work.elements.length - 1] = { type: "picot", chains: last.chains }
}

function performGroup(work: RoundWork, step: Extract<Step, { do: "group" }>): void {
  const { place } = step
  if (place.at === "each") return passEach(work, step)
  if (place.at === "list") {
    for (const part of place.places) performGroup(work, { ...step, place: part })
    return
  }
  const fixed = placeAnchors(work, place)
  if (fixed) return fillPlace(work, step, fixed)
  if (place.at === "made") {
    const target = madeElement(work, place)
    if (target === null)
      throw noPlace(place, "Nothing of that name has been made in this round yet.")
    return fillPlace(work, step, [{ at: "stitch", round: work.index, element: target }])
  }
  if (place.at !== "next") return
  const count = place.pick === undefined ? place.count : 1
  for (let i = 0; i < count; i++) {
    const one = place.pick === undefined ? { ...place, count: 1 } : place
    const { sites, position } = nextSites(work, one)
    for (const site of sites) fillSite(work, step, site, position)
  }
}

/** Works a group into one place found. */
export function fillSite(
  work: RoundWork,
  step: Extract<Step, { do: "group" }>,
  site: Site,
  position: RoundWork["main"],
): void {
  work.use(position, site, "worked")
  work.current = site
  fillPlace(work, step, [site.anchor])
}

function fillPlace(
  work: RoundWork,
  step: Extract<Step, { do: "group" }>,
  anchors: readonly Anchor[],
): void {
  const before = work.inPlace
  work.inPlace = anchors
  perform(work, step.steps)
  work.inPlace = before
}

function performSkip(work: RoundWork, step: Extract<Step, { do: "skip" }>): void {
  // Inside one place there is nothing of the round to skip.
  if (work.inPlace) return
  const places: Place[] = []
  if (step.place?.at === "list") places.push(...step.place.places)
  else if (step.place) places.push(step.place)
  for (const part of step.steps ?? []) {
    if (part.do === "chain")
      places.push({
        start: part.start,
        end: part.end,
        at: "next",
        noun: { what: "space", size: part.chains },
        count: 1,
      })
    if (part.do === "slip")
      places.push({
        start: part.start,
        end: part.end,
        at: "next",
        noun: { what: "stitch", kind: { basic: "sl st" } },
        count: 1,
      })
    if (part.do === "work")
      places.push({
        start: part.start,
        end: part.end,
        at: "next",
        noun: { what: "stitch", kind: part.stitch.kind },
        count: part.count,
      })
  }
  for (const place of places) {
    if (place.at !== "next") continue
    // The stitch of a counting start is already worked into; "skip first st" means it.
    if (place.order === "first" && work.startTaken) continue
    const found = step.steps ? shortOrNull(() => nextSites(work, place)) : nextSites(work, place)
    if (!found) return
    for (const site of found.sites) work.use(found.position, site, "skipped")
  }
}

/** A list of things to skip may run out at the end of the round: there is no more to skip. */
function shortOrNull<T>(find: () => T): T | null {
  try {
    return find()
  } catch (stop) {
    if (stop instanceof CannotWork && stop.finding.code === "needs-more-than-there-is") return null
    throw stop
  }
}

/** Slip stitches: before any work they move the hook, at the end they join, else they are stitches. */
function performSlip(work: RoundWork, step: Extract<Step, { do: "slip" }>, isLast: boolean): void {
  const started =
    work.elements.length > 0 ||
    work.startChain !== undefined ||
    work.inPlace !== null ||
    work.repeatDepth > 0
  if (!started && work.index > 0) {
    const asStitches = step.place?.at === "each"
    if (!asStitches) {
      move(
        work,
        step.place ?? {
          start: step.start,
          end: step.end,
          at: "next",
          noun: { what: "stitch" },
          count: 1,
        },
        false,
      )
      return
    }
  }
  const stitch: StitchName = { kind: { basic: "sl st" }, tog: false }
  const place = step.place
  if (isLast && work.repeatDepth === 0 && !work.inPlace) {
    if (!place || place.at === "made" || (place.at === "next" && place.order === "first")) {
      work.joined = true
      return
    }
    if (place.at === "next") {
      const position = positionFor(work, place)
      const mark = work.mark()
      const site = work.next(position, place.noun, place)
      work.backTo(mark)
      if (!site) {
        work.joined = true
        return
      }
    }
  }
  performWork(work, {
    do: "work",
    start: step.start,
    end: step.end,
    stitch,
    count: step.count,
    place,
  })
}

/** Moves the start of the round to another place: "sl st to next ch-3 sp", "join in any corner". */
function move(work: RoundWork, place: Place, anywhere: boolean): void {
  if (
    place.at === "each" ||
    place.at === "ring" ||
    place.at === "hook-chain" ||
    place.at === "made"
  )
    return
  if (place.at === "same") return
  if (place.at === "list") {
    for (const part of place.places) move(work, part, anywhere)
    return
  }
  const position = work.main
  if (position.edge.size === 0) return
  const noun = place.noun.what === "ring" ? { what: "any" as const } : place.noun
  let from = position.at
  const joinedStitch =
    work.startSite && !work.startPassed && !work.startTaken && position.at === work.startSite.from
  if (!anywhere && joinedStitch && place.order !== "first") from = work.startSite!.to
  let site: Site | null = null
  const count = anywhere ? 1 : place.count
  const meaning = work.meaning(position, noun, place)
  if (!meaning.exists) throw overrun(work, position, noun, place)
  if (place.beside) {
    from = besideStart(work, place, place.beside, meaning.noun)
  }
  for (let i = 0; i < count; i++) {
    const found =
      place.pick !== undefined && noun.what === "group"
        ? pickedMove(work, place, from)
        : findSite(position.edge, meaning.noun, from, from + 2 * position.edge.size, 0, null)
    if (!found) break
    // Slip stitches over stitches stop before a space.
    if (site && noun.what === "stitch" && crossesSpace(work, site.to, found.from)) break
    site = found
    from = found.to
  }
  if (!site) throw overrun(work, position, noun, place)
  work.use(position, site, "slipped")
  position.base = site.from
  position.at = site.from
  work.startSite = site
  work.startTaken = false
  work.startPassed = false
  work.current = site
}

/** Where to look from for a place beside a corner. */
function besideStart(
  work: RoundWork,
  place: Extract<Place, { at: "next" }>,
  beside: { noun: Noun; side: "after" | "before"; nth: number },
  noun: Noun,
): number {
  const { edge } = work.main
  const meaning = work.meaning(work.main, beside.noun, place)
  const corner = meaning.exists ? findSite(edge, meaning.noun, 0, 2 * edge.size, 0, null) : null
  if (!corner) return 0
  if (beside.side === "after") return corner.to
  let at = corner.from + edge.size
  for (let left = beside.nth; left > 0 && at > corner.from; ) {
    at -= 1
    if (findSite(edge, noun, at, at + 1, 0, null)) left -= 1
  }
  return at
}

function pickedMove(
  work: RoundWork,
  place: Extract<Place, { at: "next" }>,
  from: number,
): Site | null {
  const position = work.main
  const at = position.at
  const base = position.base
  position.at = from
  position.base = from
  try {
    return nextSites(work, { ...place, count: 1 }).sites[0] ?? null
  } finally {
    position.at = at
    position.base = base
  }
}

function crossesSpace(work: RoundWork, from: number, to: number): boolean {
  const { edge } = work.main
  for (let at = from; at < to; at++)
    if (edge.cells[((at % edge.size) + edge.size) % edge.size]?.type === "chain") return true
  return false
}
