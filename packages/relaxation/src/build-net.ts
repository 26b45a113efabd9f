// From a motif and a gauge to the elastic net. The edge of a round is a row of tops and chains; legs stand
// on the edge below (or on a chain, a space, a post, the centre); every leg is kept from leaning; folds
// along legs and along tops are resisted; chains bend like cords.

import { findCorners, type Motif, type RoundCorners, validateMotif } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import type { Gauge } from "@roundwright/stitches"
import { type EdgePlan, planEdges, type Sizes, sizesIn } from "./edge-plan.ts"
import { type Bend, type Leg, planLegs } from "./legs.ts"
import {
  blend,
  type Hinge,
  type Lean,
  type Net,
  type NetEdge,
  type NetNode,
  nodePoint,
  type Point,
  type Rod,
  type Spring,
} from "./net.ts"
import { type Ground, neighbour } from "./places.ts"
import { placeInPlane } from "./start-in-plane.ts"

export interface NetOptions {
  /**
   * How far a top sits to one side of its base at ease, as a share of its width, where rounds are not
   * turned: positive in the direction of work. 0 by default: measured values differ by hand and yarn.
   */
  readonly skewShare?: number
}

/** @throws RoundwrightError `broken-motif`, `empty-motif`, `empty-round`, `net-too-large`, `not-positive` */
export function buildNet(motif: Motif, gauge: Gauge, options: NetOptions = {}): Net {
  validateMotif(motif)
  if (motif.rounds.length === 0)
    throw new RoundwrightError("empty-motif", "The piece has no rounds to lay out.")
  const sizes = sizesIn(gauge)
  const edges = planEdges(motif, sizes)
  const ringNodes = ringOf(motif, sizes, edges)
  const firstNode: number[] = []
  let next = ringNodes.count
  for (const edge of edges) {
    firstNode.push(next)
    next += edge.nodes.length
  }
  const ground: Ground = {
    motif,
    edges,
    firstNode,
    ring: { nodes: range(0, ringNodes.count), lengthMm: ringNodes.lengthMm },
    chainMm: sizes.chainMm,
  }
  const corners = findCorners(motif)
  const legs = planAllLegs(ground, corners, options.skewShare ?? 0)
  const springs = [
    ...ringSprings(ground, motif, sizes),
    ...edgeSprings(ground, corners, sizes),
    ...legs.flatMap((of, r) => of.map((leg) => postSpring(ground, r, leg))),
  ]
  return {
    nodes: describeNodes(ground, legs, sizes),
    springs,
    leans: legs.flatMap((of, r) => of.flatMap((leg) => leanOf(ground, corners, r, leg))),
    hinges: legs.flatMap((of, r) => [
      ...roundHinges(ground, r, of),
      ...columnHinges(ground, r, of, legs[r + 1] ?? []),
    ]),
    rods: rodsOf(ground, motif),
    edges: edges.map((edge, r) => describeEdge(edge, firstNode[r]!)),
    centre: ground.ring.nodes,
    start: placeInPlane(ground, corners, legs, next),
    mmPerUnit: sizes.mmPerUnit,
  }
}

/** The centre: one node, or a ring of chains; a bought ring is a ring of stiff pieces. */
function ringOf(
  motif: Motif,
  sizes: Sizes,
  edges: readonly EdgePlan[],
): { count: number; lengthMm: number } {
  const { centre } = motif
  if (centre.kind === "chain-ring" && centre.chains >= 3)
    return { count: centre.chains, lengthMm: centre.chains * sizes.chainMm }
  if (centre.kind === "solid-ring") {
    // Unknown: the ring on which round 1 lies flat.
    const first = edges[0]
    const flat = first === undefined ? 0 : first.lengthMm - 2 * Math.PI * first.heightMm
    const lengthMm = centre.diameterMm === undefined ? flat : Math.PI * centre.diameterMm
    if (lengthMm > 0) return { count: Math.max(6, first?.nodes.length ?? 6), lengthMm }
  }
  return { count: 1, lengthMm: 1 }
}

function planAllLegs(ground: Ground, corners: readonly RoundCorners[], skewShare: number): Leg[][] {
  const legs: Leg[][] = []
  const baseOf = new Map<string, Point>()
  const postPoint = (round: number, element: number): Point | null => {
    const base = baseOf.get(`${round}:${element}`)
    const index = ground.edges[round]!.firstOf[element]!
    // Worked round the middle of the post.
    return base === undefined ? null : blend(nodePoint(ground.firstNode[round]! + index), base, 0.5)
  }
  let backwards = false
  ground.motif.rounds.forEach((motifRound, round) => {
    if (motifRound.turned && round > 0) backwards = !backwards
    const planned = planLegs(ground, round, corners, postPoint)
    const skew = round > 0 && !motifRound.turned ? (backwards ? -1 : 1) * skewShare : 0
    legs.push(
      skew === 0
        ? planned
        : planned.map((leg) => ({ ...leg, leanMm: leg.leanMm + skew * leg.top.widthMm })),
    )
    for (const leg of planned) baseOf.set(`${round}:${leg.top.element}`, leg.place.point)
  })
  return legs
}

function ringSprings(ground: Ground, motif: Motif, sizes: Sizes): Spring[] {
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

function edgeSprings(ground: Ground, corners: readonly RoundCorners[], sizes: Sizes): Spring[] {
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
          round,
          element: node.element,
        },
      ]
    })
  })
}

