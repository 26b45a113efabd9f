// The springs of a net: along the ring at the centre, along the edges, and up the legs.

import type { Motif, RoundCorners } from "@roundwright/motif"
import type { Sizes } from "./edge-plan.ts"
import type { Leg } from "./legs.ts"
import { nodePoint, type Spring } from "./net.ts"
import { type Ground, neighbour } from "./places.ts"

export function ringSprings(ground: Ground, motif: Motif, sizes: Sizes): Spring[] {
  const { nodes, lengthMm } = ground.ring
  if (nodes.length < 3) return []
  const restMm = chord(lengthMm / nodes.length, lengthMm)
  const solid = motif.centre.kind === "solid-ring"
  return nodes.map((node, k) => ({
    role: solid ? "top" : "chain",
    from: nodePoint(node),
    to: nodePoint(nodes[(k + 1) % nodes.length]!),
    restMm,
    // A bought ring: as stiff as ten rows of fabric, which no stitch can draw in.
    areaMm2: restMm * sizes.scWidthMm * (solid ? 10 : 1),
    round: -1,
    element: k,
  }))
}

/** Tops are arcs of the round; the straight distance between their middles is a little less than their width. */
function chord(arc: number, circle: number): number {
  return (circle / Math.PI) * Math.sin((Math.PI * arc) / circle)
}

export function edgeSprings(
  ground: Ground,
  corners: readonly RoundCorners[],
  sizes: Sizes,
): Spring[] {
  return ground.edges.flatMap((edge, round) => {
    const base = ground.firstNode[round]!
    const above = ground.edges[round + 1]?.heightMm ?? 0
    const band = (edge.heightMm + above) / 2
    const bent = edge.closed && (corners[round]?.count ?? 0) === 0
    return edge.nodes.flatMap((node, k): Spring[] => {
      const other = neighbour(edge, k, 1)
      if (other === null) return []
      const to = edge.nodes[other]!
      const arc = (node.widthMm + to.widthMm) / 2
      const restMm = bent ? chord(arc, edge.lengthMm) : arc
      const isChain = node.isChain || to.isChain
      return [
        {
          role: isChain ? "chain" : "top",
          from: nodePoint(base + k),
          to: nodePoint(base + other),
          restMm,
          areaMm2: arc * (isChain ? sizes.scWidthMm : band),
          ...(isChain && !(node.isChain && to.isChain)
            ? { slackMm: (restMm * (node.isChain ? node : to).widthMm) / (2 * arc) }
            : {}),
          round,
          element: node.element,
        },
      ]
    })
  })
}

export function postSpring(ground: Ground, round: number, leg: Leg): Spring {
  return {
    role: "post",
    from: leg.place.point,
    to: nodePoint(ground.firstNode[round]! + leg.index),
    restMm: leg.restMm,
    ...(leg.leanMm === 0 ? {} : { leanMm: leg.leanMm }),
    areaMm2: leg.top.widthMm * leg.top.heightMm * leg.share,
    round,
    element: leg.top.element,
  }
}
