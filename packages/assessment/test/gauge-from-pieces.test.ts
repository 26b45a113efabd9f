// A gauge from the size of the piece itself. The square whose size is stated after every round is in
// test/evidence/measured-motifs.json with its source; here a motif of our own.

import { describe, expect, it } from "vitest"
import { expectRelative } from "../../../test/support/close.ts"
import { checkPattern, examinePattern, sizeAfter } from "../src/index.ts"

const rounds = `
Rnd 1: 12 dc in magic ring; join. (12 dc)
Rnd 2: 2 dc in each st; join. (24 dc)
Rnd 3: *2 dc in next st, dc in next st; rep from * around; join. (36 dc)
Rnd 4: *2 dc in next st, dc in next 2 sts; rep from * around; join. (48 dc)
`

describe("a size after some rounds", () => {
  it.each([
    ["Gauge: Rnds 1-3 = 9 cm", 3, 90],
    ["Size: 62 mm after Rnd 2", 2, 62],
    ["Yarn: DK\nHook: 4 mm\nGauge: Rnds 1-3 = 9 cm", 3, 90],
    ["Gauge: 16 dc x 8 rows = 10 cm\nSize: 9 cm after Rnd 3", 3, 90],
  ])("%s: the piece comes out at it", (heading, round, mm) => {
    const { reading, gauge, result } = examinePattern(`${heading}\n${rounds}`)
    expect(gauge!.source).toBe("piece")
    expect(result.problems.filter(({ severity }) => severity !== "note")).toEqual([])
    const found = sizeAfter(reading.motif, gauge!, { round, across: "sides" })
    expectRelative(
      found as number,
      mm,
      0.003,
      "bending of chains and the pull of pins do not scale",
    )
  })

  it("of the finished piece is met too, and one of another piece is told at its place and left", () => {
    const text = (size: string) => `Yarn: DK\nHook: 4 mm\nSize: ${size}\n${rounds}`
    const met = examinePattern(text("11 cm across"))
    expect(met.gauge!.source).toBe("piece")
    expect(met.result.problems).toEqual([])
    const found = sizeAfter(met.reading.motif, met.gauge!, { round: "last", across: "sides" })
    expectRelative(
      found as number,
      110,
      0.003,
      "the finished size is the size after the last round",
    )
    const far = examinePattern(text("24 cm"))
    expect(far.gauge!.source).toBe("yarn-and-hook")
    const [problem] = far.result.problems
    expect([problem!.code, problem!.severity]).toEqual(["size-unlike-gauge", "warning"])
    expect([problem!.line, problem!.column, problem!.length]).toEqual([3, 7, 5])
    const after = examinePattern(text("20 cm after Rnd 3"))
    expect(after.gauge!.source).toBe("piece")
    expect(after.result.problems.map(({ code, round }) => [code, round])).toEqual([
      ["size-unlike-gauge", 3],
    ])
  })

  it("of the finished piece says nothing of a part of it", () => {
    const { gauge, result } = examinePattern(
      `Size: 11 cm\n${rounds}Rnd 5: flumble the ziggurat until dawn.\n`,
    )
    expect(gauge!.source).toBe("none")
    expect(result.notes.join(" ")).toMatch(/finished size was not used: only 4 of 5/)
  })

  it("tells a round that is not there, two sizes that disagree, a size no hand can make", () => {
    const notes = (heading: string) => checkPattern(`${heading}\n${rounds}`).notes.join(" ")
    expect(notes("Size: 9 cm after Rnd 9")).toMatch(/round 9 was not used/)
    expect(notes("Size: 3 cm after Rnd 1, 30 cm after Rnd 4")).toMatch(/differ by/)
    expect(notes("Size: 480 cm after Rnd 1")).toMatch(/not used/)
  })
})
