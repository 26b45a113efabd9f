// The floor under what matching and finishing have reached against the outside world.

import { describe, expect, it } from "vitest"
import { borderCases } from "./borders.ts"
import { readLooks } from "./question-looks.ts"
import { remadeSizes } from "./remade.ts"
import { compareStandards } from "./standards.ts"
import { medianError, unfittedYarn, weighedYarn, yarnRatios } from "./yarn.ts"

const median = (values: readonly number[]) =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]!

describe("sizes after a round added, left out or worked otherwise", () => {
  it("come within 4 %, as the middle of all remade pieces", () => {
    const off = remadeSizes().map(({ error }) => Math.abs(error))
    expect(off.length).toBeGreaterThanOrEqual(17)
    expect(median(off)).toBeLessThanOrEqual(0.04)
  })
})

describe("yarn", () => {
  it("of one kind against another comes within 7 %", () => {
    expect(medianError(yarnRatios())).toBeLessThanOrEqual(0.07)
    expect(medianError(yarnRatios().filter(({ fitted }) => !fitted))).toBeLessThanOrEqual(0.07)
  })

  it("with nothing weighed comes within 20 %, and bands of 80 % hold four of five", () => {
    const cases = unfittedYarn()
    expect(medianError(cases)).toBeLessThanOrEqual(0.2)
    expect(cases.filter(({ inBand }) => inBand).length / cases.length).toBeGreaterThanOrEqual(0.8)
  })

  it("of one kind told from another that was weighed comes within 8 %", () => {
    expect(medianError(weighedYarn())).toBeLessThanOrEqual(0.08)
  })
})

describe("borders", () => {
  it("have the stitches a side that are printed", () => {
    for (const { found, least, most } of borderCases()) {
      expect(found).toBeGreaterThanOrEqual(least)
      expect(found).toBeLessThanOrEqual(most)
    }
  })
})

describe("named values", () => {
  it("agree with the published tables, value by value", () => {
    for (const { table, values, agree } of compareStandards())
      if (!/other tables/.test(table)) expect([table, agree]).toEqual([table, values])
  })
})

describe("makers' own questions", () => {
  it("keep what was scored at first look", () => {
    expect(readLooks().map(({ n, right }) => [n, right])).toEqual([
      [20, 6],
      [20, 8],
      [12, 12],
      [40, 23],
      [20, 10],
      [10, 9],
      [24, 5],
      [23, 9],
    ])
  })
})
