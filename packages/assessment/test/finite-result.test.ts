// No number leaves a check that is none.

import { describe, expect, it } from "vitest"
import { checkPattern } from "../src/index.ts"

const headed = (rounds: string) => `Terms: US\nHook: 4 mm\n\n${rounds}`

describe("a piece that cannot be measured", () => {
  it.each([
    ["Rnd 1: 6 sc in magic ring.\nRnd 2: *ch 4, skip next st; rep from * 5 more times; join.", 2],
    ["Rnd 1: *ch 5; rep from * 5 times; join.", 1],
    [
      "Rnd 1: ch 6; join to form a ring. (6 ch)\nRnd 2: *ch 5, skip next ch; rep from * around; join.",
      2,
    ],
  ])("has no verdict, and it is said which round it is: %j", (rounds, number) => {
    for (const shape of ["ledger", "net"] as const) {
      const result = checkPattern(headed(rounds), { shape })
      expect(JSON.parse(JSON.stringify(result))).toEqual(result)
      expect(result.laidOut).toBe(null)
      expect(result.remedies).toEqual([])
      expect(result.exitStatus).toBe(2)
      const problem = result.problems.find(({ code }) => code === "no-measure")
      expect(problem).toMatchObject({ round: number, line: 3 + number })
      expect(problem?.message).not.toMatch(/Infinity|NaN/)
    }
  })
})
