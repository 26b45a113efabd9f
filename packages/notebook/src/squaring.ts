// Squaring a pattern: rounds proposed that turn its last round into a polygon with straight sides, each
// with the pattern's text as it would be with them. The search is shaping's; it takes seconds.

import { examinePattern } from "@roundwright/assessment"
import { readPattern } from "@roundwright/instructions"
import { countRound } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import { assumedScWidthMm } from "@roundwright/relaxation"
import {
  baseWords,
  type CornerStyle,
  cornerTable,
  type HeightRow,
  type PublishedProposal,
  patternUpTo,
  publishProposal,
  readStitchList,
  type SquareOptions,
  squareCircle,
  termsOfStitchList,
  usualStitches,
} from "@roundwright/shaping"
import { type Gauge, kindName, type Terms } from "@roundwright/stitches"
import { joinGauge } from "./join-gauge.ts"

/** How the added rounds are to be, whatever they are added to. */
export interface SquaringWishes {
  /** 3 to 12. */
  readonly corners: number
  /** Rounds to add, 1 to 12, a straightening round not counted. */
  readonly rounds: number
  /** Stitches allowed, by name, separated by commas; the usual ones when absent. */
  readonly stitches?: string
  /** Any when absent. */
  readonly cornerStyle?: CornerStyle
  /** The stitch of a last round that straightens the sides; there is none when absent. */
  readonly straighten?: string
}

/** What is asked for of a pattern. */
export interface SquaringRequest extends SquaringWishes {
  /** Number of the round to begin on; the last when absent. */
  readonly fromRound?: number
  /** Terms of what is written; the pattern's own when absent. */
  readonly terms?: Terms
}

/** What came of it: proposals, best first, or why there are none. */
export type SquaringResult =
  | {
      /** Lengths in mm; where the gauge knows none, of worsted yarn, and the notes say so. */
      readonly proposals: readonly PublishedProposal[]
      /** Side and corner heights of the best proposal, in mm. */
      readonly heights: readonly HeightRow[]
      /** The stitches that were allowed, and that of a last round, in the terms of what is written. */
      readonly stitches: readonly string[]
      readonly straighten: string | null
      /** What must be said beside them, in sentences. */
      readonly toKnow: readonly string[]
    }
  | { readonly fault: string; readonly hint: string }

/** What a squaring cell asks for when it says nothing else. */
export const usualSquaring = { corners: 4, rounds: 2 } as const

/** The search takes minutes on larger edges; this is a plate-sized piece in dc. */
const mostStitches = 150

/** Tells one search from another. */
export function searchKey(
  own: string,
  gauge: readonly string[],
  { corners, rounds, stitches, cornerStyle, straighten, fromRound, terms }: SquaringRequest,
): string {
  const wishes = [corners, rounds, stitches, cornerStyle, straighten, fromRound, terms]
  return JSON.stringify([own.replace(/\r\n?/g, "\n"), gauge, ...wishes])
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
  try {
    const text = request.fromRound === undefined ? own : patternUpTo(own, request.fromRound)
    return squareText(own, text, gauge, request)
  } catch (error) {
    if (!(error instanceof RoundwrightError)) throw error
    return { fault: error.message, hint: error.hint }
  }
}

/** @param own the whole pattern, which tells of its sizes and skew @param text what of it is gone on from */
function squareText(
  own: string,
  text: string,
  gauge: readonly string[],
  request: SquaringRequest,
): SquaringResult {
  const joined = (part: string) => (gauge.length > 0 ? joinGauge(part, gauge).joined : part)
  const whole = examinePattern(joined(own), { lean: true, remedies: false })
  const { gauge: sizes } = whole
  const reading = text === own ? whole.reading : readPattern(joined(text))
  const { motif, rounds } = reading
  const last = motif.rounds.at(-1)
  if (!last)
    return { fault: "No round could be read.", hint: "Write the rounds of a circle first." }
  if (!sizes) {
    const problem = whole.result.problems.find(({ severity }) => severity === "error")
    return { fault: problem?.message ?? "Its gauge cannot be used.", hint: problem?.hint ?? "" }
  }
  if (motif.rounds.length < rounds.length)
    return {
      fault: `Only ${motif.rounds.length} of ${rounds.length} rounds could be read.`,
      hint: `Mend the text first, or begin on an earlier round with From round: ${last.number}.`,
    }
  const { stitches, chains } = countRound(last)
  if (stitches + chains > mostStitches)
    return {
      fault: `The last round has ${stitches + chains} stitches and chains, more than ${mostStitches}.`,
      hint: "Begin on an earlier round, such as From round: 4.",
    }
  const terms = request.terms ?? reading.terms
  const options = optionsFor(request, reading.terms)
  const proposals = squareCircle(motif, sizes, { ...options, terms, judgeAllInSpace: true })
  const base = baseWords(motif, sizes)
  return {
    proposals: proposals.map((proposal) => publishProposal(proposal, text, sizes, terms)),
    heights: inMillimetres(cornerTable(proposals[0]!), sizes),
    stitches: (options.stitches ?? usualStitches).map((kind) => kindName(kind, terms)),
    straighten: options.lastStraightRound ? kindName(options.lastStraightRound, terms) : null,
    toKnow: [
      ...(base === null ? [] : [base]),
      ...whole.gaugeNotes,
      ...otherTerms(request, reading.terms),
    ],
  }
}

/** What is asked for as the search takes it. @param terms of stitches named in it @throws RoundwrightError for unknown ones */
export function optionsFor(
  { corners, rounds, stitches, cornerStyle, straighten }: SquaringWishes,
  terms: Terms,
): SquareOptions {
  const [last] = straighten === undefined ? [] : readStitchList(straighten, terms)
  return {
    corners,
    rounds,
    proposals: mostProposals,
    ...(stitches === undefined ? {} : { stitches: readStitchList(stitches, terms) }),
    ...(cornerStyle === undefined ? {} : { cornerStyle }),
    ...(last ? { lastStraightRound: last } : {}),
  }
}

/** Said where stitches are named in other terms than the pattern's. */
function otherTerms({ stitches, straighten }: SquaringWishes, terms: Terms): string[] {
  const named = [stitches, straighten].filter((list) => list !== undefined)
  const other = named.map((list) => termsOfStitchList(list, terms)).find((one) => one !== terms)
  return other
    ? [`The stitches asked for are read as ${other} names; the pattern is in ${terms} terms.`]
    : []
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
