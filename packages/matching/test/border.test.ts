// Borders: published counts a side, repeats fitted evenly, corners that keep the edge flat, dips filled.

import {
  dipsOfSide,
  evenPlaces,
  fitRepeat,
  levelDips,
  planBorder,
  readRepeat,
  sideByLength,
  sideByPieces,
  sideByRows,
} from "@roundwright/matching"
import { buildPolygon } from "@roundwright/motif"
import { gaugeFrom } from "@roundwright/stitches"
import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"

const inch = 25.4
const worsted = gaugeFrom({ swatches: [], yarnWeight: 4, hookMm: 5 })

describe("stitches a side", () => {
  it("one stitch a join: three and four squares of 59 come to 181 and 241", () => {
    expect(sideByPieces({ pieces: 3, stitches: 59 }).withCorners).toBe(181)
    expect(sideByPieces({ pieces: 4, stitches: 59 }).withCorners).toBe(241)
  })

  it("19 to 21 sc on 6 in with worsted and 5 mm", () => {
    const { between } = sideByLength(6 * inch, worsted, "sc")
    expect(between).toBeGreaterThanOrEqual(19)
    expect(between).toBeLessThanOrEqual(21)
  })

  it("28 on 9 in at 13 dc = 4 in", () => {
    const gauge = gaugeFrom({ swatches: [{ kind: { basic: "dc" }, widthMm: (4 * inch) / 13 }] })
    expect(sideByLength(9 * inch, gauge, "dc").between).toBe(28)
  })

  it("2 sc to a row of dc", () => {
    expect(sideByRows(20, "dc", worsted, "sc").between).toBe(40)
  })
})

describe("a repeat of m q + r", () => {
  it("is fitted on any side, evenly, mirrored, and no place off by more than one", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 12, max: 400 }),
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 0, max: 11 }),
        (places, of, plus) => {
          const found = fitRepeat(places, of, plus)
          expect((found.count - plus) % of).toBe(0)
          expect(Math.abs(found.added)).toBeLessThanOrEqual(Math.max(of / 2, of + plus - places))
          const many = found.places.length
          found.places.forEach((place, k) => {
            expect(place).toBeGreaterThanOrEqual(1)
            expect(place).toBeLessThanOrEqual(places)
            expect(Math.abs(place - (0.5 + ((k + 0.5) * places) / many))).toBeLessThanOrEqual(1)
            expect(place + found.places[many - 1 - k]!).toBeGreaterThanOrEqual(places)
            expect(place + found.places[many - 1 - k]!).toBeLessThanOrEqual(places + 2)
          })
        },
      ),
      { numRuns: 300, seed: 19 },
    )
  })

  it("is read as makers write it", () => {
    expect(readRepeat("6 + 1")).toEqual({ of: 6, plus: 1 })
    expect(readRepeat("multiple of 10 plus 3")).toEqual({ of: 10, plus: 3 })
    expect(readRepeat("4")).toEqual({ of: 4, plus: 0 })
    expect(() => readRepeat("often")).toThrow(/no repeat/)
    expect(() => fitRepeat(3, 20, 1)).toThrow(/too short/)
  })

  it("tells places that differ", () => {
    const places = evenPlaces(60, 7)
    expect(new Set(places).size).toBe(7)
  })
})

describe("a border", () => {
  const kinds = (list: string) => list.split(",").map((basic) => ({ basic: basic as "sc" }))

  it("lies flat round after round on any rectangle", () => {
    for (const list of ["sc,sc,sc,sc", "dc,dc,dc", "sc,hdc,dc,tr"])
      for (const [a, b] of [
        [40, 40],
        [181, 241],
      ]) {
        const plan = planBorder(worsted, {
          sides: [{ between: a! }, { between: b! }],
          rounds: kinds(list),
        })
        expect(plan.verdict).toBe("flat")
      }
  })

  it("tells when the edge was too long for its stitches", () => {
    const plan = planBorder(worsted, {
      sides: [{ between: 100, edgeMm: 100 * 9 }],
      rounds: kinds("sc"),
    })
    expect(plan.rounds[0]!.fullness).toBeLessThan(0.87)
    expect(plan.verdict).not.toBe("flat")
    expect(plan.text).toMatch(/too short/)
  })

  it("grows each side by what stands in its corners", () => {
    const plan = planBorder(worsted, { sides: [{ between: 50 }], rounds: kinds("sc,sc") })
    expect(plan.rounds.map(({ sides }) => sides[0])).toEqual([50, 52])
    expect(plan.rounds[0]!.corner).toBe(3)
  })
})

describe("dips", () => {
  it("get taller stitches, within half a step of the ladder", () => {
    const levelled = levelDips([0, 3, 8, 15], worsted)
    expect(levelled.map(({ stitch }) => stitch)).toEqual(["sc", "hdc", "dc", "tr"])
    for (const { offMm } of levelled)
      expectClose(offMm, 0, 5, "half a step from one stitch to the next")
  })

  it("of a square with straight sides ask for no more than the corners' own", () => {
    const depths = dipsOfSide(buildPolygon({ basic: "dc" }, 4, 4, 3, 5), worsted)!
    expect(Math.min(...depths)).toBe(0)
    expect(depths.every((depth) => Number.isFinite(depth))).toBe(true)
  })
})
