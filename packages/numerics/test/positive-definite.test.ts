import { invertPositiveDefinite, timesColumn } from "@roundwright/numerics"
import * as fc from "fast-check"
import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"

describe("the inverse of a positive definite matrix", () => {
  it("is that of the closed form in two dimensions", () => {
    const [[a, b], [c, d]] = invertPositiveDefinite([
      [4, 1],
      [1, 3],
    ]) as [[number, number], [number, number]]
    for (const [found, exact] of [
      [a, 3 / 11],
      [b, -1 / 11],
      [c, -1 / 11],
      [d, 4 / 11],
    ] as const)
      expectClose(found, exact, 1e-15, "a few roundings")
  })

  it("undoes the matrix, whatever its size", () => {
    const entry = fc.double({ min: -2, max: 2, noNaN: true })
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 6 }).chain((n) =>
          fc.array(fc.array(entry, { minLength: n, maxLength: n }), {
            minLength: n,
            maxLength: n,
          }),
        ),
        (b) => {
          const matrix = b.map((row, i) =>
            b.map((other, k) => row.reduce((s, v, j) => s + v * other[j]!, i === k ? 0.5 : 0)),
          )
          const inverse = invertPositiveDefinite(matrix)
          matrix.forEach((row, i) => {
            timesColumn(inverse, row).forEach((value, k) => {
              expectClose(
                value,
                i === k ? 1 : 0,
                1e-9,
                "condition below 300, a few hundred roundings",
              )
            })
          })
        },
      ),
      { numRuns: 60 },
    )
  })

  it("is refused where nothing determines it", () => {
    expect(() =>
      invertPositiveDefinite([
        [1, 1],
        [1, 1],
      ]),
    ).toThrow(/does not determine/)
    expect(() => invertPositiveDefinite([[Number.NaN]])).toThrow(/does not determine/)
  })
})
