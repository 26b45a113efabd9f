// What a text leaves open is told: two readings that fit alike, counts that stand on a round in doubt, a
// first stitch left short, a loop left out at the join, and what is left to the maker.

import { describe, expect, it } from "vitest"
import { readPattern } from "../src/index.ts"
import { comesTo, doubts, last, only, read } from "./help.ts"

describe("two readings that fit alike", () => {
  const lace = [
    "8 dc in magic ring; join.",
    "ch 4 (counts as dc, ch 1), *dc in next dc, ch 1; rep from * around; join to 3rd ch.",
  ]

  it("are both told, with what each comes to", () => {
    const problem = only(
      read(...lace, "*2 dc in next st, ch 2, skip 1 st; rep from * around."),
      "two-readings",
    )
    expect(problem.severity).toBe("warning")
    expect(problem.message).toContain("8 stitches and 8 chains")
    expect(problem.message).toContain("16 stitches and 16 chains")
  })

  it("are settled by a total, or by naming the chains", () => {
    comesTo("16/16/8", ...lace, "*2 dc in next st, ch 2, skip 1 st; rep from * around. (16 dc)")
    comesTo("16/0/0", ...lace, "sc in each st and ch around.")
  })

  it("pass behind petals where there is one petal to each stitch under them", () => {
    const reading = read(
      "5 sc in magic ring.",
      "*sc in next sc, ch 4; rep from * around.",
      "(sc, 3 dc, sc) in each ch-4 sp.",
      "*sc over next sc, ch 6; rep from * around.",
    )
    expect(last(reading)).toBe("5/30/5")
    expect(doubts(reading)).toEqual(["warning two-readings"])
  })
})

describe("a round that does not go round as those before it", () => {
  const twelve = "12 dc in magic ring; join. (12 dc)"

  it("is told, and one that takes the fold up again stands on no doubt", () => {
    const reading = read(
      twelve,
      "ch 1, sc in next 5 sts, 2 sc in next st, sc in each of next 6 sts.",
      "ch 1, *sc in next st, ch 3; rep from * 11 more times, skip last st; join.",
    )
    expect(doubts(reading)).toEqual(["warning fold-lost"])
  })

  it("is no matter of doubt where a total or the words settle it", () => {
    const odd = "ch 1, sc in next 5 sts, 2 sc in next st, sc in each of next 6 sts."
    expect(doubts(read(twelve, `${odd} (13 sc)`))).toEqual([])
  })

  it("counts its starting chain where only so it goes round alike", () => {
    comesTo("24/0/0", twelve, "ch 2, dc in same st, 2 dc in each st around; join to first dc.")
  })

  it("passes over strange words that name no work with a note alone", () => {
    const reading = read(twelve, "quite smoothly zing 2 sc in each st around.")
    expect(doubts(reading)).toEqual([])
    expect(doubts(read(twelve, "zing in each st around, 2 sc in next st."))).not.toEqual([])
  })
})

describe("a round on doubtful ground", () => {
  it("is not counted until a total fixes the count again", () => {
    const reading = read(
      "8 sc in magic ring.",
      "blorf in each sc.",
      "2 sc in each sc.",
      "sc in each sc. (16 sc)",
      "sc in each sc.",
    )
    expect(doubts(reading)).toEqual(["error words-passed-over"])
    expect(reading.motif.rounds).toHaveLength(1)
    expect(reading.rounds.map(({ counted }) => counted?.stitches ?? null)).toEqual([
      8,
      null,
      null,
      16,
      16,
    ])
    expect(reading.rounds.map(({ assumed }) => assumed === true)).toEqual([
      false,
      false,
      false,
      true,
      false,
    ])
  })

  it("is told where it follows from a total that is not met", () => {
    const reading = read("8 sc in magic ring.", "2 sc in each sc. (17 sc)", "sc in each sc.")
    expect(only(reading, "stands-on-doubt").round).toBe(3)
  })

  it("is borne out by a round that fits it and not the total stated", () => {
    const reading = read(
      "8 sc in magic ring.",
      "2 sc in each sc. (17 sc)",
      "*sc in next sc, 2 sc in next sc; rep from * around.",
      "sc in each sc.",
    )
    expect(doubts(reading)).toEqual(["warning stated-total-differs"])
    expect(last(reading)).toBe("24/0/0")
  })
})

