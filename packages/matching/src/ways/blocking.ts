// How far pins and water take a finished piece. No source gives a firm figure for solid crochet (a 10 3/4 in square is
// blocked to 11 in, 2.3 %; knitted lace goes 10 % and more), so the limits are by judgement and told as such.

import { countRound, type Motif } from "@roundwright/motif"

/** Shares that pins take up and the fabric keeps. */
const keeps = { solid: 0.04, lace: 0.08 } as const
/** A piece with this share of its edge in chains is lace. */
const laceShare = 0.25

export function blockingLimit(motif: Motif): number {
  const counts = motif.rounds.map(countRound)
  const chains = counts.reduce((sum, one) => sum + one.chains, 0)
  const stitches = counts.reduce((sum, one) => sum + one.stitches, 0)
  return chains / Math.max(1, chains + stitches) >= laceShare ? keeps.lace : keeps.solid
}

export function blockingText(stretch: number): string {
  return `Pin it out ${(100 * stretch).toFixed(0)} % larger and block it (wet for wool and cotton; acrylic keeps little of it, and an iron never touches it)`
}
