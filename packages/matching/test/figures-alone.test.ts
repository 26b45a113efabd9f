// What is answered from figures alone, without a pattern: sizes, rows, balls, counts, edges.

import {
  alongEdge,
  compareRows,
  easeOnto,
  edgesOfGrid,
  figureKinds,
  figuresAlone,
  fitRepeat,
  growInRounds,
  growInRows,
  hookAdvice,
  layoutOfCount,
  matchPiece,
  ownHookLaw,
  readRepeat,
  readRows,
  readTarget,
  readTriedHooks,
  standInNow,
} from "@roundwright/matching"
import { unlessRefused } from "@roundwright/numerics"
import { gaugeFrom } from "@roundwright/stitches"
import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"

describe("what is asked", () => {
  it("is refused where it goes on without end, and never hangs", () => {
    for (const kind of figureKinds)
      expect(() => figuresAlone(kind, { now: `${" ".repeat(300_000)}x` })).toThrow(/too long/)
    const blanks = `5${" ".repeat(390)}x`
    for (const asked of [
      { piece: blanks, "join-rounds": "1" },
      { each: blanks, of: "3" },
      { need: blanks, skein: "100 g = 170 yd" },
      { first: `a${"a ".repeat(190)}`, second: blanks },
      { now: blanks, to: blanks, stitches: "5" },
    ])
      for (const kind of figureKinds) {
        const told = unlessRefused<unknown, string>(
          () => figuresAlone(kind, asked),
          ({ hint }) => hint,
        )
        expect(told === null || typeof told === "object" || typeof told === "string").toBe(true)
      }
  })
})

describe("sizes alone", () => {
  const piece = standInNow(readTarget("7 in"), {})

  it("are matched by a plain piece that stands in, and say so", () => {
    const { text, notes, perSideMm, factor } = matchPiece(piece, readTarget("8 in"))
    expect(notes[0]).toMatch(/stands in/)
    expect(text).toMatch(/Made anew/)
    expectClose(perSideMm, 12.7, 0.5, "half an inch, to the rest of the solver")
    expectClose(factor, 8 / 7, 0.01, "eight over seven, to the rest of the solver")
  })

  it("are not the hook's doing where yarn or pattern changed, or the fabric is firm already", () => {
    const to = readTarget("6.5 in")
    expect(matchPiece(piece, to, { changed: "yarn" }).cause).toBe("yarn")
    expect(matchPiece(piece, to, { changed: "pattern" }).text).toMatch(/^Not the hook/)
    expect(matchPiece(piece, to, { fabric: "tight" }).cause).not.toBeNull()
    expect(matchPiece(piece, to, { changed: "nothing" }).cause).toBeNull()
  })

  it("who must work tight takes a thinner hook", () => {
    const { text } = matchPiece(piece, readTarget("7 in"), { fabric: "tight" })
    expect(text).toMatch(/^Leave it.*one size down/)
  })

  it("a hook is told as a range between what swatches and what makers' remade pieces say", () => {
    const advice = hookAdvice(6 / 6.5, { swatches: [], hookMm: 5.5 })!
    expect(advice).toMatchObject({ firstMm: 5, way: "down" })
    expect(advice.furthestMm).toBeLessThanOrEqual(advice.firstMm)
    expect(hookAdvice(1.001, { swatches: [] })).toBeNull()
  })
})

describe("hooks that were tried", () => {
  it("give the maker's own law, and the hook that meets it", () => {
    const tries = readTriedHooks("4 mm = 6.5 in; 3.5 mm = 6.1 in")
    expect(tries.map(({ hookMm }) => hookMm)).toEqual([4, 3.5])
    const law = ownHookLaw(tries, 6.1 * 25.4)!
    expect(law.wantedMm).toBe(3.5)
    // Twice the hook, twice the size: a power of one, whatever the piece.
    const straight = ownHookLaw(readTriedHooks("3 mm = 10 cm; 6 mm = 20 cm"), 150)!
    expectClose(straight.exponent, 1, 1e-9, "size goes as the hook in these trials")
    expect(straight.wantedMm).toBe(4.5)
    expect(
      ownHookLaw(readTriedHooks("5.5 mm = 6 in; 5 mm = 5.9 in"), 3.75 * 25.4)!.wantedMm,
    ).toBeNull()
    expect(() => readTriedHooks("thin = small")).toThrow(/no hook with the size/)
  })

  it("decide whether it is the hook", () => {
    const small = standInNow(readTarget("6 in"), {}, () => gaugeFrom({ swatches: [], hookMm: 5.5 }))
    const tried = readTriedHooks("5 mm = 5.9 in")
    expect(matchPiece(small, readTarget("5.2 in"), { tried }).text).toMatch(/^Not the hook/)
  })
})

