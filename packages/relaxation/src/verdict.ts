// From the shape to a verdict: flat when it hardly lifts, flat after blocking when pins and water can take up
// the misfit, else cups or ruffles.

import type { Motif } from "@roundwright/motif"
import type { Lift } from "./lift-and-waves.ts"
import type { Material } from "./material.ts"
import type { Net } from "./net.ts"
import type { RoundMisfit } from "./starts-in-space.ts"

export interface ShapeVerdict {
  readonly verdict: "flat" | "blocks-flat" | "cups" | "ruffles"
  /**
   * Number of the round, as the text gives it, from which the misfit stays beyond the give to the edge, or else from
   * which the worst of it begins; null when no round is beyond.
   */
  readonly fromRound: number | null
  /** Largest stretch of a round that pins the piece flat: of tops where it cups, of posts where it ruffles. 0.1 = a tenth. */
  readonly blockingStretch: number
  /** Number of the round where that stretch is largest. */
  readonly blockingRound: number
  /** The same over the whole piece, by area (root of the mean square), and of the edge where it ruffles: it judges. */
  readonly meanStretch: number
  /** Which way most of the fabric is off: too little edge cups, too much ruffles. */
  readonly towards: "cups" | "ruffles"
  /** Mean strain (root of the mean square) left in the flat piece beyond the give: what pins would have to hold. */
  readonly heldStrain: number
}

/** A lift that a piece may have and still be called flat: the thickness of worsted fabric, mm. */
export const flatLiftMm = 4
/** The same for large pieces, as a share of the reach: an edge that rises one in twenty lies down under a hand. */
export const flatLiftShare = 0.05
/**
 * Stretch that blocking takes up. Wool may be stretched by 30 % when wet without damage; crochet is pinned out by less
 * than lace knitting (no firm figure in print): half of that, and a little, as makers call discs with a sixth
 * too few or a fifth too many stitches slight (two published series of sc discs, which are therefore no evidence
 * for this figure).
 */
export const blockableStretch = 0.2
/** Without a shape in space, a misfit up to twice the give counts as flat: tops and posts each take half. */
export function flatStretchOf({ give }: Material): number {
  return 2 * give
}

/** What a shape is judged by: its rounds' misfits in the plane, its lift, and what strains it pressed flat. */
export interface ShapeFindings {
  readonly misfits: readonly RoundMisfit[]
  /** See gatheredFullness. */
  readonly gathered: readonly number[]
  readonly lift: Lift | null
  readonly heldStrain: number
}

export function judgeShape(
  motif: Motif,
  net: Net,
  { misfits, gathered, lift, heldStrain }: ShapeFindings,
  material: Material,
): ShapeVerdict {
  const number = (round: number): number => motif.rounds[round]!.number
  const reach = misfits.at(-1)!.radiusMm
  // The first round is a few stitches round a hole: its misfit disappears in the middle of a larger piece.
  const from = misfits.length > 1 ? 1 : 0
  const last = misfits.length - 1
  const fullness = misfits.map((misfit, round) => Math.max(misfit.fullness, gathered[round] ?? 0))
  const stretch = fullness.map((full) => Math.max(full, 1 / Math.max(full, 1e-9)) - 1)
  const areas = areaOfRounds(net)
  let [worst, weightiest, area, sum] = [from, from, 0, 0]
  for (let round = from; round <= last; round++) {
    const weight = areas[round]! * stretch[round]! ** 2
    if (stretch[round]! > stretch[worst]!) worst = round
    if (weight > areas[weightiest]! * stretch[weightiest]! ** 2) weightiest = round
    area += areas[round]!
    sum += weight
  }
  const give = flatStretchOf(material)
  const towards = fullness[weightiest]! < 1 ? "cups" : "ruffles"
  // Rounds that are off the other way have no part in it.
  const offThisWay = stretch.map((one, round) =>
    fullness[round]! < 1 === (towards === "cups") ? one : 0,
  )
  // To the edge if the misfit stays to the edge, else where the worst of it begins.
  const first = beginning(offThisWay, last, from, give) ?? beginning(offThisWay, worst, from, give)
  // In lace a misfit may hide: groups turn and loops fold instead of tops and posts straining. It then shows in the
  // strain left over, of which tops and posts each take half. An edge that is too long is held by no round after it.
  const meanStretch = Math.max(
    area > 0 ? Math.sqrt(sum / area) : 0,
    2 * heldStrain,
    fullness[last]! > 1 ? stretch[last]! : 0,
  )
  const liesFlat =
    lift === null ? meanStretch <= give : lift.liftMm <= Math.max(flatLiftMm, flatLiftShare * reach)
  const verdict = meanStretch > blockableStretch ? towards : liesFlat ? "flat" : "blocks-flat"
  return {
    verdict,
    fromRound: verdict === "flat" || first === null ? null : number(first),
    blockingStretch: Math.max(stretch[worst]!, 2 * heldStrain),
    blockingRound: number(worst),
    meanStretch,
    towards,
    heldStrain,
  }
}

/** First round of the run beyond the give that ends with this one; null when this one is within it. */
function beginning(
  stretch: readonly number[],
  end: number,
  from: number,
  give: number,
): number | null {
  let first: number | null = null
  for (let round = end; round >= from && stretch[round]! > give; round--) first = round
  return first
}

/** Area of fabric of each round, mm2. */
function areaOfRounds(net: Net): number[] {
  const areas = net.edges.map(() => 0)
  for (const { role, round, areaMm2 } of net.springs) if (role === "post") areas[round]! += areaMm2
  return areas
}
