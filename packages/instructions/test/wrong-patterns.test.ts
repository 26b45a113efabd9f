// What is wrong in a pattern is told in its round, and the rounds around it are left in peace.

import { describe, expect, it } from "vitest"
import { readPattern } from "../src/index.ts"
import { wrongPatterns } from "./wrong-patterns.ts"

describe("patterns with something wrong", () => {
  it.each(wrongPatterns.map((pattern) => [pattern.name, pattern] as const))("%s", (_, pattern) => {
    const { rounds, problems } = readPattern(pattern.text)
    expect(rounds).toHaveLength(pattern.rounds.length)
    pattern.rounds.forEach((wanted, i) => {
      const { number, counted, assumed } = rounds[i]!
      const doubts = problems.filter(
        (problem) => problem.round === number && problem.severity !== "note",
      )
      const told = counted === null || assumed === true || doubts.length > 0
      expect(told, `round ${number} told`).toBe(wanted.startsWith("!"))
      const [stitches, chains] = wanted.replace("!", "").split("+")
      if (stitches === "?") return
      expect(counted?.stitches).toBe(Number(stitches))
      if (chains !== undefined) expect(counted?.chains).toBe(Number(chains))
    })
  })
})
