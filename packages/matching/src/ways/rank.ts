// Which way first: the one that meets the size, lies flat, keeps its sides straight, and undoes little.

import { severityOf } from "@roundwright/flatness"
import type { WayKind } from "./result.ts"
import type { Sized } from "./sizes.ts"

export interface Ranked {
  readonly kind: WayKind
  readonly off: number
  readonly sized: Sized
  readonly work: number
}

/** In points; one per cent off the size is one. */
const costs = {
  /** A round made again. */
  work: 0.8,
  /** Needs pins, or does not lie flat at all. */
  severity: [0, 2, 15],
  /** Each per cent that a side bows beyond the two that pass for straight. */
  bow: 1,
} as const

export function byRank(a: Ranked, b: Ranked): number {
  return costOf(a) - costOf(b)
}

function costOf({ off, sized, work }: Ranked): number {
  const bow = sized.sideMm ? Math.abs(sized.bowMm ?? 0) / sized.sideMm : 0
  return (
    100 * Math.abs(off) +
    costs.work * work +
    costs.severity[severityOf(sized.verdict)]! +
    costs.bow * Math.max(0, 100 * bow - 2)
  )
}

/** Of one kind a reader wants the best few. */
const mostOf: Readonly<Record<WayKind, number>> = {
  leave: 1,
  blocked: 1,
  "last-round": 3,
  "round-added": 3,
  "round-left-out": 2,
  start: 1,
  hook: 2,
}

/** A filter over ways in their order. */
export function isOneOfFew(): (way: Ranked) => boolean {
  const seen = new Map<WayKind, number>()
  return ({ kind }) => {
    const many = (seen.get(kind) ?? 0) + 1
    seen.set(kind, many)
    return many <= mostOf[kind]
  }
}

/** A way must take off at least so much of what is missing, and come within so much of the size. */
const leastGain = 0.4
const furthestOff = 0.08

/** @param missing the share that is missing now */
export function isWorthNaming({ kind, off }: Ranked, missing: number): boolean {
  if (kind === "leave" || kind === "blocked") return true
  return Math.abs(off) <= furthestTold(missing)
}

/** How far off a way may end, as a share. */
export function furthestTold(missing: number): number {
  return Math.min(furthestOff, Math.max(0.01, (1 - leastGain) * Math.abs(missing)))
}
