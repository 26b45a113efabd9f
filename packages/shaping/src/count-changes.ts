// Other counts for a round: which are tried, and where the stitches go in or come out.

import { countRound, findCorners, type Motif, repeatsOf, workedPlaces } from "@roundwright/motif"
import { kindName } from "@roundwright/stitches"
import { insertColumns, removeColumns } from "./columns.ts"
import { type MendChange, mainKind } from "./mend-change.ts"

/** A count may be doubled or halved, as a forgotten or doubled increase round does; beyond it the pattern is another one. */
const furthestFactor = 2
/** Multiples of the repeat tried on either side. */
const mostSteps = 4
/** Changes of one round's count, the later rounds following along or keeping their own. */
export function countChanges(motif: Motif, round: number): MendChange[] {
  const own = motif.rounds[round]!
  if (!isSolid(motif, round)) return []
  const count = countRound(own).stitches
  const name = kindName(mainKind(own))
  const changes: MendChange[] = []
  for (const by of countSteps(motif, round, count)) {
    const following = changeCount(motif, round, by)
    if (!following) continue
    const to = count + by
    const what = `Round ${own.number}: ${to} ${name} instead of ${count}`
    const last = round === motif.rounds.length - 1
    const later = last ? "" : "; carry the difference through the rounds after it"
    changes.push({
      kind: "count",
      round,
      words: `${what}${later}.`,
      motif: following,
      altered: Math.abs(by),
      count: to,
      keeps: false,
    })
    if (last) continue
    const keeping = isSolid(motif, round + 1) ? changeCount(following, round + 1, -by) : null
    if (keeping)
      changes.push({
        kind: "count",
        round,
        words: `${what}; the rounds after it keep their counts.`,
        motif: keeping,
        altered: 2 * Math.abs(by),
        count: to,
        keeps: true,
      })
  }
  return changes
}

/** Differences that bring the count to whole repeats of its own round or one beside it. */
function countSteps(motif: Motif, round: number, count: number): number[] {
  const corners = findCorners(motif)[round]?.count ?? 0
  const beside = [round - 1, round, round + 1].filter((r) => motif.rounds[r] !== undefined)
  const repeats = new Set(beside.map((r) => repeatsOf(motif, r)))
  const found = new Set<number>()
  if (corners > 0) repeats.add(2 * corners)
  for (const own of repeats) {
    const rest = own === 2 * corners ? 0 : ((count % own) + own) % own
    for (let k = -mostSteps; k <= mostSteps; k++) {
      const by = k * own - rest
      const factor = (count + by) / count
      if (by !== 0 && factor <= furthestFactor && factor >= 1 / furthestFactor) found.add(by)
    }
  }
  return [...found].sort((a, b) => Math.abs(a) - Math.abs(b) || a - b)
}

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
    return groups.flatMap(({ first, last }) =>
      Array.from({ length: each }, () => [first, last]).flat(),
    )
  }
  const stitches = elements.flatMap((element, e) => (element.type === "stitch" ? [e] : []))
  if (stitches.length === 0) return null
  return Array.from(
    { length: many },
    (_, k) => stitches[Math.floor(((k + 0.5) * stitches.length) / many) % stitches.length]!,
  )
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

/** Counts are changed only where every stitch stands in a stitch, the centre or a corner's space just below. */
function isSolid(motif: Motif, round: number): boolean {
  return motif.rounds.slice(round).every((own, r) => {
    const chains = own.elements.filter((element) => element.type === "chain").length
    const corners = findCorners(motif)[round + r]?.count ?? 0
    if (chains > 0 && chains > corners) return false
    return own.elements.every(
      (element) =>
        element.type !== "stitch" ||
        element.anchors.every((anchor) => anchor.at === "centre" || anchor.round === round + r - 1),
    )
  })
}
