// One round of fabric fitted to the polygon it shall make: a side at distance a, each unit's stitches as tall as its way
// out to that side, the chains between as long as the side leaves over.
//
//   half side: middle (along 0)  unit  gap  unit  gap  corner (along a tan(pi / k))

import { widthBesideChains } from "@roundwright/stitches"
import type { Palette } from "../palette.ts"
import { remarkable } from "../score.ts"
import type { CornerWork, FabricRound, SeatClass, SideWork, UnitWork } from "./fabric-plan.ts"
import type { LaidSides, LaidUnit } from "./laid-units.ts"

/** The manner in which a side is filled. */
export interface Filling {
  readonly stitches: number
  readonly inner: number
  /** Fewest and most chains between two units. */
  readonly gaps: readonly [number, number]
  readonly next: FabricRound["next"]
}

export interface FitChoice {
  readonly filling: Filling
  readonly corner: Omit<CornerWork, "kind">
  /** Distance of the side from the centre. */
  readonly apothem: number
  /** Kinds allowed, indices into the palette, lowest first; one alone makes a plain round. */
  readonly kinds: readonly number[]
  /** The same number of chains between all units. */
  readonly evenGaps: boolean
}

export interface FittedRound {
  readonly plan: FabricRound
  /** How far lengths and heights are from those asked for: 1 for each that a maker would just remark on. */
  readonly misfit: number
}

/** Null where the side leaves no room for what shall stand on it. */
export function fitFabric(
  laid: LaidSides,
  choice: FitChoice,
  palette: Palette,
): FittedRound | null {
  const length = choice.apothem * Math.tan(laid.half)
  const heights = heightsOf(laid, choice, palette)
  const corners = new Map<SeatClass, CornerWork>()
  const taken = new Map<SeatClass, number>()
  for (const [seat, kind] of heights.corners) {
    const corner = { ...choice.corner, kind }
    corners.set(seat, corner)
    taken.set(seat, cornerHalf(corner, choice.filling, palette))
  }
  const sides = new Map<string, SideWork>()
  const total = [...laid.counts.values()].reduce((sum, count) => sum + count, 0)
  let misfit = heights.misfit
  for (const [key, units] of laid.sides) {
    const [, one, other] = key.split(" ") as [string, SeatClass, SeatClass]
    const ends = [taken.get(one)!, taken.get(other)!] as const
    const side = fitSide(units, heights.sides.get(key)!, choice, length, ends, palette)
    if (side === null) return null
    sides.set(key, side.work)
    const off = side.leftOver / (2 * length) / remarkable.fullness
    misfit += (laid.counts.get(key)! / total) * off ** 2
  }
  return { plan: { corners, sides, next: choice.filling.next }, misfit }
}

interface Heights {
  readonly sides: ReadonlyMap<string, readonly number[]>
  readonly corners: ReadonlyMap<SeatClass, number>
  readonly misfit: number
}

/** The kind of every unit's stitches, rising or falling from the middle of the side to the corner, whichever fits better. */
function heightsOf(laid: LaidSides, choice: FitChoice, palette: Palette): Heights {
  const { apothem, kinds } = choice
  const ways = kinds.length === 1 ? [1] : [1, -1]
  let best: Heights | null = null
  for (const way of ways) {
    const sides = new Map<string, number[]>()
    let sum = 0
    let counted = 0
    const outermost: number[] = []
    const further = way > 0 ? Math.max : Math.min
    for (const [key, units] of laid.sides) {
      const own = new Array<number>(units.length).fill(kinds[0]!)
      for (const half of halvesOf(units)) {
        let now = -1
        for (const u of half) {
          const need = needOf(units[u]!, apothem)
          const wanted = kinds.indexOf(nearest(palette, kinds, need))
          now = now < 0 ? wanted : further(now, wanted)
          own[u] = kinds[now]!
          sum += strain(palette.heightMm[kinds[now]!]!, need)
          counted++
        }
        if (now >= 0) outermost.push(now)
      }
      sides.set(key, own)
    }
    const corners = new Map<SeatClass, number>()
    for (const [seat, reach] of laid.cornerReach) {
      const need = apothem - reach * Math.cos(laid.half)
      const wanted = kinds.indexOf(nearest(palette, kinds, need))
      const kind = kinds[outermost.length === 0 ? wanted : further(wanted, ...outermost)]!
      corners.set(seat, kind)
      sum += (cornerWeight * strain(palette.heightMm[kind]!, need)) / laid.cornerReach.size
    }
    const misfit = sum / (counted + cornerWeight)
    if (best === null || misfit < best.misfit - 1e-9) best = { sides, corners, misfit }
  }
  return best!
}

/** The corner's height decides as much as that of two units along the side. */
const cornerWeight = 2

/** A unit nearer to the middle of its side than this stands on it, in units of length along the side's own. */
const onMiddle = 1e-3

