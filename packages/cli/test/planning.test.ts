import { mkdtempSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { checkPattern } from "@roundwright/assessment"
import { beforeAll, describe, expect, it } from "vitest"
import { callIn } from "./calling.ts"

let folder = ""
const circle = `Terms: US
Gauge: 16 dc x 8 rows = 10 cm

Rnd 1: 12 dc in adjustable ring. (12 dc)
Rnd 2: 2 dc in each st around. (24 dc)
`

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "roundwright-plan-"))
  writeFileSync(join(folder, "circle.txt"), circle)
  writeFileSync(join(folder, "broken.txt"), `${circle}Rnd 3: blorf around. (36 dc)\n`)
})

const call = (...args: string[]) => callIn(folder, args)

describe("square", () => {
  it("proposes rounds that, checked again, are read whole and come out with four corners", async () => {
    const { out, status } = await call("square", "circle.txt", "--rounds", "1", "--json")
    const { proposals } = JSON.parse(out)
    expect(status).toBeLessThan(2)
    expect(proposals.length).toBeGreaterThan(0)
    expect(Object.keys(proposals[0])).toEqual(
      expect.arrayContaining([
        "rounds",
        "text",
        "bowMm",
        "sideMm",
        "cornerAngleDeg",
        "verdict",
        "stitchKinds",
      ]),
    )
    const again = checkPattern(proposals[0].text)
    expect(again.problems.filter((problem) => problem.severity !== "note")).toEqual([])
    expect(again.motif?.rounds).toBe(3)
    expect(again.motif?.corners).toBe(4)
  })

  it("prints for a person within 80 columns", async () => {
    const { out } = await call("square", "circle.txt", "--rounds", "1", "--stitches", "sc,hdc,dc")
    for (const line of out.split("\n")) expect(line.length, line).toBeLessThanOrEqual(80)
    expect(out).toMatch(/Rnd 3:/)
    expect(out).toMatch(/^round +angle +must go +goes +left +stitch$/m)
    expect(out).not.toMatch(/-0°|-0\.0/)
  })

  it.each([
    ["broken.txt"],
    ["missing.txt"],
    ["circle.txt", "--corners", "99"],
    ["circle.txt", "--stitches", "frob"],
    ["circle.txt", "--rounds", "two"],
  ])("ends with 2 and a reason for %s %s %s", async (...args) => {
    const { status, err } = await call("square", ...args)
    expect(status).toBe(2)
    expect(err.length).toBeGreaterThan(30)
  })
})

describe("check with a hand of one's own", () => {
  it("tells how the piece differs, which way and how much to correct", async () => {
    const { out } = await call("check", "circle.txt", "--gauge", "16 dc x 11 rows = 10 cm")
    expect(out).toMatch(/With your yarn, hook or gauge/)
    expect(out).toMatch(/smaller/)
    for (const line of out.split("\n")) expect(line.length, line).toBeLessThanOrEqual(80)
    const json = await call("check", "circle.txt", "--yarn", "DK", "--hook", "4 mm", "--json")
    const { inYourHands } = JSON.parse(json.out)
    expect(inYourHands.advice.length).toBeGreaterThan(0)
    expect(inYourHands.sizeFactor).toBeGreaterThan(0)
  })

  it("leaves the result as it is without one, and refuses what is none", async () => {
    const { out } = await call("check", "circle.txt", "--json")
    expect(JSON.parse(out)).not.toHaveProperty("inYourHands")
    const { status, err } = await call("check", "circle.txt", "--hook", "banana")
    expect(status).toBe(2)
    expect(err).toMatch(/no hook size/)
  })
})

describe("plan-circle", () => {
  it("plans a disc of the size asked for, and its text reads back to its counts", async () => {
    const { out } = await call(
      ...["plan-circle", "--stitch", "dc", "--across", "200mm"],
      ...["--gauge", "16 dc x 8 rows = 10 cm", "--json"],
    )
    const plan = JSON.parse(out)
    const again = checkPattern(plan.text)
    expect(again.rounds.map((round) => round.counted?.stitches)).toEqual(plan.counts)
    expect(plan.counts.length).toBe(8) // rounds of 12.5 mm in a radius of 100 mm
    expect(plan.verdict).toBe("flat")
  })

  it("says what it assumes when nothing is known of the hand", async () => {
    const { out } = await call("plan-circle", "--across", "20cm")
    expect(out).toMatch(/assumed/)
  })

  it.each([
    ["--across", "banana"],
    ["--across", "20cm", "--hook", "banana"],
    ["--across", "20cm", "--yarn", "banana"],
    ["--across", "20cm", "--gauge", "banana"],
    ["--rounds", "-3"],
  ])("ends with 2 and a hint for %s %s %s %s", async (...args) => {
    const { status, err } = await call("plan-circle", ...args)
    expect(status).toBe(2)
    expect(err.length).toBeGreaterThan(20)
  })
})
