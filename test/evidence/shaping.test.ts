// Small parts of the evidence on the inverse, so that it cannot go stale unseen; `pnpm evidence` runs it whole.

import { describe, expect, it } from "vitest"
import { breakTrials } from "./mend-breaks.ts"
import { mendTrials } from "./shaping-mends.ts"
import { scoreRecipes } from "./shaping-recipes.ts"
import { measureSquares } from "./shaping-squares.ts"
import { squaringTable } from "./shaping-table.ts"

describe("evidence on the inverse", () => {
  it("squares circles of every kind of count", () => {
    const rows = [
      ...squaringTable({ stitches: ["dc"], from: 17, to: 53, step: 36, corners: [4, 6] }),
      ...squaringTable({ stitches: ["sc"], from: 11, to: 38, step: 27, corners: [4, 8] }),
    ]
    expect(rows.filter(({ meets }) => !meets)).toEqual([])
  })

  it("is at least as straight and as flat as each published recipe", () => {
    for (const row of scoreRecipes()) {
      expect(row.straighter, `${row.id}: ${row.ours.bow} against ${row.theirs.bow}`).toBe(true)
      expect(row.flatter, row.id).toBe(true)
    }
  })

  it("measures the sc square of the handbook as square", () => {
    const square = measureSquares().find(({ id }) => id === "dillmont-441-sc-square")!
    expect(square.roundsRead).toBe(square.rounds)
    expect(Math.abs(square.bow!)).toBeLessThan(0.02)
  })

  it("lays the handbook's graded square out as far as it reads, and claims no more", () => {
    const square = measureSquares().find(({ id }) => id === "dillmont-481-flower-in-square")!
    expect(square.roundsRead).toBeGreaterThanOrEqual(6)
    expect(square.verdict).not.toBeNull()
    if (square.roundsRead < square.rounds) expect(square.bow).toBeNull()
  })

  it("finds slips put into discs, squares, hexagons and lace", () => {
    const discs = mendTrials(10, 31337)
    expect(discs.filter(({ place }) => place !== null && place <= 3).length).toBeGreaterThanOrEqual(
      8,
    )
    const breaks = breakTrials(3, 900)
    expect(breaks.length).toBeGreaterThanOrEqual(12)
    const found = breaks.filter(({ place }) => place !== null && place <= 3).length
    expect(found / breaks.length).toBeGreaterThanOrEqual(0.6)
  })
})
