// Headings as makers write them, through the whole reader: what of yarn, hook, gauge and size reaches the gauge, and that
// what cannot be is told at its place.

import { describe, expect, it } from "vitest"
import { readPattern } from "../src/index.ts"

const round = "\nRnd 1: 12 dc in magic ring; join. (12 dc)\n"
const read = (headings: string) => readPattern(headings + round)

describe("headings as written", () => {
  it.each([
    ["Yarn: sport, Hook: 3.5 mm", { yarnWeight: 2, hookMm: 3.5 }],
    ["Yarn: worsted (4)\nHook: H/8 5.00mm hook", { yarnWeight: 4, hookMm: 5 }],
    ["Yarn: size 20 crochet thread", { yarnWeight: 0, threadSize: 20 }],
    ["Yarn: Aran weight held double", { yarnWeight: 4, strands: 2 }],
    ["Materials: DK cotton, 4 mm hook", { yarnWeight: 3, hookMm: 4 }],
    ["Hook: 4.5 mm instead of 4 mm", { hookMm: 4.5, gaugeHookMm: 4 }],
    [
      "Hook: 5 mm\nGauge: 14 sc x 16 rows = 10 cm with a 4.5 mm hook",
      { hookMm: 5, gaugeHookMm: 4.5 },
    ],
    ["Gauge: 14 sc x 16 rows = 10 cm with a 4.5 mm hook", { hookMm: 4.5 }],
  ])("%s", (headings, expected) => {
    const { gauge, problems } = read(headings)
    const { swatches: _, ...rest } = gauge
    expect(rest).toEqual(expected)
    expect(problems).toEqual([])
  })

  it.each([
    ["Hook: -4 mm", "hook-impossible", "-4 mm"],
    ["Hook: 1e9 mm", "hook-impossible", "1e9 mm"],
    ["Hook: 900 mm", "hook-impossible", "900 mm"],
    ["Size: 1000 km", "size-impossible", "1000 km"],
    ["Size: 9 cm x 0 cm", "size-impossible", "9 cm x 0 cm"],
    ["Size: -9 cm", "size-impossible", "9 cm"],
    ["Yarn: DK\nHook: 4 mm\nGauge: 8 dc = 10 cm", "gauge-unlike-yarn", "8 dc = 10 cm"],
  ])("%s is told where it stands", (headings, code, words) => {
    const { gauge, problems } = read(headings)
    const found = problems.find((problem) => problem.code === code)!
    expect(found.severity).toBe("warning")
    expect(found.hint).not.toBe("")
    const line = headings.split("\n")[found.line - 1]!
    expect(line.slice(found.column - 1, found.column - 1 + found.length)).toBe(words)
    if (code !== "gauge-unlike-yarn") expect(gauge).toEqual({ swatches: [] })
  })

  it.each([
    ["Hook: 8", "hook-not-read"],
    ["Hook: 4 mm or 5 mm", "hook-not-read"],
    ["Yarn: DK or aran", "yarn-not-read"],
    ["Size: 45 x 60 in", "size-not-read"],
    ["Size: small 10 cm, large 15 cm", "size-not-read"],
  ])("%s is left open, and told", (headings, code) => {
    const { problems } = read(headings)
    expect(problems.map((problem) => [problem.code, problem.severity])).toEqual([[code, "note"]])
  })

  it("places a size for whoever compares it with the piece", () => {
    const headings = "Yarn: DK\nSize: 9 cm after Rnd 3, 14 cm when done"
    const { gauge } = read(headings)
    const { start, end } = gauge.pieces![0]!.place!
    expect(headings.slice(start, end)).toBe("9 cm after Rnd 3")
  })
})
