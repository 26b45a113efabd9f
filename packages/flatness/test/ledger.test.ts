import { buildDisc, buildPolygon, type Element, type Motif, type Round } from "@roundwright/motif"
import {
  type BasicStitch,
  type Gauge,
  gaugeFrom,
  sizeOf,
  widthBesideChains,
} from "@roundwright/stitches"
import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"
import { keepLedger, polygonFactor } from "../src/index.ts"

/** A hand with exactly this height over width in one stitch. */
function handOf(basic: BasicStitch, ratio: number, widthMm = 5): Gauge {
  return gaugeFrom({ swatches: [{ kind: { basic }, widthMm, heightMm: widthMm * ratio }] })
}

const steps = (k: number, rounds: number) => Array.from({ length: rounds }, (_, i) => k * (i + 1))
const rounding = "sums of a few doubles"

describe("discs against closed forms", () => {
  // Ratio implied by the trade's rule, k / (2 pi). Source: "Getting your circles flat",
  // craftymaria.blogspot.com/2009/06/getting-your-circles-flat.html
  it.each([
    ["sc", 6],
    ["hdc", 8],
    ["dc", 12],
  ] as const)("%s with +%i a round at its implied ratio has fullness 1", (basic, k) => {
    const ledger = keepLedger(buildDisc({ basic }, steps(k, 9)), handOf(basic, k / (2 * Math.PI)))
    for (const row of ledger.rows) {
      expectClose(row.fullness, 1, 0.005, "asked for: within half a per cent")
      expectClose(row.accumulatedFullness, 1, 0.005, "asked for: within half a per cent")
    }
    expect(ledger.verdict).toBe("flat")
    expect(ledger.fromRound).toBeNull()
  })

  it("k a round against k flat gives curvature 2 pi (1 - k / k_flat)", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 3, max: 24 }),
        fc.double({ min: 0.8, max: 2.4, noNaN: true }),
        (k, ratio) => {
          const ledger = keepLedger(buildDisc({ basic: "dc" }, steps(k, 6)), handOf("dc", ratio))
          const flat = 2 * Math.PI * ratio
          for (const row of ledger.rows)
            expectClose(row.curvatureDeg, 360 * (1 - k / flat), 1e-9 * 360, rounding)
        },
      ),
      { seed: 21, numRuns: 60 },
    )
  })

  it("counts of a sphere's rounds give the curvature of its cap, 2 pi (1 - cos(r / R))", () => {
    // Source: small circle of a sphere, circumference 2 pi R sin(r / R) (elementary).
    const [width, height, radius] = [1, 1, 200]
    const counts = Array.from({ length: 100 }, (_, i) =>
      Math.round((2 * Math.PI * radius * Math.sin(((i + 1) * height) / radius)) / width),
    )
    const ledger = keepLedger(
      buildDisc({ basic: "dc" }, counts),
      handOf("dc", height / width, width),
    )
    const growth = ledger.rows.slice(60, 80).reduce((sum, row) => sum + row.growthMm, 0) / 20
    const inside = 360 * (1 - growth / (2 * Math.PI * height))
    const expected = 360 * (1 - Math.cos(70.5 / radius))
    expectClose(
      inside,
      expected,
      3,
      "counts are whole numbers: one stitch in 20 rounds is 3 degrees",
    )
  })

  it("a steady deficit cups and a steady surplus ruffles from the first round", () => {
    const cups = keepLedger(buildDisc({ basic: "dc" }, steps(8, 6)), handOf("dc", 2))
    const ruffles = keepLedger(buildDisc({ basic: "dc" }, steps(17, 6)), handOf("dc", 2))
    expect([cups.verdict, cups.fromRound]).toEqual(["cups", 1])
    expect([ruffles.verdict, ruffles.fromRound]).toEqual(["ruffles", 1])
  })

  it("a full round followed by lean ones works itself out", () => {
    const ledger = keepLedger(
      buildDisc({ basic: "dc" }, [12, 24, 36, 60, 62, 75]),
      handOf("dc", 1.91),
    )
    expect(ledger.rows[3]!.fullness).toBeGreaterThan(1.5)
    expect(ledger.verdict).toBe("flat")
  })

  it("names the round from which a disc waves", () => {
    const ledger = keepLedger(
      buildDisc({ basic: "sc" }, [6, 12, 18, 24, 30, 54, 78, 102]),
      handOf("sc", 6 / (2 * Math.PI)),
    )
    expect([ledger.verdict, ledger.fromRound]).toEqual(["ruffles", 6])
  })
})

