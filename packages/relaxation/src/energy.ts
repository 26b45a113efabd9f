// The energy of a net as a function of where its nodes are, with exact first and second derivatives, in
// the plane (x, y a node) or in space (x, y, z a node; the table is the plane z = 0, weight pulls down).

import type { SymmetricPattern, TwiceDifferentiableFunction } from "@roundwright/numerics"
import { type BlockPattern, layBlocks } from "./block-pattern.ts"
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

/** Depth to which weight presses a node into the table, mm: invisible, yet not too stiff to solve. */
const restingDepthMm = 0.01
/** A node's contact must not be weaker than this when weight is off, N/mm per mm2. */
const leastContact = 1e-4
/** Contact of a node that carries no fabric counts as that of this area, mm2. */
const leastAreaMm2 = 1
/** Holds the centre when the edge is pulled outward, so that the pull has a middle; N/mm. */
const centreHold = 0.02

/**
 * A corner between a leg and the edge pushes back when it is closed to half its area, a lean of 60 degrees: there
 * the neighbouring stitches lie against each other.
 */
const openShare = 0.5
/** Strength of that push against the stiffness of the fabric: any share near 1 serves, it grows without bound. */
const cornerShare = 0.1

export class NetEnergy implements TwiceDifferentiableFunction {
  readonly size: number
  private readonly dimensions: 2 | 3
  private readonly terms: readonly Term[]
  /** For each term, where its nodes, its coefficients and its blocks start in the lists below. */
  private readonly nodeStart: Int32Array
  private readonly coefficientStart: Int32Array
  private readonly nodes: Int32Array
  /** Vector j of a term is the sum over its nodes a of coefficient[j * nodes + a] times node a. */
  private readonly coefficients: Float64Array
  private readonly loads: Float64Array
  private readonly contact: Float64Array | null
  private readonly u = new Float64Array(9)
  private readonly du = new Float64Array(9)
  private readonly ddu = new Float64Array(81)
  private blocks: BlockPattern | null = null

  constructor(net: Net, options: EnergyOptions) {
    const d = options.dimensions
    this.dimensions = d
    this.size = d * net.nodes.length
    const terms: Term[] = []
    const [nodeStart, coefficientStart, nodes, coefficients]: number[][] = [[0], [0], [], []]
    for (const { term, points } of gatherTerms(net, options)) {
      terms.push(term)
      placeTerm(points, nodes!, coefficients!)
      nodeStart!.push(nodes!.length)
      coefficientStart!.push(coefficients!.length)
    }
    this.terms = terms
    this.nodeStart = Int32Array.from(nodeStart!)
    this.coefficientStart = Int32Array.from(coefficientStart!)
    this.nodes = Int32Array.from(nodes!)
    this.coefficients = Float64Array.from(coefficients!)
    const { weight } = options.material
    this.loads = Float64Array.from(net.nodes, (node) => (d === 3 ? weight * node.areaMm2 : 0))
    this.contact =
      d === 3 && options.table
        ? Float64Array.from(
            net.nodes,
            (node) =>
              Math.max(weight / restingDepthMm, leastContact) *
              Math.max(node.areaMm2, leastAreaMm2),
          )
        : null
  }

  get pattern(): SymmetricPattern {
    return this.structure().pattern
  }

  value(x: Float64Array): number {
    let sum = 0
    for (let t = 0; t < this.terms.length; t++) {
      this.readVectors(t, x)
      sum += this.terms[t]!.value(this.u)
    }
    return sum + this.outside(x, null)
  }

  gradient(x: Float64Array, gradient: Float64Array): number {
    const { du, dimensions: d, coefficients, nodes } = this
    gradient.fill(0)
    let sum = 0
    for (let t = 0; t < this.terms.length; t++) {
      this.readVectors(t, x)
      const term = this.terms[t]!
      sum += term.slope(this.u, du)
      const first = this.nodeStart[t]!
      const n = this.nodeStart[t + 1]! - first
      let at = this.coefficientStart[t]!
      for (let j = 0; j < term.vectors; j++)
        for (let a = 0; a < n; a++) {
          const c = coefficients[at++]!
          if (c === 0) continue
          const node = d * nodes[first + a]!
          for (let k = 0; k < d; k++) gradient[node + k]! += c * du[3 * j + k]!
        }
    }
    return sum + this.outside(x, gradient)
  }

