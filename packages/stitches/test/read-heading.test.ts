// Headings as makers write them, in wording of our own; how published ones were read at first look is in
// test/evidence/headings.json.

import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { headingBatches, scoreOf } from "../../../test/evidence/heading-looks.ts"
import { expectClose } from "../../../test/support/close.ts"
import * as stitches from "../src/index.ts"

type Told = Partial<
  Record<"yarnWeight" | "threadSize" | "strands" | "hookMm" | "gaugeHookMm", number>
>

function told(about: stitches.HeadingAbout, text: string): Told {
  const reading = stitches.readHeading(about, text, "US")
  const keys = ["yarnWeight", "threadSize", "strands", "hookMm", "gaugeHookMm"] as const
  return Object.fromEntries(
    keys.flatMap((key) => (reading[key] ? [[key, reading[key].value]] : [])),
  )
}

describe("yarn and hook of a heading", () => {
  it.each<[stitches.HeadingAbout, string, Told]>([
    ["yarn", "sport, Hook: 3.5 mm", { yarnWeight: 2, hookMm: 3.5 }],
    ["yarn", "worsted (4)", { yarnWeight: 4 }],
    ["yarn", "size 10 thread", { yarnWeight: 0, threadSize: 10 }],
    ["yarn", "Aran weight held double", { yarnWeight: 4, strands: 2 }],
    ["yarn", "3 strands of fingering held together", { yarnWeight: 1, strands: 3 }],
    ["yarn", "DK, doubled", { yarnWeight: 3, strands: 2 }],
    ["yarn", "double knitting wool", { yarnWeight: 3 }],
    ["yarn", "soft ww cotton", { yarnWeight: 4 }],
    ["yarn", "Med. size 4 acrylic", { yarnWeight: 4 }],
    ["materials", "Size 20 crochet thread: cream, 40 yd", { yarnWeight: 0, threadSize: 20 }],
    ["yarn", "a 3-weight cotton", { yarnWeight: 3 }],
    ["yarn", "DK/medium", {}],
    ["yarn", "mercerized crochet, size 50", { yarnWeight: 0, threadSize: 50 }],
    ["yarn", "size 3 crochet thread", { yarnWeight: 1 }],
    ["hook", "H/8 5.00mm hook", { hookMm: 5 }],
    ["hook", "US G-6 (4 mm)", { hookMm: 4 }],
    ["hook", "old UK size 8", { hookMm: 4 }],
    ["hook", "UK 000", { hookMm: 10 }],
    ["hook", "steel 7", { hookMm: 1.65 }],
    ["hook", "Steel No. 7 or 8", {}],
    ["hook", "an F or G hook", {}],
    ["hook", "B-1/2.25 mm", { hookMm: 2.25 }],
    ["hook", "H8/5mm", { hookMm: 5 }],
    ["hook", "3,50", { hookMm: 3.5 }],
    ["hook", "8", {}],
    ["hook", "4.5 mm instead of 4 mm", { hookMm: 4.5, gaugeHookMm: 4 }],
    ["materials", "DK cotton; 4 mm hook; two 10 mm safety eyes", { yarnWeight: 3, hookMm: 4 }],
    ["materials", "50 g of lace weight in cream", { yarnWeight: 0 }],
    ["gauge", "1 dc = 7.3 mm wide, 14 mm high", {}],
    ["gauge", "16 sc = 10 cm with a 5 mm hook", { gaugeHookMm: 5 }],
  ])("%s: %s", (about, text, expected) => {
    expect(told(about, text)).toEqual(expected)
  })

  it("stands where its place says", () => {
    const text = "soft sport wool held double, Hook: E-4 (3.5 mm), Size: 9 cm after Rnd 3"
    const { yarnWeight, strands, hookMm, pieces } = stitches.readHeading("yarn", text, "US")
    const at = (spot: { start: number; end: number }) => text.slice(spot.start, spot.end)
    expect([yarnWeight!, strands!, hookMm!, pieces[0]!.place!].map(at)).toEqual([
      "sport",
      "held double",
      "3.5 mm",
      "9 cm after Rnd 3",
    ])
  })

  it("lists what nothing was made of, and leaves connecting words out", () => {
    const text = "about 200 g of DK in teal, hook of 4 mm (G-6)"
    const { unused } = stitches.readHeading("materials", text, "US")
    expect(unused.map(({ start, end }) => text.slice(start, end))).toEqual(["200", "teal"])
  })
})

