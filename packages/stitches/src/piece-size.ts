// Sizes of the piece after some of its rounds, or when finished: "Rnds 1-3 = 3 1/2 in", "First 2 rnds = 9 cm across", "9 cm
// after Rnd 3", "Rnd 3: 7 cm, Rnd 5: 12 cm corner to corner", "3 1/2 in square", "12 x 12 cm".

import type { PieceSize } from "./gauge.ts"
import { cutHeading, type HeadingToken, isSign, isWord, type Spot } from "./heading-tokens.ts"

/** One for each round the text gives a size with; of sizes of one round the first, cm before inches. Never throws. */
export function readPieceSizes(text: string): PieceSize[] {
  return findPieceSizes(cutHeading(text)).pieces
}

/** Why a length is no size of a piece. */
export type SizeRefused = Spot & {
  readonly why: "unit" | "nothing" | "unbelievable" | "not square" | "several"
}

/** @param finished whether a size without a round is that of the finished piece */
export function findPieceSizes(
  tokens: readonly HeadingToken[],
  finished = false,
): { pieces: PieceSize[]; refused: SizeRefused[] } {
  const pair = tokens.some(isBy)
  const rounds = tokens.flatMap((_, at) => roundAt(tokens, at, pair) ?? [])
  const measures = joinPairs(
    tokens.flatMap((_, at) => lengthAt(tokens, at) ?? []),
    tokens,
  )
  const refused = measures.flatMap(({ start, end, why }) =>
    why === undefined ? [] : [{ start, end, why }],
  )
  const sizes = measures.filter(({ why }) => why === undefined)
  if (rounds.length === 0) {
    if (!finished || tokens.some((_, at) => isRoundUnnumbered(tokens, at)))
      return { pieces: [], refused }
    const { piece, why } = finishedSize(sizes, tokens)
    return { pieces: piece === undefined ? [] : [piece], refused: [...refused, ...why] }
  }
  const pieces: PieceSize[] = []
  // Sizes all stand behind their rounds ("Rnd 3: 7 cm") or all in front ("7 cm after Rnd 3").
  const inFront = sizes.length > 0 && sizes[0]!.start < rounds[0]!.start
  for (const [k, { round, start, end }] of rounds.entries()) {
    const from = inFront ? (rounds[k - 1]?.end ?? 0) : end
    const until = inFront ? start : (rounds[k + 1]?.start ?? Number.POSITIVE_INFINITY)
    const own = sizes.filter((size) => size.start >= from && size.start < until)
    const size = own.find((one) => one.metric) ?? own[0]
    if (size === undefined || round < 1 || pieces.some((one) => one.round === round)) continue
    const across = saysCorners(tokens, from, until) ? "corners" : "sides"
    const place = { start: Math.min(start, size.start), end: Math.max(end, own.at(-1)!.end) }
    pieces.push({ round, mm: size.mm, across, place })
  }
  return { pieces, refused }
}

const fewWords: Readonly<Record<string, number>> = { two: 2, three: 3, four: 4, five: 5, six: 6 }

/** "Rnds 1-3", "Rnd 3", "first 3 rnds", "first two rounds"; "first round" is left alone: it says no number. @param pair whether two lengths are crossed somewhere in the line */
function roundAt(
  tokens: readonly HeadingToken[],
  at: number,
  pair: boolean,
): (Spot & { round: number }) | undefined {
  const token = tokens[at]!
  const isRound = (one: HeadingToken | undefined) => isWord(one, "rnd", "rnds", "round", "rounds")
  if (isWord(token, "first") && isRound(tokens[at + 2])) {
    const count = tokens[at + 1]!
    const round = count.type === "number" ? count.value : fewWords[count.text]
    return round !== undefined && Number.isInteger(round)
      ? { round, start: token.start, end: tokens[at + 2]!.end }
      : undefined
  }
  // "5 rounds = 10 x 10 cm": so many rounds, and a square as large; of one length it could be their depth.
  if (token.type === "number" && isRound(tokens[at + 1]) && pair)
    return Number.isInteger(token.value)
      ? { round: token.value, start: token.start, end: tokens[at + 1]!.end }
      : undefined
  if (!isRound(token)) return undefined
  const first = isSign(tokens[at + 1], ".") ? at + 2 : at + 1
  const from = tokens[first]
  if (from?.type !== "number" || !Number.isInteger(from.value)) return undefined
  const link = tokens[first + 1]
  const to = tokens[first + 2]
  const linked = isSign(link, "-", "–", "—") || isWord(link, "to", "through", "and", "thru")
  const behind = tokens[first + 3]
  const isCount =
    to?.type === "number" &&
    Number.isInteger(to.value) &&
    mmOf(behind, tokens[first + 4]) === undefined
  const last = linked && isCount ? (to as typeof from) : from
  return { round: last.value, start: token.start, end: last.end }
}

/** "First rnds = 4 in": some rounds are meant, and not said how many. "5 in round" means the shape. */
function isRoundUnnumbered(tokens: readonly HeadingToken[], at: number): boolean {
  const plain = isWord(tokens[at], "rnd", "rnds", "rounds")
  return plain || (isWord(tokens[at], "round") && isWord(tokens[at - 1], "first", "last", "each"))
}

interface Measure extends Spot {
  readonly mm: number
  readonly metric: boolean
  readonly why?: SizeRefused["why"]
  /** Index of its first token and of the one behind it. */
  readonly at: number
  readonly next: number
}

/** Largest and smallest motif anybody measures, mm: a room's rug and a thread ring. */
const believableMm = { least: 3, most: 5000 } as const

