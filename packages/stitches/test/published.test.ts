// The figures the sizes are built from, counted again from the published gauges. Sources stand beside
// each row of test/evidence/stitches-gauges.json.

import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"
import * as stitches from "../src/index.ts"
import { core, gauges, median, quantile, ratiosOf, read, withYarnAndHook } from "./gauges.ts"

const printed = "sizes are kept to 0.01 mm and medians to three digits"

describe("proportions are the medians of the published gauges", () => {
  it("counts 82 gauges", () => expect(core.length).toBe(82))

  it.each([
    ["sc", stitches.scTurned, ratiosOf("sc"), 24],
    ["sc in rounds", stitches.scUnturned, ratiosOf("sc", "rounds"), 4],
    ["hdc", stitches.hdcRatio, ratiosOf("hdc"), 12],
    ["dc", stitches.dcRatio, ratiosOf("dc"), 28],
  ])("%s", (_, constant, ratios, count) => {
    expect(ratios.length).toBe(count)
    expectClose(constant, median(ratios), 0.002, printed)
  })

  it("forms follow the few gauges there are", () => {
    const post = [...ratiosOf("dc-post-ribbing"), ...ratiosOf("dc-post-basketweave")]
    expectClose(stitches.postHeightFactor, (post[0]! + post[1]!) / 2 / 2, 0.002, printed)
    expectClose(stitches.backLoopScFactor * 0.919, median(ratiosOf("sc-blo")), 0.002, printed)
    expectClose(stitches.backLoopDcFactor * 2, median(ratiosOf("dc-blo")), 0.002, printed)
    const slip = gauges.filter((gauge) => gauge.stitch === "slst-blo")
    const high = slip.find((gauge) => gauge.heightMm !== undefined)!.heightMm!
    const wide = slip.find((gauge) => gauge.widthMm !== undefined)!.widthMm!
    expectClose(stitches.backLoopSlipRatio, high / wide, 0.001, printed)
  })

  it("one published gauge is remarked as odd, none refused", () => {
    const odd = core.filter((gauge) => {
      const basic = gauge.stitch.replace("-tapestry", "") as stitches.BasicStitch
      if (!["sc", "hdc", "dc"].includes(basic)) return false
      const { notes } = stitches.gaugeFrom({
        swatches: [{ kind: { basic }, widthMm: gauge.widthMm!, heightMm: gauge.heightMm! }],
      })
      return notes.length > 1
    })
    // A larger hook on its page gives fewer stitches but more rounds: the page contradicts itself.
    expect(odd.map((gauge) => [gauge.stitch, gauge.hookMm])).toEqual([["dc", 8]])
  })

  it("spreads are those of the quartiles", () => {
    const none = stitches.gaugeFrom({ swatches: [] })
    for (const basic of ["sc", "hdc", "dc"] as const) {
      const ratios = ratiosOf(basic)
      const spread = (quantile(ratios, 0.75) - quantile(ratios, 0.25)) / 1.349 / median(ratios)
      const size = stitches.sizeOf({ basic }, none, { turned: true })
      expectClose(size.ratioSpread, spread, 0.001, printed)
    }
  })

  it("a chain measures 0.9 of a stitch: less than the printed pairs laid straight, more than filet grids ask for", () => {
    const width = (stitch: string, place: number) =>
      gauges.filter((gauge) => gauge.stitch === stitch)[place]!.widthMm!
    const hdc = gauges.find((gauge) => gauge.stitch === "hdc" && gauge.heightMm === undefined)!
    const sameInRow = 1 // 18 ch and 18 sts an inch in one filet piece
    const pair = (width("ch", 0) / hdc.widthMm! + sameInRow) / 2
    expectClose(pair, 0.97, 0.005, printed)
    // Five filet grids: a dc and two chains in 0.92 to 1.25 of the dc's height, which is two widths; the dc beside chains.
    const filet = [0.92, 1.25].map(
      (share) => (share * stitches.dcRatio - stitches.besideChainShare) / 2,
    )
    expect(stitches.chainLengthInStitches).toBeLessThan(pair)
    expect(stitches.chainLengthInStitches).toBeGreaterThan((filet[0]! + filet[1]!) / 2)
    expect(stitches.chainLengthInStitches).toBeLessThan(filet[1]! + 0.01)
    const worsted = stitches.gaugeFrom({ swatches: [], yarnWeight: 4, hookMm: 4 })
    const third = width("ch", 2) / worsted.scWidthMm
    expectClose(third, 0.97, 0.06, "the two pairs lie 0.03 to each side; a third maker twice that")
  })

  it("a tr is 4 to 7 % wider than a dc (own arithmetic on julisjots.blogspot.com, 63 Squares 4/63)", () => {
    expect(stitches.trebleWidth).toBeGreaterThanOrEqual(1.04)
    expect(stitches.trebleWidth).toBeLessThanOrEqual(1.07)
  })
})

