// The ways of all rings together: rounds of one piece share one scale and one hand, so that a tall dc in
// one ring speaks for tall dc in all. What they share is a small Gaussian state (log scale, log height of
// every kind), brought up to date ring by ring as a Kalman filter does; the best sequences are kept.
// Source: R. E. Kalman, "A new approach to linear filtering and prediction problems" (1960).

import { type Gauge, sizeOf } from "@roundwright/stitches"
import { choicesOf } from "./choices.ts"
import { type RebuildKind, type RoundChoice, rebuildKinds, type SeenRing } from "./seen-ring.ts"

export interface Sequence {
  readonly choices: readonly RoundChoice[]
  readonly logChance: number
}

export interface FilterOptions {
  readonly gauge: Gauge
  /** Spread of the scale as a logarithm: how well the known length or the gauge is known. */
  readonly scaleSpread: number
  /** Spread of a single radius, of itself. */
  readonly radiusSpread: number
  readonly repeats: number
  /** Radius of the hole that the first round is worked round; 0 for a ring drawn shut. */
  readonly holeMm: number
}

/** Sequences kept from ring to ring. */
const kept = 300
/** Radii are read to a fraction of a millimetre at best. */
const readingMm = 0.3
/** How far the rise of an arch of chains departs from that of two straight legs. */
const arches = 0.12
/** The stitch of the round below is worked again oftener than another. */
const sameAgain = Math.log(4)
/** Density, a millimetre, of a radius that says nothing: a ring that is part of the next. */
const saysNothing = Math.log(1 / 12)

interface Hypothesis {
  readonly choices: readonly RoundChoice[]
  readonly logChance: number
  /** Radius so far when scale and heights are the usual, mm. */
  readonly radius: number
  readonly rounds: number
  /** Depth so far that each shared quantity scales: of each kind, then of arches. */
  readonly depths: readonly number[]
  readonly mean: Float64Array
  readonly covariance: Float64Array
}

const states = 1 + rebuildKinds.length

export function likelySequences(rings: readonly SeenRing[], options: FilterOptions): Sequence[] {
  let hypotheses = [startOf(options)]
  rings.forEach((ring, i) => {
    const innerMm = rings[i - 1]?.outerMm ?? options.holeMm
    const context = {
      gauge: options.gauge,
      innerMm,
      last: i === rings.length - 1,
      repeats: options.repeats,
    }
    const choices = choicesOf(ring, context)
    const next = hypotheses.flatMap((one) =>
      choices.map((choice) => extend(one, choice, ring.outerMm, options)),
    )
    hypotheses = next.sort((a, b) => b.logChance - a.logChance).slice(0, kept)
  })
  return hypotheses.map(({ choices, logChance }) => ({ choices, logChance }))
}

/** The same reckoning along radii that were laid out: how well a sequence of given radii meets those seen. */
export function chanceOf(
  choices: readonly RoundChoice[],
  radiiMm: readonly number[],
  rings: readonly SeenRing[],
  options: FilterOptions,
): number {
  let one = startOf(options)
  choices.forEach((choice, i) => {
    one = extend(one, choice, rings[i]!.outerMm, options, radiiMm[i])
  })
  return one.logChance
}

function startOf({ gauge, scaleSpread, holeMm }: FilterOptions): Hypothesis {
  const covariance = new Float64Array(states * states)
  covariance[0] = scaleSpread ** 2
  rebuildKinds.forEach((kind, k) => {
    const { ratioSpread } = sizeOf({ basic: kind }, gauge, { turned: false })
    covariance[(k + 1) * states + k + 1] = ratioSpread ** 2
  })
  return {
    choices: [],
    logChance: 0,
    radius: holeMm,
    rounds: 0,
    depths: rebuildKinds.map(() => 0),
    mean: new Float64Array(states),
    covariance,
  }
}

function extend(
  from: Hypothesis,
  choice: RoundChoice,
  seenMm: number,
  options: FilterOptions,
  laidOutMm?: number,
): Hypothesis {
  const before = lastKind(from.choices)
  const chain = choice.kinds.reduce((log, kind, i) => {
    const below = i === 0 ? before : choice.kinds[i - 1]
    return below === undefined ? log : log + (below === kind ? sameAgain : 0)
  }, from.logChance + choice.prior)
  const choices = [...from.choices, choice]
  if (choice.kinds.length === 0) return { ...from, choices, logChance: chain + saysNothing }
  const rounds = from.rounds + choice.kinds.length
  const radius = laidOutMm ?? pressedRadius(from.radius, choice, rounds, options.gauge)
  const added = radius - from.radius
  const depths = from.depths.map((depth, k) => {
    const share = choice.kinds.filter((kind) => kind === rebuildKinds[k]).length
    return depth + (share > 0 ? (added * share) / choice.kinds.length : 0)
  })
  // Observation: seen = radius (1 + scale) + sum of depth x log height + error.
  const row = [radius, ...depths]
  const loop = choice.chains > 0 && choice.kinds[0] === "sc"
  const error =
    (options.radiusSpread * radius) ** 2 +
    readingMm ** 2 +
    (loop ? (arches * choice.depthMm) ** 2 : 0)
  const { mean, covariance } = from
  const gain = new Float64Array(states)
  let variance = error
  let expected = radius
  for (let i = 0; i < states; i++) {
    for (let k = 0; k < states; k++) gain[i]! += covariance[i * states + k]! * row[k]!
    variance += row[i]! * gain[i]!
    expected += row[i]! * mean[i]!
  }
  const off = seenMm - expected
  const nextMean = mean.map((value, i) => value + (gain[i]! * off) / variance)
  const nextCovariance = covariance.map(
    (value, at) => value - (gain[Math.floor(at / states)]! * gain[at % states]!) / variance,
  )
  return {
    choices,
    logChance: chain - 0.5 * ((off * off) / variance + Math.log(2 * Math.PI * variance)),
    radius,
    rounds,
    depths,
    mean: nextMean,
    covariance: nextCovariance,
  }
}

function lastKind(choices: readonly RoundChoice[]): RebuildKind | undefined {
  for (let i = choices.length - 1; i >= 0; i--) {
    const kind = choices[i]!.kinds.at(-1)
    if (kind !== undefined) return kind
  }
  return undefined
}

/** Full rounds pressed flat stand this much taller: the fabric gives a little before it is stiff (measured on the net's plain discs). */
const fullGives = 0.037

/** Radius of a plain round pressed flat, in short: a round with too few stitches is drawn in, most so near the centre. */
function pressedRadius(below: number, choice: RoundChoice, rounds: number, gauge: Gauge): number {
  const natural = below + choice.depthMm
  if (choice.chains > 0) return natural
  const kind = choice.kinds.at(-1)!
  const { widthMm } = sizeOf({ basic: kind }, gauge, { turned: false })
  const full = (choice.count * widthMm) / (2 * Math.PI * natural)
  if (full < 1) return natural * (1 - (1 - full) * Math.min(0.9, 0.9 / rounds))
  return natural + choice.depthMm * fullGives * Math.min(1, (full - 1) / 0.08)
}
