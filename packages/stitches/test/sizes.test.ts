import { RoundwrightError } from "@roundwright/numerics"
import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { expectClose, expectRelative } from "../../../test/support/close.ts"
import * as stitches from "../src/index.ts"
import { anyKind } from "./kinds.ts"

const exact = "plain arithmetic, only rounding"
const { gaugeFrom, sizeOf } = stitches
const inRows = { turned: true }
const inRounds = { turned: false }
const sc: stitches.StitchKind = { basic: "sc" }
const dc: stitches.StitchKind = { basic: "dc" }
const tr: stitches.StitchKind = { basic: "tr" }

const size = (least: number, most: number) =>
  fc.double({ min: least, max: most, noNaN: true, noDefaultInfinity: true })

/** Gauges that a maker can have: sc or dc swatches of a believable shape, yarn, hook, any of them. */
const anyInput: fc.Arbitrary<stitches.GaugeInput> = fc
  .record({
    swatches: fc.array(
      fc
        .record({
          basic: fc.constantFrom("sc" as const, "dc" as const, "hdc" as const),
          width: size(1, 20),
          stretch: size(0.6, 1.6),
          parts: fc.constantFrom("both", "width", "height"),
          worked: fc.constantFrom(undefined, "rows" as const, "rounds" as const),
        })
        .map(({ basic, width, stretch, parts, worked }) => ({
          kind: { basic },
          ...(parts === "height" ? {} : { widthMm: width }),
          ...(parts === "width"
            ? {}
            : { heightMm: width * stretch * { sc: 0.92, hdc: 1.32, dc: 2 }[basic] }),
          ...(worked === undefined ? {} : { worked }),
        })),
      { maxLength: 1 },
    ),
    yarnWeight: fc.constantFrom(undefined, 0, 1, 2, 3, 4, 5, 6, 7),
    hookMm: fc.option(size(0.6, 25), { nil: undefined }),
  })
  .map(({ swatches, yarnWeight, hookMm }) => ({
    swatches,
    ...(yarnWeight === undefined ? {} : { yarnWeight: yarnWeight as stitches.YarnWeight }),
    ...(hookMm === undefined ? {} : { hookMm }),
  }))

describe("any gauge", () => {
  it("gives every stitch a positive, finite size with a source", () => {
    fc.assert(
      fc.property(anyInput, anyKind, fc.boolean(), (input, kind, turned) => {
        const gauge = gaugeFrom(input)
        const got = sizeOf(kind, gauge, { turned })
        for (const value of [got.heightMm, got.widthMm, got.ratioSpread, gauge.scWidthMm]) {
          expect(Number.isFinite(value) && value > 0).toBe(true)
        }
        expect(got.ratioSpread).toBeLessThan(0.6)
        expect(got.note).not.toBe("")
        expect(gauge.absolute).toBe(gauge.source !== "none")
        expect(stitches.describeGauge(gauge).length).toBeGreaterThan(1)
        expect(stitches.chainSize(gauge).lengthMm).toBeGreaterThan(0)
      }),
      { seed: 31, numRuns: 600 },
    )
  })

  it("scales: a swatch twice as large gives every stitch twice the size", () => {
    fc.assert(
      fc.property(
        size(2, 15),
        size(0.8, 1.2),
        size(0.5, 3),
        anyKind,
        (width, stretch, by, kind) => {
          const made = (scale: number) =>
            gaugeFrom({
              swatches: [{ kind: sc, widthMm: width * scale, heightMm: width * stretch * scale }],
            })
          const one = sizeOf(kind, made(1), inRows)
          const other = sizeOf(kind, made(by), inRows)
          expectRelative(other.heightMm, one.heightMm * by, 1e-9, exact)
          expectRelative(other.widthMm, one.widthMm * by, 1e-9, exact)
          expectRelative(other.ratioSpread, one.ratioSpread, 1e-9, exact)
        },
      ),
      { seed: 32, numRuns: 200 },
    )
  })

  it("is plain data: stored and read back it gives the same sizes", () => {
    const gauge = gaugeFrom({
      swatches: [{ kind: dc, widthMm: 6, heightMm: 11 }],
      yarnWeight: 3,
      hookMm: 4,
    })
    const back = JSON.parse(JSON.stringify(gauge)) as stitches.Gauge
    expect(sizeOf(tr, back, inRounds)).toEqual(sizeOf(tr, gauge, inRounds))
  })
})

