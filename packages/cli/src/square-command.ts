// `roundwright square FILE`: turns the last round of a pattern, or an earlier one, into k straight sides.

import { type CheckResult, examinePattern, formatLength } from "@roundwright/assessment"
import { listed, withStarts, writeRounds } from "@roundwright/instructions"
import type { Motif } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import { assumedScWidthMm } from "@roundwright/relaxation"
import {
  baseWords,
  cornerTable,
  leadToCount,
  patternUpTo,
  publishProposal,
  type RoundsForSide,
  readStitchList,
  roundsForSide,
  type SquareOptions,
  squareCircle,
  termsOfStitchList,
} from "@roundwright/shaping"
import { type Gauge, kindName, type Terms } from "@roundwright/stitches"
import { heightsTable } from "./heights-table.ts"
import { holdsPatterns, patternsOf } from "./notebook-patterns.ts"
import { oneOf, quoted, readLengthMm, wholeNumber } from "./option-values.ts"
import { printProposals } from "./print-proposals.ts"
import { readText } from "./read-file.ts"
import type { Surroundings } from "./surroundings.ts"
import { wrap } from "./wrap.ts"

export interface SquareRequest {
  readonly files: readonly string[]
  readonly corners: number
  /** Null for the usual two, or as many as `side` takes. */
  readonly rounds: number | null
  /** The side that is wanted instead of a number of rounds, such as 12cm. */
  readonly side?: string | undefined
  /** Stitches that one even round shall lead to; nothing is squared then. */
  readonly count: number | null
  readonly stitches?: string | undefined
  /** Number of the round to begin on; the last when absent. */
  readonly "from-round"?: string | undefined
  readonly "corner-style"?: string | undefined
  /** Stitch of a last straightening round. */
  readonly straighten?: string | undefined
  /** Terms of what is written; the pattern's own when absent. */
  readonly terms?: string | undefined
  readonly json: boolean
}

/** @throws RoundwrightError for options that make no sense; the caller prints it */
export async function runSquare(request: SquareRequest, around: Surroundings): Promise<number> {
  const refuse = (why: string) => {
    around.err(`${wrap(`roundwright square: ${why}`, 80)}\n`)
    return 2
  }
  const [file, ...others] = request.files
  if (file === undefined) return refuse("name the pattern file whose last round is to be squared.")
  if (others.length > 0) return refuse("one pattern at a time, please: several files are named.")
  const read = readText(around.cwd, file)
  if ("fault" in read) return refuse(read.fault)
  const own = await patternOf(read.text)
  if ("fault" in own) return refuse(`${file} ${own.fault}`)
  const from = request["from-round"]
  const text =
    from === undefined ? own.text : patternUpTo(own.text, wholeNumber(from, "--from-round"))
  // Sizes and skew are told of the whole piece, whatever round the squaring begins on.
  const whole = examinePattern(own.text, { lean: true, remedies: false })
  const { gauge, gaugeNotes } = whole
  const { result, reading } = from === undefined ? whole : examinePattern(text, { remedies: false })
  const fault = faultOf(result, gauge !== null && reading.motif.rounds.length > 0)
  if (fault !== null || !gauge) return refuse(fault ?? "the pattern could not be read.")
  const terms = termsAsked(request, reading.terms)
  if (request.count !== null) return leadEvenly(request, reading, terms, around)
  const wanted = { ...wishes(request, reading.terms), terms }
  const side = sideOf(request, gauge)
  const forSide = side === null ? null : roundsForSide(reading.motif, gauge, wanted, side)
  const rounds = forSide?.rounds ?? request.rounds ?? usualRounds
  const found = squareCircle(reading.motif, gauge, { ...wanted, rounds, judgeAllInSpace: true })
  const proposals = found.map((proposal) => publishProposal(proposal, text, gauge, terms))
  const base = baseWords(reading.motif, gauge)
  // Rounds added to one that stands for its total rest on it, however sure the total is.
  const problems = result.problems.filter(
    ({ severity, code }) => severity === "warning" || code === "read-with-gap",
  )
  if (request.json) around.out(`${JSON.stringify({ base, proposals, problems }, null, 2)}\n`)
  else {
    const toKnow = [
      ...(forSide === null ? [] : [sideWords(forSide, gauge)]),
      ...problems.map(({ line, message }) => `The pattern, line ${line}: ${message}`),
      ...gaugeNotes,
      ...listTermsNote(request, reading.terms),
    ]
    const heights = heightsTable(cornerTable(found[0]!), found[0]!.corners, gauge)
    around.out(
      [...printProposals(proposals, request.corners, toKnow, base), "", ...heights, ""].join("\n"),
    )
  }
  return proposals[0]!.verdict === "flat" ? 0 : 1
}

