// Every word of a round is used, passed over knowingly, or reported: a word that means nothing, put
// anywhere into a round, is pointed at.

import { describe, expect, it } from "vitest"
import { readPattern } from "../src/index.ts"
import { pointedAt } from "./help.ts"
import { soundPatterns } from "./mutate.ts"

describe("a word that means nothing", () => {
  it("is reported wherever it stands in a round", () => {
    const silent: string[] = []
    for (const pattern of soundPatterns) {
      const lines = pattern.split("\n")
      lines.forEach((line, at) => {
        if (!/^(?:Rnd|\d+(?:st|nd|rd))/.test(line)) return
        const parts = line.split(" ")
        for (let k = 2; k <= parts.length; k++) {
          const changed = [...parts.slice(0, k), "wibble", ...parts.slice(k)].join(" ")
          const text = lines.map((other, i) => (i === at ? changed : other)).join("\n")
          const told = readPattern(text).problems.some(
            (problem) => problem.line === at + 1 && pointedAt(text, problem).includes("wibble"),
          )
          if (!told) silent.push(changed)
        }
      })
    }
    expect(silent).toEqual([])
  })
})
