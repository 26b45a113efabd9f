// Resistance to folding. Of the points of a hinge u1 runs along the fold line, u2 and u3 to either side of it, all from
// the first point. With D = det(u1, u2, u3) and Q = (u1 x u2) . (u3 x u1), the fold t has
//   sin t = scale D,   cos t = Q / areas,   2 tan(t / 2) = 2 sin t / (1 + cos t)
// as long as the fabric is not strained; energy = stiffness / 2 (2 tan(t / 2))^2. D is zero in every plane
// shape, strained or not, so that a flat piece has no bending energy. Because D is zero as well in a fold that is
// closed to the end, folds beyond a right angle cost folded (-cos t)^3 more, which has no such gap.
// Source for 2 tan(t / 2): E. Grinspun and others, "Discrete shells" (SCA 2003), in the form common since.

import { blocksFromVectors, type TermGroup } from "./term-group.ts"

/** Below this cosine the denominator is continued by its tangent parabola: no division by zero. */
const leastCosine = -0.6

/** Cost of a closed fold, in units of the stiffness: about what the fold costs on its way there. */
const folded = 6

export interface HingeTerm {
  readonly points: readonly [number, number, number, number]
  /** Sine of the fold per unit of the determinant. */
  readonly scale: number
  /** Product of the areas (each twice a triangle) on both sides at ease, mm4. */
  readonly areas: number
  readonly stiffness: number
}

export class HingeGroup implements TermGroup {
  readonly arity = 4
  readonly count: number
  readonly points: Int32Array
  private readonly scale: Float64Array
  private readonly areas: Float64Array
  private readonly stiffness: Float64Array
  private readonly u = new Float64Array(9)
  /** Gradients of D, of Q / areas, and of F = 2 tan(t / 2). */
  private readonly gd = new Float64Array(9)
  private readonly gq = new Float64Array(9)
  private readonly gf = new Float64Array(9)
  /** 2 / (1 + c) with its first two derivatives. */
  private readonly p = new Float64Array(3)
  private readonly h = new Float64Array(81)
  private d = 0
  private c = 0
  private f = 0

  constructor(terms: readonly HingeTerm[]) {
    this.count = terms.length
    this.points = Int32Array.from(terms.flatMap(({ points }) => points))
    this.scale = Float64Array.from(terms, ({ scale }) => scale)
    this.areas = Float64Array.from(terms, ({ areas }) => areas)
    this.stiffness = Float64Array.from(terms, ({ stiffness }) => stiffness)
  }

  value(places: Float64Array): number {
    let sum = 0
    for (let t = 0; t < this.count; t++) {
      this.measure(t, places)
      sum += this.stiffness[t]! * ((this.f * this.f) / 2 + closing(this.c))
    }
    return sum
  }

  slope(places: Float64Array, pull: Float64Array): number {
    const { gq, gf, points } = this
    let sum = 0
    for (let t = 0; t < this.count; t++) {
      this.measure(t, places)
      this.differentiate(t)
      const { f, c } = this
      const k = this.stiffness[t]!
      sum += k * ((f * f) / 2 + closing(c))
      const along = k * f
      const closed = c < 0 ? -3 * k * folded * c * c : 0
      const first = 3 * points[4 * t]!
      for (let i = 0; i < 3; i++) {
        let own = 0
        for (let j = 0; j < 3; j++) {
          const force = along * gf[3 * j + i]! + closed * gq[3 * j + i]!
          pull[3 * points[4 * t + 1 + j]! + i]! += force
          own += force
        }
        pull[first + i]! -= own
      }
    }
    return sum
  }

  curvature(t: number, places: Float64Array, blocks: Float64Array, convex: boolean): boolean {
    this.measure(t, places)
    this.differentiate(t)
    const { gd, gq, gf, h, p, d, c, f, u } = this
    const k = this.stiffness[t]!
    const areas = this.areas[t]!
    // 2nd derivatives = k gf gf' + square gq gq' + mixed (gd gq' + gq gd') + those of D and Q themselves.
    let square = c < 0 ? -6 * k * folded * c : 0
    let mixed = 0
    const bent = convex ? 0 : k * f * this.scale[t]!
    if (bent !== 0) {
      square += bent * d * p[2]!
      mixed = bent * p[1]!
    }
    for (let i = 0; i < 9; i++) {
      const [fi, qi, di] = [k * gf[i]!, gq[i]!, mixed * gd[i]!]
      const withQ = square * qi + di
      const withD = mixed * qi
      for (let j = 0; j <= i; j++) h[9 * i + j] = fi * gf[j]! + withQ * gq[j]! + withD * gd[j]!
    }
    if (!convex) {
      const ofCosine = (c < 0 ? -3 * k * folded * c * c : 0) + bent * d * p[1]!
      if (ofCosine !== 0) addCosine(h, u, ofCosine / areas)
      if (bent !== 0) {
        // d2 D / du_a du_b = -[u_c] for (a, b, c) cyclic, with [v] w = v x w; written below the diagonal.
        addTurn(h, 3, 0, u, 6, bent * p[0]!)
        addTurn(h, 6, 0, u, 3, -bent * p[0]!)
        addTurn(h, 6, 3, u, 0, bent * p[0]!)
      }
    }
    for (let i = 0; i < 9; i++) for (let j = i + 1; j < 9; j++) h[9 * i + j] = h[9 * j + i]!
    blocksFromVectors(h, 3, blocks)
    return true
  }

