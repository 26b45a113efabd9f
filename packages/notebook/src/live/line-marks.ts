// Underlines by line, and how they stay in place while the text around them changes.

import type { Mark } from "./messages.ts"

export type LineMarks = ReadonlyMap<number, readonly Mark[]>

export function marksByLine(marks: readonly Mark[]): LineMarks {
  const byLine = new Map<number, Mark[]>()
  for (const mark of marks) {
    const same = byLine.get(mark.line)
    if (same) same.push(mark)
    else byLine.set(mark.line, [mark])
  }
  return byLine
}

/**
 * The marks of lines that did not change, at their new place. Lines before the first difference keep
 * their number, lines after the last keep their distance from the end.
 */
export function moveMarks(
  marks: LineMarks,
  before: readonly string[],
  after: readonly string[],
): LineMarks {
  if (marks.size === 0) return marks
  const shorter = Math.min(before.length, after.length)
  let head = 0
  while (head < shorter && before[head] === after[head]) head += 1
  let tail = 0
  while (tail < shorter - head && before.at(-1 - tail) === after.at(-1 - tail)) tail += 1
  const moved = new Map<number, readonly Mark[]>()
  for (const [line, its] of marks) {
    if (line <= head) moved.set(line, its)
    else if (line > before.length - tail) moved.set(line + after.length - before.length, its)
  }
  return moved
}

/** A line in pieces, marked and not; where marks overlap the first one counts. */
export function splitLine(
  line: string,
  marks: readonly Mark[],
): { readonly text: string; readonly severity: Mark["severity"] | null }[] {
  const pieces: { text: string; severity: Mark["severity"] | null }[] = []
  let at = 0
  for (const { column, length, severity } of [...marks].sort((a, b) => a.column - b.column)) {
    const start = column - 1
    const end = Math.min(start + length, line.length)
    if (start < at || end <= start) continue
    if (start > at) pieces.push({ text: line.slice(at, start), severity: null })
    pieces.push({ text: line.slice(start, end), severity })
    at = end
  }
  if (at < line.length) pieces.push({ text: line.slice(at), severity: null })
  return pieces
}
