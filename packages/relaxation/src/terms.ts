// The terms of the energy. Each depends on a few difference vectors u1, u2, u3 (weighted sums of nodes) and
// gives its value, its gradient and its second derivatives by them; how the vectors depend on the nodes
// is the business of the assembly. Written for three dimensions; in the plane the third is zero.

import { type StrainLaw, strainEnergy } from "./strain-law.ts"

export interface Term {
  /** Number of difference vectors, 1 to 3. */
  readonly vectors: number
  /** u holds the vectors one after the other. */
  value(u: Float64Array): number
  /** Also writes the gradient (3 per vector). */
  slope(u: Float64Array, gradient: Float64Array): number
  /**
   * Writes the second derivatives, row by row (3 vectors x 3 components square). With `convex`, a positive
   * semidefinite part of them. Returns false, and writes nothing, where they are all zero.
   */
  curvature(u: Float64Array, matrix: Float64Array, convex: boolean): boolean
}

const law = new Float64Array(3)

/** Energy = factor x E(strain), strain = |u| / rest - 1. */
export function springTerm(rest: number, factor: number, strainLaw: StrainLaw): Term {
  const evaluate = (u: Float64Array): number => {
    const length = Math.hypot(u[0]!, u[1]!, u[2]!)
    strainEnergy(strainLaw, length / rest - 1, law)
    return length
  }
  return {
    vectors: 1,
    value: (u) => {
      evaluate(u)
      return factor * law[0]!
    },
    slope: (u, gradient) => {
      const length = evaluate(u)
      const pull = length > 0 ? (factor * law[1]!) / (rest * length) : 0
      for (let k = 0; k < 3; k++) gradient[k] = pull * u[k]!
      return factor * law[0]!
    },
    curvature: (u, matrix, convex) => {
      const length = evaluate(u) || Number.MIN_VALUE
      let across = (factor * law[1]!) / (rest * length)
      if (convex && across < 0) across = 0
      const along = (factor * law[2]!) / (rest * rest)
      writeDirected(matrix, 3, 0, 0, u, 0, length, along, across)
      return true
    },
  }
}

/** Energy = stiffness / 2 (|u1| - |u2| - rest)^2. */
export function leanTerm(rest: number, stiffness: number): Term {
  const lengths = (u: Float64Array): [number, number] => [
    Math.hypot(u[0]!, u[1]!, u[2]!) || Number.MIN_VALUE,
    Math.hypot(u[3]!, u[4]!, u[5]!) || Number.MIN_VALUE,
  ]
  return {
    vectors: 2,
    value: (u) => {
      const [a, b] = lengths(u)
      return (stiffness * (a - b - rest) ** 2) / 2
    },
    slope: (u, gradient) => {
      const [a, b] = lengths(u)
      const off = a - b - rest
      for (let k = 0; k < 3; k++) {
        gradient[k] = (stiffness * off * u[k]!) / a
        gradient[3 + k] = (-stiffness * off * u[3 + k]!) / b
      }
      return (stiffness * off * off) / 2
    },
    curvature: (u, matrix, convex) => {
      const [a, b] = lengths(u)
      const off = stiffness * (a - b - rest)
      const bend = (x: number): number => (convex ? Math.max(0, x) : x)
      writeDirected(matrix, 6, 0, 0, u, 0, a, stiffness, bend(off / a))
      writeDirected(matrix, 6, 3, 3, u, 3, b, stiffness, bend(-off / b))
      for (let i = 0; i < 3; i++)
        for (let j = 0; j < 3; j++) {
          const cross = (-stiffness * u[i]! * u[3 + j]!) / (a * b)
          matrix[i * 6 + 3 + j] = cross
          matrix[(3 + j) * 6 + i] = cross
        }
      return true
    },
  }
}

/** Energy = stiffness / 2 |u|^2. */
export function quadraticTerm(stiffness: number): Term {
  return {
    vectors: 1,
    value: (u) => (stiffness * (u[0]! ** 2 + u[1]! ** 2 + u[2]! ** 2)) / 2,
    slope: (u, gradient) => {
      for (let k = 0; k < 3; k++) gradient[k] = stiffness * u[k]!
      return (stiffness * (u[0]! ** 2 + u[1]! ** 2 + u[2]! ** 2)) / 2
    },
    curvature: (_, matrix) => {
      matrix.fill(0, 0, 9)
      matrix[0] = stiffness
      matrix[4] = stiffness
      matrix[8] = stiffness
      return true
    },
  }
}

/** Energy = -force x distance from the middle, in the plane: as pins pull. */
export function pullTerm(force: number): Term {
  return {
    vectors: 1,
    value: (u) => -force * Math.hypot(u[0]!, u[1]!),
    slope: (u, gradient) => {
      const r = Math.hypot(u[0]!, u[1]!) || Number.MIN_VALUE
      gradient[0] = (-force * u[0]!) / r
      gradient[1] = (-force * u[1]!) / r
      gradient[2] = 0
      return -force * r
    },
    curvature: (u, matrix, convex) => {
      if (convex) return false
      matrix.fill(0, 0, 9)
      const r = Math.hypot(u[0]!, u[1]!) || Number.MIN_VALUE
      const k = -force / r
      const [x, y] = [u[0]! / r, u[1]! / r]
      matrix[0] = k * (1 - x * x)
      matrix[1] = -k * x * y
      matrix[3] = -k * x * y
      matrix[4] = k * (1 - y * y)
      return true
    },
  }
}

/** along n n' + across (I - n n') at (row, column) of a matrix with `stride` columns, n the direction of u. */
function writeDirected(
  matrix: Float64Array,
  stride: number,
  row: number,
  column: number,
  u: Float64Array,
  at: number,
  length: number,
  along: number,
  across: number,
): void {
  const excess = (along - across) / (length * length)
  for (let i = 0; i < 3; i++)
    for (let j = 0; j < 3; j++)
      matrix[(row + i) * stride + column + j] =
        excess * u[at + i]! * u[at + j]! + (i === j ? across : 0)
}
