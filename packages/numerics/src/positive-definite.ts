// The inverse of a small symmetric positive definite matrix by Cholesky's factor: a covariance from normal equations.
// Source: G. H. Golub, C. F. Van Loan, "Matrix Computations" (4th ed.), 4.2.

import { RoundwrightError } from "./error.ts"

/** Rows of a square matrix. */
export type DenseRows = readonly (readonly number[])[]

/** @throws RoundwrightError `not-positive-definite` */
export function invertPositiveDefinite(matrix: DenseRows): number[][] {
  const size = matrix.length
  const lower = matrix.map(() => new Array<number>(size).fill(0))
  for (let i = 0; i < size; i++)
    for (let k = 0; k <= i; k++) {
      let rest = matrix[i]![k]!
      for (let j = 0; j < k; j++) rest -= lower[i]![j]! * lower[k]![j]!
      if (i === k && !(rest > 0))
        throw new RoundwrightError(
          "not-positive-definite",
          "What was measured does not determine what is unknown.",
        )
      lower[i]![k] = i === k ? Math.sqrt(rest) : rest / lower[k]![k]!
    }
  const inverse = matrix.map(() => new Array<number>(size).fill(0))
  for (let column = 0; column < size; column++) {
    const half: number[] = []
    for (let i = 0; i < size; i++) {
      let rest = i === column ? 1 : 0
      for (let j = 0; j < i; j++) rest -= lower[i]![j]! * half[j]!
      half.push(rest / lower[i]![i]!)
    }
    for (let i = size - 1; i >= 0; i--) {
      let rest = half[i]!
      for (let j = i + 1; j < size; j++) rest -= lower[j]![i]! * inverse[j]![column]!
      inverse[i]![column] = rest / lower[i]![i]!
    }
  }
  return inverse
}

/** Matrix times a column. */
export function timesColumn(matrix: DenseRows, column: readonly number[]): number[] {
  return matrix.map((row) => row.reduce((sum, value, i) => sum + value * column[i]!, 0))
}
