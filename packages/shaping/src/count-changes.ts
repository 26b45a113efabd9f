// Other counts for a round: where the stitches go in or come out.

import { type Element, findCorners, type Motif, workedPlaces } from "@roundwright/motif"
import { insertColumns, removeColumns } from "./columns.ts"

/** The round with so many stitches more or fewer, at its corners or evenly round; null where none can go. */
export function changeCount(motif: Motif, round: number, by: number): Motif | null {
  const places = by > 0 ? spotsToAdd(motif, round, by) : spotsToTake(motif, round, -by)
  if (places === null) return null
  return by > 0 ? insertColumns(motif, round, places) : removeColumns(motif, round, places)
}

function spotsToAdd(motif: Motif, round: number, many: number): number[] | null {
  const { elements } = motif.rounds[round]!
  const groups = cornerSpots(motif, round)
  if (groups.length > 0 && many % (2 * groups.length) === 0) {
    const each = many / (2 * groups.length)
    return groups.flatMap(({ first, last }) => {
      const beside = [stitchFrom(elements, first, -1), stitchFrom(elements, last, 1)]
      return Array.from({ length: each }, () => beside).flat()
    })
  }
  const stitches = elements.flatMap((element, e) => (element.type === "stitch" ? [e] : []))
  if (stitches.length === 0) return null
  return Array.from(
    { length: many },
    (_, k) => stitches[Math.floor(((k + 0.5) * stitches.length) / many) % stitches.length]!,
  )
}

/** A corner of chains alone is widened by the stitches beside it: the first stitch from there on, or back. */
function stitchFrom(elements: readonly Element[], from: number, by: 1 | -1): number {
  const n = elements.length
  for (let k = 0; k < n; k++) {
    const at = (from + by * k + n) % n
    if (elements[at]!.type === "stitch") return at
  }
  return from
}

/**
 * First and last element standing on each corner: the corner groups, or where a round only carries its corners
 * on, what stands on the middle of the group below.
 */
function cornerSpots(motif: Motif, round: number): readonly { first: number; last: number }[] {
  const own = findCorners(motif)[round]
  if (!own || own.count === 0) return []
  if (own.groups.length > 0) return own.groups
  if (round === 0) return []
  const n = motif.rounds[round - 1]!.elements.length
  return cornerSpots(motif, round - 1).flatMap(({ first, last }) => {
    const middle = (first + Math.floor(((last - first + n) % n) / 2)) % n
    const over = motif.rounds[round]!.elements.flatMap((element, e) =>
      element.type === "stitch" &&
      element.anchors.some(
        (anchor) =>
          anchor.at !== "centre" && anchor.round === round - 1 && anchor.element === middle,
      )
        ? [e]
        : [],
    )
    return over.length > 0 ? [{ first: over[0]!, last: over.at(-1)! }] : []
  })
}

/** Stitches that share their place with others go first; a round start may lose any. */
function spotsToTake(motif: Motif, round: number, many: number): number[] | null {
  const own = motif.rounds[round]!
  const groups = findCorners(motif)[round]?.groups ?? []
  if (groups.length > 0 && many % (2 * groups.length) === 0) {
    const each = many / (2 * groups.length)
    const spots: number[] = []
    for (const { first, last } of groups)
      for (let k = 0; k < each; k++) {
        const n = own.elements.length
        spots.push((first + k) % n, (last - k + n) % n)
      }
    const fit = spots.every((spot) => own.elements[spot]?.type === "stitch")
    return fit && new Set(spots).size === many ? spots : null
  }
  const spare: number[] = []
  for (const { anchor, elements } of workedPlaces(own).values()) {
    if (anchor.at === "centre") spare.push(...elements.slice(1))
    else spare.push(...elements.slice(0, elements.length - 1))
  }
  spare.sort((a, b) => a - b)
  if (spare.length < many) return null
  return Array.from({ length: many }, (_, k) => spare[Math.floor((k * spare.length) / many)]!)
}

/**
 * The first round from which on counts can be changed: every stitch stands in a stitch, the centre or a corner's
 * space just below. One past the last where there is none.
 */
export function solidFrom(motif: Motif): number {
  const corners = findCorners(motif)
  const broken = motif.rounds.findLastIndex((own, r) => {
    const chains = own.elements.filter((element) => element.type === "chain").length
    if (chains > corners[r]!.count) return true
    return own.elements.some(
      (element) =>
        element.type === "stitch" &&
        element.anchors.some((anchor) => anchor.at !== "centre" && anchor.round !== r - 1),
    )
  })
  return broken + 1
}
