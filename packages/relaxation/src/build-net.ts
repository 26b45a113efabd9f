// From a motif and a gauge to the elastic net. The edge of a round is a row of tops and chains; legs stand
// on the edge below (or on a chain, a space, a post, the centre); every leg is kept from leaning; folds
// along legs and along tops are resisted; chains bend like cords.

import {
  findCorners,
  groundRounds,
  isFree,
  type Motif,
  type RoundCorners,
  scallopSlack,
  validateMotif,
  type WorkedTops,
  workedTops,
} from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import type { Gauge } from "@roundwright/stitches"
import { type EdgePlan, planEdges, type Sizes, sizesIn } from "./edge-plan.ts"
import { columnHinges, rodsOf, roundHinges } from "./folds-of-net.ts"
import { leaning, shearOf } from "./leans-of-net.ts"
import { type Leg, planLegs } from "./legs.ts"
import { blend, type Net, type NetEdge, type NetNode, nodePoint, type Point } from "./net.ts"
import type { Ground } from "./places.ts"
import { edgeSprings, postSpring, ringSprings } from "./springs-of-net.ts"
import { placeInPlane } from "./start-in-plane.ts"

export interface NetOptions {
  /** Every stitch so much taller than the gauge says, as in another hand; 1 by default. */
  readonly heightFactor?: number
}

/** @throws RoundwrightError `broken-motif`, `empty-motif`, `empty-round`, `net-too-large`, `not-positive` */
export function buildNet(motif: Motif, gauge: Gauge, options: NetOptions = {}): Net {
  validateMotif(motif)
  if (motif.rounds.length === 0)
    throw new RoundwrightError("empty-motif", "The piece has no rounds to lay out.")
  const sizes = sizesIn(gauge, options.heightFactor)
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
  const legs = planAllLegs(ground, corners, gauge.input.leanShare ?? 0)
  const shear = legs.map((of, r) => shearOf(ground, corners, r, of))
  const loose = looseElements(motif)
  const springs = [
    ...ringSprings(ground, motif, sizes),
    ...edgeSprings(ground, corners, sizes),
    ...legs.flatMap((of, r) => of.map((leg) => postSpring(ground, r, leg))),
  ].map((spring) =>
    loose(spring.round, spring.element)
      ? { ...spring, areaMm2: freeShare * spring.areaMm2 }
      : spring,
  )
  const worked = workedTops(motif)
  return {
    nodes: describeNodes(ground, legs, sizes),
    springs,
    leans: shear.flatMap(({ leans }) =>
      leans.map((lean) =>
        loose(lean.round, lean.element) ? { ...lean, areaShare: freeShare * lean.areaShare } : lean,
      ),
    ),
    panels: shear.flatMap(({ panels }) => panels),
    hinges: legs.flatMap((of, r) => [
      ...roundHinges(ground, r, of),
      ...columnHinges(ground, r, of, legs[r + 1] ?? []),
    ]),
    rods: rodsOf(ground, motif),
    edges: edges.map((edge, r) => describeEdge(ground, r, worked, edge)),
    centre: ground.ring.nodes,
    start: placeInPlane(ground, corners, legs, next),
    mmPerUnit: sizes.mmPerUnit,
  }
}

/**
 * Stiffness left to a free layer: it hangs on the ground by its feet alone and lies, folds and overlaps as it likes. Something is
 * left so that its nodes have a place (estimate).
 */
const freeShare = 0.02

