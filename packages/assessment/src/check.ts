// Checking one pattern: text -> reading -> gauge -> ledger -> verdict, sizes, remedies.

import {
  keepLedger,
  type Ledger,
  openRange,
  ownFullness,
  rhythmBreaks,
  rhythmSentence,
} from "@roundwright/flatness"
import { type PatternReading, type Problem, readPattern } from "@roundwright/instructions"
import { type Motif, symmetryOf } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import type { LaidOutShape } from "@roundwright/relaxation"
import { type Gauge, gaugeFrom, kindName, type Terms } from "@roundwright/stitches"
import { allFinite, finiteResult } from "./finite-result.ts"
import { gaugeFromPieces, type OddSize } from "./gauge-from-pieces.ts"
import { inTerms } from "./in-terms.ts"
import { laidOutFromLedger } from "./laid-out.ts"
import { type Effort, laidOutFromNet, layOutMotif, shapeNotes } from "./net-shape.ts"
import { remediesFor } from "./remedies.ts"
import type { CheckedRound, CheckResult, LaidOut } from "./result.ts"
import { adviceOnSkew } from "./skew.ts"

export interface CheckOptions {
  /** Name to show for the text, usually its file; null when it has none. */
  readonly file?: string
  /**
   * Who lays the shape out: the ledger (milliseconds; the default) or the elastic net (mostly under a second; it sees
   * lift, waves, bow and skew, and judges).
   */
  readonly shape?: "ledger" | "net"
  /** How much work the net may take; `bounded` by default. */
  readonly effort?: Effort
  /**
   * Whether a skew told in the text goes into the gauge as the lean of the stitches, which takes a few layings out; by
   * default only where the net judges: the ledger knows of no lean.
   */
  readonly lean?: boolean
  /** False: what to change is not looked for, which may take longer than the verdict; `withRemedies` does it later. */
  readonly remedies?: boolean
}

/** Everything a check found, with the parts other steps build on beside the published result. */
export interface Check {
  readonly result: CheckResult
  readonly reading: PatternReading
  /** Null when the gauge the text gives cannot be used; the problem then says why. */
  readonly gauge: Gauge | null
  /** What the text tells of the piece's own sizes and skew and could not be used, in sentences. */
  readonly gaugeNotes: readonly string[]
  readonly ledger: Ledger | null
  /** Only when the net was asked for and could lay the piece out. */
  readonly shape: LaidOutShape | null
}

/** Checks a written pattern. Never throws on anything a text can hold. */
export function checkPattern(text: string, options: CheckOptions = {}): CheckResult {
  return examinePattern(text, options).result
}

/** The same with the reading, gauge and ledger it rests on. */
export function examinePattern(text: string, options: CheckOptions = {}): Check {
  const reading = readPattern(text)
  const problems: Problem[] = [...reading.problems]
  const motif = reading.motif.rounds.length > 0 ? reading.motif : null
  const stated = usableGauge(reading, problems)
  const { gauge, notes, odd } =
    motif && stated
      ? gaugeOfPiece(reading, stated, options.lean ?? options.shape === "net")
      : { gauge: stated, notes: [], odd: [] }
  problems.push(...odd.map((one) => problemOfSize(one, text)))
  const grown = motif && gauge ? keepLedger(motif, gauge, { terms: reading.terms }) : null
  const net = options.shape === "net" && motif && gauge ? { motif, gauge } : null
  const laid = net && layOutMotif(net.motif, net.gauge, options.effort)
  const shape = laid && !("fault" in laid) ? laid : null
  const ledger = grown && judgedLedger(grown, shape)
  const laidOut =
    motif &&
    ledger &&
    gauge &&
    (shape ? laidOutFromNet(shape, motif, gauge) : laidOutFromLedger(ledger, gauge))
  const result: CheckResult = {
    file: options.file ?? null,
    motif: motif && describeMotif(motif, reading.title, ledger),
    terms: reading.terms,
    gauge: describeGaugeUsed(gauge, reading.terms),
    rounds: checkedRounds(reading, ledger, gauge),
    laidOut,
    remedies: [],
    problems,
    ledger: [...(ledger?.rows ?? [])],
    notes: [
      ...notes,
      ...(motif ? rhythmBreaks(motif).map(rhythmSentence) : []),
      ...(ledger?.notes ?? []),
      ...(ledger && laidOut ? notesOnSides(ledger, laidOut) : []),
      ...(shape ? shapeNotes(shape) : []),
      ...(laid && "fault" in laid ? [laid.fault] : []),
      ...(net && laidOut && laidOut.corners !== 0
        ? adviceOnSkew(net.motif, net.gauge, laidOut.skewDeg)
        : []),
    ],
    exitStatus: 2,
  }
  result.exitStatus = exitStatusOf(result)
  const finite = finiteResult(result, reading)
  const sound = finite === result ? { ledger, shape } : { ledger: null, shape: null }
  const check: Check = { result: finite, reading, gauge, gaugeNotes: notes, ...sound }
  return options.remedies === false ? check : { ...check, result: withRemedies(check) }
}

/** The result of a check with what to change. */
export function withRemedies({ result, reading, gauge, shape }: Check): CheckResult {
  const { motif, terms } = reading
  if (result.laidOut === null || !gauge) return result
  const { remedies, notes } = remediesFor({ motif, gauge, terms, shape })
  return { ...result, remedies: remedies.filter(allFinite), notes: [...result.notes, ...notes] }
}

