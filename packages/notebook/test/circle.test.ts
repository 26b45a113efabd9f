// Circle cells: the plans they give, in the words of either terms, and what they refuse.

import { checkPattern } from "@roundwright/assessment"
import { circlePlan, ovalPlan } from "@roundwright/shaping"
import { gaugeFrom } from "@roundwright/stitches"
import { describe, expect, it } from "vitest"
import { computeNotebook, renderNotebook } from "../src/index.ts"
import type { CellContent } from "../src/result.ts"
import { cell } from "./made.ts"

const yarn = "Yarn: DK\nHook: 4 mm"
const gauge = gaugeFrom({ swatches: [], yarnWeight: 3, hookMm: 4 })

async function planOf(lines: string): Promise<Extract<CellContent, { kind: "circle" }>> {
  const { cells, problems } = await computeNotebook(cell("circle name=a", lines))
  expect(problems).toEqual([])
  const content = cells[0]!.content
  if (content?.kind !== "circle") throw new Error("No plan.")
  return content
}

describe("a circle cell", () => {
  it("plans the disc the planner plans, whose text reads as it was planned", async () => {
    const { plan, pattern } = await planOf(`Stitch: dc\nRounds: 6\n${yarn}`)
    const asked = circlePlan({ stitches: [{ basic: "dc" }], gauge, rounds: 6 })
    expect({ ...plan, words: [] }).toEqual({ ...asked, words: [] })
    expect(pattern.result.rounds.map(({ counted }) => counted?.stitches)).toEqual(plan.counts)
  })

  it("takes increases, repeats, corners and a mix of stitches", async () => {
    const staggered = await planOf(`Rounds: 6\n${yarn}`)
    const stacked = await planOf(`Rounds: 6\nIncreases: Stacked\n${yarn}`)
    expect(stacked.plan.text).not.toBe(staggered.plan.text)
    const inNines = await planOf(`Rounds: 5\nRepeats: 9\n${yarn}`)
    expect(inNines.plan.counts.every((count) => count % 9 === 0)).toBe(true)
    const hexagon = await planOf(`Rounds: 5\nCorners: 6\n${yarn}`)
    expect(hexagon.pattern.result.motif).toMatchObject({ corners: 6 })
    const mixed = await planOf(`Stitch: sc, dc\nRounds: 6\n${yarn}`)
    expect(mixed.plan.text).toMatch(/sc[\s\S]*dc/)
  })

  it("plans a size across, and says which yarn it takes where none is given", async () => {
    const known = await planOf(`Across: 20 cm\n${yarn}`)
    if (!("acrossMm" in known.plan)) throw new Error("No circle.")
    expect(Math.abs(known.plan.acrossMm! - 200)).toBeLessThan(12)
    const assumed = await planOf("Across: 20 cm")
    expect(assumed.plan.words.at(-1)).toContain("worsted yarn (weight 4) and a 5 mm hook")
    expect(assumed.plan.text).toContain("Hook: 5 mm")
  })

  it("plans an oval by its chains or by how much longer it is, with its own verdict and sizes", async () => {
    const { plan } = await planOf(`Oval: 14\nRounds: 4\n${yarn}`)
    const asked = ovalPlan({ stitch: { basic: "dc" }, gauge, rounds: 4, chains: 14 })
    expect(plan).toEqual(asked)
    const lines = `Longer by: 8 cm\nRounds: 4\n${yarn}`
    const text = `\`= a.oval_length - a.oval_width\` \`= a.oval_chains\` \`= a.verdict\`\n${cell("circle name=a", lines)}${cell("verdict of=a")}`
    const { html, problems } = await renderNotebook(text)
    expect(problems).toEqual([])
    expect(html).toMatch(/Lies flat; 4 rounds, about [\d.]+\scm long and [\d.]+\scm wide\./)
    expect(html).toContain("the shape of an oval is not worked out")
    expect(html).not.toContain("No verdict")
    const { values } = await computeNotebook(text)
    const longer = Number.parseFloat(values[0]!.value!)
    expect(Math.abs(longer - 80)).toBeLessThan(8)
    expect(values[2]!.value).toBe("lies flat")
  })

  it("plans a stitch of one's own by its swatch, and says what stands for it", async () => {
    const { plan, pattern } = await planOf(
      "Stitch: petal\nGauge: 10 petal x 6 rows = 10 cm\nRounds: 4",
    )
    expect(plan.words[0]).toContain('"petal" is a stitch of your own')
    expect(pattern.result.gauge.source).toBe("swatch")
  })

  it("writes and reads in UK terms where they are asked for", async () => {
    const { plan } = await planOf(`Stitch: tr\nTerms: UK\nRounds: 3\n${yarn}`)
    const same = await planOf(`Stitch: dc\nRounds: 3\n${yarn}`)
    expect(plan.counts).toEqual(same.plan.counts)
    expect(plan.text).toContain("Terms: UK")
    expect(plan.words.join(" ")).toContain(" tr more in each round")
    expect(checkPattern(plan.text).terms).toBe("UK")
    // Asked for nothing, a cell plans the same stitch in either terms.
    const usual = await planOf(`Terms: UK\nRounds: 3\n${yarn}`)
    expect(usual.plan.text).toBe(plan.text)
  })

  it.each([
    ["Stitch: sc, what", '"what" is no stitch'],
    ["Stitch:", "No stitch is allowed"],
    ["Stitch: sl st", "Slip stitches"],
    ["Across: wide", '"wide" is no length'],
    ["Across: 900 cm", "more than 120 rounds"],
    ["Rounds: 0", "number of rounds"],
    ["Rounds: 61", "number of rounds"],
    ["Corners: 13", "number of corners"],
    ["Corners: constructor", "number of corners"],
    ["Increases: sideways", "sideways"],
    ["Repeats: 1.5", "number of repeats"],
    ["Oval: 2", "number of chains"],
    ["Oval: 1e9", "number of chains"],
    ["Longer by: 90 m", "is no length"],
    ["Longer by: 900 cm", "chains, more than 300"],
    ["Terms: French", "French"],
    ["Hook: banana", "banana"],
    ["Gauge: many", "many"],
    ["Yarn: thick", "names no yarn weight"],
    ["Sides: 4", "not understood"],
  ])("with %s alone says so at its place, with a hint", async (line, said) => {
    const text = cell("circle name=a", `\n${line}`)
    const { problems, cells } = await computeNotebook(text)
    expect(cells[0]!.content).toBeNull()
    const [problem] = problems
    expect(problem!.message).toContain(said)
    expect(problem!.hint).not.toBe("")
    expect(text.split("\n")[problem!.line - 1]).toBe(line)
  })

  it.each([
    ["Across: 20 cm\nRounds: 4", "Across: 20 cm"],
    ["Corners: 6\nIncreases: stacked", "Increases: stacked"],
    ["Corners: 6\nRepeats: 5", "Repeats: 5"],
    ["Oval: 20\nCorners: 6", "Corners: 6"],
    ["Oval: 20\nLonger by: 8 cm", "Longer by: 8 cm"],
    ["Oval: 20\nStitch: sc, dc", "Stitch: sc, dc"],
    ["Rounds: 4\nRounds: 5", "Rounds: 5"],
  ])("with %j says which line is one too many", async (lines, at) => {
    const text = cell("circle name=a", lines)
    const { problems } = await computeNotebook(text)
    expect(problems).toHaveLength(1)
    expect(text.split("\n")[problems[0]!.line - 1]).toBe(at)
  })
})
