// Blankets: layouts against a drawing made another way, half pieces that join and lie flat, colours, named sizes, refusals.

import { readPattern, writePattern } from "@roundwright/instructions"
import {
  circlesInRows,
  contradictions,
  edgeTriangle,
  halfPiece,
  hexagonsOffset,
  layoutSvg,
  meetingOf,
  mixedBlocks,
  mixedSquares,
  neighboursOf,
  octagonsInRows,
  planBlanket,
  readBlanketSize,
  readColours,
  readLarger,
  shareColours,
  squaresInRows,
  squaresOnPoint,
} from "@roundwright/matching"
import { buildPolygon, countRound } from "@roundwright/motif"
import { gaugeFrom } from "@roundwright/stitches"
import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"

const dk = gaugeFrom({ swatches: [], yarnWeight: 3, hookMm: 4 })
const hexagon = `Terms: US
Yarn: DK
Hook: 4 mm

Rnd 1: ch 3 (counts as dc), dc in magic ring, *ch 1, 2 dc in ring; rep from * 4 more times, ch 1; join. (12 dc)
Rnd 2: ch 3 (counts as dc), dc in next dc, *(dc, ch 2, dc) in next ch-1 sp, dc in next 2 dc; rep from * 4 more times, (dc, ch 2, dc) in next ch-1 sp; join. (24 dc)
Rnd 3: ch 3 (counts as dc), dc in next 2 dc, *(dc, ch 2, dc) in next ch-2 sp, dc in next 4 dc; rep from * 4 more times, (dc, ch 2, dc) in next ch-2 sp, dc in next dc; join. (36 dc)
`

describe("hexagons", () => {
  /** Drawn as on paper: one hexagon, and every other its mirror image in a side it shares with one drawn before. */
  function drawnByMirrors(rows: number, columns: number, pitch: number): [number, number][] {
    const side = pitch / Math.sqrt(3)
    const centres: [number, number][] = [[pitch / 2, side]]
    for (let k = 0; k < centres.length; k += 1) {
      const [x, y] = centres[k]!
      for (let s = 0; s < 6; s += 1) {
        // The middle of a side, and as far again beyond it.
        const angle = (s * Math.PI) / 3
        const next: [number, number] = [
          x + 2 * ((pitch / 2) * Math.cos(angle)),
          y + 2 * ((pitch / 2) * Math.sin(angle)),
        ]
        const inside =
          next[0] > pitch * 0.4 &&
          next[0] < (columns - 0.4) * pitch &&
          next[1] > side * 0.9 &&
          next[1] < side + (rows - 1) * 1.5 * side + 0.1 * side
        const known = centres.some(([a, b]) => Math.hypot(a - next[0], b - next[1]) < pitch / 4)
        if (inside && !known) centres.push(next)
      }
    }
    return centres
  }

  it("lie where a drawing by mirror images puts them, to 1 mm", () => {
    for (const [rows, columns, pitch] of [
      [5, 4, 97],
      [8, 7, 152.4],
      [12, 9, 61.3],
    ] as const) {
      const { pieces } = hexagonsOffset(rows, columns, pitch)
      const own = pieces.filter(({ shape }) => shape === "hexagon").map(({ centre }) => centre)
      const drawn = drawnByMirrors(rows, columns, pitch)
      expect(own.length).toBe(drawn.length)
      for (const [x, y] of drawn) {
        const off = Math.min(...own.map(([a, b]) => Math.hypot(a - x, b - y)))
        expectClose(off, 0, 1, "a layout is to be true to 1 mm")
      }
    }
  })

  it("fill a rectangle with halves and triangles, without gaps", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 9 }),
        fc.integer({ min: 2, max: 9 }),
        (half, columns) => {
          const rows = half + 1
          const layout = hexagonsOffset(rows, columns, 100, { triangles: true })
          const area = layout.pieces.reduce((sum, { corners }) => sum + areaOf(corners), 0)
          expectClose(
            area / (layout.widthMm * layout.heightMm),
            1,
            1e-9,
            "hexagons, halves and triangles leave nothing uncovered",
          )
        },
      ),
      { numRuns: 30, seed: 19 },
    )
  })

  it("touch six neighbours inside", () => {
    const { pieces } = hexagonsOffset(5, 5, 100)
    const pairs = neighboursOf(pieces, 100)
    const inner = pieces.findIndex(({ row, column }) => row === 2 && column === 2)
    expect(pairs.filter((pair) => pair.includes(inner)).length).toBe(6)
  })
})

