// One judge in every part of a result: nets, hands that differ, free layers, and what a change is said to lead to.

import { bands, verdictOf } from "@roundwright/flatness"
import { describe, expect, it } from "vitest"
import { checkPattern, verdictSentence } from "../src/index.ts"

/** A disc of 36 dc, then that many rounds of 18 loops of 6 chains. */
function netBag(rounds: number): string {
  const loops = Array.from(
    { length: rounds },
    (_, k) => `Rnd ${k + 5}: *Ch 6, sc in next ch-6 sp; rep from * around. (18 sc)`,
  )
  return [
    "Terms: US",
    "",
    "Rnd 1: Ch 4, join to form a ring. 12 dc in ring. (12 dc)",
    "Rnd 2: 2 dc in each dc around. (24 dc)",
    "Rnd 3: *Dc in next dc, 2 dc in next dc; rep from * around. (36 dc)",
    "Rnd 4: *Ch 6, skip next dc, sc in next dc; rep from * around. (18 sc)",
    ...loops,
  ].join("\n")
}

/** A disc that begins with and adds so many sc a round. */
function scDisc(each: number, rounds = 5): string {
  const later = Array.from({ length: rounds - 1 }, (_, index) => {
    const plain = index === 0 ? "" : `sc in next ${index} sts, `
    return `Rnd ${index + 2}: *${plain}2 sc in next st; rep from * around. (${(index + 2) * each} sc)`
  })
  return ["Terms: US", "", `Rnd 1: ${each} sc in ring. (${each} sc)`, ...later].join("\n")
}

const quick = { remedies: false } as const

describe("a net of loops on loops", () => {
  it("lies flat while its loops hang slack, and cups once they are drawn straight", () => {
    const slack = checkPattern(netBag(2), quick)
    expect(slack.laidOut!.verdict).toBe("flat")
    const straight = checkPattern(netBag(9), quick)
    expect(straight.laidOut!.verdict).toBe("cups")
    expect(straight.rounds.at(-1)!.verdict).toBe("cups")
    expect(straight.notes.join(" ")).toContain("drawn straight")
  })
})

describe("hands that differ", () => {
  it("leave 8 sc a round between flat and ruffled, and no word goes against the odds", () => {
    const result = checkPattern(scDisc(8), quick)
    const { verdict, odds } = result.laidOut!
    expect(verdict).toBe("blocks-flat")
    expect(odds.flat).toBeGreaterThan(odds.ruffles)
    expect(verdictSentence(result)).toContain("a tight hand works it flat")
  })

  it("do not save what ruffles in any of them", () => {
    const { verdict, odds } = checkPattern(scDisc(11), quick).laidOut!
    expect(verdict).toBe("ruffles")
    expect(odds.ruffles).toBeGreaterThan(odds.flat)
  })
})

describe("the free edge of a last round", () => {
  it("hides no ruffle: six quarters of a granny square have one word, however many rounds there are", () => {
    const words = [4, 5, 6].map(
      (rounds) => checkPattern(sixQuarters(rounds), quick).laidOut!.verdict,
    )
    expect(words).toEqual(["ruffles", "ruffles", "ruffles"])
  })

  it("is said to be mended only by what its own judge calls flat", () => {
    const { remedies } = checkPattern(sixQuarters(4))
    expect(remedies.length).toBeGreaterThan(0)
    for (const { verdictAfter, fullnessAfter } of remedies)
      expect(verdictOf(fullnessAfter)).toBe(verdictAfter)
  })
})

/** Groups of 3 dc, two at each corner, with a chain between all, six times round. */
function sixQuarters(rounds: number): string {
  const lines = [
    "Terms: US",
    "",
    "Rnd 1: Ch 4, join to form a ring. *3 dc in ring, ch 1; rep from * 5 more times. (18 dc)",
  ]
  for (let round = 2; round <= rounds; round++) {
    const side = round === 2 ? "" : `(3 dc in next ch-1 sp, ch 1) ${round - 2} times, `
    lines.push(
      `Rnd ${round}: *(3 dc, ch 1, 3 dc) in next ch-1 sp, ch 1, ${side}rep from * 5 more times. (${18 * round} dc)`.replace(
        ", rep",
        "; rep",
      ),
    )
  }
  return lines.join("\n")
}

describe("a wall of even rounds", () => {
  const basket = (even: number) => {
    const rounds = Array.from(
      { length: even },
      (_, k) => `Rnd ${k + 13}: sc in each st around. (96 sc)`,
    )
    return [scDisc(8, 12), ...rounds].join("\n")
  }

  it("is counted from the base as its maker made it, and one or two even rounds are no wall", () => {
    const base = checkPattern(basket(0), quick).laidOut!
    const rest = checkPattern(basket(2), quick)
    const wall = checkPattern(basket(5), quick)
    expect(base.verdict).toBe("blocks-flat")
    expect(rest.laidOut!.verdict).toBe("flat")
    expect(rest.notes.join(" ")).not.toContain("wall")
    // From a flat circle the edge would be a tenth short, which lies flat; from its own base it is a fifth short.
    expect(wall.rounds.at(-1)!.accumulatedFullness!).toBeGreaterThan(1 - bands.flat)
    expect(wall.laidOut!.verdict).toBe("cups")
    expect(wall.laidOut!.fromRound).toBeGreaterThan(12)
    expect(wall.rounds.at(-1)!.verdict).toBe("cups")
    expect(wall.notes.join(" ")).toContain("Rounds 13 to 17 add nothing")
  })
})

describe("petals in front of the ground", () => {
  it("have no verdict of their own, and the ground keeps its own", () => {
    const result = checkPattern(
      [
        "Terms: US",
        "",
        "Rnd 1: Ch 4, join to form a ring. 12 dc in ring. (12 dc)",
        "Rnd 2: Working in front loops only, *(sl st, ch 3, 5 dc, ch 3, sl st) in next st; rep from * around.",
        "Rnd 3: Working behind petals, 2 dc in back loop of each dc of Rnd 1. (24 dc)",
        "Rnd 4: *Dc in next dc, 2 dc in next dc; rep from * around. (36 dc)",
      ].join("\n"),
      quick,
    )
    expect(result.laidOut!.verdict).toBe("flat")
    expect(result.rounds.map(({ verdict }) => verdict)).toEqual(["flat", null, "flat", "flat"])
    expect(result.rounds[1]!.accumulatedFullness).toBeNull()
  })
})
