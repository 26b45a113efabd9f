// The published gauges of test/evidence/stitches-gauges.json as records.

import { readFileSync } from "node:fs"
import type { BasicStitch, StitchKind, YarnWeight } from "../src/index.ts"

export interface PublishedGauge {
  readonly id: string
  readonly stitch: string
  readonly core: boolean
  readonly yarnWeight?: YarnWeight
  readonly hookMm?: number
  readonly worked?: "rows" | "rounds"
  readonly widthMm?: number
  readonly heightMm?: number
  readonly secondHand?: boolean
}

export const gauges: readonly PublishedGauge[] = read("stitches-gauges").rows
export const core = gauges.filter((gauge) => gauge.core)
/** Rows of the three basic stitches that name yarn weight and hook. */
export const withYarnAndHook = core.filter(
  (gauge) =>
    ["sc", "hdc", "dc"].includes(gauge.stitch) &&
    gauge.yarnWeight !== undefined &&
    gauge.hookMm !== undefined,
)

export function read(name: string) {
  const address = new URL(`../../../test/evidence/${name}.json`, import.meta.url)
  return JSON.parse(readFileSync(address, "utf8"))
}

export function ratiosOf(stitch: string, worked?: "rows" | "rounds"): number[] {
  return core
    .filter((gauge) => gauge.stitch === stitch && (worked === undefined || gauge.worked === worked))
    .map((gauge) => gauge.heightMm! / gauge.widthMm!)
}

export const kindOf = (gauge: PublishedGauge): StitchKind => ({
  basic: gauge.stitch as BasicStitch,
})

/** Linear interpolation between order statistics, as in the evidence's own summaries. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b)
  const at = share * (sorted.length - 1)
  const below = Math.floor(at)
  const above = Math.min(below + 1, sorted.length - 1)
  return sorted[below]! + (at - below) * (sorted[above]! - sorted[below]!)
}

export const median = (values: readonly number[]) => quantile(values, 0.5)
