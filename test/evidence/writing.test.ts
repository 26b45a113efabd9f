// Whether the written rounds of the data sets are fit for print, and whether the measure sees what is not.

import { readPattern } from "@roundwright/instructions"
import { describe, expect, it } from "vitest"
import { countByLetter } from "./letter-count.ts"
import { measureWriting, textsOfSets } from "./writing.ts"

describe("rounds of the data sets as written", () => {
  it("leave nothing to strike out", () => {
    const found = measureWriting(textsOfSets())
    expect(found.rounds).toBeGreaterThan(350)
    expect(found.tails / found.rounds).toBeLessThanOrEqual(0.03)
    expect(found.unfoldedRuns + found.unfoldedPlaces + found.oneTime).toBe(0)
    expect(found.unnamed).toEqual([])
    // What is left are loops closed by a tall stitch, and rounds that begin in a slip stitch.
    expect(found.rightByLetter / found.byLetter).toBeGreaterThanOrEqual(0.95)
    expect(found.refused.length / found.motifs).toBeLessThanOrEqual(0.05)
  })
})

describe("a reader by the letter", () => {
  const { motif } = readPattern(
    "Terms: US\nRnd 1: 6 sc in magic ring; join in first sc.\nRnd 2: ch 1, 2 sc in each st around; join in first sc.\nRnd 3: ch 1, sc in each st around; join.",
  )
  it.each([
    [
      "Rnd 3: ch 1, starting in same st, *2 sc in next st, sc in next st; rep from * around; join.",
      18,
    ],
    [
      "Rnd 3: ch 1, sc in same st, 2 sc in next st, *sc in next st, 2 sc in next st; rep from * 4 more times; join.",
      18,
    ],
    [
      "Rnd 3: ch 3 (counts as dc), dc in same st, *dc in next 2 sts, 2 dc in next st**, dc in next st; rep from * around, ending at **; join.",
      16,
    ],
    // One more than there are.
    ["Rnd 3: ch 1, sc in next 13 sts; join.", Number.NaN],
    ["Rnd 3: ch 2, dc in next 11 sts; join.", null],
  ])("%s", (line, count) => {
    expect(countByLetter(line, motif, 2)).toEqual(count)
  })

  it("counts sides and corners told together", () => {
    const told = "working (2 dc, ch 2, 2 dc) in each corner sp; join in top of beg ch-3."
    const { motif: square } = readPattern(
      `Terms: US\nRnd 1: ch 3 (counts as dc), 2 dc in magic ring, ch 2, *3 dc in ring, ch 2; rep from * twice more; join in top of beg ch-3.\nRnd 2: ch 3 (counts as dc), dc in each st around, ${told}`,
    )
    for (const [line, count] of [
      [`Rnd 2: ch 3 (counts as dc), dc in each st around, ${told}`, 28],
      [`Rnd 2: ch 1, starting in same st, dc in each st around, ${told}`, 28],
    ] as const)
      expect(countByLetter(line, square, 1)).toBe(count)
  })
})
