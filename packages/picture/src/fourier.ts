// Discrete Fourier transforms of real rows and of small square fields, by fft.js.

import FFT from "fft.js"

const plans = new Map<number, FFT>()

function planOf(size: number): FFT {
  const known = plans.get(size)
  if (known) return known
  const made = new FFT(size)
  plans.set(size, made)
  return made
}

/** Squared amplitudes |c_k|^2 of a row with a power-of-two length, k from 0 to half of it; c_k = sum / length. */
export function powerSpectrum(row: ArrayLike<number>): Float64Array {
  const size = row.length
  const spectrum = complexSpectrum(row)
  const power = new Float64Array(size / 2 + 1)
  for (let k = 0; k <= size / 2; k++)
    power[k] = (spectrum[2 * k]! ** 2 + spectrum[2 * k + 1]! ** 2) / size ** 2
  return power
}

/** Mean of the power spectra of rows of one length. */
export function pooledPower(rows: readonly ArrayLike<number>[]): Float64Array {
  const pooled = new Float64Array(rows[0]!.length / 2 + 1)
  for (const row of rows) {
    const power = powerSpectrum(row)
    for (let k = 0; k < pooled.length; k++) pooled[k]! += power[k]! / rows.length
  }
  return pooled
}

/** Real and imaginary parts by turns, orders 0 to length - 1, not divided. */
export function complexSpectrum(row: ArrayLike<number>): Float64Array {
  const plan = planOf(row.length)
  const out = new Float64Array(2 * row.length)
  plan.realTransform(out, row)
  plan.completeSpectrum(out)
  return out
}

/** The inverse, divided by the length; real and imaginary parts by turns. */
export function inverseSpectrum(spectrum: Float64Array): Float64Array {
  const out = new Float64Array(spectrum.length)
  planOf(spectrum.length / 2).inverseTransform(out, spectrum)
  return out
}

/** The row without its orders below `lowest`, and so without its mean. */
export function withoutLowOrders(row: Float64Array, lowest: number): Float64Array {
  const size = row.length
  const spectrum = complexSpectrum(row)
  for (let k = 0; k < size; k++)
    if (Math.min(k, size - k) < lowest) {
      spectrum[2 * k] = 0
      spectrum[2 * k + 1] = 0
    }
  const back = inverseSpectrum(spectrum)
  return Float64Array.from({ length: size }, (_, i) => back[2 * i]!)
}

/** Two-dimensional transform of a complex square field (real and imaginary by turns), in place. */
export function transformField(field: Float64Array, size: number, inverse: boolean): void {
  const plan = planOf(size)
  const [row, out] = [new Float64Array(2 * size), new Float64Array(2 * size)]
  const run = () => (inverse ? plan.inverseTransform(out, row) : plan.transform(out, row))
  for (let y = 0; y < size; y++) {
    row.set(field.subarray(2 * y * size, 2 * (y + 1) * size))
    run()
    field.set(out, 2 * y * size)
  }
  for (let x = 0; x < size; x++) {
    for (let y = 0; y < size; y++) {
      row[2 * y] = field[2 * (y * size + x)]!
      row[2 * y + 1] = field[2 * (y * size + x) + 1]!
    }
    run()
    for (let y = 0; y < size; y++) {
      field[2 * (y * size + x)] = out[2 * y]!
      field[2 * (y * size + x) + 1] = out[2 * y + 1]!
    }
  }
}