describe("rounds of sc that are not turned", () => {
  it("have one proportion whatever yarn and hook are named, so that 6, 8 and 12 stay what they are", () => {
    const hands: stitches.GaugeInput[] = [
      { swatches: [] },
      ...stitches.yarnWeights.flatMap(({ weight }) =>
        stitches.hooks.map(({ mm }) => ({ swatches: [], yarnWeight: weight, hookMm: mm })),
      ),
    ]
    for (const basic of ["sc", "hdc", "dc"] as const)
      for (const turned of [true, false]) {
        const ratios = hands.map((hand) => {
          const size = stitches.sizeOf({ basic }, stitches.gaugeFrom(hand), { turned })
          return size.heightMm / size.widthMm
        })
        for (const ratio of ratios) expectClose(ratio, ratios[0]!, 1e-12, "one default hand")
      }
  })

  it("of tight and of plain work lie within twice the stated spread, all nine gauges but the tightest", () => {
    const rounds = [...ratiosOf("sc", "rounds"), ...ratiosOf("sc-tapestry", "rounds")]
    expect(rounds.length).toBe(9)
    const gauge = stitches.gaugeFrom({ swatches: [] })
    const { heightMm, widthMm, ratioSpread } = stitches.sizeOf({ basic: "sc" }, gauge, {
      turned: false,
    })
    const outside = rounds.filter(
      (ratio) => Math.abs(ratio / (heightMm / widthMm) - 1) > 2 * ratioSpread,
    )
    expect(outside.length).toBeLessThanOrEqual(1)
    const middle = median(rounds)
    expect(Math.abs(middle / (heightMm / widthMm) - 1)).toBeLessThan(ratioSpread * 1.5)
  })
})

