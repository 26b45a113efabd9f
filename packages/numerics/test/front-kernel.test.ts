import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"
import { eliminateColumns, roomOf, strideOf } from "../src/dense-front.ts"
import { type FrontKernel, fastKernel, plainKernel } from "../src/front-kernel.ts"
import { seededRandom } from "../src/index.ts"

/** A symmetric matrix with a heavy diagonal of both signs, lower triangle by columns. */
function someMatrix(m: number, seed: number): number[][] {
  const random = seededRandom(seed)
  return Array.from({ length: m }, (_, c) =>
    Array.from({ length: m - c }, (_, r) =>
      r === 0 ? (c % 3 === 0 ? -1 : 1) * (m + random.uniform()) : random.uniform() - 0.5,
    ),
  )
}

function eliminated(kernel: FrontKernel, matrix: number[][], width: number) {
  const m = matrix.length
  const stride = strideOf(m)
  const a = kernel.room(roomOf(m))
  a.fill(0, 0, stride * m)
  matrix.forEach((column, c) => {
    a.set(column, c * stride + c)
  })
  const pivots = new Float64Array(width)
  const signs = eliminateColumns(kernel, a, m, width, pivots, 0, 1e-12)
  const lower = matrix.map((_, c) => Array.from(a.subarray(c * stride + c, c * stride + m)))
  return { lower, pivots: Array.from(pivots), signs }
}

const sizes: readonly (readonly [number, number])[] = [
  [1, 1],
  [3, 2],
  [4, 4],
  [7, 3],
  [18, 5],
  [45, 45],
  [130, 61],
]

describe("the kernel of the factorisation", () => {
  it("is put together rightly where this machine can run it", () => {
    expect(fastKernel()).not.toBeNull()
  })

  it.each(sizes)("gives the same bits either way: %i rows, %i columns", (m, width) => {
    const matrix = someMatrix(m, 100 * m + width)
    expect(eliminated(fastKernel()!, matrix, width)).toEqual(
      eliminated(plainKernel(), matrix, width),
    )
  })

  it.each(sizes)(
    "puts L D L' and the remainder together to the matrix: %i rows, %i columns",
    (m, width) => {
      const matrix = someMatrix(m, 7 * m + width)
      const { lower, pivots } = eliminated(fastKernel()!, matrix, width)
      const l = (r: number, k: number): number => (r === k ? 1 : lower[k]![r - k]!)
      for (let c = 0; c < m; c++)
        for (let r = c; r < m; r++) {
          let sum = c >= width ? lower[c]![r - c]! : 0
          for (let k = 0; k <= Math.min(c, width - 1); k++) sum += l(r, k) * pivots[k]! * l(c, k)
          expectClose(sum, matrix[c]![r - c]!, 1e-11 * m, "rounding of at most m sums")
        }
    },
  )

  it("grows its room and keeps working", () => {
    const kernel = fastKernel()!
    eliminated(kernel, someMatrix(5, 1), 2)
    const large = someMatrix(120, 2)
    const first = eliminated(kernel, large, 60)
    eliminated(kernel, someMatrix(3, 3), 1)
    expect(eliminated(kernel, large, 60)).toEqual(first)
  })
})
