// The energy of a net as a function of where its nodes are, with exact first and second derivatives, in
// the plane (x, y a node) or in space (x, y, z a node; the table is the plane z = 0, weight pulls down).
// Of a net that turns into itself one repeat can be taken alone: its energy is that of the whole, divided by the order.

import type { SymmetricPattern, TwiceDifferentiableFunction } from "@roundwright/numerics"
import { type BlockPattern, layBlocks } from "./block-pattern.ts"
import { type EnergyOptions, gatherGroups } from "./energy-terms.ts"
import type { Net } from "./net.ts"
import { PointTable } from "./point-table.ts"
import type { Repeat } from "./repeat.ts"
import { contactEnergy, contactForce, contactOf, contactStiffness } from "./table.ts"
import type { TermGroup } from "./term-group.ts"

export class NetEnergy implements TwiceDifferentiableFunction {
  readonly size: number
  private readonly dimensions: 2 | 3
  private readonly table: PointTable
  private readonly groups: readonly TermGroup[]
  private readonly loads: Float64Array
  private readonly contact: Float64Array | null
  /** The unknown that stays on the z axis; -1 for none. */
  private readonly axis: number
  /** Room for the second derivatives of one term by its points, 3 x 3 each. */
  private readonly ofTerm = new Float64Array(90)
  private blocks: BlockPattern | null = null

  constructor(net: Net, options: EnergyOptions, repeat: Repeat | null = null) {
    const d = options.dimensions
    this.dimensions = d
    this.table = new PointTable(net.nodes.length, repeat)
    this.groups = gatherGroups(net, options, this.table, repeat)
    this.axis = repeat?.axis ?? -1
    const nodes = repeat === null ? net.nodes : repeat.nodes.map((node) => net.nodes[node]!)
    this.size = d * nodes.length
    const { weight } = options.material
    const share = (k: number): number => (k === this.axis ? 1 / repeat!.order : 1)
    this.loads = Float64Array.from(nodes, ({ areaMm2 }, k) =>
      d === 3 ? weight * areaMm2 * share(k) : 0,
    )
    this.contact =
      d === 3 && options.table
        ? Float64Array.from(nodes, ({ areaMm2 }, k) => contactOf(weight, areaMm2) * share(k))
        : null
  }

  get pattern(): SymmetricPattern {
    return this.structure().pattern
  }

  value(x: Float64Array): number {
    const places = this.table.place(x, this.dimensions)
    let sum = 0
    for (const group of this.groups) sum += group.value(places)
    return sum + this.outside(x, null)
  }

  gradient(x: Float64Array, gradient: Float64Array): number {
    const { table, dimensions: d } = this
    const places = table.place(x, d)
    const pulls = table.clearPulls()
    let sum = 0
    for (const group of this.groups) sum += group.slope(places, pulls)
    table.gather(gradient, d)
    sum += this.outside(x, gradient)
    if (this.axis >= 0) gradient.fill(0, d * this.axis, d * this.axis + 2)
    return sum
  }

  hessian(x: Float64Array, values: Float64Array, convex: boolean): void {
    const { dimensions: d, ofTerm } = this
    const blocks = this.structure()
    const places = this.table.place(x, d)
    blocks.entries.fill(0)
    let pair = 0
    for (const group of this.groups) {
      const pairs = (group.arity * (group.arity + 1)) / 2
      for (let t = 0; t < group.count; t++, pair += pairs)
        if (group.curvature(t, places, ofTerm, convex)) addPairs(blocks, pair, pairs, ofTerm)
    }
    scatter(blocks, values, d)
    const start = blocks.pattern.columnStart
    if (this.contact !== null)
      for (let node = 0; node < this.contact.length; node++) {
        const z = x[3 * node + 2]!
        if (z < 0) values[start[3 * node + 2]!]! += contactStiffness(this.contact[node]!, z)
      }
    if (this.axis >= 0) holdOnAxis(blocks.pattern, values, d * this.axis)
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
    this.blocks ??= layBlocks(this.groups, this.table, this.dimensions)
    return this.blocks
  }
}