describe("gauge and size of a heading", () => {
  const sizes = (about: stitches.HeadingAbout, text: string) =>
    stitches
      .readHeading(about, text, "US")
      .pieces.map(({ round, mm, across }) => [round, Math.round(mm * 10) / 10, across])

  it.each<[stitches.HeadingAbout, string, (string | number)[][]]>([
    ["size", "9 cm after Rnd 3", [[3, 90, "sides"]]],
    ["size", "3 1/2 in square", [["last", 88.9, "sides"]]],
    ["size", '6" across', [["last", 152.4, "sides"]]],
    ["size", "about 4 to 5 inches", [["last", 114.3, "sides"]]],
    ["size", "12 x 12 cm (4 3/4 in)", [["last", 120, "sides"]]],
    ["size", "20 cm from tip to tip", [["last", 200, "corners"]]],
    ["size", "45 x 60 in", []],
    ["size", "small 10 cm, large 15 cm", []],
    ["gauge", "Rnds 1-3 = 3 inches", [[3, 76.2, "sides"]]],
    ["gauge", "5 rounds = 10 x 10 cm", [[5, 100, "sides"]]],
    ["gauge", "each square measures 5 in", [["last", 127, "sides"]]],
    ["gauge", "after round 4 it is 5 in across, made with a 5.5 mm (I) hook", [[4, 127, "sides"]]],
    ["gauge", "first rnds = 4 in", []],
  ])("%s: %s", (about, text, expected) => {
    expect(sizes(about, text)).toEqual(expected)
  })

  it.each([
    ["20 sts x 10 rows = 4 in (dc)", 101.6 / 20, 10.16],
    ["4 dc x 2 rows = 1 inch", 6.35, 12.7],
    ["10 d c make 1 inch; 4 rows make 1 inch. A square is 3 d c.", 2.54, 6.35],
  ])("swatch of %s", (text, widthMm, heightMm) => {
    const { swatches } = stitches.readHeading("gauge", text, "US")
    expect(swatches.map(({ value }) => value.kind)).toEqual([{ basic: "dc" }])
    expectClose(swatches[0]!.value.widthMm!, widthMm, 1e-9, "1 in = 25.4 mm")
    expectClose(swatches[0]!.value.heightMm!, heightMm, 1e-9, "1 in = 25.4 mm")
  })

  it.each<[stitches.HeadingAbout, string, string, string]>([
    ["hook", "-4 mm", "hook-impossible", "-4 mm"],
    ["hook", "1e9 mm", "hook-impossible", "1e9 mm"],
    ["hook", "lucky", "hook-not-read", "lucky"],
    ["size", "1000 km", "size-impossible", "1000 km"],
    ["size", "9 cm x 0 cm", "size-impossible", "9 cm x 0 cm"],
    ["size", "0.5 mm", "size-impossible", "0.5 mm"],
    ["yarn", "DK or aran", "yarn-not-read", "DK or aran"],
    ["gauge", "as you like", "gauge-line", "as you like"],
  ])("%s: %s is told, with a hint", (about, text, code, words) => {
    const { problems } = stitches.readHeading(about, text, "US")
    expect(problems.map((problem) => problem.code)).toEqual([code])
    const [{ start, length, hint }] = problems as [(typeof problems)[number]]
    expect(text.slice(start, start + length)).toBe(words)
    expect(hint).not.toBe("")
  })
})

describe("any heading", () => {
  const words =
    'worsted|DK|4|(4)|#4|10|size|thread|cotton|H|8|-|/|5.00mm|mm|hook|steel|US|UK|held|double|strands|2|=|x|sc|rows|in|cm|"|Rnd|3|1-3|after|corner to corner|½|1/0|1e9|:|Hook:|Size:|;|.|\n|🧶'.split(
      "|",
    )

  it("is read without a throw, in itself, and the same each time", () => {
    const text = fc
      .array(fc.oneof(fc.constantFrom(...words), fc.string({ maxLength: 6 })), { maxLength: 30 })
      .map((parts) => parts.join(" "))
    const abouts = ["yarn", "hook", "gauge", "size", "materials"] as const
    fc.assert(
      fc.property(text, fc.constantFrom(...abouts), (line, about) => {
        const reading = stitches.readHeading(about, line, "US")
        const spots = [
          ...[reading.yarnWeight, reading.threadSize, reading.strands, reading.hookMm],
          ...[...reading.unused, ...reading.pieces.map(({ place }) => place)],
          ...reading.problems.map(({ start, length }) => ({ start, end: start + length })),
        ]
        for (const spot of spots) {
          if (spot === undefined) continue
          expect(spot.start).toBeGreaterThanOrEqual(0)
          expect(spot.end).toBeLessThanOrEqual(line.length)
          expect(spot.end).toBeGreaterThanOrEqual(spot.start)
        }
        for (const { mm } of reading.pieces) expect(mm).toBeGreaterThan(0)
        expect(stitches.readHeading(about, line, "US")).toEqual(reading)
      }),
    )
  })

  it("was read right at first look in four of five published ones, batch by batch", () => {
    const scores = headingBatches().map(scoreOf)
    expect(scores.length).toBeGreaterThanOrEqual(2)
    for (const { all, right } of scores) expect(right / all).toBeGreaterThan(0.8)
  })
})
