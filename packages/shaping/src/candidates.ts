// Candidate rounds over half a side: for each outline to aim at and each corner group, the count of tops
// that the outline's length asks for, spread over the places below, each top of the height that
// carries its place out to the outline.

import { type Aim, aimLength, aimPoint } from "./aim.ts"
import type { HalfEdge, HalfFoot } from "./half-edge.ts"
import { mostTopsOfHalf, turnsCorner } from "./outline-model.ts"
import type { Palette } from "./palette.ts"
import { type HalfPlan, topsOfHalf } from "./plan.ts"
import { countReversals } from "./score.ts"
import { edgeLength, spreads } from "./spreads.ts"

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
  readonly grading: Grading
}

/**
 * Heights along half a side: all alike and one stitch in each place (`plain`), only rising or only falling (`graded`), or
 * as they come (`any`).
 */
export type Grading = "plain" | "graded" | "any"

/** What fills a place: its chains, or one stitch. */
function ownCount({ chains }: HalfFoot): number {
  return chains > 0 ? chains : 1
}

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
  if (rules.grading === "plain" && rules.kinds.length > 1) {
    for (const kind of rules.kinds)
      eachCandidate(edge, palette, { ...rules, kinds: [kind] }, consider)
    return
  }
  const seen = new Set<number>()
  for (const aim of aimsFor(edge, palette, rules))
    for (const { inCorner, chains } of cornerGroups(edge, rules)) {
      const wanted = aimLength(aim, edge.half)
      const fillings =
        rules.grading === "plain"
          ? [plainFilling(edge, inCorner)]
          : spreads(edge, palette, rules.kinds[0]!, inCorner, chains, wanted)
      for (const tops of fillings) {
        if (topsOfHalf(edge.shape, tops) >= mostTopsOfHalf || leavesSpace(edge, tops)) continue
        const size = fitHeights(edge, palette, rules, aim, tops, chains)
        const key = keyOf(tops, heightsFitted, size, chains)
        if (seen.has(key)) continue
        seen.add(key)
        const heights = Array.from(heightsFitted.subarray(0, size))
        if (rules.grading === "graded" && countReversals(heights) > 0) continue
        consider({ tops, heights, cornerChains: chains })
      }
    }
}

/** Every space and loop is held: a chain that nothing is worked into hangs as a hole. */
export function leavesSpace({ feet }: HalfEdge, tops: readonly number[]): boolean {
  return feet.some(({ chains }, i) => chains > 0 && tops[i] === 0)
}

function plainFilling({ feet, shape }: HalfEdge, inCorner: number): number[] {
  const tops = feet.map(ownCount)
  if (shape.cornerOn) tops[feet.length - 1] = inCorner
  return tops
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
