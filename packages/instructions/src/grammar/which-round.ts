// Words after a place or a count that only say once more whose it is: "of previous round", "from beg of round",
// "at start of round", "made in last round", "first made". A round told by its number is no such words.

import type { Chart, Clause } from "./chart.ts"
import { clause } from "./clauses.ts"
import { isBoundary } from "./cursor.ts"

/** Dearer than a place that takes these words itself. */
const saidAgainCost = 0.12

export function saysWhichRound(chart: Chart, at: number): readonly Clause[] {
  if (at === 0 || isBoundary(chart.lexemes[at - 1]!.text)) return []
  const cursor = chart.from(at)
  const firstMade = cursor.attempt(() =>
    cursor.take("first") && cursor.take("made") ? true : null,
  )
  if (!firstMade) {
    cursor.take("made")
    if (!cursor.take("of", "in")) return []
    while (cursor.take("that", "previous", "same"));
    if (cursor.take("start"))
      cursor.attempt(() =>
        cursor.take("of") && (cursor.take("that") || true) && cursor.take("round") ? true : null,
      )
    else if (!cursor.take("round") || cursor.isNumber()) return []
  }
  const ends =
    cursor.done() ||
    isBoundary(cursor.text()) ||
    cursor.is("and") ||
    cursor.is("join") ||
    cursor.is("fasten")
  return ends ? [clause(cursor, [], saidAgainCost)] : []
}

/** "creating 12 spokes in total", "forming 4 corners": what comes of it, told in passing and not compared. */
export function saysWhatComes(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  if (!/^(?:creating|forming|giving|creates|forms)$/.test(cursor.text())) return []
  cursor.at += 1
  if (cursor.takeCount(1) === null) return []
  if (!cursor.is("group") && !cursor.is("corner") && !cursor.is("tip")) return []
  cursor.at += 1
  cursor.take("says-total")
  return cursor.done() || isBoundary(cursor.text()) || cursor.is("join")
    ? [clause(cursor, [], saidAgainCost)]
    : []
}
