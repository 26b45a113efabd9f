// Yarn, hook and number readers against the published tables and the habits of headings.

import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"
import * as stitches from "../src/index.ts"
import { readNumber } from "../src/read-number.ts"
import { read } from "./gauges.ts"

const tables = read("stitches-tables")

describe("yarn weights", () => {
  it("are those of the published table", () => {
    for (const row of tables.yarnWeights) {
      const ours = stitches.yarnWeights[row.weight]!
      expect(ours.name).toBe(row.name)
      expect(ours.gauge).toEqual({ stitch: row.stitch, fewest: row.fewest, most: row.most })
      if (row.weight === 0) continue // steel and regular hooks stand in one range there
      expect([ours.hookMm.smallest, ours.hookMm.largest]).toEqual(row.hook.mm)
    }
  })

  it.each<[string, number]>([
    ["worsted", 4],
    ["DK", 3],
    ["D.K. cotton", 3],
    ["CYC 4", 4],
    ["weight 3 (light)", 3],
    ["#4 medium", 4],
    ["8 ply", 3],
    ["8-ply wool", 3],
    ["4 ply", 1],
    ["aran", 4],
    ["bulky", 5],
    ["super bulky", 6],
    ["super chunky wool", 6],
    ["heavy rug yarn", 5],
    ["merino roving", 6],
    ["jumbo", 7],
    ["Worsted weight (4) cotton, 50 g", 4],
    ["4-ply worsted", 4],
    ["light worsted", 3],
    ["double knitting", 3],
    ["sport weight", 2],
    ["fingering", 1],
    ["lace weight", 0],
    ["Medium", 4],
    ["medium weight yarn", 4],
    ["size 10 crochet cotton", 0],
    ["5 - bulky", 5],
    ["Yarn: 3 balls of aran wool, 100 g", 4],
  ])("%s is weight %i", (text, weight) => {
    expect(stitches.readYarnWeight(text)?.weight).toBe(weight)
  })

  it.each([
    ["DK or aran"],
    ["light blue cotton"],
    ["fine merino"],
    ["baby yarn"],
    ["3 balls"],
    [""],
    ["weight 9"],
    ["weight 4 oz"],
  ])("%s is not decided", (text) => {
    expect(stitches.readYarnWeight(text)).toBeUndefined()
  })

  it("says where it stands", () => {
    const text = "soft DK cotton"
    const { start, length } = stitches.readYarnWeight(text)!.place
    expect(text.slice(start, start + length)).toBe("DK")
  })

  it("plies agree with the published tables wherever these agree", () => {
    for (const table of tables.plies) {
      for (const [weight, ply] of Object.entries(table.byWeight)) {
        for (const one of String(ply).split(" or ")) {
          // 12 ply stands under 4 and 5, 16 ply in one table only: the tables part there.
          if (one === "16" || one === "12") continue
          expect(stitches.readYarnWeight(`${one} ply`)?.weight, `${one} ply`).toBe(Number(weight))
        }
      }
    }
  })
})

describe("hooks", () => {
  it("are those of the published table", () => {
    for (const row of tables.hooks) {
      const ours = stitches.hooks.find((hook) => hook.mm === row.mm)!
      const name = [ours.usLetter, ours.usNumber].filter((part) => part !== undefined).join("-")
      expect(name).toBe(row.us ?? "")
      expect(ours.oldUk).toBe(row.oldUk ?? undefined)
      if (row.us !== null && row.us !== "7") expect(stitches.readHook(row.us)).toBe(row.mm)
      if (row.oldUk !== null) expect(stitches.readHook(`old UK ${row.oldUk}`)).toBe(row.mm)
      expect(stitches.readHook(`${row.mm} mm`)).toBe(row.mm)
    }
  })

  it.each<[string, number]>([
    ["5 mm", 5],
    ["5mm crochet hook", 5],
    ["H-8", 5],
    ["US H/8 (5.0 mm)", 5],
    ["H-8 - 5 mm", 5],
    ["F/5-3.75mm", 3.75],
    ["I", 5.5],
    ["size G", 4],
    ["H hook", 5],
    ["K-10½", 6.5],
    ["K/10.5", 6.5],
    ["4½ mm", 4.5],
    ["3,5 mm", 3.5],
    ["US 7", 4.5],
    ["US size 8", 5],
    ["steel 7", 1.65],
    ["steel hook size 00", 3.5],
    ["No. 14 steel hook", 0.75],
    ["US 10 steel", 1.3],
    ["UK 8", 4],
    // The mm decide: letters differ between makers (hook cautions of craftingeachday).
    ["G (4.25 mm)", 4.25],
  ])("%s is %d mm", (text, mm) => {
    expect(stitches.readHook(text)).toBe(mm)
  })

  it.each([
    ["8"],
    ["P"],
    ["H-9"],
    ["4 - 5 mm"],
    ["4 mm and 5 mm"],
    ["G-6 or H-8"],
    ["I love this hook"],
    [""],
    ["800 mm"],
    ["steel 40"],
  ])("%s is not guessed", (text) => {
    expect(stitches.readHook(text)).toBeUndefined()
  })

  it("the nearest hook of the table", () => {
    expect(stitches.nearestHook(5.1).usLetter).toBe("H")
  })
})

describe("numbers", () => {
  it.each<[string, number]>([
    ["4", 4],
    ["3.5", 3.5],
    ["3,5", 3.5],
    ["3 1/2", 3.5],
    ["3-1/2", 3.5],
    ["3½", 3.5],
    ["3 ½", 3.5],
    ["½", 0.5],
    ["1/4", 0.25],
    [".5", 0.5],
  ])("%s", (text, value) => {
    expectClose(readNumber(text)!, value, 1e-12, "exact in decimals")
  })

  it("is nothing where there is none", () => {
    expect(readNumber("1/0")).toBeUndefined()
    expect(readNumber("")).toBeUndefined()
    expect(readNumber("many")).toBeUndefined()
  })
})
