// Candidate rounds over half a side: for each outline to aim at and each corner group, the count of tops
// that the outline's length asks for, spread over the places below, each top of the height that
// carries its place out to the outline.

import { type Aim, aimLength, aimPoint } from "./aim.ts"
import type { HalfEdge } from "./half-edge.ts"
import { mostTopsOfHalf, turnsCorner } from "./outline-model.ts"
import type { Palette } from "./palette.ts"
import { type HalfPlan, topsOfHalf } from "./plan.ts"

/** What a round may be made of. */
export interface RoundRules {
  /** Stitches allowed, as indices into the palette. */
  readonly kinds: readonly number[]
  /** Chains allowed at a corner; 0 = none. */
  readonly cornerChains: readonly number[]
  /** True when the corners must be sharp groups in one place (the last round of a proposal). */
  readonly sharpCorners: boolean
  /** Most stitches in one place at a corner, and along a side. */
  readonly mostInCorner: number
}

/** More than three stitches in one place along a side is a shell, not an increase. */
export const mostInPlace = 3

/** Heights at the middle of a side are tried as they are and a little off: the yarn gives this much. */
const giveSteps = [0.96, 1, 1.04] as const

/** Sharpness to aim at in rounds that are not the last. */
const sharpnessSteps = [0, 0.25, 0.5, 0.75, 1] as const

/** Calls `consider` with every candidate; plans are the callee's to keep. */
export function eachCandidate(
  edge: HalfEdge,
  palette: Palette,
  rules: RoundRules,
  consider: (plan: HalfPlan) => void,
): void {
  const seen = new Set<number>()
  for (const aim of aimsFor(edge, palette, rules))
    for (const { inCorner, chains } of cornerGroups(edge, rules)) {
      const wanted = aimLength(aim, edge.half)
      for (const tops of spreads(edge, palette, rules, inCorner, chains, wanted)) {
        if (topsOfHalf(edge.shape, tops) >= mostTopsOfHalf) continue
        const size = fitHeights(edge, palette, rules, aim, tops, chains)
        const key = keyOf(tops, heightsFitted, size, chains)
        if (seen.has(key)) continue
        seen.add(key)
        consider({
          tops,
          heights: Array.from(heightsFitted.subarray(0, size)),
          cornerChains: chains,
        })
      }
    }
}

/** Equal for equal plans; two different ones fall together once in about 10^10 pairs. */
function keyOf(
  tops: readonly number[],
  heights: Uint8Array,
  size: number,
  cornerChains: number,
): number {
  let a = cornerChains + 1
  let b = 0x9e3779b9
  for (let i = 0; i < tops.length + size; i++) {
    const value = i < tops.length ? tops[i]! : heights[i - tops.length]!
    a = Math.imul(a ^ (value + 1), 0x01000193)
    b = Math.imul(b + value + 7, 0x85ebca6b) ^ (b >>> 13)
  }
  return (a >>> 0) * 0x100000 + ((b >>> 12) & 0xfffff)
}

function aimsFor(edge: HalfEdge, palette: Palette, rules: RoundRules): Aim[] {
  const side = edge.feet[0]!.x
  const sharpness = rules.sharpCorners ? [1] : sharpnessSteps
  return rules.kinds.flatMap((kind) =>
    giveSteps.flatMap((give) =>
      sharpness.map((s) => ({
        apothemMm: side + palette.heightMm[kind]! * give,
        sharpness: s,
      })),
    ),
  )
}

interface CornerGroup {
  /** Stitches in the corner place (on a mirror line), or 0 when the corner lies between places. */
  readonly inCorner: number
  readonly chains: number
}