/** Adds the blocks of one term, of `pairs` pairs of points, to those of the nodes. */
function addPairs(blocks: BlockPattern, first: number, pairs: number, ofTerm: Float64Array): void {
  const { entries, targetStart, target, simple } = blocks
  for (let k = 0; k < pairs; k++) {
    const from = 9 * k
    const begin = targetStart[first + k]!
    const end = targetStart[first + k + 1]!
    for (let e = begin; e < end; e++) {
      const to = 9 * target[e]!
      if (simple[e] === 1) for (let i = 0; i < 9; i++) entries[to + i]! += ofTerm[from + i]!
      else if (simple[e] === 2) addTransposed(entries, to, ofTerm, from)
      else addTurned(blocks, e, ofTerm, from)
    }
  }
}

function addTransposed(entries: Float64Array, to: number, b: Float64Array, from: number): void {
  for (let i = 0; i < 3; i++)
    for (let j = 0; j < 3; j++) entries[to + 3 * i + j]! += b[from + 3 * j + i]!
}

/**
 * Adds weight x left' B right, with left and right the turns of the two nodes; transposed where the target lies the
 * other way round, both on the diagonal.
 */
function addTurned(blocks: BlockPattern, e: number, b: Float64Array, from: number): void {
  const { entries, target, weight, cosines, sines, lies } = blocks
  const w = weight[e]!
  const [ca, sa] = [cosines[2 * e]!, sines[2 * e]!]
  const [cb, sb] = [cosines[2 * e + 1]!, sines[2 * e + 1]!]
  const to = 9 * target[e]!
  const lie = lies[e]!
  for (let j = 0; j < 3; j++) {
    // Column j of B right, then of left' B right.
    const x = columnEntry(b, from, j, cb, sb)
    const y = columnEntry(b, from + 3, j, cb, sb)
    const tx = w * (ca * x + sa * y)
    const ty = w * (ca * y - sa * x)
    const tz = w * columnEntry(b, from + 6, j, cb, sb)
    if (lie !== 1) {
      entries[to + j]! += tx
      entries[to + 3 + j]! += ty
      entries[to + 6 + j]! += tz
    }
    if (lie !== 0) {
      entries[to + 3 * j]! += tx
      entries[to + 3 * j + 1]! += ty
      entries[to + 3 * j + 2]! += tz
    }
  }
}

function columnEntry(b: Float64Array, row: number, j: number, c: number, s: number): number {
  if (j === 0) return c * b[row]! + s * b[row + 1]!
  if (j === 1) return c * b[row + 1]! - s * b[row]!
  return b[row + 2]!
}

/** Places of the entries in use within a block of 3 x 3, by the number of dimensions. */
const used = { 2: [0, 1, 3, 4], 3: [0, 1, 2, 3, 4, 5, 6, 7, 8] } as const

function scatter(blocks: BlockPattern, values: Float64Array, d: 2 | 3): void {
  const { entries, slots } = blocks
  const places = used[d]
  const perBlock = places.length
  values.fill(0)
  for (let from = 0, at = 0; from < entries.length; from += 9, at += perBlock)
    for (let e = 0; e < perBlock; e++) {
      const slot = slots[at + e]!
      if (slot >= 0) values[slot] = entries[from + places[e]!]!
    }
}

/** Unknowns `first` and `first` + 1 (x and y) are not free: 1 on the diagonal, nothing beside it. */
function holdOnAxis(pattern: SymmetricPattern, values: Float64Array, first: number): void {
  const { size, columnStart, row } = pattern
  const held = (k: number): boolean => k === first || k === first + 1
  for (let column = 0; column < size; column++)
    for (let p = columnStart[column]!; p < columnStart[column + 1]!; p++)
      if (held(column) || held(row[p]!)) values[p] = column === row[p] ? 1 : 0
}
