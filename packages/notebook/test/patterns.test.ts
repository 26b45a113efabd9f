// Notebooks with patterns that are really read and checked.

import { examinePattern, gaugeFromPieces } from "@roundwright/assessment"
import { gaugeFrom, inHand } from "@roundwright/stitches"
import { describe, expect, it } from "vitest"
import { expectRelative } from "../../../test/support/close.ts"
import { computeNotebook, patternNotebook, renderNotebook } from "../src/index.ts"
import { cell } from "./made.ts"

const button = `# Button
Gauge: 20 sc and 20 rows = 10 cm
Rnd 1: Make an adjustable ring, 6 sc in ring; join. (6 sc)
Rnd 2: 2 sc in each st around; join. (12 sc)
Rnd 3: *2 sc in next st, sc in next st; rep from * around; join. (18 sc)`

describe("a gauge cell", () => {
  it("is another hand on the same written pattern", async () => {
    const result = await computeNotebook(
      cell("pattern name=own", button) +
        cell("pattern name=loose", button) +
        cell("gauge for=loose", "Gauge: 10 sc and 10 rows = 10 cm"),
    )
    expect(result.problems).toEqual([])
    const across = result.cells.map(({ content }) =>
      content?.kind === "pattern" ? content.pattern.result.laidOut?.acrossMm : undefined,
    )
    const reason = "half as many stitches to the same length: everything twice as large"
    expectRelative(across[1]!, 2 * across[0]!, 1e-9, reason)
  })

  it("that cannot be read is told of at its line", async () => {
    const { problems } = await computeNotebook(
      cell("pattern name=own", button) + cell("gauge for=own", "Gauge: as you like"),
    )
    expect(problems.length).toBeGreaterThan(0)
    expect(problems[0]).toMatchObject({ cell: 1, line: 11 })
  })
})

describe("one hand has one answer", () => {
  const rounds = button.split("\n").slice(2).join("\n")
  const patterns: readonly (readonly [string, string])[] = [
    ["yarn, hook and swatch", "Yarn: DK\nHook: 4 mm\nGauge: 20 sc and 20 rows = 10 cm"],
    ["yarn and hook", "Yarn: DK\nHook: 4 mm"],
    ["a hook alone", "Hook: 4 mm"],
    ["thread and hook", "Yarn: size 10 crochet thread\nHook: 3 mm"],
    ["a measured round", "Yarn: DK\nHook: 4 mm\nSize: 5 cm after Rnd 3"],
    [
      "a gauge with a hook of its own",
      "Yarn: DK\nGauge: 20 sc and 20 rows = 10 cm with a 4 mm hook",
    ],
  ]
  const hands = [
    "Hook: 4.5 mm",
    "Hook: 3 mm",
    "Hook: 4 mm",
    "Yarn: worsted",
    "Yarn: DK held double",
  ]

  it.each(patterns)("whichever way it is asked, of a pattern with %s", async (_, headings) => {
    const text = `# Button\n${headings}\n${rounds}`
    for (const hand of hands) {
      const { cells } = await computeNotebook(
        cell("pattern name=own", text) + cell("gauge for=own", hand),
      )
      const content = cells[0]!.content
      const asked = content?.kind === "pattern" ? content.pattern.result.gauge.scWidthMm : undefined
      const { gauge: own, reading } = examinePattern(text)
      const told = examinePattern(hand).reading.gauge
      const inHands = gaugeFrom(inHand(own!.input, told))
      const mine = gaugeFromPieces(reading.motif, inHands, false).gauge
      const reason = `${headings} under ${hand}: a lone round's share of a shape's pull is all that may differ`
      expectRelative(asked as number, mine.scWidthMm, 0.003, reason)
    }
  })

  it("a hook that is the pattern's own changes nothing, and 4 to 4.5 mm is 6 % of yarn", async () => {
    const width = async (headings: string, hand: string) => {
      const text = `# Button\n${headings}\n${rounds}`
      const { cells } = await computeNotebook(
        cell("pattern name=own", text) + cell("gauge for=own", hand),
      )
      const content = cells[0]!.content
      return content?.kind === "pattern"
        ? (content.pattern.result.gauge.scWidthMm as number)
        : Number.NaN
    }
    for (const [, headings] of patterns.filter(([name]) => !name.startsWith("thread"))) {
      const plain = await width(headings, "Skew: 0 degrees")
      expectRelative(await width(headings, "Hook: 4 mm"), plain, 1e-9, headings)
      expectRelative(await width(headings, "Hook: 4.5 mm"), plain * 1.125 ** 0.5, 1e-3, headings)
    }
    const thread = "Yarn: size 10 crochet thread\nHook: 3 mm"
    const finer = await width(thread, "Hook: 1.8 mm")
    expectRelative(finer / (await width(thread, "Hook: 3 mm")), 0.75, 0.01, "a quarter smaller")
  })

  it("a swatch of her own goes before the pattern's finished size", async () => {
    const text = `# Button\nSize: 5 cm\n${rounds}`
    const { cells } = await computeNotebook(
      cell("pattern name=own", text) + cell("gauge for=own", "Gauge: 10 sc and 10 rows = 10 cm"),
    )
    const content = cells[0]!.content
    expect(content?.kind === "pattern" && content.pattern.result.gauge.source).toBe("swatch")
  })
})

