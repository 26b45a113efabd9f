// A seeded draw of what `pnpm evidence --full` does at full size: clean patterns changed in one place, and what comes of it.

import { expect, it } from "vitest"
import { cleanPatterns, countMutations, mutationWords } from "./mutations.ts"

/** Each so-many-th of the patterns, so that the draw is quick. */
const everyPattern = 4

it.each([
  ["total", 160],
  ["count", 160],
  ["place", 60],
  ["clause", 200],
] as const)(
  "a changed %s is told, reaches the motif, or is known to change nothing",
  (kind, changes) => {
    const patterns = cleanPatterns(everyPattern)
    const count = countMutations(patterns, kind, changes, 20)
    process.stdout.write(`${mutationWords(count)}\n`)
    expect(patterns.length).toBeGreaterThan(80)
    expect(count.faults).toEqual([])
  },
)
