import { writeRounds } from "@roundwright/instructions"
import { countRound } from "@roundwright/motif"
import { rebuildRounds, type SeenRing } from "@roundwright/picture"
import { gaugeFrom, sizeOf } from "@roundwright/stitches"
import { describe, expect, it } from "vitest"

const gauge = gaugeFrom({ swatches: [{ kind: { basic: "dc" }, widthMm: 6, heightMm: 12 }] })
const seen = (radii: readonly number[], counts: readonly number[]): SeenRing[] =>
  radii.map((outerMm, i) => ({
    ring: i + 1,
    outerMm,
    counts: [{ count: counts[i]!, chance: 1 }],
  }))

describe("rounds rebuilt from rings", () => {
  it("of a plain disc of dc are dc", () => {
    const rebuilt = rebuildRounds(seen([12, 24.2, 36.1, 48.3], [12, 24, 36, 48]), { gauge })
    expect(rebuilt.rounds.map(({ candidates }) => candidates[0]!.stitch)).toEqual([
      "dc",
      "dc",
      "dc",
      "dc",
    ])
    expect(rebuilt.rounds.every(({ lace }) => !lace)).toBe(true)
    expect(rebuilt.motif.rounds.map((round) => countRound(round).stitches)).toEqual([
      12, 24, 36, 48,
    ])
    expect(writeRounds(rebuilt.motif)[1]).toMatch(/^Rnd 2: 2 dc in each st around/)
  })

  it("tell sc between dc by its depth", () => {
    const sc = sizeOf({ basic: "sc" }, gauge, { turned: false }).heightMm
    const rebuilt = rebuildRounds(seen([12, 24.2, 24.2 + sc, 36.2 + sc], [12, 24, 30, 42]), {
      gauge,
      scaleKnown: true,
    })
    expect(rebuilt.rounds.map(({ candidates }) => candidates[0]!.stitch)).toEqual([
      "dc",
      "dc",
      "sc",
      "dc",
    ])
  })

  it("see lace where posts stand wide, and fill the gap with chains", () => {
    const rebuilt = rebuildRounds(seen([12, 24, 36], [12, 12, 36]), { gauge })
    expect(rebuilt.rounds[1]!.lace).toBe(true)
    expect(rebuilt.rounds[1]!.candidates[0]!.chains).toBeGreaterThan(0)
    expect(rebuilt.rounds[0]!.lace).toBe(false)
  })

  it("ask one question where two ways are near, and take the answer", () => {
    // Between an hdc and a dc: neither fits well.
    const hdc = sizeOf({ basic: "hdc" }, gauge, { turned: false }).heightMm
    const rings = seen([12, 24, 24 + 0.5 * (hdc + 12)], [12, 24, 33])
    const open = rebuildRounds(rings, { gauge })
    expect(open.question).toMatchObject({ ring: 3, about: "stitch" })
    const answered = rebuildRounds(
      rings.map((ring) => (ring.ring === 3 ? { ...ring, stitch: "hdc" as const } : ring)),
      { gauge },
    )
    expect(answered.rounds[2]!.candidates[0]!.stitch).toBe("hdc")
    expect(answered.question?.ring).not.toBe(3)
  })

  it("have chances that add up to no more than 1", () => {
    for (const { candidates } of rebuildRounds(seen([11, 22, 35], [10, 20, 30]), { gauge })
      .rounds) {
      const sum = candidates.reduce((total, { score }) => total + score, 0)
      expect(sum).toBeGreaterThan(0.85)
      expect(sum).toBeLessThanOrEqual(1 + 1e-9)
    }
  })

  it("refuse rings that do not go outward, none at all, and a gauge without a size", () => {
    expect(() => rebuildRounds(seen([20, 12], [12, 12]), { gauge })).toThrow(/farther out/)
    expect(() => rebuildRounds([], { gauge })).toThrow(/no ring/)
    expect(() => rebuildRounds(seen([12], [12]), { gauge: gaugeFrom({ swatches: [] }) })).toThrow(
      /how large/,
    )
    expect(() => rebuildRounds(seen([Number.NaN], [12]), { gauge })).toThrow(/finite/)
  })
})
