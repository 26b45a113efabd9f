// The habits of real patterns, one by one, each on a small motif of our own: brackets, places, stitches,
// totals, damage. Counts are worked out by hand: stitches/chains/spaces of the last round.

import { describe, expect, it } from "vitest"
import { readPattern } from "../src/index.ts"
import { comesTo, doubts, last, read } from "./help.ts"

describe("brackets", () => {
  const ring = "ch 4, join to form a ring; *3 sc in ring, ch 2; rep from * 3 more times."

  it("tells groups, repeats, counts, asides and other sizes apart", () => {
    comesTo("24/8/4", ring, "(3 dc, ch 2, 3 dc) in each ch-2 sp around. (24 dc)")
    comesTo(
      "24/8/4",
      ring,
      "[3 dc, ch 2, 3 dc] in next ch-2 sp, [(3 dc, ch 2, 3 dc) in next ch-2 sp] 3 times. [24 dc]",
    )
    comesTo("12/0/0", ring, "sc in each sc (the spaces are left for later). (12 sc)")
    comesTo("6/0/0", "6 (8, 10) sc in magic ring.")
  })

  it("works a group into each of several spaces", () => {
    comesTo("16/8/4", ring, "(2 dc, ch 2, 2 dc) in each of next 4 ch-2 sps.")
    comesTo("16/8/4", ring, "*(2 dc, ch 2, 2 dc) in corner; rep from * 3 more times.")
  })
})

describe("places", () => {
  const ring = "12 sc in magic ring; join."

  it("knows next, same, each, every other, skipping", () => {
    comesTo(
      "24/0/0",
      ring,
      "ch 1, sc in same st, sc in same st, *2 sc in next st; rep from * around; join.",
    )
    comesTo("6/12/6", ring, "*dc in next st, ch 2, skip 1 st; rep from * around.")
    comesTo("6/0/0", ring, "sc in every other st around.")
    comesTo("15/0/0", ring, "*sc in each of next 3 sts, 2 sc in next st; rep from * around.")
  })

  it("works between stitches and between groups", () => {
    comesTo("24/0/0", ring, "2 dc in each sp between sts around.")
    comesTo(
      "36/0/0",
      ring,
      "2 dc in each st around.",
      "*3 dc in next sp between 2-dc groups; rep from * around.",
    )
    comesTo(
      "24/12/12",
      "12 dc in magic ring; join.",
      "ch 3 (counts as dc), dc in sp before next dc, ch 1, *dc in next dc, dc in sp before next dc, ch 1; rep from * around; join.",
    )
  })

  it("works into a chain and not the space, and into the centre of one", () => {
    comesTo(
      "12/36/12",
      ring,
      "*sc in next st, ch 3; rep from * around.",
      "*sc in 2nd ch of next ch-3 sp, ch 3; rep from * around.",
    )
    const reading = read(
      ring,
      "*sc in next st, ch 3; rep from * around.",
      "*sc in centre of next ch-3 sp, ch 3; rep from * around.",
    )
    expect(doubts(reading)).toEqual([])
    const first = reading.motif.rounds[2]?.elements[0]
    expect(first?.type === "stitch" ? first.anchors : null).toEqual([
      { at: "chain", round: 1, element: 1, chain: 1 },
    ])
  })

  it("works into loops, around posts and into picots", () => {
    const kinds = (round: string) => {
      const element = read(ring, round).motif.rounds[1]?.elements[0]
      return element?.type === "stitch" ? element.kind : null
    }
    expect(kinds("sc in back loop of each sc around.")).toEqual({ basic: "sc", loops: "back" })
    expect(kinds("working in front loops only, sc in each st around.")).toEqual({
      basic: "sc",
      loops: "front",
    })
    expect(kinds("sc blo in each st around.")).toEqual({ basic: "sc", loops: "back" })
    expect(kinds("FPdc around each st.")).toEqual({ basic: "dc", post: "front" })
    comesTo(
      "12/60/12",
      ring,
      "*sc in next st, picot of ch 5; rep from * around.",
      "*sc in next picot, ch 5; rep from * around.",
    )
  })

  it("works behind, into earlier rounds and into stitches skipped there", () => {
    comesTo(
      "6/24/6",
      "6 sc in magic ring.",
      "*sc in next st, ch 4; rep from * around.",
      "(sc, 3 dc, sc) in each ch-4 sp.",
      "*sc over next sc of Rnd 2, ch 4; rep from * around.",
    )
    comesTo(
      "12/0/0",
      ring,
      "*dc in next st, sk next st; rep from * around.",
      "*sc in next dc, tr in next skipped st of Rnd 1; rep from * around.",
    )
  })

  it("takes the corner spaces for corners, and says when a size named differs", () => {
    const square = "ch 4, join to form a ring; *3 dc in ring, ch 2; rep from * 3 more times; join."
    comesTo("24/12/8", square, "*(3 dc, ch 2, 3 dc) in next corner, ch 1; rep from * around.")
    const reading = read(square, "*(3 dc, ch 2, 3 dc) in next ch-1 sp; rep from * around.")
    expect(doubts(reading)).toEqual(["warning named-space-absent"])
    expect(last(reading)).toBe("24/8/4")
  })

  it("takes the middle of a group for the corner of solid work", () => {
    comesTo(
      "20/0/0",
      "ch 4, join to form a ring; 3 sc in each ch.",
      "*3 sc in the centre sc of next corner, sc in each sc to next corner; rep from * 3 more times.",
    )
    comesTo(
      "20/0/0",
      "ch 4, join to form a ring; 3 sc in each ch.",
      "sc in each sc around, 3 sc in center sc of each corner.",
    )
  })
})

