// Works the steps of a round one by one.

import type { Anchor } from "@roundwright/motif"
import { mostChains } from "../base/limits.ts"
import type { Place, Step } from "../base/tree.ts"
import type { Site } from "../edge/site.ts"
import { move } from "./move-start.ts"
import { turnBack } from "./own-chain.ts"
import { madeElement } from "./perform-closing.ts"
import { performSkip, performSlip } from "./perform-moves.ts"
import { passAround, passEach } from "./perform-pass.ts"
import { repeatSteps } from "./perform-repeat.ts"
import { isStartChain, moveToSameSpace, raisesFirst, workStartChain } from "./perform-start.ts"
import { performWork, placeAnchors } from "./perform-work.ts"
import { CannotWork, type Performers, type RoundWork } from "./round-work.ts"
import { noPlace } from "./shortages.ts"
import { leaveStart } from "./start-places.ts"
import { nextSites } from "./work-places.ts"

/** How the steps of a round are worked, whatever they are. */
export const performers: Performers = {
  steps: perform,
  stitches: performWork,
  groupAt: fillSite,
}

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
      performWork(work, step)
      return
    case "group":
      performGroup(work, step)
      return
    case "chain":
      if (isStartChain(work, step)) {
        workStartChain(work, step, steps, i)
        return
      }
      if (!raisesFirst(work, step, steps[i + 1])) makeChains(work, step, steps[i + 1])
      return
    case "skip":
      performSkip(work, step)
      return
    case "slip": {
      const rest = steps.slice(i + 1)
      const last = rest.every((next) => saysNoWork(next) || isNextStart(next, step))
      const onlyMoves = rest.every(
        (next) => saysNoWork(next) || next.do === "slip" || next.do === "attach",
      )
      const free = work.repeatDepth === 0 && work.inPlace === null
      // Slip stitches behind the join lead to where the next round begins.
      if (free && onlyMoves && work.joined && work.elements.length > 0) return
      performSlip(work, step, last || (free && onlyMoves && leadsToFirst(step.place)))
      return
    }
    case "attach":
      if (work.elements.length === 0 && step.place) move(work, step.place, true)
      return
    case "join":
      work.joined = true
      if (step.chain !== undefined) work.joinChain = step.chain
      return
    case "repeat":
      repeatSteps(work, step)
      return
    case "pass":
      passAround(work, step.cases)
      return
    case "picot":
      makePicot(work, step)
      return
    case "mode":
      if (step.loops) work.loops = step.loops === "both" ? undefined : step.loops
      if (step.passes) work.passes = step.passes
      if (step.ofRound !== undefined && step.ofRound > 0) work.modeRound = step.ofRound
      if (step.otherSide && work.firstSide !== null) {
        work.main.at = Math.max(work.main.at, work.firstSide)
        work.firstSide = null
      }
      return
    case "turn":
      work.turned = true
      return
    default:
      return
  }
}

/** "..., sl st, ch 1.": the chain begins the next round. */
function isNextStart(step: Step, slip: Extract<Step, { do: "slip" }>): boolean {
  const joins = slip.place === null || leadsToFirst(slip.place)
  return step.do === "chain" && step.place === null && joins && slip.count === 1
}

/** "sl st to first dc", "to top of ch 3": what joins a round. */
function leadsToFirst(place: Place | null): boolean {
  return (
    (place?.at === "made" && place.which === "first") ||
    (place?.at === "next" && place.order === "first")
  )
}

/** What may follow the slip stitch that joins a round. */
function saysNoWork(step: Step): boolean {
  return step.do === "turn" || step.do === "mode" || step.do === "note-counts" || step.do === "join"
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
  const own = work.inPlace?.[0]
  if (own?.at === "stitch" && own.round === work.index) {
    // Chains between stitches that stand on a stitch of this round stand up like picots.
    work.add({ type: "picot", chains: step.chains }, step)
    return
  }
  if (work.elements.length === 0 && work.index > 0) leaveStart(work)
  work.own = null
  work.addChains(step.chains, step)
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

function performGroup(work: RoundWork, step: Extract<Step, { do: "group" }>): void {
  const { place } = step
  if (work.elements.length === 0 && step.steps[0]?.do === "chain") moveToSameSpace(work, step)
  if (step.loose && work.choices.take("bare-list", ["together", "apart"]) === "apart") {
    const last = step.steps[step.steps.length - 1]
    perform(work, step.steps.slice(0, -1))
    if (last?.do === "work") performWork(work, { ...last, place })
    return
  }
  if (place.at === "own-chain") {
    work.own = turnBack(work, place.skip, place)
    perform(work, step.steps)
    work.own = null
    return
  }
  if (place.at === "each") {
    passEach(work, step)
    return
  }
  if (place.at === "list") {
    for (const part of place.places) performGroup(work, { ...step, place: part })
    return
  }
  const fixed = placeAnchors(work, place)
  if (fixed) {
    fillPlace(work, step, fixed)
    return
  }
  if (place.at === "made") {
    const target = madeElement(work, place)
    if (target === null)
      throw noPlace(place, "Nothing of that name has been made in this round yet.")
    fillPlace(work, step, [{ at: "stitch", round: work.index, element: target }])
    return
  }
  if (place.at !== "next") return
  const count = place.pick === undefined ? place.count : 1
  for (let i = 0; i < count; i++) {
    work.countStep(place)
    const one = place.pick === undefined ? { ...place, count: 1 } : place
    const { sites, position } = nextSites(work, one)
    for (const site of sites) fillSite(work, step, site, position)
  }
}

/** Works a group into one place found. */
function fillSite(
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
  const loops = work.loops
  work.inPlace = anchors
  if (step.place.loops) work.loops = step.place.loops
  perform(work, step.steps)
  work.inPlace = before
  work.loops = loops
}
