// Strands by phase: the strongest order of a row names a band of orders; the part of the row in that band
// turns through a whole number of periods once round, and that number counts strands however unevenly they
// stand. Right where a gap at the join breaks the even spacing that a comb needs.

import { complexSpectrum, inverseSpectrum } from "./fourier.ts"

/** The band about the strongest order. */
const [bandFrom, bandTo] = [0.62, 1.5]
const leastStrands = 3

export interface PhaseVote {
  readonly count: number
  /** Share of the rows' energy that voted for it. */
  readonly share: number
}

/** @param rows samples once round, each of a power-of-two length; @param most no order above this is looked at */
export function countByPhase(rows: readonly Float64Array[], most: number): PhaseVote | null {
  if (rows.length === 0) return null
  const size = rows[0]!.length
  const spectra = rows.map(complexSpectrum)
  const power = new Float64Array(size / 2)
  for (const spectrum of spectra)
    for (let k = 0; k < power.length; k++)
      power[k]! += spectrum[2 * k]! ** 2 + spectrum[2 * k + 1]! ** 2
  let strongest = 0
  for (let k = leastStrands; k <= Math.min(most, power.length - 2); k++) {
    const here = power[k]! + 0.5 * (power[k - 1]! + power[k + 1]!)
    const there = power[strongest]! + 0.5 * ((power[strongest - 1] ?? 0) + power[strongest + 1]!)
    if (strongest === 0 || here > there) strongest = k
  }
  if (strongest === 0) return null
  const votes = new Map<number, number>()
  let all = 0
  for (const spectrum of spectra) {
    const band = new Float64Array(2 * size)
    let energy = 0
    for (
      let k = Math.max(1, Math.floor(bandFrom * strongest));
      k <= Math.min(size / 2 - 1, Math.ceil(bandTo * strongest));
      k++
    ) {
      band[2 * k] = spectrum[2 * k]!
      band[2 * k + 1] = spectrum[2 * k + 1]!
      energy += spectrum[2 * k]! ** 2 + spectrum[2 * k + 1]! ** 2
    }
    if (!(energy > 0)) continue
    const turns = turnsOnceRound(inverseSpectrum(band))
    votes.set(turns, (votes.get(turns) ?? 0) + energy)
    all += energy
  }
  let [count, share] = [0, 0]
  for (const [turns, energy] of votes)
    if (energy / all > share) [count, share] = [turns, energy / all]
  return count >= leastStrands ? { count, share } : null
}

/** Turns of a complex signal about 0 on its way once round, a whole number. */
function turnsOnceRound(signal: Float64Array): number {
  const size = signal.length / 2
  let total = 0
  for (let i = 0; i < size; i++) {
    const j = (i + 1) % size
    const [a, b] = [signal[2 * i]!, signal[2 * i + 1]!]
    const [c, d] = [signal[2 * j]!, signal[2 * j + 1]!]
    total += Math.atan2(a * d - b * c, a * c + b * d)
  }
  return Math.round(total / (2 * Math.PI))
}
