// Springs along tops and posts, and chains as strings: energy = factor x E(strain), strain = length / rest - 1, with E
// the law of strain-law.ts.

import { type StrainLaw, strainEnergy } from "./strain-law.ts"
import type { TermGroup } from "./term-group.ts"

const law = new Float64Array(3)

export interface SpringTerm {
  readonly points: readonly [number, number]
  readonly restMm: number
  /** Stiffness times the area the spring stands for, N mm. */
  readonly factor: number
  readonly law: StrainLaw
}

export class SpringGroup implements TermGroup {
  readonly arity = 2
  readonly count: number
  readonly points: Int32Array
  private readonly rest: Float64Array
  private readonly factor: Float64Array
  private readonly laws: readonly StrainLaw[]

  constructor(terms: readonly SpringTerm[]) {
    this.count = terms.length
    this.points = Int32Array.from(terms.flatMap(({ points }) => points))
    this.rest = Float64Array.from(terms, ({ restMm }) => restMm)
    this.factor = Float64Array.from(terms, ({ factor }) => factor)
    this.laws = terms.map((term) => term.law)
  }

  value(p: Float64Array): number {
    let sum = 0
    for (let t = 0; t < this.count; t++) {
      this.measure(t, p)
      sum += this.factor[t]! * law[0]!
    }
    return sum
  }

  slope(p: Float64Array, pull: Float64Array): number {
    const { points } = this
    let sum = 0
    for (let t = 0; t < this.count; t++) {
      const length = this.measure(t, p)
      sum += this.factor[t]! * law[0]!
      if (length === 0) continue
      const force = (this.factor[t]! * law[1]!) / (this.rest[t]! * length)
      const [a, b] = [3 * points[2 * t]!, 3 * points[2 * t + 1]!]
      for (let k = 0; k < 3; k++) {
        const along = force * (p[a + k]! - p[b + k]!)
        pull[a + k]! += along
        pull[b + k]! -= along
      }
    }
    return sum
  }

  curvature(t: number, p: Float64Array, blocks: Float64Array, convex: boolean): boolean {
    const length = this.measure(t, p) || Number.MIN_VALUE
    const rest = this.rest[t]!
    const factor = this.factor[t]!
    let across = (factor * law[1]!) / (rest * length)
    if (convex && across < 0) across = 0
    const excess = ((factor * law[2]!) / (rest * rest) - across) / (length * length)
    const [a, b] = [3 * this.points[2 * t]!, 3 * this.points[2 * t + 1]!]
    for (let i = 0; i < 3; i++) {
      const ui = excess * (p[a + i]! - p[b + i]!)
      for (let j = 0; j < 3; j++) {
        const entry = ui * (p[a + j]! - p[b + j]!) + (i === j ? across : 0)
        blocks[3 * i + j] = entry
        blocks[9 + 3 * i + j] = -entry
        blocks[18 + 3 * i + j] = entry
      }
    }
    return true
  }

  /** Length of spring t; fills `law` with the energy and its derivatives by strain. */
  private measure(t: number, p: Float64Array): number {
    const [a, b] = [3 * this.points[2 * t]!, 3 * this.points[2 * t + 1]!]
    const [x, y, z] = [p[a]! - p[b]!, p[a + 1]! - p[b + 1]!, p[a + 2]! - p[b + 2]!]
    const length = Math.sqrt(x * x + y * y + z * z)
    strainEnergy(this.laws[t]!, length / this.rest[t]! - 1, law)
    return length
  }
}
