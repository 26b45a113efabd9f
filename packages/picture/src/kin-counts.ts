// Counts of one motif have a measure in common: a ring one off a multiple of what the others share is looked at again.
// A join that leaves a wide gap makes 24 posts look like 25, and in a motif of 8, 16 and 72 they are 24.

import type { Counted } from "./count-ring.ts"

/** The others agree on a measure when they are as many as this, and this share of them are multiples of it. */
const [fewestOthers, agreeing] = [2, 0.75]
/** Smaller measures are shared by chance, larger ones by none. */
const [leastMeasure, mostMeasure] = [5, 24]
/** Rings this sure say what the measure is. */
const sureEnough = 0.6
/** A ring is its own judge when so many of its rows show its count peak by peak. */
const seenPlainly = 0.85
/** A count set right by its kin is no surer than this. */
const mostSure = 0.8

export function withKin<T extends Counted>(rings: readonly T[]): T[] {
  return oneOff(rings).map((ring) => withHalf(ring, rings))
}

/** 24 strands that could be 12 pairs are told as 12 repeats of 24 strands where the other rings have 12. */
function withHalf<T extends Counted>(ring: T, rings: readonly T[]): T {
  const { repeats, strands, nextBest, halfOrTwice } = ring
  if (!halfOrTwice || repeats === null || repeats !== strands || nextBest !== repeats / 2)
    return ring
  const sureOf = (count: number) =>
    rings.reduce((sum, one) => sum + (one !== ring && one.repeats === count ? one.sureness : 0), 0)
  return sureOf(nextBest) > sureOf(repeats)
    ? { ...ring, repeats: nextBest, strands: repeats, nextBest: repeats }
    : ring
}

function oneOff<T extends Counted>(rings: readonly T[]): T[] {
  return rings.map((ring, i) => {
    const { repeats, strands, signs } = ring
    if (repeats === null || repeats !== strands || signs === null || signs.peaks >= seenPlainly)
      return ring
    const others = rings.filter((_, j) => j !== i)
    const measure = measureOf(others)
    if (measure === 0 || repeats % measure === 0) return ring
    const kin = [repeats - 1, repeats + 1].filter((n) => n >= measure && n % measure === 0)
    if (kin.length !== 1) return ring
    const sureness = Math.min(mostSure, ring.sureness)
    return { ...ring, repeats: kin[0]!, strands: kin[0]!, nextBest: repeats, sureness }
  })
}

/** The largest number that divides the strands of most sure rings; 0 where there is none. */
function measureOf(rings: readonly Counted[]): number {
  const counts = rings.flatMap(({ strands, sureness }) =>
    strands !== null && sureness >= sureEnough ? [strands] : [],
  )
  if (counts.length < fewestOthers) return 0
  for (let m = mostMeasure; m >= leastMeasure; m--) {
    const multiples = counts.filter((n) => n % m === 0).length
    if (multiples >= fewestOthers && multiples >= agreeing * counts.length) return m
  }
  return 0
}
