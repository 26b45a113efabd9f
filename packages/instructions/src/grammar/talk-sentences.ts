// Sentences that are no work: talk, advice, what has come of the work, and what is done once it is fastened off.

import type { Chart, Clause, Remark } from "./chart.ts"
import { clause } from "./clauses.ts"
import { type Cursor, isStitchWord } from "./cursor.ts"
import { longestClause, sentenceCost } from "./handling.ts"

/** True for words that begin advice: what follows them is no step of its own. */
export function startsAdvice(text: string): boolean {
  return /^(?:maintaining|remember|reminder|note|nb|tip|tips|tip:|hint|hints|ensure|ensuring|careful|important|please note|make sure|making sure)$/.test(
    text,
  )
}

/** "- remember to include the first ch 3", "Tip: work over the tail ...": to the end of the sentence; dear, as work may hide in it. */
export function adviceClause(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const before = chart.lexemes[at - 1]
  if (!before || !/^[.!?)\]};,*-]$/.test(before.text)) return []
  const start = cursor.start()
  // "Tip: ..." says itself that it is none of the work.
  const named = cursor.text().endsWith(":") || cursor.text(1) === ":"
  for (let k = 0; k < longestClause && !cursor.done(); k++) {
    if (/^[.!?)\]}*]$/.test(cursor.text())) break
    cursor.at += 1
  }
  const remarks: Remark[] = [{ code: "not-of-the-work", start, end: cursor.lastEnd() }]
  const cost = named ? 0.2 : 0.45
  return [clause(cursor, (steps) => (steps.length > 0 ? steps : null), cost, { remarks })]
}

/** A whole sentence of talk: no stitch, no place, no figure in it. Told, and passed over. */
export function talkSentence(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const before = chart.lexemes[at - 1]
  if (before && !/^[.!?)\]};,*-]$/.test(before.text) && before.text !== ":") return []
  let others = 0
  const start = cursor.start()
  for (let k = 0; k < longestClause && !cursor.done(); k++) {
    const word = cursor.peek()!
    if (/^[.!?]$/.test(word.text) || /^[([{)\]}*]+$/.test(word.text)) break
    if (word.type === "number" || word.type === "ordinal") return []
    if (cursor.is("next") && cursor.is("round", 1)) {
      // "this brings the thread in position for next round"
      cursor.at += 2
      others += 1
      continue
    }
    if (word.type === "word" && tellsWork(cursor)) return []
    if (word.type === "word") others += 1
    cursor.at += 1
  }
  if (others < 2) return []
  const ends = cursor.done() || /^[.!?)\]}]$/.test(cursor.text())
  if (!ends) return []
  const remarks: Remark[] = [{ code: "not-of-the-work", start, end: cursor.lastEnd() }]
  return [clause(cursor, [], sentenceCost, { remarks })]
}

/** Words with which something could be worked. */
function tellsWork(cursor: Cursor): boolean {
  const word = cursor.peek()!
  if (word.classes.size === 0) return word.skipCost > 1.5
  for (const name of workClasses)
    if (word.classes.has(name)) return !word.classes.has("handling") && !word.classes.has("chat")
  return false
}

const workClasses = [
  "chain",
  "stitch",
  "space",
  "group",
  "corner",
  "ring",
  "picot",
  "skip",
  "join",
  "repeat",
  "turn",
  "increase",
  "decrease",
  "each",
  "next",
] as const

/** Who or what a statement is about, and what it says of it. */
const subjects =
  /^(?:this|these|that|those|it|it's|that's|they|there|you|you'll|you're|we|i|each|which|so|that will|this will)$/
const states =
  /^(?:is|are|was|were|be|been|have|has|had|will|should|can|may|might|form|forms|create|creates|make|makes|give|gives|look|looks|add|adds|prepare|prepares|become|becomes|indicate|indicates|show|shows|help|helps|establish|establishes|introduces|prevents|keeps|ensures|allows|adds)$/
