// The one way to compare numbers in tests: a tolerance and the reason for it are both demanded.

import { expect } from "vitest"

/**
 * Fails unless |actual - expected| <= tolerance.
 * @param reason why this tolerance is right, in a few words; shown when the check fails
 */
export function expectClose(
  actual: number,
  expected: number,
  tolerance: number,
  reason: string,
): void {
  const off = Math.abs(actual - expected)
  expect(
    Number.isFinite(actual) && off <= tolerance,
    `${actual} should be ${expected} within ${tolerance} (${reason}); it is off by ${off}`,
  ).toBe(true)
}

/** The same with the tolerance as a share of the expected value's size. */
export function expectRelative(
  actual: number,
  expected: number,
  share: number,
  reason: string,
): void {
  expectClose(actual, expected, share * Math.abs(expected), reason)
}
