import { readPattern, withStarts, writeRounds } from "@roundwright/instructions"
import { countRound, type Motif, validateMotif } from "@roundwright/motif"
import { gaugeFrom } from "@roundwright/stitches"
import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"
import {
  baseWords,
  discEndingAt,
  fabricOf,
  leadToCount,
  planCircle,
  roundsForSide,
  squareCircle,
  squareProposals,
  squaringTarget,
} from "../src/index.ts"

const gauge = gaugeFrom({ swatches: [] })
const dc = { basic: "dc" } as const

function read(...rounds: string[]): Motif {
  const { motif, problems } = readPattern(`Terms: US\n\n${rounds.join("\n")}\n`)
  expect(problems.filter(({ severity }) => severity === "error")).toEqual([])
  expect(motif.rounds).toHaveLength(rounds.length)
  return motif
}

const twelve = "Rnd 1: 12 dc in magic ring; join. (12 dc)"
const loops = (count: number): string =>
  `Rnd 3: *sc in next st, ch 4, skip next st; rep from * ${count - 1} more times; join.`
const twelveLoops = () => read(twelve, "Rnd 2: 2 dc in each st around; join. (24 dc)", loops(12))

describe("the fabric of a last round", () => {
  it.each([
    ["lace", 12, twelveLoops],
    [
      "mesh",
      12,
      () => read(twelve, "Rnd 2: *dc in next st, ch 2; rep from * 11 more times; join."),
    ],
    [
      "groups",
      12,
      () => read(twelve, "Rnd 2: *3 dc in next st, ch 1; rep from * 11 more times; join."),
    ],
    [
      "shells",
      6,
      () =>
        read(
          twelve,
          "Rnd 2: *sc in next st, 5 dc in next st; rep from * 5 more times; join. (30 dc, 6 sc)",
        ),
    ],
    // A cluster is a group drawn into one stitch.
    [
      "groups",
      6,
      () => read("Rnd 1: *3-dc cluster in magic ring, ch 2; rep from * 5 more times; join."),
    ],
    ["solid", 12, () => read(twelve)],
  ])("%s has %i units", (name, units, motif) => {
    const fabric = fabricOf(motif())
    expect(fabric.name).toBe(name)
    expect(fabric.units).toHaveLength(units)
  })
})

describe("a circle of loops squared", () => {
  const base = twelveLoops()
  const found = squareCircle(base, gauge, { corners: 4, rounds: 2 })
  const [first] = found

  it("stays lace: every loop held, chains along the sides, a chain at every corner", () => {
    expect(first!.fabric).toBe("lace")
    const held = new Set(
      first!.motif.rounds[first!.from]!.elements.flatMap((element) =>
        element.type === "stitch"
          ? element.anchors.flatMap((anchor) => (anchor.at === "space" ? [anchor.element] : []))
          : [],
      ),
    )
    for (const { element } of fabricOf(base).units) expect(held).toContain(element)
    const last = first!.motif.rounds.at(-1)!.elements
    const corner = new Set(first!.cornerElements.flat())
    expect(last.some(({ type }, e) => type === "chain" && !corner.has(e))).toBe(true)
    for (const group of first!.cornerElements)
      expect(group.some((e) => last[e]!.type === "chain")).toBe(true)
  })

  it("is straight, true and flat, and needs no tr", () => {
    const { shape, verdict, stitchKinds } = first!
    validateMotif(first!.motif)
    expect(Math.abs(shape.bowMm / shape.sideMm)).toBeLessThan(squaringTarget.bow)
    expectClose(shape.cornerAngleDeg, 90, squaringTarget.angleDeg, "asked: within three degrees")
    expect(verdict).toBe("flat")
    expect(stitchKinds).not.toContain("tr")
  })

  it("is proposed in ways that differ: in kind, and in every round", () => {
    expect(new Set(found.map(({ idea }) => idea)).size).toBe(found.length)
    const lines = found.flatMap(({ motif, from }) =>
      writeRounds(withStarts(motif, from), from).map((line) => line.replace(/^Rnd \d+: /, "")),
    )
    expect(new Set(lines).size).toBe(lines.length)
    for (const { price } of found) expect(price).toMatch(/^\d+ stitches/)
    expect(found.find(({ fabric }) => fabric === "solid")!.price).toMatch(/lace changes to solid/)
  })

  it("reads back as the same rounds", () => {
    const text = `${["Terms: US", "", ...writeRounds(withStarts(base))].join("\n")}\n`
    const { proposals } = squareProposals(base, gauge, text, { corners: 4, rounds: 2 })
    proposals.forEach((proposal, i) => {
      const again = readPattern(proposal.text)
      expect(again.motif.rounds.map(({ elements }) => elements)).toEqual(
        withStarts(found[i]!.motif).rounds.map(({ elements }) => elements),
      )
    })
  })
})

describe("a last straight round over lace", () => {
  it("keeps the lace, holds every space and stitch below, and ends in one stitch with chain corners", () => {
    const motif = twelveLoops()
    const sc = { basic: "sc" } as const
    const asked = { corners: 4, rounds: 1, lastStraightRound: sc, proposals: 1 }
    const [first] = squareCircle(motif, gauge, asked)
    validateMotif(first!.motif)
    expect(first!.fabric).toBe("lace")
    const [below, last] = first!.motif.rounds.slice(-2)
    expect(countRound(last!).byKind.map(({ kind }) => kind)).toEqual([sc])
    const held = new Set(
      last!.elements.flatMap((element) =>
        element.type === "stitch"
          ? element.anchors.flatMap((anchor) => (anchor.at === "centre" ? [] : [anchor.element]))
          : [],
      ),
    )
    expect(held.size).toBe(below!.elements.length)
    for (const corner of first!.cornerElements)
      expect(corner.some((e) => last!.elements[e]!.type === "chain")).toBe(true)
    expect(Math.abs(first!.shape.bowMm) / first!.shape.sideMm).toBeLessThan(0.02)
  })
})

