import { verdictOf } from "@roundwright/flatness"
import { readPattern } from "@roundwright/instructions"
import { validateMotif } from "@roundwright/motif"
import { gaugeFrom } from "@roundwright/stitches"
import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"
import { ovalPlan, planOval } from "../src/index.ts"

/** h/w of the trade's 6 sc a round. */
const gauge = gaugeFrom({
  swatches: [{ kind: { basic: "sc" }, widthMm: 6, heightMm: (6 * 6) / (2 * Math.PI) }],
})

describe("ovals", () => {
  it("grow by a circle's increase in all, half of it at either end", () => {
    const plan = planOval({ stitch: { basic: "sc" }, gauge, rounds: 6, chains: 12 })
    // 2 x 10 stitches along the middle, 3 more at each end every round.
    expect(plan.counts).toEqual([26, 32, 38, 44, 50, 56])
    expect(plan.motif.rounds.map((round) => round.elements.length)).toEqual(plan.counts)
    plan.flatCounts.forEach((flat, i) => {
      expectClose(plan.counts[i]!, flat, 1e-9, "closed form with whole increases")
    })
    expect(plan.verdict).toBe("flat")
    validateMotif(plan.motif)
  })

  it("are written so that every round is counted as planned, in both terms", () => {
    for (const basic of ["sc", "hdc", "dc", "tr"] as const)
      for (const terms of ["US", "UK"] as const) {
        const options = { stitch: { basic }, gauge, rounds: 5, chains: 12, terms }
        const plan = planOval(options)
        const { rounds, problems } = readPattern(plan.text)
        // That an oval's shape is not worked out is said; nothing else is wrong.
        const others = problems.filter(({ code }) => code !== "worked-along-chain")
        expect(others.filter(({ severity }) => severity === "error")).toEqual([])
        expect(rounds.map((round) => round.counted?.stitches)).toEqual(plan.counts)
        expect(rounds.every(({ agrees }) => agrees === true)).toBe(true)
      }
  })

  it("are published with their length and width where mm are known", () => {
    const own = ovalPlan({ stitch: { basic: "sc" }, gauge, rounds: 5, longerByMm: 120 })
    expectClose(own.lengthMm! - own.widthMm!, 120, 6, "one stitch width")
    expect(own.added.slice(1)).toEqual([6, 6, 6, 6])
    const bare = gaugeFrom({ swatches: [] })
    expect(
      ovalPlan({ stitch: { basic: "sc" }, gauge: bare, rounds: 5, chains: 9 }).lengthMm,
    ).toBeNull()
  })

  it("never let a fractional increase add up", () => {
    const own = gaugeFrom({ swatches: [] })
    for (const basic of ["sc", "hdc", "dc", "tr"] as const) {
      const plan = planOval({ stitch: { basic }, gauge: own, rounds: 12, chains: 9 })
      plan.flatCounts.forEach((flat, i) => {
        expectClose(
          plan.counts[i]!,
          flat,
          plan.repeats + 1e-9,
          "each end is rounded to whole repeats, to half of one at most",
        )
      })
    }
  })

  it("keep the repeats of their ends and both straight runs, and lie flat in every round", () => {
    const own = gaugeFrom({ swatches: [] })
    for (const basic of ["sc", "hdc", "dc"] as const) {
      const plan = planOval({ stitch: { basic }, gauge: own, rounds: 40, chains: 12 })
      const ends = plan.counts.map((count) => count / 2 - (plan.chains - 2))
      expect(plan.repeats).toBe({ sc: 3, hdc: 4, dc: 6 }[basic])
      expect(ends.every((end) => end % plan.repeats === 0)).toBe(true)
      expect(plan.fullness.every((fullness) => verdictOf(fullness) === "flat")).toBe(true)
      const [, second, third] = plan.text.split("\n").filter((line) => /^Rnd/.test(line))
      expect(second).toContain(`2 ${basic} in each of next ${plan.repeats} sts`)
      expect(third).toContain(`[2 ${basic} in next st, ${basic} in next st] ${plan.repeats} times`)
    }
  })

  it("come out as much longer than wide as asked, to a chain", () => {
    const plan = planOval({ stitch: { basic: "sc" }, gauge, rounds: 5, longerByMm: 120 })
    expectClose(plan.lengthMm - plan.widthMm, 120, 6, "one stitch width")
  })

  it("refuse what cannot be meant", () => {
    const stitch = { basic: "sc" } as const
    for (const [options, code] of [
      [{ stitch, gauge, rounds: 3 }, "bad-oval"],
      [{ stitch, gauge, rounds: 3, chains: 2 }, "bad-oval"],
      [{ stitch, gauge, rounds: 3, chains: 4.5 }, "bad-oval"],
      [{ stitch, gauge, rounds: 3, chains: 1001 }, "bad-oval"],
      [{ stitch, gauge, rounds: 3, chains: 9_999_999 }, "bad-oval"],
      [{ stitch, gauge, rounds: 3, chains: 1e308 }, "bad-oval"],
      [{ stitch, gauge, rounds: 3, chains: Number.POSITIVE_INFINITY }, "bad-oval"],
      [{ stitch, gauge, rounds: 3, longerByMm: 1e308 }, "bad-oval"],
      [{ stitch, gauge, rounds: 3, longerByMm: Number.NaN }, "bad-oval"],
      [{ stitch, gauge, rounds: 61, chains: 9 }, "bad-rounds"],
      [{ stitch, gauge, rounds: 0, chains: 9 }, "bad-rounds"],
      [{ stitch, gauge: gaugeFrom({ swatches: [] }), rounds: 3, longerByMm: 80 }, "no-gauge"],
    ] as const)
      expect(() => planOval(options)).toThrow(expect.objectContaining({ code }))
  })
})
