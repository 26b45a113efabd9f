import { minimiseBySimplex } from "@roundwright/numerics"
import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"

describe("the simplex of Nelder and Mead", () => {
  it("finds the bottom of Rosenbrock's valley", () => {
    const found = minimiseBySimplex(
      ([x, y]) => 100 * (y! - x! * x!) ** 2 + (1 - x!) ** 2,
      [-1.2, 1],
      {
        steps: [0.1, 0.1],
        evaluations: 2000,
        tolerance: 1e-14,
      },
    )
    expect(found.ended).toBe("settled")
    expectClose(found.parameters[0]!, 1, 1e-5, "minimum of the function in closed form")
    expectClose(found.parameters[1]!, 1, 1e-5, "minimum of the function in closed form")
  })

  it("stops at the number of evaluations and gives the best so far", () => {
    const found = minimiseBySimplex(([x]) => Math.abs(x! - 3), [0], { steps: [1], evaluations: 5 })
    expect(found.ended).toBe("evaluations")
    expect(found.value).toBeLessThanOrEqual(3)
  })

  it("takes values that are not finite for infinitely large, and refuses them at the start", () => {
    const root = ([x]: readonly number[]) => (x! < 0 ? Number.NaN : (Math.sqrt(x!) - 1) ** 2)
    expectClose(
      minimiseBySimplex(root, [0.3], { steps: [-0.5] }).parameters[0]!,
      1,
      1e-4,
      "root of the square",
    )
    expect(() => minimiseBySimplex(root, [-1], { steps: [0.1] })).toThrow(/finite/)
  })
})
