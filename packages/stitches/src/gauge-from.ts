// Makes a gauge from swatches, yarn weight and hook, any or none of them, and refuses what no hand
// can have worked. A measured piece comes first; then swatches; then yarn and hook; then either; then nothing, in which
// case lengths are in widths of one sc.

import { RoundwrightError, requirePositive } from "@roundwright/numerics"
import { broughtToHook } from "./another-hand.ts"
import { defaultScWidth } from "./default-width.ts"
import type { Gauge, GaugeInput, Swatch } from "./gauge.ts"
import { sameKind } from "./kind.ts"
import { kindName } from "./kind-names.ts"
import { proportionOf } from "./stitch-forms.ts"
import { gatherSwatches, type MeasuredKind } from "./swatches.ts"
import { yarnWeights } from "./yarn-weights.ts"

/** Smallest and largest believable stitch, mm: finest thread to arm-thick rope. */
const believableMm = { least: 0.5, most: 200 } as const
/** Smallest and largest believable hook, mm: below the finest steel hook and above the thickest made. */
const believableHookMm = { least: 0.3, most: 60 } as const
/** Rugs are worked with six strands and rope-like work with some more. */
const mostStrands = 12
/** A top this many widths to one side stands over the next base. */
const mostLean = 1
/**
 * h/w further than this from the usual is refused. The farthest printed gauge, itself set aside as
 * implausible (dc 4 rows in 4 in), is 1.9 times the usual.
 */
const absurdFactor = 3
/**
 * h/w further than this from the usual is remarked: of the published gauges of sc, hdc and dc all
 * lie within 1.29 but one, dc at 1.5, whose page contradicts itself.
 */
const oddFactor = 1.3

/**
 * A gauge from all that is known.
 * @throws RoundwrightError `absurd-swatch`, `absurd-piece`, `absurd-hook`, `absurd-strands`, `unknown-yarn-weight`,
 * `not-finite`, `not-positive`
 */
export function gaugeFrom(given: GaugeInput): Gauge {
  checkYarnAndHook(given)
  const { input, notes: broughtNotes } = broughtToHook(given)
  for (const swatch of input.swatches) checkSwatch(swatch)
  const measured = gatherSwatches(input.swatches)
  const notes = [...broughtNotes, ...measured.flatMap((one) => one.notes)]
  for (const one of measured) notes.push(...remarkOddRatio(one, input.swatches))
  for (const swatch of input.swatches) {
    if (swatch.widthMm === undefined && swatch.heightMm === undefined) {
      notes.push(`The swatch of ${kindName(swatch.kind)} gives no size and was not used.`)
    }
  }
  if (input.scWidthMm !== undefined) {
    const note = `Sizes come from the piece as measured: one sc is ${input.scWidthMm.toFixed(2)} mm wide in it.`
    const notesOfPiece = [note, ...remarkOddSize("piece", input.scWidthMm, input), ...notes]
    return {
      source: "piece",
      absolute: true,
      scWidthMm: input.scWidthMm,
      input,
      notes: notesOfPiece,
    }
  }
  const fromSwatch = scWidthFromSwatches(measured)
  if (fromSwatch !== undefined) {
    notes.push(
      ...remarkOddSize("swatch", fromSwatch.widthMm, input),
      ...remarkUnlikeWidths(measured),
    )
    return {
      source: "swatch",
      absolute: true,
      scWidthMm: fromSwatch.widthMm,
      input,
      notes: [fromSwatch.note, ...notes],
    }
  }
  const { source, widthMm, note } = defaultScWidth(input)
  return { source, absolute: source !== "none", scWidthMm: widthMm, input, notes: [note, ...notes] }
}

/** The gauge in sentences: where sizes come from and what was assumed. */
export function describeGauge(gauge: Gauge): string[] {
  const width = gauge.absolute
    ? `One sc is taken ${gauge.scWidthMm.toFixed(1)} mm wide.`
    : "Sizes are relative: the unit is the width of one sc."
  return [width, ...gauge.notes]
}

