// From rows to runs: each row gets a count or none so that the clarity of the rows is large and the
// changes are few, by the best path through all rows at once (Viterbi).

import { leastRepeats } from "./comb.ts"

export interface Run {
  /** First and last row. */
  readonly from: number
  readonly to: number
  /** 0: nothing repeats here. */
  readonly count: number
}

/** What a change of count costs, in rows of full clarity. */
const changeCost = 0.9
/** What a row without a count is worth. */
const noneGain = 0.02
/** Larger counts are a little dearer: their teeth are fewer. */
const largerShare = 0.06

/** @param rows combs of each row, as `combs` gives them */
export function runsOf(rows: readonly Float64Array[]): Run[] {
  if (rows.length === 0) return []
  const states = rows[0]!.length
  const gain = (row: Float64Array, n: number) =>
    n === 0 ? noneGain : row[n]! * (1 + largerShare * Math.log2(n))
  let best = new Float64Array(states)
  const from: Int32Array[] = []
  for (let n = 0; n < states; n++)
    best[n] = n > 0 && n < leastRepeats ? Number.NEGATIVE_INFINITY : gain(rows[0]!, n)
  for (let r = 1; r < rows.length; r++) {
    let top = 0
    for (let n = 1; n < states; n++) if (best[n]! > best[top]!) top = n
    const next = new Float64Array(states)
    const back = new Int32Array(states)
    for (let n = 0; n < states; n++) {
      const stay = best[n]! >= best[top]! - changeCost
      back[n] = stay ? n : top
      next[n] =
        n > 0 && n < leastRepeats
          ? Number.NEGATIVE_INFINITY
          : (stay ? best[n]! : best[top]! - changeCost) + gain(rows[r]!, n)
    }
    best = next
    from.push(back)
  }
  let state = best.indexOf(Math.max(...best))
  const path = new Int32Array(rows.length)
  for (let r = rows.length - 1; r >= 0; r--) {
    path[r] = state
    if (r > 0) state = from[r - 1]![state]!
  }
  const runs: Run[] = []
  path.forEach((count, row) => {
    const last = runs.at(-1)
    if (last && last.count === count) runs[runs.length - 1] = { ...last, to: row }
    else runs.push({ from: row, to: row, count })
  })
  return runs
}
