// From a place as named to the places on the edge: which stitches, spaces or gaps the next step
// goes into, the hook moving on past them.

import type { Noun, Span } from "../base/tree.ts"
import { dipSites, middleRun } from "../edge/dips.ts"
import { meaningOf } from "../edge/meanings.ts"
import type { Site } from "../edge/site.ts"
import { findSite } from "../edge/sites.ts"
import { moveToNth, type Next, pickedSite, pickOfRun } from "./picked-places.ts"
import {
  atEndOfChain,
  beginsInGroup,
  columnBelow,
  endsInStart,
  gapMeant,
  isClosingStitch,
  onlyStartMade,
  petalsTouch,
  runUnderHook,
  spaceSlippedInto,
} from "./place-signs.ts"
import { positionFor } from "./positions.ts"
import type { Position } from "./round-parts.ts"
import type { RoundWork } from "./round-work.ts"
import { noPlace, overrun } from "./shortages.ts"

/** The places of "next", one after the other. @throws CannotWork when there are not enough */
export function nextSites(work: RoundWork, named: Next): { sites: Site[]; position: Position } {
  const position = positionFor(work, named)
  const place = countNotSize(position, named)
  const column = place.below === undefined ? null : columnBelow(work, position, place)
  if (column) return { sites: [column], position }
  if (place.covers) coverNext(work, place.covers, place)
  const sites: Site[] = []
  if (place.startAt !== undefined) moveToNth(work, position, place.startAt)
  if (place.withLast && work.current) {
    sites.push(work.current)
    if (position === work.main && work.current.from >= position.at) position.at = work.current.to
  }
  if (
    place.order === "first" &&
    place.noun.what === "space" &&
    work.elements.length > 0 &&
    work.startTaken &&
    work.startSite?.anchor.at === "space"
  )
    return { sites: [work.startSite], position }
  if (
    place.order === "first" &&
    place.noun.what === "stitch" &&
    work.startTaken &&
    work.startSite &&
    onlyStartMade(work)
  )
    return { sites: [work.startSite], position }
  if (
    place.bare &&
    work.startSite?.anchor.at === "space" &&
    onlyStartMade(work) &&
    (place.noun.what === "space" || place.noun.what === "corner") &&
    !isOfOtherSize(work, work.startSite, place.noun)
  )
    return { sites: [work.startSite], position }
  if (
    place.bare &&
    place.noun.what === "group" &&
    place.noun.middle &&
    beginsInGroup(work, position)
  ) {
    position.at = work.startSite!.to
    return { sites: [work.startSite!], position }
  }
  const slipped = place.bare && position === work.main ? spaceSlippedInto(work, place.noun) : null
  if (slipped) return { sites: [slipped], position }
  const under = place.bare && position === work.main ? runUnderHook(work, place.noun) : null
  if (under) return { sites: [under], position }
  if (place.post && isClosingStitch(work, place.noun)) return { sites: [work.startSite!], position }
  if (place.order === "last" && endsInStart(work, place))
    return { sites: [work.startSite!], position }
  if (
    place.order === "first" &&
    work.elements.length === 0 &&
    position === work.main &&
    !work.startPassed &&
    !work.startTaken
  )
    work.main.at = Math.min(work.main.at, work.startSite?.from ?? 0)
  if (place.pick !== undefined) work.picked = true
  const turning =
    place.count === 1 && place.pick === undefined ? atEndOfChain(work, position, place) : null
  if (turning) return { sites: [turning], position }
  if (place.pick === "dip" && place.count === 1 && petalsTouch(position.edge)) {
    // "sl st between petals" where no stitch stands between them: the gap.
    const { pick: _pick, pickNoun: _noun, ...plain } = place
    return {
      sites: [nextSite(work, position, { ...plain, noun: { what: "gap", betweenGroups: true } })],
      position,
    }
  }
  if (place.pick === "dip") {
    const sites = dipSites(position.edge, position.at, work.limitOf(position), place.count)
    if (!sites) throw overrun(work, position, place.noun, place)
    position.at = sites[sites.length - 1]!.to
    return { sites, position }
  }
  if (place.middle) {
    work.picked = true
    const run = middleRun(position.edge, position.at, work.limitOf(position), place.count)
    if (!run) throw overrun(work, position, place.noun, place)
    position.at = run[run.length - 1]!.to
    return { sites: run, position }
  }
  const own = work.inPlace?.[0]
  if (
    own?.at === "space" &&
    place.noun.what === "space" &&
    typeof place.pick === "number" &&
    place.pickNoun?.what === "chain"
  ) {
    const element = work.shared.rounds[own.round]?.elements[own.element]
    const most = element?.type === "chain" ? element.chains : 1
    return {
      sites: [
        {
          from: position.at,
          to: position.at,
          anchor: {
            at: "chain",
            round: own.round,
            element: own.element,
            chain: Math.min(most, place.pick) - 1,
          },
        },
      ],
      position,
    }
  }
  if (place.afterSkip && lastUsedInARow(work, position, place.count - 1))
    return { sites: [nextSite(work, position, { ...plainNext(place), count: 1 })], position }
  if (
    place.pick !== undefined &&
    place.count > 1 &&
    place.noun.what === "stitch" &&
    work.choices.take("pick-of", ["run", "group"]) === "group"
  ) {
    const group: Next = { ...place, noun: { what: "group", size: place.count }, count: 1 }
    return { sites: [nextSite(work, position, group)], position }
  }
  if (place.pick !== undefined && place.count > 1)
    return { sites: [pickOfRun(work, position, place)], position }

  for (let i = 0; i < place.count; i++) {
    work.countStep(place)
    const last = i === place.count - 1 && place.withLast === true
    const closing = last ? closingSite(work, position, place) : null
    sites.push(closing ?? nextSite(work, position, place))
  }
  return {
    sites: place.every === undefined ? sites : everyNth(work, position, sites, place.every),
    position,
  }
}

