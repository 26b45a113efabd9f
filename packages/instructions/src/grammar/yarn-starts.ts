// "Use white yarn in any of the ch-4 loops", "with B in any corner": new yarn and the place it begins in, with no
// word for joining it.

import type { Chart, Clause } from "./chart.ts"
import { clause, hasWork } from "./clauses.ts"
import { isBoundary } from "./cursor.ts"
import { readPlace } from "./places.ts"

export function yarnStarts(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const start = cursor.start()
  const before = chart.lexemes[at - 1]
  if (before && !/^[.:;-]$/.test(before.text)) return []
  cursor.at += 1
  let named = false
  while (
    cursor.take("yarn", "colour") ||
    cursor.accept("new", "next", "main") ||
    (named && cursor.isNumber() && cursor.is("in", 1) && cursor.takeCount(0) !== null)
  )
    named = true
  if (!named || !cursor.is("in")) return []
  const place = readPlace(cursor)
  if (place?.at !== "next" || place.order !== "any" || !isBoundary(cursor.text())) return []
  const span = cursor.since(start)
  return [
    clause(cursor, (steps) =>
      hasWork(steps) ? null : [...steps, { ...span, do: "attach", place }],
    ),
  ]
}
