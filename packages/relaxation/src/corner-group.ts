// Stitches do not pass through each other: the corner between two vectors must not close. With c the share of its
// area at ease that is left, the energy is zero above `open` and rises without bound as c goes to zero:
//   E = -stiffness (c - open)^2 ln(c / open).
// In the plane c = (u1 x u2) / area has a sign, so that a corner cannot turn over; in space c = |u1 x u2|^2 / area^2,
// and `open` is squared likewise.
// Form of the barrier: M. Li and others, "Incremental potential contact", ACM Trans. Graph. 39 (2020).

import { blocksFromVectors, type TermGroup } from "./term-group.ts"

export interface CornerTerm {
  /** The corner, then the points it lies between, counterclockwise. */
  readonly points: readonly [number, number, number]
  readonly areaMm2: number
  readonly stiffness: number
}

abstract class CornerGroup implements TermGroup {
  readonly arity = 3
  readonly count: number
  readonly points: Int32Array
  protected readonly area: Float64Array
  private readonly stiffness: Float64Array
  protected readonly u = new Float64Array(6)
  protected readonly g = new Float64Array(6)
  protected readonly h = new Float64Array(36)

  constructor(
    terms: readonly CornerTerm[],
    private readonly open: number,
  ) {
    this.count = terms.length
    this.points = Int32Array.from(terms.flatMap(({ points }) => points))
    this.area = Float64Array.from(terms, ({ areaMm2 }) => areaMm2)
    this.stiffness = Float64Array.from(terms, ({ stiffness }) => stiffness)
  }

  value(p: Float64Array): number {
    let sum = 0
    for (let t = 0; t < this.count; t++) {
      const c = this.share(t, p)
      if (c < this.open) sum += this.stiffness[t]! * this.barrier(c)
    }
    return sum
  }

  slope(p: Float64Array, pull: Float64Array): number {
    const { points, g } = this
    let sum = 0
    for (let t = 0; t < this.count; t++) {
      const c = this.share(t, p)
      if (c >= this.open) continue
      sum += this.stiffness[t]! * this.barrier(c)
      this.differentiate(t)
      const force = this.stiffness[t]! * this.barrierSlope(c)
      const [at, a, b] = [3 * points[3 * t]!, 3 * points[3 * t + 1]!, 3 * points[3 * t + 2]!]
      for (let k = 0; k < 3; k++) {
        pull[a + k]! += force * g[k]!
        pull[b + k]! += force * g[3 + k]!
        pull[at + k]! -= force * (g[k]! + g[3 + k]!)
      }
    }
    return sum
  }

  curvature(t: number, p: Float64Array, blocks: Float64Array, convex: boolean): boolean {
    const c = this.share(t, p)
    if (c >= this.open) return false
    const { g, h, open } = this
    this.differentiate(t)
    const off = c - open
    const k = -this.stiffness[t]! * (2 * Math.log(c / open) + (4 * off) / c - (off * off) / (c * c))
    for (let i = 0; i < 6; i++) for (let j = 0; j < 6; j++) h[6 * i + j] = k * g[i]! * g[j]!
    if (!convex) this.addSecond(t, this.stiffness[t]! * this.barrierSlope(c))
    blocksFromVectors(h, 2, blocks)
    return true
  }

  /** The share left, from u1 and u2. */
  protected abstract shareOf(t: number): number
  /** Fills g with the gradient of the share. */
  protected abstract differentiate(t: number): void
  /** Adds force times the second derivatives of the share to h. */
  protected abstract addSecond(t: number, force: number): void

  private share(t: number, p: Float64Array): number {
    const { u, points } = this
    const [at, a, b] = [3 * points[3 * t]!, 3 * points[3 * t + 1]!, 3 * points[3 * t + 2]!]
    for (let k = 0; k < 3; k++) {
      u[k] = p[a + k]! - p[at + k]!
      u[3 + k] = p[b + k]! - p[at + k]!
    }
    return this.shareOf(t)
  }

  private barrier(c: number): number {
    if (!(c > 0)) return Number.POSITIVE_INFINITY
    return -((c - this.open) ** 2) * Math.log(c / this.open)
  }

  private barrierSlope(c: number): number {
    const off = c - this.open
    return -(2 * off * Math.log(c / this.open) + (off * off) / c)
  }
}

export class PlaneCornerGroup extends CornerGroup {
  protected shareOf(t: number): number {
    const { u } = this
    return (u[0]! * u[4]! - u[1]! * u[3]!) / this.area[t]!
  }

  protected differentiate(t: number): void {
    const { u, g } = this
    const area = this.area[t]!
    g[0] = u[4]! / area
    g[1] = -u[3]! / area
    g[3] = -u[1]! / area
    g[4] = u[0]! / area
  }

  protected addSecond(t: number, force: number): void {
    const k = force / this.area[t]!
    this.h[4]! += k
    this.h[24]! += k
    this.h[9]! -= k
    this.h[19]! -= k
  }
}

export class SpaceCornerGroup extends CornerGroup {
  private aa = 0
  private bb = 0
  private ab = 0

  protected shareOf(t: number): number {
    const { u } = this
    this.aa = u[0]! ** 2 + u[1]! ** 2 + u[2]! ** 2
    this.bb = u[3]! ** 2 + u[4]! ** 2 + u[5]! ** 2
    this.ab = u[0]! * u[3]! + u[1]! * u[4]! + u[2]! * u[5]!
    return (this.aa * this.bb - this.ab * this.ab) / this.area[t]! ** 2
  }

  protected differentiate(t: number): void {
    const { u, g, aa, bb, ab } = this
    const twice = 2 / this.area[t]! ** 2
    for (let k = 0; k < 3; k++) {
      g[k] = twice * (bb * u[k]! - ab * u[3 + k]!)
      g[3 + k] = twice * (aa * u[3 + k]! - ab * u[k]!)
    }
  }

  protected addSecond(t: number, force: number): void {
    const { u, h, aa, bb, ab } = this
    const k = (2 * force) / this.area[t]! ** 2
    for (let i = 0; i < 3; i++)
      for (let j = 0; j < 3; j++) {
        const one = i === j ? 1 : 0
        const [ai, bi, aj, bj] = [u[i]!, u[3 + i]!, u[j]!, u[3 + j]!]
        h[6 * i + j]! += k * (bb * one - bi * bj)
        h[6 * (3 + i) + 3 + j]! += k * (aa * one - ai * aj)
        const mixed = k * (2 * ai * bj - bi * aj - ab * one)
        h[6 * i + 3 + j]! += mixed
        h[6 * (3 + j) + i]! += mixed
      }
  }
}
