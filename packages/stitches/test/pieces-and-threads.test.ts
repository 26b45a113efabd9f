// Sizes of a piece after its rounds, and crochet cotton by number.

import { describe, expect, it } from "vitest"
import { expectClose, expectRelative } from "../../../test/support/close.ts"
import * as stitches from "../src/index.ts"
import { gauges } from "./gauges.ts"

describe("sizes of the piece", () => {
  it.each([
    ["Rnds 1-3 = 3 1/2 in", [[3, 88.9]]],
    ["First 2 rnds = 9 cm across", [[2, 90]]],
    ["9 cm after Rnd 3", [[3, 90]]],
    ['First 3 rounds measure 3½" (9 cm)', [[3, 90]]],
    ["Rounds 1 through 3 measure 4 inches in diameter", [[3, 101.6]]],
    [
      "after rnd 2, 5 cm; after rnd 4, 10 cm",
      [
        [2, 50],
        [4, 100],
      ],
    ],
    [
      "5 cm after rnd 2, 10 cm after rnd 4",
      [
        [2, 50],
        [4, 100],
      ],
    ],
    ["each motif 12 cm", []],
    ["16 sts = 10 cm", []],
    ["", []],
  ])("%s", (text, expected) => {
    const found = stitches.readPieceSizes(text)
    expect(found.map(({ round }) => round)).toEqual(expected.map(([round]) => round))
    found.forEach(({ mm }, k) => {
      expectClose(mm, expected[k]![1]!, 1e-9, "1 in = 25.4 mm")
    })
  })

  it("knows corner to corner, and is handed on by a gauge line without a problem", () => {
    expect(stitches.readPieceSizes("Rnd 5: 12 cm corner to corner")[0]!.across).toBe("corners")
    const { pieces, swatches, problems } = stitches.readGaugeLine(
      "first 3 rnds = 4 in across",
      "US",
    )
    expect(pieces.length).toBe(1)
    expect([...swatches, ...problems]).toEqual([])
  })

  it("goes before swatch, yarn and hook, and is refused when no stitch is so wide", () => {
    const input = { swatches: [], yarnWeight: 4, hookMm: 5 } as const
    const gauge = stitches.gaugeFrom({ ...input, scWidthMm: 6 })
    expect(gauge.source).toBe("piece")
    expectClose(
      stitches.sizeOf({ basic: "dc" }, gauge, { turned: false }).heightMm,
      6 * stitches.dcRatio,
      1e-9,
      "proportions stay",
    )
    expect(() => stitches.gaugeFrom({ ...input, scWidthMm: 900 })).toThrow(/900 mm wide/)
    expect(() => stitches.gaugeFrom({ ...input, scWidthMm: Number.NaN })).toThrow()
  })
})

describe("crochet cotton", () => {
  it.each([
    ["size 20 crochet cotton", 20],
    ["No. 30 thread", 30],
    ["crochet cotton size 20, weight 0", 20],
    ["bedspread cotton", 10],
    // Shade cards of pearl cotton, from memory.
    ["pearl cotton no. 5", 10],
    ["cotton, size 4 mm hook", undefined],
    ["worsted", undefined],
    ["size 37 cotton", undefined],
  ])("%s", (text, size) => {
    expect(stitches.readThreadSize(text)).toBe(size)
  })

  const row = (stitch: string, weight: number) =>
    gauges.filter((one) => one.stitch === stitch && one.yarnWeight === weight)

  it("is as wide as the gauges of size 10 it is the middle of", () => {
    const dc = row("dc", 0)[0]!
    const hdc = row("hdc", 0)[0]!
    // Steel 8 is 1.5 mm and steel 1 is 2.75 mm (hooks.ts).
    expectRelative(stitches.threadScWidth(10, 1.5), hdc.widthMm!, 0.001, "17 hdc in 2 in")
    expectRelative(
      stitches.threadScWidth(10, 2.75),
      dc.widthMm!,
      0.05,
      "another maker: 6 dc in 1 in, read to half a stitch",
    )
  })

  it("is narrower for finer thread, as filet meshes of sizes 10, 30 and 50 are", () => {
    // Widths of a third of a mesh: 12 in 1 in (1.5 mm), 24 in 1 1/2 in (1.3 mm), 36 in 2 in (1.0 mm).
    const meshes = [
      [10, 1.5, 25.4 / 12],
      [30, 1.3, 38.1 / 24],
      [50, 1, 50.8 / 36],
    ] as const
    const first = meshes[0][2] / stitches.threadScWidth(10, 1.5)
    for (const [size, hook, widthMm] of meshes)
      expectRelative(
        widthMm / stitches.threadScWidth(size, hook),
        first,
        0.06,
        "the middle of the two exponents misses each by 4 to 5 %",
      )
  })

  it("size 10 is what weight 0 means, as the trade's table says", () => {
    const plain = stitches.gaugeFrom({ swatches: [], yarnWeight: 0, hookMm: 1.5 })
    const named = stitches.gaugeFrom({ swatches: [], yarnWeight: 0, hookMm: 1.5, threadSize: 10 })
    expectClose(plain.scWidthMm, named.scWidthMm, 1e-9, "10-count crochet thread")
    expect(named.notes.join(" ")).toMatch(/size 10 cotton/)
  })
})
