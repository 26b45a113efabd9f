// The heading lines that give a written plan the hand it was planned for, so that it reads back with the same sizes.

import { type Gauge, kindName, type Terms } from "@roundwright/stitches"

/** A swatch is counted over this width, as the trade's labels have it. */
const swatchMm = 100
/** Decimals of a swatch's counts: a tenth of a stitch over 10 cm is what a ruler tells, one more keeps it the same. */
const countDigits = 2

/** Terms, then yarn, hook and swatches as far as they are known. */
export function gaugeHeadings(gauge: Gauge, terms: Terms = "US"): string[] {
  const { yarnWeight, hookMm, swatches, threadSize } = gauge.input
  const lines = [`Terms: ${terms}`]
  if (threadSize !== undefined) lines.push(`Yarn: size ${threadSize} thread`)
  else if (yarnWeight !== undefined) lines.push(`Yarn: weight ${yarnWeight}`)
  if (hookMm !== undefined) lines.push(`Hook: ${hookMm} mm`)
  for (const { kind, widthMm, heightMm } of swatches) {
    const across = widthMm === undefined ? [] : [`${counted(widthMm)} ${kindName(kind, terms)}`]
    const rows = heightMm === undefined ? [] : [`${counted(heightMm)} rows`]
    const named = across.length > 0 ? "" : ` of ${kindName(kind, terms)}`
    if (across.length + rows.length > 0)
      lines.push(`Gauge: ${[...across, ...rows].join(" x ")}${named} = 10 cm`)
  }
  return lines
}

function counted(sizeMm: number): string {
  return String(Number((swatchMm / sizeMm).toFixed(countDigits)))
}
