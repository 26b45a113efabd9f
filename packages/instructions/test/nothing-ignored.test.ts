// No number and no word is ignored: it reaches the motif, or it is told. A total that only a rare reading comes to is
// doubted, not called agreed.

import { describe, expect, it } from "vitest"
import { type PatternReading, readPattern } from "../src/index.ts"
import { pointedAt } from "./help.ts"

const disc = (...rounds: string[]): PatternReading =>
  readPattern(
    ["6 sc in magic ring. (6 sc)", "2 sc in each st around. (12 sc)", ...rounds]
      .map((round, i) => `Rnd ${i + 1}: ${round}`)
      .join("\n"),
  )
const warned = ({ problems }: PatternReading) =>
  problems.filter(({ severity }) => severity !== "note").map(({ code }) => code)
const lastOf = ({ rounds }: PatternReading) => {
  const { counted, stated, agrees } = rounds.at(-1)!
  return [counted?.stitches, stated, agrees]
}

describe("a total", () => {
  it("that is off by the chain at the start is doubted, neither right nor wrong", () => {
    const third = (total: number) =>
      disc(`ch 1, *sc in next st, 2 sc in next st; rep from * around; join. (${total})`)
    expect(lastOf(third(19))).toEqual([18, 19, null])
    expect(warned(third(19))).toEqual(["total-met-rarely"])
    expect(lastOf(third(18))).toEqual([18, 18, true])
    expect(warned(third(18))).toEqual([])
    for (const total of [16, 17, 20, 21, 24]) {
      expect(third(total).rounds[2]!.agrees).not.toBe(true)
      expect(warned(third(total))).not.toEqual([])
    }
  })

  it.each([
    [
      "petals and the stitches of each",
      "*ch 5, sc in 2nd ch from hook, sc in next 3 ch, sl st in next sc; rep from * 11 more times.",
      ["(12 petals of 4 sts)", "(12 petals of 7 sts)", "(11 petals of 4 sts)"],
    ],
    [
      "shells",
      "*skip next st, 5 dc in next st, skip next st, sl st in next st; rep from * 2 more times.",
      ["(3 shells)", "(4 shells)", "(2 shells)"],
    ],
    [
      "shells, one of them begun by the chain",
      "ch 3, 4 dc in first st, *sl st in next st, 5 dc in next st; rep from * 4 more times, sl st in last st; join.",
      ["(6 shells)", "(7 shells)", "(5 shells)"],
    ],
    [
      "stitches and spaces",
      "*sc in next st, ch 2; rep from * around.",
      ["(12 sc, 12 ch-2 sps)", "(12 sc, 11 ch-2 sps)", "(13 sc, 12 ch-2 sps)"],
    ],
  ])("has every number in it looked at: of %s", (_, words, [right, ...wrong]) => {
    expect(warned(disc(`${words} ${right}`))).toEqual([])
    for (const total of wrong) {
      const reading = disc(`${words} ${total}`)
      expect(warned(reading), total).not.toEqual([])
      expect(reading.rounds.at(-1)!.agrees, total).not.toBe(true)
    }
  })

  it("that is met only without the chain that stands for a stitch is doubted", () => {
    const ring = (total: string) =>
      readPattern(`Terms: UK\nRnd 1: 3ch, 11tr in magic ring, ss to top of 3ch. ${total}`)
    expect(warned(ring("11tr [dc]"))).toEqual(["total-met-rarely"])
    expect(lastOf(ring("11tr [dc]"))).toEqual([11, 11, null])
    expect(warned(ring("12tr [dc]"))).toEqual([])
  })
})

describe("words that say which places are worked", () => {
  it("'every other of' is not 'each of'", () => {
    const each = disc("*2 sc in next st, sc in each of next 3 sts; rep from * around. (15 sc)")
    expect(lastOf(each)).toEqual([15, 15, true])
    const other = disc("*2 sc in next st, sc in every other of next 3 sts; rep from * around.")
    expect(other.rounds[2]!.counted!.stitches).toBeLessThan(15)
    expect(
      warned(disc("*2 sc in next st, sc in every other of next 3 sts; rep from * around. (15 sc)")),
    ).toContain("stated-total-differs")
  })

  it("so many rounds below are gone down, or it is told that there are not so many", () => {
    const below = (rounds: number) =>
      disc(
        "sc in each st around. (12 sc)",
        `*fpdc around next st ${rounds} rnds below, sc in next st; rep from * around. (12 sts)`,
      )
    const [one, two, seven] = [below(1), below(2), below(7)]
    expect([...warned(one), ...warned(two)]).toEqual([])
    expect(one.motif.rounds[3]).not.toEqual(two.motif.rounds[3])
    expect(warned(seven)).toContain("no-such-place")
  })
})

