// A first round without a label: what stands before a first labelled round that is the second.

import type { RoundLabel } from "./labels.ts"
import type { Span } from "../base/tree.ts"

const makesStitches =
  /\b\d+\s*(?:s\.?\s?c|d\.?\s?c|h\.?d\.?c|tr|htr|single|double|treble)\b|\b(?:sc|dc|tr|hdc)\b[^.]*\b(?:ring|circle|loop)\b/i

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
  if (second?.label.from !== 2) return
  const at = prose.findLastIndex((part) => part.end <= second.start)
  const first = prose[at]
  if (!first || clean.slice(first.end, second.start).trim() !== "") return
  if (!makesStitches.test(clean.slice(first.start, first.end))) return
  prose.splice(at, 1)
  const lead = clean.slice(first.start, first.end).search(/\S|$/)
  const start = first.start + lead
  rounds.unshift({
    label: { from: 1, to: 1, row: second.label.row, start, end: start },
    line: first.line,
    start,
    bodyStart: start,
    end: first.end,
  })
}
