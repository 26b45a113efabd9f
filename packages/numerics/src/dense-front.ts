// Elimination of the first columns of a dense symmetric matrix (lower triangle, stored by columns):
// L and D of those columns, and the remainder for the rest. Columns are done four at a time: first all that
// stand before are taken off them, then they are divided among themselves; the rest is taken off once, at the end.
// Source: G. H. Golub, C. F. Van Loan, "Matrix Computations" (4th ed., 2013), 4.1 and 1.5 (blocking).

import type { FrontKernel } from "./front-kernel.ts"

const together = 4

/** Entries from one column of a front of m rows to the next: the kernel reads up to three rows past the end. */
export function strideOf(m: number): number {
  return m + together - 1
}

/** Entries a front of m rows needs, the padding of its columns and of a last block of columns included. */
export function roomOf(m: number): number {
  return strideOf(m) * (m + together)
}

/**
 * @param a m x m in the kernel's room, column c at a[c * strideOf(m)], the padding zero; on return columns below `width`
 *   hold L (unit diagonal not stored: the pivot stands there), the others the remainder
 * @param pivots D is written from `first` on
 * @param tiny a pivot no larger than this is replaced by it and counted as zero
 */
export function eliminateColumns(
  kernel: FrontKernel,
  a: Float64Array,
  m: number,
  width: number,
  pivots: Float64Array,
  first: number,
  tiny: number,
): { positive: number; negative: number; zero: number } {
  const stride = strideOf(m)
  let [positive, negative, zero] = [0, 0, 0]
  // A block of fewer than four comes first, where nothing has to be taken off yet.
  let start = 0
  let end = width % together || together
  while (start < width) {
    if (start > 0) kernel.takeOff(stride, m, start, start, end)
    for (let j = start; j < end; j++) {
      const column = j * stride
      let pivot = a[column + j]!
      if (Math.abs(pivot) <= tiny) {
        pivot = tiny
        a[column + j] = tiny
        zero++
      } else if (pivot > 0) positive++
      else negative++
      pivots[first + j] = pivot
      for (let r = j + 1; r < m; r++) a[column + r]! /= pivot
      for (let c = j + 1; c < end; c++) {
        const factor = a[column + c]! * pivot
        for (let r = c; r < m; r++) a[c * stride + r]! -= a[column + r]! * factor
      }
    }
    start = end
    end += together
  }
  if (width < m) kernel.takeOff(stride, m, width, width, m)
  return { positive, negative, zero }
}