function checkYarnAndHook(input: GaugeInput): void {
  const { yarnWeight, scWidthMm, leanShare, strands } = input
  if (scWidthMm !== undefined) checkWidthOfPiece(scWidthMm)
  if (input.threadSize !== undefined) requirePositive(input.threadSize, "The size of a thread")
  for (const { mm } of input.pieces ?? []) requirePositive(mm, "The size of a piece")
  if (leanShare !== undefined) checkLean(leanShare)
  if (yarnWeight !== undefined && yarnWeights[yarnWeight] === undefined) {
    throw new RoundwrightError("unknown-yarn-weight", `There is no yarn weight ${yarnWeight}.`, {
      hint: "Yarn weights run from 0 (lace) to 7 (jumbo).",
    })
  }
  if (
    strands !== undefined &&
    !(Number.isInteger(strands) && strands >= 1 && strands <= mostStrands)
  )
    throw new RoundwrightError("absurd-strands", `Yarn is not held in ${strands} strands.`, {
      hint: `Give a whole number from 1 to ${mostStrands}, such as: worsted held double.`,
      numbers: { strands },
    })
  for (const hookMm of [input.hookMm, input.gaugeHookMm, input.yarnOfHookMm]) checkHook(hookMm)
}

function checkHook(hookMm: number | undefined): void {
  if (hookMm === undefined) return
  requirePositive(hookMm, "A hook")
  if (hookMm < believableHookMm.least || hookMm > believableHookMm.most) {
    throw new RoundwrightError("absurd-hook", `A hook of ${hookMm} mm cannot be meant.`, {
      hint: "Give the hook's thickness in mm, such as 5 mm.",
      numbers: { hookMm },
    })
  }
}

function checkLean(leanShare: number): void {
  if (Math.abs(leanShare) <= mostLean) return
  throw new RoundwrightError(
    "absurd-lean",
    "A stitch cannot lean further than onto the next one.",
    {
      hint: "Give the lean as a share of a stitch's width, such as 0.05.",
      numbers: { leanShare },
    },
  )
}

function checkWidthOfPiece(scWidthMm: number): void {
  requirePositive(scWidthMm, "The width of one sc")
  if (scWidthMm >= believableMm.least && scWidthMm <= believableMm.most) return
  throw new RoundwrightError(
    "absurd-piece",
    `A piece of this size would have stitches ${Number(scWidthMm.toPrecision(2))} mm wide.`,
    {
      hint: "Check the size of the piece, its unit and the round it was measured after.",
      numbers: { scWidthMm },
    },
  )
}

function checkSwatch(swatch: Swatch): void {
  const name = kindName(swatch.kind)
  for (const [what, size] of [
    ["wide", swatch.widthMm],
    ["high", swatch.heightMm],
  ] as const) {
    if (size === undefined) continue
    requirePositive(size, `The size of one ${name}`)
    if (size < believableMm.least || size > believableMm.most) {
      throw new RoundwrightError("absurd-swatch", `One ${name} cannot be ${size} mm ${what}.`, {
        hint: "Check the counts and the unit (cm, mm or in) of the gauge.",
        numbers: { sizeMm: size },
      })
    }
  }
  const off = ratioOff(swatch)
  if (off !== undefined && (off > absurdFactor || off < 1 / absurdFactor)) {
    const ratio = swatch.heightMm! / swatch.widthMm!
    throw new RoundwrightError(
      "absurd-swatch",
      `One ${name} cannot be ${ratio.toFixed(2)} times as high as wide.`,
      {
        hint: "Check that stitches and rows are not exchanged and that the stitch is named in the right terms (US or UK).",
        numbers: { ratio },
      },
    )
  }
}

/** Measured h/w over the usual one; slip stitches have no usual one. */
function ratioOff(swatch: Swatch): number | undefined {
  const { widthMm, heightMm, kind } = swatch
  if (widthMm === undefined || heightMm === undefined || kind.basic === "sl st") return undefined
  const usual = proportionOf(kind, { turned: swatch.worked !== "rounds" })
  return heightMm / widthMm / (usual.height / usual.width)
}

function remarkOddRatio(one: MeasuredKind, swatches: readonly Swatch[]): string[] {
  const { widthMm, heightMm, kind } = one
  if (widthMm === undefined || heightMm === undefined) return []
  const worked = swatches.find((swatch) => sameKind(swatch.kind, kind))?.worked
  const whole: Swatch = { kind, widthMm, heightMm, ...(worked === undefined ? {} : { worked }) }
  checkSwatch(whole)
  const off = ratioOff(whole)
  if (off === undefined || (off <= oddFactor && off >= 1 / oddFactor)) return []
  const ratio = (heightMm / widthMm).toFixed(2)
  return [
    `The swatch has ${kindName(kind)} ${ratio} times as high as wide, ${off > 1 ? "much taller" : "much shorter"} than usual; it is used as it stands.`,
  ]
}

