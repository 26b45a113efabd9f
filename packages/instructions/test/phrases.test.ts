// The habits of real patterns, one by one, each on a small motif of our own. Counts are worked out
// by hand from the words: stitches/chains/spaces of the last round.

import { describe, expect, it } from "vitest"
import { readPattern } from "../src/index.ts"
import { comesTo, doubts, last, read } from "./help.ts"

describe("terms and spelling", () => {
  it("reads capital letters, stops inside abbreviations and split abbreviations", () => {
    comesTo("12/0/0", "CH 4, JOIN TO FORM A RING; 12 DC IN RING.")
    comesTo("12/0/0", "ch. 4, join to form a ring; 12 d.c. in ring.")
    comesTo("12/0/0", "ch 4, join to form a ring; 12 d c in ring.")
    comesTo(
      "10/0/0",
      "8 h.d.c. in magic ring.",
      "2 hdc in next st, hdc in next 3 sts, 2 hdc in next st, hdc in each st around.",
    )
  })

  it("reads old words: miss, 1st rnd, row for round, s.s., sl-st", () => {
    const text =
      "Terms: US\n1st rnd. Ch 6, join with s.s. to form a ring; 12 sc in ring.\n2nd row. *Miss 1 sc, 3 sc in next sc; rep from * around; sl-st to first sc."
    const reading = readPattern(text)
    expect(doubts(reading)).toEqual([])
    expect(last(reading)).toBe("18/0/0")
  })

  it("reads edc, esc, dtr and trtr", () => {
    comesTo(
      "16/0/0",
      "8 edc in magic ring.",
      "*dtr in next st, trtr in same st; rep from * around.",
    )
    expect(last(read("6 esc in magic ring."))).toBe("6/0/0")
  })

  it("reads seek for skip", () => {
    comesTo(
      "4/8/4",
      "8 sc in magic ring.",
      "*dc in next sc, ch 2, seek next sc; rep from * around.",
    )
  })

  it("reads typographic quotes, dashes, non-breaking spaces and the multiplication sign", () => {
    comesTo("16/0/0", "8\u00a0sc in magic ring.", "[2 sc in next st] \u00d7 8.")
    const reading = readPattern(
      "Terms: US\nRnd 1 \u2013 8 sc in magic ring.\nRnds 2\u20133: 2 sc in each st.",
    )
    expect(reading.rounds.map((round) => round.counted?.stitches)).toEqual([8, 16, 32])
  })
})

describe("labels", () => {
  it.each([
    "Rnd 1: 8 sc in magic ring.\nRnd 2: 2 sc in each st.",
    "Round 1 - 8 sc in magic ring.\nRound 2 - 2 sc in each st.",
    "R1 8 sc in magic ring.\nR2 2 sc in each st.",
    "1st round. 8 sc in magic ring.\n2nd round. 2 sc in each st.",
    "First round: 8 sc in magic ring.\nSecond round: 2 sc in each st.",
    "Round One: 8 sc in magic ring.\nRound Two: 2 sc in each st.",
    "- Rnd 1: 8 sc in magic ring.\n- Rnd 2: 2 sc in each st.",
    "* Rnd 1: 8 sc in magic ring.\n* Rnd 2: 2 sc in each st.",
    "**Rnd 1:** 8 sc in magic ring.\n**Rnd 2:** 2 sc in each st.",
    "Rnd 1 (red): 8 sc in magic ring.\nRnd 2 (blue): 2 sc in each st.",
    "Red: Rnd 1: 8 sc in magic ring.\nBlue: Rnd 2: 2 sc in each st.",
    "Rnd 1, with red: 8 sc in magic ring.\nRnd 2, with blue: 2 sc in each st.",
    "Rnd 1:\n8 sc in magic ring.\n\nRnd 2:\n2 sc in each st.",
    "Rnd 1: 8 sc in magic ring. Rnd 2: 2 sc in each st.",
    "```\nRnd 1: 8 sc in magic ring.\nRnd 2: 2 sc in\neach st.\n```",
    "> Rnd 1: 8 sc in magic ring.\n> Rnd 2: 2 sc in each st.",
  ])("reads %j", (text) => {
    const reading = readPattern(`Terms: US\n${text}`)
    expect(doubts(reading)).toEqual([])
    expect(reading.rounds.map((round) => round.counted?.stitches)).toEqual([8, 16])
  })

  it("takes 'of Rnd 1' and 'rep Rnd 2' for no label", () => {
    const reading = read(
      "8 sc in magic ring.",
      "2 sc in each st.",
      "rep Rnd 2.",
      "sc in each sc of Rnd 3.",
    )
    expect(reading.rounds.map((round) => round.counted?.stitches)).toEqual([8, 16, 32, 32])
  })

  it("writes ranges of rounds out", () => {
    const reading = readPattern(
      "Terms: US\nRnd 1: 6 sc in magic ring.\nRnds 2-4: 2 sc in each st. (12, 24, 48)",
    )
    expect(
      reading.rounds.map((round) => [round.counted?.stitches, round.stated, round.agrees]),
    ).toEqual([
      [6, null, null],
      [12, 12, true],
      [24, 24, true],
      [48, 48, true],
    ])
  })
})

