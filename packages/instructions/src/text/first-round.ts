// A first round without a label: what stands before the first labelled round, where that is the second, or
// where it makes stitches of its own.

import type { Span } from "../base/tree.ts"
import type { RoundLabel } from "./labels.ts"

const makesStitches =
  /\b\d+ ?(?:s\.?\s?c|d\.?\s?c|h\.?d\.?c|tr|htr|single|double|treble)\b|\b(?:[sd]\.? ?c|h\.? ?d\.? ?c|tr|t)\b[^.]{0,80}\b(?:ring|circle|loop)\b/i

/** "Work 8 dc into the ring. 2nd row: ...": the first labelled round is the second, and what stands before it the first. */
export function takeFirstRound(
  clean: string,
  rounds: {
    label: RoundLabel
    line: number
    start: number
    bodyStart: number
    end: number
  }[],
  prose: (Span & { line: number })[],
): void {
  const second = rounds[0]
  if (!second || second.label.from > 2 || second.label.from < 1) return
  const at = prose.findLastIndex((part) => part.end <= second.start)
  const first = prose[at]
  if (!first || clean.slice(first.end, second.start).trim() !== "") return
  if (!makesStitches.test(clean.slice(first.start, first.end))) return
  // Before a round 1 only what is plainly worked into a ring is a round of its own.
  if (second.label.from === 1 && !intoRing(clean, first, prose[at - 1])) return
  // A round 1 that is worked into a ring itself has none before it.
  if (second.label.from === 1 && intoRing(clean, { ...second, start: second.bodyStart }, undefined))
    return
  prose.splice(at, 1)
  const lead = clean.slice(first.start, first.end).search(/\S|$/)
  const start = first.start + lead
  const number = second.label.from - 1
  rounds.unshift({
    label: { from: number, to: number, row: second.label.row, start, end: start, markAt: start },
    line: first.line,
    start,
    bodyStart: start,
    end: first.end,
  })
}

const ring = /\b(?:ring|circle|magic loop)\b/i

function intoRing(clean: string, line: Span, before: Span | undefined): boolean {
  const text = clean.slice(line.start, line.end)
  if (!/\b\d+ ?(?:sc|dc|tr|hdc|htr|single|double|treble)/i.test(text) || text.length > 300)
    return false
  return (
    ring.test(text) ||
    (before !== undefined &&
      ring.test(clean.slice(before.start, before.end)) &&
      /^\s*(?:ch|chain|\d+ ?ch)/i.test(text))
  )
}
