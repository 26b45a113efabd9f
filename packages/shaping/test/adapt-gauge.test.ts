import { buildDisc } from "@roundwright/motif"
import { gaugeFrom } from "@roundwright/stitches"
import { describe, expect, it } from "vitest"
import { expectClose, expectRelative } from "../../../test/support/close.ts"
import { adaptGauge } from "../src/index.ts"

const swatch = (widthMm: number, heightMm: number) =>
  gaugeFrom({ swatches: [{ kind: { basic: "dc" }, widthMm, heightMm }] })
const motif = buildDisc({ basic: "dc" }, [12, 24, 36, 48, 60])

describe("another yarn or hook", () => {
  it("changes nothing where the gauge is the same", () => {
    const same = adaptGauge(swatch(7, 13.4), swatch(7, 13.4), motif)
    expect(same.stitchesMore).toBe(0)
    expect(same.roundsMore).toBe(0)
    expectClose(same.sizeFactor!, 1, 1e-12, "the same piece")
  })

  it("changes the size only where all is scaled: rounds are the cure, not increases", () => {
    const smaller = adaptGauge(swatch(7, 13.4), swatch(5.6, 10.72), motif)
    expectRelative(smaller.sizeFactor!, 0.8, 1e-9, "every length times 0.8")
    expect(smaller.stitchesMore).toBe(0)
    // 5 rounds of 13.4 mm against rounds of 10.72 mm: 6.25 rounds.
    expect(smaller.roundsMore).toBe(1)
    expect(smaller.verdictHere).toBe(smaller.verdictThere)
  })

  it("asks for more increases where stitches are taller for their width, and how many", () => {
    const taller = adaptGauge(swatch(7, 13.4), swatch(7, 13.4 * 1.25), motif)
    expectRelative(taller.shifts[0]!.ratio, 1.25, 1e-9, "closed form")
    // Flat at the same fullness: 60 x 1.25 = 75 in the last round.
    expectClose(taller.stitchesMore, 15, 1, "rounded to whole stitches")
    expect(taller.advice.join(" ")).toContain("more increases")
    const shorter = adaptGauge(swatch(7, 13.4), swatch(7, 13.4 / 1.25), motif)
    expect(shorter.stitchesMore).toBeLessThan(0)
  })

  it("says when another hook cannot be the cause", () => {
    const here = gaugeFrom({ swatches: [], yarnWeight: 6, hookMm: 12 })
    const there = gaugeFrom({ swatches: [], yarnWeight: 3, hookMm: 4 })
    const found = adaptGauge(there, here, motif)
    expect(found.hookMm).toBeNull()
    expect(found.advice.join(" ")).toContain("too far off for another hook")
  })

  it("names a hook within reach", () => {
    const there = gaugeFrom({ swatches: [], yarnWeight: 4, hookMm: 5 })
    const here = gaugeFrom({ swatches: [], yarnWeight: 4, hookMm: 6 })
    expectClose(adaptGauge(there, here, motif).hookMm!, 5, 0.25, "half a step between hooks")
  })

  it("does not compare sizes that are unknown", () => {
    const found = adaptGauge(gaugeFrom({ swatches: [] }), swatch(7, 13.4), motif)
    expect(found.sizeFactor).toBeNull()
    expect(found.roundsMore).toBeNull()
  })
})
