// Whose count slipped: of two counts of one round the one that breaks the run of its own piece. A count is in order where it
// is a whole multiple of what the piece repeats by, and where it goes on growing as the rounds around it grow.

import { commonDivisor } from "@roundwright/motif"

export interface Slip {
  readonly whose: "a" | "b"
  /** What the others repeat by. */
  readonly repeat: number
  /** Repeats in the count that slipped, and in the other: 15 and 16. */
  readonly has: number | null
  readonly meant: number | null
}

/** Fewer repeats than these are no pattern of the piece. */
const leastRepeat = 3

/**
 * @param a @param b counts of the same rounds, null where one is not known
 * @param at index of the first round that differs
 */
export function slipOf(
  a: readonly (number | null)[],
  b: readonly (number | null)[],
  at: number,
): Slip | null {
  const [own, other] = [a[at], b[at]]
  if (own == null || other == null) return null
  const shared = a
    .slice(0, at)
    .flatMap((count, i) => (count != null && count === b[i] ? [count] : []))
  const repeatA = repeatOf([...shared, own, ...later(a, at)])
  const repeatB = repeatOf([...shared, other, ...later(b, at)])
  const bySteps = stepsOf(a, b, at)
  if (shared.length > 0 && repeatA !== repeatB) {
    const best = Math.max(repeatA, repeatB)
    if (best >= leastRepeat) {
      const whose = repeatA > repeatB ? "b" : "a"
      return { whose, repeat: best, ...repeats(whose === "b" ? [other, own] : [own, other], best) }
    }
  }
  if (bySteps) return { whose: bySteps, repeat: 1, has: null, meant: null }
  return null
}

function repeats([slipped, good]: readonly [number, number], repeat: number) {
  const whole = good / repeat
  const has = slipped / whole
  return Number.isInteger(has) && whole > 1 ? { has, meant: repeat } : { has: slipped, meant: good }
}

function later(counts: readonly (number | null)[], at: number): number[] {
  return counts.slice(at + 1).flatMap((count) => (count == null ? [] : [count]))
}

function repeatOf(counts: readonly number[]): number {
  return counts.reduce((all, count) => commonDivisor(all, count), 0)
}

/** The one whose counts grow unevenly where the other's grow alike. */
function stepsOf(
  a: readonly (number | null)[],
  b: readonly (number | null)[],
  at: number,
): "a" | "b" | null {
  const [unevenA, unevenB] = [unevenness(a, at), unevenness(b, at)]
  if (unevenA === null || unevenB === null || unevenA === unevenB) return null
  return unevenA > unevenB ? "a" : "b"
}

function unevenness(counts: readonly (number | null)[], at: number): number | null {
  const [before, two, own] = [counts[at - 1], counts[at - 2], counts[at]]
  if (own == null || before == null || two == null) return null
  return Math.abs(own - before - (before - two))
}
