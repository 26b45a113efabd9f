// The floor under reading: rounds that a practised maker could work are read with the right totals, no
// wrong total goes untold, with the stated totals or without them, and clean rounds are left in peace.

import { describe, expect, it } from "vitest"
import { loadCases } from "./cases.ts"
import { readingCoverage } from "./reading-coverage.ts"

/** Least share of the complete rounds that must be right: what was asked of the reader. */
const leastRight = 0.95
/** Most false alarms per round: what was asked of the reader. */
const mostFalseAlarms = 0.02
/** Least share of known totals met with every stated total taken out of the texts: a floor under what was reached. */
const leastUnaided = 0.9

describe.each(["handbook-motifs", "measured-motifs", "flatness-outcomes"] as const)(
  "reading %s",
  (name) => {
    const coverage = readingCoverage(loadCases(name))

    it("is right for the rounds that are complete", () => {
      expect(coverage.complete).toBeGreaterThan(100)
      expect(coverage.completeRight / coverage.complete).toBeGreaterThanOrEqual(leastRight)
    })

    it("misreads nothing in silence, with the stated totals or without", () => {
      expect(coverage.silentMisreads, coverage.missed.join("\n")).toBe(0)
      expect(coverage.unaided.silentMisreads, coverage.missed.join("\n")).toBe(0)
      expect(coverage.unaided.totalsMet / coverage.withTotal).toBeGreaterThanOrEqual(leastUnaided)
    })

    it("tells every clash the facts record", () => {
      expect(coverage.clashesTold).toBe(coverage.clashes)
    })

    it("raises few false alarms", () => {
      expect(coverage.falseAlarms / coverage.rounds).toBeLessThan(mostFalseAlarms)
    })
  },
)
