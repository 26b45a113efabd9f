// "Work another corner as before", "skip to the next gap and work (...) into this space": what was told once, again in
// the next place of its kind.

import type { Place, Step } from "../base/tree.ts"
import type { Chart, Clause } from "./chart.ts"
import { clause } from "./clauses.ts"
import { isBoundary } from "./cursor.ts"
import { readNoun } from "./nouns.ts"

type Work = Extract<Step, { do: "work" }>
type Chain = Extract<Step, { do: "chain" }>

/** "make another corner", "work a corner in next ch-2 sp as before". */
export function anotherCorner(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const start = cursor.start()
  while (cursor.is("work") && !cursor.isNumber()) cursor.at += 1
  const led = cursor.at > at
  if (!cursor.take("next", "any") && !led) return []
  if (!cursor.take("corner")) return []
  if (cursor.accept("as")) {
    if (!cursor.accept("before", "above")) return []
  } else cursor.accept("as before", "same way", "in same way")
  if (!isBoundary(cursor.text())) return []
  const span = cursor.since(start)
  const end = cursor.at
  // Inside a repeat the corner told before it is meant.
  const told = chart.openMarks.length > 0 ? chart.readInner(0, at)[0]?.steps : undefined
  cursor.at = end
  const place: Place = {
    ...span,
    at: "next",
    noun: { what: "corner", corner: true },
    count: 1,
  }
  return [
    clause(cursor, (before) => {
      const list = lastCorner(before) ?? lastCorner(told ?? [])
      return list && [...before, { ...span, do: "group", steps: list, place }]
    }),
  ]
}

/** "3 dc, ch 2, 3 dc", the last corner told; with a starting chain it has as many on both sides. */
function lastCorner(steps: readonly Step[]): readonly Step[] | null {
  for (let k = steps.length - 1; k >= 0; k--) {
    const step = steps[k]!
    const inside = step.do === "group" ? lastCorner(step.steps) : null
    if (inside) return inside
    const chain = steps[k - 1]
    const first = steps[k - 2]
    if (step.do !== "work" || chain?.do !== "chain" || first?.do !== "work") continue
    if (step.stitch.kind.basic !== first.stitch.kind.basic || step.count < 2) continue
    if (first.count !== step.count && first.count !== step.count - 1) continue
    const side: Work = { ...step, place: null }
    const between: Chain = { ...chain, place: null }
    return [side, between, side]
  }
  return null
}

/** "Skip to the next gap and work (3 dc, ch 2, 3 dc) into this space". */
export function skipsThere(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const start = cursor.start()
  cursor.at += 1
  if (!cursor.take("to") && !cursor.accept("over to")) return []
  if (!cursor.take("next")) return []
  const noun = readNoun(cursor)
  if (!noun || !/^(?:space|corner|gap|chain)$/.test(noun.what)) return []
  cursor.accept(",")
  cursor.take("and")
  while (cursor.is("work") && !cursor.isNumber()) cursor.at += 1
  if (!/^[([]$/.test(cursor.text())) return []
  const where: Place = {
    ...cursor.since(start),
    at: "next",
    noun: noun.what === "gap" ? { what: "space" } : noun,
    count: 1,
  }
  return chart.clausesAt(cursor.at).flatMap((inner): Clause[] => {
    const [group] = typeof inner.steps === "function" ? [] : inner.steps
    if (group?.do !== "group") return []
    const rest = (inner.steps as readonly Step[]).slice(1)
    return [{ ...inner, steps: [{ ...group, start, place: where }, ...rest] }]
  })
}
