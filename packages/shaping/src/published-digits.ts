// How finely published numbers are told.

/** Decimals given: finer than any hand, coarser than the solver's last bits, so that the same input prints the same bytes. */
export const publishedDigits = { mm: 3, degrees: 2, share: 4, score: 2, count: 3 } as const

export function rounded(value: number, digits: number): number {
  return Number(value.toFixed(digits)) + 0
}
