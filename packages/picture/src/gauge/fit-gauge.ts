// The gauge of a real piece: sizes after its rounds and swatches, fitted by weighted least squares with what
// published gauges say beforehand. Unknown are the logarithm of the width of a stitch, shared by all, and of
// the height over the width of each kind in the piece; the sizes of the piece are those of the laid-out net.
// Source: A. Gelman et al., "Bayesian Data Analysis" (3rd ed.), 14.2 and 4.1: least squares with a prior as
// further residuals, errors from the curvature at the best.

import type { Motif } from "@roundwright/motif"
import { findCorners } from "@roundwright/motif"
import {
  invertPositiveDefinite,
  RoundwrightError,
  requirePositive,
  timesColumn,
} from "@roundwright/numerics"
import { layOut, measureOutline } from "@roundwright/relaxation"
import {
  type Gauge,
  gaugeFrom,
  kindName,
  type PieceSize,
  type StitchKind,
  type Swatch,
  sameKind,
  sizeOf,
} from "@roundwright/stitches"

export interface FittedStitch {
  readonly kind: StitchKind
  readonly widthMm: number
  readonly widthErrorMm: number
  readonly heightMm: number
  readonly heightErrorMm: number
}

export interface PredictedSize {
  readonly round: number
  readonly mm: number
  /** Standard error of a measurement there: of the fit and of measuring. */
  readonly errorMm: number
}

export interface FittedGauge {
  readonly gauge: Gauge
  readonly stitches: readonly FittedStitch[]
  /** Sizes after every round, side to side. */
  readonly sizes: readonly PredictedSize[]
  /** Measured less fitted, in standard errors of measuring. */
  readonly residuals: readonly {
    readonly round: number | "last"
    readonly standardErrors: number
  }[]
  /** The further measurement that would narrow heights and widths most; null when none would by a tenth. */
  readonly next: { readonly what: string; readonly narrowsTo: number } | null
}

export interface MeasuredWidth {
  readonly scWidthMm: number
  /** Relative standard deviation. */
  readonly spread: number
}

export interface FitOptions {
  /** Sizes of the piece, side to side or corner to corner. */
  readonly sizes: readonly PieceSize[]
  /** Swatches of the same hand, beside those the gauge holds. */
  readonly swatches?: readonly Swatch[]
  /** Width of one sc that something else tells, such as the weight of the yarn in the piece. */
  readonly widths?: readonly MeasuredWidth[]
}

/** A piece patted flat is measured to this share, and read off a tape to half a centimetre (5 mm / root 12). */
const [measuredShare, measuredMm] = [0.015, 1.44]
/** A swatch's width and height: counted over 10 cm to half a stitch, and the spread between swatches of one hand. */
const swatchShare = 0.03
/** Spread of the width before anything of the piece is known, by what the gauge rests on. */
const widthSpread: Readonly<Record<Gauge["source"], number>> = {
  piece: 0.05,
  swatch: 0.06,
  "yarn-and-hook": 0.12,
  yarn: 0.18,
  hook: 0.18,
  none: 0.5,
}
const iterations = 4
/** Step of the logarithms for differences, larger than the net's rest. */
const step = 0.02
/** A further measurement is told of when it narrows the errors to this share or less. */
const worthwhile = 0.9