/**
 * A swatch this many times as wide as yarn and hook let expect is remarked: nine in ten published
 * gauges lie within 1.2, and the farthest, fingering yarn on a 5 mm hook, misses by 47 %.
 */
const oddSizeFactor = 1.5

function remarkOddSize(what: "swatch" | "piece", scWidthMm: number, input: GaugeInput): string[] {
  const odd = oddSize(scWidthMm, input)
  if (odd === undefined) return []
  return [
    `The ${what} is ${odd.toFixed(1)} times as wide as the yarn or hook named lets expect: check that they belong to it, and the terms (US or UK). The ${what} is used.`,
  ]
}

/** Width over the width that yarn and hook let expect, where that is too far from 1 for one hand; undefined else. */
function oddSize(scWidthMm: number, input: GaugeInput): number | undefined {
  const expected = defaultScWidth(input)
  if (expected.source === "none") return undefined
  const off = scWidthMm / expected.widthMm
  return off <= oddSizeFactor && off >= 1 / oddSizeFactor ? undefined : off
}

/**
 * How many times as wide as yarn and hook let expect the swatches make a stitch, where no hand can account for it ("8 dc =
 * 10 cm" of DK with a 4 mm hook: 2.3); undefined where they agree or there is nothing to compare.
 */
export function swatchUnlikeYarn(input: GaugeInput): number | undefined {
  const fromSwatch = scWidthFromSwatches(gatherSwatches(input.swatches))
  return fromSwatch === undefined ? undefined : oddSize(fromSwatch.widthMm, input)
}

/** Widths of two stitches in one hand differ by no more than this once their usual ratio is taken off. */
const unlikeWidths = 1.25

/** sc, hdc and dc are usually equally wide; two swatches far from that may be of two yarns or hooks. */
function remarkUnlikeWidths(measured: readonly MeasuredKind[]): string[] {
  const wide = measured
    .filter((one) => one.widthMm !== undefined && one.kind.basic !== "sl st")
    .map((one) => ({ name: kindName(one.kind), unit: one.widthMm! / usualOf(one).width }))
    .sort((a, b) => a.unit - b.unit)
  const [least, most] = [wide[0], wide.at(-1)]
  if (least === undefined || most === undefined || most.unit <= unlikeWidths * least.unit) return []
  const times = (most.unit / least.unit).toFixed(1)
  return [
    `For one hand the swatches of ${least.name} and ${most.name} do not fit one another: ${most.name} is ${times} times too wide beside ${least.name}. Each is used for its own stitch.`,
  ]
}

/**
 * One sc's width: of the sc swatch itself, else the geometric mean of what the other stitches'
 * widths imply, else what the heights imply by the usual h/w.
 */
function scWidthFromSwatches(
  measured: readonly MeasuredKind[],
): { widthMm: number; note: string } | undefined {
  const plainSc = measured.find((one) => sameKind(one.kind, { basic: "sc" }))
  if (plainSc?.widthMm !== undefined) {
    return { widthMm: plainSc.widthMm, note: "Sizes come from the swatch." }
  }
  const wide = measured.filter((one) => one.widthMm !== undefined)
  if (wide.length > 0) {
    const widths = wide.map((one) => one.widthMm! / usualOf(one).width)
    const names = wide.map((one) => kindName(one.kind)).join(", ")
    return { widthMm: geometricMean(widths), note: `Sizes come from the swatch of ${names}.` }
  }
  const high = measured.filter((one) => one.heightMm !== undefined)
  if (high.length === 0) return undefined
  const widths = high.map((one) => one.heightMm! / usualOf(one).height)
  const names = high.map((one) => kindName(one.kind)).join(", ")
  return {
    widthMm: geometricMean(widths),
    note: `The swatch gives only the rows of ${names}; widths follow from the usual height over width.`,
  }
}

function usualOf(one: MeasuredKind) {
  return proportionOf(one.kind, { turned: one.worked !== "rounds" })
}

function geometricMean(values: readonly number[]): number {
  return Math.exp(values.reduce((sum, value) => sum + Math.log(value), 0) / values.length)
}
