// Reads a gauge line: "14 sc x 16 rows = 10 cm", "5 dc = 2.5 cm; 3 rows = 1 in",
// "1 dc = 7.3 mm wide, 14 mm high", "10 cm x 10 cm = 14 sc x 16 rows", "5 sts per inch".
//
// The line is cut into counts and lengths (gauge-tokens.ts) and these into statements, each some
// counts with the lengths they fill. One length serves both counts; of two, the first runs along the
// row and the second up, unless words say otherwise. Where a length is printed twice, in inches and
// cm, the cm are used.

import { RoundwrightError } from "@roundwright/numerics"
import type { Swatch } from "./gauge.ts"
import { gaugeFrom } from "./gauge-from.ts"
import { cutGaugeLine, type GaugeToken } from "./gauge-tokens.ts"
import { sameKind } from "./kind.ts"
import type { StitchKind, Terms } from "./kinds.ts"

export interface GaugeLineProblem {
  readonly message: string
  readonly hint: string
  /** Offset in the text and length, UTF-16 units. */
  readonly start: number
  readonly length: number
}

export interface GaugeLineReading {
  readonly swatches: readonly Swatch[]
  readonly problems: readonly GaugeLineProblem[]
}

/** A gauge line longer than this is not one. */
const longestLine = 2000

/**
 * Swatches that a gauge line states. Counts without a stitch's name ("16 sts") are taken as
 * `unnamed` (sc when not given) and a problem says so. Never throws.
 */
export function readGaugeLine(text: string, terms: Terms, unnamed?: StitchKind): GaugeLineReading {
  if (text.length > longestLine) {
    return {
      swatches: [],
      problems: [
        {
          message: "This gauge line is too long to be one.",
          hint: "Write the gauge on a line of its own, such as: 14 sc x 16 rows = 10 cm.",
          start: 0,
          length: text.length,
        },
      ],
    }
  }
  const problems: GaugeLineProblem[] = []
  const tokens = shareUnits(cutGaugeLine(text, terms))
  if (isPieceMeasure(text, tokens)) {
    const message = "This measures the piece after some rounds, not one stitch, and was not used."
    const hint = "Count stitches and rows over a length, such as: 14 sc x 16 rows = 10 cm."
    return { swatches: [], problems: [{ message, hint, start: 0, length: text.length }] }
  }
  const line: Line = {
    text,
    problems,
    named: tokens.find((token) => token.type === "kind")?.kind,
    worked: tokens.find((token) => token.type === "manner")?.worked,
    unnamed,
    lastKind: undefined,
    lastLengths: [],
    told: false,
  }
  for (const token of tokens) remark(token, line)
  const parts = cutStatements(tokens).flatMap((part) => readStatement(part, line))
  const swatches = mergeWithinLine(parts).filter((swatch) => believable(swatch, line))
  if (swatches.length === 0 && problems.length === 0) {
    problems.push({
      message: "No gauge could be read here.",
      hint: "Write it like this: 14 sc x 16 rows = 10 cm.",
      start: 0,
      length: text.length,
    })
  }
  return { swatches, problems }
}

interface Line {
  readonly text: string
  readonly problems: GaugeLineProblem[]
  /** The stitch named apart from any count: "16 sts x 18 rows in sc". */
  readonly named: StitchKind | undefined
  readonly worked: "rows" | "rounds" | undefined
  readonly unnamed: StitchKind | undefined
  lastKind: StitchKind | undefined
  lastLengths: readonly Measure[]
  told: boolean
}

/** In "4 x 4 in" the first number has the unit of the second. */
function shareUnits(tokens: readonly GaugeToken[]): GaugeToken[] {
  return tokens.map((token, index) => {
    const by = tokens[index + 1]
    const length = tokens[index + 2]
    if (token.type !== "number" || by?.type !== "by" || length?.type !== "length") return token
    const { mmEach, unit } = length
    return { type: "length", value: token.value, mmEach, unit, start: token.start, end: token.end }
  })
}

