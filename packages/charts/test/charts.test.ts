import { RoundwrightError } from "@roundwright/numerics"
import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"
import {
  type ChartSpec,
  chartByName,
  chartNames,
  curvatureChart,
  fullnessChart,
  growthChart,
  reachChart,
} from "../src/index.ts"
import { anyRows, rowsWith } from "./rows.ts"

const flat = 20 * Math.PI
const even = rowsWith([flat, flat, flat, flat])
const gauge = { source: "swatch", absolute: true, notes: [] }

describe("what a chart says", () => {
  const title = (spec: ChartSpec) =>
    (spec.title.text as string[]).join(" ").replaceAll("\u00a0", " ")
  const ruffled = rowsWith([flat, flat, 1.8 * flat, flat])
  const cupped = rowsWith([flat, 0.5 * flat, 0.5 * flat, 0.5 * flat])

  it("says without alarm which round strays in a piece that lies flat throughout", () => {
    const lying = ruffled.map((row) => ({ ...row, verdict: "flat" as const }))
    expect(title(growthChart(lying))).toBe(
      "Round 3 grows most, 1.80 of a flat round by itself; the others even it out",
    )
  })

  it.each([
    [growthChart(even), "Every round grows about as much as flat needs"],
    [growthChart(ruffled), "Round 3 grows 1.80 times what flat needs"],
    [growthChart(cupped), "Round 2 grows only 0.50 of what flat needs"],
    [
      growthChart(rowsWith([flat, -flat])),
      "Round 2 draws the edge in where flat would let it grow",
    ],
    [growthChart(rowsWith([flat, 0])), "Round 2 does not grow where flat needs it to"],
    [fullnessChart(even), "The edge stays within 13 % of a flat one"],
    [fullnessChart(ruffled), "After round 4 the edge is 1.20 times a flat one"],
    [
      fullnessChart(rowsWith([1.5 * flat, 0.5 * flat])),
      "The edge leaves flat in 1 round and comes back",
    ],
    [curvatureChart(ruffled), "Round 3 is furthest from flat: 288 degrees towards ruffling"],
    [curvatureChart(cupped), "Round 2 is furthest from flat: 180 degrees towards cupping"],
    [curvatureChart(even), "Every round is flat to the degree"],
    [reachChart(even), "After round 4 the edge is 40 mm from the centre"],
    [reachChart(rowsWith([80, 80], 4)), "After round 2 a side is 20 mm out and a corner 28 mm"],
  ])("finding %#", (spec, said) => {
    expect(title(spec)).toBe(said)
    expect(spec.description.startsWith(`${said}.`)).toBe(true)
  })

  it("tells every round in the description, and how many are left out of a long one", () => {
    expect(growthChart(ruffled).description).toContain("round 3: 113 mm, flat needs 63 mm")
    const long = rowsWith(Array.from({ length: 90 }, () => flat))
    expect(fullnessChart(long).description).toContain("and 30 rounds more.")
  })

  it("keeps figures with their units, however narrow the title", () => {
    const lines = reachChart(rowsWith([80, 80], 4), { widthPx: 240 }).title.text as string[]
    expect(lines.length).toBeGreaterThan(1)
    for (const line of lines) expect(line).not.toMatch(/^mm|\d$/)
  })

  it("names the unit of lengths on the axis", () => {
    const unit = (spec: ChartSpec) => JSON.stringify(spec.layer.at(-1)?.data)
    for (const name of ["growth", "reach"]) {
      expect(unit(chartByName(name, { ledger: even, gauge }))).toContain(", mm")
      const loose = { ledger: even, gauge: { ...gauge, absolute: false } }
      expect(unit(chartByName(name, loose))).toContain(", widths of one sc")
    }
    expect(unit(curvatureChart(even))).toContain("degrees")
  })

  it("writes only the furthest figure where rounds stand too close", () => {
    const labels = (spec: ChartSpec) =>
      spec.data.values.filter((value) => value.label !== "").length
    const wild = rowsWith(Array.from({ length: 12 }, (_, i) => (i === 5 ? 3 : 2) * flat))
    expect(labels(growthChart(wild, { widthPx: 640 }))).toBe(12)
    expect(labels(growthChart(wild, { widthPx: 328 }))).toBe(1)
  })
})