/** "in the next 5 ch-sps", where no space has five chains: so many of them. */
function countNotSize(position: Position, place: Next): Next {
  const { size, ...noun } = place.noun
  if (
    noun.what !== "space" ||
    size === undefined ||
    !noun.sizeOrCount ||
    place.count !== 1 ||
    place.bare ||
    place.order
  )
    return place
  if (meaningOf(position.edge, place.noun).stretched !== "size") return place
  const there = position.edge.elements.filter(({ type }) => type === "chain").length
  return size > 1 && size <= there ? { ...place, noun, count: size, each: true } : place
}

/** "every other of next 6": only each so-many-th; the others are passed over. */
function everyNth(
  work: RoundWork,
  position: Position,
  sites: readonly Site[],
  every: number,
): Site[] {
  return sites.filter((site, k) => {
    if ((k + 1) % every === 0) return true
    work.use(position, site, "skipped")
    return false
  })
}

function plainNext(place: Next): Next {
  const { pick: _pick, afterSkip: _afterSkip, ...plain } = place
  return plain
}

/** "skip 2, 1 sc in 3rd", "1 sc in each of 2 sc, 2 sc in the 3rd": the ones before it are those just used. */
function lastUsedInARow(work: RoundWork, position: Position, count: number): boolean {
  const tail = work.used.slice(-count)
  if (tail.length < count || tail.some((use) => use.edge !== position.edge)) return false
  if (tail.some((use) => use.use !== tail[0]?.use || use.use === "slipped")) return false
  if (tail[0]?.use === "skipped") return true
  // "ch 3, dc into 2nd sc": the chains lead over the one between.
  if (count === 1 && work.elements[work.elements.length - 1]?.type === "chain") return false
  return tail.every(
    (use, i) => stitchesBetween(position, use.to, tail[i + 1]?.from ?? position.at) === 0,
  )
}

function stitchesBetween({ edge }: Position, from: number, to: number): number {
  let found = 0
  for (let at = from; at < to; at++)
    if (edge.cells[((at % edge.size) + edge.size) % edge.size]?.type === "stitch") found += 1
  return found
}

/** What is worked over on the way to an earlier round counts as used. */
function coverNext(work: RoundWork, noun: Noun, span: Span): void {
  const site = work.next(work.main, noun, span)
  if (!site) return
  work.use(work.main, site, "skipped")
  work.main.at = site.to
}

/** "in ch-13 loop" with the hook in a ch-7 loop, where there are loops of both sizes. */
function isOfOtherSize({ main }: RoundWork, site: Site, noun: Noun): boolean {
  const { from, to } = site
  const meaning = meaningOf(main.edge, noun)
  return (
    noun.size !== undefined &&
    meaning.exists &&
    meaning.stretched === null &&
    findSite(main.edge, meaning.noun, from, to, from, null) === null
  )
}

/** Legs shared with the one before: the last one may share the very first place of the round. */
function closingSite(work: RoundWork, position: Position, place: Next): Site | null {
  if (!work.startTaken || !work.startSite || position !== work.main) return null
  if (work.next(position, place.noun, place)) return null
  const width = work.startSite.to - work.startSite.from
  if (position.at >= work.end + width) return null
  position.at = work.end + width
  return { ...work.startSite, from: work.end, to: work.end + width }
}

function nextSite(work: RoundWork, position: Position, place: Next): Site {
  const noun = placeNoun(place)
  if (position.edge.size === 0) throw noPlace(place, "There is nothing below to work into.")
  if (noun.unworked && position === work.main) return lastSkipped(work, place)
  const site =
    place.pick !== undefined
      ? pickedSite(work, position, place, place.pick)
      : (gapMeant(work, position, place) ?? work.next(position, noun, place))
  if (!site) throw overrun(work, position, noun, place)
  tellMorePassed(work, position, site, place)
  position.at = site.past ?? site.to
  return site
}

/** "skip 2 dc, shell in next sp" where three lie before it: the figure is not what the round below has. */
function tellMorePassed(work: RoundWork, position: Position, site: Site, span: Span): void {
  const last = work.used.at(-1)
  if (last?.use !== "skipped" || last.edge !== position.edge) return
  const more = stitchesBetween(position, last.to, site.from)
  if (more === 0) return
  work.find({
    severity: "note",
    code: "step-without-effect",
    start: span.start,
    end: span.end,
    message: `Before this ${more === 1 ? "one more stitch lies" : `${more} more stitches lie`} than are said to be skipped.`,
    hint: "",
  })
}

/** "in skipped st": the last one skipped in this round that is still without a stitch. */
function lastSkipped(work: RoundWork, span: Span): Site {
  const { edge } = work.main
  const worked = new Set(
    work.used
      .filter((use) => use.use === "worked" && use.edge === edge)
      .map((use) => use.from % edge.size),
  )
  for (let i = work.used.length - 1; i >= 0; i--) {
    const use = work.used[i]!
    if (use.edge !== edge || use.use !== "skipped" || worked.has(use.from % edge.size)) continue
    const anchor = edge.anchorAt(use.from % edge.size, use.to - use.from > 1)
    return { from: use.from, to: use.to, anchor }
  }
  throw noPlace(span, "No stitch has been skipped in this round.")
}

function placeNoun(place: Next): Noun {
  if (place.order === "any" && place.noun.what === "ring") return { what: "any" }
  return place.noun
}
