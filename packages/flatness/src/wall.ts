// A base and a wall. Several rounds that add nothing, on a base that grew, are the wall of a basket, a bag or a cap. Makers
// choose the counts of a base so that it lies flat in their own hand, whatever a usual hand would make of them: so how far the
// wall is drawn in is counted from the base as it is, not from a flat one.

import { tightHand } from "./odds.ts"
import type { LedgerRow } from "./result.ts"
import type { PieceSummary } from "./summary.ts"

/** Fewer even rounds are a rest, which the next round may take up; fewer rounds before them are no base. */
const fewestEven = 3
const fewestOfBase = 3
/** A round whose edge is no longer than this share of the one below it adds nothing. */
const evenShare = 1.01

export interface Wall {
  /** Its first row, as an index of the ledger. */
  readonly first: number
  /** Logarithm of how full the base is, as far as hands differ: what of its fullness may be the hand's. */
  readonly handLog: number
}

/** The wall a piece ends with; null where it ends otherwise. */
export function wallOf(rows: readonly LedgerRow[], { rounds }: PieceSummary): Wall | null {
  const ground = rows.flatMap((_, index) => (rounds[index]?.ground ? [index] : []))
  let even = 0
  while (even + 1 < ground.length) {
    const [below, own] = [ground.at(-2 - even)!, ground.at(-1 - even)!]
    if (rounds[own]!.edgeMm > evenShare * rounds[below]!.edgeMm) break
    even += 1
  }
  if (even < fewestEven || ground.length - even < fewestOfBase) return null
  const base = rows[ground.at(-1 - even)!]!
  const most = Math.log(tightHand.taller)
  const own = Math.log(Math.max(base.accumulatedFullness, 1 / tightHand.taller))
  return { first: ground.at(-even)!, handLog: Math.min(most, own) }
}