function areaOf(corners: readonly (readonly [number, number])[]): number {
  return (
    Math.abs(
      corners.reduce((sum, [x, y], k) => {
        const [a, b] = corners[(k + 1) % corners.length]!
        return sum + x * b - a * y
      }, 0),
    ) / 2
  )
}

describe("half pieces", () => {
  const motifs = [
    readPattern(hexagon).motif,
    buildPolygon({ basic: "dc" }, 6, 4, 2, 3),
    buildPolygon({ basic: "dc" }, 4, 4, 3, 5),
  ]

  it("join whole ones stitch for stitch on every side and lie flat", () => {
    for (const motif of motifs) {
      const half = halfPiece(motif, dk)
      for (const side of half.sides) expect(side).toBe(half.wholeSide)
      expect(half.sides.length).toBeGreaterThanOrEqual(2)
      expect(half.verdict).toBe("flat")
      expectClose(
        half.rows.at(-1)!.share,
        1,
        0.07,
        "half the whole's edge, to half a stitch at an end",
      )
    }
  })

  it("are written in rows that read back", () => {
    for (const motif of motifs) {
      const text = writePattern(halfPiece(motif, dk).motif, "US")
      const { motif: back, problems } = readPattern(text)
      expect(problems.filter(({ severity }) => severity === "error")).toEqual([])
      expect(back.rounds.length).toBe(motif.rounds.length)
      expect(text).toMatch(/^Row 1:/m)
    }
  })

  it("are refused of what has no halves", () => {
    expect(() => halfPiece(buildPolygon({ basic: "dc" }, 5, 3, 2, 3), dk)).toThrow(/even number/)
  })
})

describe("other shapes", () => {
  const sum = (pieces: readonly { corners: readonly (readonly [number, number])[] }[]) =>
    pieces.reduce((all, { corners }) => all + areaOf(corners), 0)

  it("leave nothing uncovered: squares on point with halves and quarters, two sizes in blocks, rectangles", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 7 }),
        fc.integer({ min: 1, max: 7 }),
        (rows, columns) => {
          for (const layout of [
            squaresOnPoint(rows, columns, 50),
            squaresInRows(rows, columns, 80, 100),
            mixedBlocks(3 * rows, 3 * columns, 60, { small: 3, large: 2 }, 4),
          ])
            expectClose(
              sum(layout.pieces) / (layout.widthMm * layout.heightMm),
              1,
              1e-9,
              "pieces fill the rectangle and do not overlap",
            )
        },
      ),
      { numRuns: 20, seed: 19 },
    )
  })

  it("octagons have a small square between four, whose side is theirs", () => {
    const { pieces, counts } = octagonsInRows(4, 5, 120)
    expect(counts.find(({ shape }) => shape === "filler")!.count).toBe(12)
    const sideOf = (corners: readonly (readonly [number, number])[]) =>
      Math.hypot(corners[1]![0] - corners[0]![0], corners[1]![1] - corners[0]![1])
    const side = (shape: string) => sideOf(pieces.find((one) => one.shape === shape)!.corners)
    expectClose(side("filler"), 120 / (1 + Math.SQRT2), 1e-9, "a regular octagon's side")
    expectClose(side("octagon"), side("filler"), 1e-9, "they join side to side")
    expect(circlesInRows(2, 2, 100).pieces.filter(({ shape }) => shape === "filler")).toHaveLength(
      1,
    )
  })

  it("small and large meet over several, where they do", () => {
    expect(meetingOf(1.5)).toEqual({ small: 3, large: 2 })
    expect(meetingOf(1.35)).toEqual({ small: 4, large: 3 })
    expect(meetingOf(1.13)).toBeNull()
    expect(() => mixedBlocks(6, 6, 60, { small: 3, large: 2 }, 40)).toThrow(/blocks have room/)
  })
})

describe("edge triangles", () => {
  it("end with the hexagon's stitches and lie flat", () => {
    for (const rounds of [4, 6, 8]) {
      const { heightMm, widthMm } = { heightMm: 11, widthMm: 5.5 }
      const reach = rounds * heightMm
      const side = Math.round((2 * reach) / Math.sqrt(3) / widthMm)
      const triangle = edgeTriangle(side, reach, "dc", dk)
      expect(triangle.rows.at(-1)!.perSide).toBe(side)
      expect(triangle.verdict).toBe("flat")
      // Written in rows that the reader counts alike.
      const read = readPattern(`Terms: US\n\n${triangle.text.join("\n")}\n`)
      expect(read.problems).toEqual([])
      expect(read.motif.rounds.map((round) => countRound(round).stitches)).toEqual(
        triangle.rows.map(({ total }) => total),
      )
    }
  })
})

