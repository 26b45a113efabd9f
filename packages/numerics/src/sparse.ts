// Sparse symmetric matrices: the lower triangle, compressed by columns, on typed arrays. The place of
// the entries (pattern) is kept apart from their values, because a minimiser fills the same pattern
// hundreds of times. Layout as in T. A. Davis, "Direct Methods for Sparse Linear Systems" (2006), ch. 2.

import { RoundwrightError } from "./error.ts"

/** Rows of each column ascend; the diagonal is always present and comes first. */
export interface SymmetricPattern {
  readonly size: number
  /** Length size + 1: where each column starts in `row`. */
  readonly columnStart: Int32Array
  readonly row: Int32Array
}

export interface SparseSymmetric {
  readonly pattern: SymmetricPattern
  readonly values: Float64Array
}

/**
 * Lays out the pattern that holds all pairs (row, column), in either triangle, repeated or not.
 * @returns the pattern and, for each pair given, the place of its entry among the values
 * @throws RoundwrightError `bad-index` when an index is not a whole number from 0 to size - 1
 */
export function patternFromPairs(
  size: number,
  rows: ArrayLike<number>,
  columns: ArrayLike<number>,
): { readonly pattern: SymmetricPattern; readonly slots: Int32Array } {
  const count = rows.length
  const total = count + size
  // Sort all pairs (and the diagonal) by column, then row, with two stable counting sorts.
  const low = new Int32Array(total)
  const high = new Int32Array(total)
  for (let k = 0; k < total; k++) {
    const r = k < count ? rows[k]! : k - count
    const c = k < count ? columns[k]! : k - count
    requireIndex(r, size)
    requireIndex(c, size)
    low[k] = Math.min(r, c)
    high[k] = Math.max(r, c)
  }
  const byRow = countingSort(high, size, undefined)
  const sorted = countingSort(low, size, byRow)
  const columnStart = new Int32Array(size + 1)
  const row = new Int32Array(total)
  const slots = new Int32Array(count)
  let filled = 0
  let column = -1
  let previousRow = -1
  for (const k of sorted) {
    if (low[k] !== column) {
      column = low[k]!
      columnStart[column] = filled
      previousRow = -1
    }
    if (high[k] !== previousRow) {
      previousRow = high[k]!
      row[filled++] = previousRow
    }
    if (k < count) slots[k] = filled - 1
  }
  columnStart[size] = filled
  return { pattern: { size, columnStart, row: row.slice(0, filled) }, slots }
}

/** Sums the triplets into a matrix; a pair may be given in either triangle, but count it once. */
export function symmetricFromTriplets(
  size: number,
  rows: ArrayLike<number>,
  columns: ArrayLike<number>,
  entries: ArrayLike<number>,
): SparseSymmetric {
  const { pattern, slots } = patternFromPairs(size, rows, columns)
  const values = new Float64Array(pattern.row.length)
  for (let k = 0; k < slots.length; k++) values[slots[k]!]! += entries[k]!
  return { pattern, values }
}

/** out = matrix times x. */
export function multiplySymmetric(
  matrix: SparseSymmetric,
  x: Float64Array,
  out: Float64Array = new Float64Array(matrix.pattern.size),
): Float64Array {
  const { size, columnStart, row } = matrix.pattern
  const { values } = matrix
  out.fill(0)
  for (let j = 0; j < size; j++) {
    const start = columnStart[j]!
    let sum = values[start]! * x[j]!
    const xj = x[j]!
    for (let p = start + 1; p < columnStart[j + 1]!; p++) {
      const i = row[p]!
      sum += values[p]! * x[i]!
      out[i]! += values[p]! * xj
    }
    out[j]! += sum
  }
  return out
}

/** The whole matrix as rows; for small matrices and tests. */
export function toDense(matrix: SparseSymmetric): number[][] {
  const { size, columnStart, row } = matrix.pattern
  const dense = Array.from({ length: size }, () => new Array<number>(size).fill(0))
  for (let j = 0; j < size; j++)
    for (let p = columnStart[j]!; p < columnStart[j + 1]!; p++) {
      dense[row[p]!]![j] = matrix.values[p]!
      dense[j]![row[p]!] = matrix.values[p]!
    }
  return dense
}

function requireIndex(index: number, size: number): void {
  if (Number.isInteger(index) && index >= 0 && index < size) return
  throw new RoundwrightError("bad-index", `Index ${index} does not fit a matrix of size ${size}.`, {
    numbers: { index, size },
  })
}

function countingSort(keys: Int32Array, keyCount: number, order?: Int32Array): Int32Array {
  const next = new Int32Array(keyCount + 1)
  for (const key of keys) next[key + 1]!++
  for (let k = 0; k < keyCount; k++) next[k + 1]! += next[k]!
  const sorted = new Int32Array(keys.length)
  for (let k = 0; k < keys.length; k++) {
    const item = order === undefined ? k : order[k]!
    sorted[next[keys[item]!]!++] = item
  }
  return sorted
}