describe("a pattern with a fault", () => {
  it.each([
    ["where nothing else says what the round makes", " (12 sc)", "warning", "error"],
    ["and lightly where its total settles the count", "", "note", "note"],
  ])("is shown with its words underlined, at their line in the notebook, %s", async (...row) => {
    const [, left, severity, worst] = row
    const round = "2 blorb in each st around; join. (12 sc)".replace(left, "")
    const own = button.replace("2 sc in each st around; join. (12 sc)", round)
    const text = `words\n${cell("pattern name=own", own)}`
    const { html, problems } = await renderNotebook(text)
    const problem = problems.find(({ message }) => message.includes("blorb"))!
    expect(problem).toMatchObject({ severity, line: 7, cell: 0 })
    expect(problems.filter(({ line }) => line === 7)[0]!.severity).toBe(worst)
    const at = problem.column - 1
    const line = text.split("\n")[problem.line - 1]!
    // Whether the words around it that make no sense without it are marked too is the reader's matter.
    expect(line.slice(at, at + problem.length)).toContain("blorb")
    expect(line.slice(0, at)).not.toContain("blorb")
    expect(html).toMatch(new RegExp(`<mark class="${severity}" title="[^"]+">[^<]*blorb`))
  })

  it("still gives the rounds before it, and says which were not read", async () => {
    const text = button.replace("*2 sc in next st, sc in next st", "blorb blorb")
    const unsettled = text.replace(" (18 sc)", "")
    const { html } = await renderNotebook(cell("pattern name=own", unsettled) + cell("ledger"))
    expect(html).toContain("not read")
    expect(html).toContain("lies flat")
  })

  it("goes on from its total where it states one, and says that the round is assumed", async () => {
    const text = button.replace("*2 sc in next st, sc in next st", "blorb blorb")
    const { html } = await renderNotebook(
      cell("pattern name=own", text) + cell("verdict") + cell("ledger"),
    )
    expect(html).not.toContain("not read")
    expect(html).toMatch(/1 of its 3 rounds is assumed/)
  })
})

describe("the notebook of one pattern", () => {
  it.each([
    ["a plain one", button],
    ["one with fences in it", `\`\`\`\n${button}\n\`\`\`\`\`\nend`],
    ["nonsense", "qwertz ".repeat(300)],
    ["nothing", ""],
    ["control characters", "\u0000\u0001\u0007\ufffe Rnd 1: 6 sc"],
    ["a huge count", "Rnd 1: 6 sc in ring\nRnd 2: *sc in next st; rep from * 1000000000 times"],
    ["tags", "<script>alert(1)</script>\nRnd 1: 6 sc in ring </pre><img src=x>"],
    ["deep brackets", `Rnd 1: ${"(".repeat(500)}sc${")".repeat(500)}`],
  ])("renders %s", async (_, pattern) => {
    const { html } = await renderNotebook(patternNotebook(pattern, "<b>*A* `title`</b>"))
    expect(html.endsWith("</html>\n")).toBe(true)
    expect(html).not.toMatch(/<(?:script|img|b)\b/)
    expect(html).not.toMatch(/NaN|Infinity|\[object/)
  })
})
