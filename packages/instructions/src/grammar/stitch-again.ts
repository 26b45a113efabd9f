// A figure without its stitch: "1 sc in the first, 2 in the next" is two of the stitch named before.

import type { Step, StitchName } from "../base/tree.ts"
import type { Chart, Clause } from "./chart.ts"
import { clause } from "./clauses.ts"
import { placed } from "./make-places.ts"
import { readPlace } from "./places.ts"

/** A figure alone is rather something else where another reading makes sense. */
const unnamedCost = 0.3
/** Most of one stitch told so. */
const most = 12

/** "2 in the next", "then 3 in the corner": the stitch is the last one named. */
export function stitchAgain(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const start = cursor.start()
  const count = cursor.takeCount(1)
  if (count === null || count > most || !cursor.is("in")) return []
  const place = readPlace(cursor)
  if (!place || (place.at !== "next" && place.at !== "each")) return []
  return [
    clause(
      cursor,
      (before) => {
        const stitch = lastStitch(before)
        return stitch ? [...before, ...placed(cursor, stitch, count, place, start)] : null
      },
      unnamedCost,
    ),
  ]
}

function lastStitch(steps: readonly Step[]): StitchName | null {
  const last = steps.findLast((step) => step.do !== "skip" && step.do !== "mode")
  if (last?.do !== "work" || last.place === null || last.stitch.tog) return null
  return last.stitch
}
