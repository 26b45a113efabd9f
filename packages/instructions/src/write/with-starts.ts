// Starting chains for rounds that were made by computing and say nothing of how they begin: a maker who joins each
// round has to climb to the next.

import type { Element, Motif, Round } from "@roundwright/motif"
import { turningChainCounts, turningChains } from "@roundwright/stitches"

/**
 * The piece with the starting chains of the published tables on its joined rounds from index `from` on, where they have
 * none: ch 1 that does not count before sc, chains that stand for the first stitch before taller ones. The counts are
 * the same. A round that begins with a gathered stitch, a post or a chain stays as it is.
 */
export function withStarts(motif: Motif, from = 0): Motif {
  const rounds = motif.rounds.map((round, index) =>
    index < from || !canStart(motif.rounds[index - 1], round) ? round : withStart(round),
  )
  return { ...motif, rounds }
}

function canStart(below: Round | undefined, round: Round): boolean {
  const { elements, closing, startChain } = round
  const [first] = elements
  if (closing !== "joined" || startChain || first?.type !== "stitch") return false
  if (below && below.closing !== "joined") return false
  const { basic, gathered, loops, post } = first.kind
  if (gathered || post || turningChains(basic) === 0) return false
  return loops === undefined || !turningChainCounts(basic)
}

function withStart(round: Round): Round {
  const [first, second, ...rest] = round.elements as readonly [Element, ...Element[]]
  if (first.type !== "stitch") return round
  const { basic } = first.kind
  const chains = turningChains(basic)
  if (!turningChainCounts(basic)) return { ...round, startChain: { chains, counts: false } }
  // "ch 5 (counts as dc, ch 2)": the chains of the first space are made with it.
  const space = second?.type === "chain" && second.closedWith === undefined ? second.chains : 0
  return {
    ...round,
    elements: [{ ...first, madeOfChains: chains }, ...(second ? [second] : []), ...rest],
    startChain: { chains: chains + space, counts: true },
  }
}
