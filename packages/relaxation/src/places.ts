// Where a leg of a stitch stands: the point of the net its anchor names, and how far along the edge of
// that round it lies. Several legs under one run of chains spread out evenly along it.

import type { Anchor, Motif } from "@roundwright/motif"
import type { EdgePlan } from "./edge-plan.ts"
import { blend, nodePoint, type Point } from "./net.ts"

export interface Place {
  readonly point: Point
  /** Points of the same edge a little to the left and right (clockwise, counterclockwise), for leaning. */
  readonly left: Point | null
  readonly right: Point | null
  /** Index of the round it lies on, -1 for the centre. */
  readonly round: number
  /** Distance along that edge, mm; distances of left and right from it. */
  readonly along: number
  readonly leftMm: number
  readonly rightMm: number
  /** For a place on a run of chains: the tops at its ends (index in the edge) and how far along they are, mm. */
  readonly ends: readonly { readonly index: number; readonly mm: number }[]
  /** Extra length of the leg: a picot stands above the edge. */
  readonly aboveMm: number
}

/** What the places need to know of the net being built. */
export interface Ground {
  readonly motif: Motif
  readonly edges: readonly EdgePlan[]
  /** Node number of the first node of each edge. */
  readonly firstNode: readonly number[]
  /** The centre as an edge: its nodes, its length, whether it is a ring. */
  readonly ring: { readonly nodes: readonly number[]; readonly lengthMm: number }
  readonly chainMm: number
}

/**
 * @param share where among the legs in the same place: (k + 1/2) / legs, counterclockwise
 * @param postPoint the point halfway down a stitch's post, for stitches worked round it
 */
export function placeOf(
  ground: Ground,
  anchor: Anchor,
  share: number,
  postPoint: ((round: number, element: number) => Point | null) | null,
): Place {
  if (anchor.at === "centre") return centrePlace(ground, anchor.chain, share)
  const plan = ground.edges[anchor.round]!
  const element = ground.motif.rounds[anchor.round]!.elements[anchor.element]!
  const first = plan.firstOf[anchor.element]!
  if (anchor.at === "picot" || first < 0) return picotPlace(ground, anchor)
  if (anchor.at === "stitch") {
    const place = nodePlace(ground, anchor.round, first)
    const round = postPoint?.(anchor.round, anchor.element) ?? null
    return round === null ? place : { ...place, point: round }
  }
  if (anchor.at === "between") return betweenPlace(ground, anchor)
  const chains = element.type === "chain" ? element.chains : 1
  const wanted =
    anchor.at === "chain" ? chainIndex(plan, first, chains, anchor.chain) : share * chains - 0.5
  return runPlace(ground, anchor.round, first, chains, wanted)
}

/** A run may have been laid backwards: find the chain by its number. */
function chainIndex(plan: EdgePlan, first: number, chains: number, chain: number): number {
  for (let k = 0; k < chains; k++) if (plan.nodes[first + k]!.chain === chain) return k
  return 0
}

function nodePlace(ground: Ground, round: number, index: number): Place {
  const plan = ground.edges[round]!
  const own = plan.nodes[index]!
  const side = (by: -1 | 1): { point: Point | null; mm: number } => {
    const k = neighbour(plan, index, by)
    if (k === null) return { point: null, mm: 0 }
    const mm = (plan.nodes[k]!.widthMm + own.widthMm) / 2
    return { point: nodePoint(ground.firstNode[round]! + k), mm }
  }
  const [left, right] = [side(-1), side(1)]
  return {
    point: nodePoint(ground.firstNode[round]! + index),
    left: left.point,
    right: right.point,
    round,
    along: own.along,
    leftMm: left.mm,
    rightMm: right.mm,
    aboveMm: 0,
    ends: [],
  }
}

/** A place `wanted` chains (whole or not, from 0) along a run. */
function runPlace(
  ground: Ground,
  round: number,
  first: number,
  chains: number,
  wanted: number,
): Place {
  const plan = ground.edges[round]!
  const base = ground.firstNode[round]!
  const at = Math.min(chains - 1, Math.max(0, wanted))
  const low = Math.min(Math.floor(at), Math.max(0, chains - 2))
  const pointAt = (k: number): Point => {
    const whole = Math.floor(k)
    const nodeAt = (i: number): Point => {
      const clamped =
        i < first
          ? neighbour(plan, first, -1)
          : i >= first + chains
            ? neighbour(plan, first + chains - 1, 1)
            : i
      return nodePoint(base + (clamped ?? Math.min(first + chains - 1, Math.max(first, i))))
    }
    return blend(nodeAt(first + whole), nodeAt(first + whole + 1), k - whole)
  }
  const [left, right] = [pointAt(at - 1), pointAt(at + 1)]
  return {
    point:
      chains === 1
        ? nodePoint(base + first)
        : blend(nodePoint(base + first + low), nodePoint(base + first + low + 1), at - low),
    left,
    right,
    round,
    along: plan.nodes[first]!.along + at * ground.chainMm,
    leftMm: ground.chainMm,
    rightMm: ground.chainMm,
    aboveMm: 0,
    ends: runEnds(plan, first, chains, at, ground.chainMm),
  }
}

