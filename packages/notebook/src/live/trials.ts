// Trying a remedy: the change is made to the piece, the rounds it alters are written out and put in the
// place of the old ones, and the new text is read again. Only a text that reads without new problems,
// with the counts that were meant, and lies better than before is offered.

import { type CheckResult, checkPattern } from "@roundwright/assessment"
import { severityOf } from "@roundwright/flatness"
import {
  type PatternReading,
  readPattern,
  sameRound,
  writePattern,
} from "@roundwright/instructions"
import type { Motif } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import { findMends } from "@roundwright/shaping"
import { gaugeFrom } from "@roundwright/stitches"
import { joinGauge } from "../patterns.ts"

/** What trying one remedy comes to. */
export interface TriedRemedy {
  /** The pattern's text with the remedy worked in; null where that cannot be written safely. */
  readonly text: string | null
  /** Line of the round to change, from 1, in the pattern's text. */
  readonly line: number
}

/** A remedy as it is listed. */
type Listed = CheckResult["remedies"][number]

/**
 * Tries each remedy of a pattern, in the order they are listed; null where there is nothing to change.
 * @param own the pattern's own text
 * @param gauge lines of the gauge cell that is set over it, if any
 */
export function tryRemedies(
  own: string,
  gauge: readonly string[],
  remedies: readonly Listed[],
): (TriedRemedy | null)[] {
  const { joined, title } = gauge.length > 0 ? joinGauge(own, gauge) : { joined: own, title: 0 }
  const reading = readPattern(joined)
  const ownLine = (line: number) => (line > title ? line - gauge.length : line)
  try {
    const changed = changedPieces(reading, remedies)
    return remedies.map((remedy) => {
      const place = reading.rounds.find(({ number }) => number === remedy.round)
      const motif = changed(remedy)
      if (!place || motif === reading.motif) return null
      const pieces = motif && tryPiece(joined, reading, motif)
      const text =
        pieces &&
        rewrite(
          own,
          pieces.map((piece) => movedPiece(piece, joined, own, ownLine)),
        )
      return { text, line: ownLine(place.line) }
    })
  } catch (error) {
    if (!(error instanceof RoundwrightError)) throw error
    return remedies.map(() => null)
  }
}

/** The piece each remedy makes: null where the change is none of stitches; the piece itself where nothing is to be changed. */
function changedPieces(
  { motif, gauge, terms }: PatternReading,
  remedies: readonly Listed[],
): (remedy: Listed) => Motif | null {
  const listed = ({ round, change }: { round: number; change: string }) => `${round}: ${change}`
  const found = new Map<string, Motif | null>()
  // What the ledger alone judged is found again at once; what the net judged is looked for only if it must be.
  for (const judge of ["ledger", "net"] as const) {
    if (remedies.every((remedy) => found.has(listed(remedy)))) break
    for (const mend of findMends(motif, gaugeFrom(gauge), { terms, judge }))
      found.set(listed(mend), mend.motif)
  }
  return (remedy) => found.get(listed(remedy)) ?? null
}

/** Characters from `start` up to `end` give way to `text`. */
interface Piece {
  readonly start: number
  readonly end: number
  readonly text: string
}

function tryPiece(pattern: string, reading: PatternReading, changed: Motif): Piece[] | null {
  try {
    const pieces = piecesFor(pattern, reading, changed)
    return pieces && holds(rewrite(pattern, pieces), pattern, changed) ? pieces : null
  } catch (error) {
    if (error instanceof RoundwrightError) return null
    throw error
  }
}

function rewrite(text: string, pieces: readonly Piece[]): string {
  let written = ""
  let at = 0
  for (const piece of pieces) {
    written += text.slice(at, piece.start) + piece.text
    at = piece.end
  }
  return written + text.slice(at)
}

/** The same piece in the pattern's own text, whose lines are the same but for those of the gauge. */
function movedPiece(
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

/** The rounds that differ, written anew; null where the piece as a whole cannot be written. */
function piecesFor(pattern: string, reading: PatternReading, changed: Motif): Piece[] | null {
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

/** True when the new text says what was meant, breaks nothing, and lies better than the old, or flat like it. */
function holds(text: string, pattern: string, meant: Motif): boolean {
  const [after, before] = [checkPattern(text), checkPattern(pattern)]
  const faults = (result: typeof after) =>
    result.problems.filter(({ severity }) => severity !== "note").length
  if (!after.laidOut || !before.laidOut || faults(after) > faults(before)) return false
  if (after.ledger.length !== meant.rounds.length) return false
  const read = readPattern(text).motif
  const same = meant.rounds.every((round, index) => {
    const its = read.rounds[index]
    return its !== undefined && its.elements.length === round.elements.length
  })
  const [worse, better] = [before, after].map(({ laidOut }) => severityOf(laidOut!.verdict))
  return same && (better! < worse! || better === 0)
}
