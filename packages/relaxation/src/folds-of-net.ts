// What resists folding: along each leg between its neighbours, along the tops between a leg below and a leg
// above, and the bending of chains as cords.

import type { Motif } from "@roundwright/motif"
import type { Leg } from "./legs.ts"
import { type Hinge, nodePoint, type Point, type Rod } from "./net.ts"
import { type Ground, neighbour } from "./places.ts"

/** Bending of the fabric where a chain takes part, against solid fabric: half of what folds there is yarn (estimate). */
const laceShare = 0.5

/** Folds along each leg between its neighbours: curvature along the round. Continuum: half B (h / w) per squared fold. */
export function roundHinges(ground: Ground, round: number, legs: readonly Leg[]): Hinge[] {
  const edge = ground.edges[round]!
  const base = ground.firstNode[round]!
  return legs.flatMap((leg): Hinge[] => {
    const [l, r] = [neighbour(edge, leg.index, -1), neighbour(edge, leg.index, 1)]
    if (l === null || r === null || l === r) return []
    const [left, right] = [edge.nodes[l]!, edge.nodes[r]!]
    const lace = left.isChain || right.isChain ? laceShare : 1
    const wl = (left.widthMm + leg.top.widthMm) / 2
    const wr = (right.widthMm + leg.top.widthMm) / 2
    const h = leg.top.heightMm
    return [
      {
        points: [
          nodePoint(base + leg.index),
          leg.place.point,
          nodePoint(base + l),
          nodePoint(base + r),
        ],
        scale: 1 / (wl * wr * h),
        areasMm4: wl * wr * h * h,
        share: (lace * leg.share * h) / leg.top.widthMm,
      },
    ]
  })
}

/** Folds along the tops, between a leg below and a leg above: curvature along the column, half on either side. */
export function columnHinges(
  ground: Ground,
  round: number,
  legs: readonly Leg[],
  above: readonly Leg[],
): Hinge[] {
  const edge = ground.edges[round]!
  const base = ground.firstNode[round]!
  const upper = ground.firstNode[round + 1] ?? 0
  const below = new Map(legs.map((leg) => [base + leg.index, leg]))
  const crowd = new Map<number, number>()
  for (const leg of above) {
    const node = leg.place.point.nodes[0]!
    if (leg.place.point.nodes.length === 1) crowd.set(node, (crowd.get(node) ?? 0) + 1)
  }
  const hinge = (leg: Leg, under: Leg, other: Point, w: number, share: number): Hinge => {
    const [h1, h2] = [under.top.heightMm, leg.top.heightMm]
    return {
      points: [
        nodePoint(base + under.index),
        other,
        under.place.point,
        nodePoint(upper + leg.index),
      ],
      scale: 1 / (w * h1 * h2),
      areasMm4: w * w * h1 * h2,
      share: (share * w) / (h1 + h2),
    }
  }
  return above.flatMap((leg): Hinge[] => {
    if (leg.place.round !== round) return []
    // On a run of chains the fabric folds along the chains, against the legs under their ends.
    if (leg.place.ends.length > 0)
      return leg.place.ends.flatMap(({ index, mm }) => {
        const under = below.get(base + index)
        return under === undefined
          ? []
          : [hinge(leg, under, leg.place.point, mm, laceShare * leg.share)]
      })
    const [node] = leg.place.point.nodes
    const under = below.get(node!)
    if (leg.place.point.nodes.length !== 1 || under === undefined) return []
    return ([-1, 1] as const).flatMap((by): Hinge[] => {
      const side = neighbour(edge, under.index, by)
      if (side === null) return []
      const lace = edge.nodes[side]!.isChain ? laceShare : 1
      const w = (edge.nodes[side]!.widthMm + under.top.widthMm) / 2
      return [hinge(leg, under, nodePoint(base + side), w, lace / crowd.get(node!)!)]
    })
  })
}

export function rodsOf(ground: Ground, motif: Motif): Rod[] {
  const rods: Rod[] = []
  const c = ground.chainMm
  // Energy of a strip as wide as a chain: half B c kappa^2 c with kappa = second difference / c^2.
  const share = 1 / (c * c)
  ground.edges.forEach((edge, round) => {
    const base = ground.firstNode[round]!
    edge.nodes.forEach((node, k) => {
      const [l, r] = [neighbour(edge, k, -1), neighbour(edge, k, 1)]
      if (!node.isChain || l === null || r === null || l === r) return
      rods.push({ nodes: [base + l, base + k, base + r], share })
    })
  })
  const { nodes } = ground.ring
  if (nodes.length > 3 && motif.centre.kind === "chain-ring")
    nodes.forEach((node, k) => {
      rods.push({ nodes: [nodes.at(k - 1)!, node, nodes[(k + 1) % nodes.length]!], share })
    })
  return rods
}
