// From the shape to a verdict: flat when it hardly lifts, flat after blocking when pins and water can take up
// the misfit, else cups or ruffles.

import type { Motif } from "@roundwright/motif"
import type { Lift } from "./lift-and-waves.ts"
import type { Material } from "./material.ts"
import type { RoundMisfit } from "./starts-in-space.ts"

export interface ShapeVerdict {
  readonly verdict: "flat" | "blocks-flat" | "cups" | "ruffles"
  /** Number of the round, as the text gives it, from which the misfit stays beyond the give; null when it never does. */
  readonly fromRound: number | null
  /** Stretch needed to pin the piece flat: of the tops where it cups, of the posts where it ruffles. 0.1 = a tenth. */
  readonly blockingStretch: number
  /** Mean strain (root of the mean square) left in the flat piece beyond the give: what pins would have to hold. */
  readonly heldStrain: number
  /** Number of the round where that stretch is largest. */
  readonly blockingRound: number
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
/** Without a shape in space, a misfit up to twice the give of tops and posts counts as flat. */
const giveTimes = 2

export function judgeShape(
  motif: Motif,
  misfits: readonly RoundMisfit[],
  gathered: readonly number[],
  lift: Lift | null,
  material: Material,
  heldStrain: number,
): ShapeVerdict {
  const number = (round: number): number => motif.rounds[round]!.number
  const reach = misfits.at(-1)!.radiusMm
  // The first round is a few stitches round a hole: its misfit disappears in the middle of a larger piece.
  const from = misfits.length > 1 ? 1 : 0
  const fullness = misfits.map((misfit, round) => Math.max(misfit.fullness, gathered[round] ?? 0))
  const stretch = fullness.map((full) => Math.max(full, 1 / Math.max(full, 1e-9)) - 1)
  let worst = from
  for (let round = from; round < stretch.length; round++)
    if (stretch[round]! > stretch[worst]!) worst = round
  const give = giveTimes * material.give
  let first: number | null = null
  for (let round = misfits.length - 1; round >= from && stretch[round]! > give; round--)
    first = round
  const liesFlat =
    lift === null
      ? stretch[worst]! <= give
      : lift.liftMm <= Math.max(flatLiftMm, flatLiftShare * reach)
  // In lace a misfit may hide: groups turn and loops fold instead of tops and posts straining. It then shows in the
  // strain left over, of which tops and posts each take half.
  const blockingStretch = Math.max(stretch[worst]!, 2 * heldStrain)
  const verdict =
    liesFlat && blockingStretch <= blockableStretch
      ? "flat"
      : blockingStretch <= blockableStretch
        ? "blocks-flat"
        : fullness[worst]! < 1
          ? "cups"
          : "ruffles"
  return {
    verdict,
    fromRound: verdict === "flat" || first === null ? null : number(first),
    blockingStretch,
    heldStrain,
    blockingRound: number(worst),
  }
}
