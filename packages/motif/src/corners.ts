// Corners: the places where increases stack from round to round, found from the motif itself.
//
// A place below that receives more than one element is an increase group; its extra is what it gives
// the edge beyond one top. A corner group is sharp: three tops or more in one place, or two with a
// chain between them, or a loop of chains longer than all others. Groups of one more stitch (two in
// one) only bend an edge a little: stacked, they draw a disc into a polygon without making corners
// of it, so they are told (`stacked`) but not treated as corners.

import { oneInEach, workedPlaces } from "./counts.ts"
import type { Anchor, Motif, Round } from "./model.ts"
import { anchorKey } from "./places.ts"

export interface CornerGroup {
  /** First and last element (indices in working order; last may wrap and be less than first). */
  readonly first: number
  readonly last: number
}

export interface RoundCorners {
  /** Number of corners, 0 for a round outline. */
  readonly count: number
  readonly groups: readonly CornerGroup[]
  /** Number of single increases standing over those of the round before, 0 when they do not stack. */
  readonly stacked: number
}

/** Polygons from three corners; beyond twelve the outline is as good as round (perimeter within 2.3 %). */
const fewestCorners = 3
const mostCorners = 12

/** Corners of every round, from the centre out. */
export function findCorners(motif: Motif): RoundCorners[] {
  const found: RoundCorners[] = []
  motif.rounds.forEach((round, index) => {
    const sharp = sharpGroups(motif, round)
    const usable = evenlySpread(sharp, round.elements.length) ? sharp : []
    found.push({
      count: usable.length,
      groups: usable,
      stacked: countStacked(motif, index),
    })
  })
  return carryThrough(motif, found)
}

/** Groups that could be corners: the largest in the round, if they are sharp. */
function sharpGroups(motif: Motif, round: Round): CornerGroup[] {
  const groups = increaseGroups(motif, round).filter((group) => group.sharp)
  const most = Math.max(0, ...groups.map((group) => group.size))
  const largest = groups.filter((group) => group.size === most)
  return largest.length >= fewestCorners && largest.length <= mostCorners ? largest : []
}

interface IncreaseGroup extends CornerGroup {
  /** Tops and chains between the first and the last top, weighed alike. */
  readonly size: number
  readonly sharp: boolean
}

function increaseGroups(motif: Motif, round: Round): IncreaseGroup[] {
  const n = round.elements.length
  const groups: IncreaseGroup[] = []
  for (const { anchor, elements } of groupedPlaces(round)) {
    if (anchor.at === "centre" || elements.length < 2) continue
    const { first, last } = spanOf(elements, n)
    let tops = 0
    let chains = 0
    for (let i = first; ; i = (i + 1) % n) {
      const element = round.elements[i]
      if (element?.type === "stitch") tops += 1
      else if (element?.type === "chain") chains += element.chains
      if (i === last) break
    }
    const below = anchor.at === "space" || anchor.at === "chain" ? runLength(motif, anchor) : 0
    // Filling a loop with its own number of stitches turns no corner.
    const sharp = chains > 0 || (tops >= 3 && tops > below)
    groups.push({ first, last, size: tops + chains, sharp })
  }
  return groups
}

/**
 * Worked places, all chains of one run taken together: a corner may stand in its first and last chain. None of a round
 * in which no place holds two.
 */
function groupedPlaces(round: Round): { anchor: Anchor; elements: number[] }[] {
  if (oneInEach(round)) return []
  const grouped = new Map<string, { anchor: Anchor; elements: number[] }>()
  for (const { anchor, elements } of workedPlaces(round).values()) {
    const whole: Anchor =
      anchor.at === "chain" ? { at: "space", round: anchor.round, element: anchor.element } : anchor
    const key = anchorKey(whole)
    const place = grouped.get(key)
    if (place) place.elements.push(...elements)
    else grouped.set(key, { anchor: whole, elements: [...elements] })
  }
  return [...grouped.values()]
}

