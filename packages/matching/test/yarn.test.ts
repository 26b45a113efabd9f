// Yarn: the model of loops and yarn-overs against its published figures, sums that add up, scales, skeins, left-overs.

import {
  estimateYarn,
  readColourRounds,
  readSkein,
  readWeighed,
  yarnByRound,
  yarnOfChain,
  yarnOfStitch,
} from "@roundwright/matching"
import { buildDisc } from "@roundwright/motif"
import { gaugeFrom } from "@roundwright/stitches"
import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"

const disc = buildDisc({ basic: "dc" }, [12, 24, 36])
const dk = gaugeFrom({ swatches: [], yarnWeight: 3, hookMm: 4 })

describe("stitches", () => {
  it("are loops and yarn-overs", () => {
    const rounding = "the published shares are rounded to two decimals"
    expectClose(yarnOfChain, 0.5, 1e-12, "one loop of two")
    expectClose(yarnOfStitch({ basic: "sc" }), 1, 1e-12, "the unit")
    expectClose(yarnOfStitch({ basic: "hdc" }), 1.43, 0.005, rounding)
    expectClose(yarnOfStitch({ basic: "dc" }), 1.93, 0.005, rounding)
    expectClose(yarnOfStitch({ basic: "tr" }), 2.86, 0.005, rounding)
  })

  it("gathered share their last loop", () => {
    const three = yarnOfStitch({ basic: "dc", gathered: { how: "cluster", legs: 3 } })
    expectClose(three, 3 * yarnOfStitch({ basic: "dc" }) - 1, 1e-12, "two loops are saved")
  })
})

describe("a project", () => {
  it("is the sum of its parts", () => {
    const found = estimateYarn(disc, dk, { pieces: 10, borderSc: 200 })
    const rounds = found.rounds.reduce((sum, { sc }) => sum + sc, 0)
    expectClose(rounds, found.piece.sc, 1e-9, "rounds make the piece")
    expectClose(
      found.pieces.sc + found.border!.sc + found.tails!.sc,
      found.total.sc,
      1e-9,
      "pieces, border and tails make the whole",
    )
  })

  it("follows the scale, and the more pieces lie on it the less its step matters", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 30 }),
        fc.integer({ min: 3, max: 40 }),
        (many, each) => {
          const weighed = [{ pieces: many, grams: many * each, stepGrams: 1 }]
          const { piece, errorShare } = { ...estimateYarn(disc, dk, { weighed }), errorShare: 0 }
          expectClose(piece.grams!, each, 1e-9, "the piece weighs what the scale said")
          const more = estimateYarn(disc, dk, {
            weighed: [{ pieces: 2 * many, grams: 2 * many * each, stepGrams: 1 }],
          })
          expect(more.piece.errorShare).toBeLessThan(piece.errorShare)
          expect(errorShare).toBe(0)
        },
      ),
      { numRuns: 40, seed: 19 },
    )
  })

  it("buys skeins with a reserve", () => {
    const found = estimateYarn(disc, dk, {
      pieces: 10,
      tails: { perPiece: 0, mm: 150 },
      weighed: [{ pieces: 1, grams: 10, stepGrams: 0.1 }],
      skein: { grams: 50, metres: 120 },
    })
    expect(found.skeins).toBe(3)
  })

  it("uses up a left-over on the safe side", () => {
    const weighed = [{ pieces: 4, grams: 40, stepGrams: 1 }]
    expect(estimateYarn(disc, dk, { weighed, leftGrams: 35 }).left).toMatchObject({ pieces: 3 })
    expect(estimateYarn(disc, dk, { weighed, leftGrams: 10 }).left).toMatchObject({ pieces: 0 })
  })

  it("shares rounds out by colour", () => {
    const colours = readColourRounds("rose: 1-2; cream: 3")
    const found = estimateYarn(disc, dk, { colours, tails: { perPiece: 0, mm: 150 } })
    const [first, second, third] = yarnByRound(disc)
    expectClose(found.colours[0]!.sc, first! + second!, 1e-9, "rounds 1 and 2")
    expectClose(found.colours[1]!.sc, third!, 1e-9, "round 3")
  })
})

describe("what cannot be", () => {
  it("is refused with a hint", () => {
    expect(() => estimateYarn(disc, dk, { leftGrams: 0 })).toThrow(/No yarn is left/)
    expect(() => estimateYarn(disc, dk, { leftGrams: -5 })).toThrow(/No yarn is left/)
    expect(() => estimateYarn(disc, dk, { pieces: 0 })).toThrow(/cannot be 0 pieces/)
    expect(() => readWeighed("heavy")).toThrow(/no weight/)
    expect(() => readColourRounds("rose")).toThrow(/no colour/)
    expect(() => estimateYarn(disc, dk, { colours: readColourRounds("rose: 9") })).toThrow(
      /round 9/,
    )
  })

  it("reads what can be", () => {
    expect(readWeighed("4 pieces = 38 g")).toEqual({ pieces: 4, grams: 38, stepGrams: 1 })
    expect(readWeighed("one square weighs 9.5 g")).toEqual({
      pieces: 1,
      grams: 9.5,
      stepGrams: 0.1,
    })
    expect(readSkein("50 g = 120 m")).toEqual({ grams: 50, metres: 120 })
    expect(readSkein("100 g")).toEqual({ grams: 100, metres: null })
  })
})