describe("a start that does not fit its round", () => {
  it("gives height only before two in each, whatever the join", () => {
    comesTo(
      "16/0/0",
      "8 hdc in magic ring; join.",
      "ch 2, 2 hdc in each st around; join with sl st to top of ch-2.",
    )
  })

  it("is told where it is said to count and leaves the first stitch short", () => {
    const rounds = ["12 dc in magic ring; join."]
    const reading = read(...rounds, "ch 3 (counts as dc), 2 dc in each st around; join.")
    expect(only(reading, "first-place-short").message).toContain("23")
    comesTo("23/0/0", ...rounds, "ch 3 (counts as dc), 2 dc in each st around; join. (23 dc)")
    comesTo(
      "24/0/0",
      ...rounds,
      "ch 3 (counts as dc), dc in same st, 2 dc in each st around; join.",
    )
  })
})

describe("a round that does not close", () => {
  const loops = ["6 sc in magic ring; join.", "*ch 5, sc in next sc; rep from * around; join."]

  it("is told when it is joined without the last loop", () => {
    const reading = read(...loops, "sc in first sp, *ch 6, sc in next sp; rep from * around; join.")
    expect(only(reading, "open-at-join").hint).toContain("ch 6")
    expect(last(reading)).toBe("6/30/5")
  })

  it("is closed by the same chains when nothing is said, and a total settles it", () => {
    expect(last(read(...loops, "sc in first sp, *ch 6, sc in next sp; rep from * around."))).toBe(
      "6/36/6",
    )
    comesTo(
      "6/36/6",
      ...loops,
      "sc in first sp, *ch 6, sc in next sp; rep from * around; join. (6 ch-6 sps)",
    )
  })
})

describe("what is left to the maker", () => {
  it.each([
    "2 sc in each sc, now and then 3 in one st to keep it flat.",
    "2 sc in each sc, fewer if the yarn is thick.",
    "2 sc in each sc, increasing where needed to keep the work flat.",
  ])("is told: %s", (round) => {
    const reading = read("8 sc in magic ring.", round)
    expect(doubts(reading)).toEqual(["warning left-to-maker"])
    expect(last(reading)).toBe("16/0/0")
  })
})

describe("headings", () => {
  it("take numbered thread for the lace weight", () => {
    const { gauge } = readPattern("Thread: crochet thread, size 10\nRnd 1: 6 sc in magic ring.")
    expect(gauge.yarnWeight).toBe(0)
  })

  it("make UK in brackets above the rounds a reason to ask, not a statement", () => {
    const reading = readPattern("Meadow Daisy (UK)\nRnd 1: 6 dc in magic ring.")
    expect(reading.termsFrom).toBe("default")
    expect(only(reading, "terms-may-be-uk").severity).toBe("warning")
  })

  it("read a key of stitches over, and do not take it for definitions", () => {
    const reading = readPattern(
      "Terms: US\nch = chain\ndc = double crochet\nRnd 1: 9 dc in magic ring.",
    )
    expect(last(reading)).toBe("9/0/0")
  })
})

describe("words that are names inside the machine", () => {
  it.each(["constructor", "toString", "__proto__", "valueOf"])(
    "are words like others: %s",
    (word) => {
      const reading = read(
        "6 sc in magic ring.",
        `2 sc in each st, ${word} in next ${word}. (12 sc)`,
      )
      expect(only(reading, "words-passed-over").severity).toBe("note")
      expect(last(reading)).toBe("12/0/0")
      for (const { message } of reading.problems) expect(message).not.toMatch(/function|object/)
    },
  )
})
