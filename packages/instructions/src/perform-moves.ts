// Going on without stitches: skipping, slip stitches, and starting the round in another place.

import { performWork } from "./perform-work.ts"
import { CannotWork, type RoundWork } from "./round-work.ts"
import { findSite, type Site } from "./sites.ts"
import type { Noun, Place, Span, Step, StitchName } from "./tree.ts"
import { nextSites, overrun, positionFor } from "./work-places.ts"

export function performSkip(work: RoundWork, step: Extract<Step, { do: "skip" }>): void {
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
    if (!found) continue
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
    if (!place || place.at === "made" || (place.at === "next" && place.order === "first")) {
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
export function move(work: RoundWork, place: Place, anywhere: boolean): void {
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
