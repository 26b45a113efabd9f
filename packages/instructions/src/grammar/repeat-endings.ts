// How the last repeat ends: "ending last rep at **", "omitting last sc", "ending last rep with ch 2, dc
// in first sc".

import type { Step } from "../base/tree.ts"
import { type Chart, isEndMark, type Remark, toldWithin } from "./chart.ts"
import type { Cursor } from "./cursor.ts"
import { asPasses } from "./passes.ts"
import { readKind } from "./stitch-names.ts"

/** The last time round: steps that replace it or follow it, and those that replace it should nothing else fit. */
export interface Ending {
  readonly last: readonly Step[] | null
  readonly how: "replaces" | "follows" | null
  readonly tail?: readonly Step[]
  /** What is told of its words. */
  readonly remarks?: readonly Remark[]
}

/** What is told of the words of the ending goes with the rest. */
export function withRemarks<T extends { readonly remarks?: readonly Remark[] }>(
  extra: T,
  ending: Ending | null,
): T {
  return ending?.remarks?.length
    ? { ...extra, remarks: [...(extra.remarks ?? []), ...ending.remarks] }
    : extra
}

interface List {
  readonly steps: readonly Step[]
  readonly remarks: readonly Remark[]
}

interface Run {
  readonly steps: readonly Step[]
  readonly markAt: number | null
}

/** What is said of the last repeat, the cursor put after it. */
export function readEnding(chart: Chart, run: Run): Ending | null {
  const { cursor } = chart
  const marked = run.markAt === null ? null : run.steps.slice(0, run.markAt)
  const found = cursor.attempt((): Ending | null => {
    cursor.accept(",", ";", ".")
    cursor.accept("but")
    cursor.take("and")
    cursor.accept("but")
    if (cursor.is("omit") && !cursor.is("skip", 0)) return readOmission(chart, run)
    if (cursor.is("omit") && (cursor.is("last", 1) || cursor.text(1) === "("))
      return readOmission(chart, run)
    if (cursor.accept("stopping")) {
      // "stopping 1 sc short": that one is held over to the next round.
      if (cursor.takeCount(1) === null) return null
      readKind(cursor)
      return cursor.accept("short") ? { last: [], how: "follows" } : null
    }
    if (!cursor.is("end") && !(cursor.text() === "ending at" && isEndMark(cursor.text(1))))
      return null
    return readEndingWith(chart, run, marked)
  })
  if (found && found.last?.length === 0) return { last: null, how: null }
  if (found) return found
  return marked ? { last: marked, how: "replaces" } : null
}

function readOmission(chart: Chart, run: Run): Ending | null {
  const { cursor } = chart
  cursor.at += 1
  cursor.accept("out")
  cursor.take("last")
  const list = readListHere(chart, true)
  if (!list || list.steps.length === 0) return null
  atLastRepeat(cursor)
  return { last: dropTail(run.steps, list.steps), how: "replaces", remarks: list.remarks }
}

function readEndingWith(chart: Chart, run: Run, marked: readonly Step[] | null): Ending | null {
  const { cursor } = chart
  cursor.at += 1
  cursor.take("round")
  cursor.take("with")
  if (cursor.accept("by")) cursor.take("work")
  if (cursor.is("in") && cursor.is("last", 1)) cursor.at += 1
  const lastSaid = cursor.take("last")
  cursor.take("repeat", "times")
  cursor.accept("one", "repetition", "round")
  cursor.accept(":", ",")
  const marks = isEndMark(cursor.text())
  if (cursor.take("in", "to", "with", "until") || lastSaid || marks) {
    if (/^\*+$/.test(cursor.text()) || /^[\u2020\u2021]+$/.test(cursor.text())) {
      cursor.at += 1
      return marked ? { last: marked, how: "replaces" } : null
    }
  }
  const list = readListHere(chart, false)
  if (!list || list.steps.length === 0) return null
  const { steps, remarks } = list
  const tail = replaceTail(run.steps, steps)
  atLastRepeat(cursor)
  return lastSaid
    ? { last: tail, how: "replaces", remarks }
    : { last: steps, how: "follows", tail, remarks }
}

