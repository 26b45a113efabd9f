// Small changes anywhere in a piece, each as the changed piece and in words: a count (the later rounds following
// along, or keeping their own counts), the stitch of a round, the chains of its spaces, one round more or less.

import {
  commonDivisor,
  countRound,
  type Element,
  findCorners,
  type Motif,
  type Round,
  repeatsOf,
  workedPlaces,
} from "@roundwright/motif"
import { kindName, type StitchKind } from "@roundwright/stitches"
import { insertColumns, removeColumns, replaceRound } from "./columns.ts"

export type MendKind = "count" | "stitch" | "chains" | "drop-round" | "add-round"

export interface MendChange {
  readonly kind: MendKind
  /** Index of the round that is changed first. */
  readonly round: number
  readonly words: string
  readonly motif: Motif
  /** Stitches made otherwise than before; those that only follow along are not counted. */
  readonly altered: number
  /** For counts: stitches of the round after the change, and whether later rounds keep theirs. */
  readonly count: number | null
  readonly keeps: boolean
}

/** A count may be doubled or halved, as a forgotten or doubled increase round does; beyond it the pattern is another one. */
const furthestFactor = 2
/** Multiples of the repeat tried on either side. */
const mostSteps = 4
/** Stitches a maker exchanges for one another, lowest first. */
const ladder: readonly StitchKind["basic"][] = ["sc", "hdc", "dc", "tr", "dtr"]
const chainReach = 2

/** Every change tried, round by round. */
export function changesOf(motif: Motif): MendChange[] {
  return motif.rounds.flatMap((_, round) => [
    ...countChanges(motif, round),
    ...stitchChanges(motif, round),
    ...chainChanges(motif, round),
    ...roundChanges(motif, round),
  ])
}

function countChanges(motif: Motif, round: number): MendChange[] {
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

function stitchChanges(motif: Motif, round: number): MendChange[] {
  const own = motif.rounds[round]!
  const { byKind, stitches } = countRound(own)
  const kind = byKind[0]?.kind
  if (byKind.length !== 1 || !kind || kind.gathered || kind.post || kind.loops) return []
  const place = ladder.indexOf(kind.basic)
  if (place < 0) return []
  return [-1, 1].flatMap((step): MendChange[] => {
    const basic = ladder[place + step]
    if (!basic) return []
    const elements = own.elements.map(
      (element): Element => (element.type === "stitch" ? { ...element, kind: { basic } } : element),
    )
    return [
      {
        kind: "stitch",
        round,
        words: `Round ${own.number}: work it in ${basic} instead of ${kindName(kind)}, same count.`,
        motif: replaceRound(motif, round, elements),
        altered: stitches,
        count: null,
        keeps: false,
      },
    ]
  })
}

function chainChanges(motif: Motif, round: number): MendChange[] {
  const own = motif.rounds[round]!
  return countRound(own).spacesBySize.flatMap(({ chains, count }) => {
    const changes: MendChange[] = []
    for (let by = -chainReach; by <= chainReach; by++) {
      const to = chains + by
      if (by === 0 || to < 1 || anchoredInChains(motif, round, to)) continue
      const elements = own.elements.map(
        (element): Element =>
          element.type === "chain" && element.chains === chains
            ? { ...element, chains: to }
            : element,
      )
      changes.push({
        kind: "chains",
        round,
        words: `Round ${own.number}: make its ch-${chains} spaces ch ${to}.`,
        motif: replaceRound(motif, round, elements),
        altered: count * Math.abs(by),
        count: null,
        keeps: false,
      })
    }
    return changes
  })
}

/** True when a later stitch goes into a chain that a run of that length would not have. */
function anchoredInChains(motif: Motif, round: number, length: number): boolean {
  return motif.rounds.some((own) =>
    own.elements.some(
      (element) =>
        element.type === "stitch" &&
        element.anchors.some(
          (anchor) => anchor.at === "chain" && anchor.round === round && anchor.chain >= length,
        ),
    ),
  )
}

/** The last round left out, or worked once more without increases. */
function roundChanges(motif: Motif, round: number): MendChange[] {
  const own = motif.rounds[round]!
  if (round !== motif.rounds.length - 1) return []
  const stitches = countRound(own).stitches
  const changes: MendChange[] = []
  if (round > 0)
    changes.push({
      kind: "drop-round",
      round,
      words: `Leave out round ${own.number}.`,
      motif: { ...motif, rounds: motif.rounds.slice(0, -1) },
      altered: stitches,
      count: null,
      keeps: false,
    })
  changes.push({
    kind: "add-round",
    round: round + 1,
    words: `Work one more round without increases, ${kindName(mainKind(own))} in each stitch and chain.`,
    motif: { ...motif, rounds: [...motif.rounds, plainOver(own, round)] },
    altered: stitches,
    count: null,
    keeps: false,
  })
  return changes
}

function plainOver(below: Round, index: number): Round {
  const kind = mainKind(below)
  const elements = below.elements.flatMap((element, e): Element[] => {
    if (element.type === "picot") return []
    if (element.type === "stitch")
      return [{ type: "stitch", kind, anchors: [{ at: "stitch", round: index, element: e }] }]
    return Array.from(
      { length: element.chains },
      (): Element => ({
        type: "stitch",
        kind,
        anchors: [{ at: "space", round: index, element: e }],
      }),
    )
  })
  return { number: below.number + 1, elements, turned: below.turned, closing: "joined" }
}

export function mainKind(round: Round): StitchKind {
  const { byKind } = countRound(round)
  const main = byKind.reduce<{ kind: StitchKind; count: number }>(
    (best, entry) => (entry.count > best.count ? entry : best),
    { kind: { basic: "sc" }, count: 0 },
  )
  return main.kind
}

/** Greatest number that divides all counts of the piece: its repeat. */
export function commonRepeat(motif: Motif): number {
  return motif.rounds.reduce((sum, round) => commonDivisor(sum, countRound(round).stitches), 0)
}
