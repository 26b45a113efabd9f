// The parts of a live page that need no browser: the text cut into cells, the way back, the underlines,
// remedies worked into a text, and the page as a file.

import { readdirSync, readFileSync } from "node:fs"
import { checkPattern } from "@roundwright/assessment"
import { severityOf } from "@roundwright/flatness"
import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { carriedAnswers } from "../src/carried.ts"
import type { CirclePlan } from "../src/circle.ts"
import { computeNotebook, renderLivePage, renderPage } from "../src/index.ts"
import { joinGauge } from "../src/join-gauge.ts"
import { makeAnswerer } from "../src/live/answer.ts"
import { Book } from "../src/live/book.ts"
import { Known } from "../src/live/known.ts"
import { moveMarks, splitLine } from "../src/live/line-marks.ts"
import type { Answer, Mark, Question } from "../src/live/messages.ts"
import { cutSource } from "../src/live/source.ts"
import { tryRemedies } from "../src/live/trials.ts"
import { jsonForPage } from "../src/page/document.ts"
import { cell } from "./made.ts"

const folder = new URL("../../../reports/", import.meta.url)
const reports = readdirSync(folder).filter((name) => name.endsWith(".md") && name !== "index.md")
const report = (name: string) => readFileSync(new URL(name, folder), "utf8")

describe("a notebook cut into cells", () => {
  it.each(reports)("%s is the same again when nothing changed", (name) => {
    const source = cutSource(report(name))
    expect(source.cells.length).toBeGreaterThan(0)
    expect(source.withTexts(new Map())).toBe(report(name))
    const texts = new Map(source.cells.map(({ index, text }) => [index, text]))
    expect(source.withTexts(texts)).toBe(report(name))
  })

  it("gives back whatever text is put into a cell, and all else to the letter", () => {
    const text = `before\n${cell("pattern name=a", "one\ntwo")}\nbetween\n${cell("calculation", "2")}\nafter`
    const parts = fc.constantFrom("```", "~~~", "````", "\n", " ", "x", "# a", "<b>", "&", "`")
    fc.assert(
      fc.property(fc.array(parts, { maxLength: 12 }), (words) => {
        const put = words.join("")
        const changed = cutSource(text).withTexts(new Map([[0, put]]))
        const again = cutSource(changed)
        expect(again.cells.map(({ kind }) => kind)).toEqual(["pattern", "calculation"])
        expect(again.cells[0]!.text).toBe(put)
        expect(changed.startsWith("before\n")).toBe(true)
        expect(changed.endsWith(text.slice(text.indexOf("\nbetween")))).toBe(true)
      }),
      { seed: 6, numRuns: 300 },
    )
  })

  it("keeps line ends, a fence left open, and cells of another width", () => {
    const text = "a\r\n\r\n~~~~pattern name=a\r\n6 12\r\n~~~~\r\n\r\n```calculation\r\n1"
    const source = cutSource(text)
    expect(source.cells.map((one) => one.text)).toEqual(["6 12", "1"])
    expect(source.withTexts(new Map())).toBe(text)
    expect(source.withTexts(new Map([[1, "2"]]))).toContain("~~~~pattern name=a\r\n6 12\r\n~~~~")
  })
})

describe("the way back", () => {
  const text = cell("pattern name=a", "6") + cell("calculation", "1")
  it("joins keys struck in one go into one step, and parts them after a pause", () => {
    const book = new Book(text, text)
    book.type(0, "6 1", 0)
    book.type(0, "6 12", 300)
    book.type(0, "6 12 1", 5_000)
    book.type(1, "1 + 1", 5_100)
    expect(book.undo()).toEqual([1])
    expect(book.undo()).toEqual([0])
    expect(book.text(0)).toBe("6 12")
    expect(book.undo()).toEqual([0])
    expect(book.text(0)).toBe("6")
    expect(book.canUndo).toBe(false)
    expect(book.undo()).toEqual([])
    expect(book.markdown).toBe(text)
    expect([book.redo(), book.redo(), book.redo(), book.redo()]).toEqual([[0], [0], [1], []])
    expect([book.text(0), book.text(1)]).toEqual(["6 12 1", "1 + 1"])
    book.undo()
    book.change(1, "3")
    expect(book.redo()).toEqual([])
  })

  it("knows what differs from the original, also in a notebook saved before", () => {
    const changed = text.replace("6", "6 12")
    const book = new Book(changed, text)
    expect(book.editedCells).toEqual([0])
    expect(book.markdown).toContain("6 12")
    expect(book.original).toBe(text)
    expect(book.restore()).toEqual([0])
    expect(book.markdown).toBe(text)
    expect(book.undo()).toEqual([0])
    expect(book.text(0)).toBe("6 12")
  })
})

