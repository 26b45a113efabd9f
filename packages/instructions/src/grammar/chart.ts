// The chart of one round: what every production makes of the words from each position on, and the cheapest
// ways of putting such clauses together to the whole. Several readings are kept; a word that no clause takes
// is passed over at its cost, so that something is read of every round.
//
// Readings come cheapest first (a uniform-cost search over positions), one after the other as they are asked
// for: a round in plain words costs one walk along it, and only what stays in doubt is looked at further.

import type { Terms } from "@roundwright/stitches"
import { deepestNesting } from "../base/limits.ts"
import type { ProblemCode } from "../base/problem-codes.ts"
import type { StatedTotal, Step } from "../base/tree.ts"
import type { Lexeme } from "../words/lexemes.ts"
import { Cursor, type Locals } from "./cursor.ts"

/** What one clause says. */
export interface Clause {
  /** Index of the word after it. */
  readonly end: number
  readonly cost: number
  /** The steps it makes, or how it changes those before it (null where it does not fit them). */
  readonly steps: readonly Step[] | ((before: readonly Step[]) => readonly Step[] | null)
  readonly totals?: readonly StatedTotal[]
  /** Remarks that hold if this clause is in the reading chosen. */
  readonly remarks?: readonly Remark[]
  /** Names it gives ("shell made"), for what follows in other rounds. */
  readonly names?: readonly (readonly [string, readonly Step[]])[]
}

/** Something a reading wants told, by the code of its sentence. */
export interface Remark {
  /** Of words passed over and read over only the places are kept; what is told of them is told by the reading. */
  readonly code: ProblemCode | "skipped" | "read-over"
  readonly start: number
  readonly end: number
  readonly said?: string
}

/** One way of reading a stretch of words. */
export interface Reading {
  readonly cost: number
  readonly steps: readonly Step[]
  readonly totals: readonly StatedTotal[]
  readonly remarks: readonly Remark[]
  /** Words passed over, by index, those that cost something. */
  readonly skipped: readonly number[]
  /** Steps before a mark that ends the last repeat ("**"); null when there is none. */
  readonly markAt: number | null
  readonly names: readonly (readonly [string, readonly Step[]])[]
}

export interface Production {
  readonly name: string
  /** True where it may begin; a quick look at the first word. */
  readonly starts: (word: Lexeme, cursor: Cursor) => boolean
  /** Words that nobody knows may stand in what it reads: talk, or names of the pattern's own. */
  readonly readsOver?: "talk" | "names"
  /** Its readings from the cursor on: one, several or none. */
  readonly rule: (chart: Chart, at: number) => readonly Clause[]
  /** Wordings that it reads. */
  readonly examples: readonly string[]
}

interface State {
  readonly at: number
  readonly cost: number
  readonly reading: Reading
}

const empty: Reading = {
  cost: 0,
  steps: [],
  totals: [],
  remarks: [],
  skipped: [],
  markAt: null,
  names: [],
}

/** Readings kept that end at one position; more would only differ in what is already in doubt. */
const mostAtPosition = 5
/** States looked at in one stretch: bounds what a text of nothing but doubt may cost. */
const mostStates = 3_000
/** Readings of an inner stretch (a bracket, a repeat) that are carried on. */
const mostInner = 3
/** How much dearer than the best an inner reading may be. */
const innerMargin = 1.1

export class Chart {
  readonly cursor: Cursor
  private readonly clauses: (readonly Clause[] | undefined)[] = []
  private readonly inner = new Map<number, readonly Reading[]>()
  depth = 0
  /** Marks of repeats open around the stretch being read: their words end it. */
  readonly openMarks: string[] = []
  /** The nesting is too deep to be meant. */
  tooDeep = false

  constructor(
    readonly lexemes: readonly Lexeme[],
    terms: Terms,
    locals: Locals,
    end: number,
    private readonly productions: readonly Production[],
  ) {
    this.cursor = new Cursor(lexemes, terms, locals, end)
  }