describe("squares", () => {
  it("of several sizes cover the grid once", () => {
    const layout = mixedSquares(8, 6, 100, [{ size: 2, count: 4 }])
    const area = layout.pieces.reduce((sum, { size }) => sum + size ** 2, 0)
    expect(area).toBe(48)
    expect(layout.counts.find(({ size }) => size === 1)!.count).toBe(32)
    expect(() => mixedSquares(2, 2, 100, [{ size: 2, count: 2 }])).toThrow(/find room/)
  })

  it("for a size, with the pair that was measured first", () => {
    const plan = planBlanket({
      shape: "square",
      pieceMm: 150,
      pairMm: 306,
      wanted: [1300, 1700],
      have: 12,
    })
    expect(plan).toMatchObject({ columns: 8, rows: 11, needed: 88, toMake: 76, pitchFrom: "pair" })
    expectClose(plan.pitchMm, 156, 1e-9, "the pair less one piece")
    const without = planBlanket({ shape: "square", pieceMm: 150, wanted: [1300, 1700] })
    expect(without.notes.join(" ")).toContain("No joined pair was measured")
  })

  it("of the pieces at hand leave few over", () => {
    fc.assert(
      fc.property(fc.integer({ min: 4, max: 200 }), (have) => {
        const { needed, left } = planBlanket({ shape: "square", pieceMm: 100, have })
        expect(needed + left).toBe(have)
        expect(left / have).toBeLessThanOrEqual(0.25)
      }),
      { numRuns: 60, seed: 19 },
    )
  })
})

describe("colours", () => {
  const { pieces } = squaresInRows(6, 8, 100)
  const pairs = neighboursOf(pieces, 100)
  const weights = pieces.map(() => 1)

  it("by a seed, alike in number, none beside its own", () => {
    const shared = shareColours(weights, pairs, readColours("rose, cream, moss"), null, 7)
    expect(shared.colours.map(({ pieces: n }) => n)).toEqual([16, 16, 16])
    expect(shared.alike).toBe(0)
    expect(shareColours(weights, pairs, readColours("rose, cream, moss"), null, 7)).toEqual(shared)
  })

  it("never more than the yarn left allows", () => {
    const shared = shareColours(weights, pairs, readColours("rose 100 g, cream 1000 g"), 10)
    expect(shared.colours.map(({ pieces: n }) => n)).toEqual([10, 38])
    const short = shareColours(weights, pairs, readColours("rose 100 g, cream 50 g"), 10)
    expect(short.missing).toBe(33)
    expect(shareColours(weights, pairs, readColours("rose 0 g"), 10).missing).toBe(48)
  })
})

describe("named sizes", () => {
  it("are told with every source that contradicts", () => {
    const names = contradictions().map(({ name }) => name)
    expect(names).toEqual(expect.arrayContaining(["crib", "baby", "receiving"]))
    expect(readBlanketSize("baby").named.length).toBe(4)
    expect(() => readBlanketSize("whale")).toThrow(/no size known/)
  })

  it("are read in both units", () => {
    expect(readBlanketSize("130 x 170 cm").mm).toEqual([1300, 1700])
    expectClose(readBlanketSize("4 ft by 5 ft").mm[0], 1219.2, 1e-9, "a foot is 304.8 mm")
  })
})

describe("what cannot be", () => {
  it("ends in a clear answer", () => {
    const piece = { shape: "square", pieceMm: 150 } as const
    expect(() => planBlanket({ ...piece, wanted: [100, 100] })).toThrow(/smaller than one piece/)
    expect(() => planBlanket({ ...piece, wanted: [-100, 100] })).toThrow(/more than nothing/)
    expect(() => planBlanket({ ...piece, pairMm: 200, have: 4 })).toThrow(/not two pieces/)
    expect(() => planBlanket({ ...piece, have: -1 })).toThrow(/cannot be -1/)
    expect(() => planBlanket(piece)).toThrow(/Neither a size/)
    expect(() => readLarger("17 cm: 4", 150)).toThrow(/not a whole number/)
  })
})

describe("the drawing", () => {
  it("is well formed, finite and told in words", () => {
    const layout = hexagonsOffset(4, 3, 100, { triangles: true })
    const svg = layoutSvg(layout, { title: "A & B" })
    expect(svg).not.toMatch(/NaN|Infinity|undefined/)
    expect(svg).toContain("<title>A &#38; B</title>")
    expect(svg.match(/<polygon/g)!.length).toBe(layout.pieces.length)
  })
})
