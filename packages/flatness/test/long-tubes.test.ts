// The ledger of a long tube goes over its rounds so many times, however many there are: counted, not timed.

import { buildDisc, type Motif } from "@roundwright/motif"
import { gaugeFrom, kind } from "@roundwright/stitches"
import { describe, expect, it } from "vitest"
import { keepLedger } from "../src/index.ts"

const gauge = gaugeFrom({ swatches: [] })

/** How often the elements of a round are asked for while the ledger of a tube is kept. */
function readsOf(rounds: number, around: number): number {
  let reads = 0
  const disc = buildDisc(kind("sc"), [6, ...Array.from({ length: rounds - 1 }, () => around)])
  const counted: Motif = {
    ...disc,
    rounds: disc.rounds.map(({ elements, ...round }) => ({
      ...round,
      get elements() {
        reads += 1
        return elements
      },
    })),
  }
  expect(keepLedger(counted, gauge).verdict).toBe("cups")
  return reads
}

describe("the ledger of a tube", () => {
  it.each([6, 18])("of %i stitches costs as many looks a round at any length", (around) => {
    const [short, long] = [100, 800].map((rounds) => readsOf(rounds, around) / rounds)
    expect(long).toBeLessThan(1.02 * short!)
  })
})