describe("opening chains and joins", () => {
  const ring = "ch 4, join to form a ring; 8 sc in ring; join."

  it("counts the chain when it is said to count", () => {
    comesTo(
      "16/0/0",
      ring,
      "ch 3 (counts as dc), dc in same st, 2 dc in each st around; join with sl st to top of ch-3.",
    )
  })

  it("does not count it when it is said not to", () => {
    comesTo("16/0/0", ring, "ch 3 (does not count as a st), 2 dc in each st around; join.")
  })

  it("knows a chain that is a stitch and a space", () => {
    comesTo(
      "8/16/8",
      ring,
      "ch 5 (counts as dc, ch 2), *dc in next sc, ch 2; rep from * around; join with sl st to 3rd ch of ch-5.",
    )
  })

  it("takes a statement made once for the whole pattern", () => {
    const text =
      "Terms: US\nCh 3 at the start of a round does not count as a stitch throughout.\nRnd 1: ch 4, join to form a ring; ch 3, 12 dc in ring; join.\nRnd 2: ch 3, 2 dc in each dc around; join."
    const reading = readPattern(text)
    expect(doubts(reading)).toEqual([])
    expect(reading.rounds.map((round) => round.counted?.stitches)).toEqual([12, 24])
  })

  it("lets the total decide when nothing is said, and tells", () => {
    const counting = read("ch 4, join to form a ring; ch 3, 11 dc in ring; join. (12 dc)")
    expect(last(counting)).toBe("12/0/0")
    const not = read("ch 4, join to form a ring; ch 3, 12 dc in ring; join. (12 dc)")
    expect(last(not)).toBe("12/0/0")
    expect(not.problems.some((problem) => problem.code === "reading-chosen")).toBe(true)
  })

  it("starts the next round inside a space closed by a tall stitch", () => {
    comesTo(
      "8/40/8",
      "8 sc in magic ring; join.",
      "ch 1, sc in same st, *ch 5, sc in next sc; rep from * around, ending last rep with ch 2, dc in first sc.",
      "ch 1, sc in loop just made, *ch 5, sc in next loop; rep from * 6 more times; ch 5; join with sl st to first sc.",
    )
  })

  it("knows ch 1 and hdc said to count as a space", () => {
    const reading = read(
      "ch 4, join to form a ring; ch 3 (counts as dc), 2 dc in ring, *ch 3, 3 dc in ring; rep from * 2 more times; ch 1, hdc in top of ch-3 (counts as ch-3 sp). (12 dc, 4 ch-3 sps)",
    )
    expect(doubts(reading)).toEqual([])
    expect(reading.motif.rounds[0]?.elements.at(-1)).toEqual({
      type: "chain",
      chains: 3,
      closedWith: { basic: "hdc" },
    })
  })

  it("runs on in a spiral where nothing is joined", () => {
    const reading = read("6 sc in magic ring.", "2 sc in each st around.")
    expect(reading.motif.rounds.map((round) => round.closing)).toEqual(["spiral", "spiral"])
  })

  it("joins a new colour in any corner, space or stitch", () => {
    const square =
      "ch 4, join to form a ring; ch 3 (counts as dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * 2 more times; join."
    comesTo(
      "24/8/4",
      square,
      "join red with sl st in any ch-2 sp; (ch 3 (counts as dc), 2 dc, ch 2, 3 dc) in same sp, *(3 dc, ch 2, 3 dc) in next ch-2 sp; rep from * 2 more times; join.",
    )
    comesTo(
      "12/0/0",
      "12 sc in magic ring; join; fasten off.",
      "join yarn B in any st; ch 1, sc in same st, sc in each st around; join.",
    )
  })

  it("starts in a chain counted from the hook", () => {
    comesTo("6/0/0", "ch 2; 6 sc in 2nd ch from hook.")
    comesTo("12/0/0", "ch 4; 11 dc in 4th ch from hook (3 skipped ch count as dc); join.")
    comesTo("12/0/0", "ch 4; 12 dc in 4th ch from hook (3 skipped ch do not count); join.")
  })

  it("starts in an adjustable loop or over a bought ring", () => {
    expect(read("Make a magic ring, 8 sc in ring.").motif.centre).toEqual({
      kind: "adjustable-ring",
    })
    expect(read("20 sc around the plastic ring.").motif.centre).toEqual({ kind: "solid-ring" })
    expect(read("ch 5, join with sl st to form ring; 10 sc in ring.").motif.centre).toEqual({
      kind: "chain-ring",
      chains: 5,
    })
  })

  it("takes a ring made in a line before round 1", () => {
    const reading = readPattern(
      "Terms: US\nCh 6, join with sl st to form a ring.\nRnd 1: 12 sc in ring; join.",
    )
    expect(doubts(reading)).toEqual([])
    expect(reading.motif.centre).toEqual({ kind: "chain-ring", chains: 6 })
  })
})

