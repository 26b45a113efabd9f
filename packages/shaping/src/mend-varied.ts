// Candidates in the order they are worth showing, no two of them alike.

import type { LedgerRow, Verdict } from "@roundwright/flatness"
import { countRound, kindKey, type Motif } from "@roundwright/motif"
import type { Candidate } from "./mend-candidates.ts"
import type { Mend } from "./mend-result.ts"

export interface Bounded extends Candidate {
  readonly rank: number
  /** How much farther from its own pattern the piece is with the change; negative where nearer. */
  readonly pattern: number
  readonly severity: number
  /** Set where the bound is all there is: the change is none of stitches. */
  readonly outcome: Outcome
}

export interface Outcome {
  readonly verdict: Verdict
  readonly rows: readonly LedgerRow[]
}

export interface Ranked {
  readonly mend: Mend
  readonly rank: number
  readonly pattern: number
  readonly severity: number
}

/** Numbers for the same thing in the same round. */
const mostNumbers = 2

export function byRank(a: Bounded | Ranked, b: Bounded | Ranked): number {
  return a.severity - b.severity || a.rank - b.rank
}

/**
 * No piece twice. Another hook, a round more or fewer in its best place first: a second place is the same idea and comes
 * last, and a third is left out. Of the numbers for one count, chain or group of one round the best two come first.
 */
export function varied(ranked: readonly Ranked[]): Ranked[] {
  const seen = new Set<string>()
  const ideas = new Map<string, number>()
  const first: Ranked[] = []
  const later: Ranked[] = []
  for (const one of ranked) {
    const { kind, motif, change, round } = one.mend
    const key = motif ? countsKey(motif) : change
    if (seen.has(key)) continue
    seen.add(key)
    const ofRound = kind !== "hook" && kind !== "drop-round" && kind !== "add-round"
    const idea = ofRound ? `${kind} ${round}` : kind
    const alike = ideas.get(idea) ?? 0
    if (alike < (ofRound ? mostNumbers : 1)) first.push(one)
    else if (ofRound || alike === 1) later.push(one)
    ideas.set(idea, alike + 1)
  }
  return [...first, ...later]
}

function countsKey(motif: Motif): string {
  return JSON.stringify(
    motif.rounds.map((round) => {
      const { byKind, spacesBySize } = countRound(round)
      return [byKind.map(({ kind, count }) => [kindKey(kind), count]), spacesBySize]
    }),
  )
}