describe("stitches", () => {
  const ring = "12 dc in magic ring; join."

  it("reads stitches worked together over several places or in one", () => {
    comesTo("6/0/0", ring, "(dc2tog over next 2 dc) 6 times.")
    comesTo("6/0/0", ring, "dec around.".replace("dec around", "(dec) 6 times"))
    comesTo("12/24/12", ring, "*dc3tog in next dc, ch 2; rep from * around.")
    const reading = read(
      ring,
      "*tr3tog (1 leg in next dc, 2 legs in next dc), ch 4; rep from * around.",
    )
    expect(doubts(reading)).toEqual([])
    expect(last(reading)).toBe("6/24/6")
  })

  it("takes a first cluster that starts with the chain as one cluster", () => {
    comesTo(
      "6/18/6",
      "6 sc in magic ring; join.",
      "ch 3, dc2tog in same st (counts as dc3tog), ch 3, *dc3tog in next st, ch 3; rep from * around; join.",
    )
    comesTo(
      "6/18/6",
      "6 sc in magic ring; join.",
      "ch 3, dc2tog in same st, ch 3, *dc3tog in next st, ch 3; rep from * around; join.",
    )
  })

  it("reads popcorns, puffs, bobbles and clusters", () => {
    comesTo(
      "6/12/6",
      "6 sc in magic ring.",
      "*popcorn in next st, ch 2; rep from * around. (6 popcorns)",
    )
    comesTo("6/12/6", "6 sc in magic ring.", "*puff st in next st, ch 2; rep from * around.")
    comesTo(
      "6/12/6",
      "6 sc in magic ring.",
      "*3-dc cluster in next st, ch 2; rep from * around. (6 clusters)",
    )
    comesTo("6/12/6", "6 sc in magic ring.", "*bobble of 4 dc in next st, ch 2; rep from * around.")
  })

  it("uses stitches the pattern defines", () => {
    const text =
      "Terms: US\nShell: 5 dc in same st.\nPicot: ch 4, sl st in first ch.\nRnd 1: 12 sc in magic ring.\nRnd 2: *shell in next st, sk 1 st, sc in next st, picot, sk 1 st; rep from * around."
    const reading = readPattern(text)
    expect(doubts(reading)).toEqual([])
    expect(last(reading)).toBe("18/0/0")
    expect(
      reading.motif.rounds[1]?.elements.filter((element) => element.type === "picot"),
    ).toHaveLength(3)
  })

  it("reads picots in every form", () => {
    for (const picot of [
      "picot",
      "ch-3 picot",
      "picot of ch 3",
      "ch 3, sl st in first ch",
      "ch 3, sl st in 3rd ch from hook",
      "picot (ch 3, sl st in last sc)",
    ]) {
      const reading = read("6 sc in magic ring.", `*2 sc in next st, ${picot}; rep from * around.`)
      expect(doubts(reading), picot).toEqual([])
      expect(
        reading.motif.rounds[1]?.elements.filter((element) => element.type === "picot"),
        picot,
      ).toHaveLength(6)
    }
  })

  it("reads stitches per space said in any order", () => {
    const ring2 = "*sc in ring, ch 3; rep from * 5 more times."
    comesTo("18/0/0", ring2, "3 dc in each ch-3 sp.")
    comesTo("18/0/0", ring2, "3 dc in every ch-3 sp around.")
    comesTo("18/0/0", ring2, "in each ch-3 sp 3 dc.")
    comesTo("36/12/6", ring2, "*in next ch-3 sp (3 dc, ch 2, 3 dc); rep from * around.")
  })
})

