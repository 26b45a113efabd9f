// Two pieces of one pattern set side by side: the round in which they part, why, and whose it is when counts slipped.

import { RoundwrightError, unlessRefused } from "@roundwright/numerics"
import type { MeasuredPiece } from "../measured/read-measured.ts"
import { withComputedSizes } from "../measured/read-measured.ts"
import { partingOf } from "./models.ts"
import type { Comparison } from "./result.ts"
import { slipOf } from "./slipped.ts"
import { comparisonText } from "./words.ts"

/** A ruler laid on a soft edge: 2 mm, and 2 % of the size, whichever is more. */
const ruler = { mm: 2, share: 0.02 } as const

/** @throws RoundwrightError `nothing-to-compare` */
export function comparePieces(first: MeasuredPiece, second: MeasuredPiece): Comparison {
  const [a, b] = [first, second].map((piece, k) =>
    [first, second][1 - k]!.sizes === "measured" ? withComputedSizes(piece) : piece,
  ) as [MeasuredPiece, MeasuredPiece]
  const counts = paired(a, b, ({ count }) => count)
  const sizes = paired(a, b, ({ sizeMm }) => sizeMm)
  const known = (rows: readonly Pair[]) => rows.filter(isWhole)
  const [ownCounts, ownSizes] = [known(counts), known(sizes)]
  if (ownCounts.length === 0 && ownSizes.length === 0)
    throw new RoundwrightError(
      "nothing-to-compare",
      `${a.name} and ${b.name} have no round of which both tell a count, or both a size.`,
      { hint: 'Tell of the same rounds in both, such as "Rnd 3: 36 sts, 9 cm".' },
    )
  const byCounts = ownCounts.length > 0 ? partingOf(...columns(ownCounts), countNoise) : null
  const noise = Math.max(ruler.mm, ruler.share * mean(ownSizes.map(({ a: own }) => own)))
  const bySizes = ownSizes.length > 0 ? partingOf(...columns(ownSizes), noise) : null
  const countRound = byCounts && ownCounts[byCounts.from]!.round
  const sizeRound = bySizes && ownSizes[bySizes.from]!.round
  // Counts that part explain sizes that part with them or after them.
  const useCounts =
    ownSizes.length === 0 ||
    (countRound !== null && (sizeRound === null || countRound <= sizeRound + 1))
  const by = useCounts ? "counts" : "sizes"
  const parting = useCounts ? byCounts : bySizes
  const partAtRound = useCounts ? countRound : sizeRound
  const slip =
    useCounts && partAtRound !== null
      ? slipOf(
          counts.map((one) => one.a),
          counts.map((one) => one.b),
          counts.findIndex(({ round }) => round === partAtRound),
        )
      : null
  const rounds = (useCounts ? counts : sizes).map((one) => ({ ...one, ratio: ratioOf(one) }))
  const compared = {
    partAtRound,
    cause: parting?.kind ?? null,
    by,
    rounds,
    amount: parting?.amount ?? null,
    whose: slip?.whose ?? null,
    slip,
    parting,
    countsAgree: ownCounts.length === 0 ? null : byCounts === null,
  } as const
  return { ...compared, text: comparisonText(compared, a, b) }
}

/** Counts are whole: half a stitch off is none off. */
const countNoise = 0.25

interface Pair {
  readonly round: number
  readonly a: number | null
  readonly b: number | null
}
type WholePair = { readonly round: number; readonly a: number; readonly b: number }

function isWhole(pair: Pair): pair is WholePair {
  return pair.a !== null && pair.b !== null && pair.a > 0 && pair.b > 0
}

function paired(
  a: MeasuredPiece,
  b: MeasuredPiece,
  figure: (round: MeasuredPiece["rounds"][number]) => number | null,
): Pair[] {
  const numbers = [...new Set([...a.rounds, ...b.rounds].map(({ round }) => round))]
  const of = (piece: MeasuredPiece, round: number): number | null => {
    const found = piece.rounds.find((one) => one.round === round)
    return found ? figure(found) : null
  }
  return numbers.sort((x, y) => x - y).map((round) => ({ round, a: of(a, round), b: of(b, round) }))
}

function columns(rows: readonly WholePair[]): [number[], number[]] {
  return [rows.map(({ a }) => a), rows.map(({ b }) => b)]
}

function ratioOf({ a, b }: Pair): number | null {
  return a !== null && b !== null && a > 0 ? Math.round((1e4 * b) / a) / 1e4 : null
}

function mean(values: readonly number[]): number {
  return values.length === 0 ? 0 : values.reduce((all, one) => all + one, 0) / values.length
}

/** For a caller that wants a sentence in place of a refusal. */
export function compareOrTell(a: MeasuredPiece, b: MeasuredPiece): Comparison | string {
  return unlessRefused<Comparison | string, string>(
    () => comparePieces(a, b),
    ({ message, hint }) => `${message} ${hint}`,
  )
}