/** "as Rnd 4, ending with 1 dc in each of last 5 dc": another ending for the repeat of that round. */
export function readOtherEnding(chart: Chart): readonly Step[] | null {
  const { cursor } = chart
  return cursor.attempt(() => {
    cursor.accept(",", ";")
    cursor.accept("but")
    cursor.take("and")
    if (!cursor.is("end")) return null
    cursor.at += 1
    cursor.take("with")
    cursor.take("last")
    cursor.take("repeat")
    cursor.take("with")
    const list = readListHere(chart, false)
    return list && list.steps.length > 0 ? list.steps : null
  })
}

/** The steps from here to the end of the sentence, a join or, inside a list, the next comma. */
function readListHere(chart: Chart, toComma: boolean): List | null {
  const { cursor } = chart
  const from = cursor.at
  const bracket = /^[([]$/.test(cursor.text())
  let depth = 0
  let to = from
  for (; to < chart.lexemes.length; to++) {
    const { text } = chart.lexemes[to]!
    if (depth === 0 && isAside(chart, to)) break
    if (/^[([{]$/.test(text)) depth += 1
    else if (/^[)\]}]$/.test(text)) {
      depth -= 1
      if (depth < 0) break
      if (bracket && depth === 0 && toComma) {
        to += 1
        break
      }
    }
    if (depth > 0) continue
    if (text === ";" || text === "." || (toComma && text === ",")) break
    // "dc in joining" names a place.
    const led = chart.lexemes[to - 1]?.classes
    if (chart.lexemes[to]!.classes.has("join") && !led?.has("to") && !led?.has("in")) break
    cursor.at = to
    if (isAtLastRepeat(cursor)) break
    if (isTotalBracket(chart, to)) break
  }
  const inner =
    bracket && toComma
      ? chart.readInner(from + 1, Math.max(from + 1, to - 1))
      : chart.readInner(from, to)
  cursor.at = to
  const best = inner[0]
  return best && best.cost < 1.5
    ? { steps: asPasses(best.steps), remarks: toldWithin(chart, best) }
    : null
}

/** "(this brings thread into position)" behind the ending. */
function isAside(chart: Chart, at: number): boolean {
  const first = chart.lexemes[at + 1]
  return (
    chart.lexemes[at]!.text === "(" &&
    (first?.classes.has("chat") || first?.classes.has("that")) === true
  )
}

/** "(48 dc)" after the ending. */
function isTotalBracket(chart: Chart, at: number): boolean {
  if (!/^[([]$/.test(chart.lexemes[at]?.text ?? "")) return false
  return (
    chart.lexemes[at + 1]?.type === "number" && /^[)\]]$/.test(chart.lexemes[at + 3]?.text ?? "")
  )
}

/** The steps of a round, its last repeat ending in another way; null where it has no repeat. */
export function withOtherEnding(
  steps: readonly Step[],
  ending: readonly Step[],
): readonly Step[] | null {
  const at = steps.findLastIndex((step) => step.do === "repeat")
  const repeat = steps[at]
  if (repeat?.do !== "repeat") return null
  const tail = replaceTail(repeat.body, ending)
  return [
    ...steps.slice(0, at),
    { ...repeat, last: ending, ending: "follows", tail },
    ...steps.slice(at + 1).filter((step) => step.do === "join" || step.do === "turn"),
  ]
}

function isAtLastRepeat(cursor: Cursor): boolean {
  if (!cursor.is("of") && !cursor.is("in")) return false
  return cursor.is("last", 1) && (cursor.is("repeat", 2) || cursor.is("side", 2))
}

/** "omitting last sc of last rep", "on the final repeat". */
function atLastRepeat(cursor: Cursor): void {
  if (isAtLastRepeat(cursor)) cursor.at += 3
}

/** The body without its last stitches and chains. */
function dropTail(body: readonly Step[], part: readonly Step[]): readonly Step[] {
  const steps = [...body]
  for (let i = part.length - 1; i >= 0; i--) {
    const drop = part[i]
    if (!drop) continue
    let left = drop.do === "work" ? drop.count * placesOf(drop) : 1
    while (left > 0 && steps.length > 0) {
      const tail = steps[steps.length - 1]
      if (!tail) break
      const places = tail.do === "work" ? placesOf(tail) : 1
      if (tail.do === "work" && drop.do === "work" && places > left && tail.place?.at === "next") {
        steps[steps.length - 1] = { ...tail, place: { ...tail.place, count: places - left } }
        left = 0
        break
      }
      if (tail.do === "work" && drop.do === "work" && !tail.place && tail.count > left) {
        steps[steps.length - 1] = { ...tail, count: tail.count - left }
        left = 0
        break
      }
      steps.pop()
      if (tail.do === "skip" || tail.do === "mode") continue
      left -= tail.do === "work" ? Math.max(1, places * (tail.place ? tail.count : 1)) : 1
    }
  }
  return steps
}

function placesOf(step: Extract<Step, { do: "work" }>): number {
  if (!step.place) return step.count > 1 ? 1 : 1
  return step.place.at === "next" && !step.stitch.tog ? step.place.count : 1
}

/** The body with its last steps replaced, matched from the kind of step the ending starts with. */
function replaceTail(body: readonly Step[], ending: readonly Step[]): readonly Step[] {
  const first = ending[0]
  if (!first) return body
  if (ending.every((step) => step.do === "slip" || step.do === "join")) {
    // "ending last repeat with sl st in first sc": in place of its last stitch.
    const end = body.findLastIndex((step) => step.do === "work" || step.do === "group")
    return end > 0 ? [...body.slice(0, end), ...ending] : body
  }
  const works = ending.filter(
    (step) => step.do === "work" || step.do === "group" || step.do === "chain",
  ).length
  let at = body.length - 1
  if (first.do === "chain") {
    while (at >= 0 && body[at]?.do !== "chain") at -= 1
    // Of several chains the one that leaves as many steps as the ending has.
    while (at > 0 && countWorks(body.slice(at)) < works) {
      at -= 1
      while (at > 0 && body[at]?.do !== "chain") at -= 1
    }
    const skipsItself = ending.some((step) => step.do === "skip")
    const skipped = skipsItself ? [] : body.slice(at + 1).filter((step) => step.do === "skip")
    return [...body.slice(0, Math.max(0, at)), first, ...skipped, ...ending.slice(1)]
  }
  const alike = lastAlike(body, ending)
  if (alike !== null) return [...body.slice(0, alike), ...ending]
  at = body.length
  let left = works
  while (at > 0 && left > 0) {
    at -= 1
    const step = body[at]
    if (step && (step.do === "work" || step.do === "group" || step.do === "chain")) left -= 1
  }
  return [...body.slice(0, at), ...ending]
}

/** Where the body has the same steps as the ending, looked for from its end: the last time stops with them. */
function lastAlike(body: readonly Step[], ending: readonly Step[]): number | null {
  for (let at = body.length - ending.length; at >= 0; at--)
    if (ending.every((step, i) => isAlike(body[at + i]!, step))) return at
  return null
}

/** The same stitches into the same kind of place. */
function isAlike(a: Step, b: Step): boolean {
  if (a.do === "chain") return b.do === "chain" && a.chains === b.chains
  if (a.do !== "work" || b.do !== "work") return false
  return (
    a.count === b.count &&
    a.stitch.kind.basic === b.stitch.kind.basic &&
    a.place?.at === "next" &&
    b.place?.at === "next" &&
    a.place.count === b.place.count &&
    a.place.noun.what === b.place.noun.what &&
    a.place.noun.kind?.basic === b.place.noun.kind?.basic
  )
}

function countWorks(steps: readonly Step[]): number {
  return steps.filter((step) => step.do === "work" || step.do === "group" || step.do === "chain")
    .length
}