const howToWrite = "Write the gauge like this: 14 sc x 16 rows = 10 cm."

function tell(line: Line, token: GaugeToken, message: string, hint: string): void {
  line.problems.push({ message, hint, start: token.start, length: token.end - token.start })
}

function remark(token: GaugeToken, line: Line): void {
  const written = line.text.slice(token.start, token.end)
  if (token.type === "unknown" || token.type === "number") {
    tell(line, token, `"${written}" was not understood in this gauge line.`, howToWrite)
  }
}

type Counted = Extract<GaugeToken, { type: "stitches" | "rows" }>
type Length = Extract<GaugeToken, { type: "length" }>
interface Measure {
  readonly token: Length
  across: boolean | undefined
}
interface Statement {
  readonly counts: Counted[]
  readonly lengths: Measure[]
}

/** Parts of the line that each pair some counts with some lengths. */
function cutStatements(tokens: readonly GaugeToken[]): Statement[] {
  const parts: Statement[] = []
  let part: Statement = { counts: [], lengths: [] }
  let countsFirst = true
  const isFull = () => part.counts.length > 0 && part.lengths.length > 0
  const close = () => {
    if (part.counts.length + part.lengths.length > 0) parts.push(part)
    part = { counts: [], lengths: [] }
  }
  for (const token of tokens) {
    if (token.type === "break" && isFull()) close()
    if (token.type === "direction" && part.lengths.length > 0) {
      part.lengths.at(-1)!.across = token.across
    }
    if (token.type !== "stitches" && token.type !== "rows" && token.type !== "length") continue
    const isCount = token.type !== "length"
    if (isFull() && isCount === countsFirst) close()
    if (part.counts.length + part.lengths.length === 0) countsFirst = isCount
    if (token.type === "length") part.lengths.push({ token, across: undefined })
    else part.counts.push(token)
  }
  close()
  return parts
}

function readStatement(part: Statement, line: Line): Swatch[] {
  const { counts } = part
  const first = counts[0] ?? part.lengths[0]!.token
  if (counts.length === 0) {
    tell(line, first, "This length has no count of stitches or rows with it.", howToWrite)
    return []
  }
  const lengths = part.lengths.length > 0 ? dropSecondUnit(part.lengths) : line.lastLengths
  if (lengths.length === 0) return readWithoutLength(counts, line)
  line.lastLengths = lengths
  const bad = [...counts, ...lengths.map((one) => one.token)].find(
    (token) => sizeOfToken(token) <= 0,
  )
  if (bad !== undefined) {
    tell(line, bad, "A gauge cannot be counted from nothing.", howToWrite)
    return []
  }
  const { alongMm, upMm } = layOut(lengths)
  const swatches = swatchesOf(counts, alongMm, upMm, line)
  if (counts.some((one) => one.type === "rows")) return swatches
  // No rows: a second length is the height of one row when one stitch was measured or words say so.
  const oneRow = lengths.some((one) => one.across === false)
  const alone = counts.length === 1 && (oneRow || counts[0]!.count === 1)
  if (alone && lengths.length > 1) swatches.push({ ...kindAndManner(swatches[0]!), heightMm: upMm })
  return swatches
}

function kindAndManner(swatch: Swatch): Swatch {
  return {
    kind: swatch.kind,
    ...(swatch.worked === undefined ? {} : { worked: swatch.worked }),
  }
}

/** Stitches and rows without a length: the trade counts over 10 cm (4 in) as a rule; it is told. */
const usualSpanMm = 100

function readWithoutLength(counts: readonly Counted[], line: Line): Swatch[] {
  const first = counts[0]!
  const both = counts.some((one) => one.type === "rows") && counts.length > 1
  if (!both || counts.some((one) => one.count <= 1)) {
    tell(line, first, "This count does not say over which length.", howToWrite)
    return []
  }
  tell(line, first, "This gauge does not say over which length; 10 cm is taken.", howToWrite)
  return swatchesOf(counts, usualSpanMm, usualSpanMm, line)
}

