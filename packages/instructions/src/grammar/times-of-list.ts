// "1 sc, inc x 6": a figure behind a stitch that may be said of the whole list.

import type { Step } from "../base/tree.ts"
import type { Chart, Clause } from "./chart.ts"
import { isUnplaced } from "./clauses.ts"
import type { Cursor } from "./cursor.ts"
import type { CountedStitch } from "./stitch-names.ts"

/** "x 6" is said of the stitch before it sooner than of the list. */
const timesOfListCost = 0.3

/** "1 sc, inc x 6": the figure may be said of the whole list, and is then read on its own. */
export function timesOfList(
  chart: Chart,
  cursor: Cursor,
  { count, stitch, counted }: CountedStitch,
  start: number,
): Clause | null {
  const figure = chart.lexemes[cursor.at - 1]!
  if (!counted || figure.type !== "number" || chart.lexemes[cursor.at - 2]?.text !== "x")
    return null
  if (count < 2 || chart.lexemes[cursor.at - 3]?.type === "mark") return null
  const end = cursor.at - 2
  const step: Step = {
    start,
    end: chart.lexemes[end - 1]!.end,
    do: "work",
    stitch,
    count: 1,
    place: null,
  }
  return {
    end,
    cost: timesOfListCost,
    steps: (before) => (isUnplaced(before[before.length - 1]) ? [...before, step] : null),
  }
}
