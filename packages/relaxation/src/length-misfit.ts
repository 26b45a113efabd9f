// Over-fullness that lengths alone prove, whatever the flat shape makes of it: a round whose tops, with every loop
// gathered up, are longer than its outline at its distance from the centre cannot lie flat without pleats.

import type { RoundCorners } from "@roundwright/motif"
import type { Net, Point } from "./net.ts"

/** A loop gathered up still takes the room of the yarn: a fifth of its chains' length (estimate). */
const gatheredShare = 0.2

/** A round with fewer tops than this, as a share of its edge, is a net of loops that leaves room for scallops below. */
const closedShare = 0.5

/**
 * For each round the gathered edge over the edge of its outline (circle or polygon) when the rounds lie as deep
 * as their stitches are high. 0 for rounds that prove nothing: fans may stand in scallops where they do not stand side
 * by side on every top below and have no closed fabric above them.
 */
export function gatheredFullness(net: Net, corners: readonly RoundCorners[]): number[] {
  const depth = depthsFromCentre(net)
  return net.edges.map((edge, round) => {
    const smooth = standsOnEveryTop(net, round) || isClosedFabric(net, round + 1)
    if (!edge.closed || (round > 0 && !smooth)) return 0
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

function isClosedFabric(net: Net, round: number): boolean {
  const edge = net.edges[round]
  if (edge === undefined) return false
  const tops = edge.nodes.reduce((sum, node) => {
    const { kind, widthMm } = net.nodes[node]!
    return sum + (kind === "top" ? widthMm : 0)
  }, 0)
  return tops >= closedShare * edge.lengthMm
}

/** Whether the legs of the round stand on all tops of the round below, every leg on one of them. */
function standsOnEveryTop(net: Net, round: number): boolean {
  const below = net.edges[round - 1]
  if (below === undefined || net.edges[round] === undefined) return false
  const bases = net.springs.flatMap(({ role, round: own, from }) =>
    role === "post" && own === round ? [topUnder(net, from)] : [],
  )
  const worked = new Set(bases)
  const tops = below.nodes.filter((node) => net.nodes[node]!.kind === "top")
  return !worked.has(null) && tops.every((node) => worked.has(node))
}

/** The one top that a leg stands on; null for a leg on chains, a post or the centre. */
function topUnder(net: Net, { nodes }: Point): number | null {
  const only = nodes.length === 1 ? nodes[0]! : -1
  return net.nodes[only]?.kind === "top" ? only : null
}
