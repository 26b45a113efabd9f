// The size of a stitch in a gauge: measured where the maker's swatch has it, else
// the published proportion scaled by the gauge, shifted by what the swatch tells of the hand.

import type { Gauge, Provenance, StitchSize } from "./gauge.ts"
import { sameKind } from "./kind.ts"
import { kindName } from "./kind-names.ts"
import type { StitchKind } from "./kinds.ts"
import type { Proportion, Working } from "./proportions.ts"
import { proportionOf } from "./stitch-forms.ts"
import { gatherSwatches, type MeasuredKind } from "./swatches.ts"

/**
 * Spread of h/w within one hand and stitch: one maker measured the same dc twice, 1.724 and 1.825,
 * and calls the difference measuring error (Stylecraft Special DK rows of the published gauges):
 * ln(1.825 / 1.724) / sqrt 2. Reading 10 cm to half a stitch adds about 1 %, which lies within it.
 */
export const sameHandSpread = Math.log(1.825 / 1.724) / Math.SQRT2
/**
 * Correlation between one maker's departures from the usual h/w in two different stitches. No
 * published maker gave three stitches of one hand, so a half is an assumption; it moves other
 * stitches half the way and narrows their spread by the square root of 1 - 1/4.
 */
export const handCorrelation = 0.5
/** What a form (post, loop, gathered) adds to the spread when only its plain stitch was swatched. */
const formSpread = 0.05

/** Height and width of one stitch, mm (or sc widths when the gauge is not absolute). */
export function sizeOf(kind: StitchKind, gauge: Gauge, worked: Working): StitchSize {
  const usual = proportionOf(kind, worked)
  const measured = gatherSwatches(gauge.input.swatches)
  const own = closest(
    measured.filter((one) => sameKind(one.kind, kind)),
    worked,
  )
  const ratio = ratioIn(kind, usual, measured, own, worked)
  const related = own ?? plainSwatch(kind, measured, worked)
  const relatedWidth =
    related?.widthMm === undefined
      ? undefined
      : (related.widthMm * usual.width) / proportionOf(related.kind, worked).width
  const widthMm = relatedWidth ?? gauge.scWidthMm * usual.width
  const heightMm = own?.heightMm === undefined ? ratio.value * widthMm : ownHeight(own, worked)
  return {
    heightMm,
    widthMm,
    ratioSpread: ratio.spread,
    provenance: ratio.provenance,
    note: ratio.note,
  }
}

interface Ratio {
  readonly value: number
  readonly spread: number
  readonly provenance: Provenance
  readonly note: string
}

function ratioIn(
  kind: StitchKind,
  usual: Proportion,
  measured: readonly MeasuredKind[],
  own: MeasuredKind | undefined,
  working: Working,
): Ratio {
  const usualRatio = usual.height / usual.width
  if (own?.heightMm !== undefined && own.widthMm !== undefined) {
    return {
      value: ownHeight(own, working) / own.widthMm,
      spread: Math.hypot(sameHandSpread, own.disagreement),
      provenance: "swatch",
      note: sameManner(own, working)
        ? "Measured on the swatch."
        : "Measured on a swatch worked the other way (rows or rounds) and converted.",
    }
  }
  const plain = plainSwatch(kind, measured, working)
  if (plain !== undefined && isWhole(plain)) {
    return {
      value: usualRatio * Math.exp(departure(plain)),
      spread: Math.hypot(sameHandSpread, plain.disagreement, formSpread),
      provenance: usual.provenance,
      note: `As in the swatch of ${kindName(plain.kind)}. ${usual.note}`,
    }
  }
  const others = measured.filter((one) => isWhole(one) && one.kind.basic !== "sl st")
  const half = own === undefined ? "" : " The swatch gives one of its two dimensions."
  if (others.length === 0) {
    return {
      value: usualRatio,
      spread: usual.spread,
      provenance: usual.provenance,
      note: usual.note + half,
    }
  }
  const shift = others.reduce((sum, one) => sum + departure(one), 0) / others.length
  return {
    value: usualRatio * Math.exp(handCorrelation * shift),
    spread: usual.spread * Math.sqrt(1 - handCorrelation ** 2),
    provenance: usual.provenance,
    note: `${usual.note} Moved half the way that the swatch of another stitch departs from the usual.${half}`,
  }
}

/** Logarithm of measured over usual h/w, each in its own manner of working. */
function departure(one: MeasuredKind): number {
  const usual = proportionOf(one.kind, { turned: one.worked !== "rounds" })
  return Math.log(one.heightMm! / one.widthMm! / (usual.height / usual.width))
}

/** A swatch that says it was worked the other way is converted by the usual difference. */
function ownHeight(own: MeasuredKind, working: Working): number {
  if (sameManner(own, working)) return own.heightMm!
  const there = proportionOf(own.kind, { turned: own.worked === "rows" })
  return (own.heightMm! * proportionOf(own.kind, working).height) / there.height
}

function sameManner(one: MeasuredKind, working: Working): boolean {
  return one.worked === undefined || (one.worked === "rows") === working.turned
}

function isWhole(one: MeasuredKind): boolean {
  return one.heightMm !== undefined && one.widthMm !== undefined
}

/** The swatch worked in the manner asked for, else the first. */
function closest(candidates: readonly MeasuredKind[], worked: Working): MeasuredKind | undefined {
  return candidates.find((one) => sameManner(one, worked)) ?? candidates[0]
}

/** For a post, loop or gathered form: the swatch of its plain stitch. */
function plainSwatch(
  kind: StitchKind,
  measured: readonly MeasuredKind[],
  worked: Working,
): MeasuredKind | undefined {
  return closest(
    measured.filter((one) => sameKind(one.kind, { basic: kind.basic })),
    worked,
  )
}
