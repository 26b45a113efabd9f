import { readPattern, writeRounds } from "@roundwright/instructions"
import { countRound, validateMotif } from "@roundwright/motif"
import { layOut } from "@roundwright/relaxation"
import { gaugeFrom, readGaugeLine } from "@roundwright/stitches"
import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { expectRelative } from "../../../test/support/close.ts"
import {
  circlePlan,
  discEndingAt,
  flatIncrease,
  planCircle,
  readPlannedStitches,
} from "../src/index.ts"

const gauge = gaugeFrom({ swatches: [] })
/** h/w as the trade's 6, 8 and 12 imply them (count / 2 pi): a swatch of such a hand. */
const tradeHand = (basic: "sc" | "hdc" | "dc", count: number) =>
  gaugeFrom({ swatches: [{ kind: { basic }, widthMm: 6, heightMm: (6 * count) / (2 * Math.PI) }] })

describe("flat discs", () => {
  it.each([
    ["sc", 6],
    ["hdc", 8],
    ["dc", 12],
  ] as const)("of %s take the trade's %i a round, flat", (basic, count) => {
    const own = tradeHand(basic, count)
    expectRelative(flatIncrease({ basic }, own), count, 1e-9, "2 pi h / w, closed form")
    const plan = planCircle({ stitches: [{ basic }], gauge: own, rounds: 8 })
    expect(plan.counts).toEqual(Array.from({ length: 8 }, (_, i) => count * (i + 1)))
    expect(plan.verdict).toBe("flat")
  })

  it("come out the size asked for, to half a round", () => {
    const own = tradeHand("dc", 12)
    const plan = planCircle({ stitches: [{ basic: "dc" }], gauge: own, acrossMm: 200 })
    const height = (6 * 12) / (2 * Math.PI)
    expect(Math.abs(2 * height * plan.counts.length - 200)).toBeLessThanOrEqual(height)
  })

  it("never let a fractional increase add up", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 2.5, noNaN: true }),
        fc.integer({ min: 3, max: 14 }),
        fc.boolean(),
        (ratio, rounds, stacked) => {
          const own = gaugeFrom({
            swatches: [{ kind: { basic: "sc" }, widthMm: 5, heightMm: 5 * ratio }],
          })
          const plan = planCircle({
            stitches: [{ basic: "sc" }],
            gauge: own,
            rounds,
            increases: stacked ? "stacked" : "staggered",
          })
          validateMotif(plan.motif)
          plan.counts.forEach((count, i) => {
            expect(count % plan.repeats).toBe(0)
            const within = Math.max(0.07, plan.repeats / 2 / plan.flatCounts[i]!) + 1e-9
            expect(Math.abs(count / plan.flatCounts[i]! - 1)).toBeLessThanOrEqual(within)
          })
        },
      ),
      { seed: 3, numRuns: 60 },
    )
  })

  it("stagger the increases, so that no two rounds set them over one another", () => {
    const plan = planCircle({ stitches: [{ basic: "sc" }], gauge, rounds: 7 })
    const stacked = planCircle({
      stitches: [{ basic: "sc" }],
      gauge,
      rounds: 7,
      increases: "stacked",
    })
    expect(plan.counts).toEqual(stacked.counts)
    expect(JSON.stringify(plan.motif)).not.toBe(JSON.stringify(stacked.motif))
    expect(stacked.words.join(" ")).toContain("corners")
  })

  it("mix stitches: each round by its own height", () => {
    const plan = planCircle({ stitches: [{ basic: "sc" }, { basic: "dc" }], gauge, rounds: 8 })
    expect(plan.verdict).toBe("flat")
    expect(plan.added[1]!).toBeGreaterThan(plan.added[2]!)
  })

  it("read back as they are, in both terms", () => {
    for (const terms of ["US", "UK"] as const)
      for (const corners of [0, 4, 6]) {
        const { motif } = planCircle({ stitches: [{ basic: "dc" }], gauge, rounds: 6, corners })
        const again = readPattern(`Terms: ${terms}\n${writeRounds(motif, 0, terms).join("\n")}\n`)
        expect(again.problems).toEqual([])
        expect(again.motif.rounds.map((round) => round.elements)).toEqual(
          motif.rounds.map((round) => round.elements),
        )
      }
  })

  it("say in words what is the same in each place", () => {
    const plan = planCircle({ stitches: [{ basic: "dc" }], gauge, rounds: 2 })
    expect(plan.text).toContain("dc in same st, 2 dc in each of next 11 sts")
    const wide = planCircle({ stitches: [{ basic: "sc" }], gauge, rounds: 6, corners: 3 })
    const again = readPattern(wide.text)
    expect(again.problems).toEqual([])
    expect(again.motif.rounds.map((round) => countRound(round).stitches)).toEqual(wide.counts)
  })

  it("carry the hand they were planned for, a width alone too", () => {
    for (const swatch of [
      { kind: { basic: "dc" }, widthMm: 100 / 15, heightMm: 12.5 },
      { kind: { basic: "dc" }, widthMm: 6.25 },
      { kind: { basic: "sc" }, heightMm: 5 },
    ] as const) {
      const own = gaugeFrom({ swatches: [swatch] })
      const { text } = planCircle({ stitches: [{ basic: "dc" }], gauge: own, rounds: 2 })
      const again = gaugeFrom(readPattern(text).gauge)
      expectRelative(again.scWidthMm, own.scWidthMm, 1e-3, "counts over 10 cm to two decimals")
    }
  })

  it("keep the repeats asked for and say in words which rounds depart, every n-th as such", () => {
    const own = tradeHand("sc", 7.5)
    const plan = planCircle({ stitches: [{ basic: "sc" }], gauge: own, rounds: 12, repeats: 6 })
    for (const count of plan.counts) expect(count % 6).toBe(0)
    // 1.25 repeats a round: five in four rounds.
    expect(plan.words.join(" ")).toMatch(/every 4th round from round \d+ adds 12/i)
  })

  it("plan a polygon for every number of corners that lies or blocks flat when laid out", () => {
    for (const basic of ["sc", "hdc", "dc", "tr"] as const)
      for (const corners of [3, 4, 5, 6, 8]) {
        const plan = planCircle({ stitches: [{ basic }], gauge, rounds: 6, corners })
        expect(["flat", "blocks-flat"], `${basic} ${corners}`).toContain(
          layOut(plan.motif, gauge).verdict,
        )
        expect(plan.counts.every((count) => count % corners === 0)).toBe(true)
      }
  })

  it("are published with the verdict of the laid-out shape", () => {
    const options = { stitches: [{ basic: "dc" }, { basic: "sc" }], gauge, rounds: 7 } as const
    expect(circlePlan(options).verdict).toBe(layOut(planCircle(options).motif, gauge).verdict)
  })

  it("plan a stitch of the maker's own by its swatch, written as the one most like it", () => {
    const read = readPlannedStitches(
      "sc, petal",
      "18 sc x 20 rows, 10 petal x 6 rows = 10 cm",
      "US",
    )
    expect(read.stitches).toEqual([{ basic: "sc" }, { basic: "dc" }])
    expect(read.gauge).toBe("18 sc x 20 rows, 10 dc x 6 rows = 10 cm")
    expect(read.words.join(" ")).toMatch(/"petal" is a stitch of your own: it is written dc/)
    // 10 x 6 over 10 cm: height over width 100/6 to 100/10.
    const { swatches } = readGaugeLine(read.gauge!, "US")
    expectRelative(
      flatIncrease({ basic: "dc" }, gaugeFrom({ swatches })),
      (2 * Math.PI * 10) / 6,
      1e-9,
      "2 pi h / w, closed form",
    )
    // dc is named besides: the own stitch gets another stand-in.
    const both = readPlannedStitches("dc, petal", "10 petal x 6 rows = 10 cm", "US")
    expect(both.stitches[1]).not.toEqual({ basic: "dc" })
    const uk = readPlannedStitches("petal", "10 petal x 6 rows = 10 cm", "UK")
    expect([uk.stitches, uk.gauge]).toEqual([[{ basic: "dc" }], "10 tr x 6 rows = 10 cm"])
    for (const line of [undefined, "10 dc x 6 rows = 10 cm", "10 petal = 10 cm", "nonsense petal"])
      expect(() => readPlannedStitches("petal", line, "US")).toThrow(
        expect.objectContaining({ code: "unknown-stitch" }),
      )
  })

  it("grow corners where asked: 16 dc or 8 sc a round make a square", () => {
    // The trade's square: 4 groups of 5 dc or 3 sc (rules of thumb, polygon; supergurumi.com and others).
    const solid = planCircle({ stitches: [{ basic: "dc" }], gauge, rounds: 5, corners: 4 })
    expect(solid.added.slice(1)).toEqual([16, 16, 16, 16])
    expect(solid.verdict).toBe("flat")
    const single = planCircle({ stitches: [{ basic: "sc" }], gauge, rounds: 6, corners: 4 })
    expect(single.added.slice(1)).toEqual([8, 8, 8, 8, 8])
  })

  it("take worsted yarn where no gauge is known, and say so", () => {
    const plan = planCircle({ stitches: [{ basic: "dc" }], gauge, acrossMm: 200 })
    // 200 mm at 11.6 mm a dc (twice the assumed 5.8): 8.6 rounds from the middle out.
    expect(plan.counts).toHaveLength(9)
    expect(plan.words[0]).toContain("one sc is taken")
    expect(plan.words[0]).toContain("worsted")
    const uk = planCircle({ stitches: [{ basic: "dc" }], gauge, acrossMm: 200, terms: "UK" })
    expect(uk.words[0]).toContain("one dc is taken")
  })

  it("refuse what cannot be meant", () => {
    const stitches = [{ basic: "dc" }] as const
    for (const [options, code] of [
      [{ stitches: [], gauge, rounds: 3 }, "no-stitches"],
      [{ stitches, gauge }, "no-size"],
      [{ stitches, gauge, rounds: 3, acrossMm: 100 }, "two-sizes"],
      [{ stitches: [{ basic: "sl st" }], gauge, rounds: 3 }, "slip-stitch"],
      [
        { stitches: [{ basic: "dc", gathered: { how: "together", legs: 2 } }], gauge, rounds: 3 },
        "decrease-in-list",
      ],
      [{ stitches, gauge, rounds: 3, repeats: 0 }, "bad-repeats"],
      [{ stitches, gauge, rounds: 3, repeats: 61 }, "bad-repeats"],
      [{ stitches, gauge, rounds: 3, repeats: 5, corners: 4 }, "bad-repeats"],
      [{ stitches, gauge, rounds: 0 }, "bad-rounds"],
      [{ stitches, gauge: tradeHand("dc", 12), acrossMm: Number.NaN }, "no-size"],
      [{ stitches, gauge: tradeHand("dc", 12), acrossMm: 1e9 }, "bad-rounds"],
      [{ stitches, gauge, rounds: 3, corners: 2 }, "bad-corners"],
    ] as const)
      expect(() => planCircle(options)).toThrow(expect.objectContaining({ code }))
    expect(() => planCircle({ stitches: [], gauge, rounds: 3, terms: "UK" })).toThrow(
      expect.objectContaining({ hint: expect.stringContaining("dc, htr, tr and dtr") }),
    )
  })
})

describe("a disc that ends at a count", () => {
  it("ends there, for every count from 8 to 60", () => {
    for (const basic of ["sc", "dc"] as const)
      for (let count = 8; count <= 60; count++) {
        const motif = discEndingAt({ basic }, count, gauge)
        validateMotif(motif)
        expect(motif.rounds.at(-1)!.elements).toHaveLength(count)
      }
  })
})