  hessian(x: Float64Array, values: Float64Array, convex: boolean): void {
    const { dimensions: d } = this
    const { entries, slots, pattern } = this.structure()
    entries.fill(0)
    for (let t = 0; t < this.terms.length; t++) this.addCurvature(t, x, convex)
    values.fill(0)
    const perBlock = d * d
    for (let b = 0; b < entries.length / 9; b++)
      for (let e = 0; e < perBlock; e++) {
        const slot = slots[b * perBlock + e]!
        if (slot < 0) continue
        const i = (e / d) | 0
        values[slot] = entries[9 * b + 3 * i + e - d * i]!
      }
    if (this.contact === null) return
    for (let node = 0; node < this.contact.length; node++) {
      const z = x[3 * node + 2]!
      if (z < 0)
        values[pattern.columnStart[3 * node + 2]!]! += contactStiffness(this.contact[node]!, z)
    }
  }

  private readVectors(t: number, x: Float64Array): void {
    const { u, dimensions: d, nodes, coefficients } = this
    const first = this.nodeStart[t]!
    const n = this.nodeStart[t + 1]! - first
    const start = this.coefficientStart[t]!
    const { vectors } = this.terms[t]!
    for (let j = 0; j < vectors; j++) {
      const row = start + j * n
      let [ux, uy, uz] = [0, 0, 0]
      for (let a = 0; a < n; a++) {
        const c = coefficients[row + a]!
        const at = d * nodes[first + a]!
        ux += c * x[at]!
        uy += c * x[at + 1]!
        if (d === 3) uz += c * x[at + 2]!
      }
      u[3 * j] = ux
      u[3 * j + 1] = uy
      u[3 * j + 2] = uz
    }
  }

  private addCurvature(t: number, x: Float64Array, convex: boolean): void {
    const { ddu, coefficients } = this
    const { entries, blockStart, blockOf } = this.structure()
    const term = this.terms[t]!
    this.readVectors(t, x)
    if (!term.curvature(this.u, ddu, convex)) return
    const n = this.nodeStart[t + 1]! - this.nodeStart[t]!
    const start = this.coefficientStart[t]!
    const m = term.vectors
    const stride = 3 * m
    let pair = blockStart[t]!
    for (let a = 0; a < n; a++)
      for (let b = 0; b <= a; b++) {
        const block = 9 * blockOf[pair++]!
        for (let j = 0; j < m; j++) {
          const ca = coefficients[start + j * n + a]!
          if (ca === 0) continue
          for (let k = 0; k < m; k++) {
            const c = ca * coefficients[start + k * n + b]!
            if (c === 0) continue
            const from = 3 * j * stride + 3 * k
            for (let i = 0; i < 3; i++)
              for (let l = 0; l < 3; l++)
                entries[block + 3 * i + l]! += c * ddu[from + i * stride + l]!
          }
        }
      }
  }

  /** Weight and table. */
  private outside(x: Float64Array, gradient: Float64Array | null): number {
    if (this.dimensions === 2) return 0
    let sum = 0
    for (let node = 0; node < this.loads.length; node++) {
      const at = 3 * node + 2
      const z = x[at]!
      sum += this.loads[node]! * z
      if (gradient !== null) gradient[at]! += this.loads[node]!
      if (this.contact === null || z >= 0) continue
      const k = this.contact[node]!
      sum += contactEnergy(k, z)
      if (gradient !== null) gradient[at]! += contactForce(k, z)
    }
    return sum
  }

  private structure(): BlockPattern {
    this.blocks ??= layBlocks(this.nodeStart, this.nodes, this.loads.length, this.dimensions)
    return this.blocks
  }
}

// Contact grows from nothing over the resting depth, so that the second derivative is continuous.
function contactEnergy(k: number, z: number): number {
  const s = restingDepthMm
  const t = -z
  return t < s ? (k * t ** 3) / (6 * s) : k * (t ** 2 / 2 - (s * t) / 2 + s ** 2 / 6)
}

function contactForce(k: number, z: number): number {
  const s = restingDepthMm
  const t = -z
  return t < s ? (-k * t ** 2) / (2 * s) : -k * (t - s / 2)
}

function contactStiffness(k: number, z: number): number {
  return k * Math.min(1, -z / restingDepthMm)
}

type Vector = readonly { readonly point: Point; readonly factor: number }[]

/** Terms of the net with their vectors as signed points. */
function gatherTerms(net: Net, options: EnergyOptions): { term: Term; points: Vector[] }[] {
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

/** Appends the nodes of a term, ascending, and its coefficients. */
function placeTerm(points: readonly Vector[], nodes: number[], coefficients: number[]): void {
  const own = [
    ...new Set(points.flatMap((vector) => vector.flatMap(({ point }) => point.nodes))),
  ].sort((a, b) => a - b)
  nodes.push(...own)
  for (const vector of points) {
    const row = own.map(() => 0)
    for (const { point, factor } of vector)
      point.nodes.forEach((node, k) => {
        row[own.indexOf(node)]! += factor * point.weights[k]!
      })
    coefficients.push(...row)
  }
}
