// Figures reckoned through one another: by hand, there and back again, and refused where they say nothing.

import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"
import { reckon } from "../src/index.ts"

function valueIn(found: ReturnType<typeof reckon>, index: number, unit: string): number {
  const told = found.asked[index]!.is.find((one) => one.unit === unit)
  expect(told, unit).toBeDefined()
  expectClose(told!.low, told!.high, 1e-12, "no range was told")
  return told!.low
}

describe("facts", () => {
  it("lead from one unit to any other, by hand", () => {
    const found = reckon(["2 repeats = 28 stitches = 8 in", "50 in"])
    expectClose(valueIn(found, 0, "stitches"), 175, 1e-9, "50 / 8 x 28")
    expectClose(valueIn(found, 0, "repeats"), 12.5, 1e-9, "50 / 8 x 2")
  })

  it("lead back to the same amount", () => {
    for (let k = 1; k <= 200; k += 1) {
      const [a, b, c, asked] = [1 + (k % 7), 3 + ((k * 5) % 11), 2 + ((k * 13) % 17), 1 + k / 8]
      const facts = [`${a} balls = ${b * 10} g`, `${b} squares = ${c} g`]
      const there = valueIn(reckon([...facts, `${asked} squares`]), 0, "balls")
      const back = valueIn(reckon([...facts, `${there.toFixed(9)} balls`]), 0, "squares")
      expectClose(back, asked, 1e-6 * asked, "nine digits are told")
    }
  })

  it("keep yarn and fabric apart, and rows from stitches", () => {
    const found = reckon(["1 point = 1.5 yd = 4 in", "10 points"])
    expectClose(valueIn(found, 0, "yd"), 15, 1e-9, "10 x 1.5")
    expectClose(valueIn(found, 0, "in"), 40, 1e-9, "10 x 4")
    const rows = reckon(["14 stitches = 4 in", "8 rows = 4 in", "28 stitches"])
    expect(rows.asked[0]!.is.map((one) => one.unit)).toEqual(["in"])
  })

  it("turn units of one kind into one another", () => {
    const found = reckon(["100 squares = 80 oz", "1 ball = 50 g", "50 squares"])
    expectClose(valueIn(found, 0, "oz"), 40, 1e-9, "half of 80")
    expectClose(valueIn(found, 0, "g"), 40 * 28.3495, 1e-6, "28.3495 g to the ounce")
  })

  it("carry ranges on", () => {
    const [least, most] = reckon(["12 to 15 squares a ball", "60 squares"])
      .asked[0]!.is.filter((one) => one.unit === "balls")
      .flatMap(({ low, high }) => [low, high])
    expectClose(least!, 4, 1e-9, "60 / 15")
    expectClose(most!, 5, 1e-9, "60 / 12")
  })

  it("that contradict one another are told", () => {
    const { text, lines } = reckon(["16 stitches = 4 in", "18 stitches = 4 in", "48 in"])
    expect([text, ...(lines ?? [])].join(" ")).toMatch(/differ/)
  })
})

describe("what is there and what is wanted", () => {
  it("is told as short or over, in either unit", () => {
    const said = (statements: string[]) => {
      const { text, lines } = reckon(statements)
      return [text, ...(lines ?? [])].join(" ")
    }
    expect(said(["have 40 squares", "want 54 squares"])).toMatch(/14 squares to go/)
    expect(said(["8 g a square", "have 500 g", "want 60 squares"])).toMatch(/20 g over/)
  })
})

describe("statements", () => {
  it("that say nothing are refused with a hint", () => {
    for (const wrong of [
      [],
      [""],
      ["62"],
      ["foo"],
      ["= 3 g"],
      ["3 g ="],
      ["0 squares = 3 g"],
      ["-3 squares = 3 g"],
      ["3 squares"],
      ["1/0 squares = 2 g"],
      ["x".repeat(5000)],
    ])
      expect(() => reckon(wrong), JSON.stringify(wrong)).toThrow()
  })

  it("never give what is no number", () => {
    const numbers = ["8", "1/2", "3 to 4", "0", "1e9", "999999999", "5 x 7", "0.0001", ""]
    const units = ["squares", "g", "in", "rows", "yd", "hours", "stitches", ""]
    const links = ["=", "a", "of", "per", "have", "want", "x", ""]
    let seed = 7
    const next = (below: number) => {
      seed = (seed * 48271) % 2147483647
      return seed % below
    }
    let told = 0
    for (let k = 0; k < 3000; k += 1) {
      const statements = Array.from({ length: 1 + next(3) }, () =>
        Array.from({ length: 1 + next(2) }, () =>
          [numbers, units, links].map((parts) => parts[next(parts.length)]!).join(" "),
        ).join(" "),
      )
      try {
        const found = reckon(statements)
        told += 1
        const said = [found.text, ...(found.lines ?? [])].join(" ")
        expect(said, statements.join(" | ")).not.toMatch(/NaN|Infinity|undefined/)
      } catch (error) {
        expect((error as Error).name, statements.join(" | ")).toBe("RoundwrightError")
      }
    }
    expect(told).toBeGreaterThan(100)
  })
})
