// Brackets that are no work: remarks, definitions, what a stitch just made is called, where it stands.

import type { Lexeme } from "../words/lexemes.ts"
import type { Chart, Clause, Remark } from "./chart.ts"
import { clause } from "./clauses.ts"
import { figuresOfCount, readCountsNote, readSumNote } from "./counts-as.ts"

/** A bracket read over, besides what its words cost. */
const asideCost = 0.25

/** Most an aside costs: a long remark is no worse than a short one. */
const mostAsideCost = 2.4

/** The words of a bracket passed over; what was made before it may be named in it ("shell made"). */
export function aside(chart: Chart, at: number, end: number, isTotal: boolean): Clause {
  if (end >= chart.lexemes.length) {
    const { start, end: stop, text } = chart.lexemes[at]!
    return {
      end: at + 1,
      cost: 0.6,
      steps: [],
      remarks: [{ code: "bracket-not-closed", start, end: stop, said: text }],
    }
  }
  let cost = asideCost
  const skipped: number[] = []
  for (let k = at + 1; k < end; k++) {
    const word = chart.lexemes[k]!
    cost += word.skipCost
    if (word.skipCost > 0) skipped.push(k)
  }
  const inner = chart.lexemes.slice(at + 1, end)
  const told =
    !isTotal &&
    (tellsMade(inner) ||
      tellsOther(inner) ||
      namesOnly(inner) ||
      defines(inner) ||
      tellsWhere(inner) ||
      tellsChange(inner) ||
      tellsLastRound(inner))
  if (told) cost = 0.05
  // A figure is never passed over unsaid: it may be a count.
  const figures = inner.some(({ type }) => type === "number")
  const name = told ? nameOf(inner) : null
  const opening = chart.lexemes[at]!
  const last = chart.lexemes[Math.min(end, chart.lexemes.length - 1)]!
  const remark: Remark = { code: "aside", start: opening.start, end: last.end }
  // A remark told whole: the words in it are not told one by one.
  const over = skipped.flatMap((k): Remark[] => {
    const { start, end: stop, unknown } = chart.lexemes[k]!
    return unknown ? [{ code: "read-over", start, end: stop, said: String(k) }] : []
  })
  const base = {
    end: end + 1,
    cost: Math.min(mostAsideCost, cost),
    remarks:
      !figures && ((told && over.length === 0) || cost < 0.5)
        ? tellsOther(inner)
          ? [remark, ...over]
          : []
        : [remark, ...over],
  }
  if (name === null) return { ...base, steps: [] }
  return {
    ...base,
    steps: (before) => before,
    names: [[name, []]],
  }
}

/** "(picot made)", "(inc made in same st)" tells what has just been done. */
function tellsMade(inner: readonly Lexeme[]): boolean {
  const at = inner.findIndex(({ text }) => /^(?:made|formed|completed|complete)$/.test(text))
  if (at < 0) return false
  return (
    at === inner.length - 1 || (at > 0 && !inner.slice(at).some(({ type }) => type === "number"))
  )
}

/** "(cluster st: 3 tr in same space ...)": how a stitch just named is made. */
export function defines(inner: readonly Lexeme[]): boolean {
  const at = inner.findIndex(({ text }) => text === ":" || text === "=")
  return (
    at > 0 &&
    at < 5 &&
    inner.length > at + 3 &&
    (inner[0]!.type === "word" || inner[0]!.type === "number")
  )
}

/** The bracket begins with a name that stands before it as well. */
export function namesMade(chart: Chart, at: number): boolean {
  const name = chart.lexemes
    .slice(at + 1, at + 4)
    .find(
      ({ classes, text }) =>
        classes.has("group") ||
        classes.has("picot") ||
        /^(?:cluster|cl|popcorn|pc|puff|bobble)$/.test(text),
    )?.text
  return name !== undefined && chart.lexemes.slice(0, at).some(({ text }) => text === name)
}

