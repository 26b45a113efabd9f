// Over-fullness that lengths alone prove, whatever the flat shape makes of it: a round whose tops, with every loop
// gathered up, are longer than its outline at its distance from the centre cannot lie flat without pleats.

import type { RoundCorners } from "@roundwright/motif"
import type { Net } from "./net.ts"

/** A loop gathered up still takes the room of the yarn: a fifth of its chains' length (estimate). */
const gatheredShare = 0.2

/**
 * For each round the gathered edge over the edge of its outline (circle or polygon) when the rounds lie as deep
 * as their stitches are high. 0 for rounds that prove nothing: a last round of fans may stand in scallops.
 */
export function gatheredFullness(net: Net, corners: readonly RoundCorners[]): number[] {
  const depth = depthsFromCentre(net)
  return net.edges.map((edge, round) => {
    if (!edge.closed || (round === net.edges.length - 1 && round > 0 && !isSolid(net, round)))
      return 0
    const gathered = edge.nodes.reduce((sum, node) => {
      const { kind, widthMm } = net.nodes[node]!
      return sum + widthMm * (kind === "chain" ? gatheredShare : 1)
    }, 0)
    const count = corners[round]?.count ?? 0
    const outline =
      (count >= 3 ? 2 * count * Math.tan(Math.PI / count) : 2 * Math.PI) * depth[round]!
    return outline > 0 ? gathered / outline : 0
  })
}

/** Distance of each round from the centre with all legs upright, mm. */
function depthsFromCentre(net: Net): number[] {
  const ring = net.springs.reduce((sum, { round, restMm }) => sum + (round < 0 ? restMm : 0), 0)
  let depth = ring / (2 * Math.PI)
  return net.edges.map((_, round) => {
    const posts = net.springs.filter((spring) => spring.role === "post" && spring.round === round)
    const weight = posts.reduce((sum, { areaMm2 }) => sum + areaMm2, 0)
    if (weight > 0)
      depth += posts.reduce((sum, { restMm, areaMm2 }) => sum + restMm * areaMm2, 0) / weight
    return depth
  })
}

/** Whether every leg of the round stands on a top of the round below. */
function isSolid(net: Net, round: number): boolean {
  return net.springs.every(
    ({ role, round: own, from }) =>
      role !== "post" ||
      own !== round ||
      (from.nodes.length === 1 && net.nodes[from.nodes[0]!]!.kind === "top"),
  )
}
