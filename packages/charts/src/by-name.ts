// Charts of a checked pattern, by the name a notebook or a command asks for.

import type { CheckResult } from "@roundwright/assessment"
import type { LedgerRow } from "@roundwright/flatness"
import { RoundwrightError } from "@roundwright/numerics"
import { curvatureChart } from "./curvature.ts"
import { fullnessChart } from "./fullness.ts"
import { growthChart } from "./growth.ts"
import { reachChart } from "./reach.ts"
import type { ChartOptions, ChartSpec } from "./spec.ts"

type Draw = (rows: readonly LedgerRow[], options: ChartOptions) => ChartSpec

const charts: ReadonlyMap<string, Draw> = new Map<string, Draw>([
  ["growth", growthChart],
  ["fullness", fullnessChart],
  ["curvature", curvatureChart],
  ["reach", reachChart],
])

/** Every name `chartByName` knows. */
export const chartNames: readonly string[] = [...charts.keys()]

/**
 * The chart of that name for a checked pattern.
 * @throws RoundwrightError `unknown-chart`, `nothing-to-draw` when no round could be read
 */
export function chartByName(
  name: string,
  result: Pick<CheckResult, "ledger" | "gauge">,
  options: Omit<ChartOptions, "lengthUnit"> = {},
): ChartSpec {
  const draw = charts.get(name)
  if (!draw)
    throw new RoundwrightError("unknown-chart", `There is no chart called "${name}".`, {
      hint: `Charts are ${chartNames.join(", ")}.`,
    })
  return draw(result.ledger, {
    ...options,
    lengthUnit: result.gauge.absolute ? "mm" : "widths of one sc",
  })
}
