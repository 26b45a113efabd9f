// The record of first looks holds together: every figure follows from the keys, no round is keyed twice, no text is kept.

import { describe, expect, it } from "vitest"
import { readingBatches } from "./reading-looks.ts"

describe("first looks at patterns as makers published them", () => {
  const batches = readingBatches()

  it("hold at least 40 texts a batch, in order, but for the last, which may be begun", () => {
    expect(batches.map(({ batch }) => batch)).toEqual(batches.map((_, i) => i + 1))
    expect(batches.length).toBeGreaterThanOrEqual(6)
    for (const { texts } of batches.slice(0, -1)) expect(texts.length).toBeGreaterThanOrEqual(40)
  })

  it("count the rounds and texts that are keyed, and no more right than there are", () => {
    for (const { firstLook, texts } of batches) {
      const keyed = texts.flatMap(({ rounds }) =>
        rounds.filter(({ stitches }) => stitches !== null),
      )
      expect(firstLook.rounds).toBe(keyed.length)
      expect(firstLook.texts).toBe(texts.length)
      expect(firstLook.right + firstLook.silent).toBeLessThanOrEqual(firstLook.rounds)
      expect(firstLook.falselyWarned).toBeLessThanOrEqual(firstLook.right)
    }
  })

  it("key every round of a text once, by figures alone", () => {
    const ids = batches.flatMap(({ texts }) => texts.map(({ id }) => id))
    expect(new Set(ids).size).toBe(ids.length)
    for (const { texts } of batches)
      for (const { id, url, rounds } of texts) {
        // A leaflet is named by its publisher and number where no page of its own holds it.
        expect(url, id).toMatch(/^(?:https?:\/\/|leaflet: )/)
        for (const round of rounds)
          for (const value of Object.values(round).flat())
            expect(typeof value === "string", id).toBe(false)
      }
  })
})
