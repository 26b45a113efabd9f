// Going on without stitches: skipping, slip stitches, and starting the round in another place.

import type { Place, Span, Step, StitchName } from "../base/tree.ts"
import { kindFits } from "../edge/site.ts"
import { move } from "./move-start.ts"
import { goesOnAlong, turnBack, turnsBackUnsaid } from "./own-chain.ts"
import { positionFor } from "./positions.ts"
import { CannotWork, type RoundWork } from "./round-work.ts"
import { nothingLeft } from "./try-once.ts"
import { nextSites } from "./work-places.ts"

export function performSkip(work: RoundWork, step: Extract<Step, { do: "skip" }>): void {
  // Inside one place there is nothing of the round to skip.
  if (work.inPlace) return
  const { place: first } = step
  if (step.rest && first?.at === "next") {
    for (;;) {
      const left = shortOrNull(() => nextSites(work, first))
      if (!left) return
      work.countStep(step)
      work.skipsMet.push(step)
      for (const site of left.sites) work.use(left.position, site, "skipped")
    }
  }
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
  for (const [i, place] of places.entries()) {
    if (place.at === "hook-chain" || work.own) work.skipsMet.push(step)
    if (place.at === "hook-chain") work.own = turnBack(work, place.nth - 1, place)
    if (place.at !== "next") continue
    if (turnsBackUnsaid(work, place)) {
      work.skipsMet.push(step)
      work.own = turnBack(work, place.count, place)
      continue
    }
    if (work.own && goesOnAlong(work, place)) {
      work.own.next -= place.count
      continue
    }
    if (i === 0 && isAtStart(work, place, places[1])) continue
    // The stitch of a counting start is already worked into; "skip first st" means it.
    if (place.order === "first" && work.startTaken) continue
    // Where nothing is left the round is at its end, and what is skipped there is its beginning.
    const lenient =
      step.steps !== undefined ||
      (place.count === 1 &&
        work.repeatDepth > 0 &&
        work.main.at >= work.end - 1 &&
        nothingLeft(work))
    const found = lenient ? shortOrNull(() => nextSites(work, place)) : nextSites(work, place)
    if (!found && place.order !== "first" && step.steps === undefined)
      work.find({
        severity: "warning",
        code: "skip-runs-out",
        start: place.start,
        end: place.end,
        message:
          "At the end of the round nothing is left to skip here: the last stitch stands beside the first.",
        hint: "Count the round before, or say how the round ends.",
      })
    if (!found) continue
    work.skipsMet.push(step)
    for (const site of found.sites) work.use(found.position, site, "skipped")
  }
}

/** "sk next sc and hdc" with the hook on an sc that only the start stands in: that sc, and the hdc beside it. */
function isAtStart(work: RoundWork, first: Place, second: Place | undefined): boolean {
  if (first.at !== "next" || second?.at !== "next" || first.count !== 1) return false
  const { edge, at } = work.main
  const [one, two] = [first.noun.kind, second.noun.kind]
  if (!one || !two || !work.startTaken || !work.startSite || edge.size === 0) return false
  if (work.used.some((use) => use.use === "worked" && use.from !== work.startSite!.from))
    return false
  const stitchAt = (from: number) => {
    for (let k = from; k < from + edge.size; k++) {
      const index = ((k % edge.size) + edge.size) % edge.size
      if (edge.cells[index]?.type === "stitch") return edge.elementAt(index)
    }
    return undefined
  }
  return (
    kindFits(stitchAt(work.startSite.from), one) &&
    kindFits(stitchAt(at), two) &&
    !kindFits(stitchAt(at), one)
  )
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

/** Joins the round; where it began with a loop of chains, the slip stitch is the point both ends meet in. */
function meetAtStart(work: RoundWork, span: Span): void {
  work.joined = true
  const { startSite, elements } = work
  const last = elements[elements.length - 1]
  if (
    !startSite ||
    !work.startPassed ||
    work.startTaken ||
    elements[0]?.type !== "chain" ||
    last?.type !== "chain"
  )
    return
  elements.unshift({ type: "stitch", kind: { basic: "sl st" }, anchors: [startSite.anchor] })
  work.spans.unshift({ start: span.start, end: span.end })
  work.use(work.main, startSite, "worked")
}

/** The round makes something besides slip stitches. */
function makesOthers(steps: readonly Step[]): boolean {
  return steps.some((step) => /^(?:work|group|chain|repeat|pass|picot|as-round)$/.test(step.do))
}

/** Slip stitches: before any work they move the hook, at the end they join, else they are stitches. */
export function performSlip(
  work: RoundWork,
  step: Extract<Step, { do: "slip" }>,
  isLast: boolean,
): void {
  const started =
    work.elements.length > 0 ||
    work.startChain !== undefined ||
    work.inPlace !== null ||
    work.repeatDepth > 0
  // "Sl st to the hair tie, ch 1, 30 hdc around it": yarn fastened to a ring.
  if (!started && work.index === 0 && makesOthers(work.allSteps)) return
  if (!started && work.index > 0) {
    const asStitches = step.place?.at === "each" || !makesOthers(work.allSteps)
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
  const loops = step.place?.loops ? { loops: step.place.loops } : {}
  const stitch: StitchName = {
    kind: { ...(step.kind ?? { basic: "sl st" }), ...loops },
    tog: false,
  }
  const place = step.place
  if (isLast && work.repeatDepth === 0 && !work.inPlace) {
    if (
      !place ||
      place.at === "made" ||
      place.at === "same" ||
      (place.at === "next" && place.order === "first")
    ) {
      meetAtStart(work, step)
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
  work.performers.stitches(work, {
    do: "work",
    start: step.start,
    end: step.end,
    stitch,
    count: step.count,
    place,
  })
}
