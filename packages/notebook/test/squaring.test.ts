// Squaring cells: what they take, what they give, and what they refuse.

import { checkPattern } from "@roundwright/assessment"
import { describe, expect, it } from "vitest"
import { computeNotebook, renderNotebook } from "../src/index.ts"
import { squarePattern, usualSquaring } from "../src/squaring.ts"
import { cell } from "./made.ts"

const circle =
  "Terms: US\nYarn: DK\nHook: 4 mm\n\nRnd 1: 12 dc in magic ring; join. (12 dc)\nRnd 2: 2 dc in each st around; join. (24 dc)\n\nFasten off."
const request = { corners: 4, rounds: 1, stitches: "sc, hdc, dc" }

describe("a squaring cell", () => {
  it("gives proposals whose text reads as the piece with as many rounds as were wanted, the best with as many corners", () => {
    const found = squarePattern(circle, [], request)
    if ("fault" in found) throw new Error(found.fault)
    expect(found.proposals.length).toBeGreaterThan(0)
    expect(found.heights.length).toBeGreaterThan(0)
    expect(checkPattern(found.proposals[0]!.text).motif).toMatchObject({ rounds: 3, corners: 4 })
    for (const { text } of found.proposals) {
      const { motif, problems } = checkPattern(text)
      expect(motif).toMatchObject({ rounds: 3, symmetry: 4 })
      expect(problems.filter(({ severity }) => severity === "error")).toEqual([])
      expect(text).toContain("Fasten off.")
    }
  })

  it("stands in a page with its rounds", async () => {
    const text = cell("pattern name=a", circle) + cell("squaring of=a", "Rounds: 1\nCorners: 5")
    const { html, problems } = await renderNotebook(text)
    expect(problems).toEqual([])
    expect(html).toContain("5 corners in 1 round of sc, hdc, dc and tr, best first")
    expect(html).toMatch(/<span class="line">Rnd 3: /)
  })

  it.each([
    ["Corners: 2", "number of corners"],
    ["Corners: 99", "number of corners"],
    ["Rounds: 1e9", "number of rounds"],
    ["Rounds: -1", "number of rounds"],
    ["Stitches: ", "stitches cannot be used"],
    ["Stitches: __proto__", "__proto__"],
    ["Sides: 4", "not understood"],
  ])("with %s says so at its place", async (line, said) => {
    const text =
      cell("pattern name=a", circle) +
      cell("squaring of=a", `Rounds: 1\n${line}`.replace(/^Rounds: 1\nRounds/, "Rounds"))
    const { problems, cells } = await computeNotebook(text, { square: () => null })
    expect(cells[1]!.content).toBeNull()
    expect(problems.map(({ message }) => message).join(" ")).toContain(said)
    expect(text.split("\n")[problems[0]!.line - 1]).toContain(line.trim())
  })

  it.each([
    ["", "No round could be read."],
    ["Rnd 1: 6 sc in magic ring. (6 sc)\nRnd 2: what is this", "Only 1 of 2 rounds could be read."],
    ["Rnd 1: 400 sc in magic ring. (400 sc)", "more than 150"],
  ])("refuses %j with a reason", (text, said) => {
    expect(squarePattern(text, [], usualSquaring)).toMatchObject({
      fault: expect.stringContaining(said),
    })
  })

  it("is searched for at most four times in a notebook", async () => {
    let searches = 0
    const asked = [3, 4, 5, 6, 7, 8].map((k) => cell("squaring of=a", `Corners: ${k}`))
    const text = cell("pattern name=a", circle) + asked.join("")
    const { problems } = await computeNotebook(text, {
      square: () => {
        searches += 1
        return null
      },
    })
    expect(searches).toBe(4)
    expect(problems.map(({ code }) => code)).toEqual(["too-many-searches", "too-many-searches"])
  })
})