describe("underlines", () => {
  const mark = (line: number, column = 1, length = 1): Mark => ({
    ...{ severity: "error", round: null, message: "", hint: "" },
    ...{ line, column, length },
  })
  it("stay with lines that did not change and leave those that did", () => {
    const marks = new Map([1, 3, 4].map((line) => [line, [mark(line)]]))
    const moved = moveMarks(marks, ["a", "b", "c", "d"], ["a", "new", "c2", "x", "d"])
    expect([...moved.keys()]).toEqual([1, 5])
  })
  it("part a line without losing a letter", () => {
    const pieces = splitLine("one two three", [mark(1, 5, 3), mark(1, 6, 20), mark(1, 9, 99)])
    expect(pieces.map((piece) => piece.text).join("")).toBe("one two three")
    expect(pieces.filter((piece) => piece.severity).map((piece) => piece.text)).toEqual([
      "two",
      "three",
    ])
  })
})

describe("remedies tried", () => {
  const found = async () => {
    const all: { name: string; text: string; gauge: readonly string[] }[] = []
    for (const name of reports) {
      // Patterns are wanted here, and nothing that takes its time.
      const none = { square: () => null, transitions: () => null, layOut: () => null }
      const { cells } = await computeNotebook(report(name), none)
      for (const { content } of cells) {
        if (content?.kind !== "pattern") continue
        const gauge = cells.flatMap((one) =>
          one.content?.kind === "gauge" && one.content.of === content.pattern.name
            ? one.content.lines
            : [],
        )
        all.push({ name: content.pattern.name, text: content.pattern.text, gauge })
      }
    }
    return all
  }

  it("are written where they are counts, stitches or chains, and lie better than before", async () => {
    let written = 0
    for (const { name, text } of await found()) {
      const before = checkPattern(text)
      const tried = tryRemedies(text, [], before.remedies)
      expect(tried).toHaveLength(before.remedies.length)
      for (const [index, trial] of tried.entries()) {
        const { change } = before.remedies[index]!
        if (!trial) continue
        if (/hook/.test(change)) expect(trial.text, name).toBeNull()
        if (trial.text === null) continue
        written += 1
        const after = checkPattern(trial.text)
        // A flat piece with a round that is off may be offered that round's change: it stays flat.
        const was = severityOf(before.laidOut!.verdict)
        expect(severityOf(after.laidOut!.verdict), `${name}: ${change}`).toBeLessThan(was || 1)
        expect(after.problems.filter(({ severity }) => severity === "error")).toEqual([])
        // Rounds before the one that is changed, and all headings, stay to the letter.
        const lines = text.split("\n")
        expect(trial.text.split("\n").slice(0, trial.line - 1)).toEqual(
          lines.slice(0, trial.line - 1),
        )
      }
    }
    expect(written).toBeGreaterThan(5)
  })

  it("leave the gauge cell over a pattern out of the pattern's text", () => {
    const text = `# Mat\nHook: 4 mm\nYarn: DK\n\n${[6, 12, 24, 48].map((n, i) => `Rnd ${i + 1}: ${i === 0 ? "6 sc in magic ring" : "2 sc in each st around"}. (${n} sc)`).join("\n")}\n\nWeave in the ends.`
    const gauge = ["Hook: 5 mm", "Yarn: aran"]
    const listed = checkPattern(joinGauge(text, gauge).joined).remedies
    const plain = tryRemedies(text, [], checkPattern(text).remedies)
    const under = tryRemedies(text, gauge, listed)
    const texts = under.flatMap((trial) => trial?.text ?? [])
    expect(texts.length).toBeGreaterThan(0)
    for (const one of texts) {
      expect(one).toContain("Hook: 4 mm\nYarn: DK\n")
      expect(one).not.toContain("5 mm")
      expect(one.endsWith("\n\nWeave in the ends.")).toBe(true)
    }
    expect(under.map((trial) => trial?.line)).toEqual(plain.map((trial) => trial?.line))
  })

  it("are none for a text that cannot be read", () => {
    const remedy = { round: 1, change: "", fullnessAfter: 1, verdictAfter: "flat" as const }
    expect(tryRemedies("", [], [])).toEqual([])
    expect(tryRemedies("Rnd 1: constructor __proto__", [], [remedy])).toEqual([
      { text: null, line: 1 },
    ])
  })
})

