// Sizes of large plain pieces without laying them out: what a round adds is the height of its stitches twice, and a plain piece
// of many rounds is nothing else but more of the same. The few rounds of its middle are laid out; the rest is added.

import { countRound, findCorners, type Motif } from "@roundwright/motif"
import { type Gauge, sizeOf } from "@roundwright/stitches"
import { yarnByRound } from "../yarn/stitch-yarn.ts"
import { type Along, alongOf, type Sized, scaledSizes } from "./sizes.ts"

/** Mean height of every round's stitches, summed, mm. */
export function heightOfRounds(motif: Motif, gauge: Gauge): number {
  return motif.rounds.reduce((sum, round) => {
    const { byKind, stitches } = countRound(round)
    const all = byKind.reduce(
      (own, { kind, count }) => own + count * sizeOf(kind, gauge, { turned: false }).heightMm,
      0,
    )
    return sum + (stitches > 0 ? all / stitches : 0)
  }, 0)
}

/** The piece with other rounds. @param sized the piece as it is */
export function sizedByRule(motif: Motif, gauge: Gauge, own: Motif, sized: Sized): Sized {
  const across = sized.acrossMm + 2 * (heightOfRounds(motif, gauge) - heightOfRounds(own, gauge))
  const { stitches } = countRound(motif.rounds.at(-1)!)
  const { corners } = sized
  return {
    ...scaledSizes(sized, Math.max(1, across) / sized.acrossMm),
    stitches,
    stitchesPerSide: corners > 0 ? Math.round(stitches / corners) : null,
    yarnSc: yarnByRound(motif).reduce((sum, one) => sum + one, 0),
  }
}

/**
 * A plain piece whose middle was laid out, brought to the size it has.
 * @returns its sizes, and how much larger its gauge is than the middle's
 */
export function plainByRule(
  motif: Motif,
  gauge: Gauge,
  middle: Motif,
  middleSized: Sized,
  now: { readonly mm: number; readonly along: Along },
): { readonly sized: Sized; readonly factor: number } {
  const corners = findCorners(motif).at(-1)?.count ?? 0
  const grown = sizedByRule(motif, gauge, middle, middleSized)
  // Sides and diagonals of a large plain piece stand to its width as they do in geometry.
  const across = grown.acrossMm
  const k = corners >= 3 ? corners : null
  const whole: Sized = {
    ...grown,
    corners,
    bowMm: k === null ? null : 0,
    sideMm: k === null ? null : across * Math.tan(Math.PI / k),
    diagonalMm: k === null ? null : across / Math.cos(Math.PI / k),
    stitchesPerSide: k === null ? null : Math.round(grown.stitches / k),
  }
  const factor = now.mm / alongOf(whole, now.along)
  return { sized: scaledSizes(whole, factor), factor }
}
