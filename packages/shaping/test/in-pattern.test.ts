import { readPattern, withStarts, writeRounds } from "@roundwright/instructions"
import { countRound, validateMotif } from "@roundwright/motif"
import { gaugeFrom } from "@roundwright/stitches"
import { describe, expect, it } from "vitest"
import { squareCircle } from "../src/index.ts"

const gauge = gaugeFrom({ swatches: [] })
const asked = { corners: 4, rounds: 2, proposals: 1 }

const solid = [
  "Terms: US",
  "",
  "Rnd 1: 12 dc in magic ring; join. (12 dc)",
  "Rnd 2: *(2 dc, ch 2, 2 dc) in next st, dc in next 2 sts; rep from * 3 more times; join. (24 dc, 4 ch-2 sps)",
  "Rnd 3: *dc in next 2 sts, (2 dc, ch 2, 2 dc) in next ch-2 sp, dc in next 4 sts; rep from * 3 more times; join. (40 dc, 4 ch-2 sps)",
]
const granny = [
  "Terms: US",
  "",
  "Rnd 1: ch 4, join to form a ring; *3 dc in ring, ch 2; rep from * 3 more times; join. (12 dc, 4 ch-2 sps)",
  "Rnd 2: *(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1; rep from * 3 more times; join. (24 dc, 4 ch-2 sps, 4 ch-1 sps)",
  "Rnd 3: *(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1, 3 dc in next ch-1 sp, ch 1; rep from * 3 more times; join. (36 dc, 4 ch-2 sps, 8 ch-1 sps)",
]

describe("a square gone on with", () => {
  // Common practice, no source: a solid square grows by 16 dc a round, a granny by one group a side.
  it.each([
    ["solid", solid, [56, 72]],
    ["granny", granny, [48, 60]],
  ] as const)("%s: grows in its own pattern first", (_, lines, counts) => {
    const { motif } = readPattern(`${lines.join("\n")}\n`)
    const [first] = squareCircle(motif, gauge, asked)
    validateMotif(first!.motif)
    expect(first!.idea).toBe("In pattern")
    expect(first!.motif.rounds.slice(3).map((round) => countRound(round).stitches)).toEqual(counts)
    const told = writeRounds(withStarts(first!.motif, 3), 3)
    const again = readPattern(`${[...lines, ...told].join("\n")}\n`)
    expect(again.problems.filter(({ severity }) => severity !== "note")).toEqual([])
    expect(again.motif.rounds.at(-1)!.elements.length).toBe(
      first!.motif.rounds.at(-1)!.elements.length,
    )
  })

  it("is another matter where stitches or corners are asked for, or the piece is round", () => {
    const { motif } = readPattern(`${solid.join("\n")}\n`)
    const [chosen] = squareCircle(motif, gauge, { ...asked, cornerStyle: "stitches" })
    expect(chosen!.idea).not.toBe("In pattern")
    const round = readPattern("Terms: US\n\nRnd 1: 12 dc in magic ring; join. (12 dc)\n")
    expect(squareCircle(round.motif, gauge, asked)[0]!.idea).not.toBe("In pattern")
  })
})
