// The legs of a round: for each leg of each stitch where it stands, and how far it leans when the fabric
// is at ease. Row height is measured square to the row. Where increases are spread along a solid edge,
// tops and bases cannot stand exactly over each other, and a leg leaning by d is at ease with the
// length sqrt(h^2 + d^2), so that the round is h deep; legs that fan out of one place keep their length h.

import { type Anchor, anchorKey, type CornerGroup, type Motif } from "@roundwright/motif"
import type { EdgeNode } from "./edge-plan.ts"
import type { Point } from "./net.ts"
import { type Ground, type Place, placeOf } from "./places.ts"

export interface Leg {
  /** Index of the stitch's node in its edge. */
  readonly index: number
  readonly top: EdgeNode
  readonly place: Place
  /** How many legs in the same place this one stands for (a cluster is one spring). */
  readonly share: number
  /** Offset of the top against the base along the edge at ease, mm, positive counterclockwise. */
  readonly leanMm: number
  /** Whether the lean lengthens the leg (spread increases) or not (a fan). */
  readonly lengthens: boolean
}

interface Standing {
  readonly index: number
  readonly top: EdgeNode
  readonly anchor: Anchor
  readonly key: string
  readonly share: number
}

/** A lean beyond this many widths is no longer one of a stitch at ease. */
const mostLeanWidths = 1

export function planLegs(
  ground: Ground,
  round: number,
  corners: readonly CornerGroup[],
  postPoint: (round: number, element: number) => Point | null,
): Leg[] {
  const standing = gatherStanding(ground.motif, ground, round)
  const sharing = new Map<string, Standing[]>()
  for (const leg of standing) sharing.set(leg.key, [...(sharing.get(leg.key) ?? []), leg])
  const rotated = new Map([...sharing].map(([key, legs]) => [key, inOrder(legs, ground, round)]))
  const placed = standing.map((leg) => {
    const group = rotated.get(leg.key)!
    const rank = group.indexOf(leg)
    const element = ground.motif.rounds[round]!.elements[leg.top.element]!
    const roundPost = element.type === "stitch" && element.kind.post !== undefined
    const place = placeOf(
      ground,
      leg.anchor,
      (rank + 0.5) / group.length,
      roundPost ? postPoint : null,
    )
    const solid = leg.anchor.at === "stitch" && group.length <= 2 && place.round === round - 1
    return { ...leg, place, group, solid }
  })
  const spread = spreadLeans(ground, round, corners, placed)
  return placed.map((leg, k) => {
    const limit = mostLeanWidths * leg.top.widthMm
    const lean = spread[k] ?? fanLean(leg, placed, ground, round)
    return {
      index: leg.index,
      top: leg.top,
      place: leg.place,
      share: leg.share,
      leanMm: Math.min(limit, Math.max(-limit, lean)),
      lengthens: spread[k] !== undefined,
    }
  })
}

type Placed = Standing & { place: Place; group: Standing[]; solid: boolean }

/** Legs in counterclockwise order; several legs of one stitch in one place are one. */
function gatherStanding(motif: Motif, ground: Ground, round: number): Standing[] {
  const list: Standing[] = []
  ground.edges[round]!.nodes.forEach((top, index) => {
    const element = motif.rounds[round]!.elements[top.element]!
    if (element.type !== "stitch") return
    const own = new Map<string, { anchor: Anchor; count: number }>()
    for (const anchor of element.anchors) {
      const entry = own.get(anchorKey(anchor))
      if (entry) entry.count++
      else own.set(anchorKey(anchor), { anchor, count: 1 })
    }
    for (const [key, { anchor, count }] of own)
      list.push({ index, top, anchor, key, share: count / element.anchors.length })
  })
  return list
}

