import { basicStitches, kind, yarnOvers } from "@roundwright/stitches"
import { describe, expect, it } from "vitest"
import { closingSymbol, legSymbol, stitchSymbol, togetherSymbol } from "../src/symbols.ts"

const slantedBars = (path: string) => path.match(/L/g)?.length ?? 0

describe("symbols of stitches", () => {
  // "Crochet pattern symbols", crochetzen.com/blog/crochet-pattern-symbols: as many bars as yarn overs before the
  // hook goes in, hdc excepted.
  it.each(basicStitches)("%s has a bar for every yarn over", (basic) => {
    const bars = /hdc/.test(basic) ? 0 : yarnOvers(basic)
    expect(slantedBars(stitchSymbol(kind(basic)).path)).toBe(bars)
    expect(slantedBars(legSymbol(kind(basic)).path)).toBe(bars)
  })

  it("tell all kinds apart by shape", () => {
    const kinds = [
      ...basicStitches.map((basic) => kind(basic)),
      kind("sc", { loops: "back" }),
      kind("sc", { loops: "front" }),
      kind("hdc", { loops: "third" }),
      kind("dc", { post: "front" }),
      kind("dc", { post: "back" }),
      ...(["cluster", "puff", "bobble", "popcorn"] as const).flatMap((how) =>
        [3, 5].map((legs) => kind("dc", { gathered: { how, legs } })),
      ),
    ]
    const symbols = [
      ...kinds.map(stitchSymbol),
      togetherSymbol(kind("sc")),
      togetherSymbol(kind("dc")),
    ]
    expect(new Set(symbols.map(({ path }) => path)).size).toBe(symbols.length)
    expect(new Set(symbols.map(({ key }) => key)).size).toBe(symbols.length)
  })

  it("end in the T of the stitch when legs meet, sc in its cross", () => {
    expect(closingSymbol(kind("sc")).path).toMatch(/H.*V/)
    expect(closingSymbol(kind("dc")).path).toMatch(/^M-[\d.]+,0H[\d.]+$/)
  })

  it("stay within a box little larger than the stitch, and are plain paths", () => {
    for (const basic of basicStitches)
      for (const how of ["cluster", "puff", "bobble", "popcorn"] as const) {
        const { path } = stitchSymbol(kind(basic, { post: "front", gathered: { how, legs: 99 } }))
        expect(path).toMatch(/^[MLHVCQAZ\d.,-]+$/)
        for (const number of path.match(/-?\d*\.?\d+/g)!)
          expect(Math.abs(Number(number))).toBeLessThanOrEqual(1.3)
      }
  })
})
