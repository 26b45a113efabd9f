// What a squaring can start from: the last round as it is, or with a plain round first that divides.

import type { Motif } from "@roundwright/motif"
import type { Gauge, StitchKind } from "@roundwright/stitches"
import { type Beginning, beginningsOf, layFeet } from "./base-edge.ts"
import type { RoundRules } from "./candidates.ts"
import { plainRound } from "./plain-round.ts"

/** A motif to work on, with the rounds left and the ways to begin. */
export interface Start {
  readonly base: Motif
  readonly beginnings: readonly Beginning[]
  readonly rules: readonly RoundRules[]
  /** What was worked before the squaring, in words. */
  readonly changes: readonly string[]
}

const oneMore = "That is one round more than was asked for."

/** Counts below this many times the corners leave too little along a side to even out unseen. */
const evenedOutUnseen = 3

/**
 * The last round as it is, and where its count does not divide and rounds allow it (or nothing else is
 * possible), with a plain round first that lies flat and divides.
 */
export function startsFor(
  motif: Motif,
  gauge: Gauge,
  corners: number,
  rules: readonly RoundRules[],
  allowed: readonly StitchKind[],
): Start[] {
  const laid = layFeet(motif, gauge)
  const places = laid.length
  const uneven = places % corners !== 0
  const starts: Start[] = []
  if (places >= corners) {
    const beginnings = beginningsOf(laid, corners)
    if (beginnings.length > 0) starts.push({ base: motif, beginnings, rules, changes: [] })
  }
  const scarce = places < evenedOutUnseen * corners
  if (starts.length > 0 && !(uneven && rules.length > (scarce ? 1 : 2))) return starts
  const left = rules.length > 1 ? rules.slice(1) : rules
  for (const kind of allowed) {
    const plain = plainRound(motif, laid, gauge, corners, kind)
    const beginnings = beginningsOf(plain.laid, corners)
    starts.push({
      base: plain.motif,
      beginnings,
      rules: left,
      changes: rules.length > 1 ? [plain.words] : [plain.words, oneMore],
    })
  }
  return starts
}