describe("what a chart draws", () => {
  it("uses the figures of the ledger as they are", () => {
    const spec = growthChart(rowsWith([flat, 1.25 * flat]))
    expectClose(Number(spec.data.values[1]?.growth), 25 * Math.PI, 1e-9, "two doubles")
    expectClose(Number(spec.data.values[1]?.flatGrowth), 20 * Math.PI, 1e-9, "two doubles")
  })

  it("keeps one wild round from flattening the rest, and writes its figure", () => {
    const spec = fullnessChart(rowsWith([flat, 9 * flat, flat]))
    expect(spec.data.values.map((value) => value.own)).toEqual([1, 2.5, 1])
    expect(spec.data.values[1]?.label).toBe("9.00")
    const names = JSON.stringify(fullnessChart(rowsWith([flat, 9 * flat])).layer)
    expect(names).toContain('"alone 9.00"')
  })

  it("uses no colour: one ink, told apart by fill, dash and shape", () => {
    const inks = /"(?:color|stroke|fill)":"([^"]*)"/g
    for (const name of chartNames) {
      const text = JSON.stringify(chartByName(name, { ledger: rowsWith([70, 80, 90], 4), gauge }))
      for (const [, ink] of text.matchAll(inks))
        expect(["currentColor", "transparent"]).toContain(ink)
    }
  })

  it("keeps names at the ends of lines apart", () => {
    const names = fullnessChart(even).layer.filter(
      ({ mark }) => mark.type === "text" && mark.dx === 6,
    )
    expect(names.map(({ mark }) => mark.dy).sort()).toEqual([-8, 8])
  })

  it("holds finite numbers only, whatever the ledger says, and is the same each time", () => {
    fc.assert(
      fc.property(
        anyRows,
        fc.constantFrom(...chartNames),
        fc.integer({ min: 240, max: 1200 }),
        (ledger, name, widthPx) => {
          const spec = chartByName(name, { ledger, gauge }, { widthPx })
          everyNumber(spec, (value) => expect(Number.isFinite(value)).toBe(true))
          expect(JSON.stringify(spec)).not.toContain("NaN")
          expect(spec.width + spec.padding.left + spec.padding.right).toBe(widthPx)
          expect(JSON.stringify(chartByName(name, { ledger, gauge }, { widthPx }))).toBe(
            JSON.stringify(spec),
          )
        },
      ),
      { seed: 11, numRuns: 200 },
    )
  })
})

describe("what is refused", () => {
  const code = (work: () => unknown) => {
    try {
      work()
    } catch (error) {
      return error instanceof RoundwrightError ? error.code : String(error)
    }
    return "nothing thrown"
  }

  it.each(chartNames)("%s without rows, with a NaN, or too narrow", (name) => {
    expect(code(() => chartByName(name, { ledger: [], gauge }))).toBe("nothing-to-draw")
    const broken = [{ ...even[0]!, growthMm: Number.NaN }]
    expect(code(() => chartByName(name, { ledger: broken, gauge }))).toBe("not-finite")
    expect(code(() => chartByName(name, { ledger: even, gauge }, { widthPx: 100 }))).toBe(
      "chart-too-narrow",
    )
  })

  it.each(["", "pie", "constructor", "__proto__"])("the name %j", (name) => {
    expect(code(() => chartByName(name, { ledger: even, gauge }))).toBe("unknown-chart")
  })
})

function everyNumber(value: unknown, check: (value: number) => void): void {
  if (typeof value === "number") check(value)
  else if (value !== null && typeof value === "object")
    for (const part of Object.values(value)) everyNumber(part, check)
}
