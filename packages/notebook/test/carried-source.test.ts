// What a page carries, read back from a file that anybody may have changed.

import { describe, expect, it } from "vitest"
import { carriedAnswers } from "../src/carried.ts"
import { computeNotebook } from "../src/index.ts"
import { readSource } from "../src/live/carried-source.ts"
import { Drafts } from "../src/live/drafts.ts"
import { pageWords } from "../src/live/page-words.ts"
import { textDigest } from "../src/page/text-digest.ts"
import { cell } from "./made.ts"

const pattern = "Terms: US\nHook: 4 mm\n\nRnd 1: 12 dc in magic ring; join. (12 dc)\n"
const notebook = `# All of it\n${cell("pattern name=a", pattern)}${cell("circle name=b", "Rounds: 3")}${cell("circle name=c", "Oval: 9\nRounds: 3")}${cell("squaring of=a", "Rounds: 1")}${cell("squaring of=b", "From round: 99")}${cell("transitions name=t", "From: 12\nTo: 12\nRounds: 1")}`

describe("what a page carries", () => {
  it("is read back to the letter, every kind of it", async () => {
    const carried = JSON.parse(
      JSON.stringify({ notebook, ...carriedAnswers(await computeNotebook(notebook)) }),
    )
    const kinds = ["notebook", "plans", "searches", "shapes", "transitions"]
    expect(Object.keys(carried).sort()).toEqual(kinds)
    expect(readSource(JSON.stringify(carried))).toEqual({ source: carried, told: [] })
    for (const kind of kinds.slice(1)) {
      const spoilt = structuredClone(carried)
      spoilt[kind][0][1] = spoil(spoilt[kind][0][1])
      const { source, told } = readSource(JSON.stringify(spoilt))
      expect(told).toEqual([pageWords.misfits(1)])
      expect(source?.notebook).toBe(notebook)
      expect(Reflect.get(source!, kind) ?? []).toHaveLength(carried[kind].length - 1)
    }
  })

  it.each([
    ["", null],
    ["null", null],
    ["[]", null],
    ['{"notebook": 5}', null],
    ['{"notebook": "# A \\"page\\"", "shapes": [[', '# A "page"'],
    ['{"notebook": "# A', null],
    ['{"notebook": "# A", "original": 7}', "# A"],
    ['{"notebook": "# A", "shapes": 3, "plans": {"length": 1}}', "# A"],
  ])("as %j gives what text there is, and says so", (json, text) => {
    const { source, told } = readSource(json)
    expect(source?.notebook ?? null).toBe(text)
    expect(told).toHaveLength(1)
  })
})

/** The same with its first number, wherever it stands, a word. */
function spoil(value: unknown): unknown {
  let done = false
  const walk = (part: unknown): unknown => {
    if (done) return part
    if (typeof part === "number") {
      done = true
      return "a word"
    }
    if (Array.isArray(part)) return part.map(walk)
    if (typeof part !== "object" || part === null) return part
    return Object.fromEntries(Object.entries(part).map(([key, inner]) => [key, walk(inner)]))
  }
  return walk(value)
}

describe("the digest of words", () => {
  it("is of the words alone, and changes with any of them", () => {
    expect(textDigest(" a\n b ")).toBe(textDigest("a b"))
    expect(textDigest("a b")).not.toBe(textDigest("b a"))
    expect(textDigest("")).toMatch(/^[0-9a-f]{16}$/)
  })
})

describe("drafts", () => {
  const store = (): Storage => {
    const kept = new Map<string, string>()
    return {
      getItem: (key) => kept.get(key) ?? null,
      setItem: (key, value) => void kept.set(key, value),
      removeItem: (key) => void kept.delete(key),
      key: (index) => [...kept.keys()][index] ?? null,
      clear: () => kept.clear(),
      get length() {
        return kept.size
      },
    }
  }

  it("are of one page and one opening, and are taken back by the tab that left them", () => {
    const [shared, tab] = [store(), store()]
    const first = new Drafts({ shared, tab }, "page", "1")
    expect(first.keep("mine")).toBe(true)
    expect(new Drafts({ shared, tab: store() }, "another", "2").others).toEqual([])
    const elsewhere = new Drafts({ shared, tab: store() }, "page", "3")
    expect(elsewhere.takeBack()).toBe(null)
    expect(elsewhere.others.map(({ markdown }) => markdown)).toEqual(["mine"])
    const back = new Drafts({ shared, tab }, "page", "4")
    expect(back.takeBack()).toBe("mine")
    expect(back.others).toEqual([])
    expect(elsewhere.others.map(({ markdown }) => markdown)).toEqual(["mine"])
    back.drop()
    expect(elsewhere.others).toEqual([])
  })

  it("are done without where the browser keeps nothing", () => {
    const stores = {
      get shared(): Storage {
        throw new Error("not here")
      },
      tab: store(),
    }
    const drafts = new Drafts(stores, "page", "1")
    expect([drafts.keep("mine"), drafts.takeBack(), drafts.others]).toEqual([false, null, []])
    drafts.drop()
  })
})
