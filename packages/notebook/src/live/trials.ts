// Trying a remedy: the change is made to the piece, the rounds it alters are written out and put in the
// place of the old ones, and the new text is read again. Only a text that reads without new problems,
// with the counts that were meant, and lies better than before is offered.

import {
  type CheckResult,
  checkPattern,
  gaugeFromPieces,
  layOutMotif,
} from "@roundwright/assessment"
import { severityOf } from "@roundwright/flatness"
import { type PatternReading, readPattern } from "@roundwright/instructions"
import type { Motif } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import type { LaidOutShape } from "@roundwright/relaxation"
import { findMends, type MendOptions } from "@roundwright/shaping"
import { gaugeFrom } from "@roundwright/stitches"
import { joinGauge } from "../join-gauge.ts"
import { movedPiece, type Piece, piecesFor, rewrite } from "./rewrite-rounds.ts"

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
 * @param shape the piece laid out, where that is known already
 */
export function tryRemedies(
  own: string,
  gauge: readonly string[],
  remedies: readonly Listed[],
  shape: LaidOutShape | null = null,
): (TriedRemedy | null)[] {
  const { joined, title } = gauge.length > 0 ? joinGauge(own, gauge) : { joined: own, title: 0 }
  const reading = readPattern(joined)
  const ownLine = (line: number) => (line > title ? line - gauge.length : line)
  try {
    const changed = changedPieces(reading, remedies, shape)
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
  known: LaidOutShape | null,
): (remedy: Listed) => Motif | null {
  const listed = ({ round, change }: { round: number; change: string }) => `${round}: ${change}`
  const found = new Map<string, Motif | null>()
  // What the ledger alone judged is found again at once; what the net judged is looked for only if it must be.
  const own = gaugeFromPieces(motif, gaugeFrom(gauge)).gauge
  const add = (options: MendOptions): void => {
    for (const mend of findMends(motif, own, { terms, ...options }))
      found.set(listed(mend), mend.motif)
  }
  add({ judge: "ledger" })
  if (remedies.some((remedy) => !found.has(listed(remedy)))) {
    const shape = known ?? layOutMotif(motif, own)
    if (!("fault" in shape)) add({ judge: "net", shape })
  }
  return (remedy) => found.get(listed(remedy)) ?? null
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
