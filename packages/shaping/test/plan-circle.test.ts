import { readPattern } from "@roundwright/instructions"
import { validateMotif } from "@roundwright/motif"
import { gaugeFrom } from "@roundwright/stitches"
import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { expectRelative } from "../../../test/support/close.ts"
import { discEndingAt, flatIncrease, planCircle, writeRounds } from "../src/index.ts"

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
    expect(plan.words[0]).toContain("worsted")
  })

  it("refuse what cannot be meant", () => {
    const stitches = [{ basic: "dc" }] as const
    for (const [options, code] of [
      [{ stitches: [], gauge, rounds: 3 }, "no-stitches"],
      [{ stitches, gauge }, "no-size"],
      [{ stitches, gauge, rounds: 3, acrossMm: 100 }, "two-sizes"],
      [{ stitches, gauge, rounds: 0 }, "bad-rounds"],
      [{ stitches, gauge: tradeHand("dc", 12), acrossMm: Number.NaN }, "no-size"],
      [{ stitches, gauge: tradeHand("dc", 12), acrossMm: 1e9 }, "bad-rounds"],
      [{ stitches, gauge, rounds: 3, corners: 2 }, "bad-corners"],
    ] as const)
      expect(() => planCircle(options)).toThrow(expect.objectContaining({ code }))
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