/** mm in one of a unit; 0 of one that pieces are not measured in. */
function mmOf(token: HeadingToken | undefined, next?: HeadingToken): number | undefined {
  if (isSign(token, "''", "’’", "&quot;", "″", "”", "“", '"')) return 25.4
  if (token?.type !== "word") return undefined
  if (isWord(token, "mm", "millimetre", "millimetres", "millimeter", "millimeters")) return 1
  if (isWord(token, "cm", "cms", "centimetre", "centimetres", "centimeter", "centimeters"))
    return 10
  if (isWord(token, "inch", "inches", "ins")) return 25.4
  // "5 in diameter" and "5 in the round" are both written.
  if (isWord(token, "in")) return isWord(next, "the", "each", "all") ? undefined : 25.4
  if (isWord(token, "ft", "feet", "foot")) return 304.8
  if (isWord(token, "m", "metre", "metres", "meter", "meters")) return 1000
  return isWord(
    token,
    "km",
    "kilometre",
    "kilometres",
    "kilometer",
    "kilometers",
    "mile",
    "miles",
    "yd",
    "yds",
    "yard",
    "yards",
  )
    ? 0
    : undefined
}

/** A number with its unit, a hyphen between allowed; "4-5 in" is the middle of both. */
function lengthAt(tokens: readonly HeadingToken[], at: number): Measure | undefined {
  const token = tokens[at]!
  if (token.type !== "number") return undefined
  const unitAt = isSign(tokens[at + 1], "-") ? at + 2 : at + 1
  const unit = mmOf(tokens[unitAt], tokens[unitAt + 1])
  if (unit === undefined || (unit === 1 && isHook(tokens, unitAt))) return undefined
  const least =
    isSign(tokens[at - 1], "-", "–") || isWord(tokens[at - 1], "to") ? tokens[at - 2] : undefined
  const isRange =
    least?.type === "number" && least.value < token.value && least.value > token.value / 2
  const negative =
    isSign(tokens[at - 1], "-", "−") && token.joined && !tokens[at - 1]!.joined && !isRange
  const value = isRange ? (least.value + token.value) / 2 : token.value
  const first = isRange ? at - 2 : at
  const mm = value * unit
  const why = whyRefused(unit, negative ? -mm : mm)
  return {
    mm,
    metric: isWord(tokens[unitAt], "mm", "cm", "cms"),
    ...(why === undefined ? {} : { why }),
    at: first,
    next: unitAt + 1,
    start: tokens[first]!.start,
    end: tokens[unitAt]!.end,
  }
}

/** "5.5 mm (US size I) hook" is a hook. */
function isHook(tokens: readonly HeadingToken[], unitAt: number): boolean {
  return tokens.slice(unitAt + 1, unitAt + 8).some((token) => isWord(token, "hook", "hooks"))
}

function whyRefused(unit: number, mm: number): SizeRefused["why"] | undefined {
  if (unit === 0) return "unit"
  if (mm <= 0) return "nothing"
  return mm < believableMm.least || mm > believableMm.most ? "unbelievable" : undefined
}

/** Two lengths of one piece differ by no more than this: a ruler read to half a cm. */
const samePiece = 0.06

/** "12 cm x 12 cm" and "4 x 4 in" are one size; of a piece that is longer than wide there is none. */
function joinPairs(measures: readonly Measure[], tokens: readonly HeadingToken[]): Measure[] {
  const joined: Measure[] = []
  for (const measure of measures) {
    const by = tokens[measure.at - 1]
    if (!isBy(by)) {
      joined.push(measure)
      continue
    }
    const before = joined.at(-1)
    const bare = tokens[measure.at - 2]
    const unit = measure.mm / (tokens[measure.at] as { value?: number }).value!
    const whole = before?.next === measure.at - 1
    const other = whole ? before.mm : bare?.type === "number" ? bare.value * unit : undefined
    if (other === undefined) {
      joined.push(measure)
      continue
    }
    if (whole) joined.pop()
    const start = whole ? before.start : bare!.start
    const alike = Math.abs(other / measure.mm - 1) <= samePiece
    const why =
      measure.why ??
      (whole ? before.why : undefined) ??
      (other <= 0 ? "nothing" : alike ? undefined : "not square")
    joined.push({ ...measure, start, ...(why === undefined ? {} : { why }) })
  }
  return joined
}

/** The one size of a finished piece, the same in two units allowed. */
function finishedSize(
  sizes: readonly Measure[],
  tokens: readonly HeadingToken[],
): { piece?: PieceSize; why: SizeRefused[] } {
  const size = sizes.find((one) => one.metric) ?? sizes[0]
  if (size === undefined) return { why: [] }
  const others = sizes.filter((one) => Math.abs(one.mm / size.mm - 1) > samePiece)
  const place = { start: sizes[0]!.start, end: sizes.at(-1)!.end }
  if (others.length > 0) return { why: [{ ...place, why: "several" }] }
  const across = saysCorners(tokens, 0, Number.POSITIVE_INFINITY) ? "corners" : "sides"
  return { piece: { round: "last", mm: size.mm, across, place }, why: [] }
}

function isBy(token: HeadingToken | undefined): boolean {
  return isSign(token, "×", "*") || isWord(token, "x", "by")
}

/** Whether words between two places say that the size goes from corner to corner. */
function saysCorners(tokens: readonly HeadingToken[], from: number, until: number): boolean {
  return tokens.some((token, at) => {
    if (token.start < from || token.start >= until) return false
    const second = isSign(tokens[at + 1], "-") ? at + 2 : at + 1
    const third = isSign(tokens[second + 1], "-") ? second + 2 : second + 1
    const twice =
      isWord(token, "corner", "point", "tip") &&
      isWord(tokens[second], "to") &&
      isWord(tokens[third], token.text)
    return twice || isWord(token, "diagonal", "diagonally")
  })
}
