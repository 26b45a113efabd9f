// Every production reads its examples: whole, cheaply, and by itself, so that one that is taken out is missed.

import { describe, expect, it } from "vitest"
import type { StatedTotal, Step } from "../src/base/tree.ts"
import { Chart, type Production, type Reading } from "../src/grammar/chart.ts"
import { isStitchWord, type Locals } from "../src/grammar/cursor.ts"
import { productions } from "../src/grammar/productions.ts"
import { readWords } from "../src/grammar/read-words.ts"
import { lexemesOf } from "../src/words/lexemes.ts"
import { tokenise } from "../src/words/tokens.ts"

/** An example is taken at less than this: no word passed over, nothing guessed. */
const mostCost = 0.5

const none: Locals = new Map()

function cheapest(text: string, list: readonly Production[]): Reading | undefined {
  const words = lexemesOf(tokenise(text, 0, text.length), (word) => isStitchWord(word, "US"))
  const chart = new Chart(words, "US", none, text.length, list)
  return chart.readings(0, words.length).next().value as Reading | undefined
}

/** What a reading makes, places in the text left out. */
function made(reading: Reading | undefined): string {
  const kept: [readonly Step[], readonly StatedTotal[], readonly string[]] = [
    reading?.steps ?? [],
    reading?.totals ?? [],
    (reading?.remarks ?? []).map(({ code }) => code),
  ]
  return JSON.stringify(kept, (key, value) =>
    key === "start" || key === "end" ? undefined : value,
  )
}

describe.each(productions.map((production) => [production.name, production] as const))(
  "the production %s",
  (_, production) => {
    it("has examples", () => {
      expect(production.examples.length).toBeGreaterThan(0)
    })

    it.each(production.examples.map((example) => [example]))("reads %s", (example) => {
      const tree = readWords(example, 0, example.length, "US", none).trees().next().value
      expect(tree?.cost).toBeLessThan(mostCost)
      expect(tree?.gaps).toEqual([])
    })

    it("is missed by one of its examples at least", () => {
      const others = productions.filter((other) => other !== production)
      const missed = production.examples.filter((example) => {
        const [whole, without] = [cheapest(example, productions), cheapest(example, others)]
        return made(whole) !== made(without) || (without?.cost ?? 0) > (whole?.cost ?? 0)
      })
      expect(missed).not.toEqual([])
    })
  },
)