function runEnds(
  plan: EdgePlan,
  first: number,
  chains: number,
  at: number,
  chainMm: number,
): { index: number; mm: number }[] {
  const [before, after] = [neighbour(plan, first, -1), neighbour(plan, first + chains - 1, 1)]
  return [
    { index: before, steps: at + 0.5 },
    { index: after, steps: chains - at - 0.5 },
  ].flatMap(({ index, steps }) =>
    index === null || plan.nodes[index]!.isChain
      ? []
      : [{ index, mm: steps * chainMm + plan.nodes[index]!.widthMm / 2 }],
  )
}

function betweenPlace(ground: Ground, anchor: { round: number; element: number }): Place {
  const plan = ground.edges[anchor.round]!
  const first = plan.firstOf[anchor.element]!
  let last = first
  while (plan.nodes[last + 1]?.element === anchor.element) last++
  const backwards = runsBackwards(plan)
  const next = backwards ? neighbour(plan, first, -1) : neighbour(plan, last, 1)
  const here = nodePlace(ground, anchor.round, backwards ? first : last)
  if (next === null) return here
  const other = nodePlace(ground, anchor.round, next)
  const [a, b] = backwards ? [other, here] : [here, other]
  return {
    ...a,
    point: blend(a.point, b.point, 0.5),
    left: a.point,
    right: b.point,
    along: a.along + a.rightMm / 2,
    leftMm: a.rightMm / 2,
    rightMm: a.rightMm / 2,
  }
}

function runsBackwards(plan: EdgePlan): boolean {
  const elements = plan.nodes.map((node) => node.element)
  return elements.length > 1 && elements[0]! > elements.at(-1)!
}

/** A picot stands on the stitch that closes it or on the top before it, half its length high (a loop drawn flat). */
function picotPlace(ground: Ground, anchor: { round: number; element: number }): Place {
  const elements = ground.motif.rounds[anchor.round]!.elements
  const picot = elements[anchor.element]!
  let before = anchor.element
  do before = (before - 1 + elements.length) % elements.length
  while (elements[before]!.type === "picot" && before !== anchor.element)
  const plan = ground.edges[anchor.round]!
  const own = plan.firstOf[anchor.element]!
  const index = own >= 0 ? own : Math.max(0, plan.firstOf[before]!)
  const chains = picot.type === "picot" ? picot.chains : 0
  return { ...nodePlace(ground, anchor.round, index), aboveMm: (chains * ground.chainMm) / 2 }
}

function centrePlace(ground: Ground, chain: number | undefined, share: number): Place {
  const { nodes, lengthMm } = ground.ring
  const n = nodes.length
  if (n === 1)
    return {
      point: nodePoint(nodes[0]!),
      left: null,
      right: null,
      round: -1,
      along: share * lengthMm,
      leftMm: 0,
      rightMm: 0,
      aboveMm: 0,
      ends: [],
    }
  const at = chain === undefined ? share * n - 0.5 : chain
  const pointAt = (k: number): Point => {
    const whole = Math.floor(k)
    const nodeAt = (i: number): Point => nodePoint(nodes[((i % n) + n) % n]!)
    return blend(nodeAt(whole), nodeAt(whole + 1), k - whole)
  }
  const step = lengthMm / n
  return {
    point: pointAt(at),
    left: pointAt(at - 1),
    right: pointAt(at + 1),
    round: -1,
    along: (at + 0.5) * step,
    leftMm: step,
    rightMm: step,
    aboveMm: 0,
    ends: [],
  }
}

/** The next node along an edge, cyclic when it is closed; null at an open end. */
export function neighbour(plan: EdgePlan, index: number, by: -1 | 1): number | null {
  const n = plan.nodes.length
  const k = index + by
  if (k >= 0 && k < n) return k
  return plan.closed ? (k + n) % n : null
}
