// Words about yarn, colour, markers and the piece in the hands: whole clauses that say nothing of stitches.

import type { Chart, Clause, Remark } from "./chart.ts"
import { clause } from "./clauses.ts"
import { type Cursor, isBoundary } from "./cursor.ts"
import { readPlace } from "./places.ts"

/** Words passed over in one clause, at most. */
export const longestClause = 40

/** A clause of handling costs this, however many words it has. */
const clauseCost = 0.05
export const sentenceCost = 0.2

/** "as follows", "work", "the following": words before what is worked. */
export function acceptWork(cursor: Cursor): void {
  while (cursor.is("work") && !cursor.isNumber() && !cursor.is("even")) cursor.at += 1
}

/**
 * "fasten off", "change to B", "place a marker in last st", "weave in ends", "with RS facing": to the end of the
 * clause, where its words are those of handling and nothing in it is work.
 */
export function handlingClause(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const found: Clause[] = []
  let handled = 0
  let others = 0
  for (let k = 0; k < longestClause && !cursor.done(); k++) {
    const text = cursor.text()
    if (/^[,;.!()[\]{}]$/.test(text) || /^\*+$/.test(text)) break
    // "using the cream, join yarn between 2 dc": the join tells where the round begins.
    if (cursor.at > at && /^(?:join|attach|rejoin)$/.test(text) && cursor.is("yarn", 1)) break
    if (isWork(cursor)) {
      // "fasten off B ch 3 ...": handling ends where work begins.
      break
    }
    if (isHandling(cursor)) handled += 1
    else if (cursor.peek()!.type === "number") {
      if (handled === 0) return []
    } else others += 1
    cursor.at += 1
  }
  if (cursor.at === at || handled === 0) return found
  if (others > handled * 3 + 2) return found
  found.push(clause(cursor, [], clauseCost))
  return found
}

function isHandling(cursor: Cursor): boolean {
  return cursor.is("handling") || cursor.is("yarn") || cursor.is("fasten") || cursor.is("colour")
}

/** Words that begin or carry work, so that a clause with them is not only handling. */
function isWork(cursor: Cursor): boolean {
  if (cursor.is("handling") || cursor.is("yarn") || cursor.is("fasten") || cursor.is("colour"))
    return false
  if (cursor.is("chain") && (cursor.isNumber(1) || cursor.is("of", 1))) return true
  if (cursor.is("repeat") || cursor.is("skip") || /^(?:sl|ss|slst|slip)$/.test(cursor.text()))
    return true
  const word = cursor.peek()!
  if (word.type === "number" && !isMeasure(cursor)) return true
  if (word.type !== "word") return false
  // A stitch that is worked somewhere, not one that is only named.
  return (
    word.classes.size === 0 && word.skipCost > 1.5 && (cursor.is("in", 1) || cursor.isNumber(-1))
  )
}

function isMeasure(cursor: Cursor): boolean {
  return (
    /^(?:mm|cm|in|inch|inches|"|yds|yards|minutes|g|grams|m)$/.test(cursor.text(1)) ||
    cursor.text(1) === "/" ||
    cursor.text(-1) === "/"
  )
}

const purposes =
  /^(?:complete|close|finish|join|end|form|secure|make|begin|start|give|create|get|keep|hide|fasten|tighten|reach|prepare)$/

/** "to complete the round", "to close", "to begin next round": what something is done for. */
export function purposeClause(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  cursor.at += 1
  if (cursor.is("group") && isBoundary(cursor.text(1)) && chart.lexemes[at]!.text === "for") {
    // "5 dc for a shell": what it is called.
    cursor.at += 1
    return [clause(cursor, (before) => (before.length > 0 ? before : null), clauseCost)]
  }
  if (cursor.is("increase") || cursor.is("decrease")) {
    // "to inc 1 sc, make 2 sc in 1 cluster": how an increase told before is made.
    while (!cursor.done() && !/^[.;()[\]*]/.test(cursor.text())) cursor.at += 1
    return [clause(cursor, (before) => (before.length > 0 ? before : null), 0.1)]
  }
  if (chart.lexemes[at]!.text === "for" || !purposes.test(cursor.text())) return []
  cursor.at += 1
  for (let k = 0; k < 5; k++) {
    if (cursor.done() || /^[,;.!()[\]{}*]$/.test(cursor.text())) break
    if (
      (cursor.isNumber() && !cursor.is("round", -1)) ||
      cursor.is("chain") ||
      cursor.is("in") ||
      cursor.is("each")
    )
      return []
    cursor.at += 1
  }
  if (!cursor.done() && !/^[,;.!()[\]{}*]+$/.test(cursor.text())) return []
  return [clause(cursor, [], clauseCost)]
}

/** "OR 4 ch, join to form a ring, ...": another way of doing what has just been told. */
export function otherWay(chart: Chart, at: number): readonly Clause[] {
  const before = chart.lexemes[at - 1]
  const cursor = chart.from(at)
  const start = cursor.start()
  const sentence = before !== undefined && /^[.;!]$/.test(before.text)
  cursor.at += 1
  for (let k = 0; k < longestClause && !cursor.done(); k++) {
    if (cursor.text() === "." || (!sentence && /^[,;()[\]*]$/.test(cursor.text()))) break
    cursor.at += 1
  }
  const remarks: Remark[] = [{ code: "other-way", start, end: cursor.lastEnd() }]
  return [
    clause(cursor, (steps) => (steps.length > 0 ? steps : null), sentence ? 0.3 : 0.6, { remarks }),
  ]
}

/** "Continue in this manner until piece measures 6 inches", "repeat last 2 rnds until ...": rounds that have no number. */
export function furtherRounds(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const before = chart.lexemes[at - 1]
  if (!before || !/^[.;!)\]]$/.test(before.text)) return []
  const start = cursor.start()
  // "Repeat the 4th row having 1 more dc in each section until there are 8": rounds to come.
  const again = cursor.is("repeat") && (cursor.is("round", 2) || cursor.is("round", 1))
  let tells = false
  for (let k = 0; k < longestClause && !cursor.done(); k++) {
    if (cursor.text() === "." && !cursor.isNumber(1)) break
    if (
      /^(?:measures?|desired|required|diameter|large|wide)$/.test(cursor.text()) ||
      (cursor.is("each") && cursor.is("round", 1)) ||
      (again && /^(?:until|till)$/.test(cursor.text()))
    )
      tells = true
    cursor.at += 1
  }
  if (!tells) return []
  const remarks: Remark[] = [{ code: "further-rounds", start, end: cursor.lastEnd() }]
  return [clause(cursor, (steps) => (steps.length > 0 ? steps : null), 0.15, { remarks })]
}

