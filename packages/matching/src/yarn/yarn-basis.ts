// What turns yarn told in sc into metres and grams, the surest first: pieces weighed on a scale; else one sc takes 8.4 times
// its width; for grams the label's metres, else solid fabric of 0.8 kg/m2, else the metres usual for the yarn's weight. Each
// with its error as a relative standard deviation.

import { RoundwrightError, requirePositive } from "@roundwright/numerics"
import type { Gauge, YarnWeight } from "@roundwright/stitches"

/**
 * Yarn of one sc over its width. One maker unravelled squares: 31.4 in to the square inch of sc in worsted with 5 mm
 * (windchilde.com, bluedepth), which at the usual height of a row is 8.4 widths. Single strips take a quarter more.
 */
export const scYarnInWidths = 8.4
/** Tension alone moves use by 15 % or more (winenfood.com), and single strips of the same hand take a quarter more than squares. */
const scYarnSpread = 0.18
/** Kinds against one another: weighed and unravelled pairs lie a median 4 % from the model (test/evidence/yarn.ts). */
export const kindSpread = 0.05
/** Width of a stitch from yarn and hook alone; from a swatch or the piece itself. */
const widthSpread = { assumed: 0.1, measured: 0.03 } as const

/** Solid fabric, kg/m2 = g per 1000 mm2: six solid blankets and throws lie from 0.76 to 0.94, median 0.83. */
export const solidFabricKgPerM2 = 0.8

/** Nine solid pieces lie with a standard deviation of 12 % about 0.8 kg/m2; so few make a band wider. */
const fabricSpread = 0.15

/** A label's metres hold to a few per cent; a ball of 100 g weighed 103 g (designingvashti). */
const labelSpread = 0.03

/** Metres in 100 g by weight of the yarn: middle of label classes and tables (yarn-standards data: Spin-Off, skeinqueenyarns, handout). */
export const usualMetresPer100g: Readonly<Record<YarnWeight, number>> = {
  0: 700,
  1: 400,
  2: 290,
  3: 230,
  4: 165,
  5: 100,
  6: 60,
  7: 35,
}
const usualMetresSpread = 0.18

/** Several pieces laid on the scale together: the more, the less its step matters. */
export interface Weighed {
  readonly pieces: number
  readonly grams: number
  /** The step of the scale, g. */
  readonly stepGrams: number
}

/** One skein as its label has it. */
export interface Skein {
  readonly grams: number
  /** Null where the label is lost. */
  readonly metres: number | null
}

export interface YarnBasis {
  /** Per sc; null where it cannot be told. */
  readonly metresPerSc: number | null
  readonly gramsPerSc: number | null
  /** Relative standard deviations, the error of the kinds included. */
  readonly metresSpread: number
  readonly gramsSpread: number
  /** Where the figures are from, in sentences. */
  readonly notes: readonly string[]
}

export interface BasisOptions {
  readonly weighed?: readonly Weighed[]
  readonly skein?: Skein | null
  /** Of the piece in hand, to turn fabric into grams where no label does. */
  readonly areaMm2?: number
  readonly solid?: boolean
}

/** How well the yarn of a piece tells the width of a stitch: use of yarn and kinds against one another. */
export const weightSpread = Math.hypot(scYarnSpread, kindSpread)

/** Metres of yarn a gram has, from its label, else as is usual for its weight class; null where neither is told. */
export function yarnPerGram(
  gauge: Gauge,
  skein: Skein | null,
): { readonly perGram: number; readonly spread: number } | null {
  const { label, usual } = metresPerGram(gauge, skein)
  const perGram = label ?? usual
  return perGram === null
    ? null
    : { perGram, spread: label === null ? usualMetresSpread : labelSpread }
}

function metresPerGram(gauge: Gauge, skein: Skein | null) {
  const weight = gauge.input.yarnWeight
  return {
    label: skein?.metres ? skein.metres / skein.grams : null,
    usual: weight === undefined ? null : usualMetresPer100g[weight] / 100,
  }
}

