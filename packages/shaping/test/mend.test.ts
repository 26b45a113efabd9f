import { keepLedger } from "@roundwright/flatness"
import { buildDisc, countRound, type Motif, validateMotif } from "@roundwright/motif"
import { gaugeFrom } from "@roundwright/stitches"
import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { mendTrials } from "../../../test/evidence/shaping-mends.ts"
import {
  changeCount,
  findMends,
  insertColumns,
  planCircle,
  removeColumns,
  worksOutBy,
} from "../src/index.ts"

const gauge = gaugeFrom({ swatches: [] })
const counts = (motif: Motif) => motif.rounds.map((round) => countRound(round).stitches)

describe("columns put in and taken out", () => {
  it("leave a motif that holds together, with the difference in every later round", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(0, 4, 6),
        fc.integer({ min: 0, max: 4 }),
        fc.array(fc.nat(200), { minLength: 1, maxLength: 5 }),
        (corners, round, spots) => {
          const { motif } = planCircle({ stitches: [{ basic: "dc" }], gauge, rounds: 5, corners })
          const size = motif.rounds[round]!.elements.length
          const places = [...new Set(spots.map((spot) => spot % size))]
          const more = insertColumns(motif, round, places)
          validateMotif(more)
          const before = counts(motif)
          counts(more).forEach((count, r) => {
            expect(count - before[r]!).toBe(r < round ? 0 : places.length)
          })
          const fewer = removeColumns(motif, round, places.slice(0, 1))
          validateMotif(fewer)
          expect(counts(fewer)[round]).toBe(before[round]! - 1)
        },
      ),
      { seed: 8, numRuns: 60 },
    )
  })

  it("undo one another in number", () => {
    const { motif } = planCircle({ stitches: [{ basic: "sc" }], gauge, rounds: 6 })
    const more = changeCount(motif, 3, 6)!
    expect(counts(changeCount(more, 3, -6)!)).toEqual(counts(motif))
  })
})

describe("remedies", () => {
  it("have nothing to say to a flat piece", () => {
    expect(findMends(buildDisc({ basic: "dc" }, [12, 24, 36, 48]), gauge)).toEqual([])
  })

  it("leave alone what works itself out, and say by which round", () => {
    const motif = buildDisc({ basic: "dc" }, [12, 24, 32, 48, 60, 72])
    expect(worksOutBy(keepLedger(motif, gauge))).toEqual({ from: 3, by: 4 })
    const [first] = findMends(motif, gauge)
    expect(first!.kind).toBe("leave")
    expect(first!.change).toContain("by round 4")
    expect(first!.motif).toBe(motif)
  })

  it("block what pins can take up", () => {
    const motif = buildDisc({ basic: "dc" }, [12, 24, 34, 44, 54])
    const kinds = findMends(motif, gauge).map(({ kind }) => kind)
    expect(kinds[0]).toBe("block")
    expect(kinds.length).toBeGreaterThan(1)
  })

  it("do not talk of blocking where nothing can be pinned flat", () => {
    const motif = buildDisc({ basic: "dc" }, [12, 24, 48, 96, 160])
    for (const { kind } of findMends(motif, gauge)) expect(["block", "leave"]).not.toContain(kind)
  })

  it("find the true correction of pieces broken in one place among the first three", () => {
    const trials = mendTrials(20, 99)
    const found = trials.filter(({ place }) => place !== null && place <= 3)
    // Asked: 90 of 100. The evidence table runs the hundred.
    expect(found.length).toBeGreaterThanOrEqual(18)
  })
})
