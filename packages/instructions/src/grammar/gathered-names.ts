// A gathered stitch spelled out and then called by its name: "(ch 3, 4 dc in sp) - first popcorn", "5 dc in next
// st (popcorn made)". The name alone tells that the stitches are one.

import type { StitchKind } from "@roundwright/stitches"
import type { Step } from "../base/tree.ts"
import type { Chart, Clause } from "./chart.ts"
import { clause } from "./clauses.ts"
import { isBoundary } from "./cursor.ts"

type How = NonNullable<StitchKind["gathered"]>["how"]

/** A cluster is often only what granny squares call three trebles side by side: dearer than leaving them apart. */
const clusterCost = 0.3

/** "- first popcorn", "(beg pc made)", ": starting popcorn stitch", "= first cluster". */
export function namedGathered(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const mark = cursor.text()
  const behind = chart.lexemes[at - 1]?.text === ")" && (cursor.is("first") || cursor.is("start"))
  if (!behind && !cursor.accept("-", "=", ":", "(", "[") && !cursor.take("counts", "forms"))
    return []
  while (cursor.take("counts", "forms", "any", "that") || cursor.accept("a", "your"));
  const first = cursor.take("first", "start")
  if (!first) cursor.accept("another")
  const how = howNamed(cursor.text())
  if (how === null) return []
  cursor.at += 1
  cursor.accept("-")
  cursor.take("stitch")
  const made = cursor.take("made")
  const closes = mark === "(" ? ")" : mark === "[" ? "]" : null
  if (closes) {
    if (!cursor.accept(closes)) return []
  } else if (!isBoundary(cursor.text())) return []
  if (!first && !made && how === "cluster") return []
  const end = cursor.lastEnd()
  // A popcorn is one stitch whoever names it; a cluster is one where it is called the first of several.
  const cost = how === "cluster" ? clusterCost : 0
  return [clause(cursor, (before) => asOne(before, how, end), cost)]
}

function howNamed(word: string): How | null {
  if (/^(?:popcorn|pop|pc)$/.test(word)) return "popcorn"
  if (/^(?:cluster|cl|clst)$/.test(word)) return "cluster"
  if (/^(?:puff|bobble)$/.test(word)) return word as How
  return null
}

/** The stitches just told, in a bracket or not, as one gathered stitch. */
function asOne(before: readonly Step[], how: How, end: number): readonly Step[] | null {
  const last = before[before.length - 1]
  if (last?.do === "group") {
    const steps = asOne(last.steps, how, last.end)
    // Several things in the one place are no single stitch.
    const few =
      last.steps.length === 1 || (last.steps.length === 2 && last.steps[0]!.do === "chain")
    return steps && few ? [...before.slice(0, -1), { ...last, end, steps }] : null
  }
  if (last?.do !== "work" || last.count < 2 || last.stitch.kind.gathered) return null
  const kind: StitchKind = { ...last.stitch.kind, gathered: { how, legs: last.count } }
  const chain = before[before.length - 2]
  if (chain?.do === "chain" && chain.place === null && last.place?.at === "next") {
    // The chain before it is its first leg: both go there.
    const { place } = last
    const stitch: Step = { ...last, stitch: { kind, tog: false }, count: 1, place: null }
    return [
      ...before.slice(0, -2),
      { start: chain.start, end, do: "group", steps: [chain, stitch], place },
    ]
  }
  return [...before.slice(0, -1), { ...last, end, stitch: { kind, tog: false }, count: 1 }]
}
