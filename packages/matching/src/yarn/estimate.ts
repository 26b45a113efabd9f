// Yarn of a project: by round, by colour, a piece, all pieces, joins, border and tails, each with its 80 % band; the skeins to
// buy; and what a part of a skein still makes.

import { countRound, type Motif } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import type { Gauge } from "@roundwright/stitches"
import { type JoinKind, yarnOfSeam } from "./joins.ts"
import type { ColourRounds } from "./read-yarn-options.ts"
import { yarnByRound } from "./stitch-yarn.ts"
import { type BasisOptions, band80, type Skein, type YarnBasis, yarnBasis } from "./yarn-basis.ts"
import type { YarnAmount, YarnEstimate } from "./yarn-result.ts"
import { yarnText } from "./yarn-words.ts"

export interface YarnRequest extends BasisOptions {
  readonly pieces?: number
  readonly colours?: readonly ColourRounds[]
  readonly join?: {
    readonly kind: JoinKind
    readonly seams: number
    readonly stitchesPerSide: number
  }
  /** Yarn of the whole border, in sc. */
  readonly borderSc?: number
  readonly tails?: { readonly perPiece: number; readonly mm: number }
  /** Share bought beyond the estimate. */
  readonly reserve?: number
  /** Grams left over, to be used up. */
  readonly leftGrams?: number
}

/** Buy about a tenth more (common practice, no source); not less than what covers the band. */
export const usualReserve = 0.1
/** Tails of at least 6 in (free-crochet.com). */
export const usualTailMm = 150

/** @throws RoundwrightError `bad-count`, `bad-weight`, `no-yarn-left`, `unknown-rounds` */
export function estimateYarn(motif: Motif, gauge: Gauge, request: YarnRequest = {}): YarnEstimate {
  const pieces = request.pieces ?? 1
  if (!Number.isInteger(pieces) || pieces < 1)
    throw new RoundwrightError("bad-count", `There cannot be ${pieces} pieces.`, {
      hint: "Give a whole number of pieces above 0.",
      numbers: { pieces },
    })
  if (request.leftGrams !== undefined && !(request.leftGrams > 0))
    throw new RoundwrightError("no-yarn-left", "No yarn is left to make anything of.", {
      hint: "Weigh what is left and give its grams, such as 23 g.",
      numbers: { grams: request.leftGrams },
    })
  const bySc = yarnByRound(motif)
  const pieceSc = bySc.reduce((sum, one) => sum + one, 0)
  const basis = yarnBasis(pieceSc, gauge, request)
  const amount = (what: string, sc: number): YarnAmount => amountOf(what, sc, basis)
  const colours = request.colours ?? []
  const tailCount = request.tails?.perPiece ?? 2 * Math.max(1, colours.length)
  const tailMm = request.tails?.mm ?? usualTailMm
  const tailSc = basis.metresPerSc ? (tailCount * tailMm) / 1000 / basis.metresPerSc : 0
  const { join, borderSc } = request
  const seamSc = join ? yarnOfSeam(join.kind, join.seams * (join.stitchesPerSide + 1)) : 0
  const totalSc = pieces * (pieceSc + tailSc) + seamSc + (borderSc ?? 0)
  const total = amount("all together", totalSc)
  const reserveShare = request.reserve ?? usualReserve
  const skeinsOf = (one: YarnAmount) => skeinsFor(one, request.skein ?? null, reserveShare)
  const numbers = motif.rounds.map(({ number }) => number)
  const estimate = {
    rounds: motif.rounds.map((round, index) => ({
      ...amount(`round ${round.number}`, bySc[index]!),
      round: round.number,
    })),
    colours: colours.map(({ colour, rounds }) => {
      const unknown = rounds.filter((round) => !numbers.includes(round))
      if (unknown.length > 0)
        throw new RoundwrightError(
          "unknown-rounds",
          `${colour} is given round ${unknown[0]}, which the pattern does not have.`,
          {
            hint: `Its rounds are ${numbers[0]} to ${numbers.at(-1)}.`,
          },
        )
      const sc = rounds.reduce((sum, round) => sum + bySc[numbers.indexOf(round)]!, 0)
      const perPiece = sc + (2 * tailSc) / Math.max(1, tailCount)
      const all = amount(colour, pieces * perPiece)
      return { ...all, colour, skeins: skeinsOf(all) }
    }),
    piece: amount("one piece", pieceSc),
    pieces: {
      ...amount(pieces === 1 ? "one piece" : `${pieces} pieces`, pieces * pieceSc),
      count: pieces,
    },
    join: join && join.seams > 0 ? amount("joins", seamSc) : null,
    border: borderSc === undefined ? null : amount("border", borderSc),
    tails: tailSc > 0 ? amount("tails", pieces * tailSc) : null,
    total,
    reserveShare,
    skeins: skeinsOf(total),
    left: request.leftGrams === undefined ? null : leftOver(request.leftGrams, bySc, tailSc, basis),
    basis,
  }
  return { ...estimate, text: yarnText(estimate, request.skein ?? null) }
}

export function amountOf(what: string, sc: number, basis: YarnBasis): YarnAmount {
  const metres = basis.metresPerSc === null ? null : sc * basis.metresPerSc
  const grams = basis.gramsPerSc === null ? null : sc * basis.gramsPerSc
  const errorShare = band80 * (grams === null ? basis.metresSpread : basis.gramsSpread)
  return {
    what,
    sc,
    metres,
    grams,
    metresBand: metres === null ? null : bandOf(metres, band80 * basis.metresSpread),
    gramsBand: grams === null ? null : bandOf(grams, band80 * basis.gramsSpread),
    errorShare,
  }
}

function bandOf(value: number, share: number): [number, number] {
  return [value / (1 + share), value * (1 + share)]
}

function skeinsFor(one: YarnAmount, skein: Skein | null, reserve: number): number | null {
  if (!skein) return null
  if (one.grams !== null) return Math.ceil(((1 + reserve) * one.grams) / skein.grams)
  if (one.metres !== null && skein.metres !== null)
    return Math.ceil(((1 + reserve) * one.metres) / skein.metres)
  return null
}

/** Told on the safe side: by the upper end of the band. */
function leftOver(grams: number, bySc: readonly number[], tailSc: number, basis: YarnBasis) {
  if (basis.gramsPerSc === null)
    throw new RoundwrightError(
      "no-measure",
      "Nothing tells what a piece weighs, so nothing can be said of what is left.",
      {
        hint: "Weigh some pieces together (4 pieces = 38 g), or give yarn and hook.",
      },
    )
  const perSc = basis.gramsPerSc * (1 + band80 * basis.gramsSpread)
  const piece = bySc.reduce((sum, one) => sum + one, tailSc)
  const pieces = Math.floor(grams / (perSc * piece) + 1e-9)
  let rest = grams / perSc - pieces * piece - tailSc
  let roundsMore = 0
  for (const sc of bySc) {
    if (rest < sc) break
    rest -= sc
    roundsMore += 1
  }
  return { grams, pieces, roundsMore: roundsMore === bySc.length ? roundsMore - 1 : roundsMore }
}

/** Whether a piece is solid enough for the weight of solid fabric: few of its edges are chains. */
export function isSolid(motif: Motif): boolean {
  const counts = motif.rounds.map(countRound)
  const chains = counts.reduce((sum, one) => sum + one.chains, 0)
  const stitches = counts.reduce((sum, one) => sum + one.stitches, 0)
  return chains <= 0.2 * (chains + stitches)
}
