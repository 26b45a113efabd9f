// What keeps posts from leaning and panels from being sheared: a difference of two lengths is held,
//   energy = stiffness / 2 (|u| - |v| - rest)^2.
// For a post u and v run to its top from both sides of its base; for the panel between two posts they are its diagonals.

import type { TermGroup } from "./term-group.ts"

export interface LeanTerm {
  /** Top, left, right. */
  readonly points: readonly [number, number, number]
  readonly restMm: number
  readonly stiffness: number
}

export interface PanelTerm {
  /** Top, the base of the next post, the top of the next post, base. */
  readonly points: readonly [number, number, number, number]
  readonly restMm: number
  readonly stiffness: number
}

abstract class LengthDifferenceGroup implements TermGroup {
  readonly count: number
  readonly points: Int32Array
  private readonly rest: Float64Array
  private readonly stiffness: Float64Array
  /** u and v. */
  private readonly u = new Float64Array(6)
  /** Second derivatives by u and v, 6 x 6. */
  private readonly h = new Float64Array(36)
  private first = 1
  private second = 1

  /**
   * @param signs with which each point enters u and v: +1, -1 or 0
   */
  constructor(
    readonly arity: 3 | 4,
    terms: readonly (LeanTerm | PanelTerm)[],
    private readonly signs: readonly (readonly [number, number])[],
  ) {
    this.count = terms.length
    this.points = Int32Array.from(terms.flatMap(({ points }) => points as readonly number[]))
    this.rest = Float64Array.from(terms, ({ restMm }) => restMm)
    this.stiffness = Float64Array.from(terms, ({ stiffness }) => stiffness)
  }

  value(p: Float64Array): number {
    let sum = 0
    for (let t = 0; t < this.count; t++) sum += (this.stiffness[t]! * this.measure(t, p) ** 2) / 2
    return sum
  }

  slope(p: Float64Array, pull: Float64Array): number {
    const { u, points, arity, signs } = this
    let sum = 0
    for (let t = 0; t < this.count; t++) {
      const off = this.measure(t, p)
      const force = this.stiffness[t]! * off
      sum += (force * off) / 2
      for (let i = 0; i < arity; i++) {
        const [ofU, ofV] = signs[i]!
        const at = 3 * points[arity * t + i]!
        const [alongU, alongV] = [(force * ofU) / this.first, (force * ofV) / this.second]
        for (let k = 0; k < 3; k++) pull[at + k]! += alongU * u[k]! - alongV * u[3 + k]!
      }
    }
    return sum
  }

  curvature(t: number, p: Float64Array, blocks: Float64Array, convex: boolean): boolean {
    const k = this.stiffness[t]!
    this.fillSecond(k, k * this.measure(t, p), convex)
    const { h, arity, signs } = this
    let at = 0
    for (let i = 0; i < arity; i++)
      for (let j = 0; j <= i; j++, at += 9) {
        const [[iu, iv], [ju, jv]] = [signs[i]!, signs[j]!]
        const [uu, uv, vu, vv] = [iu * ju, iu * jv, iv * ju, iv * jv]
        for (let r = 0; r < 3; r++)
          for (let c = 0; c < 3; c++)
            blocks[at + 3 * r + c] =
              uu * h[6 * r + c]! +
              uv * h[6 * r + 3 + c]! +
              vu * h[6 * (3 + r) + c]! +
              vv * h[6 * (3 + r) + 3 + c]!
      }
    return true
  }

  private fillSecond(k: number, force: number, convex: boolean): void {
    const { u, h } = this
    const [a, b] = [this.first, this.second]
    let [acrossU, acrossV] = [force / a, -force / b]
    if (convex) {
      acrossU = Math.max(0, acrossU)
      acrossV = Math.max(0, acrossV)
    }
    for (let i = 0; i < 3; i++)
      for (let j = 0; j < 3; j++) {
        const one = i === j ? 1 : 0
        h[6 * i + j] = ((k - acrossU) * u[i]! * u[j]!) / (a * a) + one * acrossU
        h[6 * (3 + i) + 3 + j] = ((k - acrossV) * u[3 + i]! * u[3 + j]!) / (b * b) + one * acrossV
        const cross = (-k * u[i]! * u[3 + j]!) / (a * b)
        h[6 * i + 3 + j] = cross
        h[6 * (3 + j) + i] = cross
      }
  }

  /** Fills u and v and their lengths; returns how far the difference is from rest. */
  private measure(t: number, p: Float64Array): number {
    const { u, points, arity, signs } = this
    u.fill(0)
    for (let i = 0; i < arity; i++) {
      const [ofU, ofV] = signs[i]!
      const at = 3 * points[arity * t + i]!
      for (let k = 0; k < 3; k++) {
        u[k]! += ofU * p[at + k]!
        u[3 + k]! += ofV * p[at + k]!
      }
    }
    this.first = Math.sqrt(u[0]! ** 2 + u[1]! ** 2 + u[2]! ** 2) || Number.MIN_VALUE
    this.second = Math.sqrt(u[3]! ** 2 + u[4]! ** 2 + u[5]! ** 2) || Number.MIN_VALUE
    return this.first - this.second - this.rest[t]!
  }
}

/** u from left to the top, v from right to the top. */
export class LeanGroup extends LengthDifferenceGroup {
  constructor(terms: readonly LeanTerm[]) {
    super(3, terms, [
      [1, 1],
      [-1, 0],
      [0, -1],
    ])
  }
}

/** u from the next base to the top, v from the base to the next top. */
export class PanelGroup extends LengthDifferenceGroup {
  constructor(terms: readonly PanelTerm[]) {
    super(4, terms, [
      [1, 0],
      [-1, 0],
      [0, 1],
      [0, -1],
    ])
  }
}