describe("nothing known", () => {
  const none = gaugeFrom({ swatches: [] })

  it("says that sizes are relative", () => {
    expect(none.absolute).toBe(false)
    expect(none.scWidthMm).toBe(1)
    expect(stitches.describeGauge(none)[0]).toMatch(/relative/)
  })

  it("has the published medians as heights", () => {
    expectClose(sizeOf(sc, none, inRows).heightMm, 0.919, 1e-9, exact)
    expectClose(sizeOf(sc, none, inRounds).heightMm, 1, 1e-9, exact)
    expectClose(sizeOf({ basic: "hdc" }, none, inRows).heightMm, 1.317, 1e-9, exact)
    expectClose(sizeOf(dc, none, inRows).heightMm, 2, 1e-9, exact)
  })

  it("adds the step from sc to dc for each yarn-over and calls it extrapolated", () => {
    for (const [basic, steps] of [
      ["tr", 1],
      ["dtr", 2],
      ["trtr", 3],
      ["quadtr", 4],
    ] as const) {
      const got = sizeOf({ basic }, none, inRows)
      expectClose(got.heightMm, 2 + steps * (2 - 0.919), 1e-9, exact)
      expect(got.provenance).toBe("extrapolated")
      expect(got.ratioSpread).toBeGreaterThan(sizeOf(dc, none, inRows).ratioSpread)
    }
  })

  it("orders the basic stitches by height, as their list does", () => {
    const heights = stitches.basicStitches.map((basic) => sizeOf({ basic }, none, inRows).heightMm)
    expect([...heights].sort((a, b) => a - b)).toEqual(heights)
  })

  it("keeps the trade's 6, 8 and 12 (Getting your circles flat, craftymaria.blogspot.com) within one spread", () => {
    for (const basic of ["sc", "hdc", "dc"] as const) {
      const got = sizeOf({ basic }, none, inRows)
      const ratio = got.heightMm / got.widthMm
      const reason = "a rule of whole numbers and a median of makers meet within the makers' spread"
      expectRelative(stitches.tradeRuleRatios[basic], ratio, got.ratioSpread, reason)
    }
    expectClose(stitches.tradeRuleRatios.sc, 0.955, 0.0005, "printed to three digits")
    expectClose(stitches.tradeRuleRatios.hdc, 1.273, 0.0005, "printed to three digits")
    expectClose(stitches.tradeRuleRatios.dc, 1.91, 0.0005, "printed to three digits")
  })
})

describe("a swatch", () => {
  const both = gaugeFrom({ swatches: [{ kind: dc, widthMm: 7.3, heightMm: 14 }] })

  it("beats every default and is surer", () => {
    const got = sizeOf(dc, both, inRounds)
    expect(got).toMatchObject({ widthMm: 7.3, heightMm: 14, provenance: "swatch" })
    const unaided = sizeOf(dc, gaugeFrom({ swatches: [] }), inRounds)
    expect(got.ratioSpread).toBeLessThan(0.65 * unaided.ratioSpread)
    expect(both.source).toBe("swatch")
  })

  it("of another stitch moves the others half way and leaves the spread between", () => {
    const tall = gaugeFrom({ swatches: [{ kind: sc, widthMm: 6, heightMm: 6 * 0.919 * 1.21 }] })
    const got = sizeOf(dc, tall, inRows)
    expectRelative(
      got.heightMm / got.widthMm,
      2 * 1.1,
      1e-9,
      "the root of 1.21, half in logarithms",
    )
    const unaided = sizeOf(dc, gaugeFrom({ swatches: [] }), inRows)
    expect(got.ratioSpread).toBeLessThan(unaided.ratioSpread)
    expect(got.ratioSpread).toBeGreaterThan(stitches.sameHandSpread)
  })

  it("serves the forms of its stitch", () => {
    const got = sizeOf({ basic: "dc", gathered: { how: "together", legs: 3 } }, both, inRows)
    expectClose(got.widthMm, 7.3, 1e-9, exact)
    expectRelative(got.heightMm, 14, 1e-9, exact)
    const post = sizeOf({ basic: "dc", post: "front" }, both, inRows)
    expectRelative(post.heightMm, 14 * stitches.postHeightFactor, 1e-9, exact)
  })

  it("of only a width or only rows gives the other by the usual proportion", () => {
    const wide = gaugeFrom({ swatches: [{ kind: dc, widthMm: 7 }] })
    expectClose(sizeOf(dc, wide, inRows).heightMm, 14, 1e-9, exact)
    expectClose(wide.scWidthMm, 7, 1e-9, exact)
    const high = gaugeFrom({ swatches: [{ kind: dc, heightMm: 14 }] })
    expectClose(sizeOf(dc, high, inRows).widthMm, 7, 1e-9, exact)
    expectClose(sizeOf(dc, high, inRows).heightMm, 14, 1e-9, exact)
  })

  it("may come in parts", () => {
    const parts = gaugeFrom({
      swatches: [
        { kind: sc, widthMm: 6 },
        { kind: sc, heightMm: 5.7 },
      ],
    })
    expect(sizeOf(sc, parts, inRows)).toMatchObject({
      widthMm: 6,
      heightMm: 5.7,
      provenance: "swatch",
    })
  })

  it("worked in rows is converted for rounds only when it says so", () => {
    const plain = { kind: sc, widthMm: 6, heightMm: 5.5 }
    const unsaid = gaugeFrom({ swatches: [plain] })
    expectClose(sizeOf(sc, unsaid, inRounds).heightMm, 5.5, 1e-9, exact)
    const said = gaugeFrom({ swatches: [{ ...plain, worked: "rows" }] })
    expectClose(sizeOf(sc, said, inRows).heightMm, 5.5, 1e-9, exact)
    expectClose(sizeOf(sc, said, inRounds).heightMm, 5.5 / 0.919, 1e-9, exact)
  })

  it("that contradicts another is told of, used by the middle, and less sure", () => {
    const torn = gaugeFrom({
      swatches: [
        { kind: sc, widthMm: 5, heightMm: 5 },
        { kind: sc, widthMm: 6.05, heightMm: 5 },
      ],
    })
    expect(torn.notes.join(" ")).toMatch(/disagree in width, 5\.0 against 6\.[01] mm/)
    const got = sizeOf(sc, torn, inRows)
    expectClose(got.widthMm, Math.sqrt(5 * 6.05), 1e-9, exact)
    expect(got.ratioSpread).toBeGreaterThan(stitches.sameHandSpread)
  })

  it("that does not fit the swatch of another stitch is told of", () => {
    const two = gaugeFrom({
      swatches: [
        { kind: sc, widthMm: 5 },
        { kind: dc, widthMm: 9 },
      ],
    })
    expect(two.notes.join(" ")).toMatch(/do not fit one another/)
    expect(sizeOf(dc, two, inRows).widthMm).toBe(9)
    expect(sizeOf(sc, two, inRows).widthMm).toBe(5)
  })

  it("that is odd is remarked, and one far from its yarn and hook too", () => {
    const odd = gaugeFrom({ swatches: [{ kind: dc, widthMm: 5, heightMm: 15 }] })
    expect(odd.notes.join(" ")).toMatch(/much taller/)
    const far = gaugeFrom({ swatches: [{ kind: sc, widthMm: 14 }], yarnWeight: 3, hookMm: 4 })
    expect(far.notes.join(" ")).toMatch(/times as wide/)
  })
})

