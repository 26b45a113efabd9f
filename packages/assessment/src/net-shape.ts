// The laid-out shape as the elastic net solves it.

import type { Motif } from "@roundwright/motif"
import { unlessRefused } from "@roundwright/numerics"
import { type LaidOutShape, layOut, layOutBounded } from "@roundwright/relaxation"
import type { Gauge } from "@roundwright/stitches"
import { cornersSeen } from "./corners-seen.ts"
import type { LaidOut } from "./result.ts"
import { skewOfShape } from "./skew.ts"

/**
 * How much work a shape may take. `bounded`: a second or two, after which the lowest shape so far is taken; very large
 * pieces are only pressed flat, or left to the ledger. `whole`: to the end, however long. `at-once`: a blink, for whoever
 * cannot be held up; other than small pieces are left to the ledger, with a word.
 */
export type Effort = "bounded" | "whole" | "at-once"

/** Lays the motif out. A piece too large for the net, or one the net refuses, gives the reason in words instead. */
export function layOutMotif(
  motif: Motif,
  gauge: Gauge,
  effort: Effort = "bounded",
): LaidOutShape | { readonly fault: string } {
  return unlessRefused(
    () =>
      effort === "whole"
        ? layOut(motif, gauge, { inSpace: "off" })
        : layOutBounded(motif, gauge, { atOnce: effort === "at-once" }),
    ({ code, message }) => ({
      fault:
        effort === "at-once" && code === "too-large-at-once"
          ? heldUp
          : `The shape could not be laid out: ${message}`,
    }),
  )
}

const heldUp =
  "The shape was not laid out here, where nothing else could be done meanwhile: the piece is judged by its growth alone. The command `roundwright check` lays it out."

/** Filled from the net. */
export function laidOutFromNet(shape: LaidOutShape, motif: Motif, gauge: Gauge): LaidOut {
  const length = (value: number | null | undefined) => (gauge.absolute ? (value ?? null) : null)
  const { outline, lift } = shape
  const flat = shape.verdict === "flat"
  return {
    by: "net",
    verdict: shape.verdict,
    odds: shape.odds,
    fromRound: shape.fromRound,
    // What lies flat is told to lie flat: what is left of a lift a hand pats down.
    liftMm: length(flat ? 0 : lift && rounded(lift.liftMm)),
    waves: flat ? 0 : (lift?.waves ?? null),
    sideReachMm: length(outline.sideReachMm),
    cornerReachMm: length(outline.cornerReachMm),
    acrossMm: length(outline.acrossMm),
    sideMm: outline.corners > 0 ? length(outline.sideMm) : null,
    corners: cornersSeen(outline),
    bowMm: outline.corners > 0 ? length(outline.bowMm) : null,
    cornerAngleDeg: outline.cornerAngleDeg,
    skewDeg: skewOfShape(shape, motif, gauge),
    blockingStretch: shape.blockingStretch,
    blockingRound: shape.blockingRound,
    meanStretch: shape.meanStretch,
    acrossAfterRoundMm: shape.acrossAfterRound.map(length),
    slack: shape.slack.map(({ round, element, slack }) => ({
      round: motif.rounds[round]!.number,
      element: element + 1,
      slack,
    })),
    settled: hasSettled(shape),
  }
}

/** Nothing smaller than a millionth of a millimetre is told as a lift. */
function rounded(liftMm: number): number {
  return Math.round(liftMm * 1e6) / 1e6
}

function hasSettled({ flat, space }: LaidOutShape): boolean {
  return flat.how.settled && space?.how.settled !== false
}

/** What to say beside a laid-out shape: how it ended where that matters. */
export function shapeNotes(shape: LaidOutShape): string[] {
  if (shape.verdict === "flat") return []
  if (shape.space === null)
    return [
      "The piece is large: it was pressed flat, but not laid out in space, so no lift is told.",
    ]
  return hasSettled(shape)
    ? []
    : ["The shape had not come to rest when the search ended: take its lift and waves as rough."]
}
