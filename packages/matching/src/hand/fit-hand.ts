// The hand of a real piece: heights and widths of its stitches with their errors, the sizes that follow, and what to
// measure next, from sizes after rounds, swatches and the weight of the yarn. A weight tells the width of a stitch: one sc
// takes so many widths of yarn (yarn-basis.ts), and a label says how many metres a gram has.

import { formatLength, formatPercent } from "@roundwright/assessment"
import { requirePositive } from "@roundwright/numerics"
import { type FittedGauge, fitGauge, type MeasuredWidth } from "@roundwright/picture"
import { gaugeFrom, kindName, type StitchKind, type Terms } from "@roundwright/stitches"
import type { PieceNow } from "../ways/piece.ts"
import { yarnByRound } from "../yarn/stitch-yarn.ts"
import { scYarnInWidths, weightSpread, yarnPerGram } from "../yarn/yarn-basis.ts"
import type { HandMeasured } from "./read-hand.ts"

export interface HandFit {
  readonly stitches: readonly {
    readonly stitch: string
    readonly widthMm: number
    readonly widthErrorMm: number
    readonly heightMm: number
    readonly heightErrorMm: number
  }[]
  readonly sizes: FittedGauge["sizes"]
  readonly residuals: FittedGauge["residuals"]
  readonly next: FittedGauge["next"]
  /** First what it comes to, in a sentence. */
  readonly text: string
  readonly notes: readonly string[]
}

/** Measured this many standard errors beside what fits the rest: a slip of the ruler or of the count. */
const astray = 2.5

/** @throws RoundwrightError what `fitGauge` throws */
export function fitHand(piece: PieceNow, measured: HandMeasured): HandFit {
  const { reading } = piece.check
  const { terms } = reading
  const { pieces = [], scWidthMm: _, ...before } = reading.gauge
  const sizes = [...pieces.filter(({ round }) => notAmong(measured, round)), ...measured.sizes]
  const gauge = gaugeFrom(before)
  const weighed = widthsByWeight(piece, measured)
  const fit = fitGauge(piece.motif, gauge, {
    sizes,
    swatches: measured.swatches,
    widths: weighed,
  })
  const name = (kind: StitchKind) => kindName(kind, terms as Terms)
  const stitches = fit.stitches.map(({ kind, ...figures }) => ({ stitch: name(kind), ...figures }))
  const [first] = stitches
  const odd = fit.residuals.filter(({ standardErrors }) => Math.abs(standardErrors) > astray)
  return {
    stitches,
    sizes: fit.sizes,
    residuals: fit.residuals,
    next: fit.next,
    text: first
      ? `In this hand one ${first.stitch} is ${figure(first.widthMm, first.widthErrorMm)} wide and ${figure(first.heightMm, first.heightErrorMm)} tall; the piece comes out ${sizeWords(fit)} across.`
      : "There is no stitch in the piece to be measured.",
    notes: [
      ...odd.map(
        ({ round, standardErrors }) =>
          `The size ${round === "last" ? "of the finished piece" : `after round ${round}`} lies ${Math.abs(standardErrors).toFixed(1)} standard errors ${standardErrors > 0 ? "above" : "below"} what fits the rest: measure it again, and count that round.`,
      ),
      fit.next === null
        ? "No further measurement would narrow heights and widths by a tenth."
        : `What would narrow heights and widths most is ${fit.next.what}: to ${formatPercent(fit.next.narrowsTo)} of these errors.`,
      ...weighed.map(
        ({ spread }) =>
          `The weight counts for the width of a stitch to ${formatPercent(spread)} only: tension and label move it.`,
      ),
    ],
  }
}

function notAmong({ sizes }: HandMeasured, round: number | "last"): boolean {
  return !sizes.some((size) => size.round === round)
}

/** Width of one sc from grams, metres a gram, and the yarn the piece holds in sc. */
function widthsByWeight(
  { motif, gauge }: PieceNow,
  { weighed, skein }: HandMeasured,
): MeasuredWidth[] {
  const pieceSc = yarnByRound(motif).reduce((sum, one) => sum + one, 0)
  const metres = yarnPerGram(gauge, skein)
  if (metres === null || pieceSc <= 0) return []
  return weighed.map((one) => {
    requirePositive(one.grams, "A weight")
    const metresPerSc = ((one.grams / one.pieces) * metres.perGram) / pieceSc
    const step = one.stepGrams / Math.sqrt(12) / one.grams
    return {
      scWidthMm: (1000 * metresPerSc) / scYarnInWidths,
      spread: Math.hypot(weightSpread, metres.spread, step),
    }
  })
}

function sizeWords({ sizes }: FittedGauge): string {
  const last = sizes.at(-1)
  return last ? `${formatLength(last.mm)} (give or take ${formatLength(last.errorMm)})` : "nothing"
}

/** A length with its standard error, both to a tenth of a millimetre. */
export function figure(mm: number, errorMm: number): string {
  return `${mm.toFixed(1)} ± ${errorMm.toFixed(1)} mm`
}
