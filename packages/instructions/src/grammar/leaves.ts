// Leaves and points: a chain with stitches worked back along it. "ch 11, skip the last, over the next
// ch: 1 sc, 1 dc, 2 tr", "a point of ch 3 with (1 sc, 2 dc) back on it", "six points, each: ...".

import type { Place, Span, Step } from "../base/tree.ts"
import { type Chart, type Clause, toldWithin } from "./chart.ts"
import { clause } from "./clauses.ts"
import type { Cursor } from "./cursor.ts"
import { readCountedChain } from "./nouns.ts"
import { asPasses } from "./passes.ts"
import { readHookChain, readPlace } from "./places.ts"
import { readCounted } from "./stitch-names.ts"

/** After "ch 11": ", skip the last, over the other 10 ch: ..."; null when the chain is left as it is. */
export function readBackAlong(cursor: Cursor, chains: number, start: number): Step | null {
  return cursor.attempt((): Step | null => {
    const from = cursor.start()
    cursor.accept(",", ";")
    cursor.accept("and", "then")
    const skip = readSkipped(cursor)
    if (skip === null || skip >= chains) return null
    cursor.accept(",", ";")
    cursor.accept("and", "then")
    cursor.accept("work", "working", "back")
    if (!cursor.accept("over", "on", "along", "in", "into", "back")) return null
    cursor.accept("along", "over", "on", "in")
    cursor.accept("the")
    cursor.accept("next", "other", "remaining", "rem", "rest")
    cursor.accept("of")
    cursor.accept("the")
    if (cursor.isNumber() && cursor.takeCount(1) !== chains - skip) return null
    if (!cursor.take("chain")) return null
    cursor.accept(":", ",", "work")
    const steps = readRow(cursor, chains - skip)
    return steps && groupOn({ ...cursor.since(Math.min(start, from)) }, steps, skip)
  })
}

/** "a point of ch 3 with (1 sc, 2 dc) back on it". */
export function readPointOf(cursor: Cursor): Step[] | null {
  return cursor.attempt((): Step[] | null => {
    const start = cursor.start()
    cursor.accept("a", "one", "1")
    if (!cursor.accept("point", "leaf", "spike", "tooth") || !cursor.accept("of")) return null
    if (!cursor.is("chain") || !cursor.isNumber(1)) return null
    const chains = cursor.value(1)
    cursor.at += 2
    if (!cursor.accept("with") || !cursor.accept("(", "[")) return null
    const steps = readRow(cursor, chains)
    if (!steps || !cursor.accept(")", "]")) return null
    cursor.accept("worked")
    if (!cursor.accept("back") || !cursor.accept("on", "along", "over")) return null
    if (!cursor.accept("it", "them")) {
      cursor.accept("the")
      if (!cursor.take("chain")) return null
    }
    const span = cursor.since(start)
    const worked = steps.reduce((sum, step) => sum + (step.do === "work" ? step.count : 1), 0)
    return [
      { ...span, do: "chain", chains, place: null },
      groupOn(span, steps, Math.max(0, chains - worked)),
    ]
  })
}

/** "Starting in 3rd ch from hook and continuing down the chain", "working back along the ch": where what is told next goes. */
export function beginsBackAlong(cursor: Cursor): Step[] | null {
  const start = cursor.start()
  while (cursor.take("start", "work") || cursor.accept("now", "go", "going", "come", "coming"));
  if (cursor.at === 0 || cursor.start() === start) return null
  cursor.take("in", "with", "of") || cursor.accept("at")
  const from = cursor.attempt(() => readHookChain(cursor, start))
  cursor.take("and")
  while (cursor.take("work") || cursor.accept("continue", "continuing", "going", "back"));
  const along = acceptAlong(cursor)
  if ((!from && !along) || !/^[,;:.]?$/.test(cursor.text())) return null
  const span = cursor.since(start)
  const place: Place = { ...span, at: "hook-chain", nth: from?.at === "hook-chain" ? from.nth : 1 }
  return [{ ...span, do: "skip", place }]
}

/** "down the chain", "back along ch-7", "over those chains". */
function acceptAlong(cursor: Cursor): boolean {
  return (
    cursor.attempt(() => {
      cursor.accept("back", "back down", "back up", "back along")
      cursor.take("below", "around") || cursor.accept("up", "on", "over")
      while (cursor.take("that", "same", "each"));
      if (readCountedChain(cursor)) return true
      if (!cursor.take("chain")) return null
      if (cursor.accept("-") && !cursor.isNumber()) return null
      if (cursor.isNumber()) cursor.at += 1
      return true
    }) !== null
  )
}