/** @throws RoundwrightError `nothing-measured`, `not-positive`, what `layOut` throws */
export function fitGauge(motif: Motif, gauge: Gauge, options: FitOptions): FittedGauge {
  const { sizes } = options
  const { widths = [], swatches = [] } = options
  if (sizes.length === 0 && swatches.length === 0 && widths.length === 0)
    throw new RoundwrightError("nothing-measured", "Nothing of the piece was measured.", {
      hint: "Give its size after a round, such as: Size: 9 cm after Rnd 3.",
    })
  for (const { mm } of sizes) requirePositive(mm, "A size of the piece")
  for (const { round } of sizes)
    if (round !== "last" && !motif.rounds.some(({ number }) => number === round))
      throw new RoundwrightError("no-such-round", `The piece has no round ${round}.`)
  const kinds = kindsOf(motif)
  // Without any gauge a stitch of the usual size is the start; its width is then hardly held.
  const start = gauge.absolute ? gauge : gaugeFrom({ ...gauge.input, scWidthMm: 5 })
  const model = modelOf(motif, start, kinds)
  const size = kinds.length + 1
  const priors = [
    widthSpread[gauge.source],
    ...kinds.map((kind) => sizeOf(kind, start, { turned: false }).ratioSpread),
  ]
  let at = new Array<number>(size).fill(0)
  let linear = model.linear(at)
  for (let turn = 0; turn < iterations; turn++) {
    const { normal, right } = equations(linear, at, priors, options, kinds, start)
    at = timesColumn(invertPositiveDefinite(normal), right)
    linear = model.linear(at)
  }
  const { normal } = equations(linear, at, priors, options, kinds, start)
  const covariance = invertPositiveDefinite(normal)
  const variance = (row: readonly number[]) => dot(row, timesColumn(covariance, row))
  const fitted = model.gaugeAt(at)
  const stitches = kinds.map((kind, k): FittedStitch => {
    const { widthMm, heightMm } = sizeOf(kind, fitted, { turned: false })
    const width = unit(size, 0)
    const height = width.map((value, i) => (i === k + 1 ? 1 : value))
    return {
      kind,
      widthMm,
      widthErrorMm: widthMm * Math.sqrt(variance(width)),
      heightMm,
      heightErrorMm: heightMm * Math.sqrt(variance(height)),
    }
  })
  const predicted = motif.rounds.map(({ number }, i): PredictedSize => {
    const { mm, slopes } = linear.sides[i]!
    const measuring = Math.hypot(measuredShare, measuredMm / mm)
    return { round: number, mm, errorMm: mm * Math.hypot(Math.sqrt(variance(slopes)), measuring) }
  })
  return {
    gauge: fitted,
    stitches,
    sizes: predicted,
    residuals: sizes.map((piece) => {
      const row = linear.row(piece)
      const spread = Math.hypot(measuredShare, measuredMm / piece.mm)
      return { round: piece.round, standardErrors: Math.log(piece.mm / row.mm) / spread }
    }),
    next: nextMeasurement(motif, kinds, covariance, linear, sizes),
  }
}

interface SizeRow {
  readonly mm: number
  /** Change of its logarithm with each unknown. */
  readonly slopes: readonly number[]
}

interface Linear {
  readonly sides: readonly SizeRow[]
  readonly row: (piece: PieceSize) => SizeRow
}

function modelOf(motif: Motif, start: Gauge, kinds: readonly StitchKind[]) {
  const corners = findCorners(motif)
  const gaugeAt = (at: readonly number[]): Gauge => {
    const width = Math.exp(at[0]!)
    return gaugeFrom({
      ...start.input,
      scWidthMm: start.scWidthMm * width,
      swatches: kinds.map((kind, k) => {
        const usual = sizeOf(kind, start, { turned: false })
        return {
          kind,
          widthMm: usual.widthMm * width,
          heightMm: usual.heightMm * width * Math.exp(at[k + 1]!),
          worked: "rounds" as const,
        }
      }),
    })
  }
  const sizesAt = (at: readonly number[]) => {
    const shape = layOut(motif, gaugeAt(at), { inSpace: false })
    const outlines = shape.net.edges.map((_, round) =>
      measureOutline(shape.net, shape.flat.xy, 2, round, corners[round]),
    )
    return motif.rounds.map((_, i) => ({
      sides: shape.acrossAfterRound[i]!,
      corners: 2 * outlines[i]!.cornerReachMm,
    }))
  }
  const linear = (at: readonly number[]): Linear => {
    const here = sizesAt(at)
    // All lengths go with the width: the first slope is 1 without any laying out.
    const moved = kinds.map((_, k) => sizesAt(at.map((v, i) => (i === k + 1 ? v + step : v))))
    const rowOf = (i: number, across: "sides" | "corners"): SizeRow => ({
      mm: here[i]![across],
      slopes: [1, ...moved.map((one) => Math.log(one[i]![across] / here[i]![across]) / step)],
    })
    return {
      sides: motif.rounds.map((_, i) => rowOf(i, "sides")),
      row: (piece) =>
        rowOf(
          piece.round === "last"
            ? motif.rounds.length - 1
            : motif.rounds.findIndex(({ number }) => number === piece.round),
          piece.across,
        ),
    }
  }
  return { gaugeAt, linear }
}

