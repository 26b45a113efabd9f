import fc from "fast-check"
import { describe, expect, it } from "vitest"
import type { BasicStitch, StitchKind, Terms } from "../src/index.ts"
import * as stitches from "../src/index.ts"
import { read } from "./gauges.ts"
import { anyKind } from "./kinds.ts"

const tables = read("stitches-tables")

describe("names", () => {
  it.each([
    [stitches.kind("dc"), "dc", "tr"],
    [stitches.kind("sl st"), "sl st", "ss"],
    [stitches.kind("dc", { post: "front" }), "FPdc", "FPtr"],
    [stitches.kind("sc", { loops: "back" }), "BLO sc", "BLO dc"],
    [stitches.kind("dc", { gathered: { how: "together", legs: 3 } }), "dc3tog", "tr3tog"],
    [
      stitches.kind("dc", { gathered: { how: "cluster", legs: 3 } }),
      "3-dc cluster",
      "3-tr cluster",
    ],
    [
      stitches.kind("dc", { gathered: { how: "popcorn", legs: 5 } }),
      "popcorn of 5 dc",
      "popcorn of 5 tr",
    ],
    [stitches.kind("hdc", { loops: "third" }), "third-loop hdc", "third-loop htr"],
  ])("%j", (kind, us, uk) => {
    expect(stitches.kindName(kind)).toBe(us)
    expect(stitches.kindName(kind, "UK")).toBe(uk)
  })

  it("in words", () => {
    const name = (basic: BasicStitch, terms: Terms) => stitches.fullKindName({ basic }, terms)
    expect(name("dc", "US")).toBe("double crochet")
    expect(name("dc", "UK")).toBe("treble")
    expect(stitches.fullKindName({ basic: "tr", post: "back" })).toBe("back post treble crochet")
    expect(stitches.fullKindName({ basic: "dc", gathered: { how: "together", legs: 2 } })).toBe(
      "2 double crochet worked together",
    )
  })

  it("every name, short or full, in either terms, is read back as the same kind", () => {
    fc.assert(
      fc.property(anyKind, fc.constantFrom<Terms>("US", "UK"), (kind, terms) => {
        for (const name of [stitches.kindName(kind, terms), stitches.fullKindName(kind, terms)]) {
          for (const spelled of [name, name.toUpperCase(), name.replaceAll(" ", "-")]) {
            const got = stitches.readStitchName(spelled, terms)
            expect(got, `${spelled} (${terms})`).toEqual(kind)
          }
        }
      }),
      { seed: 11, numRuns: 400 },
    )
  })

  it("the published pairs of terms name the same stitch", () => {
    for (const pair of tables.terms) {
      if (pair.us === "ch") continue
      const stitch = stitches.readStitchName(pair.us, "US")
      expect(stitch, pair.us).toBeDefined()
      expect(stitches.readStitchName(pair.uk, "UK"), pair.uk).toEqual(stitch)
      const full = pair.usName.replace(" (triple)", "")
      expect(stitches.readStitchName(full, "US"), full).toEqual(stitch)
      expect(stitches.readStitchName(pair.ukName, "UK"), pair.ukName).toEqual(stitch)
    }
  })
})

