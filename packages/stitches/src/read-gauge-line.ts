// Reads a gauge line: "14 sc x 16 rows = 10 cm", "5 dc = 2.5 cm; 3 rows = 1 in",
// "1 dc = 7.3 mm wide, 14 mm high", "10 cm x 10 cm = 14 sc x 16 rows", "5 sts per inch".
//
// The line is cut into counts and lengths (gauge-tokens.ts) and these into statements, each some
// counts with the lengths they fill. One length serves both counts; of two, the first runs along the
// row and the second up, unless words say otherwise. Where a length is printed twice, in inches and
// cm, the cm are used.

import { RoundwrightError } from "@roundwright/numerics"
import { cutStatements, shareUnits } from "./cut-statements.ts"
import type { PieceSize, Swatch } from "./gauge.ts"
import { gaugeFrom } from "./gauge-from.ts"
import { cutGaugeLine, type GaugeToken } from "./gauge-tokens.ts"
import { cutHeading } from "./heading-tokens.ts"
import { sameKind } from "./kind.ts"
import type { StitchKind, Terms } from "./kinds.ts"
import { findPieceSizes } from "./piece-size.ts"
import {
  type GaugeLine,
  type GaugeLineProblem,
  howToWrite,
  readStatement,
  tell,
} from "./read-statement.ts"
import { readStitchName } from "./read-stitch-name.ts"

export interface GaugeLineReading {
  readonly swatches: readonly Swatch[]
  /** Sizes of the piece after some rounds, where the line gives its gauge so. */
  readonly pieces: readonly PieceSize[]
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
      pieces: [],
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
  const pieceClauses = clausesOf(text).filter((clause) => measuresPiece(clause.text, terms))
  const alone = pieceClauses.length > 0 && pieceClauses.length === clausesOf(text).length
  if (alone || measuresPiece(text, terms)) return readPieces(text)
  // A clause about the piece among others about stitches is read by itself and blanked for the rest.
  const found = pieceClauses.flatMap((clause) =>
    findPieceSizes(cutHeading(clause.text), true).pieces.map((piece) => moved(piece, clause.start)),
  )
  const rest = pieceClauses.reduce(
    (whole, { start, text: { length } }) =>
      whole.slice(0, start) + " ".repeat(length) + whole.slice(start + length),
    text,
  )
  const stitches = readStitches(rest, terms, unnamed)
  return { ...stitches, pieces: found }
}

/** Parts of a line that semicolons, line ends or sentences part. */
function clausesOf(text: string): { text: string; start: number }[] {
  const clauses: { text: string; start: number }[] = []
  let start = 0
  for (let at = 0; at <= text.length; at++) {
    const ends = at === text.length || text[at] === ";" || text[at] === "\n"
    const stops = text[at] === "." && /^\s\D/.test(text.slice(at + 1, at + 3))
    if (!ends && !stops) continue
    if (text.slice(start, at).trim() !== "") clauses.push({ text: text.slice(start, at), start })
    start = at + 1
  }
  return clauses
}

function moved(piece: PieceSize, by: number): PieceSize {
  const { place } = piece
  return place ? { ...piece, place: { start: by + place.start, end: by + place.end } } : piece
}

function measuresPiece(text: string, terms: Terms): boolean {
  return isPieceMeasure(text, shareUnits(cutGaugeLine(text, terms)))
}

function readPieces(text: string): GaugeLineReading {
  const { pieces } = findPieceSizes(cutHeading(text), true)
  if (pieces.length > 0) return { swatches: [], pieces, problems: [] }
  const message = "This measures the piece after some rounds, not one stitch, and was not used."
  const hint =
    "Say after which round, such as: Rnds 1-3 = 9 cm; or count stitches: 14 sc x 16 rows = 10 cm."
  const problem = { message, hint, start: 0, length: text.length }
  return { swatches: [], pieces: [], problems: [problem] }
}

function readStitches(
  text: string,
  terms: Terms,
  unnamed: StitchKind | undefined,
): Omit<GaugeLineReading, "pieces"> {
  const problems: GaugeLineProblem[] = []
  const tokens = shareUnits(cutGaugeLine(text, terms))
  const line: GaugeLine = {
    text,
    problems,
    named: tokens.find((token) => token.type === "kind")?.kind,
    worked: tokens.find((token) => token.type === "manner")?.worked,
    unnamed,
    lastKind: undefined,
    wide: [],
    lastLengths: [],
    told: false,
  }
  const says = tokens.some(
    ({ type }) => type === "stitches" || type === "rows" || type === "length",
  )
  if (says) for (const token of tokens) remark(token, line, terms)
  const parts = cutStatements(tokens).flatMap((part) => readStatement(part, line))
  const swatches = mergeWithinLine(parts).filter((swatch) => believable(swatch, line))
  if (swatches.length === 0 && problems.length === 0) {
    problems.push({
      message:
        text.trim() === ""
          ? "No gauge could be read here."
          : `"${text.trim().slice(0, 40)}" is no gauge.`,
      hint: howToWrite,
      start: 0,
      length: text.length,
    })
  }
  return { swatches, problems }
}

function remark(token: GaugeToken, line: GaugeLine, terms: Terms): void {
  const written = line.text.slice(token.start, token.end)
  if (token.type !== "unknown" && token.type !== "number") return
  const other = terms === "UK" ? "US" : "UK"
  const isOther = token.type === "unknown" && readStitchName(written, other) !== undefined
  const hint = isOther
    ? `"${written}" is a ${other} name, and this text is read in ${terms} terms.`
    : howToWrite
  tell(line, token, `"${written}" was not understood in this gauge line.`, hint)
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
function believable(swatch: Swatch, line: GaugeLine): boolean {
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

/** Words that say of which piece a length is, where nothing is counted. */
const pieceWords =
  /\b(?:first|last|diameter|across|corner|motif|circle|hexagon|octagon|triangle|coaster|doily|block|granny|finished|each|(?:square|squares) (?:measures?|is|should|=)|rnds?|rounds?)\b|\bsquare =/i

/** "First 3 rnds = 4 in across" measures the piece; it is no stitch's height. */
function isPieceMeasure(text: string, tokens: readonly GaugeToken[]): boolean {
  const counts = tokens.filter((token) => token.type === "stitches" || token.type === "rows")
  if (!counts.every((token) => token.type === "rows")) return false
  if (counts.length === 0)
    return tokens.some((token) => token.type === "length") && pieceWords.test(text)
  const types = tokens.map(({ type }) => type)
  const pair = types.some((type, at) => type === "length" && types[at + 1] === "by")
  // "5 rounds = 10 x 10 cm": rounds alone, and as wide as high.
  if (counts.length === 1 && pair && (counts[0] as { round?: boolean }).round) return true
  return /\b(?:first|diameter|across|corner|square measures|motif|rnds?\.? ?1\b|rounds? ?1\b)/i.test(
    text,
  )
}
