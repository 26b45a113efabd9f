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
  writeFileSync(join(folder, "miscounted.txt"), circle.replace("(24 dc)", "(26 dc)"))
  writeFileSync(
    join(folder, "us.txt"),
    "Terms: US\n\nRnd 1: 12 dc in magic ring; join. (12 dc)\nRnd 2: 2 dc in each st around; join. (24 dc)\n",
  )
  writeFileSync(join(folder, "chain.txt"), "Terms: US\n\nRnd 1: ch 3, join to form a ring.\n")
  writeFileSync(join(folder, "two.txt"), "Terms: US\n\nRnd 1: 2 dc in magic ring; join. (2 dc)\n")
  writeFileSync(
    join(folder, "uk.txt"),
    "Terms: UK\n\nRnd 1: 12 tr in magic ring; join. (12 tr)\nRnd 2: 2 tr in each st around; join. (24 tr)\n",
  )
  const endless = "Rnd 3: *ch 4, skip next blorf; rep from * around."
  writeFileSync(join(folder, "broken.txt"), `${circle}${endless}\n`)
  writeFileSync(join(folder, "assumed.txt"), `${circle}Rnd 3: blorf around. (36 dc)\n`)
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
    expect(out).toMatch(/^round +angle +must go +goes +left +stitch +in the text$/m)
    expect(out).not.toMatch(/-0°|-0\.0/)
  })

  it.each([
    ["broken.txt"],
    ["missing.txt"],
    ["circle.txt", "--corners", "99"],
    ["circle.txt", "--stitches", "frob"],
    ["circle.txt", "--rounds", "two"],
    ["circle.txt", "--corners", "0x4"],
    ["circle.txt", "--from-round", "9"],
    ["circle.txt", "--straighten", "sc,dc"],
    ["circle.txt", "--corner-style", "round"],
    ["circle.txt", "--terms", "DE"],
    ["circle.txt", "circle.txt"],
    ["chain.txt"],
    ["two.txt"],
  ])("ends with 2 and a reason for %s %s %s", async (...args) => {
    const { status, err } = await call("square", ...args)
    expect(status).toBe(2)
    expect(err.length).toBeGreaterThan(30)
    for (const line of err.split("\n\n")[0]!.split("\n"))
      expect(line.length, line).toBeLessThanOrEqual(80)
  })

  it("begins on an earlier round where it is told to, and hints at that where the end cannot be read", async () => {
    const { err } = await call("square", "broken.txt")
    expect(err).toMatch(/--from-round 2/)
    const { out, status } = await call(
      ...["square", "broken.txt", "--from-round", "2", "--rounds", "1", "--json"],
    )
    expect(status).toBeLessThan(2)
    const { proposals } = JSON.parse(out)
    expect(proposals[0].text).not.toMatch(/blorf/)
    expect(checkPattern(proposals[0].text).motif?.rounds).toBe(3)
  })

  it("goes on from the total of a last round whose words it does not know, and says that it does", async () => {
    const { out, status } = await call("square", "assumed.txt", "--rounds", "1")
    expect(status).toBeLessThan(2)
    expect(out.replace(/\s+/g, " ")).toMatch(
      /The pattern, line 6: Round 3 is read with a gap: .* 36 stitches, spread evenly, are assumed\./,
    )
    const settled = `${circle}Rnd 3: blorf in each st around. (36 dc)\n`
    writeFileSync(join(folder, "settled.txt"), settled)
    const json = await call("square", "settled.txt", "--rounds", "1", "--json")
    const told = JSON.parse(json.out).problems as { code: string }[]
    expect(told.map(({ code }) => code)).toContain("read-with-gap")
  })

  it("speaks the terms of the pattern, or those asked for, in every word", async () => {
    const own = await call("square", "uk.txt", "--rounds", "1")
    expect(own.out).toMatch(/worked in .*\bhtr\b/)
    expect(own.out).not.toMatch(/\bhdc\b/)
    const asked = await call(
      ...["square", "uk.txt", "--rounds", "1", "--terms", "US"],
      ...["--stitches", "sc,hdc,dc,tr"],
    )
    expect(asked.out).not.toMatch(/\bhtr\b|\bdtr\b/)
    expect(asked.out).toMatch(/read as US names/)
    const two = await call("square", "uk.txt", "--rounds", "1", "--straighten", "dc,tr")
    expect(two.err.replace(/\s+/g, " ")).toMatch(/Such as: --straighten dc\./)
    const slips = await call("plan-circle", "--terms", "UK", "--stitch", "ss", "--rounds", "3")
    expect(slips.err.replace(/\s+/g, " ")).toMatch(/Take dc as the lowest stitch\./)
  })

  it("tells how many rounds a wanted side takes", async () => {
    const { out, status } = await call("square", "us.txt", "--side", "10cm")
    expect(status).toBeLessThan(2)
    expect(out.replace(/\s+/g, " ")).toMatch(
      /nearest to the side asked for, at about [\d.]+ (mm|cm)/,
    )
    const both = await call("square", "us.txt", "--side", "10cm", "--rounds", "2")
    expect(both.status).toBe(2)
    expect(both.err).toMatch(/Both a side and a number of rounds/)
  })

  it("leads evenly to a count before a border", async () => {
    const { out, status } = await call("square", "us.txt", "--count", "32")
    expect(status).toBe(0)
    expect(out.replace(/\s+/g, " ")).toMatch(
      /sc in next 2 sts, 2 sc in next st; rep from \* around; join in first sc\. .*\(32 sc\)/,
    )
    const far = await call("square", "us.txt", "--count", "900")
    expect(far.status).toBe(2)
    expect(far.err).toMatch(/cannot be led to 900/)
  })

  it("keeps to the corner style and straightens with a last round", async () => {
    const { out } = await call(
      ...["square", "circle.txt", "--rounds", "1", "--corner-style", "chains"],
      ...["--straighten", "sc", "--json"],
    )
    for (const { rounds } of JSON.parse(out).proposals) {
      expect(rounds).toHaveLength(2)
      expect(rounds[1]).toMatch(/(?<!: )\bch \d/)
      expect(rounds[1]).not.toMatch(/\b(?:hdc|dc|tr)\b/)
    }
  })

  it("tells what is wrong with the pattern it goes on from", async () => {
    const { out } = await call("square", "miscounted.txt", "--rounds", "1")
    expect(out).toMatch(/The pattern, line 5: /)
    const json = await call("square", "miscounted.txt", "--rounds", "1", "--json")
    expect(JSON.parse(json.out).problems[0].line).toBe(5)
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

  it("reads the gauge in the pattern's own terms, and answers in them", async () => {
    const gauge = ["--quick", "--gauge", "17 tr x 9 rows = 10 cm"]
    const uk = await call("check", "uk.txt", ...gauge)
    expect(uk.out).not.toMatch(/round of dc\b/)
    const named = JSON.parse((await call("check", "uk.txt", ...gauge, "--json")).out)
    expect(named.inYourHands.shifts.map(({ stitch }: { stitch: string }) => stitch)).toEqual(["tr"])
    // The same hand for the same piece in US terms: the same answer.
    const us = await call(
      "check",
      "us.txt",
      "--quick",
      "--gauge",
      "17 dc x 9 rows = 10 cm",
      "--json",
    )
    expect(JSON.parse(us.out).inYourHands.fullnessHere).toBe(named.inYourHands.fullnessHere)
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

  it.each([
    [["--rounds", "6", "--corners", "6"], /6, 18, 30, 42, 54, 66/],
    [["--rounds", "6", "--stitch", "sc", "--increases", "stacked"], /6 soft corners/],
    [["--rounds", "7", "--stitch", "sc,dc"], /A mix/],
    [["--rounds", "5", "--repeats", "10"], /Stitches in each round: 10, /],
    [["--rounds", "4", "--oval", "15"], /Worked round a chain of 15/],
    [["--rounds", "4", "--longer-by", "8cm", "--yarn", "DK", "--hook", "4 mm"], /long and .* wide/],
    [["--rounds", "4", "--terms", "UK"], /ch 3 \(counts as tr\), 11 tr in magic ring/],
    [
      ["--rounds", "4", "--stitch", "petal", "--gauge", "10 petal x 6 rows = 10 cm"],
      /"petal" is a stitch of your own/,
    ],
  ])("plans %j, in words and as a text that is counted so", async (args, words) => {
    const { out, status } = await call("plan-circle", ...args)
    expect(status).toBeLessThan(2)
    expect(out).toMatch(words)
    for (const line of out.split("\n")) expect(line.length, line).toBeLessThanOrEqual(80)
    const plan = JSON.parse((await call("plan-circle", ...args, "--json")).out)
    const again = checkPattern(plan.text)
    expect(again.rounds.map((round) => round.counted?.stitches)).toEqual(plan.counts)
    // Of an oval it is said that its shape is not worked out.
    const others = again.problems.filter(({ code }) => code !== "worked-along-chain")
    expect(others.filter(({ severity }) => severity === "error")).toEqual([])
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
    [],
    ["--across", "20cm", "--rounds", "5"],
    ["--rounds", "5", "--stitch", "sl st"],
    ["--rounds", "5", "--stitch", "dc2tog"],
    ["--rounds", "5", "--stitch", "petal"],
    ["--rounds", "5", "--corners", "13"],
    ["--rounds", "5", "--corners", "4", "--increases", "stacked"],
    ["--rounds", "5", "--increases", "spiralled"],
    ["--rounds", "5", "--repeats", "0"],
    ["--oval", "20"],
    ["--oval", "2", "--rounds", "3"],
    ["--oval", "20", "--across", "9cm"],
    ["--oval", "20", "--rounds", "3", "--stitch", "sc,dc"],
  ])("ends with 2 and a hint for %s %s %s %s", async (...args) => {
    const { status, err } = await call("plan-circle", ...args)
    expect(status).toBe(2)
    expect(err.length).toBeGreaterThan(20)
  })
})
