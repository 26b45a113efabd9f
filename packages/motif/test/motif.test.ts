import fc from "fast-check"
import { describe, expect, it } from "vitest"
import {
  buildDisc,
  buildPolygon,
  countRound,
  type Element,
  findCorners,
  type Motif,
  repeatsOf,
  symmetryOf,
  validateMotif,
  workedPlaces,
} from "../src/index.ts"

const sc = { basic: "sc" } as const
const dc = { basic: "dc" } as const

const wholeCounts = fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 1, maxLength: 8 })

describe("building and counting", () => {
  it("builds discs with exactly the counts asked for, whatever they are", () => {
    fc.assert(
      fc.property(wholeCounts, fc.boolean(), (counts, staggered) => {
        const motif = buildDisc(sc, counts, { staggered })
        validateMotif(motif)
        expect(motif.rounds.map((round) => countRound(round).stitches)).toEqual(counts)
      }),
      { seed: 11 },
    )
  })

  it("uses every stitch of the round below exactly once when a disc grows or shrinks", () => {
    fc.assert(
      fc.property(wholeCounts, (counts) => {
        const motif = buildDisc(sc, counts)
        for (let i = 1; i < counts.length; i++)
          expect(workedPlaces(motif.rounds[i]!).size).toBe(counts[i - 1])
      }),
      { seed: 12 },
    )
  })

  it("counts chains, spaces by size and picots apart from stitches", () => {
    const at = (element: number) => [{ at: "stitch" as const, round: 0, element }]
    const elements: Element[] = [
      { type: "stitch", kind: dc, anchors: at(0) },
      { type: "chain", chains: 3 },
      { type: "stitch", kind: sc, anchors: at(1) },
      { type: "picot", chains: 4 },
      { type: "chain", chains: 1 },
    ]
    const count = countRound({ number: 2, elements, turned: false, closing: "joined" })
    expect(count).toMatchObject({ stitches: 2, chains: 4, spaces: 2, picots: 1 })
    expect(count.spacesBySize).toEqual([
      { chains: 1, count: 1 },
      { chains: 3, count: 1 },
    ])
    expect(count.byKind.map((entry) => entry.count)).toEqual([1, 1])
  })

  it("grows a polygon by corners times (per corner - 1) a round", () => {
    const counts = buildPolygon(sc, 4, 5, 3, 3).rounds.map((round) => countRound(round).stitches)
    expect(counts).toEqual([12, 20, 28, 36, 44])
  })
})

describe("repeats", () => {
  it("finds the repeats of a disc from its sequence", () => {
    const motif = buildDisc(sc, [6, 12, 18, 24])
    expect(repeatsOf(motif, 2)).toBe(6)
    expect(symmetryOf(motif)).toBe(6)
  })

  it("finds one repeat where nothing comes round", () => {
    const motif = buildDisc(sc, [5, 7])
    expect(repeatsOf(motif, 1)).toBe(1)
  })

  it("does not depend on where a round starts", () => {
    const motif = buildDisc(sc, [8, 16, 24])
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 23 }), (shift) => {
        const turned = rotateRound(motif, 2, shift)
        expect(repeatsOf(turned, 2)).toBe(repeatsOf(motif, 2))
      }),
      { seed: 13 },
    )
  })
})

describe("corners", () => {
  it.each([3, 4, 5, 6, 8])("recognises %i corners where three stitches stack in one", (corners) => {
    const found = findCorners(buildPolygon(sc, corners, 5, 3, 3))
    expect(found.map((round) => round.count)).toEqual(Array(5).fill(corners))
  })

  it("takes a disc with single increases for round, and says that they stack", () => {
    const found = findCorners(buildDisc(sc, [6, 12, 18, 24, 30]))
    expect(found.map((round) => round.count)).toEqual([0, 0, 0, 0, 0])
    expect(found.at(-1)?.stacked).toBe(6)
  })

  it("keeps the corners through a plain round", () => {
    const square = buildPolygon(sc, 4, 4, 3, 3)
    const plain = square.rounds[3]!.elements.map((_, element): Element => {
      return { type: "stitch", kind: sc, anchors: [{ at: "stitch", round: 3, element }] }
    })
    const motif: Motif = {
      ...square,
      rounds: [...square.rounds, { number: 5, elements: plain, turned: false, closing: "joined" }],
    }
    expect(findCorners(motif).at(-1)?.count).toBe(4)
  })
})

describe("validation", () => {
  it("refuses an anchor that does not exist, naming the round", () => {
    const motif = buildDisc(sc, [6, 12])
    const broken: Motif = { ...motif, rounds: [motif.rounds[1]!] }
    expect(() => validateMotif(broken)).toThrowError(/Round 2/)
  })

  it("refuses counts that are not whole numbers", () => {
    expect(() => buildDisc(sc, [6, 7.5])).toThrowError(/whole numbers/)
    expect(() => buildDisc(sc, [])).toThrowError(/whole numbers/)
  })
})

function rotateRound(motif: Motif, index: number, shift: number): Motif {
  const round = motif.rounds[index]!
  const elements = [...round.elements.slice(shift), ...round.elements.slice(0, shift)]
  return {
    ...motif,
    rounds: motif.rounds.map((other, i) => (i === index ? { ...round, elements } : other)),
  }
}
