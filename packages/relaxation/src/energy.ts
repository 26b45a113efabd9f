// The energy of a net as a function of where its nodes are, with exact first and second derivatives, in
// the plane (x, y a node) or in space (x, y, z a node; the table is the plane z = 0, weight pulls down).

import {
  patternFromPairs,
  type SymmetricPattern,
  type TwiceDifferentiableFunction,
} from "@roundwright/numerics"
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
/** Holds the centre when the edge is pulled outward, so that the pull has a middle; N/mm. */
const centreHold = 0.02

/**
 * A corner between a leg and the edge pushes back when it is closed to half its area, a lean of 60 degrees: there
 * the neighbouring stitches lie against each other.
 */
const openShare = 0.5
/** Strength of that push against the stiffness of the fabric: any share near 1 serves, it grows without bound. */
const cornerShare = 0.1

/** A term with its nodes: vector j is the sum of coefficient[j * nodes + a] times node a. */
interface PlacedTerm {
  readonly term: Term
  readonly nodes: Int32Array
  readonly coefficients: Float64Array
  /** Place of the block of each pair of nodes (a >= b), a by a. */
  readonly blocks: Int32Array
}

export class NetEnergy implements TwiceDifferentiableFunction {
  readonly size: number
  readonly pattern: SymmetricPattern
  private readonly dimensions: 2 | 3
  private readonly terms: readonly PlacedTerm[]
  private readonly loads: Float64Array
  private readonly contact: Float64Array | null
  private readonly blockSlots: Int32Array
  private readonly blockValues: Float64Array
  private readonly u = new Float64Array(9)
  private readonly du = new Float64Array(9)
  private readonly ddu = new Float64Array(81)

  constructor(net: Net, options: EnergyOptions) {
    const d = options.dimensions
    this.dimensions = d
    this.size = d * net.nodes.length
    const pairs = new PairList(net.nodes.length)
    this.terms = gatherTerms(net, options).map(({ term, points }) => placeTerm(term, points, pairs))
    const { pattern, slots } = layBlocks(pairs, net.nodes.length, d)
    this.pattern = pattern
    this.blockSlots = slots
    this.blockValues = new Float64Array(9 * pairs.rows.length)
    this.loads = Float64Array.from(net.nodes, (node) =>
      d === 3 ? options.material.weight * node.areaMm2 : 0,
    )
    this.contact =
      d === 3 && options.table
        ? Float64Array.from(
            net.nodes,
            (node) =>
              Math.max(options.material.weight / restingDepthMm, leastContact) *
              Math.max(node.areaMm2, 1),
          )
        : null
  }

  value(x: Float64Array): number {
    let sum = 0
    for (const placed of this.terms) {
      this.readVectors(placed, x)
      sum += placed.term.value(this.u)
    }
    return sum + this.outside(x, null)
  }

  gradient(x: Float64Array, gradient: Float64Array): number {
    const { du, dimensions: d } = this
    gradient.fill(0)
    let sum = 0
    for (const placed of this.terms) {
      this.readVectors(placed, x)
      sum += placed.term.slope(this.u, du)
      const { nodes, coefficients } = placed
      const n = nodes.length
      for (let j = 0; j < placed.term.vectors; j++)
        for (let a = 0; a < n; a++) {
          const c = coefficients[j * n + a]!
          if (c === 0) continue
          const at = d * nodes[a]!
          for (let k = 0; k < d; k++) gradient[at + k]! += c * du[3 * j + k]!
        }
    }
    return sum + this.outside(x, gradient)
  }

  hessian(x: Float64Array, values: Float64Array, convex: boolean): void {
    const { blockValues, blockSlots, dimensions: d } = this
    blockValues.fill(0)
    for (const placed of this.terms) this.addCurvature(placed, x, convex)
    values.fill(0)
    const entries = d * d
    for (let b = 0; b < blockValues.length / 9; b++)
      for (let e = 0; e < entries; e++) {
        const slot = blockSlots[b * entries + e]!
        if (slot < 0) continue
        const i = (e / d) | 0
        const j = e - d * i
        values[slot] = blockValues[9 * b + 3 * i + j]!
      }
    if (this.contact === null) return
    for (let node = 0; node < this.contact.length; node++)
      if (x[3 * node + 2]! < 0)
        values[this.pattern.columnStart[3 * node + 2]!]! += contactStiffness(
          this.contact[node]!,
          x[3 * node + 2]!,
        )
  }