describe("spellings met in patterns (common practice, no source)", () => {
  it.each<[string, Terms, StitchKind]>([
    ["d.c.", "US", { basic: "dc" }],
    ["d c", "US", { basic: "dc" }],
    ["D.C.", "UK", { basic: "sc" }],
    ["tr c", "US", { basic: "tr" }],
    ["tr", "UK", { basic: "dc" }],
    ["sl-st", "US", { basic: "sl st" }],
    ["ss", "UK", { basic: "sl st" }],
    ["s.s.", "UK", { basic: "sl st" }],
    ["slip stitches", "US", { basic: "sl st" }],
    ["htr", "UK", { basic: "hdc" }],
    ["half treble", "UK", { basic: "hdc" }],
    ["Half Treble Crochet", "UK", { basic: "hdc" }],
    ["h.d.c.", "US", { basic: "hdc" }],
    ["single crochet", "US", { basic: "sc" }],
    ["triple crochet", "US", { basic: "tr" }],
    ["double treble", "US", { basic: "dtr" }],
    ["double treble", "UK", { basic: "tr" }],
    ["quad tr", "UK", { basic: "trtr" }],
    ["qtr", "UK", { basic: "trtr" }],
    ["trtr", "UK", { basic: "dtr" }],
    ["edc", "US", { basic: "edc" }],
    ["edc", "UK", { basic: "esc" }],
    ["esc", "US", { basic: "esc" }],
    ["trebles", "UK", { basic: "dc" }],
    ["fpdc", "US", { basic: "dc", post: "front" }],
    ["front post double crochet", "US", { basic: "dc", post: "front" }],
    ["BPtr", "US", { basic: "tr", post: "back" }],
    ["raised tr front", "UK", { basic: "dc", post: "front" }],
    ["sc in back loop only", "US", { basic: "sc", loops: "back" }],
    ["dc flo", "US", { basic: "dc", loops: "front" }],
    ["sc2tog", "US", { basic: "sc", gathered: { how: "together", legs: 2 } }],
    ["dc 3 tog", "US", { basic: "dc", gathered: { how: "together", legs: 3 } }],
    ["4-tr cl", "US", { basic: "tr", gathered: { how: "cluster", legs: 4 } }],
    ["puff of 3 hdc", "US", { basic: "hdc", gathered: { how: "puff", legs: 3 } }],
    ["5 dc popcorn", "US", { basic: "dc", gathered: { how: "popcorn", legs: 5 } }],
    ["five-dc bobble", "US", { basic: "dc", gathered: { how: "bobble", legs: 5 } }],
  ])("%s (%s)", (word, terms, kind) => {
    expect(stitches.readStitchName(word, terms)).toEqual(kind)
  })

  it.each<[string, Terms]>([
    ["2 dc", "US"],
    ["wobble", "US"],
    ["", "US"],
    ["st", "US"],
    ["ch", "US"],
    ["cluster", "US"],
    ["htr", "US"],
    ["sc", "UK"],
    ["hdc", "UK"],
    ["single crochet", "UK"],
    ["dc1tog", "US"],
    ["dc99tog", "US"],
    ["d".repeat(10_000), "US"],
  ])("%s (%s) is no stitch's name", (word, terms) => {
    expect(stitches.readStitchName(word, terms)).toBeUndefined()
  })

  it("words of one set of terms are not stitches of the other", () => {
    for (const word of stitches.ukOnlyWords) {
      expect(stitches.readStitchName(word, "US"), word).toBeUndefined()
    }
    for (const word of stitches.usOnlyWords) {
      expect(stitches.readStitchName(word, "UK"), word).toBeUndefined()
    }
  })

  it("nothing that can be typed makes it throw", () => {
    fc.assert(
      fc.property(
        fc.string({ maxLength: 200 }),
        fc.constantFrom<Terms>("US", "UK"),
        (word, terms) => {
          stitches.readStitchName(word, terms)
        },
      ),
      { seed: 12, numRuns: 500 },
    )
  })
})

describe("steps and starting chains", () => {
  it("yarn-overs are those of the step table", () => {
    for (const row of tables.yarnOvers) {
      expect(stitches.yarnOvers(row.stitch), row.stitch).toBe(row.yarnOvers)
    }
    expect(stitches.isTall("dc")).toBe(true)
    expect(stitches.isTall("hdc")).toBe(false)
  })

  it("most published tables have the same chains; none has more backers", () => {
    const votes = new Map<string, number[]>()
    for (const table of tables.turningChains) {
      for (const [basic, chains] of Object.entries(table.chains)) {
        votes.set(basic, [...(votes.get(basic) ?? []), chains as number])
      }
    }
    for (const [basic, given] of votes) {
      const ours = stitches.turningChains(basic as BasicStitch)
      const agreeing = given.filter((chains) => chains === ours).length
      expect(agreeing, basic).toBeGreaterThan(given.length / 2)
    }
  })

  it("a chain stands for the stitch it is the turning chain of", () => {
    for (const basic of ["hdc", "dc", "tr", "dtr", "trtr"] as const) {
      expect(stitches.stitchForTurningChain(stitches.turningChains(basic))).toBe(basic)
      expect(stitches.turningChainCounts(basic)).toBe(true)
    }
    expect(stitches.stitchForTurningChain(1)).toBeUndefined()
    expect(stitches.turningChainCounts("sc")).toBe(false)
  })

  it("same kind compares every respect", () => {
    fc.assert(
      fc.property(anyKind, anyKind, (a, b) => {
        expect(stitches.sameKind(a, a)).toBe(true)
        expect(stitches.sameKind(a, b)).toBe(stitches.kindName(a) === stitches.kindName(b))
      }),
      { seed: 13, numRuns: 200 },
    )
  })
})
