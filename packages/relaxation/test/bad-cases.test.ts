// Pieces that cannot be laid out well end with a reason, never with NaN, never in a hang.

import { buildDisc, type Motif } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import { gaugeFrom, kind } from "@roundwright/stitches"
import { describe, expect, it } from "vitest"
import { type LaidOutShape, layOut } from "../src/index.ts"
import { chain, randomMotif, round, stitch } from "./support/motifs.ts"

const gauge = gaugeFrom({ swatches: [{ kind: kind("dc"), widthMm: 7, heightMm: 13 }] })
const ring = { kind: "adjustable-ring" } as const

function expectFinite(shape: LaidOutShape): void {
  const numbers = [
    ...shape.flat.xy,
    ...(shape.space?.xyz ?? []),
    shape.blockingStretch,
    shape.outline.acrossMm,
    shape.outline.bowMm,
    ...shape.acrossAfterRound,
    ...shape.slack.map(({ slack }) => slack),
  ]
  expect(numbers.every(Number.isFinite)).toBe(true)
}

describe("a piece that is hardly one", () => {
  it.each([
    ["one stitch in the only round", buildDisc(kind("sc"), [1])],
    ["one stitch in every round", buildDisc(kind("dc"), [1, 1, 1])],
    ["two stitches", buildDisc(kind("dc"), [2, 2])],
    ["all slip stitches", buildDisc(kind("sl st"), [6, 12, 18])],
    ["a tube", buildDisc(kind("sc"), [12, 12, 12, 12, 12, 12])],
    ["a ball that closes", buildDisc(kind("sc"), [6, 12, 12, 6])],
    ["a round of chains alone", { centre: ring, rounds: [round(1, [chain(20)])] }],
    [
      "one long loop",
      {
        centre: ring,
        rounds: [
          round(1, [
            stitch(kind("dc"), { at: "centre" }),
            stitch(kind("dc"), { at: "centre" }),
            chain(300),
          ]),
        ],
      },
    ],
    [
      "an open row",
      { centre: ring, rounds: [{ ...buildDisc(kind("dc"), [7]).rounds[0]!, closing: "open" }] },
    ],
  ] as const satisfies readonly (readonly [string, Motif])[])(
    "%s is laid out or says why not",
    (_, motif) => {
      const shape = layOut(motif as Motif, gauge)
      expectFinite(shape)
      expect(["gradient-small", "cannot-improve", "iterations", "saddle"]).toContain(
        shape.space!.how.ended,
      )
    },
  )

  it("a hundred thousand chains are refused with a hint", () => {
    const motif: Motif = {
      centre: ring,
      rounds: [round(1, [stitch(kind("sc"), { at: "centre" }), chain(100_000)])],
    }
    expect(() => layOut(motif, gauge)).toThrow(RoundwrightError)
    expect(() => layOut(motif, gauge)).toThrow(/more than/)
  })

  it("a round without anything is refused", () => {
    expect(() => layOut({ centre: ring, rounds: [round(1, [])] }, gauge)).toThrow(RoundwrightError)
    expect(() => layOut({ centre: ring, rounds: [] }, gauge)).toThrow(RoundwrightError)
  })

  it("random pieces of any make give numbers", () => {
    for (let seed = 0; seed < 25; seed++)
      expectFinite(layOut(randomMotif(seed, 3), gauge, { inSpace: seed % 5 === 0 }))
  })
})
