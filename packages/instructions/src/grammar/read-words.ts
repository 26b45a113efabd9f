// From the words of a round to its trees, the likeliest first: scanned, looked up in the lexicon, put together
// by the chart, and the steps that belong together joined.

import type { Terms } from "@roundwright/stitches"
import { mostTokensPerRound } from "../base/limits.ts"
import type { RoundTree, Step } from "../base/tree.ts"
import { type Lexeme, lexemesOf } from "../words/lexemes.ts"
import { type Token, tokenise } from "../words/tokens.ts"
import { attachCounts } from "./attach-counts.ts"
import { Chart, type Reading, type Remark } from "./chart.ts"
import { isStitchWord, type LocalStitch, type Locals } from "./cursor.ts"
import { withoutOtherSizes } from "./other-sizes.ts"
import { asPasses } from "./passes.ts"
import { productions } from "./productions.ts"
import { intoSameSpace, ledByGroup } from "./same-space.ts"

/** A stretch of words that no clause took. */
export interface Gap {
  readonly start: number
  readonly end: number
  readonly cost: number
  readonly words: readonly Lexeme[]
}

export interface TreeReading extends RoundTree {
  /** How much was passed over or guessed; 0 for words that all have their place. */
  readonly cost: number
  readonly gaps: readonly Gap[]
  readonly remarks: readonly Remark[]
  /** What the round names on the way ("shell made"), and how it is worked. */
  readonly names: ReadonlyMap<string, LocalStitch>
}

export interface WordsOfRound {
  readonly tokens: readonly Token[]
  readonly trees: () => Generator<TreeReading>
  /** Words taken for others of which they are a slip. */
  readonly slips: readonly Lexeme[]
  readonly remarks: readonly Remark[]
}

export function readWords(
  text: string,
  start: number,
  end: number,
  terms: Terms,
  locals: Locals,
): WordsOfRound {
  const sized = withoutOtherSizes(tokenise(text, start, end))
  const tokens = sized.tokens.slice(0, mostTokensPerRound)
  const isName = (word: string) => isStitchWord(word, terms) || locals.has(word)
  const lexemes = lexemesOf(tokens, isName).map((lexeme, i, all) => {
    const before = all[i - 1]
    return before && text.slice(before.end, lexeme.start).includes("\n")
      ? { ...lexeme, newLine: true as const }
      : lexeme
  })
  return {
    tokens,
    trees: replayed(() => treesOf(lexemes, terms, locals, end)),
    slips: lexemes.filter((lexeme) => lexeme.slipOf !== undefined),
    remarks: sized.remarks,
  }
}

/** Trees are put together once, as far as they are asked for: many rounds may be told in the same words. */
function replayed(make: () => Generator<TreeReading>): () => Generator<TreeReading> {
  const known: TreeReading[] = []
  let rest: Generator<TreeReading> | null = null
  return function* () {
    for (let k = 0; ; k++) {
      if (k === known.length) {
        rest ??= make()
        const next = rest.next()
        if (next.done) return
        known.push(next.value)
      }
      yield known[k]!
    }
  }
}

function* treesOf(
  lexemes: readonly Lexeme[],
  terms: Terms,
  locals: Locals,
  end: number,
): Generator<TreeReading> {
  const chart = new Chart(lexemes, terms, locals, end, productions)
  const readings = chart.readings(0, lexemes.length)
  const first = readings.next().value as Reading | undefined
  if (!first) return
  const named = namesOf(first, locals)
  if (named.size > 0) {
    // What the round names on the way is known to the rest of it.
    const more = new Map([...locals, ...named])
    const again = new Chart(lexemes, terms, more, end, productions)
    for (const reading of again.readings(0, lexemes.length)) yield finished(again, reading, named)
    return
  }
  yield finished(chart, first, named)
  for (const reading of readings) yield finished(chart, reading, named)
}

function namesOf(reading: Reading, locals: Locals): Map<string, LocalStitch> {
  const found = new Map<string, LocalStitch>()
  for (const [name, steps] of reading.names) {
    if (locals.has(name)) continue
    const inner = steps.map((step) => (step.do === "work" ? { ...step, place: null } : step))
    // A shell that begins the round starts with chains, which the others do not.
    if (inner[0]?.do === "work" && inner.every((step) => /^(?:work|chain|picot)$/.test(step.do)))
      found.set(name, { steps: inner })
  }
  return found
}

function finished(
  chart: Chart,
  reading: Reading,
  names: ReadonlyMap<string, LocalStitch>,
): TreeReading {
  const read = attachCounts(intoSameSpace(ledByGroup(asPasses(reading.steps))))
  const steps = read.map((step) => withCountOfTotal(step, reading.totals))
  const skipped = new Set(reading.skipped)
  const remarks: Remark[] = []
  for (const remark of reading.remarks)
    if (remark.code === "skipped") skipped.add(Number(remark.said))
    else if (remark.code !== "read-over") remarks.push(remark)
  if (chart.tooDeep) {
    const first = chart.lexemes[0]!
    remarks.push({ code: "nested-too-deeply", start: first.start, end: first.end })
  }
  return {
    steps,
    totals: reading.totals.map((total) =>
      hasWorkAfter(steps, total.end) ? { ...total, firm: false } : total,
    ),
    cost: reading.cost,
    gaps: gapsOf(chart.lexemes, skipped),
    remarks,
    names,
  }
}

/** "Sc evenly around (48 sc)": how many is told by the total alone. */
function withCountOfTotal(step: Step, totals: RoundTree["totals"]): Step {
  if (step.do !== "work" || !step.even || step.count > 0 || step.extra !== undefined) return step
  const items = totals.flatMap((total) => (total.firm ? total.items : []))
  const [item] = items.filter(({ unit }) => unit === "stitches" || unit === "kind")
  return item && item.each === undefined ? { ...step, count: item.count } : step
}

/** What is worked after a total is not in it: it was said of a part of the round. */
function hasWorkAfter(steps: readonly Step[], end: number): boolean {
  return steps.some(
    (step) =>
      step.start > end && (step.do === "work" || step.do === "group" || step.do === "repeat"),
  )
}

/** A mark cheaper than this says nothing by itself, and does not begin a gap. */
const leastMarkTold = 0.2

/** Words passed over that stand next to one another are one gap; marks between them do not part them. */
function gapsOf(lexemes: readonly Lexeme[], skipped: ReadonlySet<number>): Gap[] {
  const gaps: { start: number; end: number; cost: number; words: Lexeme[]; last: number }[] = []
  for (const k of [...skipped].sort((a, b) => a - b)) {
    const word = lexemes[k]!
    const open = gaps[gaps.length - 1]
    if (open && open.last === k - 1) {
      open.end = word.end
      open.cost += word.skipCost
      open.words.push(word)
      open.last = k
    } else if (word.type !== "mark" || word.skipCost >= leastMarkTold)
      gaps.push({ start: word.start, end: word.end, cost: word.skipCost, words: [word], last: k })
  }
  return gaps
}

/** Steps of a stretch of prose: a ring, a definition. */
export function readStepsOf(
  text: string,
  start: number,
  end: number,
  terms: Terms,
  locals: Locals,
): { steps: readonly Step[]; cost: number } {
  const first = readWords(text, start, end, terms, locals).trees().next().value as
    | TreeReading
    | undefined
  return first ? { steps: first.steps, cost: first.cost } : { steps: [], cost: 0 }
}
