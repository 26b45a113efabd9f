// Wordings met in everyday patterns: rings made before round 1, joins, short repeats, totals.

import { describe, expect, it } from "vitest"
import { readPattern } from "../src/index.ts"
import { comesTo, last } from "./help.ts"

describe("the ring before round 1", () => {
  it.each([
    ["Base ring: make 5 ch, join with a ss.", 5],
    ["Foundation: Chain 7, slip stitch in first chain to form a ring.", 7],
    ["Starting ring: ch 5 and join with a sl st.", 5],
    ["Ch 8 and join into a ring with a sl st.", 8],
    ["Ch 6, sl st to first ch to make a circle.", 6],
    ["To begin: ch 9, join.", 9],
  ])("%s", (line, chains) => {
    const reading = readPattern(`Terms: US\n${line}\nRnd 1: 14 sc in ring; join. (14 sc)`)
    expect(reading.problems.map((problem) => problem.message)).toEqual([])
    expect(reading.motif.centre).toEqual({ kind: "chain-ring", chains })
    expect(last(reading)).toBe("14/0/0")
  })

  it("takes no definition of a picot for a ring", () => {
    const reading = readPattern(
      "Terms: US\nPicot: ch 3, sl st in first ch.\nRnd 1: 8 sc in magic ring; join.",
    )
    expect(reading.motif.centre).toEqual({ kind: "adjustable-ring" })
  })
})

describe("joins and slip stitches", () => {
  it.each([
    ["Ch 3, dc in same st, 2 dc in each st around; sl st to top of ch 3.", "20/0/0"],
    ["3 ch, dc in same st, 2 dc in each st around; sl st in top of 3 ch.", "20/0/0"],
    ["3 ch, dc in same st, 2 dc in each st around; sl st to the top of the first 3 ch.", "20/0/0"],
  ])("%s", (round, counts) => {
    comesTo(counts, "10 sc in magic ring; join.", round)
  })

  it.each(["Sl st over to corner space.", "Sl st to corner.", "Sl st along to next corner sp."])(
    "%s",
    (slip) => {
      comesTo(
        "24/12/4",
        "Ch 4, sl st to form ring. Ch 3, 2 dc in ring, ch 3, (3 dc, ch 3) x 3 in ring. Sl st to top of ch 3.",
        `${slip} Ch 3, 2 dc, ch 3, 3 dc in same space. *(3 dc, ch 3, 3 dc) in next corner; rep from * around. Join.`,
      )
    },
  )
})