describe("yarn of a piece that goes on growing", () => {
  it("in rounds goes with the area", () => {
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 120 }), fc.integer({ min: 1, max: 30 }), (n, more) => {
        const grown = growInRounds({ sizeMm: 10 * n, used: n * n, lastRound: 2 * n - 1, more })
        expectClose(grown.roundsNow!, n, 1e-6, "n alike rounds hold n squared parts")
        expectClose(grown.grams, (n + more) ** 2 - n ** 2, 1e-6, "each round takes two more")
        expectClose(grown.sizeMm, 10 * (n + more), 1e-6, "rounds are alike")
      }),
      { numRuns: 60, seed: 19 },
    )
    expect(() => growInRounds({ sizeMm: 100, used: 8, spare: 0 })).toThrow(/No yarn is to spare/)
  })

  it("in rows goes with the length", () => {
    expect(growInRows({ perRow: 15, rowMm: 20, ball: 100, balls: 15 })).toMatchObject({
      perBall: 6,
      rows: 90,
      lengthMm: 1800,
      rowsWithEnds: 100,
    })
  })
})

describe("counts", () => {
  it("of one edge go onto another with as many skipped or doubled as they differ", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 300 }), fc.integer({ min: 2, max: 300 }), (n, m) => {
        const { skipped, by } = easeOnto(n, m)
        expect(Math.max(n, m) - skipped.length).toBe(Math.min(n, m))
        expect(by).toBe(m - n)
        expect(new Set(skipped).size).toBe(skipped.length)
      }),
      { numRuns: 200, seed: 19 },
    )
  })

  it("of a grid add up along its edges", () => {
    expect(edgesOfGrid("20 16 / 21 20")).toMatchObject({
      top: 36,
      right: 36,
      bottom: 41,
      left: 41,
      all: 154,
    })
    expect(() => edgesOfGrid("20 16 / 21")).toThrow(/no grid/)
  })

  it("fit a repeat less some, and a number of repeats that is wished for", () => {
    const { of, plus } = readRepeat("6 less 2")
    expect(fitRepeat(82, of, plus).added).toBe(0)
    expect(fitRepeat(99, of, plus)).toMatchObject({ count: 100, added: 1 })
    expect(fitRepeat(38, 3, 1, 13)).toMatchObject({ count: 40, added: 2, repeats: 13 })
  })
})

describe("edges and rows", () => {
  it("small pieces along a large one", () => {
    const unit = (value: number) => String(value)
    expect(alongEdge(33, 5, 6, unit)).toMatchObject({ missing: 3, frame: 28 })
    expectClose(alongEdge(33, 5, 6, unit).perJoin!, 0.6, 1e-9, "three shared by five joins")
    expect(alongEdge(17, 8.5, 3, unit).fits).toBe(2)
    expect(() => alongEdge(17, null, null, unit)).toThrow(/Neither/)
  })

  it("rows told with their length", () => {
    const found = compareRows(readRows("84 rows = 180 cm")!, readRows("66 rows = 180 cm")!)
    expectClose(found.ratio, 84 / 66, 1e-9, "the same length in fewer rows")
    expect(found.text).toMatch(/Not the hook.*not the other country's terms/)
    expect(readRows("some rows")).toBeNull()
  })

  it("so many pieces in the rows and columns that suit a size", () => {
    expect(layoutOfCount(100, [1320, 1320])).toEqual([10, 10])
    expect(layoutOfCount(80, [1300, 1700])).toEqual([10, 8])
  })
})
