import { describe, expect, it } from "vitest"
import { computeNotebook, type NotebookResult } from "../src/index.ts"
import { cell, checkCounts, layOutCounts } from "./made.ts"

const compute = (markdown: string) =>
  computeNotebook(markdown, { check: checkCounts, layOut: layOutCounts })
const codes = (result: NotebookResult) => result.problems.map((problem) => problem.code)
const disc = cell("pattern name=disc", "6 12 18")

describe("cells", () => {
  it("are found in order with what they gave", async () => {
    const result = await compute(
      `# Title \`= 1 + 1\`\n${disc}${cell("verdict of=disc")}${cell("chart of=disc name=growth")}${cell("js", "not ours")}`,
    )
    expect(result.title).toBe("Title 2")
    expect(result.cells.map(({ kind, content }) => [kind, content?.kind])).toEqual([
      ["pattern", "pattern"],
      ["verdict", "verdict"],
      ["chart", "chart"],
    ])
    expect(result.problems).toEqual([])
  })

  it("need no of= when there is one pattern only", async () => {
    expect((await compute(disc + cell("ledger"))).cells[1]?.content?.kind).toBe("ledger")
    const two = await compute(disc + cell("pattern name=other", "6") + cell("ledger"))
    expect(codes(two)).toEqual(["no-such-pattern"])
    expect(two.problems[0]?.hint).toContain("disc, other")
  })

  it("may stand before the pattern they are about", async () => {
    const result = await compute(`\`= disc.rounds\`${cell("verdict of=disc")}${disc}`)
    expect(result.values[0]?.value).toBe("3")
    expect(result.problems).toEqual([])
  })

  it.each([
    ["pattern", "bad-option", "needs the option name"],
    ["pattern name=1x", "bad-option", "must be a letter"],
    ["pattern name=mm", "bad-option", "use already"],
    ["pattern name=a colour=red", "bad-option", 'no option "colour"'],
    ["pattern name=a name=b", "bad-option", "given twice"],
    ["pattern disc", "bad-option", "not written as key=value"],
    ["chart of=disc name=pie", "bad-option", "must be one of growth"],
    ["verdict of=nobody", "no-such-pattern", "no pattern called nobody"],
    ["gauge for=nobody", "no-such-pattern", "no pattern called nobody"],
    ["pattern name=disc", "name-taken", "line 2 already"],
    ["verdict __proto__=x", "bad-option", "key=value"],
    ["verdict constructor=x", "bad-option", 'no option "constructor"'],
  ])("opened with %j: %s", async (info, code, said) => {
    const result = await compute(disc + cell(info, "6"))
    const problem = result.problems.find((one) => one.cell === 1)
    expect(problem).toMatchObject({ severity: "error", code, line: 6 })
    expect(problem?.message).toContain(said)
    expect(problem?.hint).not.toBe("")
    expect(result.cells[1]?.content).toBeNull()
  })

  it("tell the place of a bad option", async () => {
    const { problems } = await compute("\n```pattern name=a colour=red\n6\n```")
    expect(problems[0]).toMatchObject({ line: 2, column: 19, length: 10 })
  })

  it("that are misspelt or indented are told of and shown as they stand", async () => {
    const result = await compute(`${cell("patern name=a", "6")}\n> \`\`\`verdict\n> \`\`\``)
    expect(codes(result)).toEqual(["unknown-cell", "cell-not-at-margin"])
    expect(result.problems[0]?.hint).toContain("pattern")
  })

  it("a chart of a pattern without rounds is empty and no fault of its own: the pattern tells why", async () => {
    const result = await compute(
      `${cell("pattern name=none", "?")}${cell("chart name=growth")}${cell("chart name=diagram")}`,
    )
    const charts = result.cells.slice(1).map(({ content }) => content)
    expect(charts).toMatchObject([{ charts: null }, { charts: null }])
    expect(codes(result)).toEqual(["unknown-word"])
    expect(result.problems[0]).toMatchObject({ line: 3, column: 1, cell: 0 })
  })
})

describe("gauge cells", () => {
  it("stand before the pattern's text, replace its headings of the same name, and tell which hook its measures are of", async () => {
    const seen: string[] = []
    const check = (text: string) => {
      seen.push(text)
      return checkCounts(text)
    }
    await computeNotebook(
      cell("pattern name=a", "A wheel\nHook: 4 mm\nYarn: wool\n6 12") +
        cell("gauge for=a", "Hook: 5 mm"),
      { check },
    )
    expect(seen).toEqual(["A wheel\nHook: 5 mm instead of 4 mm\n\nYarn: wool\n6 12"])
  })

  it("keep the places of problems, in the pattern and in the gauge", async () => {
    const result = await compute(
      cell("pattern name=a", "A wheel\n6\n12 ?x") + cell("gauge for=a", "Yarn: wool\nHook: ?"),
    )
    expect(result.problems.map(({ cell: index, line, column }) => [index, line, column])).toEqual([
      [0, 5, 4],
      [1, 10, 7],
    ])
  })

  it("are one to a pattern", async () => {
    const gauge = cell("gauge for=disc", "Hook: 5 mm")
    expect(codes(await compute(disc + gauge + gauge))).toEqual(["name-taken"])
  })
})

describe("what is too much", () => {
  it.each([
    ["characters", "word ".repeat(90_000)],
    ["one line", "word ".repeat(3_000)],
    ["quotes in quotes", `${"> ".repeat(500)}x`],
    ["lists in lists", `${"- ".repeat(500)}x`],
    ["marks", "*a _b [c `d\n".repeat(2_000)],
    ["marks behind a fence that is none", `  - x\n\`\`\`a\`b\n${"*a _b [c\n".repeat(2_000)}`],
  ])("%s is refused as a whole, with its place", async (_, text) => {
    const result = await compute(text)
    expect(codes(result)).toEqual(["too-much-text"])
    expect(result.cells).toEqual([])
  })

  it("a long pattern in its fence is not prose, but a fence inside raw HTML is none", async () => {
    const long = `${"*6* ".repeat(5_000)}\n`.repeat(3)
    const result = await compute(cell("pattern name=a", long))
    expect(result.problems).toEqual([])
    expect(codes(await compute(`<pre>\n\`\`\`pattern name=a\n${long}`))).toEqual(["too-much-text"])
    expect(codes(await compute(` \`\`\`\n\`\`\`\n${long}`))).toEqual(["too-much-text"])
    expect(codes(await compute(`~~~\n\`\`\`\n~~~\n${long}`))).toEqual(["too-much-text"])
    expect(codes(await compute(`${cell("pattern name=a", "6")}${long}`))).toEqual(["too-much-text"])
  })

  it("cells by the thousand are refused", async () => {
    expect(codes(await compute(cell("calculation", "1").repeat(1_000)))).toEqual(["too-many-cells"])
  })
})