/** The one pattern of a file, which may be a notebook. */
async function patternOf(text: string): Promise<{ text: string } | { fault: string }> {
  if (!holdsPatterns(text)) return { text }
  const found = (await patternsOf(text)).flatMap((one) =>
    one.text === null ? [] : [{ name: one.name, text: one.text }],
  )
  const [first, ...others] = found
  if (!first) return { fault: "is a notebook, and no pattern in it can be read." }
  if (others.length === 0) return first
  const names = listed(found.map(({ name }) => name ?? "?"))
  return {
    fault: `is a notebook of ${found.length} patterns (${names}). Put the one to be squared in a file of its own, or a squaring cell in the notebook.`,
  }
}

/** Why nothing can be added to the pattern, or null. */
function faultOf(result: CheckResult, worked: boolean): string | null {
  const error = result.problems.find((problem) => problem.severity === "error")
  const where =
    error && error.round !== null && error.round > 1
      ? ` Mend it, or begin on an earlier round with --from-round ${error.round - 1}.`
      : ""
  if (error)
    return `the pattern could not be read to its end. Line ${error.line}: ${error.message}${where}`
  return worked
    ? null
    : "no round with a stitch in it was found, so there is nothing to go on from."
}

function termsAsked({ terms }: SquareRequest, own: Terms): Terms {
  return terms === undefined ? own : oneOf(terms, ["US", "UK"] as const, "--terms")
}

/** Rounds added where neither rounds nor a side are asked for. */
const usualRounds = 2

/** The wanted side in the gauge's unit. */
function sideOf({ side, rounds }: SquareRequest, gauge: Gauge): number | null {
  if (side === undefined) return null
  if (rounds !== null)
    throw new RoundwrightError("two-sizes", "Both a side and a number of rounds are given.", {
      hint: "The one follows from the other: leave one of them out.",
    })
  return readLengthMm(side) / mmPerUnitOf(gauge)
}

function mmPerUnitOf(gauge: Gauge): number {
  return gauge.absolute ? 1 : assumedScWidthMm / gauge.scWidthMm
}

function sideWords({ rounds, sideMm, plainRoundMm, stitch }: RoundsForSide, gauge: Gauge): string {
  const mm = (value: number) => formatLength(value * mmPerUnitOf(gauge))
  const many = rounds === 1 ? "One round comes" : `${rounds} rounds come`
  return `${many} nearest to the side asked for, at about ${mm(sideMm)}; a plain round of ${stitch} more or fewer makes ${mm(plainRoundMm)}. A last round of a lower or taller stitch closes the gap.`
}

/** One round with the stitches spread or drawn together evenly. */
function leadEvenly(
  request: SquareRequest,
  { motif }: { readonly motif: Motif },
  terms: Terms,
  around: Surroundings,
): number {
  const kind = oneStitch(request.straighten ?? kindName({ basic: "sc" }, terms), terms)
  const made = leadToCount(motif, kind, request.count!)
  const rounds = writeRounds(withStarts(made, motif.rounds.length), motif.rounds.length, terms)
  if (request.json) around.out(`${JSON.stringify({ rounds }, null, 2)}\n`)
  else around.out(`${rounds.map((round) => wrap(round, 80, "", "  ")).join("\n")}\n`)
  return 0
}

function wishes(request: SquareRequest, terms: Terms): Omit<SquareOptions, "rounds"> {
  const { corners, stitches, straighten } = request
  const style = request["corner-style"]
  return {
    corners,
    ...(stitches === undefined ? {} : { stitches: readStitchList(stitches, terms) }),
    ...(straighten === undefined ? {} : { lastStraightRound: oneStitch(straighten, terms) }),
    ...(style === undefined
      ? {}
      : { cornerStyle: oneOf(style, ["any", "chains", "stitches"] as const, "--corner-style") }),
  }
}

function oneStitch(text: string, terms: Terms) {
  const [kind, ...others] = readStitchList(text, terms)
  if (kind && others.length === 0) return kind
  throw new RoundwrightError("no-choice", `--straighten takes one stitch, not ${quoted(text)}.`, {
    hint: `Such as: --straighten ${kindName({ basic: "sc" }, terms)}.`,
  })
}

/** Said where stitches are named in other terms than the pattern's. */
function listTermsNote({ stitches, straighten }: SquareRequest, terms: Terms): string[] {
  const named = [stitches, straighten].filter((list) => list !== undefined)
  const other = named.map((list) => termsOfStitchList(list, terms)).find((own) => own !== terms)
  return other
    ? [`The stitches you name are read as ${other} names; the pattern is in ${terms} terms.`]
    : []
}