function runLength(motif: Motif, anchor: { round: number; element: number }): number {
  const target = motif.rounds[anchor.round]?.elements[anchor.element]
  return target?.type === "chain" ? target.chains : 0
}

/** The shortest stretch of the cyclic round that holds all the elements: a start mid-corner wraps. */
function spanOf(elements: readonly number[], n: number): CornerGroup {
  let widest = -1
  let first = elements[0]!
  let last = elements.at(-1)!
  elements.forEach((element, i) => {
    const next = elements[(i + 1) % elements.length]!
    const gap = (next - element + n) % n
    if (gap > widest) {
      widest = gap
      first = next
      last = element
    }
  })
  return { first, last }
}

/** Corners of a polygon lie evenly round the edge; a third of a side off is no longer even. */
const sideTolerance = 1 / 3

function evenlySpread(groups: readonly CornerGroup[], n: number): boolean {
  if (groups.length < fewestCorners) return false
  const centres = groups
    .map((group) => (group.first + ((group.last - group.first + n) % n) / 2) % n)
    .sort((a, b) => a - b)
  const side = n / centres.length
  return centres.every((centre, i) => {
    const next = centres[(i + 1) % centres.length]! + (i + 1 === centres.length ? n : 0)
    return Math.abs(next - centre - side) <= sideTolerance * side
  })
}

/** Number of two-in-one increases whose place is itself part of an increase of the round before. */
function countStacked(motif: Motif, index: number): number {
  const round = motif.rounds[index]
  const before = motif.rounds[index - 1]
  if (!round || !before || oneInEach(round)) return 0
  const increasedBefore = new Set<number>()
  for (const { anchor, elements } of workedPlaces(before).values())
    if (anchor.at !== "centre" && elements.length > 1)
      for (const element of elements) increasedBefore.add(element)
  let stacked = 0
  for (const { anchor, elements } of workedPlaces(round).values())
    if (anchor.at === "stitch" && elements.length > 1 && increasedBefore.has(anchor.element))
      stacked += 1
  return stacked
}

/**
 * A plain round over a cornered one keeps its corners (a straightening round of one stitch in each);
 * a round whose first corners are only loops of chains (round 1 of a square) gets them from the next.
 */
function carryThrough(motif: Motif, found: RoundCorners[]): RoundCorners[] {
  const result = [...found]
  for (let i = 1; i < result.length; i++) {
    const here = result[i]!
    const before = result[i - 1]!
    if (here.count === 0 && before.count > 0 && !growsAlike(motif, i))
      result[i] = { ...here, count: before.count }
  }
  for (let i = result.length - 2; i >= 0; i--) {
    const here = result[i]!
    const after = result[i + 1]!
    const loops = here.count === 0 && after.count > 0 ? loopTargets(motif, i) : []
    if (loops.length > 0 && loops.length === after.count)
      result[i] = {
        ...here,
        count: after.count,
        groups: loops.map((element) => ({ first: element, last: element })),
      }
  }
  // A first round whose next one turns corners is cornered from the start: its stitches fan out to them.
  const [first, second] = result
  if (first?.count === 0 && second && second.count > 0)
    result[0] = { ...first, count: second.count }
  return result
}

/** True when the round spreads its increases evenly, so that a cornered edge below becomes round again. */
function growsAlike(motif: Motif, index: number): boolean {
  const round = motif.rounds[index]!
  const groups = increaseGroups(motif, round)
  return groups.length > mostCorners
}

/** Chain runs of this round that the next round's largest groups are worked into. */
function loopTargets(motif: Motif, index: number): number[] {
  const next = motif.rounds[index + 1]!
  const targets = new Set<number>()
  const groups = increaseGroups(motif, next)
  const most = Math.max(0, ...groups.map((group) => group.size))
  for (const { anchor, elements } of groupedPlaces(next)) {
    if (anchor.at !== "space" || anchor.round !== index || elements.length < 2) continue
    const { first, last } = spanOf(elements, next.elements.length)
    const size = groups.find((group) => group.first === first && group.last === last)?.size
    if (size === most) targets.add(anchor.element)
  }
  return [...targets]
}
