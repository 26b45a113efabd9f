// Reads one statement of a gauge line, some counts with the lengths they fill, into swatches.
// Counts without a length are taken over 10 cm and counts without a stitch's name as sc, and told.

import type { Counted, Length, Measure, Statement } from "./cut-statements.ts"
import type { Swatch } from "./gauge.ts"
import { dropSecondUnit, layOut } from "./gauge-lengths.ts"
import type { GaugeToken } from "./gauge-tokens.ts"
import { sameKind } from "./kind.ts"
import type { StitchKind } from "./kinds.ts"

export interface GaugeLineProblem {
  readonly message: string
  readonly hint: string
  /** Offset in the text and length, UTF-16 units. */
  readonly start: number
  readonly length: number
}

/** What is known of the whole line while its statements are read. */
export interface GaugeLine {
  readonly text: string
  readonly problems: GaugeLineProblem[]
  /** The stitch named apart from any count: "16 sts x 18 rows in sc". */
  readonly named: StitchKind | undefined
  readonly worked: "rows" | "rounds" | undefined
  readonly unnamed: StitchKind | undefined
  lastKind: StitchKind | undefined
  /** Stitches that have their width. */
  readonly wide: StitchKind[]
  lastLengths: readonly Measure[]
  told: boolean
}

/** The swatches of one statement; what is amiss goes to the line's problems. */
export function readStatement(part: Statement, line: GaugeLine): Swatch[] {
  const { counts } = part
  const first = counts[0] ?? part.lengths[0]!.token
  if (counts.length === 0) {
    tell(line, first, "This length has no count of stitches or rows with it.", howToWrite)
    return []
  }
  if (part.foreign) {
    const message = "This gauge counts something besides plain stitches and was not used."
    tell(line, first, message, howToWrite)
    return []
  }
  if (part.lengths.length === 0 && counts.every((one) => isCountedAlready(one, line))) {
    tell(line, first, "This count does not say over which length.", howToWrite)
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

/** Stitches of a kind that has its width already: what is counted again ("a square is 3 dc") is no gauge. */
function isCountedAlready(count: Counted, line: GaugeLine): boolean {
  const { kind } = count.type === "stitches" ? count : { kind: undefined }
  return kind !== undefined && line.wide.some((one) => sameKind(one, kind))
}

function kindAndManner(swatch: Swatch): Swatch {
  return {
    kind: swatch.kind,
    ...(swatch.worked === undefined ? {} : { worked: swatch.worked }),
  }
}

/** Stitches and rows without a length: the trade counts over 10 cm (4 in) as a rule; it is told. */
const usualSpanMm = 100

function readWithoutLength(counts: readonly Counted[], line: GaugeLine): Swatch[] {
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
  line: GaugeLine,
): Swatch[] {
  return counts.map((count) => {
    const kind = kindOf(count, line)
    if (count.type === "stitches") line.wide.push(kind)
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

function kindOf(count: Counted, line: GaugeLine): StitchKind {
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

export const howToWrite = "Write the gauge like this: 14 sc x 16 rows = 10 cm."

/** Notes a problem at a token's place. */
export function tell(line: GaugeLine, token: GaugeToken, message: string, hint: string): void {
  line.problems.push({ message, hint, start: token.start, length: token.end - token.start })
}
