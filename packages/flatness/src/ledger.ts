// The ledger of a motif: rows, verdict, odds and what must be said beside them.

import { commonDivisor, type Motif, repeatsOf } from "@roundwright/motif"
import { basicName, type Gauge, type Terms } from "@roundwright/stitches"
import { foldLedger } from "./fold.ts"
import { judgePiece } from "./judge.ts"
import type { Ledger, LedgerRow } from "./result.ts"
import { type PieceSummary, shortestLoop, summarisePiece } from "./summary.ts"
import { bands } from "./verdict.ts"
import { wallOf } from "./wall.ts"

export interface Hand {
  /** Every height against every width, 1 for the gauge as it is: a tighter or looser hand. */
  readonly heightFactor?: number
  /** In whose names stitches are told; US when absent. */
  readonly terms?: Terms
}

/**
 * Judges a motif by increase theory: edge growth against flat growth, round by round.
 * Lengths in mm (in sc widths when `gauge.absolute` is false).
 * @throws RoundwrightError `broken-motif`
 */
export function keepLedger(motif: Motif, gauge: Gauge, hand: Hand = {}): Ledger {
  return ledgerOf(motif, summarisePiece(motif, gauge), hand)
}

/** The same of a motif that is summed up already. */
export function ledgerOf(motif: Motif, piece: PieceSummary, hand: Hand = {}): Ledger {
  const judged = judgePiece(foldLedger(piece, hand.heightFactor), piece)
  const { rows } = judged
  return {
    ...judged,
    bowed: bowedNote(rows.at(-1)),
    uneven: unevenNote(motif, rows),
    notes: notesOn(piece, rows, hand.terms ?? "US"),
  }
}

/** Slack worth a word: a tenth of the edge. */
const tellingSlack = 0.1

/** A share that whole counts make exactly is no more than itself on any engine. */
const rounding = 1e-9

/** A cornered outline this far from sharp comes out with visibly bowed sides. */
const bowedSharpness = 0.75

/** Beyond eight stacked increases nobody sees a polygon. */
const mostNamedCorners = 8

function bowedNote(last: LedgerRow | undefined): string | null {
  if (!last || last.outline.corners === 0 || last.outline.sharpness >= bowedSharpness) return null
  const { sharpness, corners } = last.outline
  return `The edge is too short for sharp corners (${Math.round(100 * sharpness)} % of the way from a circle to ${aPolygon(corners)}): its sides bow outward.`
}

function notesOn(piece: PieceSummary, rows: readonly LedgerRow[], terms: Terms): string[] {
  const notes: string[] = []
  const guessed = new Set(piece.rounds.flatMap((round) => [...round.extrapolated]))
  if (guessed.size > 0)
    notes.push(
      `Sizes of ${[...guessed].map((basic) => basicName(basic, terms)).join(", ")} are extrapolated, not measured: a swatch of them would settle it.`,
    )
  const fanned = rows.filter((_, index) => piece.rounds[index]!.fanSlackMm > 0)
  if (fanned.length > 0)
    notes.push(
      `The fans of ${roundsInWords(fanned)} open out into a scalloped edge: they need not lie along the round, so their length is not counted as too full.`,
    )
  const slack = rows.filter(
    (row, index) =>
      row.slackMm > tellingSlack * (1 + rounding) * row.edgeMm &&
      row.accumulatedFullness <= 1 + bands.flat &&
      piece.rounds[index]!.runs.some(({ chains }) => chains >= shortestLoop),
  )
  if (slack.length > 0)
    notes.push(
      `Chain loops hang slack in ${roundsInWords(slack)}: counted as solid edge they would look too full, but a slack loop is no ruffle.`,
    )
  const straight = rows.filter(
    (row, index) =>
      piece.rounds[index]!.netShare > 0 && row.accumulatedFullness < 1 && row.verdict !== "flat",
  )
  if (straight.length > 0)
    notes.push(
      `The loops of ${roundsInWords(straight)} hang on loops and are drawn straight: chains give only half of what solid fabric gives, so less that is missing makes them cup.`,
    )
  const wall = wallOf(rows, piece)
  if (wall !== null && rows.at(-1)!.verdict === "cups")
    notes.push(
      `Rounds ${rows[wall.first]!.round} to ${rows.at(-1)!.round} add nothing to the base below: they stand up as a wall. How far they draw in is counted from that base, which its maker made to lie flat.`,
    )
  const last = rows.at(-1)
  const stacked = piece.rounds.at(-1)?.stacked ?? 0
  if (last?.outline.corners === 0 && stacked >= 3 && stacked <= mostNamedCorners)
    notes.push(
      `The increases stand over one another, so the outline will read as ${aPolygon(stacked)}; that is a matter of shape, not of flatness. Shift them from round to round to keep it round.`,
    )
  const ornaments = rows.filter((_, index) => !piece.rounds[index]!.ground)
  if (ornaments.length > 0)
    notes.push(
      `Nothing is worked into ${roundsInWords(ornaments)}: judged as decoration standing in front, not as part of the ground.`,
    )
  return notes
}

/** With its article: "a square", "an octagon". */
function aPolygon(corners: number): string {
  const name = polygonName(corners)
  return `${/^[aeiou]/.test(name) ? "an" : "a"} ${name}`
}

export function polygonName(corners: number): string {
  const names: Record<number, string> = {
    3: "triangle",
    4: "square",
    5: "pentagon",
    6: "hexagon",
    8: "octagon",
  }
  return names[corners] ?? `shape with ${corners} corners`
}

function roundsInWords(rows: readonly LedgerRow[]): string {
  const numbers = rows.map((row) => row.round)
  if (numbers.length === 1) return `round ${numbers[0]}`
  return `rounds ${numbers.slice(0, -1).join(", ")} and ${numbers.at(-1)}`
}

/** Six petals under four corners: a quarter turn is no symmetry of the piece, and its sides differ. */
function unevenNote(motif: Motif, rows: readonly LedgerRow[]): string | null {
  const corners = rows.at(-1)?.outline.corners ?? 0
  if (corners < 3) return null
  const repeats = motif.rounds.map((_, index) => repeatsOf(motif, index))
  const odd = repeats.findIndex((order) => order > 1 && order % corners !== 0)
  if (odd < 0 || repeats.some((order) => order === 1)) return null
  const alike = commonDivisor(repeats[odd]!, corners)
  const sides =
    alike > 1 ? `only ${alike} of its ${corners} sides are alike` : "no two of its sides are alike"
  return `Round ${rows[odd]!.round} repeats ${repeats[odd]} times under ${corners} corners: ${sides}.`
}
