// The factorisation A = P' L D L' P of a sparse symmetric matrix, definite or not, with its inertia
// (by Sylvester's law the signs of D are the signs of the eigenvalues). Multifrontal: every front is a
// dense matrix, its remainder handed up the tree. Pivots are not exchanged, which is right for matrices
// that are definite or were made so by a shift; a pivot too small to divide by is replaced and counted.
// Source: J. W. H. Liu, "The multifrontal method for sparse matrix solution", SIAM Review 34 (1992).

import { eliminateColumns, roomOf, strideOf } from "./dense-front.ts"
import { type EliminationPlan, type Front, planElimination } from "./elimination.ts"
import { frontKernel } from "./front-kernel.ts"
import type { SparseSymmetric } from "./sparse.ts"

export interface Inertia {
  readonly positive: number
  readonly negative: number
  /** Pivots below `smallestPivot` of the largest entry: eigenvalues that are zero within rounding. */
  readonly zero: number
}

/** A pivot below this share of the largest diagonal entry holds nothing but rounding (2^-52 times some growth). */
export const smallestPivot = 1e-14

/** Holds the memory of a factorisation, so that matrices of one pattern can be factored again and again. */
export class Factorisation {
  readonly plan: EliminationPlan
  inertia: Inertia = { positive: 0, negative: 0, zero: 0 }
  private readonly lower: Float64Array
  private readonly pivots: Float64Array
  private readonly stack: Float64Array
  private readonly local: Int32Array
  /** For the rows of a remainder: their places in the front above, and where each one's run of neighbours ends. */
  private readonly places: Int32Array
  private readonly runEnds: Int32Array
  private readonly right: Float64Array

  constructor(plan: EliminationPlan) {
    this.plan = plan
    const n = plan.pattern.size
    this.lower = new Float64Array(plan.factorEntries)
    this.pivots = new Float64Array(n)
    this.stack = new Float64Array(plan.stackEntries)
    this.local = new Int32Array(n)
    this.places = new Int32Array(plan.largestFront)
    this.runEnds = new Int32Array(plan.largestFront)
    this.right = new Float64Array(n)
  }

  /** Factors values + shift on the diagonal. @returns the inertia of the shifted matrix */
  factor(values: Float64Array, shift = 0): Inertia {
    const { fronts, permuted, source } = this.plan
    const { stack, lower, pivots, local } = this
    const kernel = frontKernel()
    const work = kernel.room(roomOf(this.plan.largestFront))
    const tiny =
      smallestPivot * Math.max(largestDiagonal(this.plan, values), Math.abs(shift), 1e-300)
    let [positive, negative, zero] = [0, 0, 0]
    let top = 0
    for (const front of fronts) {
      const m = front.rows.length
      const stride = strideOf(m)
      clearLower(work, stride, m)
      for (let k = 0; k < m; k++) local[front.rows[k]!] = k
      for (let c = 0; c < front.width; c++) {
        const column = front.first + c
        for (let p = permuted.columnStart[column]!; p < permuted.columnStart[column + 1]!; p++)
          work[c * stride + local[permuted.row[p]!]!]! += values[source[p]!]!
        work[c * stride + c]! += shift
      }
      for (let k = front.children.length - 1; k >= 0; k--) {
        const child = fronts[front.children[k]!]!
        top -= (child.rows.length - child.width) ** 2
        this.addRemainder(work, stride, top, child)
      }
      const signs = eliminateColumns(kernel, work, m, front.width, pivots, front.first, tiny)
      positive += signs.positive
      negative += signs.negative
      zero += signs.zero
      for (let c = 0; c < front.width; c++)
        copy(work, c * stride + c, lower, front.offset + c * m + c, m - c)
      top = keepRemainder(work, m, front.width, stack, top)
    }
    this.inertia = { positive, negative, zero }
    return this.inertia
  }

  /** x with A x = b; `out` may be `b` itself. */
  solve(b: Float64Array, out: Float64Array = new Float64Array(b.length)): Float64Array {
    const { order } = this.plan
    const { right } = this
    for (let k = 0; k < order.length; k++) right[k] = b[order[k]!]!
    this.forward()
    for (let k = 0; k < order.length; k++) right[k]! /= this.pivots[k]!
    this.backward()
    for (let k = 0; k < order.length; k++) out[order[k]!] = right[k]!
    return out
  }

