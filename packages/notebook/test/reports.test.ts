// The notebooks in reports/: each renders whole, and what their prose says in words is what their
// patterns are found to be. Their numbers are computed values and need no check here.

import { readdirSync, readFileSync } from "node:fs"
import { describe, expect, it } from "vitest"
import { computeNotebook, type NotebookResult, renderNotebook, renderPage } from "../src/index.ts"

const folder = new URL("../../../reports/", import.meta.url)
const notebooks = readdirSync(folder).filter((name) => name.endsWith(".md") && name !== "index.md")
const read = (name: string) => readFileSync(new URL(name, folder), "utf8")

/** Some are searched for half a minute: each is computed once for all tests. */
const computed = new Map<string, Promise<NotebookResult>>()
const compute = (name: string) => {
  const known = computed.get(name) ?? computeNotebook(read(name))
  computed.set(name, known)
  return known
}

describe("every notebook in reports", () => {
  it("there are some", () => expect(notebooks.length).toBeGreaterThanOrEqual(3))

  it.each(notebooks)("%s renders without a failing cell, the same each time", async (name) => {
    const result = await compute(name)
    const { problems, title } = result
    const html = await renderPage(result)
    expect(problems.filter(({ severity }) => severity === "error")).toEqual([])
    expect(html).not.toMatch(/could not be computed|class="value failed"|No value\./)
    expect(html).not.toMatch(/NaN|Infinity|undefined|\[object/)
    expect(title).not.toBe("Notebook")
    // What was searched for is told again; that a search finds the same twice is tested where it is made.
    const searches = result.cells.flatMap(({ content }) =>
      content?.kind === "transitions" && content.found ? [content.found] : [],
    )
    const again = await renderNotebook(read(name), { transitions: () => searches[0] ?? null })
    expect(again.html).toBe(html)
  })

  it.each(notebooks)(
    "%s asks a question and answers it with computed figures at once",
    async (name) => {
      const { tree, values } = await compute(name)
      const [heading, answer] = tree.children
      expect(heading?.type).toBe("heading")
      expect(answer?.type).toBe("paragraph")
      const lines = answer!.position!
      const inAnswer = values.filter(
        ({ line }) => line >= lines.start.line && line <= lines.end.line,
      )
      expect(inAnswer.length).toBeGreaterThan(0)
    },
  )
})

describe("what the prose says in words", () => {
  const found = (result: NotebookResult) =>
    Object.fromEntries(
      result.cells.flatMap(({ content }) => {
        if (content?.kind !== "pattern") return []
        const { laidOut } = content.pattern.result
        return [[content.pattern.name, [laidOut?.verdict, laidOut?.fromRound]]]
      }),
    )

  it("the coasters and the tile lie flat", async () => {
    expect(found(await compute("why-6-8-and-12.md"))).toEqual({
      pebble: ["flat", null],
      biscuit: ["flat", null],
      saucer: ["flat", null],
      tile: ["flat", null],
    })
  })

  it("6, 8 and 12 lie flat whatever yarn and hook are named: the default hand is one", async () => {
    const plain = await compute("why-6-8-and-12.md")
    const named = await computeNotebook(
      read("why-6-8-and-12.md").replaceAll(
        "\nTerms: US\n",
        "\nTerms: US\nYarn: DK\nHook: 3.5 mm\n",
      ),
    )
    expect(found(named)).toEqual(found(plain))
    const flat = (result: NotebookResult) =>
      result.values
        .filter(({ expression }) => /_flat\b/.test(expression))
        .map(({ expression, value }) => [expression, value])
    expect(flat(named).length).toBeGreaterThan(8)
    expect(flat(named)).toEqual(flat(plain))
  })

  it("one sheet read in two countries is two pieces: the American lies down, the British ruffles", async () => {
    const result = await compute("palm-house-pane.md")
    const { pane, british } = found(result)
    expect(pane).toEqual(["flat", null])
    expect(british![0]).toBe("ruffles")
    const texts = result.cells.flatMap(({ content }) =>
      content?.kind === "pattern" ? [content.pattern.text.replace(/^(?:#|Terms:).*$/gm, "")] : [],
    )
    expect(texts.length).toBe(2)
    expect(texts[0]).toBe(texts[1])
  })

  it("the mat ruffles from round 6, lies down where plain rounds let its rim catch up, and is mended", async () => {
    const result = await compute("a-mat-that-waves.md")
    expect(found(result)).toEqual({
      waves: ["ruffles", 6],
      kept: ["flat", null],
      mended: ["flat", null],
      typed: ["flat", null],
    })
    // The copy that was typed for the newsletter has slips, and an editor finds them.
    const typed = result.cells.find(({ info }) => info === "name=typed")!
    expect(result.problems.filter(({ cell }) => cell !== typed.index)).toEqual([])
    const edit = result.cells.find(({ kind }) => kind === "edit")!.content
    const mend =
      edit?.kind === "edit"
        ? edit.report.findings.filter(({ severity }) => severity === "must-mend")
        : []
    expect(mend.map(({ code, round }) => [code, round])).toEqual([
      ["hook-letter-differs", null],
      ["total-wrong", 5],
    ])
  })

  it("loops lie flat, the same count worked solid ruffles, short loops ruffle the round on them, taut ones cup", async () => {
    expect(found(await compute("lace-that-looks-too-full.md"))).toEqual({
      loops: ["flat", null],
      solid: ["ruffles", 3],
      short: ["ruffles", 5],
      taut: ["cups", 3],
    })
  })
})
