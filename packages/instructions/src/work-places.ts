// From a place as named to the places on the edge: which stitches, spaces or gaps the next step
// goes into, the hook moving on past them.

import type { Anchor } from "@roundwright/motif"
import { groupsBetweenSpaces } from "./edge.ts"
import { CannotWork, type Position, type RoundWork } from "./round-work.ts"
import { findGroup, findSite, meaningOf, type Site } from "./sites.ts"
import type { Noun, Pick, Place, Span, Until } from "./tree.ts"
import { nounWords } from "./wording.ts"

type Next = Extract<Place, { at: "next" }>

/** The position a place speaks of: the edge below, or an earlier round named. */
export function positionFor(work: RoundWork, place: Place): Position {
  const named = place.ofRound !== undefined ? indexOfRound(work, place.ofRound, place) : null
  if (named !== null) return work.positionOn(named)
  if (place.below !== undefined) {
    const index = work.index - 1 - (place.below - 1)
    if (index < 0) throw noPlace(place, "There is no round that far below.")
    return work.positionOn(index)
  }
  if (work.modeRound !== undefined && place.at !== "same") {
    const index = work.shared.rounds.findIndex((round) => round.number === work.modeRound)
    if (index >= 0 && index < work.index) return work.positionOn(index)
  }
  const over =
    place.over === true && place.at === "next" && place.noun.what === "stitch" && place.count === 1
  if (over && work.index >= 2) {
    const noun = place.noun
    const below = meaningOf(work.main.edge, noun)
    const missing = noun.kind !== undefined && (below.stretched !== null || !below.exists)
    if (missing) {
      for (let index = work.index - 2; index >= Math.max(0, work.index - 3); index--) {
        const position = work.positionOn(index)
        if (
          meaningOf(position.edge, noun).stretched === null &&
          meaningOf(position.edge, noun).exists
        )
          return position
        work.others.delete(index)
      }
    } else if (work.choices.take("over-earlier", ["below", "earlier"]) === "earlier")
      return work.positionOn(work.index - 2)
  }
  return work.main
}

function indexOfRound(work: RoundWork, number: number, span: Span): number {
  const index = work.shared.rounds.findIndex((round) => round.number === number)
  if (index < 0 || index >= work.index)
    throw noPlace(span, `Round ${number} is not there to work into.`)
  return index
}

/** The places of "next", one after the other. @throws CannotWork when there are not enough */
export function nextSites(work: RoundWork, place: Next): { sites: Site[]; position: Position } {
  const position = positionFor(work, place)
  if (place.covers) coverNext(work, place.covers, place)
  const sites: Site[] = []
  if (place.startAt !== undefined) moveToNth(work, position, place.startAt)
  if (place.withLast && work.current) sites.push(work.current)
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
  if (place.afterSkip && lastWasSkip(work, place.count - 1))
    return { sites: [nextSite(work, position, { ...plainNext(place), count: 1 })], position }
  if (place.pick !== undefined && place.count > 1)
    return { sites: [pickOfRun(work, position, place)], position }

  for (let i = 0; i < place.count; i++) {
    const last = i === place.count - 1 && place.withLast === true
    const closing = last ? closingSite(work, position, place) : null
    sites.push(closing ?? nextSite(work, position, place))
  }
  return { sites, position }
}

function plainNext(place: Next): Next {
  const { pick: _pick, afterSkip: _afterSkip, ...plain } = place
  return plain
}

function lastWasSkip(work: RoundWork, count: number): boolean {
  const tail = work.used.slice(-count)
  return tail.length === count && tail.every((use) => use.use === "skipped")
}

/** What is worked over on the way to an earlier round counts as used. */
function coverNext(work: RoundWork, noun: Noun, span: Span): void {
  const site = work.next(work.main, noun, span)
  if (!site) return
  work.use(work.main, site, "skipped")
  work.main.at = site.to
}