/** @param pieceSc yarn of one whole piece, in sc @throws RoundwrightError `bad-weight` */
export function yarnBasis(pieceSc: number, gauge: Gauge, options: BasisOptions): YarnBasis {
  requirePositive(pieceSc, "The yarn of a piece")
  const { label, usual } = metresPerGram(gauge, options.skein ?? null)
  const told = yarnPerGram(gauge, options.skein ?? null)
  const perGram = told?.perGram ?? null
  const perGramSpread = told?.spread ?? usualMetresSpread
  const scale = fromScale(options.weighed ?? [], pieceSc)
  if (scale) {
    return {
      gramsPerSc: scale.gramsPerSc,
      gramsSpread: Math.hypot(kindSpread, scale.spread),
      metresPerSc: perGram === null ? null : scale.gramsPerSc * perGram,
      metresSpread: Math.hypot(kindSpread, scale.spread, perGramSpread),
      notes: [scale.note, ...(perGram === null ? [unknownMetres] : [metresNote(label, usual)])],
    }
  }
  const scMm = gauge.absolute ? scYarnInWidths * gauge.scWidthMm : null
  const measured = gauge.source === "piece" || gauge.source === "swatch"
  const lengthSpread = Math.hypot(
    kindSpread,
    scYarnSpread,
    measured ? widthSpread.measured : widthSpread.assumed,
  )
  const metresPerSc = scMm === null ? null : scMm / 1000
  const fabric =
    options.areaMm2 !== undefined && options.solid && gauge.absolute && label === null
      ? (solidFabricKgPerM2 * options.areaMm2) / 1000 / pieceSc
      : null
  const byLength = metresPerSc === null || perGram === null ? null : metresPerSc / perGram
  return {
    metresPerSc,
    metresSpread: lengthSpread,
    gramsPerSc: fabric ?? byLength,
    gramsSpread:
      fabric === null
        ? Math.hypot(lengthSpread, perGramSpread)
        : Math.hypot(kindSpread, fabricSpread),
    notes: [
      ...(scMm === null
        ? ["Nothing tells how large a stitch is: yarn is told in stitches only."]
        : [
            `Nothing was weighed: a single crochet is taken to use ${scYarnInWidths} times its width, ${(scMm / 10).toFixed(1)} cm.`,
          ]),
      ...(fabric !== null
        ? [`Grams are of solid fabric at ${solidFabricKgPerM2} kg a square metre.`]
        : byLength === null
          ? []
          : [metresNote(label, usual)]),
      "Weigh some pieces together and say so (4 pieces = 38 g): that is the surest.",
    ],
  }
}

const unknownMetres = "No label tells how many metres a skein holds, so lengths are not told."

function metresNote(label: number | null, usual: number | null): string {
  return label === null
    ? `No label is given: ${Math.round(100 * usual!)} m in 100 g is usual for this weight.`
    : `By the label, ${Math.round(100 * label)} m in 100 g.`
}

/** All weighings together; each is off by up to half its step, which is step / sqrt 12 as a standard deviation. */
function fromScale(weighed: readonly Weighed[], pieceSc: number) {
  if (weighed.length === 0) return null
  let pieces = 0
  let grams = 0
  let variance = 0
  for (const one of weighed) {
    if (!(one.pieces >= 1 && one.grams > 0 && one.stepGrams > 0))
      throw new RoundwrightError(
        "bad-weight",
        "A weighing needs at least one piece and some grams.",
        {
          hint: "Write it such as: 4 pieces = 38 g.",
          numbers: { pieces: one.pieces, grams: one.grams },
        },
      )
    pieces += one.pieces
    grams += one.grams
    variance += one.stepGrams ** 2 / 12
  }
  const spread = Math.sqrt(variance) / grams
  const step = Math.max(...weighed.map(({ stepGrams }) => stepGrams))
  return {
    gramsPerSc: grams / (pieces * pieceSc),
    spread,
    note: `From ${pieces === 1 ? "one piece" : `${pieces} pieces`} weighed, ${grams} g together on a scale with steps of ${step} g, which alone is ${(100 * spread).toFixed(1)} %.`,
  }
}

/** Relative standard deviations of a length from yarn and hook alone, and of the weight of solid fabric. */
export const unweighedSpreads = {
  length: Math.hypot(kindSpread, scYarnSpread, widthSpread.assumed),
  fabric: Math.hypot(kindSpread, fabricSpread),
} as const

/** An 80 % band is 1.28 standard deviations either way. */
export const band80 = 1.2816
