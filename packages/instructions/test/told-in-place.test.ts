// What is not of the work, or only counted, is told under its own name and at its own words.

import { describe, expect, it } from "vitest"
import { readPattern } from "../src/index.ts"
import { pointedAt } from "./help.ts"

function told(text: string, code: string) {
  const problem = readPattern(text).problems.find((one) => one.code === code)
  return problem ? { severity: problem.severity, words: pointedAt(text, problem) } : null
}

describe("told at its own words", () => {
  it.each([
    [
      "a repeat whose beginning is not marked",
      "Rnd 1: 6 sc in magic ring. (6)\nRnd 2: sc in next st, 2 sc in next st; rep from * around. (9)",
      "repeat-start-missing",
      "note",
      "rep from * around",
    ],
    [
      "a bracket that was not opened",
      "Rnd 1: 6 sc in magic ring. (6)\nRnd 2: 2 sc in each st) around. (12)",
      "words-passed-over",
      "note",
      ") around",
    ],
    [
      "a second piece",
      "Rnd 1: 6 sc in magic ring.\nRnd 2: 2 sc in each st.\n\nRnd 1: 8 sc in magic ring.",
      "second-piece",
      "warning",
      "Rnd 1:",
    ],
    [
      "an oval",
      "Rnd 1: ch 6; sc in 2nd ch from hook and in next 3 ch, 3 sc in last ch; working along opposite side of ch, sc in next 3 ch, 2 sc in last ch. (12)",
      "worked-along-chain",
      "error",
      "Rnd 1:",
    ],
    [
      "a strip",
      "Row 1: ch 9; sc in 2nd ch from hook and in each ch across. (8)",
      "worked-along-chain",
      "error",
      "Row 1:",
    ],
    [
      "a tool named in the ending of a repeat",
      "Rnd 1: 6 sc in magic ring. (6)\nRnd 2: *2 sc in next st, sc in next st; rep from * around, ending with (sc, using a 6 mm hook, sc) in next st, sc in last st. (9)",
      "not-reckoned",
      "note",
      "using a 6 mm hook",
    ],
    [
      "a join to another chain than the first stitch ends on",
      "Rnd 1: 16 sc in magic ring. (16)\nRnd 2: ch 5 (counts as tr, ch 1), (tr in next sc, ch 1) around, join to 3rd ch.",
      "step-without-effect",
      "note",
      "join to 3rd ch",
    ],
    [
      "a sentence of talk",
      "Rnd 1: 6 sc in magic ring. (6) Hooray, marvellous progress!\nRnd 2: 2 sc in each st. (12)",
      "not-of-the-work",
      "note",
      "Hooray, marvellous progress",
    ],
    [
      "a round that begins in a space nothing led to",
      "Rnd 1: ch 4 (counts as dc, ch 1), (dc, ch 1) 7 times in magic ring; join with sl st to 3rd ch of ch-4.\nRnd 2: ch 3, 2 dc in same sp, 3 dc in each sp around; join. (24 dc)",
      "begins-in-space",
      "note",
      "in same sp",
    ],
    [
      "a round without a number",
      "Rnd 1: 6 sc in magic ring.\nRnd 2: 2 sc in each st; then one hdc round. (12)",
      "round-without-label",
      "warning",
      "one hdc round",
    ],
    [
      "a round cut short",
      "Rnd 1: 12 dc in magic ring; join.\nRnd 2: standing dc in any st,",
      "stitches-left-over",
      "warning",
      "Rnd 2:",
    ],
  ] as const)("%s", (_, text, code, severity, words) => {
    expect(told(text, code)).toEqual({ severity, words })
  })

  it("tells growth that the round does not have, with the count it would come to", () => {
    const text = "Rnd 1: 6 sc in magic ring.\nRnd 2: 2 sc in each st. (+7)"
    const problem = readPattern(text).problems.find((one) => one.code === "stated-total-differs")
    expect(problem?.message).toContain("13")
    expect(problem?.message).toContain("12")
  })
})

