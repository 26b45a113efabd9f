// Numbers that no piece can have: every option says so in a sentence, and nothing is worked out with them.

import { mkdtempSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { beforeAll, describe, expect, it } from "vitest"
import { callIn } from "./calling.ts"

let folder = ""

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "roundwright-numbers-"))
  writeFileSync(
    join(folder, "circle.txt"),
    "Terms: US\nYarn: DK\nRnd 1: 12 dc in magic ring; join. (12 dc)\n",
  )
})

const never = ["0", "-1", "1.5", "1e9", "1e308", "NaN", "Infinity", "-Infinity", "", "x"]
const huge = ["999999999", "9999999999", "9".repeat(400)]
const counts = [...never, ...huge]
const lengths = [
  ...never,
  ...["0mm", "-1mm", "1e9mm", "1e308mm", "NaNmm", "Infinitymm", "0.001mm", "200"],
  ...["1000000000mm", `${"9".repeat(400)}mm`],
]
const gauges = [
  ...[
    "0 dc",
    "0 dc x 0 rows = 10 cm",
    "10 dc = 0 cm",
    "10 dc x 5 rows = 1e308 cm",
    "-4 dc = 10 cm",
  ],
  ...["99999999999 dc x 5 rows = 10 cm", "10 dc x 1 row = 10 cm", "0.1 dc x 0.1 rows = 10 cm"],
  ...["NaN", "Infinity dc = 10 cm", "", "9".repeat(400)],
]
// A size with decimals that is made, such as 1.5, is understood as mm.
const hooks = [...never, ...huge, "0mm", "-4mm", "1e9mm", "9999mm", "0.001mm"].filter(
  (one) => one !== "1.5",
)
const yarns = ["-1", "8", "99", "1.5", "NaN", "", "9".repeat(400)]

const plan = ["plan-circle"]
const square = ["square", "circle.txt"]
const check = ["check", "circle.txt"]

const cases: readonly (readonly [string, readonly string[], readonly string[]])[] = [
  ["--rounds", plan, counts],
  ["--rounds", [...plan, "--oval", "20"], [...counts, "61"]],
  ["--across", plan, lengths],
  ["--corners", [...plan, "--rounds", "5"], [...counts, "1", "2", "13"]],
  ["--repeats", [...plan, "--rounds", "5"], [...counts, "61"]],
  ["--oval", [...plan, "--rounds", "6"], [...counts, "2", "1001", "9999999"]],
  ["--longer-by", [...plan, "--rounds", "6"], [...lengths, "90000mm", "1mm"]],
  ["--gauge", [...plan, "--rounds", "4"], gauges],
  [
    "--gauge",
    [...plan, "--rounds", "4", "--stitch", "petal"],
    ["10 petal x 0 rows = 10 cm", "10 petal x 1e9 rows = 10 cm", "-10 petal x 6 rows = 10 cm"],
  ],
  ["--hook", [...plan, "--rounds", "4"], hooks],
  ["--yarn", [...plan, "--rounds", "4"], yarns],
  ["--corners", square, [...counts, "1", "2", "13"]],
  ["--rounds", square, [...counts, "13"]],
  ["--from-round", square, [...counts, "2"]],
  ["--gauge", check, gauges],
  ["--hook", check, hooks],
  ["--yarn", check, yarns],
]

describe("a number that no piece can have", () => {
  it.each(cases)("of %s after %j is refused in a sentence", async (option, before, values) => {
    for (const value of values) {
      const { status, out, err } = await callIn(folder, [...before, option, value])
      const said = `${option} ${value.slice(0, 30)}: ${err}`
      expect(status, said).toBe(2)
      expect(out, said).toBe("")
      expect(err, said).toMatch(/^roundwright [a-z-]+:[\s\S]*\.\n$/)
      expect(err.split("\n").length, said).toBeLessThanOrEqual(6)
      for (const line of err.split("\n")) expect(line.length, said).toBeLessThanOrEqual(80)
    }
  })

  it("is told from one that is only large", async () => {
    const said = async (...args: string[]) => (await callIn(folder, args)).err.replace(/\s+/g, " ")
    expect(await said("plan-circle", "--rounds", "9999999999")).toMatch(/from 1 to 120\./)
    expect(await said("plan-circle", "--rounds", "-1")).toMatch(/above 0, not "-1"\./)
    expect(await said("plan-circle", "--rounds")).toMatch(/'--rounds' needs a value\./)
    expect(await said("plan-circle", "--oval", "9999999", "--rounds", "6")).toMatch(
      /9999999 foundation chains cannot be planned\. Give at most 1000 chains\./,
    )
  })

  it("is told back as it was typed", async () => {
    const petals = ["plan-circle", "--rounds", "3", "--stitch", "petal", "--gauge"]
    const { err } = await callIn(folder, [...petals, "-10 petal x 6 rows = 10 cm"])
    expect(err).toMatch(/"-10 petal x 6/)
  })

  it("is no yarn weight, and a weight by its number is one", async () => {
    for (const weight of ["0", "4", "7"]) {
      const args = ["plan-circle", "--rounds", "2", "--yarn", weight]
      expect((await callIn(folder, args)).status, weight).toBe(0)
    }
  })
})