/** Nothing but the starting chain has been made yet. */
function onlyStartMade(work: RoundWork): boolean {
  return (
    work.elements.length > 0 &&
    work.elements.every(
      (element) =>
        element.type === "chain" ||
        (element.type === "stitch" && element.madeOfChains !== undefined),
    )
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

/** "dc in last dc" where the round before was closed by that dc: the end of its last space. */
function endsInStart(work: RoundWork, place: Next): boolean {
  return (
    work.startPassed &&
    work.startSite !== null &&
    !work.startTaken &&
    place.noun.what === "stitch" &&
    work.startSite.anchor.at === "space"
  )
}

function nextSite(work: RoundWork, position: Position, place: Next): Site {
  const noun = placeNoun(place)
  if (position.edge.size === 0) throw noPlace(place, "There is nothing below to work into.")
  if (noun.unworked && position === work.main) return lastSkipped(work, place)
  const site =
    place.pick !== undefined
      ? pickedSite(work, position, place, place.pick)
      : work.next(position, noun, place)
  if (!site) throw overrun(work, position, noun, place)
  position.at = site.to
  return site
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

/** "3rd ch of next ch-5 loop", "centre dc of next group": one place inside the next space or group. */
function pickedSite(work: RoundWork, position: Position, place: Next, pick: Pick): Site | null {
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
    if (found) return found
    const run = runAsGroup(work, position, pick)
    return run
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
          : members[pick - 1]
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
        : Math.min(width, pick) - 1
  const at = space.from + k
  const index = ((at % edge.size) + edge.size) % edge.size
  return { from: at, to: at + 1, anchor: edge.anchorAt(index, false) }
}

/** "3rd of next 6 sc": takes all six, gives one. */
function pickOfRun(work: RoundWork, position: Position, place: Next): Site {
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
function moveToNth(work: RoundWork, position: Position, nth: number): void {
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

/** Where an "each" stops: a position no place of it may reach. */
export function boundaryOf(work: RoundWork, position: Position, until: Until, span: Span): number {
  const limit = work.limitOf(position)
  if (until.kind === "around" && until.implied && work.repeatDepth > 0) {
    // "*sc in each sc, 2 sc in next sp" goes as far as the next space each time.
    return boundaryOf(work, position, { kind: "to", noun: { what: "space" } }, span)
  }
  if (until.kind === "around") return position === work.main ? work.endAround : limit
  const { edge } = position
  if (until.kind === "to") {
    const target = until.ofRound === undefined ? position : position
    const meaning = work.meaning(target, until.noun, span)
    const site = meaning.exists
      ? findSite(edge, meaning.noun, position.at, limit, position.base, null)
      : null
    return site ? site.from : limit
  }
  if (until.noun) return lastOf(work, position, until.noun, until.count, span)
  const stop = until.ofGroup
    ? boundaryOf(work, position, { kind: "to", noun: { what: "space" } }, span)
    : limit
  const stitches: number[] = []
  for (let at = position.at; at < stop; at++)
    if (edge.cells[((at % edge.size) + edge.size) % edge.size]?.type === "stitch") stitches.push(at)
  const cut = stitches[stitches.length - until.count]
  if (until.ofGroup)
    for (const at of stitches.slice(-until.count))
      work.use(
        position,
        {
          from: at,
          to: at + 1,
          anchor: edge.anchorAt(((at % edge.size) + edge.size) % edge.size, false),
        },
        "skipped",
      )
  return cut ?? position.at
}

/** Where the last `count` places of a kind that are left begin. */
function lastOf(
  work: RoundWork,
  position: Position,
  noun: Noun,
  count: number,
  span: Span,
): number {
  const meaning = work.meaning(position, noun, span)
  const limit = position === work.main ? work.endAround : work.limitOf(position)
  const starts: number[] = []
  for (let at = position.at; meaning.exists && at < limit; ) {
    const site = findSite(position.edge, meaning.noun, at, limit, position.base, null)
    if (!site) break
    starts.push(site.from)
    at = Math.max(at + 1, site.to)
  }
  return starts[starts.length - count] ?? position.at
}

export function noPlace(span: Span, message: string): CannotWork {
  return new CannotWork({
    severity: "error",
    code: "no-such-place",
    start: span.start,
    end: span.end,
    message,
    hint: "Compare this with what the round before makes.",
  })
}

/** The round below is used up: with what is asked for and what there is. */
export function overrun(work: RoundWork, position: Position, noun: Noun, span: Span): CannotWork {
  const { edge } = position
  const meaning = meaningOf(edge, noun)
  if (!meaning.exists) {
    const named = nounWords(noun)
    return new CannotWork({
      severity: "error",
      code: "no-such-place",
      start: span.start,
      end: span.end,
      message: `There is no ${named} in the round before.`,
      hint: "Compare the name with what the round before makes.",
    })
  }
  let there = 0
  for (let at = 0; at < edge.size; ) {
    const site = findSite(edge, meaning.noun, at, edge.size, 0, null)
    if (!site) break
    there += 1
    at = Math.max(at + 1, site.to)
  }
  void work
  return new CannotWork({
    severity: "error",
    code: "needs-more-than-there-is",
    start: span.start,
    end: span.end,
    message: `This round asks for more than the round before has: all ${there} of its ${nounWords(noun, there)} are used when it comes to this one.`,
    hint: "Count the repeats, or the stitches of the round before.",
  })
}

export function anchorsOf(sites: readonly Site[]): Anchor[] {
  return sites.map((site) => site.anchor)
}
