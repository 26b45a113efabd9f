// A round that does not fit can show that the one before was taken wrongly.

import { describe, expect, it } from "vitest"
import { only, read } from "./help.ts"

describe("the round after decides", () => {
  it("whether a starting chain counts, when nothing is said", () => {
    const counting = read(
      "ch 4, join to form a ring; ch 3, 11 dc in ring; join.",
      "ch 1, *2 sc in next st, sc in next 2 sts; rep from * 3 more times; join.",
    )
    expect(counting.rounds.map((round) => round.counted?.stitches)).toEqual([12, 16])
    expect(counting.problems).toEqual([])
    const not = read(
      "ch 4, join to form a ring; ch 3, 12 dc in ring; join.",
      "ch 1, *2 sc in next st, sc in next 2 sts; rep from * 3 more times; join.",
    )
    expect(not.rounds.map((round) => round.counted?.stitches)).toEqual([12, 16])
    expect(only(not, "reading-chosen")).toMatchObject({ severity: "note", round: 1 })
    expect(not.motif.rounds[0]?.startChain).toEqual({ chains: 3, counts: false })
  })

  it("that a stated total is right and the words are not", () => {
    const reading = read(
      "6 sc in magic ring. (6 sc)",
      "*2 sc in next st, sc in next st; rep from * around. (12 sc)",
      "*sc in next st, 2 sc in next st; rep from * 5 more times. (18 sc)",
    )
    expect(only(reading, "stated-total-differs")).toMatchObject({ severity: "warning", round: 2 })
    expect(only(reading, "stated-total-differs").message).toContain("comes to 9")
    expect(only(reading, "read-with-gap")).toMatchObject({ severity: "warning", round: 2 })
    expect(reading.rounds.map((round) => round.counted?.stitches)).toEqual([6, 12, 18])
    expect(reading.rounds.map(({ assumed }) => assumed === true)).toEqual([false, true, false])
    expect(reading.motif.rounds).toHaveLength(3)
  })

  it("leaves the words of the round before alone when they fit", () => {
    const reading = read(
      "6 sc in magic ring. (6 sc)",
      "2 sc in each st. (13 sc)",
      "*sc in next st, 2 sc in next st; rep from * 5 more times. (18 sc)",
    )
    expect(
      reading.problems
        .filter((problem) => problem.severity !== "note")
        .map((problem) => problem.code),
    ).toEqual(["stated-total-differs"])
    expect(reading.motif.rounds).toHaveLength(3)
  })
})