/**
 * "beginning in same st as ch 1", "starting in the joining st": where the first of what follows goes, as it would
 * anyway; "starting in any corner, ch 3": where the round begins.
 */
export function beginsWhere(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const start = cursor.start()
  cursor.at += 1
  const place = readPlace(cursor)
  if (place?.at === "next" && place.count === 1 && (cursor.is("chain") || cursor.text() === ",")) {
    const span = cursor.since(start)
    return [
      clause(
        cursor,
        (before) => (before.length > 0 ? null : [{ ...span, do: "attach", place }]),
        clauseCost,
      ),
    ]
  }
  if (place?.at !== "same") return []
  return [
    clause(
      cursor,
      (before) =>
        before.some((step) => step.do === "work" || step.do === "group") ? null : before,
      clauseCost,
    ),
  ]
}

/** "using a 4 mm hook", "with a 5.5 mm (I) hook": the tool, told in passing. */
export function toolClause(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const start = cursor.start()
  if (!cursor.take("with") && !cursor.accept("use")) return []
  let sized = false
  for (let k = 0; k < 12; k++) {
    if (cursor.isNumber()) sized = true
    if (cursor.is("hook")) {
      cursor.at += 1
      const remarks: Remark[] = sized ? [{ code: "not-reckoned", ...cursor.since(start) }] : []
      return [clause(cursor, [], clauseCost, { remarks })]
    }
    const text = cursor.text()
    if (cursor.done() || /^[,;.]$/.test(text) || cursor.is("in") || cursor.is("stitch")) return []
    cursor.at += 1
  }
  return []
}

/** "with B", "in white", "using colour A": the yarn of what follows. */
export function yarnClause(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  if (!cursor.take("with") && !cursor.accept("in")) return []
  let named = 0
  for (;;) {
    if (
      cursor.is("yarn") ||
      cursor.is("colour") ||
      (/^[a-h]$/.test(cursor.text()) && cursor.peek()!.type === "word")
    )
      named += 1
    else if (
      !(named > 0 && cursor.is("and")) &&
      !cursor.isOrdinal() &&
      cursor.text() !== "new" &&
      cursor.text() !== "#"
    )
      break
    cursor.at += 1
  }
  if (named === 0) return []
  if (!/^[,;.:()*]?$/.test(cursor.text()) && cursor.is("in")) return []
  return [clause(cursor, [], clauseCost)]
}

/** "piece should measure 1 1/2 inches", "measures 8 cm across": to the end of the sentence. */
export function measureSentence(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const start = cursor.start()
  let measures = false
  let sized = false
  for (let k = 0; k < longestClause && !cursor.done(); k++) {
    const text = cursor.text()
    if (
      /^(?:measures?|measuring|cm|mm|inch|inches|diameter)$/.test(text) ||
      (text === '"' && cursor.isNumber(-1))
    )
      measures = true
    if (text === "." && !cursor.isNumber(1)) break
    if (/^[;([]$/.test(text)) break
    if (cursor.is("next") || cursor.is("each") || cursor.is("skip")) return []
    if (cursor.isNumber()) sized = true
    cursor.at += 1
  }
  const remarks: Remark[] = sized ? [{ code: "not-reckoned", start, end: cursor.lastEnd() }] : []
  return measures ? [clause(cursor, [], sentenceCost, { remarks })] : []
}
