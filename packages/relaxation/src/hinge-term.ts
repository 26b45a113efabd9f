// Resistance to folding. u1 runs along the fold line, u2 and u3 to either side of it. With D = det(u1, u2, u3)
// and Q = (u1 x u2) . (u3 x u1), the fold t has
//   sin t = scale D,   cos t = Q / areas,   2 tan(t / 2) = 2 sin t / (1 + cos t)
// as long as the fabric is not strained; energy = stiffness / 2 (2 tan(t / 2))^2. D is zero in every plane
// shape, strained or not, so that a flat piece has no bending energy. Because D is zero as well in a fold that is
// closed to the end, folds beyond a right angle cost folded (-cos t)^3 more, which has no such gap.
// Source for 2 tan(t / 2): E. Grinspun and others, "Discrete shells" (SCA 2003), in the form common since.

import type { Term } from "./terms.ts"

/** Below this cosine the denominator is continued by its tangent parabola: no division by zero. */
const leastCosine = -0.6

/** Cost of a closed fold, in units of the stiffness: about what the fold costs on its way there. */
const folded = 6

/**
 * @param scale sine of the fold per unit of the determinant
 * @param areas product of the areas (each twice a triangle) on both sides at ease
 */
export function hingeTerm(scale: number, areas: number, stiffness: number): Term {
  const gd = new Float64Array(9)
  const gq = new Float64Array(9)
  const gf = new Float64Array(9)
  const p = new Float64Array(3)
  /** Fills the gradients of D, Q and of F = 2 tan(t / 2); returns D and F. */
  const evaluate = (u: Float64Array): { d: number; f: number; c: number } => {
    cross(u, 3, u, 6, gd, 0)
    cross(u, 6, u, 0, gd, 3)
    cross(u, 0, u, 3, gd, 6)
    const d = u[0]! * gd[0]! + u[1]! * gd[1]! + u[2]! * gd[2]!
    const [ea, eb, ab, ee] = [dot(u, 0, 3), dot(u, 0, 6), dot(u, 3, 6), dot(u, 0, 0)]
    for (let k = 0; k < 3; k++) {
      const [e, a, b] = [u[k]!, u[3 + k]!, u[6 + k]!]
      gq[k] = (eb * a + ea * b - 2 * ab * e) / areas
      gq[3 + k] = (eb * e - ee * b) / areas
      gq[6 + k] = (ea * e - ee * a) / areas
    }
    const c = (ea * eb - ee * ab) / areas
    softening(c, p)
    for (let k = 0; k < 9; k++) gf[k] = scale * (p[0]! * gd[k]! + d * p[1]! * gq[k]!)
    return { d, f: scale * d * p[0]!, c }
  }
  return {
    vectors: 3,
    value: (u) => {
      const { f, c } = evaluate(u)
      return stiffness * ((f * f) / 2 + closing(c))
    },
    slope: (u, gradient) => {
      const { f, c } = evaluate(u)
      const pull = c < 0 ? -3 * folded * c * c : 0
      for (let k = 0; k < 9; k++) gradient[k] = stiffness * (f * gf[k]! + pull * gq[k]!)
      return stiffness * ((f * f) / 2 + closing(c))
    },
    curvature: (u, matrix, convex) => {
      const { d, f, c } = evaluate(u)
      const bend = c < 0 ? -6 * folded * c : 0
      for (let i = 0; i < 9; i++)
        for (let j = 0; j < 9; j++)
          matrix[9 * i + j] = stiffness * (gf[i]! * gf[j]! + bend * gq[i]! * gq[j]!)
      if (convex) return true
      if (c < 0) addCosine(matrix, u, (-3 * stiffness * folded * c * c) / areas)
      if (f === 0) return true
      const k = stiffness * f * scale
      for (let i = 0; i < 9; i++)
        for (let j = 0; j < 9; j++)
          matrix[9 * i + j]! +=
            k * (p[1]! * (gd[i]! * gq[j]! + gq[i]! * gd[j]!) + d * p[2]! * gq[i]! * gq[j]!)
      // d2 D / du_a du_b = -[u_c] for (a, b, c) cyclic, with [v] w = v x w.
      addTurn(matrix, 0, 3, u, 6, -k * p[0]!)
      addTurn(matrix, 0, 6, u, 3, k * p[0]!)
      addTurn(matrix, 3, 6, u, 0, -k * p[0]!)
      addCosine(matrix, u, (k * d * p[1]!) / areas)
      return true
    },
  }
}

function closing(c: number): number {
  return c < 0 ? -folded * c ** 3 : 0
}

/** p = 2 / (1 + c) with its first two derivatives, c the cosine. */
function softening(c: number, p: Float64Array): void {
  const at = Math.max(c, leastCosine)
  const [p0, p1, p2] = [2 / (1 + at), -2 / (1 + at) ** 2, 4 / (1 + at) ** 3]
  const off = c - at
  p[0] = p0 + off * p1 + (off * off * p2) / 2
  p[1] = p1 + off * p2
  p[2] = p2
}

/** Adds factor times the second derivatives of Q. */
function addCosine(matrix: Float64Array, u: Float64Array, factor: number): void {
  const [ea, eb, ab, ee] = [dot(u, 0, 3), dot(u, 0, 6), dot(u, 3, 6), dot(u, 0, 0)]
  for (let i = 0; i < 3; i++)
    for (let j = 0; j < 3; j++) {
      const [ei, ai, bi, ej, aj, bj] = [u[i]!, u[3 + i]!, u[6 + i]!, u[j]!, u[3 + j]!, u[6 + j]!]
      const one = i === j ? 1 : 0
      matrix[9 * i + j]! += factor * (ai * bj + bi * aj - 2 * ab * one)
      const withA = factor * (eb * one + bi * ej - 2 * ei * bj)
      const withB = factor * (ea * one + ai * ej - 2 * ei * aj)
      const across = factor * (ei * ej - ee * one)
      matrix[9 * i + 3 + j]! += withA
      matrix[9 * (3 + j) + i]! += withA
      matrix[9 * i + 6 + j]! += withB
      matrix[9 * (6 + j) + i]! += withB
      matrix[9 * (3 + i) + 6 + j]! += across
      matrix[9 * (6 + j) + 3 + i]! += across
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

/** Adds factor [v] at (row, column) and its transpose at (column, row) of a 9 x 9 matrix. */
function addTurn(
  matrix: Float64Array,
  row: number,
  column: number,
  v: Float64Array,
  at: number,
  factor: number,
): void {
  const [x, y, z] = [v[at]! * factor, v[at + 1]! * factor, v[at + 2]! * factor]
  const put = (i: number, j: number, value: number): void => {
    matrix[9 * (row + i) + column + j]! += value
    matrix[9 * (column + j) + row + i]! += value
  }
  put(0, 1, -z)
  put(0, 2, y)
  put(1, 0, z)
  put(1, 2, -x)
  put(2, 0, -y)
  put(2, 1, x)
}
