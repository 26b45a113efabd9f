// Stated totals: "(24 dc)", "[24]", "= 24 sts", "(12 dc + 4 ch-3 sps; 24 sts with chains)", "24 sts
// at the end of the round", "(6 petals)"; and what makes one not firm ("if", "about", "or").

import type { StatedItem, StatedTotal } from "../base/tree.ts"
import type { Chart, Clause, Remark } from "./chart.ts"
import { clause } from "./clauses.ts"
import { type Cursor, isStitchWord } from "./cursor.ts"
import { readKind } from "./stitch-names.ts"
import { belongs, isPart, leads, readItem, separators } from "./total-items.ts"

const tellsWhatCounts = /^(?:incl|including|counting|inclusive)$/

/** A total whose words are not all understood is dearer by each of them. */
const strayWordCost = 0.3

interface TotalRead {
  readonly total: StatedTotal
  readonly cost: number
  readonly stray: readonly number[]
}

/** The total that stands from the cursor to `end`; null when none does. */
function readTotal(cursor: Cursor, end: number, closed: boolean): TotalRead | null {
  const start = cursor.start()
  const items: StatedItem[] = []
  const stray: number[] = []
  let cost = 0
  let firm = true
  let range: "between" | "or" | undefined
  let more = false
  let side = false
  let withStart = false
  while (cursor.at < end) {
    const text = cursor.text()
    if (!closed && items.length > 0 && (text === "." || text === ";" || text === "!")) break
    if (text === "+" && items.length === 0) {
      firm = false
      more = true
    }
    if (items.length > 0 && text === "with" && cursor.isNumber(1) && cursor.is("each", 3)) {
      // "6 loops with the 3 dc each": what one of them has.
      while (cursor.at < end && !cursor.is("each")) cursor.at += 1
      cursor.at += 1
      continue
    }
    if (separators.has(text)) {
      cursor.at += 1
      continue
    }
    const ofRound =
      cursor.lexemes[cursor.at - 1]?.classes.has("round") === true && cursor.isNumber()
    const item = ofRound ? null : cursor.attempt(() => readItem(cursor, end))
    if (item) {
      addItem(items, item, cursor)
      if (isPart(cursor)) side = true
      continue
    }
    if (cursor.is("soft") && !cursor.is("and")) {
      firm = false
      if (text === "between" && items.length === 0) range = "between"
      else if (text === "or" && items.length === 1 && cursor.isNumber(1)) range = "or"
      else if (text !== "or") range = undefined
      cursor.at += 1
      continue
    }
    if (isPart(cursor)) side = true
    if (tellsWhatCounts.test(text) && !cursor.isNumber(1)) {
      withStart = true
      // "counting ch 2 at start": its figure counts nothing else.
      if (cursor.is("chain", 1) && cursor.isNumber(2)) {
        cursor.at += 3
        continue
      }
    }
    const word = cursor.peek()!
    if (items.length === 0 && !leads(cursor)) return null
    if (/^[([{)\]}*]$/.test(text)) {
      if (closed && /^[([{)\]}]$/.test(text)) {
        cursor.at += 1
        continue
      }
      break
    }
    const inGroups =
      cursor.is("in") && cursor.is("group", 1) && cursor.text(2) === "of" && cursor.isNumber(3)
    if (!closed && items.length > 0 && inGroups) {
      // "12 dc in groups of 2 separated by ch 1".
      cursor.at += 4
      if (cursor.accept("separated", "parted")) {
        cursor.accept("by")
        if (cursor.isNumber()) cursor.at += 1
        if (!cursor.take("chain")) readKind(cursor)
        cursor.takeCount(1)
      }
      continue
    }
    if (!closed && items.length > 0 && cursor.is("in") && cursor.is("ring", 1)) {
      // "16 dc in your ring".
      cursor.at += 2
      continue
    }
    if (!closed && items.length > 0 && !belongs(cursor)) break
    if (word.type === "number" && !ofRound) return null
    if (word.classes.size === 0) {
      stray.push(cursor.at)
      cost += strayWordCost
    } else {
      // "(= 1 tr, in back loops only, 1 ch)": words of the work are no part of a total.
      if ((word.classes.has("back-loop") || word.classes.has("front-loop")) && items.length > 0)
        stray.push(cursor.at)
      cost += Math.min(0.2, word.skipCost / 5)
    }
    cursor.at += 1
  }
  if (items.length === 0) return null
  const total: StatedTotal = {
    ...cursor.since(start),
    items,
    firm: firm && !side,
    ...(range && items.length === 2 ? { range } : {}),
    ...(more && items.length === 1 ? { more: true as const } : {}),
    ...(side ? { perSide: true as const } : {}),
    ...(withStart ? { withStart: true as const } : {}),
  }
  return { total, cost, stray }
}