describe("yarn and hook", () => {
  it("the anchor of a weight comes out at its hook, and the size grows with the root of the hook", () => {
    const at = (hookMm: number) => gaugeFrom({ swatches: [], yarnWeight: 4, hookMm }).scWidthMm
    expectClose(at(5), 7.62, 1e-9, exact)
    expectRelative(at(8) / at(2), 2, 1e-9, exact)
  })

  it("every source is named", () => {
    expect(gaugeFrom({ swatches: [], yarnWeight: 4, hookMm: 5 }).source).toBe("yarn-and-hook")
    expect(gaugeFrom({ swatches: [], yarnWeight: 4 }).source).toBe("yarn")
    expect(gaugeFrom({ swatches: [], hookMm: 5 }).source).toBe("hook")
  })

  it("heavier yarns are wider", () => {
    const widths = stitches.yarnWeights.map(
      ({ weight }) => gaugeFrom({ swatches: [], yarnWeight: weight }).scWidthMm,
    )
    expect([...widths].sort((a, b) => a - b)).toEqual(widths)
  })

  it("says where the measured width was preferred to the table's", () => {
    expect(gaugeFrom({ swatches: [], yarnWeight: 3 }).notes[0]).toMatch(/table has wider/)
    expect(gaugeFrom({ swatches: [], yarnWeight: 4 }).notes[0]).not.toMatch(/table has/)
  })
})

describe("what no hand can have worked is refused with a hint", () => {
  it.each<[string, stitches.GaugeInput]>([
    ["not-positive", { swatches: [{ kind: sc, widthMm: -3 }] }],
    ["not-finite", { swatches: [{ kind: sc, widthMm: Number.NaN }] }],
    ["absurd-swatch", { swatches: [{ kind: sc, widthMm: 0.2 }] }],
    ["absurd-lean", { swatches: [], leanShare: 1.01 }],
    ["absurd-lean", { swatches: [], leanShare: Number.NaN }],
    ["absurd-swatch", { swatches: [{ kind: sc, heightMm: 900 }] }],
    ["absurd-swatch", { swatches: [{ kind: dc, widthMm: 15, heightMm: 5 }] }],
    [
      "absurd-swatch",
      {
        swatches: [
          { kind: dc, widthMm: 15 },
          { kind: dc, heightMm: 5 },
        ],
      },
    ],
    ["absurd-hook", { swatches: [], hookMm: 800 }],
    ["not-finite", { swatches: [], hookMm: Number.POSITIVE_INFINITY }],
    ["unknown-yarn-weight", { swatches: [], yarnWeight: 9 as stitches.YarnWeight }],
  ])("%s", (code, input) => {
    try {
      gaugeFrom(input)
    } catch (error) {
      expect(error).toBeInstanceOf(RoundwrightError)
      expect((error as RoundwrightError).code).toBe(code)
      return
    }
    expect.fail("should have been refused")
  })
})

describe("chains and picots", () => {
  it("scale with the gauge", () => {
    const gauge = gaugeFrom({ swatches: [{ kind: sc, widthMm: 8 }] })
    expectClose(stitches.chainSize(gauge).lengthMm, 7.2, 1e-9, exact)
    expectClose(stitches.picotSize(3, gauge).heightMm, (3 * 7.2) / Math.PI, 1e-9, exact)
    expect(() => stitches.picotSize(0, gauge)).toThrow(RoundwrightError)
  })
})
