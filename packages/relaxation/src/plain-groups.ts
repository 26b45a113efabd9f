// Terms of one point: the bending of chains and the hold on the centre (stiffness / 2 |p|^2), and the pull of pins
// (-force x distance from the middle, in the plane).

import type { TermGroup } from "./term-group.ts"

export interface PointTerm {
  readonly point: number
  /** N/mm for a hold, N for a pull. */
  readonly strength: number
}

abstract class PointGroup implements TermGroup {
  readonly arity = 1
  readonly count: number
  readonly points: Int32Array
  protected readonly strength: Float64Array

  constructor(terms: readonly PointTerm[]) {
    this.count = terms.length
    this.points = Int32Array.from(terms, ({ point }) => point)
    this.strength = Float64Array.from(terms, ({ strength }) => strength)
  }

  abstract value(p: Float64Array): number
  abstract slope(p: Float64Array, pull: Float64Array): number
  abstract curvature(t: number, p: Float64Array, blocks: Float64Array, convex: boolean): boolean
}

export class HoldGroup extends PointGroup {
  value(p: Float64Array): number {
    let sum = 0
    for (let t = 0; t < this.count; t++) {
      const at = 3 * this.points[t]!
      sum += (this.strength[t]! * (p[at]! ** 2 + p[at + 1]! ** 2 + p[at + 2]! ** 2)) / 2
    }
    return sum
  }

  slope(p: Float64Array, pull: Float64Array): number {
    for (let t = 0; t < this.count; t++) {
      const at = 3 * this.points[t]!
      for (let k = 0; k < 3; k++) pull[at + k]! += this.strength[t]! * p[at + k]!
    }
    return this.value(p)
  }

  curvature(t: number, _: Float64Array, blocks: Float64Array): boolean {
    blocks.fill(0, 0, 9)
    for (let k = 0; k < 9; k += 4) blocks[k] = this.strength[t]!
    return true
  }
}

export class PullGroup extends PointGroup {
  value(p: Float64Array): number {
    let sum = 0
    for (let t = 0; t < this.count; t++) sum -= this.strength[t]! * this.distance(t, p)
    return sum
  }

  slope(p: Float64Array, pull: Float64Array): number {
    for (let t = 0; t < this.count; t++) {
      const at = 3 * this.points[t]!
      const k = this.strength[t]! / this.distance(t, p)
      pull[at]! -= k * p[at]!
      pull[at + 1]! -= k * p[at + 1]!
    }
    return this.value(p)
  }

  curvature(t: number, p: Float64Array, blocks: Float64Array, convex: boolean): boolean {
    if (convex) return false
    const at = 3 * this.points[t]!
    const r = this.distance(t, p)
    const k = -this.strength[t]! / r
    const [x, y] = [p[at]! / r, p[at + 1]! / r]
    blocks.fill(0, 0, 9)
    blocks[0] = k * (1 - x * x)
    blocks[1] = -k * x * y
    blocks[3] = -k * x * y
    blocks[4] = k * (1 - y * y)
    return true
  }

  private distance(t: number, p: Float64Array): number {
    const at = 3 * this.points[t]!
    return Math.sqrt(p[at]! ** 2 + p[at + 1]! ** 2) || Number.MIN_VALUE
  }
}