/** A statement that leaves its subject out: "Creates a round petal". */
const statesAlone =
  /^(?:creates|prepares|gives|makes|forms|helps|keeps|adds|establishes|introduces|prevents|ensures|allows|looks)$/
/** Most words before "as follows". */
const longestLead = 60

/** "You now need to increase to 24, spaced evenly, as follows: ch 3, ...": what comes is told, and then how. */
export function asFollows(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  if (at > 0 && !/^[.!?]$/.test(chart.lexemes[at - 1]!.text)) return []
  if (isStitchWord(cursor.text(), cursor.terms) || cursor.is("chain") || cursor.isNumber())
    return []
  let k = at
  while (
    k < chart.lexemes.length &&
    k < at + longestLead &&
    !/^(?:as follows|follows)$/.test(chart.lexemes[k]!.text)
  )
    k += 1
  const colon = chart.lexemes[k + 1]?.text
  if (!/follows$/.test(chart.lexemes[k]?.text ?? "") || (colon !== ":" && colon !== "-")) return []
  cursor.at = k + 2
  const start = chart.lexemes[at]!.start
  const remarks: Remark[] = [{ code: "not-of-the-work", start, end: chart.lexemes[k]!.end }]
  return [clause(cursor, (before) => (before.length === 0 ? before : null), 0.4, { remarks })]
}

/** Words between a subject and what is said of it. */
const subjectWords = 4

/**
 * "This is half of the first petal.", "You now have arches above the petals.", "Each round will add a layer to the
 * square.": what has come or will come of the work. A sentence in which something is made, placed or counted is none.
 */
export function statement(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  if (!beginsSentence(chart, at)) return []
  const start = cursor.start()
  const round =
    (cursor.isOrdinal() || cursor.is("first") || cursor.is("last")) && cursor.is("round", 1)
  // "Each round should end up with a multiple of ten."
  const ofAll = cursor.is("each") && cursor.is("round", 1)
  let said = statesAlone.test(cursor.text())
  if (said) cursor.at += 1
  else if (
    !round &&
    !subjects.test(cursor.text()) &&
    !cursor.is("says-total") &&
    !cursor.is("each")
  )
    return []
  if (!said && cursor.is("says-total") && !cursor.isNumber(1)) said = true
  for (let k = 0; k < subjectWords && !said; k++) {
    cursor.at += 1
    if (cursor.done() || /^[.,;!()[\]*]$/.test(cursor.text())) return []
    said = states.test(cursor.text()) || cursor.is("says-total")
  }
  if (!said) return []
  const may = modal.test(cursor.text())
  cursor.at += 1
  // "will add a layer": the verb behind it.
  if (may && /^(?:add|form|create|give|look|help|be|see|notice|keep)$/.test(cursor.text()))
    cursor.at += 1
  for (let k = 0; k < longestClause && !cursor.done(); k++) {
    if (/^[.!?]$/.test(cursor.text()) || /^[([{)\]}*]+$/.test(cursor.text())) break
    if (!ofAll && makesOrPlaces(cursor)) return []
    cursor.at += 1
  }
  const ends = /^[.!?)\]}]$/.test(cursor.text()) || (ofAll && cursor.text() === "(")
  if (!cursor.done() && !ends) return []
  const remarks: Remark[] = [{ code: "not-of-the-work", start, end: cursor.lastEnd() }]
  return [clause(cursor, (steps) => (steps.length > 0 ? steps : null), 0.3, { remarks })]
}

const modal = /^(?:will|should|can|may|might|that will|this will|you'll)$/

/** Nothing stands before it in its sentence but words of talk: "At this point, ...". */
function beginsSentence(chart: Chart, at: number): boolean {
  let k = at - 1
  if (chart.lexemes[k]?.text === ",") {
    k -= 1
    while (chart.lexemes[k]?.classes.has("chat")) k -= 1
    if (k === at - 2) return false
  }
  const before = chart.lexemes[k]
  return !before || /^[.!?)\]};:*-]$/.test(before.text)
}

