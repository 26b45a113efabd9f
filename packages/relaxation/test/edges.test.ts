import type { Element, Motif } from "@roundwright/motif"
import { gaugeFrom, kind } from "@roundwright/stitches"
import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"
import { buildNet, layOut, layOutFlat } from "../src/index.ts"
import { fullHexagon, round, stitch } from "./support/motifs.ts"

const gauge = gaugeFrom({ swatches: [{ kind: kind("dc"), widthMm: 7, heightMm: 13 }] })

describe("loops closed by a tall stitch", () => {
  const loops = (closedWith?: "dc"): Motif => ({
    centre: { kind: "adjustable-ring" },
    rounds: [
      round(
        1,
        Array.from({ length: 12 }, () => stitch(kind("sc"), { at: "centre" })),
      ),
      round(
        2,
        Array.from({ length: 6 }, (_, k): Element[] => [
          stitch(kind("sc"), { at: "stitch", round: 0, element: 2 * k }),
          {
            type: "picot",
            chains: 6,
            ...(closedWith ? { closedWith: { basic: closedWith } } : {}),
          },
        ]).flat(),
      ),
    ],
  })

  it("lie along the edge from foot to head of that stitch", () => {
    const plain = buildNet(loops(), gauge).edges[1]!
    const closed = buildNet(loops("dc"), gauge).edges[1]!
    expect(closed.nodes.length).toBe(plain.nodes.length + 6)
    expectClose(closed.lengthMm, plain.lengthMm + 6 * 13, 1e-9, "six dc of 13 mm; closed form")
  })
})

describe("an edge far too long for its outline", () => {
  it("closes up and stretches its posts when pressed flat, instead of hiding its length in zigzags", () => {
    const net = buildNet(fullHexagon(), gauge)
    const { xy, how } = layOutFlat(net)
    expect(how.settled).toBe(true)
    const { nodes } = net.edges.at(-1)!
    const reach = nodes.map((node) => Math.hypot(xy[2 * node]!, xy[2 * node + 1]!))
    // A dip or crest of less than a millimetre is no zigzag.
    const turns = reach.filter((r, k) => {
      const [before, after] = [reach.at(k - 1)!, reach[(k + 1) % reach.length]!]
      return (
        (r - before) * (after - r) < 0 && Math.min(Math.abs(r - before), Math.abs(after - r)) > 1
      )
    })
    // Once at each corner and once in the middle of each side.
    expect(turns.length).toBeLessThanOrEqual(12)
    expect(layOut(fullHexagon(), gauge, { inSpace: false }).verdict).toBe("ruffles")
  })
})
