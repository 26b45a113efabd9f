// Elimination for a chain of points, each tied to the next: a symmetric system of 2x2 blocks on the diagonal
// (a b; b d) and beside it (p q; q r), as it comes from springs between neighbours. Written out for speed.

/** Solves the block tridiagonal system in place: the right side becomes the solution. */
export function solveBlocks(
  n: number,
  da: Float64Array,
  db: Float64Array,
  dd: Float64Array,
  oa: Float64Array,
  ob: Float64Array,
  od: Float64Array,
  gx: Float64Array,
  gy: Float64Array,
): void {
  for (let j = 0; j + 1 < n; j++) {
    const [a, b, d] = [da[j]!, db[j]!, dd[j]!]
    const det = a * d - b * b || 1e-12
    const [ia, ib, id] = [d / det, -b / det, a / det]
    const [p, q, r] = [oa[j]!, ob[j]!, od[j]!]
    // m = O inverse(D)
    const [m00, m01] = [p * ia + q * ib, p * ib + q * id]
    const [m10, m11] = [q * ia + r * ib, q * ib + r * id]
    da[j + 1]! -= m00 * p + m01 * q
    db[j + 1]! -= m00 * q + m01 * r
    dd[j + 1]! -= m10 * q + m11 * r
    gx[j + 1]! -= m00 * gx[j]! + m01 * gy[j]!
    gy[j + 1]! -= m10 * gx[j]! + m11 * gy[j]!
  }
  for (let j = n - 1; j >= 0; j--) {
    let [rx, ry] = [gx[j]!, gy[j]!]
    if (j + 1 < n) {
      rx -= oa[j]! * gx[j + 1]! + ob[j]! * gy[j + 1]!
      ry -= ob[j]! * gx[j + 1]! + od[j]! * gy[j + 1]!
    }
    const det = da[j]! * dd[j]! - db[j]! * db[j]! || 1e-12
    gx[j] = (dd[j]! * rx - db[j]! * ry) / det
    gy[j] = (da[j]! * ry - db[j]! * rx) / det
  }
}
