// Questions asked of a stitch kind that need no size: how many yarn-overs it has, whether two kinds
// are the same. Yarn-overs as in the step tables of the trade (sc 0, hdc and dc 1, tr 2, dtr 3);
// source: "Crochet stitch heights", aabharcreations.com/crochet-stitch-heights: each taller stitch
// takes one more yarn-over. Extended forms take those of the plain stitch and one more pull-through.

import type { BasicStitch, StitchKind } from "./kinds.ts"

const yarnOversOf: Readonly<Record<BasicStitch, number>> = {
  "sl st": 0,
  sc: 0,
  esc: 0,
  hdc: 1,
  ehdc: 1,
  dc: 1,
  edc: 1,
  tr: 2,
  etr: 2,
  dtr: 3,
  trtr: 4,
  quadtr: 5,
  quintr: 6,
}

/** Yarn-overs before the hook goes in. */
export function yarnOvers(basic: BasicStitch): number {
  return yarnOversOf[basic]
}

/** True from the dc upwards: stitches whose post is clearly longer than their top is wide. */
export function isTall(basic: BasicStitch): boolean {
  return yarnOversOf[basic] >= 1 && basic !== "hdc" && basic !== "ehdc"
}

/** A stitch kind from its basic stitch and whatever sets it apart: `kind("dc", { post: "front" })`. */
export function kind(basic: BasicStitch, options: Omit<StitchKind, "basic"> = {}): StitchKind {
  return { basic, ...options }
}

/** True when both name the same stitch in every respect. */
export function sameKind(a: StitchKind, b: StitchKind): boolean {
  return (
    a.basic === b.basic &&
    a.loops === b.loops &&
    a.post === b.post &&
    a.gathered?.how === b.gathered?.how &&
    a.gathered?.legs === b.gathered?.legs
  )
}
