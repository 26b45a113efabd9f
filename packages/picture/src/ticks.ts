// Where the counted strands of a ring stand round the piece, so that the eye can check every one.

import { complexSpectrum } from "./fourier.ts"
import type { PictureMeasurement } from "./measure.ts"
import { peaksOf } from "./peak-count.ts"
import type { RingFound } from "./rings.ts"

/** Directions of the counted strands of a ring, radians from x towards y, in order round the piece. */
export function ticksOf(
  measurement: PictureMeasurement,
  ring: Pick<RingFound, "fromRow" | "toRow">,
  count: number,
): number[] {
  const rows = measurement.rows.slice(ring.fromRow, ring.toRow + 1)
  if (rows.length === 0 || count < 1) return []
  const mean = new Float64Array(rows[0]!.byAngle.length)
  for (const row of rows) for (let i = 0; i < mean.length; i++) mean[i]! += row.byAngle[i]!
  const peaks = peaksOf(mean, count)
  const size = mean.length
  if (peaks.length === count) return peaks.map((at) => (2 * Math.PI * at) / size)
  // As many as counted, evenly, in step with the ring's own order of that number.
  const spectrum = complexSpectrum(mean)
  const order = Math.min(count, size / 2 - 1)
  const phase = Math.atan2(spectrum[2 * order + 1]!, spectrum[2 * order]!)
  const turn = (2 * Math.PI) / count
  const first = -phase / count
  const start = first - turn * Math.floor(first / turn)
  return Array.from({ length: count }, (_, i) => start + i * turn)
}
