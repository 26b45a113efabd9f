import { gaugeFrom } from "@roundwright/stitches"
import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { expectClose, expectRelative } from "../../../test/support/close.ts"
import { circleHalf, type HalfEdge, squareToEdge } from "../src/half-edge.ts"
import { OutlineModel } from "../src/outline-model.ts"
import { paletteOf, usualStitches } from "../src/palette.ts"
import { halfOf, shapeAfter, topsOfHalf } from "../src/plan.ts"

const gauge = gaugeFrom({ swatches: [] })
const palette = paletteOf(usualStitches, gauge)

/** A circle that n stitches of sc width fill, as half of one of k sides. */
function circle(count: number, corners: number, cornerOn: boolean, radius?: number): HalfEdge {
  const shape = halfOf(count / corners, cornerOn)
  const ones = Array.from({ length: shape.feet }, () => 1)
  const zeros = ones.map(() => 0)
  return circleHalf(shape, corners, radius ?? count / (2 * Math.PI), ones, zeros)
}

describe("halves of sides", () => {
  it("have the feet and tops of the whole side", () => {
    for (let feet = 1; feet <= 20; feet++)
      for (const cornerOn of [true, false]) {
        const shape = halfOf(feet, cornerOn)
        expect(2 * shape.feet - (shape.midOn ? 1 : 0) - (cornerOn ? 1 : 0)).toBe(feet)
        const ones = Array.from({ length: shape.feet }, () => 1)
        expect(topsOfHalf(shape, ones)).toBe(shape.feet)
        const after = shapeAfter(shape, { tops: ones, heights: [], cornerChains: 0 })
        expect(after).toEqual({ midOn: shape.midOn, cornerOn: shape.cornerOn })
      }
  })
})

describe("the fast model of a round", () => {
  it("keeps a flat round on its circle: radius grows by the height, nothing is strained", () => {
    // Height such that one more stitch in each of k places fills the larger circle exactly.
    const model = new OutlineModel(palette)
    const edge = circle(24, 4, true)
    const dc = 2
    const flat = 2 * Math.PI * (24 / (2 * Math.PI) + palette.heightMm[dc]!)
    const tops = edge.feet.map(() => 1)
    const radius = (24 * (24 / flat)) / (2 * Math.PI)
    // A circle shrunk so that the same 24 stitches fill it one height further out.
    const below = circle(24, 4, true, 24 / (2 * Math.PI) - palette.heightMm[dc]!)
    const plan = { tops, heights: tops.map(() => dc), cornerChains: 0 }
    const laid = model.lay(below, plan)
    expect(radius).toBeLessThan(24 / (2 * Math.PI))
    for (const { x, y } of model.tops())
      expectRelative(
        Math.hypot(x, y),
        24 / (2 * Math.PI),
        0.004,
        "chords of 24 instead of arcs: 1 - cos(pi / 24) is 0.9 %, shared by posts and tops",
      )
    expectClose(laid.strainEnergy, 0, 2e-5, "the same chords against arcs, squared")
  })

  it("offsets a straight side with mitred corners without strain", () => {
    // Apothem 6 square of sc width stitches: half side 6 with the corner on a stitch.
    const shape = { midOn: false, cornerOn: true }
    const feet = Array.from({ length: 6 }, (_, i) => ({
      x: 6,
      y: i < 5 ? i + 0.5 + 0.1 * i : 6,
      nx: 1,
      ny: 0,
      chains: 0,
      spanMm: 0,
    })).map((foot, i) => (i < 5 ? { ...foot, y: i + 0.75 } : foot))
    const edge = squareToEdge({ shape, half: Math.PI / 4, feet })
    const model = new OutlineModel(palette)
    // 5 dc along the side and 5 dc in the corner: half side 7.5 against 6 + 2 = 8 for sharp corners.
    const laid = model.lay(edge, {
      tops: [1, 1, 1, 1, 1, 5],
      heights: [2, 2, 2, 2, 2, 2, 2, 2],
      cornerChains: 0,
    })
    expectClose(laid.sideMm, 8, 0.1, "offset of a straight side by the height, two stitches")
    expectClose(
      laid.cornerMm,
      8 * Math.SQRT2,
      0.3,
      "mitred corner: within a seventh of a stitch width a side",
    )
    expectClose(laid.fullness, 7.5 / 8, 0.03, "half side at rest over the offset side")
  })

  it("does not depend on the unit of length", () => {
    const large = paletteOf(
      usualStitches,
      gaugeFrom({ swatches: [{ kind: { basic: "sc" }, widthMm: 7 }] }),
    )
    const plan = { tops: [1, 1, 1, 1, 4], heights: [0, 0, 1, 2, 3, 3], cornerChains: 1 }
    const one = { ...new OutlineModel(palette).lay(circle(36, 4, true), plan) }
    const shape = halfOf(9, true)
    const ones = Array.from({ length: shape.feet }, () => 7)
    const edge = circleHalf(
      shape,
      4,
      (7 * 36) / (2 * Math.PI),
      ones,
      ones.map(() => 0),
    )
    const seven = new OutlineModel(large).lay(edge, plan)
    expectRelative(seven.sideMm, 7 * one.sideMm, 1e-9, "scaling every length")
    expectRelative(seven.strainEnergy, one.strainEnergy, 1e-6, "strains have no unit")
    expectRelative(seven.fullness, one.fullness, 1e-9, "a ratio has no unit")
  })

  it("never gives NaN, whatever is piled up", () => {
    const model = new OutlineModel(palette)
    fc.assert(
      fc.property(
        fc.constantFrom([8, 8], [12, 4], [36, 4], [15, 3], [24, 6]),
        fc.boolean(),
        fc.array(fc.nat(5), { minLength: 12, maxLength: 12 }),
        fc.array(fc.nat(3), { minLength: 60, maxLength: 60 }),
        fc.nat(3),
        ([count, corners], cornerOn, counts, heights, chains) => {
          const edge = circle(count!, corners!, cornerOn)
          const tops = edge.feet.map((_, i) => counts[i]!)
          if (edge.shape.cornerOn && chains > 0) tops[tops.length - 1] = 2
          const size = topsOfHalf(edge.shape, tops)
          if (size === 0) return
          const laid = model.lay(edge, {
            tops,
            heights: heights.slice(0, size),
            cornerChains: chains,
          })
          for (const value of Object.values(laid)) expect(Number.isFinite(value)).toBe(true)
        },
      ),
      { seed: 5, numRuns: 300 },
    )
  })
})
