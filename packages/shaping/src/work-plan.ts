// From plans of half sides to rounds of a motif: every side is its half and the mirror image of it.
//
// Sides may differ by one place of the round below (counts that k does not divide): such a side is
// evened out in its middle, by one stitch more into a place, a place skipped, or two worked together.

import type { Anchor, Element, Motif, Round, StitchElement } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import type { Palette } from "./palette.ts"
import type { HalfPlan, HalfShape } from "./plan.ts"

/** What is done in the middle of a side that has a place too few or too many. */
export type Evening = "none" | "add" | "skip" | "together"

export interface SidePlan {
  /** Places of the round below that this side has. */
  readonly feet: number
  readonly evening: Evening
}

/** A round below as the next is worked into it. */
export interface Ground {
  readonly motif: Motif
  /** Places in working order, each with where to work into it. */
  readonly anchors: readonly Anchor[]
  /** Place with which a side begins: in the middle of a side, going towards its corner. */
  readonly start: number
  /** Elements of the last round that stand on each corner; empty before any corner is worked. */
  readonly corners: readonly (readonly number[])[]
}

/** Works one planned round over the ground and gives the new ground. */
export function workRound(
  ground: Ground,
  shape: HalfShape,
  plan: HalfPlan,
  sides: readonly SidePlan[],
  palette: Palette,
): Ground {
  const { motif, anchors } = ground
  const cells = cellsOfSide(shape, plan)
  const total = sides.reduce((sum, side) => sum + side.feet, 0)
  if (total !== anchors.length)
    throw new RoundwrightError("plan-does-not-fit", "The sides do not add up to the round below.", {
      hint: "This is a fault in the plan, not in the pattern.",
      numbers: { places: anchors.length, planned: total },
    })
  const made: Made[] = []
  let foot = ground.start
  sides.forEach((side, s) => {
    const places = Array.from(
      { length: side.feet },
      (_, i) => anchors[(foot + i) % anchors.length]!,
    )
    const firstFoot = foot
    foot += side.feet
    for (const { cell, at, also } of fitSide(cells, side, places.length)) {
      const where = [places[at]!, ...also.map((i) => places[i]!)]
      const footIndex = (firstFoot + at) % anchors.length
      pushCell(made, cell, where, palette, footIndex, s)
    }
  })
  // Work begins with the first stitch of the lowest place, so that the round follows the one below.
  const begin = firstInOrder(made)
  const order = [...made.slice(begin), ...made.slice(0, begin)]
  const elements = order.map(({ element }) => element)
  const round: Round = {
    number: (motif.rounds.at(-1)?.number ?? 0) + 1,
    elements,
    turned: false,
    closing: "joined",
  }
  const index = motif.rounds.length
  const startAt = order.findIndex(({ opensSide }) => opensSide)
  const corners = sides.map((_, s) => order.flatMap(({ corner }, e) => (corner === s ? [e] : [])))
  return {
    motif: { ...motif, rounds: [...motif.rounds, round] },
    anchors: elements.map((element, e) => ({
      at: element.type === "chain" ? ("space" as const) : ("stitch" as const),
      round: index,
      element: e,
    })),
    start: Math.max(0, startAt),
    corners,
  }
}

/** What is worked in one place: stitches (palette indices), and chains after the one at `chainsAfter`. */
interface Cell {
  readonly heights: readonly number[]
  readonly chains: number
  /** Number of the stitches that come before the chains. */
  readonly chainsAfter: number
  /** Stitch of the cell at which the next round's side begins: on or just past the side's middle. */
  readonly opens: number
  /** Stands on the corner, or beside it where the corner lies between two places. */
  readonly atCorner: boolean
}

interface Made {
  readonly element: Element
  readonly foot: number
  readonly opensSide: boolean
  /** Number of the side whose corner it stands on, null elsewhere. */
  readonly corner: number | null
}

