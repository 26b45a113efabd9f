// The floor under the evidence: what the tool has reached against the outside world may not be lost.

import { describe, expect, it } from "vitest"
import { loadCases } from "./cases.ts"
import { judgePieces, loadBatches, reliabilityOf } from "./judged-pieces.ts"
import { readingCoverage } from "./reading-coverage.ts"
import { compareSizes } from "./size-error.ts"
import { judgeOutcomes } from "./verdict-agreement.ts"

describe("reading", () => {
  it.each([
    ["handbook-motifs", 0.6],
    ["measured-motifs", 0.6],
  ] as const)(
    "reads the rounds of %s with the right totals, none wrong in silence",
    (name, share) => {
      const coverage = readingCoverage(loadCases(name))
      expect(coverage.rounds).toBeGreaterThan(150)
      expect(coverage.right / coverage.rounds).toBeGreaterThanOrEqual(share)
      expect(coverage.silentMisreads).toBe(0)
    },
  )
})

describe("verdicts", () => {
  const outcomes = judgeOutcomes(loadCases("flatness-outcomes"))

  it("meet at least 85 % of the reported outcomes, none the opposite", () => {
    expect(outcomes.length).toBeGreaterThanOrEqual(22)
    const agree = outcomes.filter((outcome) => outcome.agrees).length
    expect(agree / outcomes.length).toBeGreaterThanOrEqual(0.85)
    expect(outcomes.filter((outcome) => outcome.opposite)).toEqual([])
  })

  it("meet nearly as large a share of the cases that fitted no constant", () => {
    const judging = outcomes.filter((outcome) => !outcome.fitted)
    expect(judging.length).toBeGreaterThanOrEqual(12)
    const agree = judging.filter((outcome) => outcome.agrees).length
    expect(agree / judging.length).toBeGreaterThanOrEqual(0.84)
  })
})

describe("the judge", () => {
  const judged = judgePieces()
  const share = (pieces: typeof judged, take: (piece: (typeof judged)[number]) => boolean) =>
    pieces.filter(take).length / pieces.length
  const agrees = ({ accept, verdict }: (typeof judged)[number]) =>
    verdict !== null && accept.includes(verdict)
  const alarms = ({ verdict }: (typeof judged)[number]) =>
    verdict === "cups" || verdict === "ruffles"

  it("calls the flat pieces of the panel flat, and gives the others their word", () => {
    const panel = judged.filter(({ set }) => set === "panel")
    const flat = panel.filter(({ accept }) => accept.includes("flat"))
    const off = panel.filter(({ accept }) => !accept.includes("flat"))
    expect(share(flat, agrees)).toBeGreaterThanOrEqual(0.9)
    expect(share(off, agrees)).toBeGreaterThanOrEqual(0.85)
    expect(off.filter(({ verdict }) => verdict === "flat")).toEqual([])
  })

  it("calls published flat pieces flat, lace as well as solid", () => {
    const published = judged.filter(({ set }) => set.endsWith("-motifs"))
    const [lace, solid] = [true, false].map((own) => published.filter((one) => one.lace === own))
    expect(lace!.length + solid!.length).toBeGreaterThan(60)
    expect(share(lace!, agrees)).toBeGreaterThanOrEqual(0.8)
    expect(share(lace!, alarms)).toBeLessThanOrEqual(0.08)
    // The aim is 0.85.
    expect(share(solid!, agrees)).toBeGreaterThanOrEqual(0.8)
    expect(share(solid!, alarms)).toBeLessThanOrEqual(0.06)
  })

  it("keeps what it reached at first look, which stands as it was", () => {
    for (const { batch, firstLook, cases } of loadBatches()) {
      expect(cases.length).toBe(firstLook.n)
      expect(cases.filter(({ accept, firstLook }) => accept.includes(firstLook)).length).toBe(
        firstLook.agree,
      )
      expect(
        share(
          judged.filter(({ set }) => set === batch),
          agrees,
        ),
      ).toBeGreaterThanOrEqual(firstLook.agree / firstLook.n)
    }
  })

  it("gives odds that are better than the base rate by a third", () => {
    const { brier, base } = reliabilityOf(judged)
    expect(brier).toBeLessThan((2 / 3) * base)
  })
})

describe("sizes", () => {
  it("are given for the motifs whose yarn or hook is known", () => {
    const sizes = compareSizes(loadCases("measured-motifs"))
    expect(sizes.length).toBeGreaterThanOrEqual(20)
    for (const size of sizes) expect(size.foundMm).toBeGreaterThan(0)
    // Held where they stand: 11 % and 29 % off, by yarn and hook alone; 10 % is the aim.
    const off = sizes.map(({ error }) => Math.abs(error)).sort((a, b) => a - b)
    expect(off[Math.floor(off.length / 2)]).toBeLessThan(0.12)
    expect(off[Math.floor(0.9 * off.length)]).toBeLessThan(0.31)
  })
})