/** Stitches told by their colours, "18 white sc, 18 red sc", are one count. */
function addItem(items: StatedItem[], item: StatedItem, { lexemes }: Cursor): void {
  const coloured = ({ start, end }: StatedItem): boolean =>
    lexemes.some((word) => word.start > start && word.end < end && word.classes.has("colour"))
  const at = items.findIndex(
    (other) => other.unit === item.unit && other.word === item.word && coloured(other),
  )
  if (at < 0 || !coloured(item)) items.push(item)
  else items[at] = { ...items[at]!, end: item.end, count: items[at]!.count + item.count }
}

function totalClause(cursor: Cursor, read: TotalRead, cost: number): Clause {
  const remarks = read.stray.map((k): Remark => {
    const word = cursor.lexemes[k]!
    return { code: "word-in-total", start: word.start, end: word.end }
  })
  return clause(cursor, [], cost + read.cost, { totals: [read.total], remarks })
}

/** A bracket that holds a total: figures and units, and nothing to work. */
export function readBracketTotal(chart: Chart, at: number, end: number): Clause | null {
  const cursor = chart.from(at + 1)
  if (end >= chart.lexemes.length) return null
  if (!chart.lexemes.slice(at + 1, end).some(({ type }) => type === "number")) return null
  if (tellsWork(chart, at + 1, end)) return null
  const first = chart.lexemes[at + 1]!
  const range = first.text === "between" && chart.lexemes[at + 2]?.type === "number"
  if (
    (first.classes.has("between") && !range) ||
    first.classes.has("in") ||
    first.classes.has("of")
  )
    return null
  if (
    chart.lexemes
      .slice(at + 1, end)
      .some(({ text }) =>
        /^(?:increased?|decreased?|instead|increases|decreases|inc|dec|incs|decs)$/.test(text),
      )
  )
    return null
  const read = cursor.attempt(() => readTotal(cursor, end, true))
  if (!read) return null
  // "repeat 4 more times (6 in total)": how often, once more.
  const again = chart.lexemes[at - 1]
  const bare = read.total.items.length === 1 && read.total.items[0]!.word === ""
  if (
    bare &&
    (again?.classes.has("more") || again?.classes.has("times")) &&
    again.type === "word" &&
    saysTotal(chart, at, end)
  )
    return null
  if (isList(read.total.items)) return null
  cursor.at = end + 1
  // "(3 dc) in next st", "(12) times": what follows speaks for work.
  const work =
    cursor.is("in") ||
    cursor.is("times") ||
    cursor.is("once") ||
    cursor.is("to") ||
    (cursor.is("around") && !read.total.firm) ||
    (cursor.isNumber() && (cursor.is("times", 1) || cursor.is("more", 1)))
  if (work) return null
  // A total ends a sentence; in the middle of one it is something else said in passing.
  const ends =
    cursor.done() ||
    /^[.,;:!?)\]]$/.test(cursor.text()) ||
    cursor.is("join") ||
    cursor.is("fasten") ||
    cursor.is("turn") ||
    cursor.is("handling") ||
    cursor.is("not") ||
    cursor.is("with") ||
    /^[([*]/.test(cursor.text())
  // "3 sc in each ch (33 sc), sc in next 2 sts, ...": of what stands before it, and the round goes on.
  const goesOn =
    cursor.text() === "," &&
    (cursor.isNumber(1) || isStitchWord(cursor.text(1), cursor.terms)) &&
    !/^(?:sl|ss|slst|slip)/.test(cursor.text(1))
  const part = goesOn ? { ...read, total: { ...read.total, firm: false } } : read
  return totalClause(cursor, part, ends ? 0.02 : 0.5)
}

function saysTotal(chart: Chart, at: number, end: number): boolean {
  return chart.lexemes
    .slice(at + 1, end)
    .some(({ text }) => /^(?:in total|in all|total|altogether)$/.test(text))
}

/** "(ch 3, 2 dc)", "(2 dc in next st)": a list to work. */
function tellsWork(chart: Chart, from: number, to: number): boolean {
  const { cursor } = chart
  let found = false
  for (let k = from; k < to && !found; k++) {
    cursor.at = k
    // "(23 sc in each group on last rnd)": what a part of the round has.
    const ofPart = cursor.is("each", 1) && (cursor.is("group", 2) || cursor.is("side", 2))
    const names =
      cursor.is("space", 2) ||
      cursor.is("group", 2) ||
      cursor.is("corner", 2) ||
      /^clusters?$/.test(cursor.text(2))
    // "...; join. (12 dc in ring)": told again after the round is closed.
    const ofRing =
      cursor.is("ring", 1) &&
      k + 2 === to &&
      closesRound(chart, /^[.;]$/.test(chart.lexemes[from - 2]?.text ?? "") ? from - 2 : from - 1)
    // "(48 dc, counting ch 2 at start)": how they were counted.
    const counting = k > from && tellsWhatCounts.test(chart.lexemes[k - 1]!.text)
    const chains =
      cursor.is("chain") &&
      cursor.isNumber(1) &&
      cursor.text(2) !== "-" &&
      !names &&
      !(counting && chart.lexemes[from]!.type === "number")
    found =
      chains ||
      (cursor.is("in") &&
        opensPlace(cursor) &&
        !cursor.is("side", 2) &&
        !cursor.is("round", 2) &&
        !ofRing &&
        !ofPart &&
        !inAll(cursor, to)) ||
      (cursor.is("skip") && !cursor.is("unworked")) ||
      (cursor.is("joining") && cursor.text() === "join")
  }
  cursor.at = from
  return found
}

/** "36 sts in all": nothing follows that would be a place. */
function inAll(cursor: Cursor, to: number): boolean {
  return cursor.text(1) === "all" && cursor.at + 2 >= to
}

function opensPlace(cursor: Cursor): boolean {
  return (
    (
      ["next", "same", "each", "ring", "first", "any", "chain", "space", "top", "corner"] as const
    ).some((name) => cursor.is(name, 1)) ||
    cursor.isOrdinal(1) ||
    cursor.isNumber(1)
  )
}

/** "= 24 dc", "- 24 sts", "24 dc.", "you should have 24 sts", "Total: 24": a total without a bracket. */
export function totalWithoutBracket(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const marked = /^(?:=|-|:|->|>)$/.test(cursor.text())
  while (/^(?:=|-|:|>)$/.test(cursor.text())) cursor.at += 1
  const forAll =
    cursor.text() === "for" &&
    cursor.isNumber(1) &&
    /^(?:in total|in all|total|altogether)$/.test(cursor.text(2))
  const forGroups =
    cursor.text() === "for" &&
    cursor.isNumber(1) &&
    (cursor.is("group", 2) || cursor.is("size", 2) || cursor.is("space", 2))
  const ofTotal = /^total(?: of)?$/.test(cursor.text(2)) ? (cursor.text(3) === "of" ? 2 : 1) : 0
  const toMake =
    cursor.text() === "to" &&
    /^(?:make|form|give|total)$/.test(cursor.text(1)) &&
    cursor.isNumber(2 + ofTotal)
  if (forAll || forGroups) cursor.at += 1
  if (toMake) cursor.at += 2 + ofTotal
  const told = cursor.is("says-total") || forAll || forGroups || toMake
  // "... creating 12 spokes in total, 3 ch": said of what stands before it.
  if (
    told &&
    /^in (?:total|all)$/.test(cursor.text()) &&
    !cursor.isNumber(1) &&
    cursor.text(1) !== ":"
  )
    return []
  if (!cursor.isNumber() && !told) return []
  const from = cursor.at
  let end = from
  while (end < chart.lexemes.length && !/^[.;!([{]$/.test(chart.lexemes[end]!.text)) end += 1
  if (end - from > mostWords) return []
  const surely = told && /have|total|should|there|count|result/.test(chart.lexemes[from]!.text)
  if (!surely && tellsWork(chart, from, end)) return []
  cursor.at = from
  const read = cursor.attempt(() => readTotal(cursor, end, false))
  if (!read) return []
  const before = chart.lexemes[at - 1]
  // "(12) 7": a bare figure behind a total is no second one.
  if (
    !told &&
    !marked &&
    /^[)\]]$/.test(before?.text ?? "") &&
    read.total.items.every(({ word }) => word === "")
  )
    return []
  const sentence = !before || /^[.;!)\]]$/.test(before.text)
  // "18 sts (+6)": what it grew by stands behind it.
  const grown = cursor.text() === "(" && cursor.text(1) === "+"
  const last =
    grown || cursor.done() || /^[.;!]$/.test(cursor.text()) || cursor.peek()!.newLine === true
  if (!last && !told && !marked) return []
  const bare = read.total.items.every(({ word }) => word === "")
  if (bare && !told && !marked && !sentence && before?.text !== ",") return []
  // "... You'll have 10 dc in total. 3.": the number of the step to come.
  const ordinal =
    bare &&
    sentence &&
    !told &&
    !marked &&
    cursor.text() === "." &&
    cursor.at === chart.lexemes.length - 1
  if (ordinal && (read.total.items[0]?.count ?? 0) < fewestBare) return []
  const after = closesRound(chart, at)
  const dash = marked && last && before?.type === "word" && !before.classes.has("chain")
  const cost =
    told || dash
      ? 0.02
      : marked
        ? 0.15
        : sentence || after
          ? 0.1
          : before?.text === "," && last
            ? 0.3
            : 0.8
  return [
    {
      ...totalClause(cursor, read, cost),
      // A round may be told by nothing but its total.
      steps: (steps) => (steps.length === 0 && (at > 0 || !last) ? null : steps),
    },
  ]
}

/** A bare figure of fewer, alone at the very end, numbers what follows. */
const fewestBare = 10
/** Longest total without a bracket, in words. */
const mostWords = 14

/** The words before end with a join: what follows is its total. */
function closesRound(chart: Chart, at: number): boolean {
  for (let k = at - 1; k >= Math.max(0, at - 10); k--) {
    const word = chart.lexemes[k]!
    if (
      word.classes.has("join") ||
      (word.text === "close" && chart.lexemes[k + 1]?.classes.has("with"))
    )
      return true
    if (/^[.;]$/.test(word.text)) return false
  }
  return false
}

/** "2 dc, 2 ch, 2 dc": the same stitch before and after chains is worked, and no total. */
function isList(items: readonly StatedItem[]): boolean {
  return items.some(
    ({ unit }, i) =>
      unit === "chains" &&
      items[i - 1]?.unit === "kind" &&
      items[i + 1]?.unit === "kind" &&
      items[i - 1]!.word === items[i + 1]!.word,
  )
}
