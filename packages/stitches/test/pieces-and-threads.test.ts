// Sizes of a piece after its rounds, and crochet cotton by number.

import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { expectClose, expectRelative } from "../../../test/support/close.ts"
import * as stitches from "../src/index.ts"
import { gauges, read } from "./gauges.ts"

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

  it("of the finished piece is read where a line gives no other, and beside a swatch too", () => {
    const motif = stitches.readGaugeLine("each motif 12 cm square", "US")
    expect(motif.pieces.map(({ round, mm }) => [round, mm])).toEqual([["last", 120]])
    expect(motif.problems).toEqual([])
    const text = "14 dc x 8 rows = 10 cm; Rnds 1-3 = 9 cm across"
    const both = stitches.readGaugeLine(text, "US")
    expect(both.swatches.length).toBe(1)
    expect(both.problems).toEqual([])
    expect(both.pieces.map(({ round, mm }) => [round, mm])).toEqual([[3, 90]])
    const { start, end } = both.pieces[0]!.place!
    expect(text.slice(start, end)).toBe("Rnds 1-3 = 9 cm")
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
        "an exponent between the two misses each by 5 %",
      )
  })

  it("size 10 is what weight 0 means, as the trade's table says", () => {
    const plain = stitches.gaugeFrom({ swatches: [], yarnWeight: 0, hookMm: 1.5 })
    const named = stitches.gaugeFrom({ swatches: [], yarnWeight: 0, hookMm: 1.5, threadSize: 10 })
    expectClose(plain.scWidthMm, named.scWidthMm, 1e-9, "10-count crochet thread")
    expect(named.notes.join(" ")).toMatch(/size 10 cotton/)
  })
})

describe("yarn held in several strands", () => {
  const width = (input: Partial<stitches.GaugeInput>) =>
    stitches.gaugeFrom({ swatches: [], ...input }).scWidthMm

  it("is as one yarn as many times as thick as the root of the strands", () => {
    expectClose(
      width({ yarnWeight: 4, hookMm: 7, strands: 2 }) / width({ yarnWeight: 4, hookMm: 7 }),
      2 ** 0.25,
      1e-12,
      "on one hook: thickness to the power 1 - 0.5",
    )
    expectClose(
      width({ yarnWeight: 4, strands: 2 }) / width({ yarnWeight: 4 }),
      Math.SQRT2,
      1e-12,
      "on a hook as much thicker as the yarn, everything is drawn larger alike",
    )
  })

  it("lies between the weights that the trade names for two strands", () => {
    // Common practice, no source: two of sport about make worsted, two of DK worsted to bulky, two of worsted bulky to super bulky.
    for (const [single, least, most] of [
      [2, 3, 4],
      [3, 3, 5],
      [4, 5, 6],
    ] as const) {
      const hookMm = stitches.usualHookMm({ yarnWeight: single, strands: 2 })!
      const two = width({ yarnWeight: single, strands: 2 })
      expect(two).toBeGreaterThan(width({ yarnWeight: least, hookMm }))
      expect(two).toBeLessThan(width({ yarnWeight: most, hookMm }))
    }
  })

  it("is refused where no yarn is held so", () => {
    for (const strands of [0, -1, 1.5, 40, Number.NaN])
      expect(() => width({ yarnWeight: 4, strands })).toThrow(/strands/)
  })
})

describe("a hook alone", () => {
  const width = (hookMm: number) => stitches.gaugeFrom({ swatches: [], hookMm }).scWidthMm

  it("stands for the yarn that motifs name with it", () => {
    expectClose(
      width(5),
      stitches.gaugeFrom({ swatches: [], yarnWeight: 4, hookMm: 5 }).scWidthMm,
      1e-9,
      "worsted",
    )
    expectClose(width(1.9), stitches.threadScWidth(10, 1.9), 1e-9, "size 10 cotton")
  })

  it("those yarns are the ones counted in the measured motifs, of which none without a yarn was counted", () => {
    const motifs: { hook_mm?: number; yarn?: { cyc?: number; name?: string } }[] =
      read("measured-motifs")
    const named = motifs.flatMap(({ hook_mm, yarn }) => {
      const size = stitches.readThreadSize(yarn?.name ?? "")
      const what = size ?? yarn?.cyc
      return hook_mm === undefined || what === undefined
        ? []
        : [{ hook: hook_mm, size, weight: yarn?.cyc }]
    })
    const within = (least: number, most: number) =>
      named.filter(({ hook }) => hook >= least && hook <= most)
    const worsted = within(4, 6.5)
    expect(worsted.map(({ weight }) => weight)).toEqual(worsted.map(() => 4))
    expect(worsted.length).toBe(17)
    for (const { size } of within(1.3, 1.5)) expect([20, 30]).toContain(size)
    for (const { size, weight } of within(1.7, 2)) expect(weight === 1 || size === 10).toBe(true)
  })

  it("grows without a break, and with yarn and hook together beyond either end", () => {
    for (let hook = 0.6; hook < 25; hook *= 1.02) {
      const step = width(hook * 1.02) / width(hook)
      expect(step).toBeGreaterThan(1)
      expect(step).toBeLessThan(1.03)
    }
    expectClose(width(24) / width(20), 1.2, 1e-12, "in proportion")
  })
})