describe("totals", () => {
  it.each([
    "(24 dc)",
    "[24 dc]",
    "[24]",
    "(24)",
    "= 24 sts",
    "= 24 dc",
    "- 24 sts",
    "24 dc.",
    "24 sts at the end of the round.",
    "You should have 24 sts.",
    "(24 sts total)",
    "Total 24 sts.",
    "(24 dc made)",
  ])("reads %j", (total) => {
    const reading = read(
      "12 dc in magic ring; join.",
      `ch 3 (counts as dc), dc in same st, 2 dc in each st around; join. ${total}`,
    )
    expect(doubts(reading)).toEqual([])
    expect(reading.rounds[1]).toMatchObject({ stated: 24, agrees: true, clean: true })
  })

  it.each([
    ["(12 sc + 12 ch-3 sps; 48 sts with chains)", 12],
    ["(12 sc, 12 ch-3 sps)", 12],
    ["(12 ch-3 loops)", 12],
    ["(48 sts)", 48],
    ["(12 spaces)", 12],
  ])("reads %j", (total, stated) => {
    const reading = read(
      "12 sc in magic ring.",
      `*sc in next st, ch 3; rep from * around. ${total}`,
    )
    expect(doubts(reading)).toEqual([])
    expect(reading.rounds[1]).toMatchObject({ stated, agrees: true })
  })

  it("counts groups, petals and shells", () => {
    const reading = read(
      "*sc in ring, ch 3; rep from * 5 more times.",
      "(sc, 3 dc, sc) in each ch-3 sp. (6 petals)",
    )
    expect(reading.rounds[1]).toMatchObject({ stated: 6, agrees: true })
  })

  it("does not hold a total to its word that is not firm", () => {
    const reading = read(
      "12 sc in magic ring. (about 12 sc)",
      "sc in each st. (13 sc if one is added)",
    )
    expect(reading.rounds.map((round) => round.agrees)).toEqual([null, null])
  })

  it("tells a wrong total with both numbers and the likely slip", () => {
    const reading = read(
      "6 sc in magic ring.",
      "2 sc in each st.",
      "*sc in next st, 2 sc in next st; rep from * around. (21 sc)",
    )
    const problem = reading.problems.find((one) => one.code === "stated-total-differs")
    expect(problem?.message).toContain("21")
    expect(problem?.message).toContain("18")
    expect(problem?.hint).toBe("One repeat more (7 in all) would give 21.")
  })
})

describe("damage", () => {
  it("tells a blank round, a lost round and a round numbered twice", () => {
    expect(
      doubts(readPattern("Terms: US\nRnd 1: 6 sc in magic ring.\nRnd 2:\nRnd 3: sc in each st.")),
    ).toContain("error empty-round")
    expect(
      doubts(readPattern("Terms: US\nRnd 1: 6 sc in magic ring.\nRnd 3: sc in each st.")),
    ).toContain("warning round-missing")
    expect(
      doubts(readPattern("Terms: US\nRnd 1: 6 sc in magic ring.\nRnd 1: sc in each st.")),
    ).toContain("warning round-number-again")
  })

  it("tells a round that makes one group more than the next uses", () => {
    const reading = read(
      "ch 4, join to form a ring; *3 dc in ring, ch 2; rep from * 4 more times; join.",
      "*(3 dc, ch 2, 3 dc) in next ch-2 sp; rep from * 3 more times.",
    )
    const problem = reading.problems.find((one) => one.code === "spaces-left-over")
    expect(problem?.message).toBe(
      "The round before has 5 ch-2 spaces; this round uses 4 of them and leaves 1.",
    )
  })

  it("tells a repeat that does not divide", () => {
    const reading = read(
      "20 sc in magic ring.",
      "*sc in next st, ch 5, skip 2 sts; rep from * around.",
    )
    const problem = reading.problems.find((one) => one.code === "repeat-does-not-divide")
    expect(problem?.message).toBe(
      "The round before has 20 stitches, the repeat uses 3: 6 repeats and 2 left over.",
    )
  })

  it("tells 15 stitches that cannot give 8 popcorns evenly", () => {
    const reading = read(
      "15 dc in magic ring; join.",
      "ch 3, popcorn in same st, ch 3, *sk next st, popcorn in next st, ch 3; rep from * 6 more times; join.",
    )
    expect(doubts(reading)).toEqual(["warning uneven-at-join"])
  })
})

describe("totals that leave a choice", () => {
  it("are still held to what they leave", () => {
    const reading = read(
      "20 sc in magic ring. (20 sc)",
      "*sc in next 3 sts, 2 sc in next st; rep from * around. (between 28 and 30 sc)",
    )
    expect(doubts(reading)).toEqual(["warning stated-total-differs"])
    const fits = read(
      "20 sc in magic ring. (20 sc)",
      "*sc in next 3 sts, 2 sc in next st; rep from * around. (24 or 25 sc)",
    )
    expect(doubts(fits)).toEqual([])
  })

  it("decide whether an increase is one of the stitches named", () => {
    const added = read(
      "24 sc in magic ring.",
      "*4 sc with 1 increase in the 2nd; rep from * around. (30 sc)",
    )
    expect(last(added)).toBe("30/0/0")
    const inside = read(
      "24 sc in magic ring.",
      "*4 sc with 1 increase in the 2nd; rep from * around. (32 sc)",
    )
    expect(last(inside)).toBe("32/0/0")
  })
})
