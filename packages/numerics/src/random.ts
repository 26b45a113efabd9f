// Seeded random numbers: xoshiro128** with its state filled by splitmix32. The same seed gives the
// same numbers everywhere. Not for secrets.
// Source: D. Blackman, S. Vigna, "Scrambled linear pseudorandom number generators",
// ACM Trans. Math. Softw. 47 (2021), https://prng.di.unimi.it (public domain).

import { requireFinite } from "./error.ts"

export interface RandomSource {
  /** A whole number from 0 to 2^32 - 1. */
  integer(): number
  /** Uniform in [0, 1). */
  uniform(): number
  /** Normal with mean 0 and standard deviation 1 (polar method of Marsaglia). */
  normal(): number
}

/** @param seed any finite number; only its low 32 bits count. @throws RoundwrightError `not-finite` */
export function seededRandom(seed: number): RandomSource {
  let fill = requireFinite(seed, "The seed") | 0
  const next = (): number => {
    fill = (fill + 0x9e3779b9) | 0
    let z = fill ^ (fill >>> 16)
    z = Math.imul(z, 0x21f0aaad)
    z ^= z >>> 15
    z = Math.imul(z, 0x735a2d97)
    return (z ^ (z >>> 15)) >>> 0
  }
  return randomFromState(next(), next(), next(), next())
}

/** The bare generator; the state must not be all zero. For comparison with published sequences. */
export function randomFromState(a: number, b: number, c: number, d: number): RandomSource {
  let [s0, s1, s2, s3] = [a | 0, b | 0, c | 0, d | 0]
  if ((s0 | s1 | s2 | s3) === 0) s0 = 1
  let spare: number | undefined
  const integer = (): number => {
    const result = Math.imul(rotate(Math.imul(s1, 5), 7), 9) >>> 0
    const shifted = s1 << 9
    s2 ^= s0
    s3 ^= s1
    s1 ^= s2
    s0 ^= s3
    s2 ^= shifted
    s3 = rotate(s3, 11)
    return result
  }
  const uniform = (): number => integer() / 4294967296
  const normal = (): number => {
    if (spare !== undefined) {
      const kept = spare
      spare = undefined
      return kept
    }
    for (;;) {
      const u = 2 * uniform() - 1
      const v = 2 * uniform() - 1
      const s = u * u + v * v
      if (s === 0 || s >= 1) continue
      const scale = Math.sqrt((-2 * Math.log(s)) / s)
      spare = v * scale
      return u * scale
    }
  }
  return { integer, uniform, normal }
}

function rotate(value: number, by: number): number {
  return (value << by) | (value >>> (32 - by))
}