describe("a turn in the middle of a round", () => {
  it("is told at its word, in a repeat and outside", () => {
    for (const [round, column] of [
      ["*sc in next st, turn, 2 sc in next st; rep from * around. (18 sc)", 24],
      ["sc in next 5 sts, turn, sc in next 7 sts. (12 sc)", 26],
    ] as const) {
      const told = disc(round).problems.filter(({ message }) => /turned here/.test(message))
      expect(told).toMatchObject([{ code: "step-without-effect", line: 3, column, length: 4 }])
    }
    expect(disc("sc in each st around; turn. (12 sc)").problems).toEqual([])
  })
})

describe("a figure that leads nowhere is told at its own words", () => {
  const rounds = (...lines: string[]) => lines.map((line, i) => `Rnd ${i + 1}: ${line}`).join("\n")
  const ring = "12 sc in magic ring. (12 sc)"

  it.each([
    [
      "of a stitch that the chains stand for",
      rounds("ch 4, join; ch 3 (counts as 7 dc here), 11 dc in ring; join. (12 dc)"),
      "7",
    ],
    [
      "of the chains skipped",
      rounds(
        "ch 4, 11 dc in 4th ch from hook (the 5 skipped chs count as first dc); join. (12 dc)",
      ),
      "(the 5 skipped chs count as first dc)",
    ],
    [
      "of the chain a picot is closed in",
      rounds(
        ring,
        "*sc in next sc, ch 3, sl st in 9th ch from hook (picot made); rep from * around.",
      ),
      "9th",
    ],
    [
      "of the loops drawn through",
      rounds(
        "ch 4, join; *work 2 tr leaving last loop of each on hook, yo and draw through all 5 loops, ch 3; rep from * 5 more times. (6 clusters)",
      ),
      "5",
    ],
    [
      "of the stitch that is joined to",
      rounds(ring, "ch 1, sc in each st around, join to 11th sc. (12 sc)"),
      "join to 11th sc",
    ],
    [
      "of the stitches that are left to the end",
      rounds(ring, "ch 4, *skip 2 sts, dc in next st, ch 3; rep from * to last 1 st; join. "),
      "*skip 2 sts, dc in next st, ch 3; rep from * to last 1 st",
    ],
    [
      "of a round that is not worked on",
      rounds(
        ring,
        "sc in each st around.",
        "sl st in next sc of Rnd 7, *ch 5, sl st in next sc of Rnd 1; rep from * around.",
      ),
      "sl st in next sc of Rnd 7",
    ],
    [
      "of the rounds below, in the same place",
      rounds(
        ring,
        "sc in each st around.",
        "sc in next st, sc in same st 4 rnds below, sc in next 11 sts.",
      ),
      "in same st 4 rnds below",
    ],
    [
      "of the legs that a first cluster counts for",
      rounds(
        "ch 3, dc2tog in ring (counts as dc2tog), ch 3, *dc3tog in ring, ch 3; rep from * 3 more times; join.",
      ),
      "ch 3",
    ],
    [
      "of chains after the join, where the next round begins with its own",
      rounds(
        ring,
        "ch 1, sc in each st around; join, ch 3; turn. (12 sc)",
        "ch 1, sc in each st around; join. (12 sc)",
      ),
      "ch 3",
    ],
  ])("%s", (_, text, words) => {
    const told = readPattern(text).problems.filter(({ code }) =>
      /^(?:figure-passed-over|step-without-effect)$/.test(code),
    )
    expect(told.map((problem) => pointedAt(text, problem))).toEqual([words])
  })
})

describe("words that lead nowhere are told where they stand", () => {
  it.each([
    [
      "in a corner that is named again behind",
      "Rnd 1: ch 4, join; (3 sc, ch 2) 4 times in ring. (12 sc)\nRnd 2: sc in each sc around, (2 dc, ch 2, 2 dc) in corner, 3 sc in each corner sp.",
      "step-without-effect",
    ],
    [
      "in groups of so many",
      "Rnd 1: 12 sc in magic ring.\nRnd 2: 3 groups of (3 dc, using a 6 mm hook, ch 1, 3 dc), each in the 3rd of next 4 sc.",
      "not-reckoned",
    ],
    [
      "in what is skipped",
      "Rnd 1: 12 sc in magic ring.\nRnd 2: *sc in next 2 sc, ch 1; rep from * around.\nRnd 3: *sc in next ch-1 sp, ch 3, sk (sc, in back loops only, sc); rep from * around.",
      "step-without-effect",
    ],
  ])("%s", (_, text, code) => {
    expect(readPattern(text).problems.map((problem) => problem.code)).toContain(code)
  })
})