/** Corner groups the rules allow over this edge. */
export function cornerGroups(edge: HalfEdge, rules: RoundRules): CornerGroup[] {
  const groups: CornerGroup[] = []
  for (const chains of rules.cornerChains) {
    if (!edge.shape.cornerOn) {
      if (!rules.sharpCorners) groups.push({ inCorner: 0, chains })
      continue
    }
    for (let inCorner = 1; inCorner <= rules.mostInCorner; inCorner++) {
      if (chains > 0 && inCorner % 2 === 1) continue
      const below = edge.feet.at(-1)!.chains
      if (rules.sharpCorners && !turnsCorner(inCorner, below, chains)) continue
      groups.push({ inCorner, chains })
    }
  }
  return groups
}

/** Tops per place whose edge comes nearest to the wanted length, from below and from above, in several spreads. */
function spreads(
  edge: HalfEdge,
  palette: Palette,
  rules: RoundRules,
  inCorner: number,
  chains: number,
  wantedMm: number,
): number[][] {
  const { feet, shape } = edge
  const plain = feet.map((foot) => (foot.chains > 0 ? foot.chains : 1))
  if (shape.cornerOn) plain[feet.length - 1] = inCorner
  const widthMm = palette.widthMm[rules.kinds[0]!]!
  const chainPart = (chains * palette.chainMm) / 2
  const missing = (wantedMm - chainPart - edgeLength(edge, plain, chains, widthMm)) / widthMm
  if (sidePlaces(edge) <= fewPlaces) return everySpread(edge, plain, missing)
  const found: number[][] = []
  const low = Math.floor(missing + 0.25)
  const high = Math.ceil(missing - 0.25)
  for (let extra = low; extra <= high; extra++) {
    if (extra === 0) found.push([...plain])
    else if (extra > 0) found.push(...withMore(edge, plain, extra))
    else found.push(...withFewer(edge, plain, -extra))
  }
  return found
}

/** So few places along half a side that every way to fill them is tried. */
const fewPlaces = 3
/** How far a spread's edge may miss the wanted length, in stitches. */
const nearEnough = 0.8

/** Every filling of the side's places that is about as long as wanted, the corner's own as it is. */
function everySpread(edge: HalfEdge, plain: readonly number[], missing: number): number[][] {
  const places = sidePlaces(edge)
  const weight = (i: number, count: number) => (i === 0 && edge.shape.midOn ? count / 2 : count)
  const found: number[][] = []
  const fill = (i: number, tops: number[], left: number): void => {
    if (i === places) {
      if (Math.abs(left) <= nearEnough && topsOfHalf(edge.shape, tops) > 0) found.push([...tops])
      return
    }
    const most = edge.feet[i]!.chains + mostInPlace
    for (let count = 0; count <= most; count++) {
      const changed = [...tops]
      changed[i] = count
      fill(i + 1, changed, left - weight(i, count) + weight(i, plain[i]!))
    }
  }
  fill(0, [...plain], missing)
  return found
}

/** Half a side of edge, mm: a top on a mirror line counts half. */
function edgeLength(
  edge: HalfEdge,
  tops: readonly number[],
  chains: number,
  widthMm: number,
): number {
  const { shape } = edge
  let count = topsOfHalf(shape, tops)
  if (shape.midOn && tops[0]! % 2 === 1) count -= 0.5
  if (shape.cornerOn && chains === 0 && tops.at(-1)! % 2 === 1) count -= 0.5
  return count * widthMm
}

/** Places along the side that can take more, the corner's own place left out. */
function sidePlaces(edge: HalfEdge): number {
  return edge.feet.length - (edge.shape.cornerOn ? 1 : 0)
}