  /** The cursor put at a position. */
  from(at: number): Cursor {
    this.cursor.at = at
    return this.cursor
  }

  /** All clauses that begin at a position. */
  clausesAt(at: number): readonly Clause[] {
    const known = this.clauses[at]
    if (known) return known
    // While they are being read, the position has none: no production may wait for itself.
    this.clauses[at] = []
    const found: Clause[] = []
    const word = this.lexemes[at]!
    for (const production of this.productions) {
      this.cursor.at = at
      if (!production.starts(word, this.cursor)) continue
      this.cursor.at = at
      for (const clause of production.rule(this, at))
        if (clause.end > at) found.push(this.withStrangers(clause, at, production.readsOver))
    }
    this.clauses[at] = found
    return found
  }

  /** A clause with the unknown words it steps over: passed over at their cost, or known to be talk. */
  private withStrangers(clause: Clause, at: number, readsOver: Production["readsOver"]): Clause {
    let told: Set<string | undefined> | null = null
    const remarks: Remark[] = []
    let { cost } = clause
    for (let k = at; k < clause.end; k++) {
      const word = this.lexemes[k]!
      if (!word.unknown) continue
      told ??= new Set(
        (clause.remarks ?? [])
          .filter(({ code }) => /^(?:skipped|read-over)$/.test(code))
          .map(({ said }) => said),
      )
      if (told.has(String(k))) continue
      const { start, end } = word
      const known = readsOver === "talk" || (readsOver && !this.cursor.placeNames.has(k))
      remarks.push({ code: known ? "read-over" : "skipped", start, end, said: String(k) })
      if (!known) cost += word.skipCost
    }
    if (remarks.length === 0) return clause
    if (readsOver === "talk" && !clause.remarks?.length)
      remarks.push({
        code: "not-of-the-work",
        start: this.lexemes[at]!.start,
        end: this.lexemes[clause.end - 1]!.end,
      })
    return { ...clause, cost, remarks: [...(clause.remarks ?? []), ...remarks] }
  }

  /** The best readings of an inner stretch. */
  readInner(from: number, to: number): readonly Reading[] {
    const key = from * 8192 + to
    const known = this.inner.get(key)
    if (known) return known
    if (this.depth >= deepestNesting) {
      this.tooDeep = true
      return []
    }
    this.depth += 1
    const found: Reading[] = []
    for (const reading of this.readings(from, to)) {
      if (found.length > 0 && reading.cost > found[0]!.cost + innerMargin) break
      found.push(reading)
      if (found.length >= mostInner) break
    }
    this.depth -= 1
    this.inner.set(key, found)
    return found
  }

  /** Readings of a stretch, cheapest first. */
  *readings(from: number, to: number): Generator<Reading> {
    const heap = new Heap()
    const visits = new Map<number, number>()
    heap.push({ at: from, cost: 0, reading: empty })
    let states = 0
    for (let state = heap.pop(); state; state = heap.pop()) {
      if (state.at >= to) {
        yield state.reading
        continue
      }
      const seen = visits.get(state.at) ?? 0
      if (seen >= mostAtPosition) continue
      visits.set(state.at, seen + 1)
      states += 1
      if (states > mostStates) {
        yield this.skipAll(state, to)
        return
      }
      for (const clause of this.clausesAt(state.at)) {
        if (clause.end > to) continue
        const next = extended(state.reading, clause)
        if (next) heap.push({ at: clause.end, cost: next.cost, reading: next })
      }
      heap.push(this.skipOne(state))
    }
  }

  private skipOne({ at, reading }: State): State {
    const word = this.lexemes[at]!
    const mark = isEndMark(word.text)
    if (mark && reading.markAt === null && reading.steps.length > 0 && this.openMarks.length > 0) {
      const marked = { ...reading, markAt: reading.steps.length, cost: reading.cost + 0.05 }
      return { at: at + 1, cost: marked.cost, reading: marked }
    }
    if (word.skipCost === 0) return { at: at + 1, cost: reading.cost, reading }
    const cost = reading.cost + word.skipCost
    return { at: at + 1, cost, reading: { ...reading, cost, skipped: [...reading.skipped, at] } }
  }

