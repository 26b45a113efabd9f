// The energy of a net as a function of where its nodes are, with exact first and second derivatives, in
// the plane (x, y a node) or in space (x, y, z a node; the table is the plane z = 0, weight pulls down).

import type { SymmetricPattern, TwiceDifferentiableFunction } from "@roundwright/numerics"
import { type BlockPattern, layBlocks } from "./block-pattern.ts"
import { type EnergyOptions, gatherTerms, type Vector } from "./energy-terms.ts"
import type { Net } from "./net.ts"
import { contactEnergy, contactForce, contactOf, contactStiffness } from "./table.ts"
import type { Term } from "./terms.ts"

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
        ? Float64Array.from(net.nodes, (node) => contactOf(weight, node.areaMm2))
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
