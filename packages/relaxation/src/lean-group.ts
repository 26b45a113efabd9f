// What keeps posts from leaning: energy = stiffness / 2 (|top - left| - |top - right| - rest)^2.

import { blocksFromVectors, type TermGroup } from "./term-group.ts"

export interface LeanTerm {
  /** Top, left, right. */
  readonly points: readonly [number, number, number]
  readonly restMm: number
  readonly stiffness: number
}

export class LeanGroup implements TermGroup {
  readonly arity = 3
  readonly count: number
  readonly points: Int32Array
  private readonly rest: Float64Array
  private readonly stiffness: Float64Array
  /** The vectors from left and from right to the top. */
  private readonly u = new Float64Array(6)
  private readonly h = new Float64Array(36)
  private left = 1
  private right = 1

  constructor(terms: readonly LeanTerm[]) {
    this.count = terms.length
    this.points = Int32Array.from(terms.flatMap(({ points }) => points))
    this.rest = Float64Array.from(terms, ({ restMm }) => restMm)
    this.stiffness = Float64Array.from(terms, ({ stiffness }) => stiffness)
  }

  value(p: Float64Array): number {
    let sum = 0
    for (let t = 0; t < this.count; t++) sum += (this.stiffness[t]! * this.measure(t, p) ** 2) / 2
    return sum
  }

  slope(p: Float64Array, pull: Float64Array): number {
    const { u, points } = this
    let sum = 0
    for (let t = 0; t < this.count; t++) {
      const off = this.measure(t, p)
      const force = this.stiffness[t]! * off
      sum += (force * off) / 2
      const [top, left, right] = [
        3 * points[3 * t]!,
        3 * points[3 * t + 1]!,
        3 * points[3 * t + 2]!,
      ]
      for (let k = 0; k < 3; k++) {
        const byLeft = (force * u[k]!) / this.left
        const byRight = (force * u[3 + k]!) / this.right
        pull[left + k]! -= byLeft
        pull[right + k]! += byRight
        pull[top + k]! += byLeft - byRight
      }
    }
    return sum
  }

  curvature(t: number, p: Float64Array, blocks: Float64Array, convex: boolean): boolean {
    const { u, h } = this
    const k = this.stiffness[t]!
    const force = k * this.measure(t, p)
    const [a, b] = [this.left, this.right]
    let [acrossLeft, acrossRight] = [force / a, -force / b]
    if (convex) {
      acrossLeft = Math.max(0, acrossLeft)
      acrossRight = Math.max(0, acrossRight)
    }
    for (let i = 0; i < 3; i++)
      for (let j = 0; j < 3; j++) {
        const one = i === j ? 1 : 0
        h[6 * i + j] = ((k - acrossLeft) * u[i]! * u[j]!) / (a * a) + one * acrossLeft
        h[6 * (3 + i) + 3 + j] =
          ((k - acrossRight) * u[3 + i]! * u[3 + j]!) / (b * b) + one * acrossRight
        const cross = (-k * u[i]! * u[3 + j]!) / (a * b)
        h[6 * i + 3 + j] = cross
        h[6 * (3 + j) + i] = cross
      }
    blocksFromVectors(h, 2, blocks)
    return true
  }

  /** Fills both vectors and their lengths; returns how far the difference is from rest. */
  private measure(t: number, p: Float64Array): number {
    const { u, points } = this
    const [top, left, right] = [3 * points[3 * t]!, 3 * points[3 * t + 1]!, 3 * points[3 * t + 2]!]
    for (let k = 0; k < 3; k++) {
      u[k] = p[top + k]! - p[left + k]!
      u[3 + k] = p[top + k]! - p[right + k]!
    }
    this.left = Math.sqrt(u[0]! ** 2 + u[1]! ** 2 + u[2]! ** 2) || Number.MIN_VALUE
    this.right = Math.sqrt(u[3]! ** 2 + u[4]! ** 2 + u[5]! ** 2) || Number.MIN_VALUE
    return this.left - this.right - this.rest[t]!
  }
}