  private readVectors({ term, nodes, coefficients }: PlacedTerm, x: Float64Array): void {
    const { u, dimensions: d } = this
    const n = nodes.length
    u[2] = 0
    u[5] = 0
    u[8] = 0
    for (let j = 0; j < term.vectors; j++)
      for (let k = 0; k < d; k++) {
        let sum = 0
        for (let a = 0; a < n; a++) sum += coefficients[j * n + a]! * x[d * nodes[a]! + k]!
        u[3 * j + k] = sum
      }
  }

  private addCurvature(placed: PlacedTerm, x: Float64Array, convex: boolean): void {
    const { ddu, blockValues } = this
    const { term, nodes, coefficients, blocks } = placed
    this.readVectors(placed, x)
    if (!term.curvature(this.u, ddu, convex)) return
    const n = nodes.length
    const m = term.vectors
    const stride = 3 * m
    let pair = 0
    for (let a = 0; a < n; a++)
      for (let b = 0; b <= a; b++) {
        const block = 9 * blocks[pair++]!
        for (let j = 0; j < m; j++) {
          const ca = coefficients[j * n + a]!
          if (ca === 0) continue
          for (let k = 0; k < m; k++) {
            const c = ca * coefficients[k * n + b]!
            if (c === 0) continue
            const from = 3 * j * stride + 3 * k
            for (let i = 0; i < 3; i++)
              for (let l = 0; l < 3; l++)
                blockValues[block + 3 * i + l]! += c * ddu[from + i * stride + l]!
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

function placeTerm(term: Term, points: readonly Vector[], pairs: PairList): PlacedTerm {
  const nodes = [
    ...new Set(points.flatMap((vector) => vector.flatMap(({ point }) => point.nodes))),
  ].sort((a, b) => a - b)
  const n = nodes.length
  const coefficients = new Float64Array(points.length * n)
  points.forEach((vector, j) => {
    for (const { point, factor } of vector)
      point.nodes.forEach((node, k) => {
        coefficients[j * n + nodes.indexOf(node)]! += factor * point.weights[k]!
      })
  })
  const blocks = new Int32Array((n * (n + 1)) / 2)
  let pair = 0
  for (let a = 0; a < n; a++)
    for (let b = 0; b <= a; b++) blocks[pair++] = pairs.place(nodes[a]!, nodes[b]!)
  return { term, nodes: Int32Array.from(nodes), coefficients, blocks }
}

/** Pairs of nodes that share a term, each once. */
class PairList {
  readonly rows: number[] = []
  readonly columns: number[] = []
  private readonly known = new Map<number, number>()

  constructor(private readonly count: number) {}

  place(row: number, column: number): number {
    const key = row * this.count + column
    const found = this.known.get(key)
    if (found !== undefined) return found
    const made = this.rows.length
    this.known.set(key, made)
    this.rows.push(row)
    this.columns.push(column)
    return made
  }
}

/** Where each entry of each block goes among the values of the matrix; -1 for the upper triangle of a diagonal block. */
function layBlocks(
  pairs: PairList,
  count: number,
  d: number,
): { pattern: SymmetricPattern; slots: Int32Array } {
  const rows: number[] = []
  const columns: number[] = []
  const entryOf: number[] = []
  const blocks = pairs.rows.length
  for (let b = 0; b < blocks; b++) {
    const [r, c] = [pairs.rows[b]!, pairs.columns[b]!]
    for (let i = 0; i < d; i++)
      for (let j = 0; j < d; j++) {
        if (r === c && j > i) continue
        rows.push(d * r + i)
        columns.push(d * c + j)
        entryOf.push(b * d * d + d * i + j)
      }
  }
  const { pattern, slots: found } = patternFromPairs(d * count, rows, columns)
  const slots = new Int32Array(blocks * d * d).fill(-1)
  entryOf.forEach((entry, k) => {
    slots[entry] = found[k]!
  })
  return { pattern, slots }
}
