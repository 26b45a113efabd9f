// Every problem has its exact place, and no input breaks the reader.

import { describe, expect, it } from "vitest"
import { readPattern } from "../src/index.ts"
import { doubts, only, pointedAt, read } from "./help.ts"

describe("places", () => {
  it("points at a misspelt word and says what it is taken for", () => {
    const text =
      "Terms: US\nRnd 1: 6 sc in magic ring.\nRnd 2: 2 sc in eahc st.\nRnd 3: sc in each st."
    const reading = readPattern(text)
    const problem = only(reading, "taken-for")
    expect(problem).toMatchObject({
      severity: "note",
      round: 2,
      line: 3,
      column: 16,
      length: 4,
      hint: 'Write "each" if that is meant.',
    })
    expect(pointedAt(text, problem)).toBe("eahc")
    expect(reading.rounds.map(({ counted }) => counted?.stitches)).toEqual([6, 12, 12])
  })

  it("points at the words without which a round says not how it goes", () => {
    const text =
      "Terms: US\nRnd 1: 6 sc in magic ring.\nRnd 2: 2 sc in wibbled st.\nRnd 3: sc in each st."
    const reading = readPattern(text)
    const problem = only(reading, "words-passed-over")
    expect(problem).toMatchObject({ severity: "error", round: 2, line: 3 })
    expect(pointedAt(text, problem)).toContain("wibbled")
    expect(problem.hint).toContain("state the round's total")
    expect(reading.motif.rounds).toHaveLength(1)
    expect(reading.rounds.map(({ counted }) => counted)).toEqual([
      { stitches: 6, chains: 0, spaces: 0 },
      null,
      null,
    ])
  })

  it("points at the total that differs", () => {
    const text =
      "# Disc\r\nTerms: US\r\nRnd 1: 6 sc in magic ring. (6 sc)\r\nRnd 2: 2 sc in each st. (13 sc)"
    const problem = only(readPattern(text), "stated-total-differs")
    expect(pointedAt(text, problem)).toBe("13 sc")
    expect(problem).toMatchObject({ round: 2, line: 4, column: 26, length: 5 })
  })

  it("points at the place that is not there", () => {
    const text = "Terms: US\nRnd 1: 6 sc in magic ring.\nRnd 2: 2 dc in next ch-3 sp."
    const problem = only(readPattern(text), "no-such-place")
    expect(pointedAt(text, problem)).toBe("in next ch-3 sp")
  })

  it("points at the repeat that does not divide", () => {
    const text =
      "Terms: US\nRnd 1: 7 sc in magic ring.\nRnd 2: *sc in next st, ch 2, skip 1 st; rep from * around; join."
    const problem = only(readPattern(text), "repeat-does-not-divide")
    expect(pointedAt(text, problem)).toBe("*sc in next st, ch 2, skip 1 st; rep from * around")
  })

  it("points at the step that asks for more than there is", () => {
    const text =
      "Terms: US\nRnd 1: 6 sc in magic ring.\nRnd 2: *2 sc in next st; rep from * 6 more times."
    const problem = only(readPattern(text), "needs-more-than-there-is")
    expect(pointedAt(text, problem)).toBe("in next st")
    expect(problem.message).toContain("all 6 of its stitches")
  })

  it("counts columns in the text as given, whatever stands in it", () => {
    const text =
      "Terms: US\n\u2022 **Rnd 1:** \u201cred\u201d 6\u00a0sc in magic ring \u2013 wibble."
    const problem = only(readPattern(text), "words-passed-over")
    expect(problem.severity).toBe("note")
    expect(pointedAt(text, problem)).toBe("wibble")
  })
})

