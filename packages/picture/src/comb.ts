// How strongly a row repeats n times round: the power on the orders n, 2n ... 8n, each less the power
// beside it, against all power from order 3 up. Orders 1 and 2 tell of a wrong centre and of a view that is
// not straight, and are left out.

/** Teeth looked at. */
const teeth = 8
/** Lowest order that counts as pattern. */
const lowestOrder = 3
/** A count needs this many pixels a repeat at its radius to be seen. */
export const leastPxPerRepeat = 4.5
/** No ring is read for more repeats than this. */
export const mostRepeats = 170
export const leastRepeats = 3

/** Power of a row that is as good as blank, in units of the evened picture's variance: a plain edge's pixels must not count. */
const leastPower = 0.004

/** Combs of all counts from 0; those below 3 or above `most` are 0. */
export function combs(power: ArrayLike<number>, most: number): Float64Array {
  const orders = power.length
  const tooth = new Float64Array(orders)
  let total = leastPower
  for (let k = lowestOrder; k < orders; k++) {
    total += power[k]!
    const beside =
      ((power[k - 1] ?? 0) + (power[k + 1] ?? 0) + (power[k - 2] ?? 0) + (power[k + 2] ?? 0)) / 4
    tooth[k] = power[k]! - beside
  }
  const out = new Float64Array(mostRepeats + 1)
  for (let n = leastRepeats; n <= Math.min(most, mostRepeats); n++) {
    let sum = 0
    for (let m = 1; m <= teeth && m * n < orders; m++) sum += tooth[m * n]!
    out[n] = sum / total
  }
  return out
}

/** Most repeats that can be seen at a radius in pixels. */
export function mostAt(radiusPx: number): number {
  return Math.floor(Math.min(mostRepeats, (2 * Math.PI * radiusPx) / leastPxPerRepeat))
}

export interface CountFound {
  readonly count: number
  readonly comb: number
  /** Best of the counts that are neither multiples nor parts of it. */
  readonly rival: number
  readonly rivalComb: number
  /** Combs of half and of twice the count: half holds all its teeth and so at least as much. */
  readonly halfComb: number
  readonly twiceComb: number
}

/** A multiple is taken over the best when its comb holds this share of it. */
const kinShare = 0.8

/** The largest count akin to the best whose comb holds its share: half of it holds as much but is smaller, twice it less. */
export function countOf(comb: Float64Array): CountFound | null {
  let best = 0
  for (let n = leastRepeats; n < comb.length; n++) if (comb[n]! > (comb[best] ?? 0)) best = n
  if (best === 0 || !(comb[best]! > 0)) return null
  let count = best
  for (let n = comb.length - 1; n > best; n--)
    if (akin(n, best) && comb[n]! >= kinShare * comb[best]!) {
      count = n
      break
    }
  let rival = 0
  for (let n = leastRepeats; n < comb.length; n++)
    if (!akin(n, count) && comb[n]! > (comb[rival] ?? 0)) rival = n
  const at = (n: number) => (Number.isInteger(n) && n >= leastRepeats ? (comb[n] ?? 0) : 0)
  return {
    count,
    comb: comb[count]!,
    rival,
    rivalComb: Math.max(0, comb[rival] ?? 0),
    halfComb: at(count / 2),
    twiceComb: at(2 * count),
  }
}

/** One is a whole multiple of the other. */
export function akin(a: number, b: number): boolean {
  return a > 0 && b > 0 && (a % b === 0 || b % a === 0)
}
