// Which of a statement's lengths runs along the row and which up, in mm.

import type { Length, Measure } from "./cut-statements.ts"

/** The same length in inches and cm differs by up to this share (4 in is 10.16 cm, 1 in 2.5 cm). */
const sameLength = 0.04

/** Of lengths printed in both units the metric ones stay. */
export function dropSecondUnit(lengths: readonly Measure[]): readonly Measure[] {
  const metric = lengths.filter((one) => one.token.unit === "metric")
  const inch = lengths.filter((one) => one.token.unit === "inch")
  if (metric.length === 0 || metric.length !== inch.length) return lengths
  const agree = metric.every((one, index) => {
    const ratio = inMm(one.token) / inMm(inch[index]!.token)
    return Math.abs(ratio - 1) <= sameLength
  })
  if (!agree) return lengths
  return metric.map((one, index) => ({ ...one, across: one.across ?? inch[index]!.across }))
}

function inMm(length: Length): number {
  return length.value * length.mmEach
}

/** Which length runs along the row and which up. */
export function layOut(lengths: readonly Measure[]): { alongMm: number; upMm: number } {
  const up = lengths.find((one) => one.across === false)
  const along = lengths.find((one) => one.across === true) ?? lengths.find((one) => one !== up)
  const other = up ?? lengths.find((one) => one !== along)
  const alongMm = inMm((along ?? up)!.token)
  return { alongMm, upMm: other === undefined ? alongMm : inMm(other.token) }
}
