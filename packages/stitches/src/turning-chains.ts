// How many chains stand at the start of a row or round for each stitch, and whether they count as
// its first stitch. Numbers: ten tables agree for sc 1, hdc 2, dc 3, tr 4 and six for dtr 5 (among
// them "How to crochet a turning chain", dummies.com; "Recommended number of turning chains",
// oombawkadesigncrochet.com); trtr 6 stands in one (crochetforall.com). sl st: four of five say 0.
// Counting: as the first stitch for every stitch but sc (dummies.com). One more yarn-over, one more
// chain, goes on above trtr by the same rule.
//
// Practice differs: dc begun with ch 2 that does not count, or with ch 3 that does not count; hdc
// begun with ch 1; an hdc's ch 2 is often not counted either. A text's own statement comes first.

import type { BasicStitch } from "./kinds.ts"

const chainsOf: Readonly<Record<BasicStitch, number>> = {
  "sl st": 0,
  sc: 1,
  hdc: 2,
  dc: 3,
  tr: 4,
  dtr: 5,
  trtr: 6,
  quadtr: 7,
  quintr: 8,
  // Extended forms: the chains of the plain stitch, as patterns with esc (ch 1) and edc (ch 3) do.
  esc: 1,
  ehdc: 2,
  edc: 3,
  etr: 4,
}

/** Chains at the start of a row or round of this stitch, by the agreement of the published tables. */
export function turningChains(basic: BasicStitch): number {
  return chainsOf[basic]
}

/** Whether that chain counts as the first stitch where a text does not say: not for sl st, sc, esc. */
export function turningChainCounts(basic: BasicStitch): boolean {
  return chainsOf[basic] >= 2
}

/**
 * The stitch that a starting chain of that many chains usually stands for; undefined for 0 and 1,
 * which stand for none, and above 8.
 */
export function stitchForTurningChain(chains: number): BasicStitch | undefined {
  return plainStitches.find((basic) => chainsOf[basic] === chains)
}

const plainStitches: readonly BasicStitch[] = ["hdc", "dc", "tr", "dtr", "trtr", "quadtr", "quintr"]
