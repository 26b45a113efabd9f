import { buildDisc, type Motif } from "@roundwright/motif"
import { gaugeFrom } from "@roundwright/stitches"
import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"
import { findRemedies, keepLedger, type Remedy, severityOf } from "../src/index.ts"

const hand = gaugeFrom({
  swatches: [{ kind: { basic: "dc" }, widthMm: 5, heightMm: (5 * 12) / (2 * Math.PI) }],
  hookMm: 4,
  yarnWeight: 3,
})
const remediesFor = (motif: Motif): Remedy[] => findRemedies(motif, hand, keepLedger(motif, hand))

/** One round too full, the later ones carrying on from it. */
const waving = [12, 24, 36, 48, 60, 108, 120]

describe("remedies", () => {
  it("are none for a flat piece", () => {
    expect(remediesFor(buildDisc({ basic: "dc" }, [12, 24, 36, 48]))).toEqual([])
  })

  it("name the round that is full and a count that keeps its repeats", () => {
    const counts = remediesFor(buildDisc({ basic: "dc" }, waving)).filter(
      (remedy) => remedy.edit.kind === "count",
    )
    expect(counts[0]?.round).toBe(6)
    const edit = counts[0]!.edit
    expect(edit.kind === "count" && edit.stitches % 12).toBe(0)
    expect(counts[0]?.verdictAfter).toBe("flat")
  })

  it("promise what the changed piece then gives when it is built and judged anew", () => {
    for (const remedy of remediesFor(buildDisc({ basic: "dc" }, waving))) {
      if (remedy.edit.kind !== "count") continue
      const index = waving.findIndex((_, i) => i + 1 === remedy.round)
      const difference = remedy.edit.stitches - waving[index]!
      const counts = waving.map((count, i) => (i < index ? count : count + difference))
      const after = keepLedger(buildDisc({ basic: "dc" }, counts), hand)
      expect(after.verdict).toBe(remedy.verdictAfter)
      expectClose(
        after.rows.at(-1)!.accumulatedFullness,
        remedy.fullnessAfter,
        1e-9,
        "the same sums by two routes",
      )
    }
  })

  it("mend the whole plan where every round is off", () => {
    const motif = buildDisc({ basic: "dc" }, [17, 34, 51, 68, 85, 102])
    const best = remediesFor(motif)[0]!
    expect(best.edit.kind).toBe("increase")
    expect(best.verdictAfter).toBe("flat")
  })

  it("never make things worse and come least disturbing first among equals", () => {
    for (const counts of [waving, [12, 24, 36, 40, 44, 48], [20, 40, 60, 80]]) {
      const motif = buildDisc({ basic: "dc" }, counts)
      const before = severityOf(keepLedger(motif, hand).verdict)
      const remedies = remediesFor(motif)
      expect(remedies.length).toBeGreaterThan(0)
      remedies.forEach((remedy, i) => {
        expect(severityOf(remedy.verdictAfter)).toBeLessThan(before)
        const next = remedies[i + 1]
        if (next && severityOf(next.verdictAfter) === severityOf(remedy.verdictAfter))
          expect(next.disturbance).toBeGreaterThanOrEqual(remedy.disturbance)
      })
    }
  })

  it("leave a round alone that is full on purpose before lean ones", () => {
    expect(remediesFor(buildDisc({ basic: "dc" }, [12, 24, 36, 60, 62, 74]))).toEqual([])
  })
})
