// What a squaring can start from: the last round as it is, or with a plain round first that divides.

import type { Motif } from "@roundwright/motif"
import type { Gauge, StitchKind, Terms } from "@roundwright/stitches"
import { type Beginning, beginningsOf, type LaidFoot, layFeet } from "./base-edge.ts"
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
  terms: Terms,
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
  const found = [...starts, ...withPlainRound(motif, laid, gauge, corners, rules, allowed, terms)]
  // With nothing to offer, beginningsOf says what is missing.
  if (found.length === 0) beginningsOf(laid, corners)
  return found
}

/** For a round whose proposals fall short: with a plain round first, where rounds allow it and it was not tried. */
export function plainStarts(
  motif: Motif,
  gauge: Gauge,
  corners: number,
  rules: readonly RoundRules[],
  allowed: readonly StitchKind[],
  terms: Terms,
  tried: readonly Start[],
): Start[] {
  if (rules.length < 2 || tried.some(({ base }) => base !== motif)) return []
  return withPlainRound(motif, layFeet(motif, gauge), gauge, corners, rules, allowed, terms)
}

function withPlainRound(
  motif: Motif,
  laid: readonly LaidFoot[],
  gauge: Gauge,
  corners: number,
  rules: readonly RoundRules[],
  allowed: readonly StitchKind[],
  terms: Terms,
): Start[] {
  const left = rules.length > 1 ? rules.slice(1) : rules
  return allowed.flatMap((kind): Start[] => {
    const plain = plainRound(motif, laid, gauge, corners, kind, terms)
    if (!plain) return []
    return [
      {
        base: plain.motif,
        beginnings: beginningsOf(plain.laid, corners),
        rules: left,
        changes: rules.length > 1 ? [plain.words] : [plain.words, oneMore],
      },
    ]
  })
}
