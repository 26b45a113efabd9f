import { kind } from "@roundwright/stitches"
import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"
import {
  buildDisc,
  chainsBeside,
  type Element,
  groundRounds,
  type Motif,
  type Round,
  scallopSlack,
  workedTops,
} from "../src/index.ts"

const dc = kind("dc")
const round = (number: number, elements: Element[]): Round => ({
  number,
  elements,
  turned: false,
  closing: "joined",
})
const on = (element: number, k = dc): Element => ({
  type: "stitch",
  kind: k,
  anchors: [{ at: "stitch", round: 0, element }],
})
const chain = (chains: number): Element => ({ type: "chain", chains })

describe("chains beside a stitch", () => {
  it("are two for one alone between loops, one at the end of a group, none within it", () => {
    const own = round(2, [on(0), chain(2), on(1), on(2), on(3), chain(2)])
    expect(chainsBeside(own)).toEqual([2, 0, 1, 0, 1, 0])
  })

  it("are passed by a picot", () => {
    const own = round(2, [on(0), { type: "picot", chains: 3 }, chain(2), on(1), on(2), chain(1)])
    expect(chainsBeside(own)[0]).toBe(2)
  })
})

describe("free layers", () => {
  it("are rounds nothing is worked into, and elements told to be free", () => {
    const disc = buildDisc(dc, [6, 12])
    const skipping = round(3, [
      { type: "stitch", kind: dc, anchors: [{ at: "stitch", round: 0, element: 0 }] },
    ])
    expect(groundRounds({ ...disc, rounds: [...disc.rounds, skipping] })).toEqual([
      true,
      false,
      true,
    ])
    const free = round(2, [{ ...on(0), free: true } as Element])
    expect(groundRounds({ ...disc, rounds: [disc.rounds[0]!, free] })).toEqual([true, false])
  })
})

describe("scallops", () => {
  const loops: Motif = {
    ...buildDisc(dc, [6]),
    rounds: [
      buildDisc(dc, [6]).rounds[0]!,
      round(2, [on(0, kind("sc")), chain(8)]),
      round(
        3,
        Array.from(
          { length: 10 },
          (): Element => ({
            type: "stitch",
            kind: kind("sc"),
            anchors: [{ at: "space", round: 1, element: 1 }],
          }),
        ),
      ),
    ],
  }

  it("of a loop that is filled stand as an annulus sector bent to a half circle", () => {
    const widths = new Array<number>(10).fill(1)
    const heights = new Array<number>(10).fill(1)
    const { slackMm } = scallopSlack(loops, 2, workedTops(loops), widths, heights, 0.9)
    // Half circle: pi of the ten widths lie on the bend, the rest along the chains; two ends one high lean over.
    const inner = Math.min(7.2, 10 - Math.PI)
    expectClose(10 - slackMm, (inner * 2) / Math.PI + 2, 1e-9, "closed form")
  })

  it("are none where the next round is worked into every top", () => {
    const held: Motif = {
      ...loops,
      rounds: [
        ...loops.rounds,
        round(
          4,
          Array.from(
            { length: 10 },
            (_, element): Element => ({
              type: "stitch",
              kind: dc,
              anchors: [{ at: "stitch", round: 2, element }],
            }),
          ),
        ),
      ],
    }
    const ones = new Array<number>(10).fill(1)
    expect(scallopSlack(held, 2, workedTops(held), ones, ones, 0.9).slackMm).toBe(0)
  })
})
