// Written rounds as a magazine would print them: rounds of our own wording, read and told by the writer.

import type { Motif } from "@roundwright/motif"
import { describe, expect, it } from "vitest"
import {
  defaultStyle,
  type HouseStyle,
  readPattern,
  withStarts,
  writePattern,
  writeRounds,
} from "../src/index.ts"

function read(rounds: readonly string[]): Motif {
  const text = `Terms: US\n${rounds.map((round, i) => `Rnd ${i + 1}: ${round}`).join("\n")}\n`
  const { motif } = readPattern(text)
  expect(motif.rounds).toHaveLength(rounds.length)
  return motif
}

/** The last of the rounds as it is told. */
function told(rounds: readonly string[], style: Partial<HouseStyle> = {}): string {
  return writeRounds(read(rounds), 0, "US", { style }).at(-1)!
}

const disc = ["6 sc in magic ring; join.", "ch 1, 2 sc in each st around; join."]
const square = [
  "ch 4, join to form a ring; ch 3 (counts as dc), 2 dc in ring, ch 2, *3 dc in ring, ch 2; rep from * 2 more times; join.",
]

describe("a written round", () => {
  it("folds a sequence that comes again within it", () => {
    expect(
      told([...square.slice(0, 0), "*dc in magic ring, ch 1; rep from * 11 more times; join."]),
    ).toBe("Rnd 1: [dc, ch 1] 12 times in magic ring; join in first dc. (12 dc, 12 ch-1 sps)")
    expect(
      told([...disc, "(dc, ch 1, dc, ch 1, dc, ch 1, dc) in first st, sc in next 11 sts; join."]),
    ).toContain("([dc, ch 1] 3 times, dc) in same st")
  })

  it("says around, once more, and how a repeat ends, and leaves no tail", () => {
    expect(
      told([...disc, "ch 1, *sc in next st, 2 sc in next st; rep from * 5 more times; join."]),
    ).toBe(
      "Rnd 3: ch 1, starting in same st, *sc in next st, 2 sc in next st; rep from * around; join in first sc. (18 sc)",
    )
    expect(
      told([
        ...disc,
        "ch 1, *sc in next 3 sts, ch 5, skip next 3 sts; rep from * 1 more time; join.",
      ]),
    ).toContain("rep from * once more; join in first sc.")
    const sides = told([
      ...square,
      "ch 3 (counts as dc), dc in next 2 sts, (2 dc, ch 2, 2 dc) in next sp, *dc in next 3 sts, (2 dc, ch 2, 2 dc) in next sp; rep from * 2 more times; join.",
    ])
    expect(sides).not.toMatch(/rep from \* [^;,]*, (?!ending)/)
  })

  it("drops a skip that ends the round and keeps one that ends a repeat", () => {
    expect(
      told([
        "6 sc in magic ring.",
        "2 sc in each st around.",
        "*sc in next st, ch 3, skip next st; rep from * around.",
      ]),
    ).toContain("*sc in next st, ch 3, skip next st; rep from * around.")
    expect(told([...disc, "sc in next 10 sts, skip next 2 sts."])).not.toContain("skip")
  })

  it("names the corners it makes and those it works into", () => {
    const corner = "(2 dc, ch 2, 2 dc)"
    const first = told([
      ...disc,
      `ch 1, *sc in next 2 sts, ${corner} in next st; rep from * around; join.`,
    ])
    expect(first).toContain(`${corner} in next st (corner made)`)
    expect(first.match(/corner made/g)).toHaveLength(1)
    expect(
      told([
        ...square,
        "ch 1, *sc in next 3 sts, (sc, ch 2, sc) in next ch-2 sp; rep from * around; join.",
      ]),
    ).toContain("(sc, ch 2, sc) in each corner sp")
    expect(
      told([
        ...square,
        "ch 1, *sc in next st, 2 sc in next st, sc in next st, (sc, ch 2, sc) in next ch-2 sp; rep from * around; join.",
      ]),
    ).toContain("(sc, ch 2, sc) in next corner sp")
  })

  it("tells a polygon that goes on alike by its sides and corners, wherever the round begins", () => {
    const start = "ch 3 (counts as dc), dc in next 2 sts"
    const corner = "(2 dc, ch 2, 2 dc) in next ch-2 sp"
    expect(
      told([
        ...square,
        `${start}, *${corner}**, dc in next 3 sts; rep from * around, ending at **; join.`,
      ]),
    ).toContain("dc in each st around, working (2 dc, ch 2, 2 dc) in each corner sp; join in top")
    expect(
      told([
        ...square,
        `sl st to next ch-2 sp, ch 3 (counts as dc), (dc, ch 2, 2 dc) in same sp, *dc in next 3 sts**, ${corner}; rep from * around, ending at **; join.`,
      ]),
    ).toContain(
      "(dc, ch 2, 2 dc) in same sp, dc in each st around, working (2 dc, ch 2, 2 dc) in each remaining corner sp; join",
    )
  })

  it("says what is passed over before a stitch that spans several places, in both terms", () => {
    const motif = read([
      "24 dc in magic ring; join.",
      "*dc in next 3 sts, ch 3; rep from * around; join.",
      "skip 2 sts, *tr5tog (1 leg in next st, 3 legs in next ch-3 sp, 1 leg in next st), ch 8, skip next st; rep from * 7 more times; join. (8 sts, 8 ch-8 sps)",
    ])
    for (const [terms, skip, name] of [
      ["US", "skip", "tr5tog"],
      ["UK", "miss", "dtr5tog"],
    ] as const)
      expect(writePattern(motif, terms)).toContain(`${skip} 2 sts, *${name} (1 leg in next st`)
  })

  it("calls no loop a corner that looks like those beside it", () => {
    const loops = "ch 1, *sc in next st, ch 3; rep from * around; join."
    const squared = told([
      "8 sc in magic ring; join.",
      loops,
      "sl st to next ch-3 sp, ch 3 (counts as dc), (dc, ch 3, 2 dc) in same sp, *3 dc in next ch-3 sp**, (2 dc, ch 3, 2 dc) in next ch-3 sp; rep from * around, ending at **; join.",
    ])
    expect(squared).toContain("in same sp (corner made)")
    expect(squared).not.toContain("next corner")
  })

  it("says where it starts, whether its chain counts, and what each join goes into", () => {
    expect(
      told([
        ...square,
        "sl st to next ch-2 sp, ch 5 (counts as dc + ch 2), 3 dc in same sp, ch 1, *(3 dc, ch 2, 3 dc) in next sp, ch 1; rep from * 2 more times, 2 dc in first sp; join.",
      ]),
    ).toMatch(
      /^Rnd 2: sl st .*to next corner sp, ch 5 \(counts as dc, ch 2\), .*join in 3rd ch of beg ch-5\./,
    )
    expect(
      told([
        ...disc,
        "ch 5, skip next st, *sc in next st, ch 5, skip next st; rep from * 4 more times; join.",
      ]),
    ).toMatch(/^Rnd 3: ch 5 \(counts as /)
  })

  it("counts by kind, then spaces, in one style", () => {
    expect(
      told([
        ...disc,
        "ch 1, *sc in next st, dc in next st, ch 2, BLO sc in next st; rep from * around; join.",
      ]),
    ).toMatch(/\(8 sc, 4 dc, 4 ch-2 sps\)$/)
  })

  it("fastens off once, at the end", () => {
    const lines = writePattern(read(disc), "US").trimEnd().split("\n")
    expect(lines.filter((line) => line.includes("Fasten off."))).toEqual([lines.at(-1)])
    expect(writePattern(read(disc), "US", { fastenOff: false })).not.toContain("Fasten off")
  })
})

describe("the style of a house", () => {
  const rounds = [
    ...square,
    "ch 1, *skip next st, [dc in next st, ch 1] twice, (sc, ch 2, sc) in next ch-2 sp; rep from * around; join.",
  ]

  it.each<Partial<HouseStyle>>([
    { repeats: "round" },
    { skip: "sk" },
    { words: "long" },
    { repeats: "round", skip: "sk", words: "long" },
  ])("%j reads back to the same rounds, in both terms", (style) => {
    const motif = read(rounds)
    for (const terms of ["US", "UK"] as const) {
      const text = writePattern(motif, terms, { style })
      expect(readPattern(text).motif.rounds).toEqual(motif.rounds)
      expect(text).not.toBe(writePattern(motif, terms, { style: defaultStyle, totals: false }))
    }
  })

  it("is told in its own words", () => {
    expect(told(rounds, { skip: "sk" })).toContain("sk next st")
    expect(told(rounds, { words: "long" })).toMatch(
      /^Round 2: chain 1, .*double crochet in next stitch/,
    )
    expect(told(rounds, { repeats: "round" })).toContain("[sc, ch 2, sc] in next corner sp")
  })
})

describe("starting chains", () => {
  it("are those of the published tables, and change no count", () => {
    const motif = read([
      "12 dc in magic ring; join.",
      "*2 dc in next st, dc in next st; rep from * around; join.",
    ])
    const lines = writeRounds(withStarts(motif))
    expect(lines[0]).toBe(
      "Rnd 1: ch 3 (counts as dc), 11 dc in magic ring; join in top of beg ch-3. (12 dc)",
    )
    expect(lines[1]).toMatch(/^Rnd 2: ch 3 \(counts as dc\), dc in same st, .*\(18 dc\)$/)
    expect(withStarts(motif, 1).rounds[0]).toEqual(motif.rounds[0])
    // A spiral is not climbed.
    expect(
      withStarts(read(["6 sc in magic ring.", "2 sc in each st around."])).rounds[1]!.startChain,
    ).toBeUndefined()
  })
})
