// What the charts of a laid-out shape say: strain by round, and the sentence over the chart.

import type { Motif } from "@roundwright/motif"
import {
  type LaidOutShape,
  measureStrain,
  type Net,
  type Outline,
  usualMaterial,
} from "@roundwright/relaxation"
import { lengthWords, tidy } from "./findings.ts"

/** Mean strains of one round in the flat shape: 0.1 = stretched by a tenth, -0.1 = squeezed by one. */
export interface RoundStrain {
  readonly round: number
  /** Along the edge; chains count only where they are taut. */
  readonly tops: number
  readonly posts: number
}

/** Means weighted by length at ease; 0 for a round that has none of the kind. */
export function strainByRound(motif: Motif, shape: LaidOutShape): RoundStrain[] {
  const strains = measureStrain(shape.net, shape.flat.xy, 2)
  return shape.net.edges.map((_, index) => ({
    round: motif.rounds[index]!.number,
    tops: meanStrain(shape.net, strains, index, false),
    posts: meanStrain(shape.net, strains, index, true),
  }))
}

function meanStrain(net: Net, strains: Float64Array, round: number, posts: boolean): number {
  let [sum, rest] = [0, 0]
  net.springs.forEach((spring, k) => {
    if (spring.round !== round || (spring.role === "post") !== posts) return
    const strain = spring.role === "chain" ? Math.max(0, strains[k]!) : strains[k]!
    sum += spring.restMm * strain
    rest += spring.restMm
  })
  return rest > 0 ? sum / rest : 0
}

/** The largest strain of any one stitch or chain in the flat shape, its size; slack chains are at ease. */
export function largestStrain({ net, flat }: LaidOutShape): number {
  const strains = measureStrain(net, flat.xy, 2)
  return net.springs.reduce((most, { round, role }, k) => {
    if (round < 0) return most
    return Math.max(most, role === "chain" ? strains[k]! : Math.abs(strains[k]!))
  }, 0)
}

/**
 * What is strained most, in a sentence. Where the outline is no circle a round may be drawn out at one place and squeezed
 * at another: its mean is told as one, and single stitches are named where no mean is.
 * @param largest of any one stitch
 */
export function strainFinding(rounds: readonly RoundStrain[], largest: number): string {
  let worst = { round: 0, what: "tops", strain: 0 }
  for (const { round, tops, posts } of rounds) {
    if (Math.abs(tops) > Math.abs(worst.strain)) worst = { round, what: "tops", strain: tops }
    if (Math.abs(posts) > Math.abs(worst.strain)) worst = { round, what: "posts", strain: posts }
  }
  if (largest <= usualMaterial.give)
    return "Pressed flat, no stitch is strained beyond what yarn gives"
  if (Math.abs(worst.strain) <= usualMaterial.give)
    return `Pressed flat, every round is at ease on average, single stitches are strained by up to ${percent(largest)}`
  const how = worst.strain > 0 ? "stretched" : "squeezed"
  return `Pressed flat, round ${worst.round} is strained most: ${worst.what} ${how} by ${percent(worst.strain)} on average`
}

/** `4.2 %` or `14 %`, without its sign. */
export function percent(share: number): string {
  const value = 100 * Math.abs(share)
  return `${tidy(value, value < 9.95 ? 1 : 0)} %`
}

/** `stretched 4.2 %`, `squeezed 1.0 %`. */
export function strainWords(strain: number): string {
  if (tidy(100 * Math.abs(strain), 1) === "0.0") return "at ease"
  return `${strain > 0 ? "stretched" : "squeezed"} ${percent(strain)}`
}

/** How the piece lies on the table. */
export function profileFinding(
  { verdict, lift }: Pick<LaidOutShape, "verdict" | "lift">,
  heights: readonly { readonly highest: number }[],
  unit: string,
): string {
  if (verdict === "flat") return "On the table it lies flat"
  const most = lift?.liftMm ?? Math.max(...heights.map(({ highest }) => highest))
  const high = lengthWords(most, unit)
  if (tidy(most, 1) === "0.0") return "On the table it lies flat"
  const waves = lift?.waves ?? 0
  if (waves > 0)
    return `On the table its edge makes ${waves === 1 ? "1 wave" : `${waves} waves`} and rises ${high}`
  return verdict === "cups"
    ? `On the table it cups, ${high} high`
    : `On the table it rises ${high} at most`
}

/** Side, corner and bow in a sentence. */
export function outlineFinding(outline: Outline, unit: string): string {
  const { corners, bowMm, cornerReachMm, acrossMm } = outline
  if (corners < 3) return `The edge is round, ${lengthWords(acrossMm, unit)} across`
  const shape = `The outline has ${corners} corners`
  const sideMm = 2 * cornerReachMm * Math.sin(Math.PI / corners)
  if (Math.abs(bowMm) <= straightShare * sideMm) return `${shape} and straight sides`
  const way = bowMm > 0 ? "outwards" : "inwards"
  return `${shape} and sides that bow ${way} by ${lengthWords(Math.abs(bowMm), unit)}`
}

/** A bow of less than this share of the side is not seen: a millimetre in ten centimetres. */
const straightShare = 0.01