describe("repeats", () => {
  const ring = "12 sc in magic ring."

  it.each([
    "*sc in next st, 2 sc in next st; rep from * around.",
    "*sc in next st, 2 sc in next st; repeat from * to end of round.",
    "*sc in next st, 2 sc in next st* 6 times.",
    "*sc in next st, 2 sc in next st*; rep from * to * around.",
    "(sc in next st, 2 sc in next st) 6 times.",
    "[sc in next st, 2 sc in next st] x6.",
    "[sc in next st, 2 sc in next st] x 6.",
    "*sc in next st, 2 sc in next st; rep from * 5 more times.",
    "*sc in next st, 2 sc in next st; rep from * 5 times more.",
    "(sc in next st, inc) 6 times.",
    "(1 sc, inc) x 6.",
    "*sc in next st, 2 sc in next st; rep from * to last 2 sts, sc in next st, 2 sc in next st.",
    "*1 sc, 2 sc in next st, rep from * around.",
  ])("reads %j", (round) => comesTo("18/0/0", ring, round))

  it("takes 'rep from * 3 times' for four in all, unless the total says otherwise", () => {
    comesTo(
      "16/0/0",
      "8 sc in magic ring.",
      "*2 sc in next st, 2 sc in next st; rep from * 3 times.",
    )
    const reading = read(
      "8 sc in magic ring.",
      "*2 sc in next st, 2 sc in next st; rep from * 4 times. (16 sc)",
    )
    expect(last(reading)).toBe("16/0/0")
    expect(reading.problems.some((problem) => problem.code === "reading-chosen")).toBe(true)
  })

  it("ends the last repeat at **", () => {
    comesTo(
      "4/8/4",
      "8 sc in magic ring; join.",
      "ch 1, sc in same st, *ch 2, sk next st**, sc in next st; rep from * around, ending last rep at **; join.",
    )
  })

  it("omits what is said to be omitted from the last repeat", () => {
    comesTo(
      "4/8/4",
      "8 sc in magic ring; join.",
      "ch 1, sc in same st, *ch 2, sk next st, sc in next st; rep from * around, omitting last sc; join with sl st to first sc.",
    )
  })

  it("reads nested marks and brackets, and daggers", () => {
    comesTo(
      "24/0/0",
      "12 sc in magic ring.",
      "*2 sc in next st, **2 sc in next st; rep from ** once more; rep from * 3 more times.",
    )
    comesTo(
      "18/0/0",
      "12 sc in magic ring.",
      "[(sc in next st) twice, (2 sc in next st) twice] 3 times.",
    )
    comesTo(
      "18/0/0",
      "12 sc in magic ring.",
      "\u2020sc in next st, 2 sc in next st; rep from \u2020 around.",
    )
  })

  it("lets a first repeat differ", () => {
    comesTo(
      "24/8/4",
      "ch 4, join to form a ring; ch 3 (counts as dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * 2 more times; join.",
      "sl st to next ch-2 sp; (ch 3 (counts as dc), 2 dc, ch 2, 3 dc) in same sp, *(3 dc, ch 2, 3 dc) in next ch-2 sp; rep from * around; join.",
    )
  })

  it("repeats rounds", () => {
    const reading = readPattern(
      "Terms: US\nRnd 1: 6 sc in magic ring.\nRnd 2: 2 sc in each st.\nRnd 3: sc in each st.\nRnds 4-7: rep Rnds 2-3.\nRnd 8: as Rnd 3.",
    )
    expect(reading.rounds.map((round) => round.counted?.stitches)).toEqual([
      6, 12, 12, 24, 24, 48, 48, 48,
    ])
  })

  it("spreads increases evenly and says so", () => {
    const reading = read("12 sc in magic ring.", "18 sc evenly, increasing 6.")
    expect(last(reading)).toBe("18/0/0")
    expect(reading.problems.map((problem) => problem.code)).toContain("spread-evenly")
  })
})

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
