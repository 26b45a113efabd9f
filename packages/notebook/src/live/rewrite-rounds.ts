// Rounds of a changed motif put in the place of the old ones in a pattern's text; all else stays to the letter.

import { type PatternReading, sameRound, writePattern } from "@roundwright/instructions"
import type { Motif } from "@roundwright/motif"

/** Characters from `start` up to `end` give way to `text`. */
export interface Piece {
  readonly start: number
  readonly end: number
  readonly text: string
}

/** The text with its pieces put in. @param pieces in the order of the text, none within another */
export function rewrite(text: string, pieces: readonly Piece[]): string {
  let written = ""
  let at = 0
  for (const piece of pieces) {
    written += text.slice(at, piece.start) + piece.text
    at = piece.end
  }
  return written + text.slice(at)
}

/** The rounds that differ, written anew; null where the piece as a whole cannot be written. */
export function piecesFor(
  pattern: string,
  reading: PatternReading,
  changed: Motif,
): Piece[] | null {
  const { motif, terms, rounds } = reading
  const written = writePattern(changed, terms)
    .split("\n")
    .filter((line) => /^(?:Rnd|Row) \d/.test(line))
  if (written.length !== changed.rounds.length) return null
  const differs = new Set(
    changed.rounds.flatMap((round, index) =>
      motif.rounds[index] && sameRound(motif.rounds[index], round) ? [] : [index],
    ),
  )
  // Several rounds may share one line of the text; they are written anew together.
  const places = new Map<number, { end: number; indices: number[] }>()
  changed.rounds.forEach((round, index) => {
    const place = rounds.find(({ number }) => number === round.number)
    if (!place) return
    const shared = places.get(place.start)
    if (shared) shared.indices.push(index)
    else places.set(place.start, { end: place.end, indices: [index] })
  })
  const pieces: Piece[] = []
  for (const [start, { end, indices }] of [...places].sort(([a], [b]) => a - b)) {
    if (start < (pieces.at(-1)?.end ?? 0) || !indices.some((index) => differs.has(index))) continue
    pieces.push({
      start,
      end: start + pattern.slice(start, end).trimEnd().length,
      text: indices.map((index) => written[index]).join("\n"),
    })
  }
  const [lines, more] = [reading.rounds.slice(0, motif.rounds.length), changed.rounds.length]
  return more < lines.length
    ? withoutRounds(pieces, pattern, lines.slice(more))
    : withRounds(pieces, pattern, lines.at(-1), written.slice(lines.length))
}

/** The lines of rounds that there are no more are taken out; null where one shares its line with a round that stays. */
function withoutRounds(
  pieces: readonly Piece[],
  pattern: string,
  gone: PatternReading["rounds"],
): Piece[] | null {
  const taken = gone.map(({ start, end }): Piece => {
    const line = pattern.lastIndexOf("\n", start - 1)
    return { start: line, end: start + pattern.slice(start, end).trimEnd().length, text: "" }
  })
  const alone = taken.every(({ start }, i) => pattern.slice(start, gone[i]!.start).trim() === "")
  return alone && taken.every(({ start }) => start >= (pieces.at(-1)?.end ?? 0))
    ? [...pieces, ...taken]
    : null
}

/** Rounds more stand in lines of their own below the last. */
function withRounds(
  pieces: readonly Piece[],
  pattern: string,
  last: PatternReading["rounds"][number] | undefined,
  added: readonly string[],
): Piece[] {
  if (!last || added.length === 0) return [...pieces]
  const end = last.start + pattern.slice(last.start, last.end).trimEnd().length
  const text = `\n${added.join("\n")}`
  const before = pieces.at(-1)
  return before?.end === end
    ? [...pieces.slice(0, -1), { ...before, text: before.text + text }]
    : [...pieces, { start: end, end, text }]
}

/** The same piece in the pattern's own text, whose lines are the same but for those of the gauge. */
export function movedPiece(
  { start, end, text }: Piece,
  joined: string,
  own: string,
  ownLine: (line: number) => number,
): Piece {
  const lines = own.split("\n")
  const moved = (offset: number) => {
    const before = joined.slice(0, offset).split("\n")
    const line = ownLine(before.length)
    const above = lines.slice(0, line - 1).reduce((sum, { length }) => sum + length + 1, 0)
    return above + before.at(-1)!.length
  }
  return { start: moved(start), end: moved(end), text }
}