/** Legs of one place start after the widest gap between them, so that a round's start does not split a fan. */
function inOrder(legs: Standing[], ground: Ground, round: number): Standing[] {
  const { lengthMm, closed } = ground.edges[round]!
  if (!closed || legs.length < 2 || legs[0]!.anchor.at === "centre") return legs
  let [start, widest] = [0, -1]
  legs.forEach((leg, k) => {
    const before = legs[(k - 1 + legs.length) % legs.length]!
    const gap = (leg.top.along - before.top.along + lengthMm) % lengthMm
    if (gap > widest + 1e-9 * lengthMm) [start, widest] = [k, gap]
  })
  return [...legs.slice(start), ...legs.slice(0, start)]
}

/**
 * Along each stretch of solid edge between corners, tops and bases run evenly over each other: the lean is
 * what is left of a straight line. Undefined for legs that are no part of such a stretch.
 */
function spreadLeans(
  ground: Ground,
  round: number,
  corners: readonly CornerGroup[],
  legs: readonly Placed[],
): (number | undefined)[] {
  const leans = new Array<number | undefined>(legs.length).fill(undefined)
  if (round === 0) return leans
  const elements = ground.motif.rounds[round]!.elements.length
  const inCorner = (leg: Placed): boolean =>
    corners.some(({ first, last }) => {
      const offset = (leg.top.element - first + elements) % elements
      return offset <= (last - first + elements) % elements
    })
  const use = legs.map((leg) => leg.solid && !inCorner(leg))
  for (const stretch of stretches(use, corners.length > 0)) {
    const b = unwrapped(
      stretch.map((k) => legs[k]!.place.along),
      ground.edges[round - 1]!.lengthMm,
    )
    const t = unwrapped(
      stretch.map((k) => legs[k]!.top.along),
      ground.edges[round]!.lengthMm,
    )
    const whole = stretch.length === legs.length && ground.edges[round]!.closed
    const slope = whole
      ? ground.edges[round]!.lengthMm / ground.edges[round - 1]!.lengthMm
      : slopeOf(b, t)
    const [meanB, meanT] = [mean(b), mean(t)]
    stretch.forEach((k, i) => {
      leans[k] = (t[i]! - meanT - slope * (b[i]! - meanB)) / Math.sqrt(slope)
    })
  }
  return leans
}

function stretches(use: readonly boolean[], cut: boolean): number[][] {
  const n = use.length
  const start = use.indexOf(false)
  if (start < 0) return cut ? [] : [use.map((_, k) => k)]
  const found: number[][] = []
  let current: number[] = []
  for (let i = 1; i <= n; i++) {
    const k = (start + i) % n
    if (use[k]) current.push(k)
    else {
      if (current.length > 1) found.push(current)
      current = []
    }
  }
  return found
}

/** Distances along a closed edge made to go on rising where they pass its start. */
function unwrapped(along: readonly number[], length: number): number[] {
  let lift = 0
  return along.map((value, k) => {
    const before = along[k - 1]
    if (before !== undefined && value < before - length / 2) lift += length
    if (before !== undefined && value > before + length / 2) lift -= length
    return value + lift
  })
}

/** Slope of the best line; 1 when the bases do not spread at all. */
function slopeOf(b: readonly number[], t: readonly number[]): number {
  const [meanB, meanT] = [mean(b), mean(t)]
  const square = b.reduce((sum, x) => sum + (x - meanB) ** 2, 0)
  const product = b.reduce((sum, x, i) => sum + (x - meanB) * (t[i]! - meanT), 0)
  return square > 0 && product > 0 ? product / square : 1
}

/** Offset of a leg in a fan: its top against the middle of the tops, its base against that of the bases. */
function fanLean(leg: Placed, legs: readonly Placed[], ground: Ground, round: number): number {
  if (leg.group.length < 2 || leg.place.round < 0) return 0
  const fan = legs.filter((other) => other.key === leg.key)
  const offset = (x: number, from: number, length: number): number => {
    const d = x - from
    return d - length * Math.round(d / length)
  }
  const topLength = ground.edges[round]!.lengthMm
  const baseLength = ground.edges[leg.place.round]!.lengthMm
  const t = fan.map((other) => offset(other.top.along, leg.top.along, topLength))
  const b = fan.map((other) => offset(other.place.along, leg.place.along, baseLength))
  return mean(b) - mean(t)
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length
}
