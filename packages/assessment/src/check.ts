// Checking one pattern: text -> reading -> gauge -> ledger -> verdict, sizes, remedies.

import { keepLedger, type Ledger } from "@roundwright/flatness"
import { type PatternReading, type Problem, readPattern } from "@roundwright/instructions"
import { type Motif, symmetryOf } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import type { LaidOutShape } from "@roundwright/relaxation"
import { findMends } from "@roundwright/shaping"
import { type Gauge, gaugeFrom, kindName, type Terms } from "@roundwright/stitches"
import { gaugeFromPieces } from "./gauge-from-pieces.ts"
import { inTerms } from "./in-terms.ts"
import { laidOutFromLedger } from "./laid-out.ts"
import { type Effort, laidOutFromNet, layOutMotif, shapeNotes } from "./net-shape.ts"
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
  const problems = [...reading.problems]
  const motif = reading.motif.rounds.length > 0 ? reading.motif : null
  const stated = usableGauge(reading, problems)
  const { gauge, notes } =
    motif && stated
      ? gaugeOfPiece(reading, stated, options.lean ?? options.shape === "net")
      : { gauge: stated, notes: [] }
  const ledger = motif && gauge ? keepLedger(motif, gauge, { terms: reading.terms }) : null
  const net = options.shape === "net" && motif && gauge ? { motif, gauge } : null
  const laid = net && layOutMotif(net.motif, net.gauge, options.effort)
  const shape = laid && !("fault" in laid) ? laid : null
  const judged = shape ? ({ judge: "net", shape } as const) : {}
  const remedies =
    motif && gauge ? findMends(motif, gauge, { terms: reading.terms, ...judged }) : []
  const laidOut =
    motif &&
    ledger &&
    gauge &&
    (shape ? laidOutFromNet(shape, ledger, motif, gauge) : laidOutFromLedger(ledger, gauge))
  const result: CheckResult = {
    file: options.file ?? null,
    motif: motif && describeMotif(motif, reading.title, ledger),
    terms: reading.terms,
    gauge: describeGaugeUsed(gauge, reading.terms),
    rounds: checkedRounds(reading, ledger, gauge),
    laidOut,
    remedies: remedies.map(({ round, change, fullnessAfter, verdictAfter }) => ({
      round,
      change,
      fullnessAfter,
      verdictAfter,
    })),
    problems,
    ledger: [...(ledger?.rows ?? [])],
    notes: [
      ...notes,
      ...(ledger?.notes ?? []),
      ...(ledger && laidOut ? notesOnSides(ledger, laidOut) : []),
      ...(shape && ledger ? shapeNotes(shape, ledger) : []),
      ...(laid && "fault" in laid ? [laid.fault] : []),
      ...(net && laidOut && laidOut.corners !== 0
        ? adviceOnSkew(net.motif, net.gauge, laidOut.skewDeg)
        : []),
    ],
    exitStatus: 2,
  }
  result.exitStatus = exitStatusOf(result)
  return { result, reading, gauge, gaugeNotes: notes, ledger, shape }
}

/** Nothing is said of the sides of an outline that is round to the eye; a laid-out shape tells itself how they bow. */
function notesOnSides({ uneven, bowed }: Ledger, { by, corners }: LaidOut): string[] {
  if (corners === 0) return []
  return [uneven, by === "ledger" ? bowed : null].filter((note) => note !== null)
}

/** What was measured of the piece is put into its gauge; a skew is one of all rounds, and tells nothing of some. */
function gaugeOfPiece(
  { motif, rounds, gauge, terms }: PatternReading,
  stated: Gauge,
  leanToo: boolean,
) {
  const some = motif.rounds.length < rounds.length
  const sized = gaugeFromPieces(motif, stated, leanToo && !some)
  const found = { ...sized, notes: sized.notes.map((note) => inTerms(note, terms)) }
  if (gauge.skewDeg === undefined || !leanToo || !some) return found
  const why = `The skew was not used: only ${motif.rounds.length} of ${rounds.length} rounds could be read.`
  return { ...found, notes: [...found.notes, why] }
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
      fullness: row?.fullness ?? null,
      accumulatedFullness: row?.accumulatedFullness ?? null,
      curvatureDeg: row?.curvatureDeg ?? null,
      verdict: row?.verdict ?? null,
    }
  })
}