describe("corners", () => {
  // A square grows by 8 d a round: 8 sc as tall as wide, 16 dc twice as tall as wide (common
  // practice: 8 sc or 16 dc a round; source for 16: "Solid Granny Square",
  // roycedavids.blogspot.com/2015/01/solid-granny-square.html).
  it.each([
    ["sc", 1, 3, 8],
    ["dc", 2, 5, 16],
  ] as const)("a square in %s (ratio %d) is flat", (basic, ratio, perCorner, growth) => {
    const motif = buildPolygon({ basic }, 4, 8, growth / 4, perCorner)
    const ledger = keepLedger(motif, handOf(basic, ratio))
    for (const row of ledger.rows) {
      expectClose(row.fullness, 1, 0.005, "asked for: within half a per cent")
      expectClose(row.flatGrowthMm, 8 * row.depthMm, 1e-9 * row.edgeMm, rounding)
      expectClose(row.cornerReachMm, Math.SQRT2 * row.radiusMm, 1e-9 * row.edgeMm, rounding)
    }
    expect(ledger.verdict).toBe("flat")
  })

  it("any polygon with its own flat growth is flat", () => {
    // The stitch is only a carrier of the ratio: one whose usual ratio is not too far from it.
    const carriers = [
      [3, "sc"],
      [5, "hdc"],
      [6, "hdc"],
      [8, "dc"],
      [10, "dc"],
    ] as const
    for (const [corners, basic] of carriers) {
      const ratio = (2 * corners) / polygonFactor(corners)
      const motif = buildPolygon({ basic }, corners, 6, 2, 3)
      const ledger = keepLedger(motif, handOf(basic, ratio))
      for (const row of ledger.rows) expectClose(row.accumulatedFullness, 1, 1e-9, rounding)
    }
  })

  it("judges the outline, not the circle: 16 dc a round is flat as a square and full as a disc", () => {
    const hand = handOf("dc", 2)
    expect(keepLedger(buildPolygon({ basic: "dc" }, 4, 6, 4, 5), hand).verdict).toBe("flat")
    expect(keepLedger(buildDisc({ basic: "dc" }, steps(16, 6)), hand).verdict).toBe("ruffles")
  })

  it("keeps outline and flatness apart: six stacked increases are flat and read as a hexagon", () => {
    const ledger = keepLedger(buildDisc({ basic: "sc" }, steps(6, 7)), handOf("sc", 0.955))
    expect(ledger.verdict).toBe("flat")
    expect(ledger.notes.join(" ")).toMatch(/a hexagon/)
    const eight = keepLedger(buildDisc({ basic: "hdc" }, steps(8, 7)), handOf("hdc", 1.27))
    expect(eight.notes.join(" ")).toMatch(/as an octagon/)
  })

  it("lets an edge between circle and polygon bow its sides instead of calling it a cup", () => {
    const ledger = keepLedger(buildPolygon({ basic: "sc" }, 4, 8, 2, 3), handOf("sc", 1.15))
    const last = ledger.rows.at(-1)!
    expect(ledger.verdict).toBe("flat")
    expect(last.outline.sharpness).toBeGreaterThan(0)
    expect(last.outline.sharpness).toBeLessThan(1)
  })
})

describe("lace", () => {
  const netOf = (loops: number, chains: number): Motif => {
    const ring = buildDisc({ basic: "dc" }, [12, 24]).rounds
    const elements: Element[] = []
    for (let i = 0; i < loops; i++)
      elements.push(
        {
          type: "stitch",
          kind: { basic: "sc" },
          anchors: [{ at: "stitch", round: 1, element: Math.floor((i * 24) / loops) }],
        },
        { type: "chain", chains },
      )
    const round: Round = { number: 3, elements, turned: false, closing: "joined" }
    return { centre: { kind: "adjustable-ring" }, rounds: [...ring, round] }
  }
  const hand = handOf("dc", 2)

  it("slack in chain loops is no ruffle", () => {
    const ledger = keepLedger(netOf(12, 5), hand)
    const last = ledger.rows.at(-1)!
    expect(last.edgeMm).toBeGreaterThan(1.5 * 2 * Math.PI * last.radiusMm)
    expect(ledger.verdict).toBe("flat")
    expect(last.slackMm).toBeGreaterThan(0)
    expect(ledger.notes.join(" ")).toMatch(/slack/)
  })

  it("a span longer than its chains is a cup", () => {
    const ledger = keepLedger(netOf(6, 1), hand)
    expect(ledger.verdict).toBe("cups")
  })

  it("a stitch in the middle of a drawn-out arch stands at the arch's height plus its own", () => {
    const net = netOf(12, 5)
    const elements: Element[] = Array.from({ length: 12 }, (_, i) => [
      {
        type: "stitch" as const,
        kind: { basic: "sc" as const },
        anchors: [{ at: "space" as const, round: 2, element: 2 * i + 1 }],
      },
      { type: "chain" as const, chains: 5 },
    ]).flat()
    const motif: Motif = {
      ...net,
      rounds: [...net.rounds, { number: 4, elements, turned: false, closing: "joined" }],
    }
    const { rows } = keepLedger(motif, hand)
    const [net3, net4] = [rows[2]!, rows[3]!]
    // Feet apart: the flat edge less the twelve tops, shared by the arches. Height: Pythagoras.
    const sc = sizeOf({ basic: "sc" }, hand, { turned: false })
    const widthMm = widthBesideChains(sc.widthMm, 2)
    const flatEdge = 2 * Math.PI * net3.radiusMm
    const feet = (flatEdge - 12 * widthMm) / 12
    const chain = (net3.edgeMm - 12 * widthMm) / 12
    const arch = Math.sqrt((chain / 2) ** 2 - (feet / 2) ** 2)
    expectClose(net4.depthMm, arch + sc.heightMm, 1e-9 * net4.edgeMm, rounding)
  })
})