describe("a suspicion of UK terms", () => {
  it.each([
    [
      "a chain of 3 that a round of tr is joined to",
      "Round 1: 3ch, 11tr into magic ring, ss to top of 3ch.",
      "3ch, 11tr into magic ring, ss to top of 3ch",
    ],
    [
      "a chain of 4 standing for a dtr",
      "Round 1: 4ch (counts as 1 dtr), 15dtr into magic ring, ss to 4th ch.",
      "4ch (counts as 1 dtr",
    ],
    [
      "a chain of 5 for a tr and 2 chains",
      "Round 1: 5ch (for 1 tr and 2 ch), (1tr, 2ch) 7 times in magic ring, ss to 3rd ch.",
      "5ch (for 1 tr and 2 ch",
    ],
  ] as const)("is told at %s", (_, text, words) => {
    expect(told(text, "terms-may-be-uk")).toEqual({ severity: "warning", words })
  })

  it("is not raised by the same chains in US terms", () => {
    const text = "Round 1: ch 3, 11 dc in magic ring, sl st to top of ch 3."
    expect(told(text, "terms-may-be-uk")).toBeNull()
  })
})

describe("a figure that the round does not bear out", () => {
  const ring =
    "Rnd 1: ch 3, 2 dc in magic ring, *ch 2, 3 dc in ring; rep from * 2 more times, ch 2; join.\n"

  it("is told of stitches skipped before a space", () => {
    const skipping = (count: number) =>
      `${ring}Rnd 2: sl st to next ch-2 sp, ch 3, 2 dc in same sp, *ch 1, skip next ${count} dc, 3 dc in next ch-2 sp; rep from * 2 more times, ch 1; join.`
    expect(told(skipping(2), "step-without-effect")).toEqual({
      severity: "note",
      words: "in next ch-2 sp",
    })
    expect(told(skipping(3), "step-without-effect")).toBeNull()
  })

  it("is told of loops drawn through", () => {
    const through = (loops: number) =>
      `Rnd 1: magic ring, *(yo, insert hook in ring, draw up a loop, yo, draw through 2 loops) 3 times, yo, draw through all ${loops} loops on hook, ch 2; rep from * 7 more times; join.`
    expect(told(through(7), "figure-passed-over")).toEqual({ severity: "note", words: "7" })
    expect(told(through(4), "figure-passed-over")).toBeNull()
  })

  it("is told of increases, against the stitches they lead to", () => {
    const spread = (increases: number) =>
      `Rnd 1: 12 sc in magic ring. (12 sc)\nRnd 2: 18 sc, ${increases} increases spread evenly. (18 sc)`
    expect(told(spread(9), "figure-passed-over")?.severity).toBe("warning")
    expect(told(spread(6), "figure-passed-over")).toBeNull()
  })
})

describe("the motif", () => {
  it("is the first of several pieces", () => {
    const { motif, rounds } = readPattern(
      "Rnd 1: 6 sc in magic ring.\nRnd 2: 2 sc in each st.\n\nRnd 1: ch 5, join to form a ring; 8 sc in ring.",
    )
    expect(motif.rounds).toHaveLength(2)
    expect(motif.centre).toEqual({ kind: "adjustable-ring" })
    expect(rounds.map(({ counted }) => counted?.stitches)).toEqual([6, 12])
  })

  it("ends before a round worked along a chain, which is counted with those after it", () => {
    const { motif, rounds } = readPattern(
      "Ch 8.\nRnd 1: sc in 2nd ch from hook and in next 5 ch, 3 sc in last ch; on the other side of the chain, sc in next 5 ch, 2 sc in last ch.\nRnd 2: sc in each st around.",
    )
    expect(motif.rounds).toHaveLength(0)
    expect(rounds.map(({ counted }) => counted?.stitches)).toEqual([16, 16])
  })
})

describe("a page saved as it was", () => {
  it("is read through its marks and names of characters, places kept", () => {
    const text =
      "<li><b>Rnd&nbsp;1:</b> 6&nbsp;sc in magic ring&nbsp;&mdash;&nbsp;6&nbsp;sc.</li>\n<li><b>Rnd&nbsp;2:</b> 2&nbsp;sc in each wobble.</li>"
    const { rounds, problems } = readPattern(text)
    expect(rounds[0]?.counted?.stitches).toBe(6)
    const unread = problems.find((one) => one.code === "words-passed-over")
    expect(unread && pointedAt(text, unread)).toContain("wobble")
  })
})
