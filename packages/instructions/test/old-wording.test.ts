// Old and terse wording, in rounds of our own: points worked back along their chain, linked decreases, fans
// told up to their top, dips between petals, growth told as a rule, chains said once between groups.

import { describe, it } from "vitest"
import { comesTo } from "./help.ts"

describe("chains worked back along", () => {
  it("are points on the edge", () => {
    comesTo(
      "30/30/6",
      "6 sc in magic ring; join.",
      "*ch 5, sc in 2nd ch from hook, hdc in next ch, dc in next 2 ch, sl st in next sc; rep from * 5 more times.",
    )
    comesTo(
      "20/16/4",
      "ch 8, join; 8 sc in ring; join.",
      "*ch 4, skip the last, over the other 3 ch: 1 sc, 1 hdc, 1 dc; 1 sc in next sc, skip 1 sc, sl st in same st; rep from * 3 more times.",
    )
  })

  it("are leaves in a ring, with their tips found by the next round", () => {
    comesTo(
      "5/40/5",
      "five leaves in a ring, each: ch 7, skip the last, over the next ch: 1 sc, 1 hdc, 2 dc, 1 hdc, 1 sc; join last leaf to first.",
      "*1 sc in tip of next leaf, ch 8; rep from * around.",
    )
  })

  it("are small points inside a loop", () => {
    comesTo(
      "48/12/4",
      "*1 sc in ring, ch 6; rep from * 3 more times.",
      "*in next ch-6 loop 2 sc, 3 dc, a point of ch 3 with (1 sc, 1 dc) back on it, 3 dc, 2 sc; rep from * 3 more times.",
    )
  })
})

describe("stitches told in few words", () => {
  it("share their legs all round", () => {
    comesTo(
      "6/24/6",
      "12 dc in magic ring; join.",
      "6 dc2tog, each over the last used dc and the 2nd dc along, ch 4 between.",
    )
  })

  it("go up to the top of a fan and down again", () => {
    comesTo(
      "35/5/5",
      "ch 4, join to form a ring; *1 dc in ring, ch 5; rep from * 4 more times.",
      "in each ch-5 sp ch 1 and a fan of 7: hdc, dc, stitch between dc and tr, tr, then down again.",
    )
  })

  it("meet in the dip between two petals", () => {
    comesTo(
      "12/24/6",
      "6 sc in magic ring.",
      "3 sc in each sc.",
      "*sc in next sc, 3 sc in next sc, sc in next sc; rep from * around.",
      "*sc2tog over the 2 sts in the dip between two petals, sc in next st, ch 4; rep from * around.",
    )
  })

  it("stand between the stitches named", () => {
    comesTo(
      "4/20/4",
      "4 sc in magic ring.",
      "(sc, 3 dc, sc) in each sc.",
      "*1 sc between the two sc of petals, ch 5; rep from * around.",
    )
  })
})

describe("growth told as a rule", () => {
  const start = [
    "6 sc in magic ring.",
    "2 sc in each sc.",
    "*sc in next sc, 2 sc in next sc; rep from * around.",
  ]

  it("is one more stitch between the increases", () => {
    comesTo("24/0/0", ...start, "one more sc between increases.")
    comesTo("24/0/0", ...start, "as Rnd 3, with 2 sc between increases.")
    comesTo("24/0/0", ...start, "continue in this way. (24 sc)")
  })

  it("is so many more each round", () => {
    comesTo("24/0/0", ...start, "continue as before, increasing 6 sts evenly in each round.")
  })
})

describe("chains and places said once", () => {
  const square = "*3 dc in ring, ch 2; rep from * 3 more times."

  it("hold between all groups", () => {
    comesTo("24/12/8", square, "(3 dc, ch 2, 3 dc) in each ch-2 sp, ch 1 between groups.")
    comesTo(
      "36/16/12",
      square,
      "*(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1; rep from * 3 more times.",
      "(3 dc, ch 2, 3 dc) corners, 3 dc in side sps, ch 1 between groups.",
    )
  })

  it("follow each corner and each side", () => {
    comesTo(
      "28/28/12",
      square,
      "*(2 dc, ch 3, 2 dc) in next ch-2 sp, ch 2; rep from * 3 more times.",
      "(2 dc, ch 3, 2 dc) in each corner, ch 2, 3 dc in each side sp, ch 2.",
    )
  })

  it("are counted where an asterisk stands before the times", () => {
    comesTo("12/0/0", "6 sc in magic ring.", "(sc, dc) in each st *6 times.")
  })

  it("close on the stitch that closed the round before", () => {
    comesTo(
      "8/40/8",
      "8 sc in magic ring; join.",
      "ch 1, sc in same st, *ch 4, sc in next sc; rep from * 6 more times; ch 1, dc in first sc.",
      "*ch 5, sc in next sp; rep from * 6 more times, end with ch 2, dc in dc.",
    )
  })
})
