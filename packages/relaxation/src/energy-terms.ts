// The terms of a net's energy, each with its difference vectors as signed points.

import { planeCornerTerm, spaceCornerTerm } from "./corner-term.ts"
import { hingeTerm } from "./hinge-term.ts"
import type { Material } from "./material.ts"
import type { Net, Point } from "./net.ts"
import type { StrainLaw } from "./strain-law.ts"
import { leanTerm, pullTerm, quadraticTerm, springTerm, type Term } from "./terms.ts"

export interface EnergyOptions {
  readonly dimensions: 2 | 3
  readonly material: Material
  /** Whether it lies on a table (z = 0) that it cannot sink through. Space only. */
  readonly table: boolean
  /** Outward force along the last edge as when pinned out, as a strain of the fabric; 0 for none. */
  readonly pull: number
  /** Corners of the fabric that must not close, from `cornersOfFabric`. */
  readonly corners?: readonly FabricCorner[]
}

/** A corner at a point between two others, counterclockwise, and its cross product at ease, mm2. */
export interface FabricCorner {
  readonly at: Point
  readonly first: Point
  readonly second: Point
  readonly areaMm2: number
}
/** Holds the centre when the edge is pulled outward, so that the pull has a middle; N/mm. */
const centreHold = 0.02

/**
 * A corner between a leg and the edge pushes back when it is closed to half its area, a lean of 60 degrees: there
 * the neighbouring stitches lie against each other.
 */
const openShare = 0.5
/** Strength of that push against the stiffness of the fabric: any share near 1 serves, it grows without bound. */
const cornerShare = 0.1
/** A sum of points with factors, which add up to 0 for a difference. */
export type Vector = readonly { readonly point: Point; readonly factor: number }[]

export function gatherTerms(net: Net, options: EnergyOptions): { term: Term; points: Vector[] }[] {
  const { material: m } = options
  const fabric: StrainLaw = {
    pulled: 1,
    pushed: 1,
    inside: m.give > 0 ? m.giveShare : 1,
    give: m.give,
  }
  const string: StrainLaw = {
    ...fabric,
    pushed: m.slackShare,
    inside: m.give > 0 ? Math.min(m.giveShare, m.slackShare) : m.slackShare,
  }
  const minus = (a: Point, b: Point): Vector => [
    { point: a, factor: 1 },
    { point: b, factor: -1 },
  ]
  const found: { term: Term; points: Vector[] }[] = []
  for (const spring of net.springs)
    found.push({
      term: springTerm(
        spring.restMm,
        m.stiffness * spring.areaMm2,
        spring.role === "chain" ? string : fabric,
      ),
      points: [minus(spring.from, spring.to)],
    })
  for (const lean of net.leans)
    found.push({
      term: leanTerm(lean.restMm, m.stiffness * m.leanShare * lean.areaShare),
      points: [minus(lean.top, lean.left), minus(lean.top, lean.right)],
    })
  if (options.dimensions === 3)
    for (const { points, scale, areasMm4, share } of net.hinges)
      found.push({
        term: hingeTerm(scale, areasMm4, m.bending * share),
        points: [
          minus(points[1], points[0]),
          minus(points[2], points[0]),
          minus(points[3], points[0]),
        ],
      })
  const cornerTerm = options.dimensions === 2 ? planeCornerTerm : spaceCornerTerm
  for (const { at, first, second, areaMm2 } of options.corners ?? [])
    found.push({
      term: cornerTerm(areaMm2, cornerShare * m.stiffness * areaMm2, openShare),
      points: [minus(first, at), minus(second, at)],
    })
  for (const rod of net.rods)
    found.push({
      term: quadraticTerm(m.bending * m.chainBendingShare * rod.share),
      points: [
        rod.nodes.map((node, k) => ({
          point: { nodes: [node], weights: [1] },
          factor: k === 1 ? -2 : 1,
        })),
      ],
    })
  // Inside the give the fabric is softer: the same strain needs less force.
  if (options.pull > 0) found.push(...pullTerms(net, m.stiffness * fabric.inside * options.pull))
  return found
}

function pullTerms(net: Net, forcePerMm: number): { term: Term; points: Vector[] }[] {
  const alone = (node: number): Vector[] => [
    [{ point: { nodes: [node], weights: [1] }, factor: 1 }],
  ]
  const last = net.edges.at(-1)!
  const pulled = last.nodes.map((node) => ({
    term: pullTerm(forcePerMm * net.nodes[node]!.widthMm),
    points: alone(node),
  }))
  const share = 1 / net.centre.length
  const middle: Vector[] = [
    net.centre.map((node) => ({ point: { nodes: [node], weights: [1] }, factor: share })),
  ]
  return [...pulled, { term: quadraticTerm(centreHold), points: middle }]
}