describe("units that corners cannot share evenly", () => {
  it("are answered for in units", () => {
    const motif = read(
      "Rnd 1: 10 dc in magic ring; join. (10 dc)",
      "Rnd 2: *sc in next st, ch 5; rep from * 9 more times; join.",
    )
    const [first] = squareCircle(motif, gauge, { corners: 4, rounds: 2 })
    expect(first!.fabric).toBe("lace")
    expect(first!.changes.join(" ")).toMatch(
      /10 loops (of round 2 over 4 sides|below)|on the 10 below/,
    )
    expect(first!.changes.join(" ")).not.toMatch(/stitch(es)? \d/)
  })
})

describe("the circle itself", () => {
  it("is told with its round where it ruffles, and not where it lies flat", () => {
    const full = read(
      twelve,
      "Rnd 2: 3 dc in each st around; join. (36 dc)",
      "Rnd 3: 3 dc in each st around; join. (108 dc)",
    )
    expect(baseWords(full, gauge)).toMatch(/ruffles from round \d/)
    expect(baseWords(discEndingAt(dc, 36, gauge), gauge)).toBeNull()
  })
})

describe("a wanted side", () => {
  it("takes as many rounds as come nearest to it", () => {
    const motif = discEndingAt(dc, 24, gauge)
    const answer = roundsForSide(motif, gauge, { corners: 4 }, 20)
    expect(Math.abs(answer.sideMm - 20)).toBeLessThanOrEqual(answer.plainRoundMm / 2 + 1e-9)
    // Every plain dc round moves a square's side out by its height on both ends.
    expectClose(answer.plainRoundMm, 2 * 1.91, 0.2, "2 h of a dc, h/w 1.91 to 2.00 as printed")
    expect(() => roundsForSide(motif, gauge, { corners: 4 }, Number.NaN)).toThrow(
      expect.objectContaining({ code: "bad-side" }),
    )
  })
})

describe("from one count to another", () => {
  const ring = (count: number) => ({
    ...discEndingAt(dc, 12, gauge),
    rounds: [
      {
        number: 1,
        elements: Array.from({ length: count }, () => ({
          type: "stitch" as const,
          kind: dc,
          anchors: [{ at: "centre" as const }],
        })),
        turned: false,
        closing: "joined" as const,
      },
    ],
  })

  it("leads 224 to 240 with an increase in every fourteenth stitch", () => {
    const made = leadToCount(ring(224), { basic: "sc" }, 240)
    validateMotif(made)
    expect(made.rounds[1]!.elements).toHaveLength(240)
    expect(writeRounds(withStarts(made, 1), 1)[0]).toMatch(
      /sc in next 13 sts, 2 sc in next st; rep from \* around/,
    )
  })

  it("spreads what does not divide as evenly as whole stitches come", () => {
    for (const [from, to] of [
      [100, 117],
      [100, 83],
      [37, 52],
    ] as const) {
      const { elements } = leadToCount(ring(from), { basic: "sc" }, to).rounds[1]!
      expect(elements).toHaveLength(to)
      const at = elements.flatMap((element, e) =>
        element.type === "stitch" &&
        (element.anchors.length > 1 ||
          JSON.stringify(element.anchors) ===
            JSON.stringify((elements[e - 1] as typeof element)?.anchors))
          ? [e]
          : [],
      )
      const gaps = at.slice(1).map((e, i) => e - at[i]!)
      expect(Math.max(...gaps) - Math.min(...gaps)).toBeLessThanOrEqual(1)
    }
  })

  it("refuses what one round cannot do", () => {
    for (const count of [10, 400, Number.NaN])
      expect(() => leadToCount(ring(100), { basic: "sc" }, count)).toThrow(
        expect.objectContaining({ code: "bad-count" }),
      )
  })
})

describe("planned polygons", () => {
  it("have chain corners as makers work them", () => {
    const square = planCircle({ stitches: [dc], gauge, rounds: 4, corners: 4 })
    // Common practice, no source: 3 dc and ch 2 four times, then (2 dc, ch 2, 2 dc) in every corner space.
    expect(square.counts).toEqual([12, 28, 44, 60])
    expect(square.text).toMatch(/\(2 dc, ch 2, 2 dc\) in each corner sp/)
    expect(square.verdict).toBe("flat")
    const again = readPattern(square.text)
    expect(again.motif.rounds.map(({ elements }) => elements)).toEqual(
      withStarts(square.motif).rounds.map(({ elements }) => elements),
    )
    const closed = planCircle({
      stitches: [dc],
      gauge,
      rounds: 4,
      corners: 4,
      cornerStyle: "stitches",
    })
    expect(closed.text).not.toMatch(/ch-2 sp/)
  })

  it("say that the size of tr is a guess, and how increases stay out of line", () => {
    const disc = planCircle({ stitches: [{ basic: "tr" }], gauge, rounds: 4 })
    expect(disc.words.join(" ")).toMatch(/tr is extrapolated/)
    expect(disc.words.join(" ")).toMatch(/Odd rounds begin with half a repeat/)
    const plain = planCircle({ stitches: [dc], gauge, rounds: 2 })
    expect(plain.words.join(" ")).not.toMatch(/extrapolated|half a repeat/)
  })
})