describe("width from yarn and hook", () => {
  it("rests on the median width and hook of each weight", () => {
    for (const [weight, anchor] of Object.entries(stitches.measuredWidths)) {
      const rows = withYarnAndHook.filter((gauge) => gauge.yarnWeight === Number(weight))
      expect(rows.length).toBe(anchor.gauges)
      expectClose(anchor.widthMm, median(rows.map((row) => row.widthMm!)), 0.006, printed)
      expectClose(anchor.hookMm, median(rows.map((row) => row.hookMm!)), 1e-9, "hooks are exact")
    }
    const perHook = withYarnAndHook.map((row) => row.widthMm! / row.hookMm!)
    expectClose(stitches.widthPerHook, median(perHook), 0.01, "1.43 to 1.44 by stitch")
  })

  it("grows with the hook between what gauges, a row experiment and a disc experiment show", () => {
    const fitted = exponentWithinWeights()
    expectClose(fitted, 0.525, 0.005, "as the comment in default-width.ts says")
    const rowHeight = (hookMm: number) =>
      gauges.find((one) => one.stitch === "sc" && one.yarnWeight === 3 && one.hookMm === hookMm)!
        .heightMm!
    const heightExponent = Math.log(rowHeight(10) / rowHeight(3)) / Math.log(10 / 3)
    expectClose(heightExponent, 0.443, 0.005, "29 and 17 mm per four rows at 10 and 3 mm")
    const disc = read("stitches-tables").discByHook[0]
    const [small, , large] = disc.diameterCm
    const discExponent = Math.log(large / small) / Math.log(disc.hookMm[2] / disc.hookMm[0])
    expectClose(discExponent, 0.421, 0.005, "8.5 to 13.5 cm at 2 and 6 mm")
    expect(stitches.yarnHookExponent).toBeGreaterThan(discExponent)
    expect(stitches.yarnHookExponent).toBeLessThan(fitted)
  })

  it("of thread grows as its two gauges on two hooks have it", () => {
    const width = (stitch: string) =>
      gauges.find((one) => one.stitch === stitch && one.yarnWeight === 0)!.widthMm!
    // 17 hdc in 2 in with steel 8 (1.5 mm), 6 dc in 1 in with steel 1 (2.75 mm).
    const exponent = Math.log(width("dc") / width("hdc")) / Math.log(2.75 / 1.5)
    expectClose(stitches.threadHookExponent, exponent, 0.005, "the one pair there is")
    expectClose(stitches.hookFactor({ threadSize: 10 }, 3, 1.8), 0.75, 0.005, "a quarter smaller")
    expect(stitches.hookExponent({ yarnWeight: 0 })).toBe(stitches.threadHookExponent)
    expect(stitches.hookExponent({ yarnWeight: 1 })).toBe(stitches.yarnHookExponent)
  })

  it("misses a published width by 6 % and a height by 9 % in the median, both by 19 % in one of ten", () => {
    const misses = withYarnAndHook.map((row) => {
      const gauge = stitches.gaugeFrom({
        swatches: [],
        yarnWeight: row.yarnWeight!,
        hookMm: row.hookMm!,
      })
      const size = stitches.sizeOf({ basic: row.stitch as stitches.BasicStitch }, gauge, {
        turned: row.worked !== "rounds",
      })
      const leftOut = widthLeavingOut(row)
      return {
        width: Math.abs(size.widthMm / row.widthMm! - 1),
        height: Math.abs(size.heightMm / row.heightMm! - 1),
        leftOut: leftOut === undefined ? undefined : Math.abs(leftOut / row.widthMm! - 1),
      }
    })
    const line = (name: string, values: readonly number[]) =>
      `${name}: n ${values.length}, median ${(100 * median(values)).toFixed(1)} %, nine in ten within ${(100 * quantile(values, 0.9)).toFixed(1)} %`
    const widths = misses.map((miss) => miss.width)
    const heights = misses.map((miss) => miss.height)
    const leftOut = misses.map((miss) => miss.leftOut).filter((miss) => miss !== undefined)
    console.log(line("default width", widths))
    console.log(line("default height", heights))
    console.log(line("width, own row left out", leftOut))
    const reason = "the honest figure on these 56 gauges, from which the medians were taken"
    expectClose(median(widths), 0.06, 0.01, reason)
    expectClose(quantile(widths, 0.9), 0.18, 0.02, reason)
    expectClose(median(heights), 0.09, 0.01, reason)
    expectClose(quantile(heights, 0.9), 0.19, 0.02, reason)
    expectClose(Math.max(...widths), 0.47, 0.01, "fingering yarn on a 5 mm hook, from the table")
    expectClose(median(leftOut), 0.08, 0.02, "each gauge predicted by the others of its weight")
  })
})

/** The same anchor-and-power rule with the anchor counted without that row. */
function widthLeavingOut(row: (typeof withYarnAndHook)[number]): number | undefined {
  const others = withYarnAndHook.filter((one) => one !== row && one.yarnWeight === row.yarnWeight)
  if (others.length < 2) return undefined
  const width = median(others.map((one) => one.widthMm!))
  const hook = median(others.map((one) => one.hookMm!))
  return width * stitches.hookFactor({ yarnWeight: row.yarnWeight! }, hook, row.hookMm!)
}

/** Slope of log width on log hook with every yarn weight's own mean taken off. */
function exponentWithinWeights(): number {
  let above = 0
  let below = 0
  for (const weight of new Set(withYarnAndHook.map((row) => row.yarnWeight))) {
    const rows = withYarnAndHook.filter((row) => row.yarnWeight === weight)
    const mean = (value: (row: (typeof rows)[number]) => number) =>
      rows.reduce((sum, row) => sum + Math.log(value(row)), 0) / rows.length
    const width = mean((row) => row.widthMm!)
    const hook = mean((row) => row.hookMm!)
    for (const row of rows) {
      above += (Math.log(row.hookMm!) - hook) * (Math.log(row.widthMm!) - width)
      below += (Math.log(row.hookMm!) - hook) ** 2
    }
  }
  return above / below
}
