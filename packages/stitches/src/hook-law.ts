// How the width of a stitch goes with the hook on one and the same yarn: as a power of the hook. One law for every way a
// hook is asked for: a default from yarn and hook, another hook over a pattern's own, a hook that would mend a size.
//
// Yarn: fitted within weights on published gauges the power is 0.53; in one experiment (Peppergoose Design, "Stitch anatomy
// part 2": 3 to 10 mm on one DK yarn) row height went with 0.44, and three discs of one yarn with 0.42 (stitches-tables.json).
// Thread: size 10 cotton gives 2.99 mm with a 1.5 mm hook (17 hdc in 2 in) and 4.23 mm with 2.75 mm (6 dc in 1 in), which is
// a power of 0.57: ln(4.23 / 2.99) / ln(2.75 / 1.5). Two makers, one pair; 3.0 to 1.8 mm then is 25 % smaller.

import type { GaugeInput } from "./gauge.ts"

/** Between 0.42 and 0.53, see above. */
export const yarnHookExponent = 0.5
/** Size 10 cotton on two hooks, see above. */
export const threadHookExponent = 0.57

type Yarn = Pick<GaugeInput, "yarnWeight" | "threadSize">

/** The power of the hook that the width of a stitch goes with. Weight 0 is thread (the trade's table names 10-count thread). */
export function hookExponent({ yarnWeight, threadSize }: Yarn): number {
  return threadSize !== undefined || yarnWeight === 0 ? threadHookExponent : yarnHookExponent
}

/** Sizes with another hook over sizes with the first, on the same yarn. */
export function hookFactor(yarn: Yarn, fromMm: number, toMm: number): number {
  return (toMm / fromMm) ** hookExponent(yarn)
}