/** "(between the 2 picots)", "(in the back loop)": where that is, told once more. */
function tellsWhere(inner: readonly Lexeme[]): boolean {
  const first = inner[0]?.classes
  return (
    first !== undefined &&
    (first.has("between") ||
      first.has("in") ||
      first.has("behind") ||
      (first.has("of") && inner.length < 4))
  )
}

/** "(1 sc increased)", "(6 increases)". */
function tellsChange(inner: readonly Lexeme[]): boolean {
  return (
    inner.length < 5 &&
    inner.some(({ text }) =>
      /^(?:increased?|decreased?|increases|decreases|inc made|worked|left|remain|remaining|skipped)$/.test(
        text,
      ),
    )
  )
}

/** "(petal)", "(corner)", "(first shell)": a name for what has just been told. */
export function namesOnly(inner: readonly Lexeme[]): boolean {
  return (
    inner.length > 0 &&
    inner.length <= 3 &&
    inner.every(
      ({ type, classes, text }) =>
        type === "word" &&
        (classes.has("group") ||
          classes.has("corner") ||
          classes.has("first") ||
          classes.has("last") ||
          classes.has("size") ||
          classes.has("colour") ||
          classes.has("yarn") ||
          classes.has("ring") ||
          /^(?:cluster|cl|popcorn|puff|bobble)$/.test(text)),
    )
  )
}

/** "(or ch 2 ...)": another way of doing the same; "(not the ch 2)". */
function tellsOther(inner: readonly { text: string }[]): boolean {
  return (
    (inner[0]?.text === "or" && inner.length > 2) ||
    (inner[0]?.text === "counts" &&
      inner.some(({ text }) => /^(?:corner|side|point|petal|shell|group)s?$/.test(text))) ||
    /^(?:note|see|photo|pic|picture)$/.test(inner[0]?.text ?? "") ||
    (inner[0]?.text === "not" && !inner.some(({ text }) => /^count/.test(text)))
  )
}

/** "(23 sc in each group on last rnd)": what comes of it later. */
export function tellsLastRound(inner: readonly Lexeme[]): boolean {
  const [before, last] = inner.slice(-2)
  return (
    inner.length > 3 &&
    inner[0]!.type === "number" &&
    last?.classes.has("round") === true &&
    before?.classes.has("last") === true
  )
}

function nameOf(inner: readonly Lexeme[]): string | null {
  const made = tellsMade(inner)
  if (!made && !inner.some(({ classes }) => classes.has("group"))) return null
  const named = made ? inner.slice(0, -1) : inner
  if (named.length === 0 || named.length > 3 || named.some(({ type }) => type === "number"))
    return null
  const name = named
    .map(({ text }) => text)
    .join("")
    .replace(/[^a-z]/g, "")
  return /^[a-z]{2,20}$/.test(name) ? name : null
}

export function readNote(chart: Chart, at: number, end: number, start: number): Clause | null {
  const cursor = chart.from(at)
  const note = cursor.attempt(() => {
    const found = readCountsNote(cursor)
    // "..., now and throughout": what follows in the bracket makes nothing.
    while (found && cursor.at < end && saysNoWork(cursor.peek()!)) cursor.at += 1
    return found && cursor.at === end ? found : null
  })
  if (note) {
    cursor.at = Math.min(end + 1, chart.lexemes.length)
    const remarks = note.countsAs.kind?.gathered ? [] : figuresOfCount(chart, at, end)
    return clause(cursor, [{ ...cursor.since(start), ...note, do: "note-counts" }], 0, { remarks })
  }
  const sum = cursor.attempt(() => {
    const found = readSumNote(cursor)
    return found && cursor.at === end ? found : null
  })
  if (!sum) return null
  cursor.at = Math.min(end + 1, chart.lexemes.length)
  const span = cursor.since(start)
  return clause(cursor, (before) => {
    const chain = before[before.length - 1]
    if (chain?.do !== "chain" || !sum.fits(chain.chains)) return null
    return [...before, { ...span, countsAs: sum.countsAs, do: "note-counts" }]
  })
}

function saysNoWork(word: Lexeme): boolean {
  return (
    word.type === "mark" || (word.type === "word" && (word.classes.size > 0 || word.skipCost < 1.5))
  )
}
