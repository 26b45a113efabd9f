// The legs of a round: for each leg of each stitch where it stands, and how far it leans when the fabric
// is at ease. Row height is measured square to the row. Where increases are spread along a solid edge,
// tops and bases cannot stand exactly over each other, and a leg leaning by d is at ease with the
// length sqrt(h^2 + d^2), so that the round is h deep; legs that fan out of one place keep their length h.

import { type Anchor, anchorKey, type Motif, type RoundCorners } from "@roundwright/motif"
import { chainThickness } from "@roundwright/stitches"
import type { EdgeNode } from "./edge-plan.ts"
import { cornerMitres, firstTips, type Mitre } from "./mitre.ts"
import type { Point } from "./net.ts"
import { type Ground, type Place, placeOf } from "./places.ts"

export interface Leg {
  /** Index of the stitch's node in its edge. */
  readonly index: number
  readonly top: EdgeNode
  readonly place: Place
  /** How many legs in the same place this one stands for (a cluster is one spring). */
  readonly share: number
  /** Offset of the top against the base along the edge at ease, on a tip across it, mm, positive counterclockwise. */
  readonly leanMm: number
  /** Length at ease, mm. */
  readonly restMm: number
  /** For legs at a corner of the edge below; null elsewhere. */
  readonly bend: Bend | null
}

/** How the edge below turns near a leg. */
export interface Bend {
  /** 1 for a leg before the tip (counterclockwise), -1 after it, 0 on it. */
  readonly side: number
  /** From the leg's base to the corner of the edge below, mm, negative when it stands past it. */
  readonly beforeMm: number
  /** Angle of the turn. */
  readonly turn: number
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
  corners: readonly RoundCorners[],
  postPoint: (round: number, element: number) => Point | null,
): Leg[] {
  const standing = gatherStanding(ground.motif, ground, round)
  const sharing = new Map<string, Standing[]>()
  for (const leg of standing) sharing.set(leg.key, [...(sharing.get(leg.key) ?? []), leg])
  const rotated = new Map([...sharing].map(([key, legs]) => [key, inOrder(legs, ground, round)]))
  const phase = round === 0 ? ringPhase(ground, standing) : 0
  const placed = standing.map((leg) => {
    const group = rotated.get(leg.key)!
    const rank = group.indexOf(leg)
    const element = ground.motif.rounds[round]!.elements[leg.top.element]!
    const roundPost = element.type === "stitch" && element.kind.post !== undefined
    const share =
      leg.anchor.at === "centre"
        ? leg.top.along / ground.edges[round]!.lengthMm - phase
        : (rank + 0.5) / group.length
    const place = placeOf(ground, leg.anchor, share, roundPost ? postPoint : null)
    const solid = leg.anchor.at === "stitch" && group.length <= 2 && place.round === round - 1
    return { ...leg, place, group, solid }
  })
  const mitres = cornerMitres(ground, round, corners)
  const tips = round === 0 ? firstTips(ground, corners) : []
  const spread = spreadLeans(ground, round, mitres, placed)
  return placed.map((leg, k) => {
    const { index, top, place, share } = leg
    const h = heightOf(leg, ground.chainMm)
    const plain = { index, top, place, share }
    const mitre = mitres.find((one) => one.elements.has(top.element))
    const mitred = mitre === undefined ? null : mitredLean(ground, round, mitre, leg)
    if (mitred !== null) return { ...plain, ...mitred }
    if (tips.length > 0) {
      const reach = firstReach(tips, ground.edges[0]!.lengthMm, h, top.along)
      return { ...plain, leanMm: 0, restMm: Math.hypot(h, reach), bend: null }
    }
    const limit = mostLeanWidths * top.widthMm
    const own = spread[k]
    const lean = own ?? fanLean(leg, placed, ground, round)
    const leanMm = Math.min(limit, Math.max(-limit, lean))
    return { ...plain, leanMm, restMm: own === undefined ? h : Math.hypot(h, leanMm), bend: null }
  })
}

