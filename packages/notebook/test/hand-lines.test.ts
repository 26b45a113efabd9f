// Which lines of a gauge cell hold beside a pattern that has headings of its own, and that the rounds of a page are judged as
// its headline is.

import { checkPattern } from "@roundwright/assessment"
import { describe, expect, it } from "vitest"
import { expectRelative } from "../../../test/support/close.ts"
import { unlessSaid, withOwnLine, yieldTo } from "../src/hand-lines.ts"
import { blankNotebook, computeNotebook } from "../src/index.ts"
import { cell } from "./made.ts"

const rounds = [
  "Rnd 1: 6 sc in magic ring. (6 sc)",
  "Rnd 2: 2 sc in each st around. (12 sc)",
  "Rnd 3: *sc in next st, 2 sc in next st; rep from * around. (18 sc)",
].join("\n")

async function scWidthOf(pattern: string, gauge: string) {
  const { cells, problems } = await computeNotebook(
    cell("pattern name=own", pattern) + cell("gauge for=own", gauge),
  )
  const content = cells[0]!.content
  const told = problems.filter(({ code }) => code === "pattern-says-its-own")
  return {
    width: content?.kind === "pattern" ? (content.pattern.result.gauge.scWidthMm as number) : 0,
    told: told.map(({ line, severity }) => ({ line: line - 9, severity })),
  }
}

describe("lines that hold unless the pattern says otherwise", () => {
  const weak = `${unlessSaid}\nYarn: DK\nHook: 4 mm`
  const same = "the same yarn and hook, said in another place"

  it.each([
    ["its own yarn and hook", "Yarn: worsted\nHook: 5.5 mm"],
    ["its own hook alone", "Hook: 5.5 mm"],
    ["its own gauge", "Gauge: 12 sc x 13 rows = 10 cm"],
    ["its materials", "Materials: worsted weight yarn, 6 mm hook"],
  ])("give way to %s, and that is told", async (_, heading) => {
    const text = `Terms: US\n${heading}\n${rounds}`
    const { width, told } = await scWidthOf(text, weak)
    expectRelative(width, (await scWidthOf(text, "")).width, 1e-12, same)
    expect(told.map(({ severity }) => severity)).toEqual(["note", "note"])
  })

  it("hold where it says nothing", async () => {
    const { width, told } = await scWidthOf(`Terms: US\n${rounds}`, weak)
    const own = await scWidthOf(`Terms: US\nYarn: DK\nHook: 4 mm\n${rounds}`, "")
    expectRelative(width, own.width, 1e-12, same)
    expect(told).toEqual([])
  })

  it("give way to what stands above them", async () => {
    const text = `Terms: US\nYarn: worsted\nHook: 5.5 mm\n${rounds}`
    const { width } = await scWidthOf(text, `Hook: 6 mm\n${weak}`)
    expectRelative(width, (await scWidthOf(text, "Hook: 6 mm")).width, 1e-12, same)
  })

  it("are what a new page begins with", () => {
    expect(blankNotebook()).toContain(`${unlessSaid}\nYarn: DK\nHook: 4 mm`)
  })
})

describe("a line of one's own", () => {
  it("stands before those that give way and takes their place", () => {
    const weak = `${unlessSaid}\nYarn: DK\nHook: 4 mm`
    expect(withOwnLine(weak, "Hook", "5 mm")).toBe(`Hook: 5 mm\n${unlessSaid}\nYarn: DK`)
    expect(withOwnLine(`${unlessSaid}\nHook: 4 mm`, "Hook", "5 mm")).toBe("Hook: 5 mm")
    expect(withOwnLine("Hook: 4 mm\nYarn: DK\n", "Hook", null)).toBe("Yarn: DK\n")
    expect(withOwnLine("Hook: 4 mm\n", "Size", "9 cm")).toBe("Hook: 4 mm\nSize: 9 cm")
  })

  it("gives way when a pattern is pasted that says its own, and only then", () => {
    const own = "Hook: 5 mm\nSize: 9 cm after Rnd 3"
    expect(yieldTo(`Hook: 3 mm\n${rounds}`, own, "")).toEqual({
      text: `Size: 9 cm after Rnd 3\n${unlessSaid}\nHook: 5 mm`,
      moved: ["hook"],
    })
    expect(yieldTo(rounds, own, "")).toEqual({ text: own, moved: [] })
    // A round pasted into a pattern whose hook she had set aside already.
    const standing = "Hook: 3 mm\nRnd 1: 6 sc in magic ring. (6 sc)"
    expect(yieldTo(`Hook: 3 mm\n${rounds}`, own, standing)).toEqual({ text: own, moved: [] })
  })
})

describe("the rounds of a page", () => {
  it("are judged as its headline is", async () => {
    const lace = `Terms: US
Rnd 1: 12 dc in magic ring. (12 dc)
Rnd 2: *dc in next st, ch 3; rep from * around. (12 dc)
Rnd 3: *5 dc in next ch-3 sp; rep from * around. (60 dc)`
    const { patterns } = await computeNotebook(cell("pattern name=own", lace))
    const told = patterns[0]!.result
    const judged = checkPattern(lace, { shape: "net" })
    const quick = checkPattern(lace)
    expect(told.rounds).toEqual(judged.rounds)
    expect(told.ledger).toEqual(judged.ledger)
    // Growth alone says otherwise of this piece, so that the page would show it if it went by that.
    expect(quick.rounds.map(({ accumulatedFullness }) => accumulatedFullness)).not.toEqual(
      judged.rounds.map(({ accumulatedFullness }) => accumulatedFullness),
    )
  })
})
