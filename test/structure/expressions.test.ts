// No expression of any package walks over the same run of a text again and again: those written out in the sources, and
// those put together while the packages are loaded and patterns are read, checked, edited and shown.

import { readdirSync, readFileSync } from "node:fs"
import { fileURLToPath } from "node:url"
import { afterAll, describe, expect, it } from "vitest"
import { patterns as ukPatterns } from "../../packages/instructions/test/varied-uk.ts"
import { patterns as usPatterns } from "../../packages/instructions/test/varied-us.ts"
import { expressionsIn, faultOf } from "../support/expressions.ts"

const root = fileURLToPath(new URL("../../packages/", import.meta.url))
const packages = readdirSync(root).sort()
const sourcesOf = (name: string) =>
  readdirSync(`${root}${name}/src`, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts"))
    .map((file) => `${name}/src/${file}`)

describe("expressions", () => {
  it.each([
    ["a run in a run", /^(?:a+)+$/],
    ["runs side by side", /^a*a*b/],
    ["runs with what both take between them", /^\s*\(?\s*x/],
    ["a run looked for anywhere", /\s+$/],
    ["a run behind what it takes too", /x[^.]*y/],
  ])("with %s are found out", (_, expression) => {
    expect(faultOf(expression)).not.toBeNull()
  })

  it.each([/^\s+x/, /\b\d+ sc/, /[,;]/, /^(?:\w+,)+$/, /\s+/g, /x[^.x]*y/, /a{1,30}b/])(
    "that go over a text once are let pass: %s",
    (expression) => {
      expect(faultOf(expression)).toBeNull()
    },
  )

  it("are met in the sources", () => {
    const all = packages
      .flatMap(sourcesOf)
      .flatMap((file) => expressionsIn(readFileSync(root + file, "utf8")))
    expect(all.length).toBeGreaterThan(900)
  })

  it.each(packages)("of %s go over a text once", (name) => {
    const faults = sourcesOf(name).flatMap((file) =>
      expressionsIn(readFileSync(root + file, "utf8")).flatMap(({ written, expression }) => {
        const fault = faultOf(expression)
        return fault ? [`${file}: ${written}: ${fault}`] : []
      }),
    )
    expect(faults).toEqual([])
  })
})

/** Patterns of many styles, in both terms, with what makes the packages put expressions together. */
const texts = [...usPatterns, ...ukPatterns].map(({ text }) => text).filter((_, i) => i % 10 === 0)

describe("expressions put together while the packages run", () => {
  const plain = globalThis.RegExp
  const built = new Map<string, RegExp>()
  afterAll(() => {
    globalThis.RegExp = plain
  })

  it("go over a text once", async () => {
    const recorded = (
      target: RegExpConstructor,
      parts: ConstructorParameters<RegExpConstructor>,
    ) => {
      const made = Reflect.construct(target, parts) as RegExp
      built.set(String(made), made)
      return made
    }
    globalThis.RegExp = new Proxy(plain, {
      construct: recorded,
      apply: (target, _, parts) => recorded(target, parts as [string, string?]),
    })
    const { unlessRefused } = await import("@roundwright/numerics")
    const { readPattern, writePattern } = await import("@roundwright/instructions")
    const { checkPattern } = await import("@roundwright/assessment")
    const { editPattern, makeSheet, sheetFormats } = await import("@roundwright/publishing")
    await import("@roundwright/notebook")
    await import("@roundwright/matching")
    await import("@roundwright/picture")
    // A round without plain wording, a pattern not read whole: what was put together until then counts.
    const refused = () => undefined
    for (const text of texts) {
      const { motif } = readPattern(text)
      for (const terms of ["US", "UK"] as const)
        unlessRefused(() => void writePattern(motif, terms), refused)
      checkPattern(text, { remedies: false })
      editPattern(text)
      unlessRefused(() => {
        const sheet = makeSheet(text, { shape: "ledger" })
        for (const format of Object.values(sheetFormats)) format(sheet)
      }, refused)
    }
    expect(built.size).toBeGreaterThan(20)
    const faults = [...built.values()].flatMap((expression) => {
      const fault = faultOf(expression)
      return fault ? [`${expression}: ${fault}`] : []
    })
    expect(faults).toEqual([])
  })
})
