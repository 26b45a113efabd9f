// The chart for print of small pieces: every stitch has its mark, the file is whole, its size and its options hold.

import { readPattern } from "@roundwright/instructions"
import { layOutBounded } from "@roundwright/relaxation"
import { gaugeFrom } from "@roundwright/stitches"
import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"
import {
  crossingsOf,
  inked,
  overlapsOf,
  printChart,
  roomyLayout,
  symbolsOfChart,
  symbolsOfMotif,
} from "../src/index.ts"
import { faultsOf, nudge } from "../src/print/nudge.ts"
import { roundNumbers } from "../src/print/numbers.ts"
import { spread } from "../src/print/spread.ts"

const text = `# Latch Tile
Terms: US
Hook: 4 mm

Rnd 1: ch 3 (counts as dc), 11 dc in magic ring; join. (12 dc)
Rnd 2: ch 5 (counts as dc + ch 2), *dc in next st, ch 2; rep from * around; join. (12 dc + 12 ch-2 sps)
Rnd 3: sl st to next ch-2 sp; ch 3 (counts as dc), 2 dc in same sp, 3 dc in each ch-2 sp around; join. (36 dc)
`
const { motif } = readPattern(text)
const shape = layOutBounded(motif, gaugeFrom({ swatches: [], hookMm: 4 }))

describe("the layout", () => {
  const layout = roomyLayout(motif, shape)

  it("has a mark for every stitch and every chain, at twelve repeats", () => {
    expect(layout.repeats).toBe(12)
    const of = (round: number, ...kinds: string[]) =>
      layout.marks.filter(
        (mark) =>
          mark.round === round &&
          mark.element < motif.rounds[round]!.elements.length &&
          kinds.includes(mark.kind),
      ).length
    expect([
      of(0, "stitch", "start"),
      of(1, "stitch", "start"),
      of(1, "chain"),
      of(2, "stitch", "start"),
    ]).toEqual([12, 12, 24, 36])
    expect(layout.marks.filter(({ kind }) => kind === "join").length).toBe(3)
    expect(layout.marks.filter(({ kind }) => kind === "slip").length).toBe(1)
    expect(
      layout.marks.filter(({ kind }) => kind === "yarn-on" || kind === "yarn-off").length,
    ).toBe(2)
  })

  it("crosses no posts and lays nothing on anything", () => {
    expect(crossingsOf(layout.marks)).toEqual([])
    expect(overlapsOf(inked(layout.marks))).toEqual([])
  })

  it("finds marks that are laid on one another", () => {
    const [one] = layout.marks.filter(({ kind }) => kind === "stitch")
    expect(overlapsOf([one!, { ...one!, element: 99 }])).toHaveLength(1)
  })
})

