// Squaring a pattern: rounds proposed that turn its last round into a polygon with straight sides, each
// with the pattern's text as it would be with them. The search is shaping's; it takes seconds.

import { readPattern } from "@roundwright/instructions"
import { countRound } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import { assumedScWidthMm } from "@roundwright/relaxation"
import {
  cornerTable,
  type HeightRow,
  type PublishedProposal,
  publishProposal,
  readStitchList,
  squareCircle,
} from "@roundwright/shaping"
import { type Gauge, gaugeFrom } from "@roundwright/stitches"
import { joinGauge } from "./patterns.ts"

/** What is asked for. */
export interface SquaringRequest {
  /** 3 to 12. */
  readonly corners: number
  /** Rounds to add, 1 to 4. */
  readonly rounds: number
  /** Stitches allowed, by name, separated by commas. */
  readonly stitches: string
}

/** What came of it: proposals, best first, or why there are none. */
export type SquaringResult =
  | {
      /** Lengths in mm; where the gauge knows none, of worsted yarn, and the notes say so. */
      readonly proposals: readonly PublishedProposal[]
      /** Side and corner heights of the best proposal, in mm. */
      readonly heights: readonly HeightRow[]
    }
  | { readonly fault: string; readonly hint: string }

/** What a squaring cell asks for when it says nothing else. */
export const usualSquaring: SquaringRequest = { corners: 4, rounds: 2, stitches: "sc,hdc,dc,tr" }

/** The search takes minutes on larger edges; this is a plate-sized piece in dc. */
const mostStitches = 150

/** Tells one search from another. */
export function searchKey(
  own: string,
  gauge: readonly string[],
  { corners, rounds, stitches }: SquaringRequest,
): string {
  return JSON.stringify([own.replace(/\r\n?/g, "\n"), gauge, corners, rounds, stitches])
}

/** More than a maker compares. */
const mostProposals = 3

/**
 * Proposals for a pattern. Never throws on anything a text can hold.
 * @param own the pattern's own text
 * @param gauge lines of the gauge cell that is set over it, if any
 */
export function squarePattern(
  own: string,
  gauge: readonly string[],
  request: SquaringRequest,
): SquaringResult {
  const reading = readPattern(gauge.length > 0 ? joinGauge(own, gauge).joined : own)
  const { motif, rounds } = reading
  const last = motif.rounds.at(-1)
  if (!last)
    return { fault: "No round could be read.", hint: "Write the rounds of a circle first." }
  if (motif.rounds.length < rounds.length)
    return {
      fault: `Only ${motif.rounds.length} of ${rounds.length} rounds could be read.`,
      hint: "Mend the text first: new rounds are added after the last one.",
    }
  const { stitches, chains } = countRound(last)
  if (stitches + chains > mostStitches)
    return {
      fault: `The last round has ${stitches + chains} stitches and chains, more than ${mostStitches}.`,
      hint: "Square the piece at an earlier round.",
    }
  try {
    const sizes = gaugeFrom(reading.gauge)
    const proposals = squareCircle(motif, sizes, {
      corners: request.corners,
      rounds: request.rounds,
      stitches: readStitchList(request.stitches),
      proposals: mostProposals,
    })
    const best = proposals[0]
    return {
      proposals: proposals.map((proposal) => publishProposal(proposal, own, sizes)),
      heights: best ? inMillimetres(cornerTable(best, sizes), sizes) : [],
    }
  } catch (error) {
    if (!(error instanceof RoundwrightError)) throw error
    return { fault: error.message, hint: error.hint }
  }
}

function inMillimetres(rows: readonly HeightRow[], gauge: Gauge): HeightRow[] {
  const mmPerUnit = gauge.absolute ? 1 : assumedScWidthMm / gauge.scWidthMm
  return rows.map((row) => ({
    ...row,
    fromMm: row.fromMm * mmPerUnit,
    toMm: row.toMm * mmPerUnit,
    mustMm: row.mustMm * mmPerUnit,
    movesMm: row.movesMm * mmPerUnit,
    leftMm: row.leftMm * mmPerUnit,
  }))
}
