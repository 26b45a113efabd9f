// "An eight stitch ring", "a ring of 6 chains", "a 5 ch ring": the ring told by how many chains it has.

import type { Chart, Clause } from "./chart.ts"
import { clause } from "./clauses.ts"
import { isBoundary } from "./cursor.ts"

export function ringOfChains(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const start = cursor.start()
  const closed = cursor.attempt(() =>
    cursor.take("forms") && cursor.take("ring") && isBoundary(cursor.text()) ? true : null,
  )
  if (closed) {
    // "Ch 6, form a ring."
    const span = cursor.since(start)
    return [
      clause(cursor, (before) =>
        before.length === 1 && before[0]?.do === "chain"
          ? [...before, { ...span, do: "join", place: null, ring: true }]
          : null,
      ),
    ]
  }
  while (cursor.take("work", "start", "forms", "with") || cursor.accept("by", "begin"));
  const ringFirst = cursor.take("ring")
  if (ringFirst && !cursor.accept("of", "with")) return []
  const chains = cursor.takeCount(3)
  if (chains === null || chains > 40) return []
  cursor.accept("-")
  // "six chain ring" may be one word for the ring.
  const named = !ringFirst && /^ch/.test(cursor.text()) && cursor.take("ring")
  if (!named) {
    if (!cursor.take("chain", "stitch")) return []
    cursor.accept("-")
    if (!ringFirst && !cursor.take("ring")) return []
  }
  if (!isBoundary(cursor.text())) return []
  const span = cursor.since(start)
  return [
    clause(cursor, (before) =>
      before.length > 0
        ? null
        : [
            { ...span, do: "chain", chains, place: null },
            { ...span, do: "join", place: null, ring: true },
          ],
    ),
  ]
}
