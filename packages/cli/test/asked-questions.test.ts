// What makers ask, answered by the commands: each answer holds what was worked out by hand.

import { tmpdir } from "node:os"
import { describe, expect, it } from "vitest"
import { askedOfSizes } from "./asked-questions.ts"
import { askedOfEdges } from "./asked-questions-of-edges.ts"
import { askedOfFigures } from "./asked-questions-of-figures.ts"
import { callIn } from "./calling.ts"

const askedQuestions = [...askedOfSizes, ...askedOfEdges, ...askedOfFigures]

/** Words of a command line, with single quotes. */
function wordsOf(command: string): string[] {
  return [...command.matchAll(/'([^']*)'|(\S+)/g)].map((match) => match[1] ?? match[2]!)
}

describe("questions of makers", () => {
  it("are answered by what was worked out by hand", async () => {
    const missing: string[] = []
    for (const { asks, command, holds } of askedQuestions) {
      const { out, err, status } = await callIn(tmpdir(), wordsOf(command))
      const said = `${out} ${err}`.replace(/\s+/g, " ")
      for (const held of holds)
        if (!said.includes(held) || status === 2)
          missing.push(`${asks} wants "${held}": ${said.slice(0, 400)}`)
    }
    expect(missing).toEqual([])
    expect(askedQuestions.length).toBeGreaterThanOrEqual(90)
  })
})
