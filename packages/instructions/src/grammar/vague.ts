// What a text leaves to the maker: "now and then 2 dc in one st as needed to stay flat", "fewer if the
// strip is thick". No count follows from it, so it is told and not worked.

import type { Step } from "../base/tree.ts"
import type { Chart, Clause, Remark } from "./chart.ts"
import { clause } from "./clauses.ts"
import type { Cursor } from "./cursor.ts"
import { readKind } from "./stitch-names.ts"

/** Most words such a clause may have. */
const longestClause = 24

const firstWords = new Set(
  "now and then|here|from|occasionally|fewer|more|increasing|increase|inc|decreasing|decrease|as|where|when|if".split(
    "|",
  ),
)

export function startsVague(text: string): boolean {
  return firstWords.has(text)
}

export function leftToMaker(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const start = cursor.start()
  if (!begins(cursor)) return []
  for (let k = 0; k < longestClause && !cursor.done(); k++) {
    if (/^[;.)(]$/.test(cursor.text())) break
    cursor.at += 1
  }
  const remarks: Remark[] = [{ code: "left-to-maker", start, end: cursor.lastEnd() }]
  return [clause(cursor, [], 0.05, { remarks })]
}

function begins(cursor: Cursor): boolean {
  if (cursor.accept("now and then", "occasionally")) return true
  if (
    cursor.attempt(() =>
      cursor.accept("here") && cursor.take("and") && cursor.accept("there") ? true : null,
    )
  )
    return true
  if (
    cursor.attempt(() =>
      cursor.accept("from") && cursor.accept("time") && cursor.take("to") ? true : null,
    )
  )
    return true
  if (cursor.accept("fewer", "more")) return cursor.accept("if", "when", "where")
  if (cursor.take("increase", "decrease")) {
    while (cursor.accept("as", "where", "when", "wherever", "often", "enough", "so", "to"));
    return cursor.accept("needed", "necessary", "required", "that") || isWayToKeep(cursor.text())
  }
  if (!cursor.accept("as", "where", "when", "if")) return false
  if (!cursor.accept("needed", "necessary", "required")) return false
  return cursor.accept("to", "for", "so") && isWayToKeep(cursor.text())
}

/** "to keep it flat", "to lie flat": what an increase left to the maker is for. */
function isWayToKeep(text: string): boolean {
  return /^(?:keep|stay|lie|lay|make|have|lie flat|lay flat)$/.test(text)
}

/** Stitches an increase at a corner is taken for where their number is not said: common practice, no source. */
const usualCorner = 3

/** "Each side will increase by 4 sts": what the words before it come to. */
export function sidesGrow(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  if (!cursor.take("each") || !cursor.take("side")) return []
  cursor.accept("will", "should", "is", "now")
  if (!cursor.take("increase") && !cursor.accept("grow", "grows", "gain", "gains", "growing"))
    return []
  cursor.accept("by")
  if (cursor.takeCount(1) === null || !cursor.take("stitch")) return []
  return [clause(cursor, [], 0.1)]
}

/** "increasing in each corner", "inc at every corner": how many is not said, so it is told until a total bears it out. */
export function cornerIncrease(cursor: Cursor): Step[] | null {
  const start = cursor.start()
  cursor.at += 1
  if (!cursor.take("in") || !cursor.take("each") || !cursor.take("corner")) return null
  const span = cursor.since(start)
  return [
    {
      ...span,
      do: "work",
      stitch: { kind: { basic: "sc" }, tog: false, shape: "same" },
      count: usualCorner,
      corner: true,
      place: {
        ...span,
        at: "each",
        nouns: [{ what: "corner", corner: true }],
        until: { kind: "around" },
      },
    },
  ]
}

/** "...; then one sc round": a round told in passing, which has no number and is not worked. */
export function unlabelledRound(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const start = cursor.start()
  if (cursor.isNumber()) cursor.at += 1
  while (cursor.is("more") || cursor.is("adjective") || cursor.is("last")) cursor.at += 1
  const kind = readKind(cursor)
  if (!kind || !cursor.is("round") || cursor.text() === "around") return []
  cursor.at += 1
  const remarks: Remark[] = [{ code: "round-without-label", start, end: cursor.lastEnd() }]
  return [clause(cursor, (before) => (before.length > 0 ? before : null), 0.25, { remarks })]
}
