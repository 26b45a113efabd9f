// Conjugate gradients for a symmetric positive definite system, with a preconditioner. Needs only
// products with the matrix; tells when it meets a direction in which the matrix is not positive.
// Source: M. R. Hestenes, E. Stiefel, "Methods of conjugate gradients for solving linear systems",
// J. Res. Nat. Bur. Standards 49 (1952); preconditioned form as in Golub and Van Loan (2013), 11.5.

import { dot } from "./minimise.ts"
import { multiplySymmetric, type SparseSymmetric } from "./sparse.ts"

export interface ConjugateOptions {
  /** Size of the residual against that of b at which to stop. */
  readonly tolerance?: number
  readonly iterations?: number
  /** Writes an approximate solution of A out = r; the diagonal is used when left out. */
  readonly precondition?: (r: Float64Array, out: Float64Array) => void
}

export interface ConjugateSolution {
  readonly x: Float64Array
  readonly iterations: number
  /** Size of b - A x against b. */
  readonly residual: number
  readonly ended: "residual-small" | "iterations" | "not-positive"
}

/** Default tolerance: half the digits of a double beyond single precision, enough for an inner solver. */
const usualTolerance = 1e-10

export function solveByConjugateGradients(
  matrix: SparseSymmetric,
  b: Float64Array,
  options: ConjugateOptions = {},
): ConjugateSolution {
  const n = b.length
  const tolerance = options.tolerance ?? usualTolerance
  const limit = options.iterations ?? 10 * n
  const precondition = options.precondition ?? diagonalPreconditioner(matrix)
  const x = new Float64Array(n)
  const r = Float64Array.from(b)
  const z = new Float64Array(n)
  const p = new Float64Array(n)
  const product = new Float64Array(n)
  const size = Math.sqrt(dot(b, b))
  if (size === 0) return { x, iterations: 0, residual: 0, ended: "residual-small" }
  let rz = 0
  for (let iterations = 0; ; iterations++) {
    const residual = Math.sqrt(dot(r, r)) / size
    if (residual <= tolerance) return { x, iterations, residual, ended: "residual-small" }
    if (iterations >= limit) return { x, iterations, residual, ended: "iterations" }
    precondition(r, z)
    const next = dot(r, z)
    const beta = iterations === 0 ? 0 : next / rz
    rz = next
    for (let k = 0; k < n; k++) p[k] = z[k]! + beta * p[k]!
    multiplySymmetric(matrix, p, product)
    const curvature = dot(p, product)
    if (!(curvature > 0) || !(rz > 0)) return { x, iterations, residual, ended: "not-positive" }
    const step = rz / curvature
    for (let k = 0; k < n; k++) {
      x[k]! += step * p[k]!
      r[k]! -= step * product[k]!
    }
  }
}

function diagonalPreconditioner(
  matrix: SparseSymmetric,
): (r: Float64Array, out: Float64Array) => void {
  const { size, columnStart } = matrix.pattern
  const inverse = new Float64Array(size)
  for (let j = 0; j < size; j++) {
    const d = matrix.values[columnStart[j]!]!
    inverse[j] = d > 0 ? 1 / d : 1
  }
  return (r, out) => {
    for (let k = 0; k < size; k++) out[k] = r[k]! * inverse[k]!
  }
}