/** "six points, each: ...", "seven leaves in a ring, each: ...": so many times what follows. */
export function eachOf(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const start = cursor.start()
  const count = cursor.takeCount(1)
  if (count === null) return []
  while (cursor.take("size") || cursor.accept("pointed", "tapering"));
  if (!cursor.is("group") && !cursor.accept("spikes", "loops", "arms")) return []
  if (cursor.is("group")) cursor.at += 1
  cursor.attempt(() => (cursor.take("in") && cursor.take("ring") ? true : null))
  cursor.accept(",", ":", "-")
  if (!cursor.take("each")) return []
  while (cursor.accept("of", "as", "follows", "thus", "as follows") || cursor.take("made", "work"));
  cursor.accept(":", ",")
  const from = cursor.at
  let to = from
  while (to < chart.lexemes.length && !/^[.;]$/.test(chart.lexemes[to]!.text)) to += 1
  const inner = chart.readInner(from, to)[0]
  if (!inner || inner.steps.length === 0) return []
  cursor.at = to
  const body = asPasses(inner.steps)
  const times = { kind: "total" as const, count }
  return [
    clause(
      cursor,
      [{ ...cursor.since(start), do: "repeat", body, last: null, ending: null, times }],
      inner.cost,
      { remarks: toldWithin(chart, inner) },
    ),
  ]
}

/** "10 groups of (3 dc, ch 1, 3 dc), each in the 3rd of next 6 sc": so many, each in its place. */
export function groupsEach(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const start = cursor.start()
  const count = cursor.takeCount(1)
  if (count === null || !cursor.take("group") || !cursor.accept("of")) return []
  if (!/^[([]$/.test(cursor.text())) return []
  const from = cursor.at + 1
  const end = chart.lexemes.findIndex(({ text }, k) => k >= from && /^[)\]]$/.test(text))
  if (end < 0) return []
  const inner = chart.readInner(from, end)[0]
  if (!inner || inner.steps.length === 0) return []
  cursor.at = end + 1
  const told = { remarks: toldWithin(chart, inner) }
  const times = { kind: "total" as const, count }
  const one = cursor.attempt(() => readPlace(cursor))
  if (one?.at === "ring" || (one?.at === "next" && one.count === 1) || one?.at === "same") {
    // "6 lots of (3 dc, ch 1) in the ring": all of them in one place.
    const span = cursor.since(start)
    const all: Step = {
      ...span,
      do: "repeat",
      body: asPasses(inner.steps),
      last: null,
      ending: null,
      times,
    }
    return [clause(cursor, [{ ...span, do: "group", steps: [all], place: one }], inner.cost, told)]
  }
  cursor.at = end + 1
  cursor.accept(",", ":")
  if (!cursor.take("each") && !cursor.accept("1")) return []
  cursor.take("made")
  const place = readPlace(cursor)
  if (place?.at !== "next") return []
  const span = cursor.since(start)
  const body: Step[] = [{ ...span, do: "group", steps: asPasses(inner.steps), place }]
  return [
    clause(
      cursor,
      [{ ...span, do: "repeat", body, last: null, ending: null, times }],
      inner.cost,
      told,
    ),
  ]
}

/** "skip the last", "skip 1 ch", "miss first ch". */
function readSkipped(cursor: Cursor): number | null {
  if (!cursor.accept("skip", "sk", "miss")) return null
  cursor.accept("the")
  let count = 1
  const last = cursor.accept("last", "first")
  if (cursor.isNumber()) {
    count = cursor.value()
    cursor.at += 1
  } else if (!last) return null
  cursor.take("chain")
  cursor.accept("from")
  cursor.accept("hook")
  return Number.isInteger(count) ? count : null
}

/** Plain stitches one after the other, until the chain is covered. */
function readRow(cursor: Cursor, places: number): Step[] | null {
  const steps: Step[] = []
  let worked = 0
  while (!cursor.done() && worked < places) {
    const start = cursor.start()
    const at = cursor.at
    cursor.accept(",")
    cursor.accept("and", "then")
    if (steps.length > 0 && closesTogether(cursor, steps)) continue
    const counted = readCounted(cursor)
    if (!counted || counted.stitch.shape || worked + counted.count > places) {
      cursor.at = at
      break
    }
    worked += counted.count
    steps.push({
      ...cursor.since(start),
      do: "work",
      stitch: counted.stitch,
      count: counted.count,
      place: null,
    })
  }
  cursor.attempt(() => {
    cursor.accept(",")
    return closesTogether(cursor, steps) ? true : null
  })
  return steps.length > 0 ? steps : null
}

/** ", the last two closed together": two legs with one top. */
function closesTogether(cursor: Cursor, steps: Step[]): boolean {
  return (
    cursor.attempt(() => {
      cursor.accept("the")
      if (!cursor.accept("last") || !cursor.isNumber()) return null
      const legs = cursor.value()
      cursor.at += 1
      if (!cursor.accept("closed", "worked", "drawn") || !cursor.accept("together", "tog"))
        return null
      const last = steps[steps.length - 1]
      if (last?.do !== "work" || last.count < legs || last.stitch.kind.gathered) return null
      const kind = { ...last.stitch.kind, gathered: { how: "together" as const, legs } }
      steps.pop()
      if (last.count > legs) steps.push({ ...last, count: last.count - legs })
      steps.push({ ...last, stitch: { kind, tog: true }, count: 1 })
      return true
    }) !== null
  )
}

function groupOn(span: Span, steps: readonly Step[], skip: number): Step {
  const place: Place = { ...span, at: "own-chain", skip }
  return { ...span, do: "group", steps, place }
}
