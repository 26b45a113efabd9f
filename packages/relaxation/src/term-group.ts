// All terms of one kind, kept in typed arrays and summed in one loop. A term acts on one to four points; its second
// derivatives are handed out a term at a time, as 3 x 3 blocks by pairs of its points.

export interface TermGroup {
  /** Points a term acts on. */
  readonly arity: 1 | 2 | 3 | 4
  readonly count: number
  /** The points of all terms, `arity` each. */
  readonly points: Int32Array
  /** @param p x, y, z of every point */
  value(p: Float64Array): number
  /** The value; adds the gradient by points to `pull`. */
  slope(p: Float64Array, pull: Float64Array): number
  /**
   * Writes the second derivatives of term t by its points i >= j to 9 (i (i + 1) / 2 + j), row by row. With `convex` a
   * positive semidefinite part of them. Returns false, and writes nothing, where they are all zero.
   */
  curvature(t: number, p: Float64Array, blocks: Float64Array, convex: boolean): boolean
}

/**
 * From second derivatives by the vectors u_i = p_i - p_0 (i = 1 to m; or all of them reversed) to those by points.
 * @param h 3 m x 3 m, row by row
 */
export function blocksFromVectors(h: Float64Array, m: number, blocks: Float64Array): void {
  const stride = 3 * m
  blocks.fill(0, 0, 9)
  for (let i = 1; i <= m; i++) {
    const own = (9 * i * (i + 1)) / 2
    for (let r = 0; r < 3; r++)
      for (let c = 0; c < 3; c++) {
        const row = (3 * (i - 1) + r) * stride + c
        let sum = 0
        for (let j = 1; j <= m; j++) {
          const entry = h[row + 3 * (j - 1)]!
          sum += entry
          if (j <= i) blocks[own + 9 * j + 3 * r + c] = entry
        }
        blocks[own + 3 * r + c] = -sum
        blocks[3 * r + c]! += sum
      }
  }
}