describe("reading on", () => {
  it("lets a round of which nothing can be made stand for its total, and goes on", () => {
    const reading = read(
      "6 sc in magic ring. (6 sc)",
      "wibble the blorp. (12 sc)",
      "sc in each st. (12 sc)",
      "2 sc in each st. (25 sc)",
    )
    expect(reading.motif.rounds).toHaveLength(4)
    expect(reading.rounds.map((round) => round.counted?.stitches ?? null)).toEqual([6, 12, 12, 24])
    expect(reading.rounds.map(({ assumed }) => assumed)).toEqual([
      undefined,
      true,
      undefined,
      undefined,
    ])
    expect(only(reading, "read-with-gap")).toMatchObject({ severity: "warning", round: 2 })
    expect(
      reading.problems
        .filter((problem) => problem.round === 4 && problem.severity === "warning")
        .map((problem) => problem.code),
    ).toEqual(["stated-total-differs"])
  })

  it("ends the motif where nothing fixes the count, and goes on from the next total", () => {
    const reading = read(
      "6 sc in magic ring. (6 sc)",
      "wibble the blorp.",
      "sc in each st. (12 sc)",
      "2 sc in each st. (25 sc)",
    )
    expect(only(reading, "empty-round")).toMatchObject({ severity: "error", round: 2 })
    expect(only(reading, "read-with-gap")).toMatchObject({ severity: "note", round: 3 })
    expect(reading.motif.rounds).toHaveLength(1)
    expect(reading.rounds.map((round) => round.counted?.stitches ?? null)).toEqual([
      6,
      null,
      12,
      24,
    ])
    expect(reading.rounds[2]?.assumed).toBe(true)
    expect(only(reading, "stated-total-differs").round).toBe(4)
  })

  it("is content with words about colour, yarn and ends", () => {
    const reading = read(
      "with A, 6 sc in magic ring; join; fasten off, weave in ends.",
      "join B in any st; ch 1, 2 sc in each st around; join, change to red.",
    )
    expect(doubts(reading)).toEqual([])
  })
})

describe("terms", () => {
  const uk =
    "Rnd 1: ch 4, join to form a ring; ch 3 (counts as tr), 11 tr in ring; join.\nRnd 2: ch 1, 1 dc in same st, 2 dc in each tr around; join."

  it("converts UK terms that are stated", () => {
    const reading = readPattern(`Terms: UK\n${uk}`)
    expect(doubts(reading)).toEqual([])
    expect(reading.termsFrom).toBe("stated")
    const first = reading.motif.rounds[0]?.elements[1]
    expect(first?.type === "stitch" ? first.kind.basic : null).toBe("dc")
  })

  it("reads them as US when nothing is stated, and says what speaks for UK", () => {
    const reading = readPattern(uk)
    expect(reading).toMatchObject({ terms: "US", termsFrom: "default" })
    const problem = only(reading, "terms-may-be-uk")
    expect(problem.severity).toBe("warning")
    expect(problem.hint).toBe('Add a line "Terms: UK" or "Terms: US".')
  })

  it("takes no chain that is a space for a starting chain", () => {
    const reading = readPattern(
      "Rnd 1: Ch 4, join to form a ring; ch 3 (counts as dc), 11 dc in ring; join.\nRnd 2: Ch 3, (dc, ch 1, 2 dc) in same st, *sk next 2 sts, (2 dc, ch 1, 2 dc) in next st; rep from * around; join.",
    )
    expect(reading.problems.map((problem) => problem.code)).not.toContain("terms-may-be-uk")
  })

  it("only tells a single weak sign, such as a dc after a starting chain of 1", () => {
    const reading = readPattern("Rnd 1: Ch 1, 12 dc in magic ring; join. (12 dc)")
    expect(only(reading, "terms-may-be-uk").severity).toBe("note")
    expect(doubts(reading)).toEqual([])
  })

  it.each(["Field of clover, in UK terms", "Written in UK terms.", "UK terminology used"])(
    "takes %s for a statement",
    (line) => {
      const reading = readPattern(`${line}\n\n${uk}`)
      expect(reading).toMatchObject({ terms: "UK", termsFrom: "stated" })
    },
  )

  it("suspects nothing where only US words stand", () => {
    expect(
      readPattern("Rnd 1: 6 sc in magic ring.").problems.map((problem) => problem.code),
    ).toEqual([])
  })

  it("takes the terms asked for over those stated, and says so", () => {
    const reading = readPattern(`Terms: US\n${uk}`, { terms: "UK" })
    expect(reading.terms).toBe("UK")
    expect(reading.problems.map((problem) => problem.code)).toContain("terms-overruled")
  })
})