/** The ledger with the one verdict there is: of ledger and shape together where there is a shape. */
function judgedLedger(ledger: Ledger, shape: LaidOutShape | null): Ledger {
  if (shape === null) return ledger
  const { rows, verdict, fullness, odds, fromRound } = shape
  return { ...ledger, rows, verdict, fullness, odds, fromRound }
}

/** Nothing is said of the sides of an outline that is round to the eye; a laid-out shape tells itself how they bow. */
function notesOnSides({ uneven, bowed }: Ledger, { by, corners }: LaidOut): string[] {
  if (corners === 0) return []
  return [uneven, by === "ledger" ? bowed : null].filter((note) => note !== null)
}

/**
 * What was measured of the piece is put into its gauge; a skew is one of all rounds, a finished size too, and tell nothing
 * of some.
 */
function gaugeOfPiece(
  { motif, rounds, gauge, terms }: PatternReading,
  stated: Gauge,
  leanToo: boolean,
) {
  const some = motif.rounds.length < rounds.length
  const usable = some ? withoutFinishedSize(stated) : stated
  const sized = gaugeFromPieces(motif, usable, leanToo && !some)
  const notes = sized.notes.map((note) => inTerms(note, terms))
  const parts = `only ${motif.rounds.length} of ${rounds.length} rounds could be read.`
  if (usable !== stated) notes.push(`The finished size was not used: ${parts}`)
  if (gauge.skewDeg !== undefined && leanToo && some) notes.push(`The skew was not used: ${parts}`)
  return { ...sized, notes }
}

function withoutFinishedSize(gauge: Gauge): Gauge {
  const { pieces = [] } = gauge.input
  const some = pieces.filter(({ round }) => round !== "last")
  return some.length === pieces.length
    ? gauge
    : { ...gauge, input: { ...gauge.input, pieces: some } }
}

/** A size that cannot be is told where the text gives it. */
function problemOfSize({ piece, message, hint }: OddSize, text: string): Problem {
  const { start, end } = piece.place ?? { start: 0, end: 0 }
  const before = text.slice(0, start).split(/\r\n|\r|\n/)
  return {
    severity: "warning",
    code: "size-unlike-gauge",
    round: piece.round === "last" ? null : piece.round,
    line: before.length,
    column: before.at(-1)!.length + 1,
    length: end - start,
    message,
    hint,
  }
}

/** 0 = read and flat, 1 = read and something to mend, 2 = could not be read or used. */
function exitStatusOf(result: CheckResult): 0 | 1 | 2 {
  if (result.laidOut === null) return 2
  const toMend =
    result.problems.some((problem) => problem.severity !== "note") ||
    result.rounds.some((round) => round.assumed)
  return result.laidOut.verdict === "flat" && !toMend ? 0 : 1
}

function usableGauge(reading: PatternReading, problems: Problem[]): Gauge | null {
  try {
    return gaugeFrom(reading.gauge)
  } catch (error) {
    if (!(error instanceof RoundwrightError)) throw error
    problems.push({
      severity: "error",
      code: error.code,
      round: null,
      line: error.place?.line ?? 1,
      column: error.place?.column ?? 1,
      length: error.place?.length ?? 1,
      message: inTerms(error.message, reading.terms),
      hint: error.hint,
    })
    return null
  }
}

function describeMotif(
  motif: Motif,
  title: string | null,
  ledger: Ledger | null,
): CheckResult["motif"] {
  return {
    title,
    rounds: motif.rounds.length,
    corners: ledger?.rows.at(-1)?.outline.corners ?? 0,
    symmetry: symmetryOf(motif),
  }
}

function describeGaugeUsed(gauge: Gauge | null, terms: Terms): CheckResult["gauge"] {
  if (!gauge) return { source: "none", absolute: false, notes: [] }
  return {
    source: gauge.source,
    absolute: gauge.absolute,
    lengthUnit: gauge.absolute ? "mm" : "sc widths",
    scWidthMm: gauge.absolute ? gauge.scWidthMm : null,
    yarnWeight: gauge.input.yarnWeight ?? null,
    hookMm: gauge.input.hookMm ?? null,
    swatches: gauge.input.swatches.map((swatch) => ({
      stitch: kindName(swatch.kind),
      widthMm: swatch.widthMm ?? null,
      heightMm: swatch.heightMm ?? null,
    })),
    notes: gauge.notes.map((note) => inTerms(note, terms)),
  }
}

/** One entry a round the text names, read or not; lengths only where they are in mm. */
function checkedRounds(
  reading: PatternReading,
  ledger: Ledger | null,
  gauge: Gauge | null,
): CheckedRound[] {
  const rows = new Map(ledger?.rows.map((row) => [row.round, row]))
  return reading.rounds.map((round) => {
    const row = rows.get(round.number)
    const judged = row?.inFront ? undefined : row
    const length = (value: number | undefined) => (gauge?.absolute ? (value ?? null) : null)
    return {
      round: round.number,
      counted: round.counted,
      stated: round.stated,
      agrees: round.agrees,
      ...(round.assumed ? { assumed: true as const } : {}),
      edgeMm: length(row?.edgeMm),
      depthMm: length(row?.depthMm),
      radiusMm: length(row?.radiusMm),
      growthMm: length(row?.growthMm),
      flatGrowthMm: length(row?.flatGrowthMm),
      fullness: judged ? ownFullness(judged) : null,
      accumulatedFullness: judged?.accumulatedFullness ?? null,
      fullnessRange: judged ? openRange(judged) : null,
      curvatureDeg: judged?.curvatureDeg ?? null,
      verdict: judged?.verdict ?? null,
    }
  })
}