/** Normal equations of the residuals linearised at `at`, priors among them. */
function equations(
  linear: Linear,
  at: readonly number[],
  priors: readonly number[],
  options: FitOptions,
  kinds: readonly StitchKind[],
  start: Gauge,
): { normal: number[][]; right: number[] } {
  const size = at.length
  const normal = Array.from({ length: size }, () => new Array<number>(size).fill(0))
  const right = new Array<number>(size).fill(0)
  const add = (row: readonly number[], value: number, spread: number) => {
    const weight = 1 / (spread * spread)
    for (let i = 0; i < size; i++) {
      right[i]! += weight * row[i]! * value
      for (let k = 0; k < size; k++) normal[i]![k]! += weight * row[i]! * row[k]!
    }
  }
  priors.forEach((spread, i) => {
    add(unit(size, i), 0, spread)
  })
  for (const piece of options.sizes) {
    const { mm, slopes } = linear.row(piece)
    const predicted = slopes.reduce((sum, slope, i) => sum + slope * at[i]!, 0)
    const spread = Math.hypot(measuredShare, measuredMm / piece.mm)
    add(slopes, Math.log(piece.mm / mm) + predicted, spread)
  }
  for (const { scWidthMm, spread } of options.widths ?? [])
    add(unit(size, 0), Math.log(scWidthMm / start.scWidthMm), spread)
  for (const swatch of options.swatches ?? []) {
    const k = kinds.findIndex((kind) => sameKind(kind, swatch.kind))
    const usual = sizeOf(swatch.kind, start, { turned: swatch.worked === "rows" })
    if (swatch.widthMm !== undefined)
      add(unit(size, 0), Math.log(swatch.widthMm / usual.widthMm), swatchShare)
    if (swatch.heightMm !== undefined && k >= 0)
      add(
        unit(size, 0).map((value, i) => (i === k + 1 ? 1 : value)),
        Math.log(swatch.heightMm / usual.heightMm),
        swatchShare,
      )
  }
  return { normal, right }
}

function nextMeasurement(
  motif: Motif,
  kinds: readonly StitchKind[],
  covariance: readonly (readonly number[])[],
  linear: Linear,
  sizes: readonly PieceSize[],
): FittedGauge["next"] {
  const size = kinds.length + 1
  const before = covariance.reduce((sum, row, i) => sum + row[i]!, 0)
  const candidates = [
    ...motif.rounds.flatMap(({ number }, i) =>
      sizes.some(({ round }) => round === number)
        ? []
        : [
            {
              what: `the size after round ${number}`,
              row: linear.sides[i]!.slopes,
              spread: Math.hypot(measuredShare, measuredMm / linear.sides[i]!.mm),
            },
          ],
    ),
    ...kinds.flatMap((kind, k) => [
      {
        what: `the height of ${kindName(kind)} on a swatch`,
        row: unit(size, 0).map((value, i) => (i === k + 1 ? 1 : value)),
        spread: swatchShare,
      },
      {
        what: `the width of ${kindName(kind)} on a swatch`,
        row: unit(size, 0),
        spread: swatchShare,
      },
    ]),
  ].map(({ what, row, spread }) => {
    const c = timesColumn(covariance, row)
    const seen = dot(row, c)
    const gain = c.reduce((sum, value) => sum + value * value, 0) / (seen + spread * spread)
    return { what, narrowsTo: Math.sqrt(Math.max(0, before - gain) / before) }
  })
  const best = candidates.reduce<FittedGauge["next"]>(
    (a, b) => (a === null || b.narrowsTo < a.narrowsTo ? b : a),
    null,
  )
  return best !== null && best.narrowsTo <= worthwhile ? best : null
}

function kindsOf(motif: Motif): StitchKind[] {
  const kinds: StitchKind[] = []
  for (const round of motif.rounds)
    for (const element of round.elements)
      if (element.type === "stitch" && element.kind.basic !== "sl st") {
        const plain = { basic: element.kind.basic }
        if (!kinds.some((kind) => sameKind(kind, plain))) kinds.push(plain)
      }
  return kinds
}

function dot(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, value, i) => sum + value * b[i]!, 0)
}

function unit(size: number, at: number): number[] {
  return Array.from({ length: size }, (_, i) => (i === at ? 1 : 0))
}