/** Indices of each half of a side from its middle outwards; one on the middle belongs to both. */
export function halvesOf(units: readonly LaidUnit[]): [number[], number[]] {
  const slack = onMiddle * Math.max(...units.map(({ out }) => out), 0)
  const after = units.flatMap(({ along }, u) => (along >= -slack ? [u] : []))
  const before = units.flatMap(({ along }, u) => (along <= slack ? [u] : [])).reverse()
  return [before, after]
}

function strain(heightMm: number, need: number): number {
  // Loops give: a post that is short draws its loop in, one that is long leans.
  return ((heightMm - need) / Math.max(heightMm, need) / heightGive) ** 2
}

/** Departure of a height from what is asked that a maker would remark on: half the step from hdc to dc. */
const heightGive = 0.17

/** The way from a unit to where it stands on the side, spread in step. */
function needOf({ out, along }: LaidUnit, apothem: number): number {
  return Math.hypot(apothem - out, (apothem / out - 1) * along)
}

function nearest(palette: Palette, kinds: readonly number[], heightMm: number): number {
  let best = kinds[0]!
  for (const kind of kinds)
    if (Math.abs(palette.heightMm[kind]! - heightMm) < Math.abs(palette.heightMm[best]! - heightMm))
      best = kind
  return best
}

/** What a unit's stitches and the chains between them take up of the side. */
export function lengthOfWork(
  { kind, stitches, inner }: UnitWork,
  openEnds: boolean,
  palette: Palette,
): number {
  const widthMm = palette.widthMm[kind]!
  const lone = widthBesideChains(widthMm, 1)
  const alone = widthBesideChains(widthMm, 2)
  if (inner > 0)
    return (
      stitches * alone + (openEnds ? 0 : widthMm - lone) + (stitches - 1) * inner * palette.chainMm
    )
  if (!openEnds) return stitches * widthMm
  return stitches === 1 ? alone : 2 * lone + (stitches - 2) * widthMm
}

function cornerHalf(corner: CornerWork, filling: Filling, palette: Palette): number {
  const { each, inner, kind, chains } = corner
  const work = { kind, stitches: each, inner }
  const open = filling.gaps[1] > 0
  if (chains === 0) return lengthOfWork(work, open, palette) - palette.widthMm[kind]! / 2
  return lengthOfWork(work, open, palette) + (chains * palette.chainMm) / 2
}

function fitSide(
  units: readonly LaidUnit[],
  kinds: readonly number[],
  choice: FitChoice,
  length: number,
  /** What the corners at either end take up of the side. */
  ends: readonly [number, number],
  palette: Palette,
): { work: SideWork; leftOver: number } | null {
  const { filling, evenGaps, apothem } = choice
  const [fewest, most] = filling.gaps
  const n = units.length
  const works = kinds.map(
    (kind): UnitWork => ({ kind, stitches: filling.stitches, inner: filling.inner }),
  )
  const lengths = works.map((work) => lengthOfWork(work, most > 0, palette))
  const whole = lengths.reduce((sum, one) => sum + one, 0)
  const left = 2 * length - ends[0] - ends[1] - whole
  if (left < -2 * tooFull * length) return null
  const chain = palette.chainMm
  const gaps = new Array<number>(n + 1).fill(0)
  const inRange = (wantedMm: number) =>
    Math.min(most, Math.max(fewest, Math.round(wantedMm / chain)))
  if (evenGaps || n < 2) gaps.fill(inRange(left / (n + 1)))
  else {
    // From the middle out, each gap as long as the next unit's place on the side leaves.
    const place = ({ out, along }: LaidUnit) => (apothem * along) / Math.max(out, apothem / 4)
    const [before, after] = halvesOf(units)
    const shared = before[0] !== undefined && before[0] === after[0]
    let start = 0
    if (shared) start = lengths[after[0]!]! / 2
    else if (after.length > 0 && before.length > 0) {
      const [u, v] = [before[0]!, after[0]!]
      const wanted = place(units[v]!) - place(units[u]!) - (lengths[u]! + lengths[v]!) / 2
      gaps[v] = inRange(wanted)
      start = (gaps[v]! * chain) / 2
    }
    for (const [half, way] of [
      [after, 1],
      [before, -1],
    ] as const) {
      let at = start
      half.forEach((u, i) => {
        const gap = way > 0 ? u : u + 1
        if (i > 0) {
          gaps[gap] = inRange(way * place(units[u]!) - lengths[u]! / 2 - at)
          at += gaps[gap]! * chain
        }
        if (i > 0 || !shared) at += lengths[u]!
      })
      gaps[way > 0 ? n : 0] = inRange(length - ends[way > 0 ? 1 : 0] - at)
    }
  }
  const used = gaps.reduce((sum, chains) => sum + chains * chain, 0)
  return { work: { works, gaps }, leftOver: left - used }
}

/** Share of the side by which its stitches may be too many before the round is no candidate. */
const tooFull = 0.25
