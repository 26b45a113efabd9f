// Starting the round in another place: slip stitches to a space, new yarn in any corner.

import { fewestOfLoop } from "../base/limits.ts"
import type { Noun, Place, Step } from "../base/tree.ts"
import type { Site } from "../edge/site.ts"
import { findSite } from "../edge/sites.ts"
import type { RoundWork } from "./round-work.ts"
import { overrun } from "./shortages.ts"
import { nextSites } from "./work-places.ts"

/** Moves the start of the round to another place: "sl st to next ch-3 sp", "join in any corner". */
export function move(work: RoundWork, place: Place, anywhere: boolean): void {
  if (
    place.at === "each" ||
    place.at === "ring" ||
    place.at === "hook-chain" ||
    place.at === "own-chain" ||
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
  const named = place.noun.what === "ring" ? { what: "any" as const } : place.noun
  let from = position.at
  const joinedStitch =
    work.startSite?.anchor.at !== "space" &&
    work.startSite &&
    !work.startPassed &&
    !work.startTaken &&
    position.at === work.startSite.from
  if (!anywhere && joinedStitch && place.order !== "first") from = work.startSite!.to
  const noun = alongLoop(work, named, from) ? { what: "cell" as const } : named
  let site: Site | null = null
  // Further than once round leads nowhere new.
  const count = anywhere ? 1 : Math.min(place.count, work.main.edge.size)
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
  if (noun.what === "chain" && place.pick === undefined && endsLoop(work, site))
    position.at = site.to
  if (noun.what === "space" && leavesLoop(work.allSteps)) {
    // "Sl st to centre of loop, *ch 5, sc in next loop": the next one is not the one it was led into.
    work.startPassed = true
    position.at = site.to
  }
}

/** The last chain of a loop: the next loop is another one. */
function endsLoop(work: RoundWork, site: Site): boolean {
  const { edge } = work.main
  const cellAt = (at: number) => edge.cells[((at % edge.size) + edge.size) % edge.size]
  const [last, after] = [cellAt(site.to - 1), cellAt(site.to)]
  return last?.type === "chain" && !(after?.type === "chain" && after.element === last.element)
}

/** The round goes on, from the place it was led to, with a repeat that begins with chains to the next space. */
function leavesLoop(steps: readonly Step[]): boolean {
  const first = steps.find(
    ({ do: what }) => what !== "slip" && what !== "attach" && what !== "mode" && what !== "turn",
  )
  if (first?.do !== "repeat" || first.body[0]?.do !== "chain") return false
  const placed = first.body.find((step) => step.do !== "chain")
  return (
    (placed?.do === "work" || placed?.do === "group") &&
    placed.place?.at === "next" &&
    placed.place.noun.what === "space" &&
    placed.place.count === 1
  )
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

/** "sl st in each of next 2 sts" where a loop comes next: the chains of it are meant. */
function alongLoop({ main: { edge } }: RoundWork, noun: Noun, from: number): boolean {
  if (noun.what !== "stitch" || noun.kind) return false
  const element = edge.elementAt(((from % edge.size) + edge.size) % edge.size)
  return element?.type === "chain" && element.chains >= fewestOfLoop
}
