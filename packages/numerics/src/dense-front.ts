// Elimination of the first columns of a dense symmetric matrix (lower triangle, stored by columns):
// L and D of those columns, and the remainder for the rest. Four pivots are carried through the rest
// at once, so that each entry is loaded and stored a quarter as often.
// Source: G. H. Golub, C. F. Van Loan, "Matrix Computations" (4th ed., 2013), 4.1 and 1.5 (blocking).

const together = 4

/**
 * @param a m x m, column c at a[c * m]; on return columns below `width` hold L (unit diagonal not
 *   stored: the pivot stands there), the others the remainder
 * @param pivots D is written from `first` on
 * @param tiny a pivot no larger than this is replaced by it and counted as zero
 */
export function eliminateColumns(
  a: Float64Array,
  m: number,
  width: number,
  pivots: Float64Array,
  first: number,
  tiny: number,
): { positive: number; negative: number; zero: number } {
  let [positive, negative, zero] = [0, 0, 0]
  for (let start = 0; start < width; start += together) {
    const end = Math.min(start + together, width)
    for (let j = start; j < end; j++) {
      let pivot = a[j * m + j]!
      if (Math.abs(pivot) <= tiny) {
        pivot = tiny
        zero++
      } else if (pivot > 0) positive++
      else negative++
      pivots[first + j] = pivot
      const column = j * m
      for (let r = j + 1; r < m; r++) a[column + r]! /= pivot
      for (let c = j + 1; c < end; c++) {
        const factor = a[column + c]! * pivot
        if (factor !== 0) for (let r = c; r < m; r++) a[c * m + r]! -= a[column + r]! * factor
      }
    }
    if (end - start === together) updateRestByFour(a, m, start, end, pivots, first)
    else for (let j = start; j < end; j++) updateRestByOne(a, m, j, end, pivots[first + j]!)
  }
  return { positive, negative, zero }
}

function updateRestByOne(a: Float64Array, m: number, j: number, from: number, pivot: number): void {
  for (let c = from; c < m; c++) {
    const factor = a[j * m + c]! * pivot
    if (factor !== 0) for (let r = c; r < m; r++) a[c * m + r]! -= a[j * m + r]! * factor
  }
}

function updateRestByFour(
  a: Float64Array,
  m: number,
  start: number,
  from: number,
  pivots: Float64Array,
  first: number,
): void {
  const [p0, p1, p2, p3] = [start * m, (start + 1) * m, (start + 2) * m, (start + 3) * m]
  const d0 = pivots[first + start]!
  const d1 = pivots[first + start + 1]!
  const d2 = pivots[first + start + 2]!
  const d3 = pivots[first + start + 3]!
  let c = from
  // Two columns at a time, so that the four pivot columns are loaded half as often.
  for (; c + 1 < m; c += 2) {
    const [f0, g0] = [a[p0 + c]! * d0, a[p0 + c + 1]! * d0]
    const [f1, g1] = [a[p1 + c]! * d1, a[p1 + c + 1]! * d1]
    const [f2, g2] = [a[p2 + c]! * d2, a[p2 + c + 1]! * d2]
    const [f3, g3] = [a[p3 + c]! * d3, a[p3 + c + 1]! * d3]
    const column = c * m
    const next = column + m
    a[column + c]! -= a[p0 + c]! * f0 + a[p1 + c]! * f1 + a[p2 + c]! * f2 + a[p3 + c]! * f3
    for (let r = c + 1; r < m; r++) {
      const l0 = a[p0 + r]!
      const l1 = a[p1 + r]!
      const l2 = a[p2 + r]!
      const l3 = a[p3 + r]!
      a[column + r]! -= l0 * f0 + l1 * f1 + l2 * f2 + l3 * f3
      a[next + r]! -= l0 * g0 + l1 * g1 + l2 * g2 + l3 * g3
    }
  }
  if (c < m)
    a[c * m + c]! -=
      a[p0 + c]! ** 2 * d0 + a[p1 + c]! ** 2 * d1 + a[p2 + c]! ** 2 * d2 + a[p3 + c]! ** 2 * d3
}
