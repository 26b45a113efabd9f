// The habits of real patterns, one by one, each on a small motif of our own: terms, labels, opening
// chains, repeats. Counts are worked out by hand: stitches/chains/spaces of the last round.

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

  it.each([
    ["", "20 sc around a 2 cm plastic ring.", 20],
    ["", "20 sc over a bone ring of 18 mm.", 18],
    ["", "20 sc around the metal ring (2,5 cm).", 25],
    ["", '20 sc into a 3/4" plastic ring.', 0.75 * 25.4],
    [
      "Materials: four 1 1/2-inch brass rings, sport yarn\n",
      "20 sc in the brass ring.",
      1.5 * 25.4,
    ],
    ["Materials: 1 wooden ring, 6 cm across\n", "20 sc in the wooden ring.", 60],
    ["Materials: a plastic ring, 22 mm\n", "20 sc into ring.", 22],
    // A hoop of two metres is no ring to start from.
    ["", "20 sc around the 200 cm metal ring.", undefined],
  ])("knows how wide a bought ring is: %s%s", (heading, words, mm) => {
    const { motif } = readPattern(`${heading}Terms: US\nRnd 1: ${words}`)
    expect(motif.centre).toEqual({
      kind: "solid-ring",
      ...(mm === undefined ? {} : { diameterMm: mm }),
    })
  })

  it("makes a loop on the edge of chains closed by a tall stitch", () => {
    const { motif } = read(
      "12 sc in magic ring; join.",
      "ch 1, *sc in next sc, ch 6, dc in 6th ch from hook, sk next sc; rep from * around; join.",
    )
    expect(motif.rounds[1]!.elements.slice(0, 2)).toMatchObject([
      { type: "stitch", kind: { basic: "sc" } },
      { type: "picot", chains: 6, closedWith: { basic: "dc" } },
    ])
  })

  it("says that a cluster on the chains just made is not counted", () => {
    const rounds = [
      "12 sc in magic ring; join.",
      "ch 1, *sc in next sc, ch 5, tr3tog in 5th ch from hook, sk next sc; rep from * around; join.",
    ]
    const { motif, problems } = read(...rounds)
    expect(motif.rounds[1]!.elements).toHaveLength(12)
    expect(problems.map(({ code }) => code)).toContain("loop-closed-by-cluster")
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
