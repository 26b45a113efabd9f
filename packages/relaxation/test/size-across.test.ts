// The size of a piece as a maker states it.

import type { Motif } from "@roundwright/motif"
import { seededRandom } from "@roundwright/numerics"
import { gaugeFrom, kind, picotSize } from "@roundwright/stitches"
import { describe, expect, it } from "vitest"
import { expectClose, expectRelative } from "../../../test/support/close.ts"
import { hullOf, layOut, polygonArea } from "../src/index.ts"
import { grannySquare, round, stitch } from "./support/motifs.ts"

const dc = kind("dc")
const gauge = gaugeFrom({ swatches: [{ kind: dc, widthMm: 7, heightMm: 13 }] })

describe("a band round points", () => {
  it("is the square they lie in, whatever lies inside", () => {
    const random = seededRandom(5)
    const inside = Array.from(
      { length: 200 },
      () => [2 * random.uniform(), 2 * random.uniform()] as const,
    )
    const corners = [
      [0, 0],
      [2, 0],
      [2, 2],
      [0, 2],
    ] as const
    const hull = hullOf([...inside, ...corners])
    expect(hull.length).toBe(4)
    expectClose(polygonArea(hull), 4, 1e-12, "2 x 2")
  })

  it("holds every point, and turns left at every corner", () => {
    const random = seededRandom(6)
    const points = Array.from({ length: 300 }, () => {
      const [r, angle] = [Math.sqrt(random.uniform()), 2 * Math.PI * random.uniform()]
      return [r * Math.cos(angle), r * Math.sin(angle)] as const
    })
    const hull = hullOf(points)
    hull.forEach((a, k) => {
      const b = hull[(k + 1) % hull.length]!
      for (const [x, y] of points)
        expect((b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0])).toBeGreaterThan(-1e-12)
    })
  })
})

describe("across", () => {
  const disc = (rounds: number): Motif => ({
    title: "Penny",
    centre: { kind: "adjustable-ring" },
    rounds: Array.from({ length: rounds }, (_, r) =>
      round(
        r + 1,
        Array.from({ length: 12 * (r + 1) }, (_, k) =>
          stitch(
            dc,
            r === 0
              ? { at: "centre" }
              : { at: "stitch", round: r - 1, element: Math.floor((k * r) / (r + 1)) },
          ),
        ),
      ),
    ),
  })

  it("picots of a last round stand out on both sides", () => {
    const plain = disc(4)
    const last = plain.rounds.at(-1)!
    const edged: Motif = {
      ...plain,
      rounds: [
        ...plain.rounds.slice(0, -1),
        {
          ...last,
          elements: last.elements.flatMap((element, k) =>
            k % 4 === 0 ? [element, { type: "picot", chains: 3 } as const] : [element],
          ),
        },
      ],
    }
    const across = (motif: Motif): number =>
      layOut(motif, gauge, { inSpace: false }).outline.acrossMm
    expectRelative(
      across(edged) - across(plain),
      2 * picotSize(3, gauge).heightMm,
      0.02,
      "tips are read in twelve directions, one picot in each",
    )
  })

  it("and corners do not suffer from a ring of chains that the stitches stand round in another number", () => {
    const squareOn = (chains: number): Motif => ({
      ...grannySquare(3),
      centre: { kind: "chain-ring", chains },
    })
    for (const chains of [5, 7]) {
      const shape = layOut(squareOn(chains), gauge, { inSpace: false })
      expectClose(shape.skewDeg!, 0, 0.01, "a ring of five chains does not pull a square askew")
    }
  })
})
