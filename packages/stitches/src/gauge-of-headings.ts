// What several headings tell together, as the input of a gauge.

import type { GaugeInput } from "./gauge.ts"
import type { Found, HeadingReading } from "./read-heading.ts"

/**
 * The input of a gauge from headings in the order of the text; of several that tell one thing the first. The hook of a gauge
 * line is the one in use where no other is named.
 * @param read each heading's reading, and where its value begins in the text, for the places of sizes
 */
export function gaugeInputOf(
  read: readonly { readonly reading: HeadingReading; readonly start: number }[],
): GaugeInput {
  const first = <Value>(of: (reading: HeadingReading) => Found<Value> | undefined) =>
    read.map(({ reading }) => of(reading)?.value).find((value) => value !== undefined)
  const swatches = read.flatMap(({ reading }) => reading.swatches.map(({ value }) => value))
  const pieces = read.flatMap(({ reading, start: by }) =>
    reading.pieces.map((piece) => ({
      ...piece,
      ...(piece.place && { place: { start: by + piece.place.start, end: by + piece.place.end } }),
    })),
  )
  const yarnWeight = first((reading) => reading.yarnWeight)
  const threadSize = first((reading) => reading.threadSize)
  const strands = first((reading) => reading.strands)
  const gaugeHookMm = first((reading) => reading.gaugeHookMm)
  const hookMm = first((reading) => reading.hookMm) ?? gaugeHookMm
  return {
    swatches,
    ...(yarnWeight === undefined ? {} : { yarnWeight }),
    ...(strands === undefined ? {} : { strands }),
    ...(hookMm === undefined ? {} : { hookMm }),
    ...(gaugeHookMm === undefined || gaugeHookMm === hookMm ? {} : { gaugeHookMm }),
    ...(threadSize === undefined ? {} : { threadSize }),
    ...(pieces.length === 0 ? {} : { pieces }),
  }
}
