// The last judge of a proposal: the piece laid on a table in space, as a check of the finished text lays it. The search
// judges by the shape pressed flat, which is quicker and nearly always says the same.

import type { Gauge } from "@roundwright/stitches"
import { layOutBounded } from "./lay-out-bounded.ts"
import type { Proposal } from "./proposal.ts"
import { notesOn } from "./proposal-words.ts"
import { distanceFromTarget } from "./target.ts"

/** Nodes laid out in space in all: a second or so; what is left keeps the verdict of the flat shape. */
const mostNodes = 6_000

/** Proposals with the verdict of the shape in space, those that meet the target first, else in the order given. */
export function settleInSpace(proposals: readonly Proposal[], gauge: Gauge): Proposal[] {
  let nodes = 0
  return proposals
    .map((proposal) => {
      const own = proposal.shape.net.nodes.length
      if (nodes > 0 && nodes + own > mostNodes) return proposal
      nodes += own
      return settled(proposal, gauge)
    })
    .map((proposal, place) => ({ proposal, place, distance: distanceFromTarget(proposal) }))
    .sort((a, b) => a.distance - b.distance || a.place - b.place)
    .map(({ proposal }) => proposal)
}

function settled(proposal: Proposal, gauge: Gauge): Proposal {
  const { motif, from, plan, palette, corners, shape } = proposal
  const laid = layOutBounded(motif, gauge)
  if (!laid) return proposal
  const { verdict, fromRound, blockingStretch, blockingRound } = laid
  const base = { ...motif, rounds: motif.rounds.slice(0, from) }
  return {
    ...proposal,
    verdict,
    shape: { ...shape, judged: { verdict, fromRound, blockingStretch, blockingRound } },
    notes: notesOn(plan.rounds, palette, base, corners, shape, verdict),
  }
}