/** Something is made here, or told where or how often it is. */
function makesOrPlaces(cursor: Cursor): boolean {
  const word = cursor.peek()!
  if (word.type === "number") return true
  if (
    cursor.is("skip") ||
    cursor.is("repeat") ||
    cursor.is("turn") ||
    (cursor.is("counts") && !cursor.is("stitch", -1)) ||
    cursor.is("not") ||
    cursor.is("once")
  )
    return true
  if (cursor.is("work") || cursor.is("join"))
    return (
      !cursor.is("handling") &&
      !(cursor.is("forms") && cursor.text(-1) === ",") &&
      !(word.text === "crochet" && isStitchWord(cursor.text(-1), cursor.terms))
    )
  if (isStitchWord(word.text, cursor.terms) && (cursor.is("in", 1) || cursor.is("around", 1)))
    return true
  return (
    cursor.is("in") &&
    /^(?:next|each|same|first|last|any|every|ring|ch|sp|st|sts|loop|corner|space)$/.test(
      cursor.text(1),
    )
  )
}

const offWords =
  /^(?:fasten off|finish off|break off|cut yarn|break yarn|fo|end off|tie off|break thread|cut thread|cut|break|knot off|bind off|bo|cast off|weave in|weave|sew in|darn in)$/

/**
 * What follows once the yarn is fastened off, to the end of its sentence: "Attach the hook to the medallion by
 * hand.", "pinch and shape the points gently". New yarn joined somewhere, stitches, chains and repeats are work.
 */
export function afterFastening(chart: Chart, at: number): readonly Clause[] {
  const before = chart.lexemes[at - 1]
  if (!before || !(/^[.!?)\]};:,-]$/.test(before.text) || offWords.test(before.text))) return []
  let off = false
  for (let k = at - 1; k >= 0 && k > at - mostBehind && !off; k--)
    off = offWords.test(chart.lexemes[k]!.text)
  if (!off) return []
  const cursor = chart.from(at)
  const start = cursor.start()
  let words = 0
  for (let k = 0; k < longestClause && !cursor.done(); k++) {
    if (/^[.!?]$/.test(cursor.text())) break
    if (/^[*[\]{}]+$/.test(cursor.text()) || worksAgain(cursor)) return []
    if (cursor.peek()!.type === "word") words += 1
    cursor.at += 1
  }
  if (words === 0) return []
  const remarks: Remark[] = [{ code: "not-of-the-work", start, end: cursor.lastEnd() }]
  return [clause(cursor, (steps) => (steps.length > 0 ? steps : null), sentenceCost, { remarks })]
}

/** Words behind a fastening off that may still be about what is done with the piece. */
const mostBehind = 120

function worksAgain(cursor: Cursor): boolean {
  const word = cursor.peek()!
  if (cursor.is("repeat") || cursor.is("skip") || cursor.is("chain") || cursor.is("increase"))
    return true
  if (cursor.is("join")) {
    // "Join white in any space": new yarn begins a round; "attach the ear wire" does not.
    for (let k = 1; k < 6; k++) {
      if (/^[.,;!]$/.test(cursor.text(k))) break
      if (cursor.is("yarn", k) || cursor.is("colour", k)) return true
      if (isStitchWord(cursor.text(k), cursor.terms) || /^(?:ss|sl|slip)$/.test(cursor.text(k)))
        return true
      if (cursor.is("any", k) || cursor.is("each", k) || cursor.is("next", k)) return true
      if (cursor.is("stitch", k) || cursor.is("space", k)) return true
    }
    return cursor.is("round", 1) || cursor.done()
  }
  if (word.type === "number")
    return (
      isStitchWord(cursor.text(1), cursor.terms) ||
      cursor.is("stitch", 1) ||
      cursor.is("times", 1) ||
      cursor.is("round", 1)
    )
  if (!isStitchWord(word.text, cursor.terms) || /^(?:front|back|single|half)$/.test(word.text))
    return false
  return cursor.is("in", 1) || cursor.is("around", 1) || cursor.isNumber(1) || cursor.is("each", 1)
}