  /** Fills u, D, the cosine and F. */
  private measure(t: number, places: Float64Array): void {
    const { u, points, p, gd } = this
    const first = 3 * points[4 * t]!
    for (let j = 0; j < 3; j++) {
      const at = 3 * points[4 * t + 1 + j]!
      for (let i = 0; i < 3; i++) u[3 * j + i] = places[at + i]! - places[first + i]!
    }
    cross(u, 3, u, 6, gd, 0)
    const [ea, eb, ab, ee] = [dot(u, 0, 3), dot(u, 0, 6), dot(u, 3, 6), dot(u, 0, 0)]
    this.d = u[0]! * gd[0]! + u[1]! * gd[1]! + u[2]! * gd[2]!
    this.c = (ea * eb - ee * ab) / this.areas[t]!
    const at = Math.max(this.c, leastCosine)
    const p0 = 2 / (1 + at)
    const p1 = -p0 / (1 + at)
    const p2 = (-2 * p1) / (1 + at)
    const off = this.c - at
    p[0] = p0 + off * p1 + (off * off * p2) / 2
    p[1] = p1 + off * p2
    p[2] = p2
    this.f = this.scale[t]! * this.d * p[0]!
  }

  /** Fills the gradients of D, Q and F, after `measure`. */
  private differentiate(t: number): void {
    const { u, gd, gq, gf, p, d } = this
    const areas = this.areas[t]!
    const scale = this.scale[t]!
    cross(u, 6, u, 0, gd, 3)
    cross(u, 0, u, 3, gd, 6)
    const [ea, eb, ab, ee] = [dot(u, 0, 3), dot(u, 0, 6), dot(u, 3, 6), dot(u, 0, 0)]
    for (let k = 0; k < 3; k++) {
      const [e, a, b] = [u[k]!, u[3 + k]!, u[6 + k]!]
      gq[k] = (eb * a + ea * b - 2 * ab * e) / areas
      gq[3 + k] = (eb * e - ee * b) / areas
      gq[6 + k] = (ea * e - ee * a) / areas
    }
    const [ofD, ofQ] = [scale * p[0]!, scale * d * p[1]!]
    for (let k = 0; k < 9; k++) gf[k] = ofD * gd[k]! + ofQ * gq[k]!
  }
}

function closing(c: number): number {
  return c < 0 ? -folded * c * c * c : 0
}

/** Adds factor times the second derivatives of Q, below the diagonal and on it. */
function addCosine(h: Float64Array, u: Float64Array, factor: number): void {
  const [ea, eb, ab, ee] = [dot(u, 0, 3), dot(u, 0, 6), dot(u, 3, 6), dot(u, 0, 0)]
  for (let i = 0; i < 3; i++)
    for (let j = 0; j < 3; j++) {
      const [ei, ai, bi, ej, aj, bj] = [u[i]!, u[3 + i]!, u[6 + i]!, u[j]!, u[3 + j]!, u[6 + j]!]
      const one = i === j ? 1 : 0
      if (j <= i) h[9 * i + j]! += factor * (ai * bj + bi * aj - 2 * ab * one)
      h[9 * (3 + j) + i]! += factor * (eb * one + bi * ej - 2 * ei * bj)
      h[9 * (6 + j) + i]! += factor * (ea * one + ai * ej - 2 * ei * aj)
      h[9 * (6 + j) + 3 + i]! += factor * (ei * ej - ee * one)
    }
}

function dot(u: Float64Array, p: number, q: number): number {
  return u[p]! * u[q]! + u[p + 1]! * u[q + 1]! + u[p + 2]! * u[q + 2]!
}

function cross(
  a: Float64Array,
  p: number,
  b: Float64Array,
  q: number,
  out: Float64Array,
  at: number,
): void {
  out[at] = a[p + 1]! * b[q + 2]! - a[p + 2]! * b[q + 1]!
  out[at + 1] = a[p + 2]! * b[q]! - a[p]! * b[q + 2]!
  out[at + 2] = a[p]! * b[q + 1]! - a[p + 1]! * b[q]!
}

/** Adds factor [v] at (row, column) of a 9 x 9 matrix. */
function addTurn(
  h: Float64Array,
  row: number,
  column: number,
  v: Float64Array,
  at: number,
  factor: number,
): void {
  const [x, y, z] = [v[at]! * factor, v[at + 1]! * factor, v[at + 2]! * factor]
  h[9 * row + column + 1]! -= z
  h[9 * row + column + 2]! += y
  h[9 * (row + 1) + column]! += z
  h[9 * (row + 1) + column + 2]! -= x
  h[9 * (row + 2) + column]! -= y
  h[9 * (row + 2) + column + 1]! += x
}