  /**
   * A unit vector v with v'Av < 0, from the most negative pivot d: v = P' L'^-1 e has v'Av = d exactly.
   * @returns null when no pivot is negative
   */
  negativeCurvature(): { direction: Float64Array; curvature: number } | null {
    const { order } = this.plan
    let most = -1
    for (let k = 0; k < order.length; k++)
      if (this.pivots[k]! < 0 && (most < 0 || this.pivots[k]! < this.pivots[most]!)) most = k
    if (most < 0) return null
    const { right } = this
    right.fill(0)
    right[most] = 1
    this.backward()
    let square = 0
    for (let k = 0; k < right.length; k++) square += right[k]! ** 2
    const direction = new Float64Array(right.length)
    for (let k = 0; k < order.length; k++) direction[order[k]!] = right[k]! / Math.sqrt(square)
    return { direction, curvature: this.pivots[most]! / square }
  }

  /** The remainder of a child added to its parent's front. */
  private addRemainder(work: Float64Array, stride: number, from: number, child: Front): void {
    const { stack, local, places, runEnds } = this
    const { rows, width } = child
    const size = rows.length - width
    for (let r = size - 1; r >= 0; r--) {
      places[r] = local[rows[width + r]!]!
      runEnds[r] = r + 1 < size && places[r + 1] === places[r]! + 1 ? runEnds[r + 1]! : r + 1
    }
    for (let c = 0; c < size; c++) {
      const column = places[c]! * stride
      const start = from + c * size
      for (let r = c; r < size; ) {
        const shift = column + places[r]! - r
        for (const end = runEnds[r]!; r < end; r++) work[shift + r]! += stack[start + r]!
      }
    }
  }

  private forward(): void {
    const { lower, right } = this
    for (const { rows, width, first, offset } of this.plan.fronts) {
      const m = rows.length
      for (let c = 0; c < width; c++) {
        const x = right[first + c]!
        if (x === 0) continue
        const column = offset + c * m
        for (let r = c + 1; r < m; r++) right[rows[r]!]! -= lower[column + r]! * x
      }
    }
  }

  private backward(): void {
    const { lower, right } = this
    const { fronts } = this.plan
    for (let s = fronts.length - 1; s >= 0; s--) {
      const { rows, width, first, offset } = fronts[s]!
      const m = rows.length
      for (let c = width - 1; c >= 0; c--) {
        const column = offset + c * m
        let x = right[first + c]!
        for (let r = c + 1; r < m; r++) x -= lower[column + r]! * right[rows[r]!]!
        right[first + c] = x
      }
    }
  }
}

/** Plans and factors in one go, for a matrix that is used once. */
export function factorSymmetric(matrix: SparseSymmetric, shift = 0): Factorisation {
  const factorisation = new Factorisation(planElimination(matrix.pattern))
  factorisation.factor(matrix.values, shift)
  return factorisation
}

function largestDiagonal(plan: EliminationPlan, values: Float64Array): number {
  let largest = 0
  const { size, columnStart } = plan.pattern
  for (let j = 0; j < size; j++) largest = Math.max(largest, Math.abs(values[columnStart[j]!]!))
  return largest
}

function keepRemainder(
  work: Float64Array,
  m: number,
  width: number,
  stack: Float64Array,
  top: number,
): number {
  const size = m - width
  const stride = strideOf(m)
  for (let c = 0; c < size; c++)
    copy(work, (width + c) * stride + width + c, stack, top + c * size + c, size - c)
  return top + size * size
}

/** Zeros on and below the diagonal, and in the padding of the columns. */
function clearLower(work: Float64Array, stride: number, m: number): void {
  if (m < longCopy) work.fill(0, 0, stride * m)
  else for (let c = 0; c < m; c++) work.fill(0, c * stride + c, (c + 1) * stride)
}

/** Below this a loop is faster than making a view to copy from. */
const longCopy = 64

function copy(
  from: Float64Array,
  fromAt: number,
  to: Float64Array,
  toAt: number,
  count: number,
): void {
  if (count >= longCopy) to.set(from.subarray(fromAt, fromAt + count), toAt)
  else for (let k = 0; k < count; k++) to[toAt + k] = from[fromAt + k]!
}
