// Notebooks with patterns that are really read and checked.

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

describe("a pattern with a fault", () => {
  it("is shown with its words underlined, at their line in the notebook", async () => {
    const text = `words\n${cell("pattern name=own", button.replace("2 sc in each st", "2 blorb in each st"))}`
    const { html, problems } = await renderNotebook(text)
    const problem = problems.find(({ message }) => message.includes("blorb"))!
    expect(problem).toMatchObject({ severity: "error", line: 7, cell: 0 })
    const at = problem.column - 1
    const line = text.split("\n")[problem.line - 1]!
    // Whether the words around it that make no sense without it are marked too is the reader's matter.
    expect(line.slice(at, at + problem.length)).toContain("blorb")
    expect(line.slice(0, at)).not.toContain("blorb")
    expect(html).toMatch(/<mark class="(?:error|warning)" title="[^"]+">[^<]*blorb/)
  })

  it("still gives the rounds before it, and says which were not read", async () => {
    const text = button.replace("*2 sc in next st, sc in next st", "blorb blorb")
    const { html } = await renderNotebook(cell("pattern name=own", text) + cell("ledger"))
    expect(html).toContain("not read")
    expect(html).toContain("lies flat")
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
