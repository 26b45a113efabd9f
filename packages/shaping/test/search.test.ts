import { gaugeFrom } from "@roundwright/stitches"
import { describe, expect, it } from "vitest"
import type { RoundRules } from "../src/candidates.ts"
import { circleHalf } from "../src/half-edge.ts"
import { paletteOf, usualStitches } from "../src/palette.ts"
import { halfOf } from "../src/plan.ts"
import { searchPlans } from "../src/search.ts"
import { tryEverything } from "./exhaustive.ts"

const palette = paletteOf(usualStitches, gaugeFrom({ swatches: [] }))
const rules: RoundRules = {
  kinds: [0, 1, 2, 3],
  cornerChains: [0, 1, 2, 3],
  sharpCorners: true,
  mostInCorner: 7,
  grading: "any",
}

describe("the search for a round", () => {
  it.each([
    [12, 4],
    [9, 3],
    [18, 6],
    [16, 8],
    [24, 8],
    [15, 5],
    [36, 12],
  ])("finds what trying everything finds: %i places, %i corners", (count, corners) => {
    const shape = halfOf(count / corners, true)
    const ones = Array.from({ length: shape.feet }, () => 1)
    const edge = circleHalf(
      shape,
      corners,
      count / (2 * Math.PI),
      ones,
      ones.map(() => 0),
    )
    const all = tryEverything(edge, palette, rules)
    expect(all.candidates).toBeGreaterThan(10_000)
    expect(all.candidates).toBeLessThan(100_000)
    const found = searchPlans([edge], palette, [rules], 1)[0]!
    // One per cent of the objective, as asked of the search.
    expect(found.score).toBeLessThanOrEqual(1.01 * all.score)
  })

  it("gives the same plans again", () => {
    const shape = halfOf(6, true)
    const ones = Array.from({ length: shape.feet }, () => 1)
    const edge = circleHalf(
      shape,
      4,
      24 / (2 * Math.PI),
      ones,
      ones.map(() => 0),
    )
    const rounds = [{ ...rules, sharpCorners: false }, rules]
    const once = searchPlans([edge], palette, rounds, 5)
    expect(JSON.stringify(searchPlans([edge], palette, rounds, 5))).toBe(JSON.stringify(once))
  })
})
