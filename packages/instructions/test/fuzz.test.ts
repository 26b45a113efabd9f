// 12,000 damaged patterns: nothing thrown, nothing slow, every place inside the text, every motif sound.

import { validateMotif } from "@roundwright/motif"
import { describe, expect, it } from "vitest"
import { readPattern } from "../src/index.ts"
import { damaged, faultOf, randomFrom } from "./mutate.ts"

/** Longest reading allowed, ms of processor time: far above the usual one, to catch what runs away. */
const longest = 1000

describe("damaged patterns", () => {
  it("12,000 of them, seed 1", () => {
    const random = randomFrom(1)
    const faults: string[] = []
    for (let i = 0; i < 12_000; i++) {
      const text = damaged(random)
      const start = process.cpuUsage()
      const fault = faultOf(text, readPattern)
      if (process.cpuUsage(start).user / 1000 > longest)
        faults.push(`slow: ${JSON.stringify(text)}`)
      if (fault) faults.push(`${fault}: ${JSON.stringify(text)}`)
      if (i % 5 === 0) validateMotif(readPattern(text).motif)
    }
    expect(faults.slice(0, 5)).toEqual([])
  }, 300_000)
})
