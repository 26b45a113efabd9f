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
    ["Corner style: round", '"round" is not known here'],
    ["Straighten: sc, dc", "more than one stitch"],
    ["Straighten: yarn", "yarn"],
    ["From round: 7", "no round 7"],
    ["From-round: last", "round to begin on"],
    ["Terms: both", "both"],
    ["Corners: 4\nCorners: 5", "already"],
  ])("with %s says so at its place", async (line, said) => {
    const text =
      cell("pattern name=a", circle) +
      cell("squaring of=a", `Rounds: 1\n${line}`.replace(/^Rounds: 1\nRounds/, "Rounds"))
    const { problems, cells } = await computeNotebook(text, { square: () => null })
    expect(cells[1]!.content).toBeNull()
    expect(problems.map(({ message }) => message).join(" ")).toContain(said)
    expect(text.split("\n")[problems[0]!.line - 1]).toContain(line.split("\n").at(-1)!.trim())
    expect(problems[0]!.hint).not.toBe("")
  })

  it("begins on an earlier round, leaving out what follows it", async () => {
    const found = squarePattern(circle, [], { ...request, fromRound: 1 })
    if ("fault" in found) throw new Error(found.fault)
    const [best] = found.proposals
    expect(best!.rounds[0]).toMatch(/^Rnd 2: /)
    expect(best!.text.match(/Rnd 2:/g)).toHaveLength(1)
    expect(checkPattern(best!.text).motif).toMatchObject({ rounds: 2 })
    const broken = `${circle}\nRnd 3: nobody can read this`
    expect(squarePattern(broken, [], request)).toMatchObject({
      hint: expect.stringContaining("From round: 2"),
    })
    expect(squarePattern(broken, [], { ...request, fromRound: 2 })).toHaveProperty("proposals")
  })

  it("takes the size of the whole piece, also where it begins on an earlier round", () => {
    const sideOf = (text: string, fromRound?: number) => {
      const wishes = fromRound === undefined ? request : { ...request, fromRound }
      const found = squarePattern(text, [], wishes)
      if ("fault" in found) throw new Error(found.fault)
      return found.proposals[0]!.sideMm
    }
    const large = circle.replace("Hook: 4 mm", "Hook: 4 mm\nSize: 9 cm after Rnd 2")
    for (const fromRound of [undefined, 1])
      expect(sideOf(large, fromRound)).toBeGreaterThan(1.3 * sideOf(circle, fromRound))
  })

  it("keeps to a corner style, and ends with a straightening round of one stitch", () => {
    for (const cornerStyle of ["chains", "stitches"] as const) {
      const wishes = { ...request, cornerStyle, straighten: "sc" }
      const found = squarePattern(circle, [], wishes)
      if ("fault" in found) throw new Error(found.fault)
      for (const { rounds } of found.proposals) {
        expect(rounds).toHaveLength(2)
        // Beside the chain that the round begins with.
        expect(/(?<!: )\bch \d/.test(rounds[1]!)).toBe(cornerStyle === "chains")
        expect(rounds[1]).not.toMatch(/\b(?:hdc|dc|tr)\b/)
      }
    }
  })

  it("speaks the pattern's terms, or those that are asked for", async () => {
    const uk = circle.replace("Terms: US", "Terms: UK").replaceAll(" dc", " tr")
    const [us, own] = [
      squarePattern(circle, [], { ...request, stitches: "sc, hdc, dc", straighten: "sc" }),
      squarePattern(uk, [], { ...request, stitches: "dc, htr, tr", straighten: "dc" }),
    ]
    if ("fault" in us || "fault" in own) throw new Error("No proposal.")
    expect(own.heights.map(({ leftMm }) => leftMm)).toEqual(us.heights.map(({ leftMm }) => leftMm))
    const words = JSON.stringify(own)
    expect(words).toContain("htr")
    expect(words).not.toMatch(/\b(?:sc|hdc)\b/)
    expect(own).toMatchObject({ stitches: ["dc", "htr", "tr"], straighten: "dc", toKnow: [] })
    const other = squarePattern(uk, [], { ...request, stitches: "sc, hdc, dc", terms: "US" })
    if ("fault" in other) throw new Error(other.fault)
    expect(other.toKnow).toEqual([expect.stringContaining("US names")])
    expect(other.proposals[0]!.text).toContain("Terms: US")
    expect(checkPattern(other.proposals[0]!.text).motif).toMatchObject({ rounds: 3 })
    // Where nothing is said of stitches, those of the pattern's own terms are named.
    const { html } = await renderNotebook(
      cell("pattern name=a", uk) + cell("squaring of=a", "Rounds: 1"),
    )
    expect(html).toContain("4 corners in 1 round of dc, htr, tr and dtr, best first")
  })

  it("tells a transitions cell's circles in the terms it asks for", async () => {
    const lines = "From: 24\nTo: 24\nRounds: 1\nTerms: UK\nStraighten: dc"
    const { cells, problems } = await computeNotebook(cell("transitions name=all", lines))
    expect(problems).toEqual([])
    const content = cells[0]!.content
    if (content?.kind !== "transitions" || !content.found) throw new Error("Nothing found.")
    const [only] = content.found.transitions
    expect(only!.rounds).toHaveLength(2)
    expect(only!.stitchKinds.every((name) => ["dc", "htr", "tr", "dtr"].includes(name))).toBe(true)
    const wrong = await computeNotebook(cell("transitions name=all", "From: 24\nCircle: dc, sc"))
    expect(wrong.problems[0]).toMatchObject({
      line: 4,
      message: expect.stringContaining("more than one"),
    })
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
