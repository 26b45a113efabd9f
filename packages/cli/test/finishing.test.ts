// The commands that match pieces and finish a blanket: what they print, their JSON, their refusals.

import { existsSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { beforeAll, describe, expect, it } from "vitest"
import { callIn } from "./calling.ts"

let folder = ""
const square = `# Garden square
Terms: US
Yarn: DK
Hook: 4 mm

Rnd 1: ch 3 (counts as dc), 2 dc in magic ring, *ch 2, 3 dc in ring; rep from * 2 more times, ch 2; join. (12 dc)
Rnd 2: sl st in next 2 dc and in ch-2 sp, ch 3 (counts as dc), (dc, ch 2, 2 dc) in same sp, *dc in next 3 sts, (2 dc, ch 2, 2 dc) in next ch-2 sp; rep from * 2 more times, dc in next 3 sts; join. (28 dc)
Rnd 3: sl st in next dc and in ch-2 sp, ch 3 (counts as dc), (dc, ch 2, 2 dc) in same sp, *dc in next 7 sts, (2 dc, ch 2, 2 dc) in next ch-2 sp; rep from * 2 more times, dc in next 7 sts; join. (44 dc)
`

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "roundwright-finishing-"))
  writeFileSync(join(folder, "square.txt"), square)
  writeFileSync(join(folder, "old.txt"), "Rnd 1: 2.6 cm\nRnd 2: 4.8 cm\nRnd 3: 8.4 cm\n")
  writeFileSync(join(folder, "mine.svg"), "<svg><!-- a person's own --></svg>")
})

const call = (...args: string[]) => callIn(folder, args)

describe("match", () => {
  it("gives the published keys", async () => {
    const { out, status } = await call("match", "square.txt", "--to", "7.4 cm", "--json")
    const found = JSON.parse(out)
    expect(status).toBe(1)
    expect(Object.keys(found.now)).toEqual(
      expect.arrayContaining(["sideMm", "acrossMm", "diagonalMm"]),
    )
    expect(Object.keys(found.ways[0])).toEqual(
      expect.arrayContaining([
        "kind",
        "change",
        "sizeMm",
        "verdict",
        "bowMm",
        "stitchesPerSide",
        "text",
      ]),
    )
    expect(found).toHaveProperty("cause", null)
  })

  it("prints within 80 columns, and takes a piece measured round by round", async () => {
    const { out } = await call("match", "square.txt", "--to", "old.txt", "--now", "7 cm")
    expect(out.split("\n").every((line) => line.length <= 80)).toBe(true)
    expect(out).toMatch(/They part in round/)
  })

  it("answers from sizes alone", async () => {
    const measured = await call("match", "old.txt", "--to", "9 cm")
    expect(measured.out).toMatch(/8\.4 cm/)
    expect(measured.out).toMatch(/3 rounds of dc stands in/)
    const { out } = await call("match", "--now", "7 in", "--to", "8 in", "--changed", "yarn")
    expect(out).toMatch(/^Not the hook/)
    const straight = await call("match", "--stitches", "60", "--now", "35 in", "--to", "50 in")
    expect(straight.out).toMatch(/takes\s+86, 26\s+more/)
  })

  it("keeps the yarn when the hook alone is given", async () => {
    const [own, other] = await Promise.all(
      [[], ["--hook", "5 mm"]].map(async (more) =>
        JSON.parse((await call("match", "square.txt", "--to", "9 cm", "--json", ...more)).out),
      ),
    )
    const ratio = other.now.acrossMm / own.now.acrossMm
    expect(Math.abs(ratio / Math.sqrt(5 / 4) - 1)).toBeLessThan(0.01)
  })

  it("refuses with a hint", async () => {
    for (const args of [
      ["match", "square.txt"],
      ["match", "--to", "8 in"],
      ["match", "square.txt", "--to", "-3 cm"],
      ["match", "square.txt", "--to", "large"],
      ["match", "none.txt", "--to", "8 cm"],
      ["match", "--now", "7 in", "--to", "8 in", "--changed", "moon"],
    ]) {
      const { err, status } = await call(...args)
      expect(status).toBe(2)
      expect(err).toMatch(/^roundwright match: /)
    }
  })
})

describe("compare", () => {
  it("gives the published keys", async () => {
    const { out, status } = await call("compare", "12, 24, 36", "12, 24, 35", "--json")
    const found = JSON.parse(out)
    expect(status).toBe(1)
    expect(found).toMatchObject({ partAtRound: 3, cause: "step", whose: "b" })
    expect(found.rounds[2]).toMatchObject({ round: 3, a: 36, b: 35 })
    expect(found.rounds[2]).toHaveProperty("ratio")
  })

  it("sets patterns, sizes, rows and hooks side by side", async () => {
    expect((await call("compare", "square.txt", "12, 28, 44")).status).toBe(0)
    expect((await call("compare", "84 rows = 180 cm", "66 rows = 180 cm")).out).toMatch(/1\.27/)
    expect((await call("compare", "3 mm hook", "2.5 mm hook")).out).toMatch(/smaller/)
    expect((await call("compare", "square.txt")).status).toBe(2)
  })
})

