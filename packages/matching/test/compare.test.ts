// Two pieces side by side: each way of parting built by hand, found again, and the plain case where they do not part.

import { comparePieces, readMeasured } from "@roundwright/matching"
import fc from "fast-check"
import { describe, expect, it } from "vitest"

const compare = (a: string, b: string) => comparePieces(readMeasured(a, "A"), readMeasured(b, "B"))

describe("counts", () => {
  it("part where one slipped, and it is told whose", () => {
    const found = compare("12, 24, 36, 48", "12, 24, 35, 47")
    expect(found).toMatchObject({ partAtRound: 3, cause: "step", by: "counts", whose: "b" })
    expect(found.rounds[2]).toMatchObject({ round: 3, a: 36, b: 35 })
  })

  it("15 groups where 16 are meant", () => {
    const found = compare(
      "Rnd 1: 16\nRnd 2: 32\nRnd 3: 16 groups of 3",
      "Rnd 1: 16\nRnd 2: 32\nRnd 3: 15 groups of 3",
    )
    expect(found).toMatchObject({ partAtRound: 3, whose: "b" })
    expect(found.text).toContain("15 where 16 are meant")
  })

  it("in one ratio from the first round", () => {
    expect(compare("16, 32, 48", "12, 24, 36")).toMatchObject({ partAtRound: 1, cause: "ratio" })
  })

  it("agree with those of a written pattern", () => {
    const pattern =
      "Rnd 1: 12 dc in magic ring. (12 dc)\nRnd 2: 2 dc in each st around. (24 dc)\nRnd 3: *2 dc in next st, dc in next st; rep from * around. (36 dc)"
    expect(compare(pattern, "12, 24, 36")).toMatchObject({ partAtRound: null, cause: null })
  })
})

describe("sizes", () => {
  const told = (sizes: readonly number[]) =>
    sizes.map((mm, i) => `Rnd ${i + 1}: ${(mm / 10).toFixed(1)} cm`).join("\n")

  it("in one ratio are another hand or hook, from the first round", () => {
    const found = compare("4, 7, 9.5, 12 cm", "4.4, 7.7, 10.4, 13.2 cm")
    expect(found).toMatchObject({ partAtRound: 1, cause: "ratio", by: "sizes" })
  })

  it("find a step, an offset and another growth wherever they are put", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 18, max: 30 }), { minLength: 5, maxLength: 9 }),
        fc.nat(20),
        fc.integer({ min: 10, max: 20 }),
        (growths, where, more) => {
          let sum = 0
          const own = growths.map((growth) => {
            sum += growth
            return sum
          })
          const at = where % own.length
          const found = compare(told(own), told(own.map((mm, i) => (i < at ? mm : mm + more))))
          expect(found.partAtRound).toBe(at + 1)
          expect(["step", "offset"]).toContain(found.cause)
          expect(compare(told(own), told(own)).cause).toBeNull()
        },
      ),
      { numRuns: 60, seed: 19 },
    )
  })
})

describe("what cannot be compared", () => {
  it("is told with a hint", () => {
    expect(() => compare("12, 24", "Rnd 7: 9 cm")).toThrow(/no round of which both/)
    expect(() => readMeasured("hello", "A")).toThrow(/no count and no size/)
  })
})

describe("pieces of the same stitches", () => {
  it("are told apart by their chains", () => {
    const piece = (chains: number) =>
      readMeasured(
        [
          "Terms: US",
          "Rnd 1: 6 sc in magic ring; join. (6 sc)",
          `Rnd 2: *sc in next sc, ch ${chains}; rep from * around; join. (6 sc)`,
        ].join("\n"),
        `with ${chains}`,
      )
    expect(comparePieces(piece(3), piece(4)).text).toMatch(
      /same stitches, but round 2 has 18 chains in with 3 and 24 in with 4/,
    )
    expect(comparePieces(piece(3), piece(3)).text).toMatch(/do not part/)
  })
})
