// The floor under the edit: planted faults found at their round, sound patterns left in peace. Two patterns a kind, on motifs
// and seeds that were looked at while building; the first look at others stands in publishing-first-looks.json.

import { describe, expect, it } from "vitest"
import { developed, knownMotifs, scoreEdits } from "./edit-agreement.ts"
import { faultKinds } from "./edit-faults.ts"

/** What was asked of the edit. */
const leastFound = 0.95

describe("planted faults", () => {
  const score = scoreEdits(developed(knownMotifs()).slice(8, 24), 1, 2)

  it("are of twenty kinds at least, each planted", () => {
    expect(faultKinds.length).toBeGreaterThanOrEqual(20)
    for (const { name, planted } of score.byKind) expect(planted, name).toBe(2)
  })

  it("are found at their round", () => {
    expect(score.found / score.planted, score.missed.join("\n")).toBeGreaterThanOrEqual(leastFound)
  })

  it("and sound patterns are told hardly ever that something must be mended", () => {
    expect(score.falseMends).toBeLessThanOrEqual(Math.ceil(score.sound / 10))
  })
})
