import { seededRandom } from "@roundwright/numerics"
import { gaugeFrom } from "@roundwright/stitches"
import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { chartByName, shapeChartNames, stitchDiagram } from "../src/index.ts"
import { anyPiece, codeOf, disc, laidOut, moved, type Piece } from "./shapes.ts"

const absolute = { ledger: [], gauge: { source: "swatch", absolute: true, notes: [] } }
const flat = laidOut(disc(12, 4), true)
const ruffle = laidOut(disc(18, 4), true)

describe("every chart of a shape", () => {
  it("takes its unit from the gauge", () => {
    const loose = laidOut(disc(12, 2), true, gaugeFrom({ swatches: [] }))
    const result = { ...absolute, gauge: { ...absolute.gauge, absolute: false } }
    for (const name of ["profile", "outline"]) {
      expect(JSON.stringify(chartByName(name, result, {}, loose))).toContain("widths of one sc")
      // The smallest stitch of a UK pattern is its dc.
      const abroad = JSON.stringify(chartByName(name, { ...result, terms: "UK" }, {}, loose))
      expect(abroad).toContain("widths of one dc")
      expect(abroad).not.toContain("one sc")
      expect(JSON.stringify(chartByName(name, absolute, {}, flat))).not.toContain(
        "widths of one sc",
      )
    }
  })

  it("uses no colour", () => {
    for (const name of shapeChartNames) {
      const text = JSON.stringify(chartByName(name, absolute, {}, ruffle))
      for (const [, ink] of text.matchAll(/"(?:color|stroke|fill)":"([^"]*)"/g))
        expect(["currentColor", "transparent"]).toContain(ink)
    }
  })

  it("holds finite numbers only, wherever the nodes of any motif lie, and is the same each time", () => {
    const size = fc.constantFrom(1e-6, 1, 100, 1e7)
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 11 }),
        fc.constantFrom(...shapeChartNames),
        fc.integer({ min: 240, max: 1200 }),
        size,
        fc.integer(),
        (seed, name, widthPx, scale, where) => {
          const piece = scattered(anyPiece(seed), scale, where)
          const spec = chartByName(name, absolute, { widthPx }, piece)
          everyNumber(spec, (value) => expect(Number.isFinite(value)).toBe(true))
          expect(JSON.stringify(spec)).not.toMatch(/NaN|Infinity|undefined/)
          expect(spec.width + spec.padding.left + spec.padding.right).toBe(widthPx)
          expect(spec.height).toBeLessThan(1.3 * widthPx + 220)
          expect(spec.description.length).toBeGreaterThan(60)
          expect(JSON.stringify(chartByName(name, absolute, { widthPx }, piece))).toBe(
            JSON.stringify(spec),
          )
        },
      ),
      { seed: 12, numRuns: 120 },
    )
  })

  it.each(shapeChartNames)("%s is refused without a shape, with a NaN, or too narrow", (name) => {
    const draw = (piece?: Piece | { motif: Piece["motif"]; shape: null }, widthPx = 400) =>
      codeOf(() => chartByName(name, absolute, { widthPx }, piece))
    expect(draw()).toBe("needs-shape")
    expect(draw({ motif: flat.motif, shape: null })).toBe("needs-shape")
    const broken = moved(
      flat,
      flat.shape.flat.xy.map(() => Number.NaN),
      new Float64Array(3 * flat.shape.net.nodes.length).fill(Number.NaN),
    )
    expect(draw(broken)).toBe("not-finite")
    expect(draw(flat, 100)).toBe("chart-too-narrow")
    expect(draw({ motif: disc(12, 3), shape: flat.shape })).toBe("shape-of-another-motif")
    expect(draw({ motif: { ...flat.motif, rounds: [] }, shape: flat.shape })).toBe(
      "nothing-to-draw",
    )
    expect(codeOf(() => chartByName(name, absolute, {}, flat))).toBe("nothing thrown")
  })

  it("refuses a diagram of more stitches than can be told apart", () => {
    const { motif, shape } = flat
    const springs = Array.from({ length: 60 }, () => shape.net.springs).flat()
    const crowded = { ...shape, net: { ...shape.net, springs } }
    expect(codeOf(() => stitchDiagram(motif, crowded))).toBe("too-many-stitches")
  })
})

/** Every node anywhere in a cube of that size. */
function scattered(piece: Piece, size: number, seed: number): Piece {
  const random = seededRandom(seed)
  const anywhere = (count: number) =>
    Float64Array.from({ length: count }, () => size * (random.uniform() - 0.5))
  const nodes = piece.shape.net.nodes.length
  return moved(piece, anywhere(2 * nodes), anywhere(3 * nodes))
}

function everyNumber(value: unknown, check: (value: number) => void): void {
  if (typeof value === "number") check(value)
  else if (value !== null && typeof value === "object")
    for (const part of Object.values(value)) everyNumber(part, check)
}
