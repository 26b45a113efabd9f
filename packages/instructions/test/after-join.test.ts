// What is told after the join begins the next round, and further wordings makers use: a ring closed in its first
// chain, lists in each of several places, pairs in one stitch, so many more of a bracket, stretches named by their marks.

import { describe, expect, it } from "vitest"
import { comesTo, doubts, read } from "./help.ts"

describe("what is told after the join", () => {
  it("is the start of the next round", () => {
    comesTo("24/0/0", "12 dc in ring, join, ch 3.", "dc in same st, 2 dc in each st around, join.")
    comesTo(
      "28/8/4",
      "ch 3, 2 dc in ring, *ch 2, 3 dc in ring; rep from * 2 more times, ch 2; join. Sl st to next ch-2 sp.",
      "ch 3, (dc, ch 2, 2 dc) in same sp, *dc in each dc to next ch-2 sp, (2 dc, ch 2, 2 dc) in ch-2 sp; rep from * 2 more times, dc in each dc; join.",
    )
  })

  it("gives way to what that round tells itself", () => {
    comesTo("24/0/0", "12 dc in ring, join, ch 3.", "ch 3, dc in same st, 2 dc in each st around.")
  })

  it("begins a round worked like it as well", () => {
    const rounds = [
      "ch 3, 2 dc in ring, *ch 2, 3 dc in ring; rep from * 2 more times, ch 2; join; sl st to next ch-2 sp.",
      "ch 3, (dc, ch 2, 2 dc) in same sp, *dc in each dc to next ch-2 sp, (2 dc, ch 2, 2 dc) in ch-2 sp; rep from * 2 more times, dc in each dc; join; sl st to next ch-2 sp.",
      "repeat round 2.",
    ]
    comesTo("44/8/4", ...rounds)
    expect(doubts(read(...rounds))).toEqual([])
  })
})

describe("wordings of every day", () => {
  const ring = "12 dc in ring. (12 dc)"

  it("close a ring in its first chain", () => {
    for (const words of [
      "join into a ring with a sl st into the first ch",
      "join to form a ring with a slip st in 1st ch",
      "join in a circle with a sl st in first ch made",
    ])
      comesTo("16/0/0", `ch 8, ${words}. Ch 3, 15 dc into ring; sl st into 3rd of first ch 3.`)
  })

  it("put a list into each of several places", () => {
    comesTo("48/12/12", ring, "in the following 12 sts: 2 dc, ch 1, 2 dc.")
    comesTo("48/12/12", ring, "in the next 12 sts work (2 dc, ch 1, 2 dc).")
  })

  it("put two stitches told with and into one place", () => {
    comesTo("16/0/0", ring, "*sc in next, dc and tr in next, sc in next; rep from * around.")
  })

  it("make so many more of what a bracket holds", () => {
    comesTo("8/24/8", "ch 3, dc2tog in ring, ch 3, work 7 more (dc3tog, ch 3) into the ring; join.")
  })

  it("name a stretch by both its marks, or by the mark where the last one stops", () => {
    comesTo("12/6/6", ring, "*2 dc in next st, ch 1*, skip next st. Repeat ** five times.")
    comesTo(
      "32/4/4",
      "*4 dc in ring, ch 3; rep from * 3 more times.",
      "sc in first 4 dc, *(2 sc, ch 1, 2 sc) in ch-3 sp**, sc in next 4 dc; rep from ** around, end at **.",
    )
  })

  it("part stitches by chains, and spread a round to its total", () => {
    comesTo("12/36/12", ring, "dc in each st around, separated by ch 3.")
    comesTo("48/0/0", ring, "sc evenly around. (48 sc)")
  })
})