describe("headings", () => {
  it("reads title, yarn, hook and gauge", () => {
    const reading = readPattern(
      "# Spoked wheel\nYarn: DK cotton\nHook: 4 mm\nGauge: 20 sc x 22 rows = 10 cm\nTerms: US\n\nRnd 1: 6 sc in magic ring.",
    )
    expect(reading.title).toBe("Spoked wheel")
    expect(reading.gauge).toMatchObject({ yarnWeight: 3, hookMm: 4 })
    expect(reading.gauge.swatches).toHaveLength(1)
    expect(doubts(reading)).toEqual([])
  })
})

describe("bad input ends in a clear problem", () => {
  it.each([
    ["nothing", "", "empty-text"],
    ["blanks", " \n\t\n", "empty-text"],
    ["a binary file", "\u0089PNG\u0000\u0001\u0002", "not-text"],
    ["five megabytes", "Rnd 1: 6 sc in magic ring. ".repeat(200_000), "text-too-long"],
    ["prose", "Once there was a hook.", "no-rounds"],
    [
      "a thousand million repeats",
      "Rnd 1: 6 sc in magic ring.\nRnd 2: *2 sc in next st; rep 1000000000 times.",
      "number-too-large",
    ],
    [
      "a thousand million repeats from a mark",
      "Rnd 1: 6 sc in magic ring.\nRnd 2: *2 sc in next st; rep from * 1000000000 times.",
      "number-too-large",
    ],
    ["a thousand million stitches", "Rnd 1: 1000000000 sc in magic ring.", "number-too-large"],
    [
      "a ring of a thousand million chains",
      "Rnd 1: ch 1000000000, join to form a ring; 8 sc in ring.",
      "number-too-large",
    ],
    [
      "ninety thousand repeats",
      "Rnd 1: 6 sc in magic ring.\nRnd 2: *2 sc in next st; rep 90000 times.",
      "too-many-repeats",
    ],
    [
      "ninety thousand repeats from a mark",
      "Rnd 1: 6 sc in magic ring.\nRnd 2: *2 sc in next st; rep from * 90000 times.",
      "too-many-repeats",
    ],
    ["ninety thousand stitches", "Rnd 1: 90000 sc in magic ring.", "round-too-large"],
    [
      "a ring of ninety thousand chains",
      "Rnd 1: ch 90000, join to form a ring; 8 sc in ring.",
      "too-many-chains",
    ],
    [
      "doubling without end",
      "Rnd 1: 6 sc in magic ring.\nRnds 2-99: 2 sc in each st.",
      "round-too-large",
    ],
    [
      "repeats in repeats",
      "Rnd 1: *sc in ring, (ch 1, (ch 1, (ch 1) 4000 times) 4000 times) 4000 times; rep from * 4000 times.",
      "too-many-steps",
    ],
    ["brackets in brackets", `Rnd 1: ${"( ".repeat(3000)}`, "nested-too-deeply"],
    ["stars in stars", `Rnd 1: ${"* ".repeat(3000)}`, "empty-round"],
    ["a repeat that uses nothing", "Rnd 1: *sc in ring; rep from * around.", "repeat-without-end"],
    ["a million rounds", "Rnds 1-1000000: sc in each st.", "too-many-rounds"],
  ])("%s", (_, text, code) => {
    const reading = readPattern(text)
    const problem = reading.problems.find((one) => one.code === code)
    expect(problem?.severity, reading.problems.map((one) => one.code).join(" ")).toBe("error")
    expect(problem?.hint).not.toBe("")
  })

  it("takes anything that is no string", () => {
    for (const value of [undefined, null, 3, {}, []])
      expect(readPattern(value as unknown as string).problems[0]?.code).toBe("not-text")
  })
})