describe("the numbers of the rounds", () => {
  it("are led to their rounds by lines none of which cross", () => {
    const places = [
      { x: 1, y: 0.2 },
      { x: 2, y: 0.1 },
      { x: 3, y: 0.4 },
      { x: 4, y: 0 },
    ]
    const { motif: four } = readPattern(
      Array.from(
        { length: 4 },
        (_, k) => `Rnd ${k + 1}: ${6 * (k + 1)} sc evenly. (${6 * (k + 1)} sc)`,
      ).join("\n"),
    )
    const { parts } = roundNumbers(four, { starts: places, reach: 6 } as never)
    const lines = parts.map((part) => /M(\S+) (\S+)L(\S+) (\S+)"/.exec(part)!.slice(1).map(Number))
    const side = (a: number[], b: number[], c: number[]) =>
      (b[0]! - a[0]!) * (c[1]! - a[1]!) - (b[1]! - a[1]!) * (c[0]! - a[0]!)
    for (const [i, one] of lines.entries())
      for (const other of lines.slice(i + 1)) {
        const [a, b, c, d] = [one.slice(0, 2), one.slice(2), other.slice(0, 2), other.slice(2)]
        const cross = side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0
        expect(cross).toBe(false)
      }
    expect(lines).toHaveLength(4)
  })
})

describe("the last touch", () => {
  const marks = inked(roomyLayout(motif, shape).marks)
  const turn = (2 * Math.PI) / 12
  const onRing = ({ x, y }: { x: number; y: number }) => ({
    angle: Math.atan2(y, x),
    radius: Math.hypot(x, y),
  })

  it("moves small symbols off others, all images alike", () => {
    // Every chain of round 2 drawn on the top beside it.
    const stitches = marks.filter(({ round, posts }) => round === 1 && posts.length > 0)
    const laid = marks.map((mark) => {
      if (mark.round !== 1 || mark.kind !== "chain") return mark
      const near = stitches.reduce((a, b) =>
        Math.hypot(a.at.x - mark.at.x, a.at.y - mark.at.y) <=
        Math.hypot(b.at.x - mark.at.x, b.at.y - mark.at.y)
          ? a
          : b,
      )
      const [dx, dy] = [0.6 * (near.at.x - mark.at.x), 0.6 * (near.at.y - mark.at.y)]
      const ovals = mark.ovals.map((oval) => ({ ...oval, x: oval.x + dx, y: oval.y + dy }))
      return { ...mark, at: { x: mark.at.x + dx, y: mark.at.y + dy }, ovals }
    })
    expect(faultsOf(laid)).toBeGreaterThan(10)
    const moved = nudge(laid, (round) => motif.rounds[round]!.elements.length / 12)
    expect(faultsOf(laid.map((mark) => moved.get(mark) ?? mark))).toBe(0)
    const chains = [...moved.values()].filter(({ kind }) => kind === "chain")
    expect(chains.length).toBeGreaterThanOrEqual(12)
    const places = chains.map(({ at }) => onRing(at))
    for (const { angle, radius } of places) {
      const image = places.some(
        (other) =>
          Math.abs(Math.sin((other.angle - angle - turn) / 2)) < 1e-3 &&
          Math.abs(other.radius - radius) < 0.02,
      )
      expect(image).toBe(true)
    }
  })

  it("leaves alone what lies on nothing", () => expect(nudge(marks, () => 2).size).toBe(0))
})

describe("a leaf along its own chain", () => {
  const leaf = readPattern(
    "Rnd 1: ch 2, 6 sc in 2nd ch from hook; join. (6 sc)\nRnd 2: *ch 5, sc in 2nd ch from hook, hdc in next ch, dc in next 2 ch, sl st in next st; rep from * around; join.\n",
  ).motif
  const drawn = layOutBounded(leaf, gaugeFrom({ swatches: [], hookMm: 4 }))

  it("stands beside the chain, on nothing", () => {
    expect(leaf.rounds[1]!.elements.some(({ type }) => type === "chain")).toBe(true)
    const { marks } = roomyLayout(leaf, drawn)
    expect(overlapsOf(inked(marks))).toEqual([])
    expect(crossingsOf(marks)).toEqual([])
  })
})

describe("the drawing", () => {
  it("says of every mark of a stitch what it is, and is read back as the text", () => {
    expect(symbolsOfChart(printChart(motif, shape))).toEqual(symbolsOfMotif(motif))
    expect(symbolsOfChart('<svg><g data-st="dc"></g></svg>')).toBeNull()
  })

  it("has title, description and a size in mm, and no figure that is none", () => {
    const svg = printChart(motif, shape, { widthMm: 80 })
    expect(svg).toMatch(/^<svg [^>]*width="80mm" height="[\d.]+mm" viewBox="0 0 [\d.]+ [\d.]+"/)
    expect(svg).toContain("<title>Latch Tile: chart</title>")
    expect(svg).toContain("Round 3: 36 dc")
    expect(svg).not.toMatch(/NaN|Infinity|undefined/)
  })

  it("names stitches in either terms", () => {
    expect(printChart(motif, shape, { terms: "UK" })).toContain("tr: treble")
    expect(printChart(motif, shape)).toContain("dc: double crochet")
  })

  it("draws all repeats but one light, or every other round in a second ink", () => {
    const light = printChart(motif, shape, { emphasis: "repeat" }).match(/opacity="0.32"/g) ?? []
    expect(light.length).toBeGreaterThan(70)
    expect(printChart(motif, shape, { emphasis: "rounds" })).toContain("#0b5a8f")
    expect(printChart(motif, shape)).not.toContain("opacity")
  })

  it("is the same each time", () => {
    expect(printChart(motif, shape)).toBe(printChart(motif, shape))
  })
})

describe("places along a repeat", () => {
  it("stay where they are wanted when there is room", () => {
    expect(spread([0.1, 0.4, 0.7], [0.1, 0.1, 0.1], 1)).toEqual([0.1, 0.4, 0.7])
  })

  it("keep their order and their gaps where they are wanted too near or the wrong way round", () => {
    const placed = spread([0.5, 0.45, 0.55], [0.2, 0.2, 0.2], 1)
    for (const [a, b] of [
      [placed[0]!, placed[1]!],
      [placed[1]!, placed[2]!],
      [placed[2]!, placed[0]! + 1],
    ] as const)
      expect(b - a).toBeGreaterThan(0.2 - 1e-9)
    expectClose(
      (placed[0]! + placed[1]! + placed[2]!) / 3,
      0.5,
      1e-9,
      "least squares keeps the mean",
    )
  })
})
