// Wordings met in everyday patterns: rings made before round 1, joins, short repeats, totals.

import { describe, expect, it } from "vitest"
import { readPattern } from "../src/index.ts"
import { comesTo, doubts, last, only, pointedAt, read } from "./help.ts"

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

describe("short repeats", () => {
  it.each([
    ["inc x 7 (14)", "14/0/0"],
    ["inc 7 times (14)", "14/0/0"],
    ["inc \u00d7 7", "14/0/0"],
    ["sc x 7", "7/0/0"],
    ["inc around (14)", "14/0/0"],
    ["(inc) repeat 7 times", "14/0/0"],
  ])("%s", (round, counts) => {
    comesTo(counts, "7 sc in MR (7)", round)
  })

  it.each([
    ["(sc, inc) x 7 (21)", "21/0/0"],
    ["(sc 1, inc) repeat 7 times (21)", "21/0/0"],
    ["(sc, inc) * 7 (21)", "21/0/0"],
    ["(sc, inc) * 7", "21/0/0"],
    ["[1 sc, inc] repeat 6 more times", "21/0/0"],
    ["dec x 7 (7)", "7/0/0"],
    ["dec 7 times (7)", "7/0/0"],
  ])("%s", (round, counts) => {
    comesTo(counts, "7 sc in MR (7)", "inc x 7 (14)", round)
  })

  it("counts the first time of a bracket repeated so many times, and says nothing of it", () => {
    const reading = read("6 sc in MR", "inc around", "(sc 1, inc) repeat 6 times")
    expect(reading.problems).toEqual([])
    expect(last(reading)).toBe("18/0/0")
  })

  it("takes an asterisk before stitches for the start of a repeat", () => {
    comesTo("13/0/0", "10 sc in MR", "(sc, inc) *3 sc, inc; rep from * around.")
  })
})

describe("totals", () => {
  it("of rounds repeated in a range, after the sentence", () => {
    const reading = read(
      "10 dc in MR; join. 10 dc.",
      "ch 3, dc in same st, 2 dc in each st around; join. 20 dc.",
    )
    const longer = readPattern(
      "Terms: US\nRnd 1: 10 dc in MR; join. 10 dc.\nRnd 2: ch 3, dc in same st, 2 dc in each st around; join. 20 dc.\nRnds 3-4 Repeat Rnd 2. 40 dc, 80 dc.",
    )
    expect(reading.problems).toEqual([])
    expect(longer.problems).toEqual([])
    expect(longer.rounds.map((round) => round.stated)).toEqual([10, 20, 40, 80])
    expect(last(longer)).toBe("80/0/0")
  })

  it("of a range of rounds, told once for the last of them", () => {
    const reading = readPattern(
      "Terms: US\nR1: 9 sc in MR (9)\nR2: inc x 9 (18)\nR3-5: sc in each st around (18)",
    )
    expect(reading.problems).toEqual([])
    expect(reading.rounds.map((round) => round.stated)).toEqual([9, 18, null, null, 18])
  })

  it("after an abbreviation that ends a sentence", () => {
    const reading = readPattern("Terms: US\nRnd 1. MR, 7 sc. 7 sts\nRnd 2. 7 inc. 14 sts")
    expect(reading.problems).toEqual([])
    expect(reading.rounds[1]).toMatchObject({ stated: 14, agrees: true })
  })

  it("after stitches whose place comes first", () => {
    expect(read("In a magic ring, 9 sc (8)").rounds[0]).toMatchObject({ stated: 8, agrees: false })
  })
})

describe("rounds that end in their own way", () => {
  it("closes the last loop with the ending instead of a loop of its own", () => {
    const rounds = [
      "20 sc in MR; join. (20 sc)",
      "*Ch 6, sk 1 sc, sc in next sc; rep from * all round, ending ch 3, dc in first sc. 10 loops.",
    ]
    comesTo("10/60/10", ...rounds)
  })

  it("counts the chains skipped at the start, and reads a total after top of ch.", () => {
    const reading = read(
      "Ch 4, 2 dc in 4th ch from hook, ch 3, *3 dc in same ch, ch 3* 2 times, join with sl st in top of ch. 9 dc.",
    )
    expect(reading.problems).toEqual([])
    expect(reading.rounds[0]).toMatchObject({ stated: 9, agrees: true })
  })

  it("tells a total after top of ch. that is not met", () => {
    const reading = read(
      "Ch 4, 2 dc in 4th ch from hook, ch 3, *3 dc in same ch, ch 3* 2 times, join with sl st in top of ch. 10 dc.",
    )
    only(reading, "stated-total-differs")
  })

  it("reads a total before the piece is fastened off", () => {
    const reading = read("8 sc in MR; ss. 9 sc\nFasten off and weave in ends.")
    expect(reading.rounds[0]).toMatchObject({ stated: 9, agrees: false })
  })
})

describe("words not understood in a row", () => {
  const text =
    "Terms: US\nRnd 1: 8 sc in MR; join. (8 sc)\nRnd 2: ch 1, sc in next st, frobble the quux gently blip, sc in next st, zonk; join. (12 sc)"

  it("are one problem that spans them", () => {
    const reading = readPattern(text)
    const unread = reading.problems.filter((problem) =>
      /^(?:words-passed-over|not-of-the-work)$/.test(problem.code),
    )
    expect(unread.map((problem) => pointedAt(text, problem))).toEqual([
      "frobble the quux gently blip",
      "zonk",
    ])
  })

  it("leave the round standing for its total, with no complaint of counts that follow", () => {
    const reading = readPattern(text)
    expect(doubts(reading)).toEqual([])
    expect(only(reading, "read-with-gap").round).toBe(2)
    expect(last(reading)).toBe("12/0/0")
    expect(reading.rounds[1]).toMatchObject({ assumed: true, clean: false, stated: 12 })
  })
})

it("does not walk round and round for a slip stitch of a thousand million spaces", () => {
  const reading = read(
    "*3 dc in magic ring, ch 2; rep from * 3 more times.",
    "sl st to next 1000000000 ch-2 sps; ch 3.",
  )
  expect(reading.rounds).toHaveLength(2)
})

describe("rounds numbered as in diagrams", () => {
  it.each([
    ["1) ", "2) ", "3) "],
    ["1. ", "2. ", "3. "],
    ["(1) ", "(2) ", "(3) "],
    ["\u2460 ", "\u2461 ", "\u2462 "],
  ])("%s%s%s", (first, second, third) => {
    const reading = readPattern(
      `Terms: US\n${first}6 sc in magic ring\n${second}2 sc in each st\n${third}*sc in next st, 2 sc in next st; rep from * around`,
    )
    expect(reading.rounds.map(({ number, counted }) => [number, counted?.stitches])).toEqual([
      [1, 6],
      [2, 12],
      [3, 18],
    ])
  })
})
