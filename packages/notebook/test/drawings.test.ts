// Charts as specifications against the published schema of Vega-Lite, and as drawings.

import { readFileSync } from "node:fs"
import { createRequire } from "node:module"
import { dirname, join } from "node:path"
import { chartByName, chartNames } from "@roundwright/charts"
import { Ajv } from "ajv"
import addFormats from "ajv-formats"
import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { anyRows, rowsWith } from "../../charts/test/rows.ts"
import { drawChart } from "../src/page/svg.ts"

const library = createRequire(import.meta.url).resolve("vega-lite")
const schema = JSON.parse(readFileSync(join(dirname(library), "vega-lite-schema.json"), "utf8"))
const ajv = new Ajv({ strict: false, allowUnionTypes: true })
addFormats.default(ajv)
ajv.addFormat("color-hex", /^#(?:[0-9a-f]{3}){1,2}$/i)
const isValid = ajv.compile(schema)
const gauge = { source: "swatch", absolute: true, notes: [] }

describe("the schema", () => {
  it("takes every chart of many ledgers", () => {
    fc.assert(
      fc.property(
        anyRows,
        fc.constantFrom(...chartNames),
        fc.boolean(),
        (ledger, name, absolute) => {
          const spec = chartByName(name, { ledger, gauge: { ...gauge, absolute } })
          expect(isValid(spec), JSON.stringify(isValid.errors?.slice(0, 3))).toBe(true)
        },
      ),
      { seed: 3, numRuns: 40 },
    )
  })

  it("refuses a chart with a mark that does not exist, so that it can refuse", () => {
    const spec = chartByName("growth", { ledger: rowsWith([60, 60]), gauge })
    const wrong = { ...spec, layer: [{ ...spec.layer[0], mark: { type: "blob" } }] }
    expect(isValid(wrong)).toBe(false)
  })
})

describe("a drawing", () => {
  it.each(chartNames)(
    "%s has marks, text and its description, the same bytes each time",
    async (name) => {
      const spec = chartByName(name, { ledger: rowsWith([50, 80, 80, 120], 4), gauge })
      const first = (await drawChart(spec)).markup
      expect((await drawChart(spec)).markup).toBe(first)
      expect(first).toMatch(/^<svg [^>]*role="img"[^>]*aria-label="[^"]{60,}">/)
      expect(first.endsWith("</svg>")).toBe(true)
      expect(first.match(/<path|<line/g)!.length).toBeGreaterThan(8)
      expect(first).toContain(">round</text>")
      expect(first).not.toMatch(/<script|NaN|Infinity|undefined|style=|url\(|href/)
    },
  )

  it("of any ledger holds no NaN and no infinity", async () => {
    await fc.assert(
      fc.asyncProperty(anyRows, fc.constantFrom(...chartNames), async (ledger, name) => {
        const { markup } = await drawChart(chartByName(name, { ledger, gauge }))
        expect(markup).not.toMatch(/NaN|Infinity|undefined/)
      }),
      { seed: 8, numRuns: 40 },
    )
  })

  it("shows text as text", async () => {
    const spec = chartByName("growth", { ledger: rowsWith([60]), gauge })
    const title = { ...spec.title, text: ["</svg><script>alert(1)</script>"] }
    const description = '"><script>x</script>'
    const { markup } = await drawChart({ ...spec, title, description })
    expect(markup).not.toContain("<script")
  })

  it("works without evaluating strings as code", async () => {
    const original = globalThis.Function
    const refuse = () => {
      throw new Error("a string was evaluated as code")
    }
    const { Function: builtIn } = globalThis
    globalThis.Function = new Proxy(builtIn, { construct: refuse, apply: refuse })
    try {
      const spec = chartByName("fullness", { ledger: rowsWith([60, 70]), gauge })
      expect((await drawChart(spec)).markup).toContain("<svg")
    } finally {
      globalThis.Function = original
    }
  })
})
