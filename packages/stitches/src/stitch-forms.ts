// What a post, a single loop or several gathered legs change in a stitch's proportions.
//
// From the few gauges that exist: dc round posts throughout (1.688 in ribbing, 1.364 in basketweave,
// against 2.0 plain), sc in the back loop (0.875 and 1.077 against 0.919), dc in the back loop
// (2.062), sl st in the back loop (row height 3.17 mm and width 6.77 mm, two makers). Where no gauge
// exists the plain stitch's figure stands, and says so.

import type { Gathering, StitchKind } from "./kinds.ts"
import {
  basicProportion,
  dcRatio,
  extrapolatedSpreadFactor,
  type Proportion,
  scTurned,
  type Working,
} from "./proportions.ts"

/** A post stitch stands lower by the way down to the post below: mean of 1.688 and 1.364 over 2.0. */
export const postHeightFactor = (1.688 + 1.364) / 2 / dcRatio
/** sc in the back loop against sc: 0.976, the middle of two gauges. */
export const backLoopScFactor = 0.976 / scTurned
/** dc in the back loop against dc: one gauge, 2.062. */
export const backLoopDcFactor = 2.062 / dcRatio
/** h/w of sl st in the back loop: 3.17 mm high in one swatch, 6.77 mm wide in another. */
export const backLoopSlipRatio = 3.17 / 6.77

/**
 * Width of a gathered top in widths of its basic stitch. A top is one loop closed over all legs, as
 * in a plain stitch; legs standing in one place push their neighbours aside a little, and a popcorn
 * is folded forward, so its first and last top lie side by side. Assumptions, no measurement found.
 */
export const gatheredWidth: Readonly<Record<Gathering, number>> = {
  together: 1,
  cluster: 1.1,
  puff: 1.1,
  bobble: 1.1,
  popcorn: 1.25,
}

/** Height and width of any kind in sc widths, with its spread among makers and its source. */
export function proportionOf(kind: StitchKind, working: Working): Proportion {
  const plain = basicProportion(kind.basic, working)
  const formed =
    kind.post !== undefined
      ? roundPost(kind, plain)
      : kind.loops !== undefined
        ? inLoop(kind, plain)
        : plain
  return kind.gathered === undefined ? formed : gather(kind.gathered.how, formed)
}

function roundPost(kind: StitchKind, plain: Proportion): Proportion {
  const height = plain.height * postHeightFactor
  const note =
    kind.basic === "dc"
      ? "Mean of two published gauges of post dc (1.69 and 1.36)."
      : "Not measured: shortened as post dc are."
  return { ...doubtful(plain, note), height, provenance: provenanceOf(kind, "dc") }
}

function inLoop(kind: StitchKind, plain: Proportion): Proportion {
  if (kind.loops === "back" && kind.basic === "sc") {
    const note = "Middle of two published gauges of sc in the back loop (0.88 and 1.08)."
    return {
      ...doubtful(plain, note),
      height: plain.height * backLoopScFactor,
      provenance: "published median",
    }
  }
  if (kind.loops === "back" && kind.basic === "dc") {
    const note = "One published gauge of dc in the back loop."
    return {
      ...doubtful(plain, note),
      height: plain.height * backLoopDcFactor,
      provenance: "published median",
    }
  }
  if (kind.loops === "back" && kind.basic === "sl st") {
    const note = "From the row height of one swatch and the width of another."
    return { ...doubtful(plain, note), height: backLoopSlipRatio }
  }
  return doubtful(plain, `Not measured in the ${kind.loops} loop: taken as the plain stitch.`)
}

function gather(how: Gathering, one: Proportion): Proportion {
  const note =
    how === "together"
      ? "Several legs under one top: taken as high and as wide as one stitch."
      : `Not measured: a ${how} is taken as high as its stitch and its top ${Math.round(100 * (gatheredWidth[how] - 1))} % wider.`
  return { ...doubtful(one, note), width: one.width * gatheredWidth[how] }
}

function doubtful(plain: Proportion, note: string): Proportion {
  const widened = plain.provenance === "extrapolated" ? 1 : extrapolatedSpreadFactor
  return { ...plain, spread: plain.spread * widened, provenance: "extrapolated", note }
}

function provenanceOf(kind: StitchKind, measuredBasic: string): Proportion["provenance"] {
  return kind.basic === measuredBasic ? "published median" : "extrapolated"
}
