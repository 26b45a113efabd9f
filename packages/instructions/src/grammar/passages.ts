// Stretches between marks that are named again further on: "... from \u2020 to \u2020 once".

import type { Times } from "../base/tree.ts"
import type { Chart, Clause } from "./chart.ts"
import { clause, repeatOf } from "./clauses.ts"
import { asPasses } from "./passes.ts"
import { isRepeatMark } from "./repeat-marks.ts"
import { readTimes } from "./until.ts"

/** "from \u2020 to \u2020" comes later in the round: the stretch just closed is worked once here and named again there. */
export function namedAgain(chart: Chart, from: number, mark: string): boolean {
  for (let k = from + 1; k < chart.lexemes.length - 1; k++)
    if (chart.lexemes[k - 1]!.classes.has("repeat") && isBoth(chart.lexemes[k]!.text, mark))
      return true
  for (let k = from + 1; k < chart.lexemes.length - 2; k++) {
    const link = chart.lexemes[k + 1]!
    if (chart.lexemes[k]!.text !== mark || !(link.classes.has("to") || link.classes.has("and")))
      continue
    if (chart.lexemes[k + 2]!.text !== mark) continue
    const lead = chart.lexemes[k - 1]!
    if (lead.classes.has("of") || lead.classes.has("between") || /^[,;.)\]]$/.test(lead.text))
      return true
  }
  return false
}

/** "Repeat ** twice": both marks, and what stands between them. */
function isBoth(text: string, mark: string): boolean {
  return text === mark + mark
}

/** "rep from \u2020 to \u2020 once": the stretch between these marks again; its steps stand earlier in the round. */
export function readPassage(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  if (!isRepeatMark(cursor.text())) {
    cursor.at += 1
    cursor.accept("from", "between")
  }
  const named = cursor.text()
  if (!isRepeatMark(named)) return []
  cursor.at += 1
  const opened = chart.lexemes.slice(0, at).some(({ text }) => text === named)
  const both = !opened && named.length === 2
  const mark = both ? named.slice(1) : named
  if (!both) {
    if (!cursor.take("to", "and") || cursor.text() !== mark) return []
    cursor.at += 1
  }
  const after = cursor.at
  const first = chart.lexemes.findIndex(({ text }) => text === mark)
  const second = chart.lexemes.findIndex(({ text }, k) => k > first && text === mark)
  if (first < 0 || second < 0 || second >= at) return []
  const body = chart.readInner(first + 1, second)[0]
  if (!body || body.steps.length === 0) return []
  cursor.at = after
  const times = readTimes(cursor, false)
  const span = cursor.since(chart.lexemes[at]!.start)
  const steps = asPasses(body.steps)
  if (!times || times.kind === "until") return [clause(cursor, steps)]
  const again: Times = { kind: "total", count: times.count }
  const opening = chart.lexemes[first]!.start
  if (both)
    // What stands between the stretch and these words goes with it.
    return [
      clause(cursor, (before) => {
        const from = before.findIndex((step) => step.start >= opening)
        return from < 0 ? null : [...before, repeatOf(span, before.slice(from), again)]
      }),
    ]
  return [
    clause(cursor, [
      { ...span, do: "repeat", body: steps, last: null, ending: null, times: again },
    ]),
  ]
}
