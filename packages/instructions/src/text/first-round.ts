// A first round without a label: what stands before the first labelled round, where that is the second, or
// where it makes stitches of its own. Talk may stand between the two, and its work may be on several lines.

import type { Span } from "../base/tree.ts"
import type { RoundLabel } from "./labels.ts"

const makesStitches =
  /\b\d+ ?(?:s\.?\s?c|d\.?\s?c|h\.?d\.?c|t\.?r\.?c?|htr|l\.?\s?s|t|d|single|double|treble|half[ -]double)\b|\b(?:[sd]\.? ?c|h\.? ?d\.? ?c|tr|t|d)\b[^.]{0,80}\b(?:ring|circle|loop)\b/i

interface FirstRound {
  label: RoundLabel
  line: number
  start: number
  bodyStart: number
  end: number
}
type Line = Span & { line: number }

/** "Work 8 dc into the ring. 2nd row: ...": the first labelled round is the second, and what stands before it the first. */
export function takeFirstRound(clean: string, rounds: FirstRound[], prose: Line[]): void {
  const second = rounds[0]
  if (!second || second.label.from > 2 || second.label.from < 1) return
  const last = prose.findLastIndex((part) => part.end <= second.start)
  const at = firstWork(clean, prose, last)
  const first = prose[at]
  if (!first) return
  const until = lastOf(clean, prose, at, last)
  // What stands between them without being prose is a heading, or a round of another piece.
  if (last - until > mostTalk) return
  const text = clean.slice(first.start, prose[until]!.end)
  if (second.label.from === 1) {
    // Before a round 1 only what is plainly worked into a ring is a round of its own, and that round is not.
    const body = clean.slice(second.bodyStart, second.end)
    if (!intoRing(text, clean, prose[at - 1]) || worksIntoRing.test(body)) return
  }
  const from = opensBefore(clean, prose, at)
  const opening = prose[from]!
  const lead = clean.slice(opening.start, first.end).search(/\S|$/)
  const start = opening.start + lead
  // Rounds numbered by their order alone are counted from this one.
  if (second.label.unlabelled && second.label.from === 1)
    for (const round of rounds)
      round.label = { ...round.label, from: round.label.from + 1, to: round.label.to + 1 }
  const number = rounds[0]!.label.from - 1
  const end = prose[until]!.end
  prose.splice(from, until - from + 1)
  rounds.unshift({
    label: { from: number, to: number, row: second.label.row, start, end: start, markAt: start },
    line: opening.line,
    start,
    bodyStart: start,
    end,
  })
}

/** Lines of talk between a first round and the label of the next. */
const mostTalk = 8
/** Lines of one round that is told line by line. */
const mostLines = 4
/** Longest line that is a round and nothing else. */
const longestRound = 700

/** How a stitch is made, a measure or an abbreviation: no round. */
const explains =
  /^\W{0,4}[a-z][a-z0-9 .-]{0,28}:\s{0,4}(?:work|make|yo|yarn|insert)\b|\byo\b|yarn over|insert (?:the |your )?hook|=\s*[a-z]|\b(?:gauge|tension)\b|^\W{0,4}[a-z]{0,5}(?:sc|dc|tr|st|ch|mr|sp|ss|rs|ws|yo|lp|rep|beg|cl|tog)\w{0,4}(?:\(s\))?\s?[-–]\s+[a-z]{3,}/i

/** The last line before `last` that makes stitches, and nothing of another round behind it. */
function firstWork(clean: string, prose: readonly Line[], last: number): number {
  for (let at = last; at >= 0 && at > last - mostTalk - mostLines; at--) {
    const text = clean.slice(prose[at]!.start, prose[at]!.end)
    if (text.length > longestRound) return -1
    if (makesStitches.test(text)) return explains.test(text) ? -1 : at
  }
  return -1
}

/** The lines behind it that still belong to it: "join to 3rd ch at start". */
function lastOf(clean: string, prose: readonly Line[], at: number, last: number): number {
  let until = at
  while (until < last && until < at + mostLines) {
    const next = clean.slice(prose[until + 1]!.start, prose[until + 1]!.end)
    if (!/^\W*(?:join|close|slip ?st|sl ?st|ss|fasten|pull)\b/i.test(next)) break
    until += 1
  }
  return until
}

/** The line before it, where the sentence begins there: "in a magic ring make". */
function opensBefore(clean: string, prose: readonly Line[], at: number): number {
  const before = prose[at - 1]
  if (!before || before.line + 1 < prose[at]!.line) return at
  const text = clean.slice(before.start, before.end).trim()
  if (!ring.test(text)) return at
  // "Make a magic loop and ch 2 (counts as hdc).": the chain is the first stitch of what follows.
  const starts = text.length < 140 && /\b(?:ch(?:ain)?[ -]?\d|\d ?ch)\b[^.]{0,60}\.?$/i.test(text)
  const opens = text.length < 60 && /\b(?:make|work|crochet|:)$/i.test(text)
  return starts || opens ? at - 1 : at
}

const ring = /\b(?:ring|circle|magic loop|loop)\b/i
/** "sc in first ch to form circle": the ring is closed, and nothing worked into it. */
const forms = /\b(?:form|make|to)\b[ \w]{0,12}\b(?:ring|circle|loop)\b/gi
const worksIntoRing =
  /\b(?:in|into|inside|over|through|cent(?:er|re) of)\b[^.,;]{0,14}\b(?:ring|circle|loop|hole|mr)\b|\b(?:magic|adjustable|sliding) (?:ring|circle|loop)\b|\bform a? ?(?:ring|circle|loop)\b|^\W*ch(?:ain)? ?-?\d+,? (?:join|sl|ss|slip)\b/i

function intoRing(text: string, clean: string, before: Span | undefined): boolean {
  if (!makesStitches.test(text) || text.length > 400) return false
  const inRing = ring.test(text.replace(forms, " "))
  return (
    inRing ||
    (before !== undefined &&
      ring.test(clean.slice(before.start, before.end)) &&
      /^\s*(?:ch|chain|\d+ ?ch)/i.test(text))
  )
}