describe("yarn", () => {
  it("tells rounds, pieces, joins and skeins with their error", async () => {
    const args = ["--layout", "4x8", "--skein", "50 g = 120 m", "--join", "sc", "--border", "sc,dc"]
    const found = JSON.parse((await call("yarn", "square.txt", ...args, "--json")).out)
    expect(found.rounds.length).toBe(3)
    expect(found.pieces.count).toBe(32)
    expect(found.skeins).toBeGreaterThan(0)
    expect(found.join.errorShare).toBeGreaterThan(0)
    expect(found.total.sc).toBeGreaterThan(found.pieces.sc)
  })

  it("answers from what was done, in rounds, rows and parts", async () => {
    expect(
      (
        await call(
          "yarn",
          "--now",
          "64 in",
          "--used",
          "1800 g",
          "--last-round",
          "45 g",
          "--more",
          "12",
        )
      ).out,
    ).toMatch(/584 g/)
    expect((await call("yarn", "--done", "11", "--used", "210 g", "--left", "500 g")).out).toMatch(
      /make 26/,
    )
    expect(
      (
        await call(
          "yarn",
          "--row",
          "15 g",
          "--row-height",
          "2 cm",
          "--ball",
          "100 g",
          "--balls",
          "15",
        )
      ).out,
    ).toMatch(/90 rows/)
  })

  it("refuses what cannot be", async () => {
    for (const args of [
      ["yarn", "square.txt", "--left", "0 g"],
      ["yarn", "square.txt", "--pieces", "-2"],
      ["yarn", "square.txt", "--join", "glue"],
      ["yarn", "--done", "5", "--of", "3", "--used", "1 g"],
    ])
      expect((await call(...args)).status).toBe(2)
  })
})

describe("border", () => {
  it("counts sides, fits repeats and tells each round", async () => {
    const { out } = await call("border", "--stitches", "59", "--layout", "3x4", "--repeat", "6 + 1")
    expect(out).toMatch(/181 a side/)
    expect(out).toMatch(/241 a side/)
    const eased = await call("border", "--stitches", "186", "--onto", "178")
    expect(eased.out).toMatch(/6 groups of 23 and 2 of 24/)
    const corner = await call(
      "border",
      "--stitches",
      "13",
      "--rounds",
      "sc,sc",
      "--corner",
      "(sc, ch 2, sc)",
    )
    expect(corner.out).toMatch(/60 sc/)
    expect(corner.out).toMatch(/68 sc/)
    expect((await call("border", "--stitches", "204", "--parts", "8")).out).toMatch(/4 parts of 25/)
  })

  it("refuses what cannot be", async () => {
    for (const args of [
      ["border"],
      ["border", "--side", "9 in"],
      ["border", "--stitches", "3", "--repeat", "50"],
    ])
      expect((await call(...args)).status).toBe(2)
  })
})

describe("blanket", () => {
  it("plans, draws, and leaves a file of yours alone", async () => {
    const { out, status } = await call(
      "blanket",
      "square.txt",
      "--size",
      "baby",
      "--have",
      "5",
      "--colours",
      "rose 120 g, cream 300 g",
      "--out",
      "plan.svg",
    )
    expect(status).toBe(0)
    expect(out).toMatch(/more to make/)
    expect(out).toMatch(/Sources do not agree/)
    expect(existsSync(join(folder, "plan.svg"))).toBe(true)
    const own = await call("blanket", "square.txt", "--layout", "2x2", "--out", "mine.svg")
    expect(own.status).toBe(2)
    expect(readFileSync(join(folder, "mine.svg"), "utf8")).toContain("a person's own")
  })

  it("answers from figures alone", async () => {
    expect(
      (await call("blanket", "--size", "52 x 52 in", "--pieces", "100", "--have", "8")).out,
    ).toMatch(/92 more to make/)
    expect(
      (await call("blanket", "--edge", "17 in", "--piece", "8.5 in", "--along", "3")).out,
    ).toMatch(/5\.67 in each/)
  })

  it("refuses what cannot be", async () => {
    for (const args of [
      ["blanket"],
      ["blanket", "--piece", "10 cm", "--size", "5 cm"],
      ["blanket", "--piece", "10 cm", "--size", "-5 cm"],
      ["blanket", "--piece", "10 cm", "--size", "whale"],
    ])
      expect((await call(...args)).status).toBe(2)
  })
})