  private skipAll({ at, reading }: State, to: number): Reading {
    const skipped = [...reading.skipped]
    let cost = reading.cost
    for (let k = at; k < to; k++) {
      const word = this.lexemes[k]!
      cost += word.skipCost
      if (word.skipCost > 0) skipped.push(k)
    }
    return { ...reading, cost, skipped }
  }
}

/** "**" or a dagger that the words may speak of: where the last repeat stops. */
export function isEndMark(text: string): boolean {
  return /^\*\*+$/.test(text) || /^[\u2020\u2021]+$/.test(text)
}

function extended(reading: Reading, clause: Clause): Reading | null {
  let steps: readonly Step[]
  if (typeof clause.steps === "function") {
    const changed = clause.steps(reading.steps)
    if (!changed) return null
    steps = changed
  } else steps = clause.steps.length === 0 ? reading.steps : [...reading.steps, ...clause.steps]
  return {
    cost: reading.cost + clause.cost,
    steps,
    totals: clause.totals ? [...reading.totals, ...clause.totals] : reading.totals,
    remarks: clause.remarks ? [...reading.remarks, ...clause.remarks] : reading.remarks,
    skipped: reading.skipped,
    markAt: reading.markAt,
    names: clause.names
      ? [...reading.names, ...clause.names.map((name) => resolved(name, steps))]
      : reading.names,
  }
}

/** "(shell made)" names the group just told. */
function resolved(
  name: readonly [string, readonly Step[]],
  steps: readonly Step[],
): readonly [string, readonly Step[]] {
  const last = steps[steps.length - 1]
  if (name[1].length > 0 || !last) return name
  if (last.do === "group") return [name[0], last.steps]
  // "3 dc, ch 3, 3 dc (shell) in next dc": where it goes is told behind the name.
  let from = steps.length
  while (from > 0 && isLoose(steps[from - 1]!)) from -= 1
  const list = steps.slice(steps[from]?.do === "chain" ? from + 1 : from)
  return list.filter((step) => step.do === "work").length > 1 ? [name[0], list] : name
}

function isLoose(step: Step): boolean {
  return (step.do === "work" || step.do === "chain") && step.place === null
}

/** A binary heap of states: the cheapest first, of equals the one furthest on, then the first pushed. */
class Heap {
  private readonly items: { state: State; order: number }[] = []
  private pushed = 0

  push(state: State): void {
    const { items } = this
    const item = { state, order: this.pushed++ }
    let at = items.length
    items.push(item)
    while (at > 0) {
      const parent = (at - 1) >> 1
      if (!before(item, items[parent]!)) break
      items[at] = items[parent]!
      at = parent
    }
    items[at] = item
  }

  pop(): State | undefined {
    const { items } = this
    const top = items[0]
    const last = items.pop()
    if (!top || !last) return undefined
    if (items.length > 0) {
      let at = 0
      for (;;) {
        let child = 2 * at + 1
        if (child >= items.length) break
        if (child + 1 < items.length && before(items[child + 1]!, items[child]!)) child += 1
        if (!before(items[child]!, last)) break
        items[at] = items[child]!
        at = child
      }
      items[at] = last
    }
    return top.state
  }
}

/** Costs this near are the same: they are sums of the same figures in another order. */
const sameCost = 1e-9

function before(a: { state: State; order: number }, b: { state: State; order: number }): boolean {
  if (Math.abs(a.state.cost - b.state.cost) > sameCost) return a.state.cost < b.state.cost
  if (a.state.at !== b.state.at) return a.state.at > b.state.at
  return a.order < b.order
}

/** What a reading within another remarks, and the words that it passes over, to be told. */
export function toldWithin(chart: Chart, body: Reading): Remark[] {
  const passed = body.skipped.map((k): Remark => {
    const word = chart.lexemes[k]!
    return { code: "skipped", start: word.start, end: word.end, said: String(k) }
  })
  return [...body.remarks, ...passed]
}