function swatchesOf(
  counts: readonly Counted[],
  alongMm: number,
  upMm: number,
  line: Line,
): Swatch[] {
  return counts.map((count) => {
    const kind = kindOf(count, line)
    const worked = count.type === "rows" && count.round ? "rounds" : line.worked
    const how = worked === undefined ? {} : { worked }
    return count.type === "rows"
      ? { kind, heightMm: upMm / count.count, ...how }
      : { kind, widthMm: alongMm / count.count, ...how }
  })
}

function sizeOfToken(token: Counted | Length): number {
  return token.type === "length" ? token.value : token.count
}

function kindOf(count: Counted, line: Line): StitchKind {
  if (count.type === "stitches" && count.kind !== undefined) {
    line.lastKind = count.kind
    return count.kind
  }
  const known = line.named ?? line.lastKind ?? line.unnamed
  if (known !== undefined) return known
  if (!line.told) {
    line.told = true
    tell(
      line,
      count,
      "The gauge does not say which stitch was counted; sc (US terms) is taken.",
      "Name the stitch, such as: 14 dc x 7 rows = 10 cm.",
    )
  }
  return { basic: "sc" }
}

/** The same length in inches and cm differs by up to this share (4 in is 10.16 cm, 1 in 2.5 cm). */
const sameLength = 0.04

/** Of lengths printed in both units the metric ones stay. */
function dropSecondUnit(lengths: readonly Measure[]): readonly Measure[] {
  const metric = lengths.filter((one) => one.token.unit === "metric")
  const inch = lengths.filter((one) => one.token.unit === "inch")
  if (metric.length === 0 || metric.length !== inch.length) return lengths
  const agree = metric.every((one, index) => {
    const ratio = inMm(one.token) / inMm(inch[index]!.token)
    return Math.abs(ratio - 1) <= sameLength
  })
  if (!agree) return lengths
  return metric.map((one, index) => ({ ...one, across: one.across ?? inch[index]!.across }))
}

function inMm(length: Length): number {
  return length.value * length.mmEach
}

/** Which length runs along the row and which up. */
function layOut(lengths: readonly Measure[]): { alongMm: number; upMm: number } {
  const up = lengths.find((one) => one.across === false)
  const along = lengths.find((one) => one.across === true) ?? lengths.find((one) => one !== up)
  const other = up ?? lengths.find((one) => one !== along)
  const alongMm = inMm((along ?? up)!.token)
  return { alongMm, upMm: other === undefined ? alongMm : inMm(other.token) }
}

/** Width and rows of one stitch stated apart in one line are one swatch. */
function mergeWithinLine(parts: readonly Swatch[]): Swatch[] {
  const merged: Swatch[] = []
  for (const part of parts) {
    const index = merged.findIndex((one) => sameKind(one.kind, part.kind) && fits(one, part))
    if (index < 0) merged.push(part)
    else merged[index] = { ...merged[index]!, ...part }
  }
  return merged
}

function fits(a: Swatch, b: Swatch): boolean {
  const free = (what: "widthMm" | "heightMm") => a[what] === undefined || b[what] === undefined
  return free("widthMm") && free("heightMm")
}

/** A swatch that no hand can have worked is told of and left out. */
function believable(swatch: Swatch, line: Line): boolean {
  try {
    gaugeFrom({ swatches: [swatch] })
    return true
  } catch (error) {
    if (!(error instanceof RoundwrightError)) throw error
    const { message, hint } = error
    line.problems.push({ message, hint, start: 0, length: line.text.length })
    return false
  }
}

/** "First 3 rnds = 4 in across" measures the piece; it is no stitch's height. */
function isPieceMeasure(text: string, tokens: readonly GaugeToken[]): boolean {
  const counts = tokens.filter((token) => token.type === "stitches" || token.type === "rows")
  const onlyRounds = counts.every((token) => token.type === "rows")
  if (!onlyRounds) return false
  return /\b(?:first|diameter|across|corner|square measures|motif|rnds?\.?\s*1\b|rounds?\s*1\b)/i.test(
    text,
  )
}