describe("fans", () => {
  const shells = (dcInFan: number): Motif => {
    const disc = buildDisc({ basic: "dc" }, [12, 24])
    const at = (element: number) => [{ at: "stitch" as const, round: 1, element }]
    const elements: Element[] = []
    for (let i = 0; i < 24; i += 4) {
      elements.push({ type: "stitch", kind: { basic: "sl st" }, anchors: at(i) })
      for (let t = 0; t < dcInFan; t++)
        elements.push({ type: "stitch", kind: { basic: "dc" }, anchors: at(i + 2) })
    }
    return {
      ...disc,
      rounds: [...disc.rounds, { number: 3, elements, turned: false, closing: "joined" }],
    }
  }
  const hand = handOf("dc", 2)

  it("may stand as short as the chord of a half circle, 2 / pi of their edge", () => {
    const row = keepLedger(shells(6), hand).rows[2]!
    const slipMm = sizeOf({ basic: "sl st" }, hand, { turned: false }).widthMm
    const shortest = 6 * slipMm + 6 * 6 * 5 * (2 / Math.PI)
    expectClose(row.gatheredEdgeMm, shortest, 1e-9 * row.edgeMm, rounding)
  })

  it("are as long as they are beyond what a half circle of their height holds", () => {
    const rows = [9, 10].map((dcInFan) => keepLedger(shells(dcInFan), hand).rows[2]!)
    const more = rows[1]!.gatheredEdgeMm - rows[0]!.gatheredEdgeMm
    expectClose(more, 6 * 5, 1e-9 * rows[1]!.edgeMm, rounding)
  })

  it("make a scalloped edge and no ruffle, until they are crowded", () => {
    expect(keepLedger(shells(7), hand).verdict).toBe("flat")
    expect(keepLedger(shells(16), hand).verdict).toBe("ruffles")
  })
})

describe("properties", () => {
  const counts = fc.array(fc.integer({ min: 3, max: 90 }), { minLength: 1, maxLength: 10 })

  it("gives finite rows, odds that sum to one and a verdict for any counts", () => {
    fc.assert(
      fc.property(counts, fc.double({ min: 1.1, max: 3.8, noNaN: true }), (n, ratio) => {
        const ledger = keepLedger(buildDisc({ basic: "dc" }, n), handOf("dc", ratio))
        for (const row of ledger.rows)
          for (const value of Object.values(row))
            if (typeof value === "number") expect(Number.isFinite(value)).toBe(true)
        const { flat, blocksFlat, cups, ruffles } = ledger.odds
        expectClose(flat + blocksFlat + cups + ruffles, 1, 1e-12, rounding)
      }),
      { seed: 22, numRuns: 60 },
    )
  })

  it("does not change with the size of the yarn", () => {
    fc.assert(
      fc.property(counts, fc.double({ min: 1.5, max: 12, noNaN: true }), (n, widthMm) => {
        const small = keepLedger(buildDisc({ basic: "dc" }, n), handOf("dc", 1.9, 5))
        const large = keepLedger(buildDisc({ basic: "dc" }, n), handOf("dc", 1.9, widthMm))
        small.rows.forEach((row, i) => {
          const other = large.rows[i]!
          expectClose(other.accumulatedFullness, row.accumulatedFullness, 1e-9, rounding)
          expectClose(other.radiusMm / widthMm, row.radiusMm / 5, 1e-9 * row.radiusMm, rounding)
        })
      }),
      { seed: 23, numRuns: 40 },
    )
  })

  it("a swatch narrows the odds", () => {
    const disc = buildDisc({ basic: "dc" }, steps(12, 8))
    const known = keepLedger(disc, handOf("dc", 12 / (2 * Math.PI)))
    const unknown = keepLedger(disc, gaugeFrom({ swatches: [] }))
    expect(known.odds.flat).toBeGreaterThan(unknown.odds.flat)
  })
})
