// Stitches picked up along the ends of rows that must change by a fixed number at a time: what each count is to a row.

import { RoundwrightError } from "@roundwright/numerics"

export interface StepTold {
  readonly counts: readonly { readonly count: number; readonly perRow: number }[]
  readonly text: string
}

/** Usual shares of the ends of rows: three of four, four of five, and all of them. */
const usual = [
  [2 / 3, "two of three"],
  [3 / 4, "three of four"],
  [4 / 5, "four of five"],
] as const

/** @throws RoundwrightError `bad-count` */
export function stepDown(rows: number, stitches: number, step: number): StepTold {
  for (const value of [rows, stitches, step])
    if (!Number.isInteger(value) || value < 1)
      throw new RoundwrightError(
        "bad-count",
        "Whole numbers of rows, stitches and step are wanted.",
      )
  const counts = [1, 2, 3, 4, 5, 6]
    .map((k) => stitches - k * step)
    .filter((count) => count > 0)
    .map((count) => ({ count, perRow: count / rows }))
  const near = usual.map(([share, words]) => {
    const best = counts.reduce<(typeof counts)[number] | null>(
      (a, b) => (a === null || Math.abs(b.perRow - share) < Math.abs(a.perRow - share) ? b : a),
      null,
    )
    return { words, exact: Math.round(share * rows), best: best?.count ?? stitches }
  })
  return {
    counts,
    text: `${stitches} on ${rows} rows are ${(stitches / rows).toFixed(2)} to a row. By steps of ${step}: ${counts.map(({ count, perRow }) => `${count} (${perRow.toFixed(2)})`).join(", ")}. ${near.map(({ words, exact, best }) => `${words} are ${exact}, so ${best}`).join("; ")}. An edge that waves takes fewer: three of four, or four of five, is usual on rows that are lower than stitches are wide.`,
  }
}
