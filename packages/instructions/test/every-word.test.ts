// Every word of a round is used, passed over knowingly, or reported: a word that means nothing, put
// anywhere into a round, is pointed at; and a figure put anywhere changes what comes out, or is told.

import { describe, expect, it } from "vitest"
import { type PatternReading, readPattern } from "../src/index.ts"
import { pointedAt } from "./help.ts"
import { soundPatterns } from "./mutate.ts"
import { patterns as ukPatterns } from "./varied-uk.ts"
import { patterns as usPatterns } from "./varied-us.ts"
import { patterns as morePatterns } from "./varied-us-more.ts"

const varied = [...usPatterns, ...morePatterns, ...ukPatterns]
  .map(({ text }) => text)
  .filter((text) => !text.includes("\r"))

/** Plain words in brackets and clauses on yarn, markers and sizes are read over whole: words in them too. */
const readOverWhole =
  /\([a-z ]*wibble[a-z -]*\)|\b(?:marker?|tail|measure|fold|drop|insert|yo|remove)\b[^.;]*wibble|wibble[^.;(]*\b(?:marker|tail)\b/i

describe("a word that means nothing", () => {
  it.each([
    ["the sound patterns", soundPatterns],
    ["patterns of many styles", varied],
  ] as const)(
    "is reported wherever it stands in a round of %s",
    (_, patterns) => {
      const silent: string[] = []
      for (const { text, line, changed } of withWord(patterns, "wibble")) {
        if (readOverWhole.test(changed)) continue
        const told = readPattern(text).problems.some(
          (problem) => problem.line === line && pointedAt(text, problem).includes("wibble"),
        )
        if (!told) silent.push(changed)
      }
      expect(silent).toEqual([])
    },
    300_000,
  )
})

/** Figures that say nothing new where they stand: "join with 1 sl st", "3rd ch of 7 ch". */
const mostSilentFigures = 0.05

describe("a figure put anywhere", () => {
  it("changes the reading or is told, but for the few places where one may stand", () => {
    let all = 0
    const silent: string[] = []
    let unchanged = ""
    let usual = readPattern("")
    for (const { before, text, changed } of withWord(varied.slice(0, 30), "7")) {
      all += 1
      if (before !== unchanged) usual = readPattern(before)
      unchanged = before
      const reading = readPattern(text)
      const same = outcome(usual) === outcome(reading)
      if (same && reading.problems.length <= usual.problems.length) silent.push(changed)
    }
    expect(all).toBeGreaterThan(1000)
    expect(silent.length / all, silent.join("\n")).toBeLessThan(mostSilentFigures)
  }, 300_000)
})

function outcome(reading: PatternReading): string {
  return JSON.stringify([reading.motif, reading.rounds.map(({ counted }) => counted)])
}

/** Every pattern with the word put after each word of its rounds but the label, one at a time. */
function* withWord(patterns: readonly string[], word: string) {
  for (const before of patterns) {
    const lines = before.split("\n")
    for (const [at, line] of lines.entries()) {
      if (!/^(?:Rnd|Round|R\d|\d+(?:st|nd|rd|th))/.test(line)) continue
      const parts = line.split(" ")
      for (let k = 2; k <= parts.length; k++) {
        const changed = [...parts.slice(0, k), word, ...parts.slice(k)].join(" ")
        const text = lines.map((other, i) => (i === at ? changed : other)).join("\n")
        yield { before, text, line: at + 1, changed }
      }
    }
  }
}