function postSpring(ground: Ground, round: number, leg: Leg): Spring {
  return {
    role: "post",
    from: leg.place.point,
    to: nodePoint(ground.firstNode[round]! + leg.index),
    restMm: leg.restMm,
    areaMm2: leg.top.widthMm * leg.top.heightMm * leg.share,
    round,
    element: leg.top.element,
  }
}

function leanOf(ground: Ground, corners: readonly RoundCorners[], round: number, leg: Leg): Lean[] {
  const { left, right, leftMm, rightMm } = leg.place
  if (left === null || right === null || left.nodes[0] === right.nodes[0]) return []
  const h = leg.top.heightMm
  const circle = roundBelow(ground, corners, leg.place.round)
  const reach = (along: number): number =>
    leg.bend === null
      ? acrossBand(circle, h, along, leg.leanMm)
      : acrossCorner(leg.bend, h, along, leg.leanMm)
  const [toLeft, toRight] = [reach(-leftMm), reach(rightMm)]
  // A lean by d changes the difference by 2 d w / sqrt(h^2 + w^2): scaled so that the energy is that of a sheet of
  // this area in shear, half G (d / h)^2.
  const w = (leftMm + rightMm) / 2
  const areaShare =
    (leg.top.widthMm * leg.top.heightMm * leg.share * (h * h + w * w)) / (4 * h * h * w * w)
  return [
    {
      top: nodePoint(ground.firstNode[round]! + leg.index),
      left,
      right,
      restMm: toLeft - toRight,
      areaShare,
      round,
      element: leg.top.element,
    },
  ]
}

/** Length of the edge a leg stands on if that is a closed round without corners; infinite for straight sides. */
function roundBelow(ground: Ground, corners: readonly RoundCorners[], round: number): number {
  if (round < 0) return ground.ring.lengthMm
  const edge = ground.edges[round]!
  return edge.closed && (corners[round]?.count ?? 0) === 0
    ? edge.lengthMm
    : Number.POSITIVE_INFINITY
}

/**
 * Distance across a band h deep from a point of its lower edge, `from` along it, to one of its upper edge, `to`
 * off square: in a flat ring whose lower edge is a circle of that length.
 */
function acrossBand(circle: number, h: number, from: number, to: number): number {
  if (!Number.isFinite(circle)) return Math.hypot(h, to - from)
  const low = circle / (2 * Math.PI)
  const high = low + h
  const angle = to / Math.sqrt(low * high) - from / low
  return Math.hypot(h, 2 * Math.sqrt(low * high) * Math.sin(angle / 2))
}

/** The same where the lower edge turns inward near the leg. On the tip both sides are alike. */
function acrossCorner({ side, beforeMm, turn }: Bend, h: number, from: number, to: number): number {
  if (side === 0) return h
  const at = side * from
  const past = Math.max(0, at - beforeMm)
  const x = Math.min(at, beforeMm) + past * Math.cos(turn)
  const y = -past * Math.sin(turn)
  return Math.hypot(side * to - x, h - y)
}

/** Bending of the fabric where a chain takes part, against solid fabric: half of what folds there is yarn (estimate). */
const laceShare = 0.5

/** Folds along each leg between its neighbours: curvature along the round. Continuum: half B (h / w) per squared fold. */
function roundHinges(ground: Ground, round: number, legs: readonly Leg[]): Hinge[] {
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
function columnHinges(
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

function rodsOf(ground: Ground, motif: Motif): Rod[] {
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

function describeNodes(ground: Ground, legs: readonly Leg[][], sizes: Sizes): NetNode[] {
  const area = new Float64Array(ground.firstNode.at(-1)! + ground.edges.at(-1)!.nodes.length)
  legs.forEach((of, round) => {
    for (const leg of of) {
      const whole = leg.top.widthMm * leg.top.heightMm * leg.share
      area[ground.firstNode[round]! + leg.index]! += whole / 2
      leg.place.point.nodes.forEach((node, k) => {
        area[node]! += (whole / 2) * leg.place.point.weights[k]!
      })
    }
  })
  const nodes: NetNode[] = ground.ring.nodes.map((node) => ({
    kind: "centre",
    round: -1,
    element: node,
    widthMm: ground.ring.nodes.length > 1 ? ground.ring.lengthMm / ground.ring.nodes.length : 0,
    areaMm2: area[node]!,
  }))
  ground.edges.forEach((edge, round) => {
    edge.nodes.forEach((node, k) => {
      // A chain weighs about as much as the top half of an sc of its length.
      const chain = node.isChain ? (node.widthMm * sizes.scWidthMm) / 2 : 0
      nodes.push({
        kind: node.isChain ? "chain" : "top",
        round,
        element: node.element,
        widthMm: node.widthMm,
        areaMm2: area[ground.firstNode[round]! + k]! + chain,
      })
    })
  })
  return nodes
}

function describeEdge(edge: EdgePlan, first: number): NetEdge {
  return {
    nodes: range(first, edge.nodes.length),
    closed: edge.closed,
    elements: edge.nodes.map((node) => node.element),
    lengthMm: edge.lengthMm,
  }
}

function range(from: number, count: number): number[] {
  return Array.from({ length: count }, (_, k) => from + k)
}
