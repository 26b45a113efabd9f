// The last judge of a proposal: the piece laid on a table in space, as a check of the finished text lays it. The search
// judges by the shape pressed flat, which is quicker and nearly always says the same.

import type { Gauge } from "@roundwright/stitches"
import { inPattern } from "./in-pattern.ts"
import { layOutAsChecked } from "./lay-out-as-checked.ts"
import type { Proposal } from "./proposal.ts"
import { notesOn } from "./proposal-words.ts"
import { distanceFromTarget } from "./target.ts"

/** Proposals laid out in space at most before the order is taken as it is. */
const mostSettled = 3

/** Nodes laid out beyond the first proposal, where all are asked for: a second or so. */
const mostNodes = 2_000

/**
 * The same proposals, the first with the verdict of its shape in space, or all as far as that is quick. One that lies
 * worse there than pressed flat gives way to the next that does not.
 */
export function settleInSpace(
  proposals: readonly Proposal[],
  gauge: Gauge,
  all: boolean,
): Proposal[] {
  const settledOnes = [...proposals]
  const most = all ? proposals.length : Math.min(mostSettled, proposals.length)
  let nodes = 0
  for (let i = 0; i < most; i++) {
    const before = proposals[i]!
    nodes += i === 0 ? 0 : before.shape.net.nodes.length
    if (nodes > mostNodes) break
    settledOnes[i] = settled(before, gauge)
    if (!all && distanceFromTarget(settledOnes[i]!) <= distanceFromTarget(before)) break
  }
  return settledOnes
    .map((proposal, place) => ({ proposal, place, distance: shortfall(proposal) }))
    .sort((one, other) => one.distance - other.distance || one.place - other.place)
    .map(({ proposal }) => proposal)
}

/**
 * How far short a proposal falls; 0 where it is straight and flat by its own measure, or goes on as the piece was begun and
 * lies flat, whatever its place.
 */
function shortfall(proposal: Proposal): number {
  const distance = distanceFromTarget(proposal)
  return distance <= (proposal.idea === inPattern ? 2 : 1) ? 0 : distance
}

function settled(proposal: Proposal, gauge: Gauge): Proposal {
  const { motif, from, palette, corners, shape } = proposal
  const laid = layOutAsChecked(motif, gauge)
  if (!laid) return proposal
  const { verdict, fromRound, blockingStretch, blockingRound } = laid
  return {
    ...proposal,
    verdict,
    shape: { ...shape, judged: { verdict, fromRound, blockingStretch, blockingRound } },
    notes: notesOn(motif, from, palette, corners, shape, verdict),
  }
}