/** The places of a whole side from its middle over its corner to the next middle. */
export function cellsOfSide(shape: HalfShape, plan: HalfPlan): Cell[] {
  const half: number[][] = []
  let at = 0
  const last = plan.tops.length - 1
  plan.tops.forEach((whole, i) => {
    const shared = (i === 0 && shape.midOn) || (i === last && shape.cornerOn)
    const own = shared ? (whole + 1) >> 1 : whole
    half.push(plan.heights.slice(at, at + own))
    at += own
  })
  const outward: Cell[] = half.map((heights, i) => {
    const whole = plan.tops[i]!
    if (i === 0 && shape.midOn) {
      const back = heights.slice(whole % 2).reverse()
      return {
        atCorner: i === last,
        heights: [...back, ...heights],
        chains: 0,
        chainsAfter: 0,
        opens: back.length,
      }
    }
    if (i === last && shape.cornerOn) {
      const odd = plan.cornerChains === 0 && whole % 2 === 1
      const back = [...heights].reverse().slice(odd ? 1 : 0)
      return {
        heights: [...heights, ...back],
        chains: plan.cornerChains,
        chainsAfter: heights.length,
        opens: 0,
        atCorner: true,
      }
    }
    return { heights, chains: 0, chainsAfter: 0, opens: 0, atCorner: i === last }
  })
  if (!shape.cornerOn && plan.cornerChains > 0)
    outward[last] = {
      ...outward[last]!,
      chains: plan.cornerChains,
      chainsAfter: outward[last]!.heights.length,
    }
  const back = outward
    .slice(shape.midOn ? 1 : 0, shape.cornerOn ? -1 : undefined)
    .reverse()
    .map((cell) => ({
      ...cell,
      heights: [...cell.heights].reverse(),
      chains: 0,
      chainsAfter: 0,
    }))
  return [...outward, ...back]
}

/** Which place each cell of a side is worked into. */
function fitSide(
  cells: readonly Cell[],
  side: SidePlan,
  places: number,
): { cell: Cell; at: number; also: number[] }[] {
  if (side.evening === "add")
    return cells.map((cell, i) => ({ cell, at: Math.max(0, i - 1), also: [] }))
  if (side.evening === "skip")
    return cells.map((cell, i) => ({ cell, at: Math.min(places - 1, i + 1), also: [] }))
  if (side.evening === "together")
    return cells.map((cell, i) => ({ cell, at: i === 0 ? 0 : i + 1, also: i === 0 ? [1] : [] }))
  return cells.map((cell, i) => ({ cell, at: i, also: [] }))
}

function pushCell(
  made: Made[],
  cell: Cell,
  where: readonly Anchor[],
  palette: Palette,
  foot: number,
  side: number,
): void {
  const hadOpened = made.some(({ opensSide }) => opensSide)
  const corner = cell.atCorner ? side : null
  const chain = () =>
    made.push({ element: { type: "chain", chains: cell.chains }, foot, opensSide: false, corner })
  cell.heights.forEach((height, i) => {
    if (cell.chains > 0 && cell.chainsAfter === i) chain()
    const kind = palette.kinds[height]!
    const element: StitchElement =
      where.length > 1 && i === 0
        ? {
            type: "stitch",
            kind: { ...kind, gathered: { how: "together", legs: where.length } },
            anchors: where,
          }
        : { type: "stitch", kind, anchors: [where.at(-1)!] }
    const opens = side === 0 && !hadOpened && i === Math.min(cell.opens, cell.heights.length - 1)
    made.push({ element, foot, opensSide: opens, corner })
  })
  if (cell.chains > 0 && cell.chainsAfter === cell.heights.length) chain()
}

/** The element that stands first where the places are taken in working order from place 0. */
function firstInOrder(made: readonly Made[]): number {
  let best = 0
  made.forEach(({ foot }, i) => {
    if (foot < made[best]!.foot) best = i
  })
  // A place's own stitches may wrap round the list's end.
  const n = made.length
  while (best > 0 && made[best - 1]!.foot === made[best]!.foot) best--
  if (best === 0) {
    let back = n - 1
    while (back > 0 && made[back]!.foot === made[0]!.foot) back--
    const wrapped = (back + 1) % n
    if (wrapped !== 0) best = wrapped
  }
  if (made[best]!.element.type === "chain") best = (best + 1) % n
  return best
}
