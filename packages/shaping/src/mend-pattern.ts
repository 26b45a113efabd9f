// How far a piece departs from its own pattern: what a round does that no other does, and starting chains that are not
// those of their stitch. A slip breaks the pattern as well as the shape, and what mends it brings both back.

import { countRound, findCorners, kindKey, type Motif } from "@roundwright/motif"
import { turningChainCounts, turningChains } from "@roundwright/stitches"
import { groupSizes } from "./mend-groups.ts"

/** Costs of what is told of a piece once more, in misfit (mend-fault.ts); chosen on seeds below 1000 of the mend trials. */
const costs = { kind: 0.05, group: 0.02, chains: 0.08, growth: 0.03, start: 0.1 } as const

/** The shortest telling of the piece in what its rounds do: every stitch, group, chain and increase that is another. */
export function irregularityOf(motif: Motif): number {
  const corners = findCorners(motif)
  const kinds = new Set<string>()
  const groups = new Set<number>()
  const chains = new Set<number>()
  const growths = new Set<string>()
  let starts = 0
  let before = 0
  motif.rounds.forEach((round, r) => {
    const counted = countRound(round)
    for (const { kind } of counted.byKind) kinds.add(kindKey(kind))
    for (const size of groupSizes(round).keys()) groups.add(size)
    for (const { chains: size } of counted.spacesBySize) chains.add(size)
    const k = Math.max(1, corners[r]!.count)
    if (r > 0) growths.add(((counted.stitches - before) / k).toFixed(2))
    before = counted.stitches
    starts += startIsOff(round) ? 1 : 0
  })
  return (
    costs.kind * kinds.size +
    costs.group * groups.size +
    costs.chains * chains.size +
    costs.growth * growths.size +
    costs.start * starts
  )
}

/** A chain that counts for a stitch it is not as high as: ch 3 for a tr, where the tables say 4. */
function startIsOff({ elements, startChain }: Motif["rounds"][number]): boolean {
  const [first] = elements
  if (first?.type !== "stitch" || !startChain || first.kind.gathered) return false
  const { basic } = first.kind
  if (startChain.counts && first.madeOfChains !== undefined)
    return turningChainCounts(basic) && first.madeOfChains !== turningChains(basic)
  // A chain that only lifts the hook may be one shorter than the stitch, as many have it.
  return startChain.chains < turningChains(basic) - 1
}
