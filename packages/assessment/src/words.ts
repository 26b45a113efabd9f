// The words of a result, shared by the terminal and the pages: the verdict as a sentence, numbers
// with units and sensible digits (mm to 1, cm to 0.1, per cent to 1).

import {
  bands,
  type LedgerRow,
  type Odds,
  openRange,
  ownFullness,
  type Verdict,
} from "@roundwright/flatness"
import { acrossOf } from "./laid-out.ts"
import type { CheckResult, LaidOut } from "./result.ts"

const verdictWords: Record<Verdict, string> = {
  flat: "lies flat",
  "blocks-flat": "blocks flat",
  cups: "cups",
  ruffles: "ruffles",
}

/** `lies flat`, `blocks flat`, `cups`, `ruffles`. */
export function verdictWord(verdict: Verdict): string {
  return verdictWords[verdict]
}

/** One sentence: what the piece does, from which round, and how much of it is assumed. */
export function verdictSentence(result: CheckResult): string {
  const laidOut = result.laidOut
  if (!laidOut)
    return result.motif ? "No verdict: it has no measure." : "No verdict: no round could be read."
  const judged = result.rounds.filter(({ verdict }) => verdict !== null)
  const assumed = judged.filter((round) => round.assumed).length
  const sentence = verdictOf(laidOut)
  if (assumed === 0) return sentence
  const of = `${assumed} of its ${judged.length} rounds ${assumed === 1 ? "is" : "are"} assumed`
  return `${sentence.slice(0, -1)}; ${of}.`
}

function verdictOf(laidOut: LaidOut): string {
  const from = laidOut.fromRound === null ? "" : ` from round ${laidOut.fromRound}`
  if (laidOut.verdict !== "blocks-flat")
    return `${capitalised(verdictWord(laidOut.verdict))}${from}.`
  const stretch = laidOut.meanStretch ?? laidOut.blockingStretch
  const off = laidOut.fromRound === null ? "Blocks flat" : `Blocks flat: off${from}`
  // Beyond what pins take up the word stands only because other hands work it flat.
  if (stretch !== null && stretch > mostPinned) return `${off}; ${byHand(laidOut)}.`
  const by = stretch === null ? "" : `; a stretch of ${formatPercent(stretch)} takes it up`
  return `${off}${by}.`
}

const mostPinned = Math.max(bands.blocksFull, 1 / (1 - bands.blocksLean) - 1) + 1e-9

/** Where hands differ so much that one works flat what another does not. */
function byHand({ odds }: LaidOut): string {
  return odds.cups > odds.ruffles
    ? "a loose hand works it flat, in a tight one it cups"
    : "a tight hand works it flat, in a looser one it ruffles"
}

/** The piece in one line: title, rounds, corners, size, terms; empty when nothing was laid out. */
export function factsSentence(result: CheckResult): string {
  const { motif, laidOut } = result
  if (!motif || !laidOut) return ""
  const facts = [motif.rounds === 1 ? "1 round" : `${motif.rounds} rounds`]
  const corners = laidOut.corners ?? motif.corners
  const { acrossMm, cornerReachMm } = laidOut
  if (corners > 0) facts.push(`${corners} corners`)
  if (acrossMm !== null) {
    facts.push(`about ${formatLength(acrossMm)} across`)
    const tips = corners > 0 && corners % 2 === 0 ? 2 * (cornerReachMm ?? 0) : 0
    const told = tips > acrossMm && formatLength(tips) !== formatLength(acrossMm)
    if (told) facts.push(`${formatLength(tips)} corner to corner`)
    facts.push(...squareness(laidOut, corners))
    if (standsUp(laidOut.verdict)) facts.push("pressed flat")
  }
  return `${motif.title ?? "Untitled"}: ${facts.join(", ")}; ${result.terms} terms.`
}

/** Corners that are off by no more than this many degrees, and sides that bow by no more than this share, are true. */
const trueWithin = { degrees: 3, bow: 0.02 } as const

/** How true a cornered outline is: its sides, and the angle of its corners. */
function squareness({ bowMm, sideMm, cornerAngleDeg }: LaidOut, corners: number): string[] {
  if (corners < 3 || bowMm === null || cornerAngleDeg === null) return []
  const side = sideMm ?? 0
  const straight = Math.abs(bowMm) <= trueWithin.bow * side
  const told = straight
    ? "sides straight"
    : `sides bow ${bowMm > 0 ? "out" : "in"} by ${formatLength(Math.abs(bowMm))}`
  const polygon = 180 - 360 / corners
  const corner =
    Math.abs(cornerAngleDeg - polygon) <= trueWithin.degrees
      ? "corners true"
      : `corners of ${Math.round(cornerAngleDeg)}°`
  return [`${told}${side > 0 ? `, ${formatLength(side)} along the edge` : ""}`, corner]
}

/** Cups and ruffles are less wide as they stand than pressed flat, which is how sizes are told. */
function standsUp(verdict: Verdict): boolean {
  return verdict === "cups" || verdict === "ruffles"
}

/** How sure the verdict is, in words and per cent. */
export function oddsSentence(odds: Odds): string {
  const parts: [string, number][] = [
    ["flat", odds.flat],
    ["blocks flat", odds.blocksFlat],
    ["cups", odds.cups],
    ["ruffles", odds.ruffles],
  ]
  const told = parts
    .filter(([, chance]) => Math.round(100 * chance) > 0)
    .map(([word, chance]) => `${word} ${formatPercent(chance)}`)
  return `How sure: ${told.join(", ")}.`
}

/** Centimetres to 0.1, below 2 cm millimetres to 1. */
export function formatLength(mm: number): string {
  return Math.abs(mm) < 20 ? `${Math.round(mm)} mm` : `${(mm / 10).toFixed(1)} cm`
}

/** A share as per cent to 1: 0.183 -> `18 %`. */
export function formatPercent(share: number): string {
  return `${Math.round(100 * share)} %`
}

/** The round's own fullness; a dash where that says nothing. */
export function ownFullnessText(row: LedgerRow): string {
  const own = row.inFront ? null : ownFullness(row)
  return own === null ? "-" : formatFullness(own)
}

/** The word of a row of the ledger: what the piece so far does, or that the round is no part of its ground. */
export function rowWord(row: LedgerRow): string {
  return row.inFront ? "in front" : verdictWord(row.verdict)
}

/** Fullness of the piece so far: one figure, or the range that loops, scallops and corners leave open; a dash in front of it. */
export function soFarText(row: LedgerRow): string {
  if (row.inFront) return "-"
  const range = openRange(row)
  if (range === null) return formatFullness(row.accumulatedFullness)
  const [least, most] = range
  return `${least.toFixed(1)}-${Math.min(most, mostTold).toFixed(1)}`
}

/** A range that reaches further is told to reach so far. */
const mostTold = 9.9

/**
 * The size of the piece after each round of the ledger, through the middle, as it comes to lie: in mm by whoever laid the piece
 * out, else in widths of one stitch by the growth of its rounds.
 */
export function acrossAfterRounds({ laidOut, ledger }: CheckResult): readonly number[] {
  return ledger.map((row, index) => laidOut?.acrossAfterRoundMm[index] ?? acrossOf(row))
}

/** Fullness to two decimals; 1.00 is flat. */
export function formatFullness(fullness: number): string {
  return fullness.toFixed(2)
}

export function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}
