// One place inside a space, group or run of stitches, the hook moving past it.

import type { Noun, Pick, Place } from "../base/tree.ts"
import { groupsBetweenSpaces } from "../edge/edge.ts"
import { findGroup, leavesOf } from "../edge/groups.ts"
import type { Site } from "../edge/site.ts"
import type { Position } from "./round-parts.ts"
import type { RoundWork } from "./round-work.ts"
import { overrun } from "./shortages.ts"

export type Next = Extract<Place, { at: "next" }>

/** "3rd ch of next ch-5 loop", "centre dc of next group": one place inside the next space or group. */
export function pickedSite(
  work: RoundWork,
  position: Position,
  place: Next,
  pick: Pick,
): Site | null {
  const { edge } = position
  const noun = place.noun
  if (noun.what === "space") {
    // "in 5th ch" after the 1st: still in the same run.
    const inside = insideRun(position, pick, noun)
    if (inside) return inside
    const space = work.next(position, noun, place)
    return space && chainOf(position, space, pick)
  }
  const meaning = work.meaning(position, noun, place)
  if (!meaning.exists && noun.what !== "group") return null
  if (noun.what === "group" || noun.what === "corner") {
    const found = findGroup(
      edge,
      meaning.noun.what === "group" ? meaning.noun : { what: "group" },
      position.at,
      work.limitOf(position),
      pick,
      place.pickNoun ?? null,
    )
    return found ?? (leavesOf(edge).length > 0 ? null : runAsGroup(work, position, pick))
  }
  return work.next(position, noun, place)
}

function runAsGroup(work: RoundWork, position: Position, pick: Pick): Site | null {
  for (const group of groupsBetweenSpaces(position.edge)) {
    const members = group.cells
    const chosen =
      pick === "centre"
        ? members[Math.floor((members.length - 1) / 2)]
        : pick === "last"
          ? members[members.length - 1]
          : members[Number(pick) - 1]
    if (chosen === undefined) continue
    const at = chosen < position.at ? chosen + position.edge.size : chosen
    if (at < position.at || at >= work.limitOf(position)) continue
    return { from: at, to: at + 1, anchor: position.edge.anchorAt(at % position.edge.size, false) }
  }
  return null
}

function insideRun(position: Position, pick: Pick, noun: Noun): Site | null {
  const { edge } = position
  const index = ((position.at % edge.size) + edge.size) % edge.size
  const cell = edge.cells[index]
  if (
    cell?.type !== "chain" ||
    edge.startsRun(index) ||
    noun.size !== undefined ||
    typeof pick !== "number"
  )
    return null
  let first = index
  while (first > 0 && !edge.startsRun(first)) first -= 1
  const target = first + pick - 1
  if (target < index || target >= first + edge.widths[first]!) return null
  const at = position.at + (target - index)
  return { from: at, to: at + 1, anchor: edge.anchorAt(target, false) }
}

function chainOf(position: Position, space: Site, pick: Pick): Site {
  const { edge } = position
  const width = space.to - space.from
  const k =
    pick === "centre"
      ? Math.floor((width - 1) / 2)
      : pick === "last"
        ? width - 1
        : Math.min(width, Number(pick)) - 1
  const at = space.from + k
  const index = ((at % edge.size) + edge.size) % edge.size
  return { from: at, to: at + 1, anchor: edge.anchorAt(index, false) }
}

/** "3rd of next 6 sc": takes all six, gives one. */
export function pickOfRun(work: RoundWork, position: Position, place: Next): Site {
  const run: Site[] = []
  for (let i = 0; i < place.count; i++) {
    const site = work.next(position, place.noun, place)
    if (!site) throw overrun(work, position, place.noun, place)
    position.at = site.to
    run.push(site)
  }
  const k =
    place.pick === "centre"
      ? Math.floor((run.length - 1) / 2)
      : place.pick === "last"
        ? run.length - 1
        : Math.min(run.length, place.pick as number) - 1
  const site = run[k]!
  for (const other of run) if (other !== site) work.use(position, other, "skipped")
  return site
}

/** "starting at the 5th of a group": moves on to the 5th of one, unless the hook is there. */
export function moveToNth(work: RoundWork, position: Position, nth: number): void {
  const found = findGroup(
    position.edge,
    { what: "group" },
    position.at,
    position.at + position.edge.size,
    nth,
    null,
  )
  if (!found || found.from === position.at) return
  if (work.elements.length === 0 && position === work.main) {
    position.base = found.from
    work.startSite = found
    work.startTaken = false
  }
  position.at = found.from
}
