// The pattern sheet of small pieces: what stands on it, and what does not.

import { describe, expect, it } from "vitest"
import { makeSheet, sheetFormats } from "../src/index.ts"
import { spokenSteps, spokenTotal } from "../src/sheet/spoken.ts"

const coaster = `# Sill Coaster
Design by Ada Fenn
Terms: US
Yarn: DK, acrylic, about 18 m
Hook: 4 mm
Gauge: 17 dc x 9 rows = 10 cm
Notes: Any leftover will do for the dc rounds.

Rnd 1: ch 3 (counts as dc), 11 dc in magic ring; join. (12 dc)
Rnd 2: ch 3 (counts as dc), dc in same st, 2 dc in each st around; join. (24 dc)
Rnd 3: ch 3 (counts as dc), *3-dc cluster in next st, ch 2, dc in next st; rep from * 10 more times; 3-dc cluster in next st, ch 2; join.
`
const sheet = makeSheet(coaster, { shape: "ledger" })

describe("the sheet", () => {
  it("carries the designer's own words", () => {
    expect(sheet.title).toBe("Sill Coaster")
    expect(sheet.own).toEqual(["Design by Ada Fenn"])
    expect(sheet.notes.at(-1)).toBe("Any leftover will do for the dc rounds.")
    expect(sheet.materials).toContainEqual({ what: "Length needed", text: "about 18 m" })
    expect(sheet.gauge[0]).toBe("17 dc x 9 rows = 10 cm")
  })

  it("puts the letter beside the millimetres and the weight beside the yarn", () => {
    expect(sheet.materials).toContainEqual({ what: "Hook", text: "4 mm (US G-6)" })
    expect(sheet.materials[0]!.text).toBe("DK, acrylic, about 18 m (weight 3, Light)")
  })

  it("lists the abbreviations that are used and no other", () => {
    expect(sheet.abbreviations.map(({ short }) => short)).toEqual([
      "beg",
      "ch",
      "dc",
      "rep",
      "rnd",
      "sp",
      "st",
    ])
  })

  it("explains special stitches step by step", () => {
    expect(sheet.special).toEqual([
      {
        name: "3-dc cluster",
        how: "yarn over, insert the hook and pull up a loop, (yarn over, pull through 2 loops), 3 times in the place named; yarn over and pull through all loops on the hook.",
      },
    ])
  })

  it("tells the size after each round, growing", () => {
    const sizes = sheet.rounds.map(({ sizeSoFar }) => Number.parseFloat(sizeSoFar!))
    expect(sizes).toHaveLength(3)
    expect(sizes[0]! < sizes[1]! && sizes[1]! < sizes[2]!).toBe(true)
  })

  it("warns of heat on acrylic and defers to local rules", () => {
    expect(sheet.cautions.join(" ")).toMatch(/acrylic/)
    expect(sheet.cautions.join(" ")).toMatch(/local product-safety rules/)
  })

  it("lists what only the designer can say, and makes nothing up", () => {
    expect(sheet.missing).toEqual(["date and copyright", "a photograph"])
    const bare = makeSheet(
      "Rnd 1: 6 sc in magic ring. (6 sc)\nRnd 2: 2 sc in each st around. (12 sc)\n",
      { shape: "ledger" },
    )
    expect(bare.size).toEqual([])
    expect(bare.rounds[0]!.sizeSoFar).toBeNull()
    expect(bare.missing).toContain("the hook in mm")
    expect(bare.missing).toContain("the title")
  })

  it("is made in the other terms, the designer's own sentences too", () => {
    const british = makeSheet(coaster, { terms: "UK", shape: "ledger" })
    expect(british.rounds[0]!.work).toContain("11 tr in magic ring")
    expect(british.gauge[0]).toBe("17 tr x 9 rows = 10 cm")
    expect(british.notes.at(-1)).toBe("Any leftover will do for the tr rounds.")
    expect(british.special[0]!.name).toBe("3-tr cluster")
  })

  it("is refused for a pattern with a round that could not be read", () => {
    expect(() =>
      makeSheet("Rnd 1: 6 sc in magic ring. (6 sc)\nRnd 2: wave the hook about.\n"),
    ).toThrow(/Round 2 could not be read/)
    expect(() => makeSheet("nothing at all")).toThrow(/no round/)
  })
})

describe("its editions", () => {
  it.each(["html", "large"] as const)(
    "%s is one page with no script and nothing fetched",
    (format) => {
      const html = sheetFormats[format](makeSheet(coaster))
      expect(html).toMatch(/^<!doctype html>/)
      expect(html).not.toMatch(/<script|src=|href=|NaN|undefined/)
      expect(html.includes("<svg")).toBe(format === "html")
    },
  )

  it("escapes what the designer writes", () => {
    const html = sheetFormats.html({ ...sheet, title: "<b>&" })
    expect(html).toContain("<h1>&lt;b&gt;&amp;</h1>")
  })

  it("never parts a round from its total in print", () => {
    expect(sheetFormats.html(sheet)).toContain("break-inside: avoid")
  })

  it("spells rounds out for readers who listen", () => {
    expect(
      spokenSteps(
        "ch 3 (counts as dc); *2 dc in next ch-2 sp, sk next st; rep from * 5 more times; join.",
        "US",
      ),
    ).toEqual([
      "Chain 3, which counts as double crochet",
      "Work the following 6 times: 2 double crochet in next 2-chain space, skip next stitch",
      "Join",
    ])
    expect(spokenTotal("(36 dc + 12 ch-2 sps)", "US")).toBe(
      "36 double crochet and 12 2-chain spaces",
    )
    expect(spokenTotal("(36 tr)", "UK")).toBe("36 trebles")
  })
})
