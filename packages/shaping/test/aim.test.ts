import fc from "fast-check"
import { describe, it } from "vitest"
import { expectClose, expectRelative } from "../../../test/support/close.ts"
import { aimLength, aimPoint } from "../src/aim.ts"

const point = new Float64Array(2)

describe("outlines to aim at", () => {
  it("are a circle at sharpness 0 and the polygon at 1", () => {
    for (const corners of [3, 4, 6, 12]) {
      const half = Math.PI / corners
      expectRelative(
        aimLength({ apothemMm: 5, sharpness: 0 }, half),
        5 * half,
        1e-12,
        "closed form",
      )
      const side = 5 * Math.tan(half)
      expectRelative(aimLength({ apothemMm: 5, sharpness: 1 }, half), side, 1e-12, "closed form")
      aimPoint({ apothemMm: 5, sharpness: 1 }, half, side, point)
      expectRelative(Math.hypot(point[0]!, point[1]!), 5 / Math.cos(half), 1e-12, "corner reach")
    }
  })

  it("have the length that their points trace, and end on the corner's ray", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 3, max: 12 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 1, max: 100, noNaN: true }),
        (corners, sharpness, apothemMm) => {
          const half = Math.PI / corners
          const aim = { apothemMm, sharpness }
          const length = aimLength(aim, half)
          let traced = 0
          let [x, y] = [apothemMm, 0]
          const steps = 2000
          for (let i = 1; i <= steps; i++) {
            aimPoint(aim, half, (length * i) / steps, point)
            traced += Math.hypot(point[0]! - x, point[1]! - y)
            ;[x, y] = [point[0]!, point[1]!]
          }
          expectRelative(traced, length, 1e-5, "chords of 2000 steps against arcs")
          expectClose(Math.atan2(y, x), half, 1e-9, "the end lies on the mirror line")
        },
      ),
      { seed: 11, numRuns: 40 },
    )
  })
})
