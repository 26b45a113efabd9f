// A search for mends ends within its counted work, however long the piece, and says what it left out.

import { buildDisc, type Motif } from "@roundwright/motif"
import { gaugeFrom } from "@roundwright/stitches"
import { describe, expect, it } from "vitest"
import { changeCount, findMends, MendBudget, searchMends } from "../src/index.ts"

const gauge = gaugeFrom({ swatches: [] })

/** `around` stitches in each of so many rounds after the first few. */
const tube = (around: number, rounds: number): Motif =>
  buildDisc({ basic: "sc" }, [6, 12, ...Array.from({ length: rounds }, () => around)])

describe("the budget of a search for mends", () => {
  it("ends it on tubes of a thousand rounds, and it says where it looked", () => {
    for (const around of [12, 18, 60]) {
      const { leftOut } = searchMends(tube(around, 1000), gauge)
      expect(leftOut).toMatch(/^The piece is large: .*looked for in rounds \d+ to \d+ only/)
    }
  })

  it("is far above what an ordinary piece needs", () => {
    const piece = tube(24, 20)
    const { mends, leftOut } = searchMends(piece, gauge)
    expect(leftOut).toBe(null)
    expect(findMends(piece, gauge, { budget: new MendBudget(1e12) })).toEqual([...mends])
  })

  it("is used alike each time: the same piece, the same answer", () => {
    const once = () => searchMends(tube(18, 120), gauge, { budget: new MendBudget(100_000) })
    expect(once()).toEqual(once())
    expect(once().leftOut).not.toBe(null)
  })
})

describe("a stitch more under a long tube", () => {
  it("is carried through all its rounds, each gone over once", () => {
    const grown = changeCount(tube(18, 3000), 1, 6)!
    expect(grown.rounds.at(-1)!.elements.length).toBe(24)
  })
})
