// The yarn that a hook goes with where a pattern names no yarn.
//
// Counted in test/evidence/measured-motifs.json over the 34 motifs that name both: cotton of size 20 or 30 with 1.3 to
// 1.5 mm, size 10 with 1.7 to 2 mm, worsted with 4 to 6.5 mm (all 17). Motifs are worked in heavier yarn than the hook's
// usual one (garments: DK with 4 mm), so the width per mm of hook is not one figure. Above 6.5 mm the published gauges'
// bulky and super bulky. Between these points width goes evenly in the logarithm of the hook.

import type { YarnWeight } from "./gauge.ts"

export type YarnNamed = { readonly weight: YarnWeight } | { readonly threadSize: number }

export interface HookAndYarn {
  readonly hookMm: number
  readonly yarn: YarnNamed
}

/** Middle hooks of the groups counted, thinnest first. */
export const usualYarns: readonly HookAndYarn[] = [
  { hookMm: 1.4, yarn: { threadSize: 20 } },
  { hookMm: 1.9, yarn: { threadSize: 10 } },
  { hookMm: 4, yarn: { weight: 4 } },
  { hookMm: 5, yarn: { weight: 4 } },
  { hookMm: 6.5, yarn: { weight: 5 } },
  { hookMm: 12, yarn: { weight: 6 } },
]

/** Width of one sc with a hook alone, mm. @param widthOf width of one sc of a yarn with a hook */
export function widthOfHookAlone(hookMm: number, widthOf: (one: HookAndYarn) => number): number {
  const next = usualYarns.findIndex((one) => one.hookMm >= hookMm)
  // Beyond either end yarn and hook grow together.
  if (next <= 0) {
    const end = next === 0 ? usualYarns[0]! : usualYarns.at(-1)!
    return (widthOf(end) * hookMm) / end.hookMm
  }
  const [below, above] = [usualYarns[next - 1]!, usualYarns[next]!]
  const along = Math.log(hookMm / below.hookMm) / Math.log(above.hookMm / below.hookMm)
  return widthOf(below) * (widthOf(above) / widthOf(below)) ** along
}
