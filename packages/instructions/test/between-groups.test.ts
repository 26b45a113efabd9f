import { describe, expect, it } from "vitest"
import { readPattern, writeRounds } from "../src/index.ts"

const read = (...lines: string[]) => readPattern(`Terms: US\n\n${lines.join("\n")}\n`)

describe("a space between groups", () => {
  const ring = "Rnd 1: 12 dc in magic ring; join. (12 dc)"
  const pairs = "Rnd 2: 2 dc in each st around; join. (24 dc)"

  it("is the chain that parts them where there is one", () => {
    const { motif } = read(
      ring,
      "Rnd 2: *3 dc in next st, ch 1; rep from * 11 more times; join.",
      "Rnd 3: *sc in next sp between groups, ch 3; rep from * 11 more times; join.",
    )
    const into = motif.rounds[2]!.elements.flatMap((element) =>
      element.type === "stitch" ? element.anchors : [],
    )
    expect(into).toHaveLength(12)
    for (const anchor of into) {
      expect(anchor.at).toBe("space")
      if (anchor.at === "space")
        expect(motif.rounds[1]!.elements[anchor.element]!.type).toBe("chain")
    }
  })

  it("is written as such over a round all of groups, and reads back", () => {
    const told = "Rnd 3: *3 dc in next sp between groups, ch 1; rep from * 11 more times; join."
    const { motif } = read(ring, pairs, told)
    const lines = writeRounds(motif)
    expect(lines[2]).toContain("3 dc in next sp between groups")
    expect(lines[2]).not.toContain("skip")
    expect(read(...lines).motif.rounds).toEqual(motif.rounds)
  })

  it("is a space between stitches where some stand alone", () => {
    const mixed = "Rnd 2: *2 dc in next st, dc in next st; rep from * 5 more times; join."
    const { motif } = read(
      ring,
      mixed,
      "Rnd 3: *skip next 2 sts, 2 dc in next sp between sts, skip next st, dc in next sp between sts; rep from * 5 more times; join.",
    )
    expect(writeRounds(motif)[2]).not.toContain("between groups")
  })
})
