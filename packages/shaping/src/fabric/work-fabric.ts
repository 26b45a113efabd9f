// A planned round of fabric worked onto a motif, and the units that it leaves for the next.

import type { Anchor, Element, Motif, Round } from "@roundwright/motif"
import type { Palette } from "../palette.ts"
import type { Spot } from "./fabric-of.ts"
import type { CornerWork, FabricRound, Seating, UnitWork } from "./fabric-plan.ts"
import { classOf } from "./seatings.ts"

export interface WorkedRound {
  readonly motif: Motif
  /** Elements of the round that stand on each corner. */
  readonly corners: readonly (readonly number[])[]
  /** Corners and sides as the next round finds them. */
  readonly seating: Seating
}

interface Made {
  readonly element: Element
  /** Number of the corner whose group it belongs to, null along a side. */
  readonly corner: number | null
  /** Side it lies on, or that begins at its corner. */
  readonly side: number
  /** A place for the next round to build on, along the side or on the corner. */
  readonly holds: "corner" | "side" | null
}

export function workFabric(
  motif: Motif,
  seating: Seating,
  plan: FabricRound,
  palette: Palette,
): WorkedRound {
  const made: Made[] = []
  seating.sides.forEach((units, c) => {
    const seat = seating.corners[c]
    if (seat) pushCorner(made, plan, plan.corners.get(seat.class)!, seat.spot.anchor, c, palette)
    const side = plan.sides.get(classOf(seating, c).key)!
    pushChain(made, side.gaps[0]!, plan, c)
    units.forEach((unit, i) => {
      pushWork(made, side.works[i]!, unit.anchor, c, plan, palette)
      pushChain(made, side.gaps[i + 1]!, plan, c)
    })
  })
  const begin = firstInOrder(made)
  const order = [...made.slice(begin), ...made.slice(0, begin)]
  const index = motif.rounds.length
  const round: Round = {
    number: (motif.rounds.at(-1)?.number ?? 0) + 1,
    elements: order.map(({ element }) => element),
    turned: false,
    closing: "joined",
  }
  const spot = (e: number): Spot => {
    const { element } = order[e]!
    return element.type === "chain"
      ? { anchor: { at: "space", round: index, element: e }, element: e, chains: element.chains }
      : { anchor: { at: "stitch", round: index, element: e }, element: e, chains: 0 }
  }
  const corners = seating.corners.map((_, c) =>
    order.flatMap(({ corner }, e) => (corner === c ? [e] : [])),
  )
  return {
    motif: { ...motif, rounds: [...motif.rounds, round] },
    corners,
    seating: nextSeating(order, seating.corners.length, spot),
  }
}

function nextSeating(order: readonly Made[], corners: number, spot: (e: number) => Spot): Seating {
  const n = order.length
  const tips = Array.from({ length: corners }, (_, c) =>
    order.findIndex(({ holds, corner }) => holds === "corner" && corner === c),
  )
  return {
    corners: tips.map((tip) => ({ spot: spot(tip), class: "on" as const })),
    sides: tips.map((tip, c) => {
      const end = tips[(c + 1) % corners]!
      const units: Spot[] = []
      for (let e = (tip + 1) % n; e !== end; e = (e + 1) % n)
        if (order[e]!.holds === "side") units.push(spot(e))
      return units
    }),
  }
}

function pushChain(made: Made[], chains: number, plan: FabricRound, side: number): void {
  if (chains === 0) return
  const holds = plan.next === "spaces" ? "side" : null
  made.push({ element: { type: "chain", chains }, corner: null, side, holds })
}

function pushWork(
  made: Made[],
  work: UnitWork,
  anchor: Anchor,
  side: number,
  plan: FabricRound,
  palette: Palette,
): void {
  const middle = (work.stitches - 1) >> 1
  for (let i = 0; i < work.stitches; i++) {
    if (i > 0) pushChain(made, work.inner, plan, side)
    const holds = plan.next === "tips" && i === middle ? "side" : null
    made.push({
      element: { type: "stitch", kind: palette.kinds[work.kind]!, anchors: [anchor] },
      corner: null,
      side,
      holds,
    })
  }
}

function pushCorner(
  made: Made[],
  plan: FabricRound,
  corner: CornerWork,
  anchor: Anchor,
  c: number,
  palette: Palette,
): void {
  const stitch = (holds: Made["holds"]) =>
    made.push({
      element: { type: "stitch", kind: palette.kinds[corner.kind]!, anchors: [anchor] },
      corner: c,
      side: c,
      holds,
    })
  const chain = (chains: number, holds: Made["holds"]) =>
    made.push({ element: { type: "chain", chains }, corner: c, side: c, holds })
  const innerHolds = plan.next === "spaces" ? "side" : null
  const half = (from: number, upTo: number) => {
    for (let i = from; i < upTo; i++) {
      if (i > from && corner.inner > 0) chain(corner.inner, innerHolds)
      stitch(null)
    }
  }
  if (corner.chains > 0) {
    half(0, corner.each)
    chain(corner.chains, "corner")
    half(0, corner.each)
    return
  }
  solidCorner(corner, stitch)
}

function solidCorner({ each }: CornerWork, stitch: (holds: Made["holds"]) => void): void {
  for (let i = 0; i < 2 * each - 1; i++) stitch(i === each - 1 ? "corner" : null)
}

/** The stitch worked into the earliest place of the round below. */
function firstInOrder(made: readonly Made[]): number {
  const placeOf = (one: Made | undefined) => {
    if (one?.element.type !== "stitch") return null
    const anchor = one.element.anchors[0]!
    return anchor.at === "centre" ? null : anchor.element
  }
  let best = -1
  made.forEach((one, i) => {
    const place = placeOf(one)
    if (place !== null && (best < 0 || place < placeOf(made[best])!)) best = i
  })
  // A corner's group may run over the list's end: begin with its own first stitch.
  return Math.max(0, best)
}
