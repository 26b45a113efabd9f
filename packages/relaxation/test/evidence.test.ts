// What published pieces look like against what the net says.

import { buildDisc, buildPolygon } from "@roundwright/motif"
import { gaugeFrom, kind } from "@roundwright/stitches"
import { describe, expect, it } from "vitest"
import { expectClose, expectRelative } from "../../../test/support/close.ts"
import { layOut } from "../src/index.ts"

const sc = kind("sc")
/** No gauge is known: published proportions, sizes in widths of one sc. */
const unknown = gaugeFrom({ swatches: [] })
const plain = { inSpace: false } as const

// Therese de Dillmont, "Encyclopedia of Needlework" (about 1890), figs. 441 to 443, Project Gutenberg eBook 20776: engravings
// of a square (+8 sc a round), a hexagon (+12, hollow sides, drawn-out points) and a disc (+6, six dark wedges).
describe("engravings of single crochet", () => {
  it("the square of three in each corner comes out square", () => {
    const { outline } = layOut(buildPolygon(sc, 4, 8, 2, 3), unknown, plain)
    expect(outline.corners).toBe(4)
    expectRelative(
      outline.cornerReachMm / outline.sideReachMm,
      Math.SQRT2,
      0.03,
      "as near as a printed figure can be measured",
    )
    expectClose(outline.bowMm / outline.sideReachMm, 0, 0.03, "the same")
  })

  it("the disc of six increases comes out round within 3 %", () => {
    const shape = layOut(buildDisc(sc, [6, 12, 18, 24, 30, 36, 42, 48]), unknown, plain)
    const { net, flat } = shape
    const reach = net.edges
      .at(-1)!
      .nodes.map((node) => Math.hypot(flat.xy[2 * node]!, flat.xy[2 * node + 1]!))
    expectRelative(Math.min(...reach), Math.max(...reach), 0.03, "asked for")
  })

  it("the hexagon of three in each corner has hollow sides, nearer the engraving than a true hexagon", () => {
    const { outline } = layOut(buildPolygon(sc, 6, 8, 1, 3), unknown, plain)
    expect(outline.corners).toBe(6)
    expect(outline.bowMm).toBeLessThan(0)
    // Centre to the middle of a side as it lies, against centre to corner.
    const ratio = Math.cos(Math.PI / 6) + outline.bowMm / outline.cornerReachMm
    const engraving = 0.8
    expect(Math.abs(ratio - engraving)).toBeLessThan(Math.abs(ratio - Math.cos(Math.PI / 6)))
  })
})

describe("sizes stated by makers", () => {
  // A granny square measured after every round (3, 5.5, 7.5, 9.5, 11.5, 13.5 cm) fits no yarn given in print; its growth a
  // round, 2 cm from round 3 on, does not depend on it. Source row: granny-square-size-by-round of the gathered outcomes.
  it("an even square grows by the same size every round", async () => {
    const { grannySquare } = await import("./support/motifs.ts")
    const { acrossAfterRound } = layOut(grannySquare(6), unknown, plain)
    const growth = acrossAfterRound.slice(1).map((across, k) => across - acrossAfterRound[k]!)
    const measured = [2.5, 2, 2, 2, 2]
    const scale = growth.reduce((a, b) => a + b) / measured.reduce((a, b) => a + b)
    growth.forEach((value, k) => {
      // Round 1 is round to the eye and has no side to measure; what the source took for it is not told.
      if (k === 0) return
      expectClose(
        value / scale,
        measured[k]!,
        0.4,
        "measured to half a centimetre; ends of a difference",
      )
    })
  })
})

/**
 * Discs whose makers said how they lay: counts of the rounds, the verdicts that agree with the report. The series of
 * revedreams.com informed `blockableStretch`; it is listed, but is no evidence for that figure.
 */
const outcomes = [
  // "Single Crochet Shaping 1: cones to ruffles", https://revedreams.com/category/crochet/page/12; worsted, 3.75 mm.
  ...[1, 2, 3, 4, 5, 6, 7, 8, 9, 10].map((inc, k) => ({
    stitch: "sc" as const,
    counts: Array.from({ length: 6 }, (_, n) => [3, 4, 3, 4, 5, 6, 7, 8, 9, 10][k]! + n * inc),
    gauge: { yarnWeight: 4, hookMm: 3.75 } as const,
    accept: [
      ["cups"],
      ["cups"],
      ["cups"],
      ["cups"],
      ["cups"],
      ["cups", "blocks-flat", "flat"],
      ["flat", "blocks-flat"],
      ["flat", "blocks-flat"],
      ["ruffles", "blocks-flat"],
      ["ruffles"],
    ][k]!,
    informed: true,
  })),
  // http://mkcarroll.com/blog/2009/5/14/how-not-to-crochet-a-flat-circle.html (counts after the first round assumed)
  { stitch: "sc", counts: [8, 16, 24, 32], gauge: {}, accept: ["ruffles", "blocks-flat"] },
  // https://creative-capsule.blogspot.com/2020/06/how-to-crochet-flat-circle.html
  {
    stitch: "sc",
    counts: [8, 16, 24, 32],
    gauge: { yarnWeight: 3, hookMm: 4 },
    accept: ["flat", "blocks-flat"],
  },
  // https://coastalcrochet.com/2016/12/17/circles-in-double-crochet/ (not turned)
  { stitch: "sc", counts: [6, 12, 18, 24], gauge: {}, accept: ["cups", "blocks-flat", "flat"] },
  // http://hooksandloops.com/?p=558, eleven rounds, the first seven here
  {
    stitch: "dc",
    counts: [12, 24, 36, 48, 60, 72, 84],
    gauge: {},
    accept: ["flat", "blocks-flat"],
  },
  // https://3stairs.blogspot.com/2011/12/crochet-half-double-crochet-hdc-circle.html
  {
    stitch: "hdc",
    counts: [6, 12, 18, 24, 30, 36, 42],
    gauge: {},
    accept: ["flat", "blocks-flat"],
  },
  // http://indigomidge.blogspot.com/2012/08/turning-circle-into-square-when-i.html
  {
    stitch: "dc",
    counts: [12, 24, 36],
    gauge: { yarnWeight: 3, hookMm: 6 },
    accept: ["flat", "blocks-flat"],
  },
  // http://timaryart.blogspot.com/2009/03, a pseudosphere
  { stitch: "sc", counts: [6, 12, 24, 48, 96], gauge: {}, accept: ["ruffles"] },
] as const

describe("outcomes that makers reported", () => {
  // Three of 17 differ: a disc of 6 hdc a round that no published hand makes flat, and two of 8 sc a round, which lay flat in
  // their makers' hands and ruffle in the one hand that is taken everywhere (a rise of sc with a small hook met both; it was
  // withdrawn, as no pair of gauges shows it).
  it("agree four times in five, and never with the opposite", () => {
    let agreed = 0
    for (const { stitch, counts, gauge, accept } of outcomes) {
      const shape = layOut(buildDisc(kind(stitch), counts), gaugeFrom({ swatches: [], ...gauge }))
      const accepted: readonly string[] = accept
      if (accepted.includes(shape.verdict)) agreed++
      else if (shape.verdict === "cups") expect(accepted).not.toEqual(["ruffles"])
      else if (shape.verdict === "ruffles") expect(accepted).not.toEqual(["cups"])
    }
    expect(agreed / outcomes.length).toBeGreaterThanOrEqual(0.8)
  })
})