describe("an answer in parts", () => {
  const nothing = {
    searches: new Map(),
    transitions: new Map(),
    finishing: new Map(),
    plans: new Map(),
    shapes: new Map(),
  }
  it("tells the page first, then each drawing, then the end; and stops when it is not wanted", async () => {
    const ask = async (rests: number) => {
      const told: Answer[] = []
      let left = rests
      await makeAnswerer(false).answer(
        { id: 7, markdown: report("why-6-8-and-12.md"), known: nothing, layOut: [] },
        (answer) => told.push(answer),
        () => Promise.resolve(left-- > 0),
      )
      return told.map(({ part }) => part).filter((part) => part !== "working")
    }
    const parts = await ask(999)
    expect(parts[0]).toBe("page")
    expect(parts.at(-1)).toBe("end")
    expect(parts.filter((part) => part === "cell").length).toBeGreaterThan(0)
    expect(await ask(0)).toEqual([])
    expect(await ask(2)).toEqual(["page", "cell"])
  })

  describe("on a thread that a reader shares", () => {
    const heard = async (question: Question) => {
      const told: Answer[] = []
      await makeAnswerer(true).answer(
        question,
        (answer) => told.push(answer),
        () => Promise.resolve(true),
      )
      return told
    }
    const laidOutOf = async (text: string) => {
      const told = await heard({ id: 1, markdown: "", known: nothing, layOut: [text] })
      return told.find((answer) => answer.part === "shape")!.found
    }

    it("lays out what takes a blink, and leaves the rest to growth with a word", async () => {
      const disc = "Rnd 1: 6 sc in magic ring.\nRnd 2: 2 sc in each st around."
      const small = await laidOutOf(disc)
      expect(small.laidOut?.by).toBe("net")
      const tube = `${disc}\nRnds 3-100: sc in each st around.`
      const large = await laidOutOf(tube)
      expect(large.laidOut?.by).toBe("ledger")
      expect(large.laidOut?.verdict).toBe("cups")
      expect(large.notes.join()).toContain("judged by its growth alone")
      const shapes = new Map([
        [disc, small],
        [tube, large],
      ])
      // What could not be laid out here may be where the saved page is opened.
      const carried = new Known({ shapes: [...shapes] }).carried()
      expect(carried.shapes?.map(([text]) => text)).toEqual([disc])
    })

    it("begins no search", async () => {
      const told = await heard({
        id: 2,
        own: "",
        gauge: [],
        request: { rounds: 2, corners: 4 } as never,
      })
      expect(told).toEqual([
        { part: "failed", id: 2, message: expect.stringContaining("gives the page no worker") },
      ])
    })
  })
})

describe("a plan", () => {
  const lines = "Corners: 6\nRounds: 3\nYarn: DK\nHook: 4 mm"
  const fence = "```"
  const text = `# A hexagon\n\n${fence}circle name=a\n${lines}\n${fence}\n`

  it("is made once for the same lines, and not at all where the page brings it along", async () => {
    const plans = new Map<string, CirclePlan>()
    const first = await computeNotebook(text, { plans })
    expect([...plans.keys()]).toEqual([lines])
    const again = await computeNotebook(text.replace("# A", "# The"), { plans })
    const planOf = ({ cells }: typeof first) =>
      cells[0]!.content?.kind === "circle" ? cells[0]!.content.plan : null
    expect(planOf(again)).toBe(planOf(first))
    expect(carriedAnswers(first).plans).toEqual([[lines, planOf(first)]])
    const broken = await computeNotebook(text.replace("Rounds: 3", "Rounds: 0"), { plans })
    expect(broken.problems).toHaveLength(1)
    expect(plans.size).toBe(1)
  })
})

describe("a live page as a file", () => {
  it.each(reports)(
    "of %s holds the static page's body, one script by hash, and stays below 2.6 MB",
    async (name) => {
      const result = await computeNotebook(report(name))
      const html = await renderLivePage(result, report(name))
      expect(Buffer.byteLength(html)).toBeLessThan(2_600_000)
      expect(html.match(/<script/g)).toHaveLength(2)
      expect(html.match(/<\/script/g)).toHaveLength(2)
      expect(html).toMatch(
        /script-src &#39;sha256-[^&]+&#39; &#39;wasm-unsafe-eval&#39;; worker-src blob:; base-uri/,
      )
      expect(html).not.toMatch(
        /(?<!wasm-)unsafe-|\bhttps?:\/\/(?!www\.w3\.org|vega\.github\.io)[^\s"']*"\s*>/,
      )
      const still = await renderPage(result)
      const sections = (page: string) => page.match(/<section[\s\S]*?<\/section>/g)
      expect(sections(html.slice(0, html.indexOf("<script")))).toEqual(sections(still))
    },
  )

  it("keeps text from ending the element it stands in", () => {
    const text = "</script><script>alert(1)</script><!--\u2028&"
    const json = jsonForPage({ text })
    expect(json).not.toMatch(/[<>&\u2028]/)
    expect(JSON.parse(json)).toEqual({ text })
  })
})
