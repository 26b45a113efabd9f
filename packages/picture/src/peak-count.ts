// Strands counted one by one: peaks of thread along a row, smoothed to a fifth of their spacing. A gap at
// the join of a round, half a place wider than the rest, makes a comb see one repeat too many; peaks are
// not moved by it. Their places are what the unrolled strip ticks.

import { median } from "./even.ts"
import { complexSpectrum, inverseSpectrum } from "./fourier.ts"

export interface PeakVote {
  readonly count: number
  /** Share of the rows in which so many peaks were found. */
  readonly share: number
}

/** Smoothing against the spacing of the strands. */
const smoothing = 0.16
/** A peak rises from its valleys by this share of the row's spread (from low to high, without outliers). */
const leastRise = 0.22

/** @param about how many are expected: sets the smoothing */
export function countByPeaks(rows: readonly Float64Array[], about: number): PeakVote | null {
  if (rows.length === 0 || about < 3) return null
  const votes = new Map<number, number>()
  const mean = new Float64Array(rows[0]!.length)
  for (const row of rows) for (let i = 0; i < row.length; i++) mean[i]! += row[i]! / rows.length
  for (const row of [...rows, mean]) {
    const count = placesOf(peaksOf(row, about), row.length)
    // The mean of all rows is quieter than each: it counts as a third of them.
    const weight = row === mean ? rows.length / 3 : 1
    votes.set(count, (votes.get(count) ?? 0) + weight)
  }
  const all = (4 / 3) * rows.length
  const [count, weight] = [...votes].reduce((a, b) => (b[1] > a[1] ? b : a))
  return { count, share: weight / all }
}

/** A gap from this many usual spacings up holds a strand that merged with its neighbour; a narrower one is a join. */
const missedGap = 1.8
/** Peaks nearer than this share of the spacing are two halves of one strand. */
const splitGap = 0.42

/** Places that the peaks stand for: merged strands put back, split ones taken together. */
function placesOf(peaks: readonly number[], size: number): number {
  if (peaks.length < 3) return peaks.length
  const gaps = peaks.map((at, i) => (peaks[(i + 1) % peaks.length]! - at + size) % size || size)
  const usual = median(gaps)
  let places = 0
  for (const gap of gaps) {
    if (gap < splitGap * usual) continue
    places += gap >= missedGap * usual ? Math.floor(gap / usual + (2 - missedGap)) : 1
  }
  return places
}

/** Samples at which the peaks of a row lie. */
export function peaksOf(row: Float64Array, about: number): number[] {
  const size = row.length
  const smooth = smoothed(row, (smoothing * size) / about)
  const sorted = Float64Array.from(smooth).sort()
  const spread = sorted[Math.floor(0.95 * size)]! - sorted[Math.floor(0.05 * size)]!
  if (!(spread > 0)) return []
  const lowest = smooth.indexOf(sorted[0]!)
  const peaks: number[] = []
  // From the lowest place once round: a peak is kept when it rises and falls enough on both sides.
  let [top, topAt, valley, rising] = [Number.NEGATIVE_INFINITY, -1, sorted[0]!, false]
  for (let k = 0; k <= size; k++) {
    const at = (lowest + k) % size
    const value = smooth[at]!
    if (value > top) [top, topAt] = [value, at]
    if (!rising && value - valley >= leastRise * spread) {
      rising = true
      ;[top, topAt] = [value, at]
    }
    if (!rising) {
      valley = Math.min(valley, value)
      top = Number.NEGATIVE_INFINITY
    } else if (top - value >= leastRise * spread) {
      peaks.push(topAt)
      rising = false
      valley = value
      top = Number.NEGATIVE_INFINITY
    }
  }
  return peaks.sort((a, b) => a - b)
}

/** Bell-shaped smoothing once round, by its transform. */
function smoothed(row: Float64Array, sigma: number): Float64Array {
  const size = row.length
  const spectrum = complexSpectrum(row)
  for (let k = 0; k < size; k++) {
    const order = Math.min(k, size - k)
    const factor = Math.exp(-2 * (Math.PI * sigma * (order / size)) ** 2)
    spectrum[2 * k]! *= factor
    spectrum[2 * k + 1]! *= factor
  }
  const back = inverseSpectrum(spectrum)
  return Float64Array.from({ length: size }, (_, i) => back[2 * i]!)
}