/** Whether an element belongs to a layer that stands free of the ground. */
function looseElements(motif: Motif): (round: number, element: number) => boolean {
  const ground = groundRounds(motif)
  return (round, element) => {
    const own = motif.rounds[round]?.elements[element]
    return own !== undefined && (!ground[round] || isFree(own))
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
    return {
      count: workedInChains(motif)
        ? centre.chains
        : Math.max(fewestRingNodes, edges[0]?.nodes.length ?? 0),
      lengthMm: centre.chains * sizes.chainMm,
    }
  if (centre.kind === "solid-ring") {
    // Unknown: the ring on which round 1 lies flat.
    const first = edges[0]
    const flat = first === undefined ? 0 : first.lengthMm - 2 * Math.PI * first.heightMm
    const lengthMm = centre.diameterMm === undefined ? flat : Math.PI * centre.diameterMm
    if (lengthMm > 0)
      return { count: Math.max(fewestRingNodes, first?.nodes.length ?? 0), lengthMm }
  }
  return { count: 1, lengthMm: 1 }
}

/** A ring of fewer pieces would be a polygon. */
const fewestRingNodes = 6

/**
 * Whether round 1 names chains of the ring. Where it is worked round the whole ring its stitches slide along it, and a
 * ring of five chains must not pull sixteen stitches askew: the ring then has as many pieces as the round.
 */
function workedInChains(motif: Motif): boolean {
  return motif.rounds[0]!.elements.some(
    (element) =>
      element.type === "stitch" &&
      element.anchors.some((anchor) => anchor.at === "centre" && anchor.chain !== undefined),
  )
}

/** How far a round lies from the centre: by its legs on the highest round below, the others only reach down past them. */
function depthOf(legs: readonly Leg[], depths: readonly number[]): number {
  const highest = Math.max(-1, ...legs.map((leg) => leg.place.round))
  const bearing = legs.filter((leg) => leg.place.round === highest)
  const width = bearing.reduce((sum, leg) => sum + leg.top.widthMm, 0)
  const height = bearing.reduce((sum, leg) => sum + leg.top.widthMm * leg.top.heightMm, 0)
  return (depths[highest] ?? 0) + (width > 0 ? height / width : 0)
}

/** Stiffness left to a leg drawn up from a round further down: the maker gives it the length that fits (estimate). */
const drawnShare = 0.05

/** A leg worked into a round further down is drawn up to the height of its neighbours, loosely. */
function drawLongLegs(legs: readonly Leg[], depths: readonly number[]): Leg[] {
  const depth = depthOf(legs, depths)
  const highest = Math.max(-1, ...legs.map((leg) => leg.place.round))
  return legs.map((leg) => {
    if (leg.place.round >= highest) return leg
    const needed = depth - (depths[leg.place.round] ?? 0)
    return needed > leg.restMm ? { ...leg, restMm: needed, share: drawnShare * leg.share } : leg
  })
}

function planAllLegs(ground: Ground, corners: readonly RoundCorners[], leanShare: number): Leg[][] {
  const legs: Leg[][] = []
  const baseOf = new Map<string, Point>()
  const postPoint = (round: number, element: number): Point | null => {
    const base = baseOf.get(`${round}:${element}`)
    const index = ground.edges[round]!.firstOf[element]!
    // Worked round the middle of the post.
    return base === undefined ? null : blend(nodePoint(ground.firstNode[round]! + index), base, 0.5)
  }
  const depths: number[] = []
  let backwards = false
  ground.motif.rounds.forEach((motifRound, round) => {
    if (motifRound.turned && round > 0) backwards = !backwards
    const planned = drawLongLegs(planLegs(ground, round, corners, postPoint), depths)
    depths.push(depthOf(planned, depths))
    // Round 1 stands on no stitches, and turning takes the lean back.
    const lean = round > 0 && !motifRound.turned ? (backwards ? -1 : 1) * leanShare : 0
    legs.push(lean === 0 ? planned : planned.map((leg) => leaning(leg, lean * leg.top.widthMm)))
    for (const leg of planned) baseOf.set(`${round}:${leg.top.element}`, leg.place.point)
  })
  return legs
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
    const picots = picotsOf(ground.motif, round, sizes)
    edge.nodes.forEach((node, k) => {
      const picotMm = node.isChain ? undefined : picots.get(node.element)
      // A chain weighs about as much as the top half of an sc of its length.
      const chain = node.isChain ? (node.widthMm * sizes.scWidthMm) / 2 : 0
      nodes.push({
        kind: node.isChain ? "chain" : "top",
        round,
        element: node.element,
        widthMm: node.widthMm,
        areaMm2: area[ground.firstNode[round]! + k]! + chain,
        ...(picotMm === undefined ? {} : { picotMm }),
        ...(isFree(ground.motif.rounds[round]!.elements[node.element]!) ? { free: true } : {}),
      })
    })
  })
  return nodes
}

/** For each stitch with a picot on it how far that stands out. */
function picotsOf(motif: Motif, round: number, sizes: Sizes): Map<number, number> {
  const found = new Map<number, number>()
  let top = -1
  motif.rounds[round]!.elements.forEach((element, k) => {
    if (element.type === "stitch") top = k
    else if (element.type === "picot" && top >= 0) found.set(top, sizes.picotMm(element.chains))
  })
  return found
}

function describeEdge(
  { motif, firstNode, chainMm }: Ground,
  round: number,
  worked: WorkedTops,
  edge: EdgePlan,
): NetEdge {
  const { elements } = motif.rounds[round]!
  const widths = elements.map(() => 0)
  const heights = elements.map(() => 0)
  for (const node of edge.nodes)
    if (!node.isChain) {
      widths[node.element] = node.widthMm
      heights[node.element] = node.heightMm
    }
  const { slackMm } = scallopSlack(motif, round, worked, widths, heights, chainMm)
  return {
    ...(slackMm > 0 ? { scallopMm: slackMm } : {}),
    nodes: range(firstNode[round]!, edge.nodes.length),
    closed: edge.closed,
    elements: edge.nodes.map((node) => node.element),
    lengthMm: edge.lengthMm,
  }
}

function range(from: number, count: number): number[] {
  return Array.from({ length: count }, (_, k) => from + k)
}
