// A round built on units (spaces, shells, groups, spokes) as the search of fabrics sees it: what stands in each corner,
// in each unit along a side, and the chains between. Sides with as many units are alike or mirror images.

import type { Spot } from "./fabric-of.ts"

/** What is worked into one unit along a side: `stitches` of one kind with `inner` chains between them. */
export interface UnitWork {
  /** Index into the palette. */
  readonly kind: number
  readonly stitches: number
  readonly inner: number
}

/** What is worked into a corner: `each` stitches, `chains`, `each` stitches, `inner` chains between the stitches. */
export interface CornerWork {
  readonly kind: number
  readonly each: number
  readonly inner: number
  /** 0 for a corner without a hole, of 2 x each - 1 stitches. */
  readonly chains: number
}

/** A side: works and the gaps of chains before, between and after them. */
export interface SideWork {
  readonly works: readonly UnitWork[]
  /** One more than works. */
  readonly gaps: readonly number[]
}

export interface FabricRound {
  /** Corners on units and corners between two. */
  readonly corners: ReadonlyMap<SeatClass, CornerWork>
  /** By the class of the side (`classOf`). */
  readonly sides: ReadonlyMap<string, SideWork>
  /** What the next round is built on. */
  readonly next: "spaces" | "tips"
}

/** A corner on a unit, or between two. */
export type SeatClass = "on" | "between"

/** Where a corner falls. */
export interface Seat {
  readonly spot: Spot
  readonly class: SeatClass
}

/** Corners, and the units of the side after each, in working order. */
export interface Seating {
  readonly corners: readonly Seat[]
  readonly sides: readonly (readonly Spot[])[]
}

/** The side as it is from its other end. */
export function mirroredSide({ works, gaps }: SideWork): SideWork {
  return { works: [...works].reverse(), gaps: [...gaps].reverse() }
}

export function kindsOf(plan: FabricRound): Set<number> {
  const used = new Set([...plan.corners.values()].map(({ kind }) => kind))
  for (const side of plan.sides.values()) for (const { kind } of side.works) used.add(kind)
  return used
}