describe("another hand", () => {
  const pattern: stitches.GaugeInput = {
    swatches: [{ kind: { basic: "dc" }, widthMm: 6, heightMm: 12 }],
    yarnWeight: 3,
    hookMm: 4,
    pieces: [{ round: 3, mm: 90, across: "sides" }],
  }
  const sizes = (input: stitches.GaugeInput) => {
    const gauge = stitches.gaugeFrom(input)
    return [
      gauge.scWidthMm,
      stitches.sizeOf({ basic: "dc" }, gauge, { turned: false }).heightMm,
      gauge.input.pieces?.[0]?.mm,
    ]
  }

  it("that names the pattern's own yarn and hook changes nothing", () => {
    expect(stitches.inHand(pattern, { swatches: [], yarnWeight: 3, hookMm: 4 })).toEqual(pattern)
    expect(stitches.inHand(pattern, { swatches: [] })).toEqual(pattern)
    expect(stitches.inHand(pattern, { swatches: [], strands: 1 })).toEqual(pattern)
  })

  it("with another hook keeps the yarn, and what was measured follows the hook by one law", () => {
    const factor = (4.5 / 4) ** stitches.yarnHookExponent
    const before = sizes(pattern)
    sizes(stitches.inHand(pattern, { swatches: [], hookMm: 4.5 })).forEach((size, k) => {
      expectClose(size!, factor * before[k]!, 1e-9, "6.1 % from 4 to 4.5 mm")
    })
    for (const own of [
      { swatches: [], yarnWeight: 3, hookMm: 4 },
      { swatches: [], hookMm: 4 },
      { swatches: [], yarnWeight: 3 },
    ] as const) {
      const there = stitches.gaugeFrom({ hookMm: 4, ...own }).scWidthMm
      const here = stitches.gaugeFrom(stitches.inHand(own, { swatches: [], hookMm: 4.5 })).scWidthMm
      expectClose(here / there, factor, 1e-9, "with or without a swatch, with or without a yarn")
    }
    const thread = { swatches: [], threadSize: 10, yarnWeight: 0, hookMm: 3 } as const
    const finer = stitches.inHand(thread, { swatches: [], hookMm: 1.8 })
    expectClose(
      stitches.gaugeFrom(finer).scWidthMm / stitches.gaugeFrom(thread).scWidthMm,
      0.75,
      0.005,
      "thread has its own exponent",
    )
  })

  it("there and back again is where it was, by any hooks", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 15, noNaN: true }),
        fc.double({ min: 1, max: 15, noNaN: true }),
        (one, other) => {
          const by = (hookMm: number, from: stitches.GaugeInput) =>
            stitches.gaugeFrom(stitches.inHand(from, { swatches: [], hookMm })).input
          const direct = sizes(by(other, pattern))
          sizes(by(other, by(one, pattern))).forEach((size, k) => {
            expectRelative(size!, direct[k]!, 1e-9, "the law is a power")
          })
        },
      ),
    )
  })

  it("with another yarn leaves only the hook, and a piece or swatch of her own goes first", () => {
    const worsted = stitches.inHand(pattern, { swatches: [], yarnWeight: 4 })
    expect(worsted).toEqual({ swatches: [], yarnWeight: 4, hookMm: 4 })
    expect(stitches.inHand(pattern, { swatches: [], strands: 2 })).toEqual({
      swatches: [],
      yarnWeight: 3,
      strands: 2,
      hookMm: 4,
    })
    const swatches = [{ kind: { basic: "sc" }, widthMm: 7, heightMm: 7 }] as const
    expect(stitches.inHand(pattern, { swatches, hookMm: 5 })).toEqual({
      swatches,
      yarnWeight: 3,
      hookMm: 5,
    })
    const pieces = [{ round: 2, mm: 70, across: "sides" }] as const
    expect(stitches.inHand(pattern, { swatches: [], hookMm: 5, pieces })).toEqual({
      ...pattern,
      hookMm: 5,
      pieces,
    })
  })

  it("that a pattern without a yarn gets may be the yarn it was meant for", () => {
    const { yarnWeight: _, ...yarnless } = pattern
    expect(stitches.inHand(yarnless, { swatches: [], yarnWeight: 3 })).toEqual(pattern)
  })

  it("tells a swatch that yarn and hook cannot give", () => {
    const swatch = { kind: { basic: "dc" }, widthMm: 100 / 8 } as const
    const unlike = stitches.swatchUnlikeYarn({ swatches: [swatch], yarnWeight: 3, hookMm: 4 })
    expectClose(unlike!, 12.5 / 5.48, 1e-9, "8 dc in 10 cm of DK with 4 mm")
    expect(stitches.swatchUnlikeYarn(pattern)).toBeUndefined()
    expect(stitches.swatchUnlikeYarn({ swatches: [swatch] })).toBeUndefined()
  })
})