function withMore(edge: HalfEdge, plain: readonly number[], extra: number): number[][] {
  const places = sidePlaces(edge)
  if (places === 0) return []
  const first = edge.shape.midOn ? 1 : 0
  const orders: number[][] = []
  const outward = Array.from({ length: places }, (_, i) => i)
  orders.push([...outward].reverse())
  // One place away from the corner, as makers often set it.
  if (places > 1)
    orders.push([places - 2, ...[...outward].reverse().filter((i) => i !== places - 2)])
  // Spread evenly along the side.
  const even: number[] = []
  for (let e = 0; e < extra; e++)
    even.push(Math.min(places - 1, Math.floor(((e + 0.5) * places) / Math.max(extra, 1))))
  orders.push([...new Set(even), ...[...outward].reverse().filter((i) => !even.includes(i))])
  const found: number[][] = []
  for (const order of orders) {
    const tops = [...plain]
    let left = extra
    for (let turn = 0; turn < mostInPlace && left > 0; turn++)
      for (const i of order) {
        if (left <= 0) break
        const limit = edge.feet[i]!.chains + mostInPlace
        if (tops[i]! + 1 > limit) continue
        // A place on the mirror line gives one more half only with every second stitch.
        const onLine = i === 0 && first === 1
        if (onLine && left < 1) continue
        tops[i]! += onLine ? 2 : 1
        left -= 1
      }
    if (left <= 0) found.push(tops)
  }
  return found
}

/** Skips beside the corner, or in the middle of the side; stitches along a side are never taken from a lone place. */
function withFewer(edge: HalfEdge, plain: readonly number[], fewer: number): number[][] {
  const places = sidePlaces(edge)
  const first = edge.shape.midOn ? 1 : 0
  if (fewer > places - first) return []
  const nearCorner = Array.from({ length: fewer }, (_, i) =>
    2 * fewer <= places - first + 1 ? places - 1 - 2 * i : places - 1 - i,
  )
  const spread = Array.from({ length: fewer }, (_, i) =>
    Math.min(places - 1, first + Math.floor(((i + 0.5) * (places - first)) / fewer)),
  )
  return [nearCorner, spread].flatMap((skipped) => {
    const tops = plain.map((count, i) => (skipped.includes(i) ? Math.max(0, count - 1) : count))
    return skipped.every((i) => i >= first) && tops.some((count) => count > 0) ? [tops] : []
  })
}

const point = new Float64Array(2)
/** Heights of the candidate at hand: most are met again and need no array of their own. */
const heightsFitted = new Uint8Array(mostTopsOfHalf)

/** Writes each top's height to `heightsFitted`, gives their number: from the distance between its place and where the aimed outline wants it. */
function fitHeights(
  edge: HalfEdge,
  palette: Palette,
  rules: RoundRules,
  aim: Aim,
  tops: readonly number[],
  cornerChains: number,
): number {
  const { feet, shape, half } = edge
  const last = feet.length - 1
  const length = aimLength(aim, half)
  const widthMm = palette.widthMm[rules.kinds[0]!]!
  const rest = edgeLength(edge, tops, cornerChains, widthMm) + (cornerChains * palette.chainMm) / 2
  const scale = length / rest
  let size = 0
  let along = 0
  for (let i = 0; i <= last; i++) {
    const whole = tops[i]!
    const mid = i === 0 && shape.midOn
    const corner = i === last && shape.cornerOn
    const own = mid || corner ? (whole + 1) >> 1 : whole
    for (let k = 0; k < own; k++) {
      const onMid = mid && whole % 2 === 1 && k === 0
      const onCorner = corner && cornerChains === 0 && whole % 2 === 1 && k === own - 1
      const at = onMid ? 0 : onCorner ? rest : along + widthMm / 2
      along += onMid ? widthMm / 2 : widthMm
      aimPoint(aim, half, at * scale, point)
      const dx = point[0]! - feet[i]!.x
      const dy = point[1]! - feet[i]!.y
      const need = Math.sqrt(dx * dx + dy * dy)
      heightsFitted[size++] = nearest(palette, rules.kinds, need)
    }
  }
  return size
}

function nearest(palette: Palette, kinds: readonly number[], heightMm: number): number {
  let best = kinds[0]!
  for (const kind of kinds)
    if (Math.abs(palette.heightMm[kind]! - heightMm) < Math.abs(palette.heightMm[best]! - heightMm))
      best = kind
  return best
}