/** How high a leg holds its top over its place; over a run of chains at least their own thickness. */
function heightOf({ top, anchor, place }: Placed, chainMm: number): number {
  const least = anchor.at === "space" || anchor.at === "chain" ? chainThickness(chainMm) : 0
  return Math.max(top.heightMm, least) + place.aboveMm
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

/**
 * How the first round is turned on a ring of chains: such that its pattern sits on the chains in the same way
 * wherever the round begins. A pattern without any preference sits as it comes.
 */
function ringPhase(ground: Ground, standing: readonly Standing[]): number {
  const n = ground.ring.nodes.length
  const { lengthMm } = ground.edges[0]!
  let [c, s] = [0, 0]
  for (const { top } of standing) {
    const angle = (2 * Math.PI * n * top.along) / lengthMm
    c += Math.cos(angle)
    s += Math.sin(angle)
  }
  const clear = Math.hypot(c, s) > 1e-6 * standing.length
  return n > 1 && clear ? Math.atan2(s, c) / (2 * Math.PI * n) : 0
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
  mitres: readonly Mitre[],
  legs: readonly Placed[],
): (number | undefined)[] {
  const leans = new Array<number | undefined>(legs.length).fill(undefined)
  if (round === 0) return leans
  const inCorner = (leg: Placed): boolean => mitres.some((one) => one.elements.has(leg.top.element))
  const use = legs.map((leg) => leg.solid && !inCorner(leg))
  for (const stretch of stretches(use)) {
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

function stretches(use: readonly boolean[]): number[][] {
  const n = use.length
  const start = use.indexOf(false)
  if (start < 0) return [use.map((_, k) => k)]
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

/**
 * At a corner the top of a leg lies s before the tip of its edge and its base b before that of the edge below;
 * rows square to the side reach h tan(turn / 2) further at the top, so the leg leans by that + b - s.
 */
function mitredLean(
  ground: Ground,
  round: number,
  mitre: Mitre,
  leg: Placed,
): Pick<Leg, "leanMm" | "restMm" | "bend"> | null {
  if (leg.place.round !== round - 1 || mitre.baseTip === null) return null
  const s = cyclic(mitre.tip - leg.top.along, ground.edges[round]!.lengthMm)
  const b = cyclic(mitre.baseTip - leg.place.along, ground.edges[round - 1]!.lengthMm)
  const h = leg.top.heightMm
  const reach = h * Math.tan(mitre.turn / 2)
  const side = Math.abs(s) < 1e-9 * h ? 0 : Math.sign(s)
  // A leg cannot lean further than a corner of 45 degrees to its row asks for.
  const lean = Math.min(h, Math.max(-h, reach + side * b - Math.abs(s)))
  return {
    leanMm: side * lean,
    restMm: Math.hypot(h + leg.place.aboveMm, side === 0 ? reach : lean),
    bend: { side, beforeMm: side * b, turn: mitre.turn },
  }
}

/**
 * A first round that is to have corners lies as a polygon from the start: a leg stands off the middle of its
 * side by its place along it, at most as far as the corner of a polygon h deep.
 */
function firstReach(tips: readonly number[], length: number, h: number, along: number): number {
  const fromTip = Math.min(...tips.map((tip) => Math.abs(cyclic(along - tip, length))))
  const half = length / (2 * tips.length)
  return Math.max(0, Math.min(half - fromTip, h * Math.tan(Math.PI / tips.length)))
}

/** The difference of two places on a closed edge, the short way round. */
function cyclic(difference: number, length: number): number {
  return difference - length * Math.round(difference / length)
}

/** Offset of a leg in a fan: its top against the middle of the tops, its base against that of the bases. */
function fanLean(leg: Placed, legs: readonly Placed[], ground: Ground, round: number): number {
  if (leg.group.length < 2 || leg.place.round < 0) return 0
  const fan = legs.filter((other) => other.key === leg.key)
  const topLength = ground.edges[round]!.lengthMm
  const baseLength = ground.edges[leg.place.round]!.lengthMm
  const t = fan.map((other) => cyclic(other.top.along - leg.top.along, topLength))
  const b = fan.map((other) => cyclic(other.place.along - leg.place.along, baseLength))
  return mean(b) - mean(t)
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length
}
