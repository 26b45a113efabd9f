// 'Not the hook': where a piece is off by more than any hook makes of it, what else can be to blame is worked out and its size
// set beside the one wished for: the other country's terms, another yarn with its own hook, a round too many or too few, the
// side taken for the diagonal.

import { formatPercent } from "@roundwright/assessment"
import { readPattern } from "@roundwright/instructions"
import { unlessRefused } from "@roundwright/numerics"
import {
  defaultScWidth,
  type Gauge,
  recommendedHookMm,
  type YarnWeight,
  yarnWeights,
} from "@roundwright/stitches"
import { type LengthUnit, lengthWords } from "../lengths.ts"
import { withRound } from "./added-round.ts"
import { mainStitch } from "./last-round.ts"
import { type PieceNow, sizesOfPiece } from "./piece.ts"
import type { TestedCause } from "./result.ts"
import { type Along, alongOf, type Sized, sizesOf } from "./sizes.ts"

/** How far a size may lie from the one wished for and still be explained; the trade's own tolerance is 4 % (12 in, half an inch). */
const near = { diagonal: 0.04, round: 0.05, terms: 0.08, yarn: 0.08 } as const

interface Hypothesis {
  readonly cause: TestedCause["cause"]
  /** Size over the size now, if so. */
  readonly ratio: number
  readonly within: number
  readonly words: string
}

/** All that was tested, those that fit first, the nearest first among them. */
export function testCauses(
  piece: PieceNow,
  targetMm: number,
  along: Along,
  unit: LengthUnit = "cm",
): TestedCause[] {
  const now = alongOf(piece.now, along)
  const wanted = targetMm / now
  return [
    ...diagonals(piece.now, along),
    ...rounds(piece, along),
    ...terms(piece, along),
    ...yarns(piece.gauge),
  ]
    .map(({ cause, ratio, within, words }): TestedCause => {
      const off = Math.abs(Math.log(wanted / ratio))
      const wouldBe = ratio * now
      return {
        cause,
        wouldBe,
        off,
        fits: off <= within,
        text: `${words}: it would be ${lengthWords(wouldBe, unit)}, ${formatPercent(Math.abs(wouldBe / targetMm - 1))} from ${lengthWords(targetMm, unit)}.`,
      }
    })
    .sort((a, b) => Number(b.fits) - Number(a.fits) || rank(a) - rank(b))
}

/** Another yarn can explain nearly any size, so it comes after what explains one size only. */
function rank({ cause, off }: TestedCause): number {
  return off / (cause === "yarn" ? near.yarn : near.terms) + (cause === "yarn" ? 1 : 0)
}

function diagonals({ corners, sideMm, acrossMm, diagonalMm }: Sized, along: Along): Hypothesis[] {
  if (corners < 3 || corners > 6 || sideMm === null || diagonalMm === null) return []
  const middle = along === "side" ? sideMm : acrossMm
  const [ratio, words] =
    along === "diagonal"
      ? [
          acrossMm / diagonalMm,
          "The size wished for is from side to side, not from corner to corner",
        ]
      : [diagonalMm / middle, "The size wished for is from corner to corner, not from side to side"]
  const other =
    along === "diagonal"
      ? "The piece was measured from side to side, not from corner to corner"
      : "The piece was measured from corner to corner, not from side to side"
  return [
    { cause: "diagonal", ratio, within: near.diagonal, words },
    { cause: "diagonal", ratio: 1 / ratio, within: near.diagonal, words: other },
  ]
}

function rounds(piece: PieceNow, along: Along): Hypothesis[] {
  const { motif, gauge, now } = piece
  const size = (sized: Sized) => alongOf(sized, along) / alongOf(now, along)
  const last = motif.rounds.at(-1)!
  const main = mainStitch(last) ?? "dc"
  const found: Hypothesis[] = []
  const test = (motif_: PieceNow["motif"] | null, cause: Hypothesis["cause"], words: string) => {
    const ratio =
      motif_ &&
      unlessRefused(
        () => size(sizesOfPiece(piece, motif_)),
        () => null,
      )
    if (ratio) found.push({ cause, ratio, within: near.round, words })
  }
  if (motif.rounds.length > 1)
    test(
      { ...motif, rounds: motif.rounds.slice(0, -1) },
      "a round too many",
      `A round too many (without round ${last.number})`,
    )
  test(withRound(motif, main, gauge), "a round too few", "A round too few (one more like the last)")
  return found
}

/** The other country's terms, either way round: what was worked, or what was meant. */
function terms(piece: PieceNow, along: Along): Hypothesis[] {
  const { text, check, gauge } = piece
  const { motif } = check.reading
  const own = check.reading.terms
  const other = own === "US" ? "UK" : "US"
  const reading = readPattern(text, { terms: other })
  const faulty = reading.problems.some(({ severity }) => severity === "error")
  if (faulty || reading.motif.rounds.length !== motif.rounds.length) return []
  const ratio = unlessRefused(
    () => {
      // Of a large plain piece the middle stands for it all.
      if (piece.byRule)
        return alongOf(sizesOf(reading.motif, gauge), along) / alongOf(sizesOf(motif, gauge), along)
      return alongOf(sizesOfPiece(piece, reading.motif), along) / alongOf(piece.now, along)
    },
    () => null,
  )
  if (!ratio || Math.abs(Math.log(ratio)) < 0.1) return []
  return [
    { cause: "terms", ratio, within: near.terms, words: `Read in ${other} terms` },
    {
      cause: "terms",
      ratio: 1 / ratio,
      within: near.terms,
      words: `The piece was worked in ${other} terms where ${own} are meant`,
    },
  ]
}

/** Weights beside the yarn's own, each on its own hook; of an unknown yarn all steps from one weight to another. */
function yarns({ input }: Gauge): Hypothesis[] {
  const widths = yarnWeights.map(
    ({ weight }) =>
      defaultScWidth({ yarnWeight: weight, hookMm: recommendedHookMm(weight) }).widthMm,
  )
  const own = input.yarnWeight
  const from: YarnWeight[] = own === undefined ? [3, 4] : [own]
  return from.flatMap((weight) =>
    yarnWeights
      .filter((one) => one.weight !== weight && Math.abs(one.weight - weight) <= 3)
      .map(
        (one): Hypothesis => ({
          cause: "yarn",
          ratio: widths[one.weight]! / widths[weight]!,
          within: near.yarn,
          words: `Another yarn (${one.name.toLowerCase()}, weight ${one.weight}, with its own hook${own === undefined ? `, in place of weight ${weight}` : ""})`,
        }),
      ),
  )
}
