import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"
import { normalBelow } from "../src/index.ts"

describe("the standard normal distribution", () => {
  // Abramowitz and Stegun, table 26.1.
  it.each([
    [0, 0.5],
    [0.5, 0.6914624613],
    [1, 0.8413447461],
    [1.96, 0.9750021049],
    [3, 0.998650102],
  ])("has below %f the share of the printed table", (z, share) => {
    expectClose(normalBelow(z), share, 7.5e-8, "the error bound of the formula")
    expectClose(normalBelow(-z), 1 - share, 7.5e-8, "mirrored")
  })

  it("ends at 0 and 1", () => {
    expect(normalBelow(Number.POSITIVE_INFINITY)).toBe(1)
    expect(normalBelow(Number.NEGATIVE_INFINITY)).toBe(0)
  })
})
