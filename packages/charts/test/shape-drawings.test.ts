// Charts of a laid-out shape against the published schema of Vega-Lite 6.5, and as drawings.

import { readFileSync } from "node:fs"
import { createRequire } from "node:module"
import { dirname, join } from "node:path"
import { Ajv } from "ajv"
import addFormats from "ajv-formats"
import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { drawChart } from "../../notebook/src/page/svg.ts"
import { chartByName, shapeChartNames } from "../src/index.ts"
import { anyPiece, disc, laidOut, sampler, square } from "./shapes.ts"

// Vega-Lite belongs to the notebook, which draws; charts only write its language.
const notebook = createRequire(new URL("../../notebook/package.json", import.meta.url))
const schemaFile = join(dirname(notebook.resolve("vega-lite")), "vega-lite-schema.json")
const ajv = new Ajv({ strict: false, allowUnionTypes: true })
addFormats.default(ajv)
ajv.addFormat("color-hex", /^#(?:[0-9a-f]{3}){1,2}$/i)
const isValid = ajv.compile(JSON.parse(readFileSync(schemaFile, "utf8")))

const result = { ledger: [], gauge: { source: "swatch", absolute: true, notes: [] } }
const pieces = [
  ["a disc", laidOut(disc(12, 3), true)],
  ["a cup", laidOut(disc(7, 3), true)],
  ["a square", laidOut(square(), true)],
  ["a sampler of stitches", laidOut(sampler(), true)],
] as const

describe("the schema", () => {
  it.each(pieces)("takes every chart of %s", (_, piece) => {
    for (const name of shapeChartNames)
      for (const widthPx of [328, 640]) {
        const spec = chartByName(name, result, { widthPx }, piece)
        expect(isValid(spec), JSON.stringify(isValid.errors?.slice(0, 3))).toBe(true)
      }
  })

  it("takes the flat charts of random motifs, and refuses a wrong one", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 11 }),
        fc.constantFrom("diagram", "outline", "strain"),
        (seed, name) => {
          const spec = chartByName(name, result, {}, anyPiece(seed))
          expect(isValid(spec), JSON.stringify(isValid.errors?.slice(0, 3))).toBe(true)
          const wrong = { ...spec, layer: [{ ...spec.layer[0], mark: { type: "blob" } }] }
          expect(isValid(wrong)).toBe(false)
        },
      ),
      { seed: 31, numRuns: 20 },
    )
  })
})

describe("a drawing", () => {
  it.each(pieces)("of %s has marks, text and its description, and no NaN", async (_, piece) => {
    for (const name of shapeChartNames) {
      const spec = chartByName(name, result, {}, piece)
      const { markup } = await drawChart(spec)
      expect(markup).toMatch(/^<svg [^>]*role="img"[^>]*aria-label="[^"]{60,}">/)
      expect(markup.match(/<path|<line/g)!.length).toBeGreaterThan(8)
      expect(markup.match(/<text/g)!.length).toBeGreaterThan(5)
      expect(markup).not.toMatch(/<script|NaN|Infinity|undefined|style=|url\(|href/)
    }
  })

  it("draws every stitch of a diagram once", async () => {
    const piece = laidOut(disc(12, 3))
    const { markup } = await drawChart(chartByName("diagram", result, {}, piece))
    // A dc: stem, bar at the top, one slanted bar. 12 + 24 + 36, and one in the legend.
    const dc =
      /d="M0,[\d.]+L0,-[\d.]+M-[\d.]+,-[\d.]+L[\d.]+,-[\d.]+M-[\d.]+,-[\d.]+L[\d.]+,-?[\d.]+"/g
    expect(markup.match(dc)).toHaveLength(73)
  })
})
