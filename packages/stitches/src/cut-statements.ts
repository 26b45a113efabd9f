// Groups the pieces of a gauge line into statements: "5 dc = 2.5 cm; 3 rows = 1 in" is two, "14 sc x
// 16 rows = 4 in x 4 in" and "10 cm x 10 cm = 14 sc x 16 rows" are one each.

import type { GaugeToken } from "./gauge-tokens.ts"

export type Counted = Extract<GaugeToken, { type: "stitches" | "rows" }>
export type Length = Extract<GaugeToken, { type: "length" }>
export interface Measure {
  readonly token: Length
  across: boolean | undefined
}
export interface Statement {
  readonly counts: Counted[]
  readonly lengths: Measure[]
  /** A count of something unknown in it ("3 shells", "1 ch"): its lengths cannot be shared out. */
  readonly foreign: boolean
}

/** Parts of the line that each pair some counts with some lengths. */
export function cutStatements(tokens: readonly GaugeToken[]): Statement[] {
  const parts: Statement[] = []
  let part: Statement = { counts: [], lengths: [], foreign: false }
  let countsFirst = true
  const isFull = () => part.counts.length > 0 && part.lengths.length > 0
  const close = () => {
    if (part.counts.length + part.lengths.length > 0) parts.push(part)
    part = { counts: [], lengths: [], foreign: false }
  }
  for (const [index, token] of tokens.entries()) {
    if (token.type === "number" && !isFull()) {
      // A bare number inside a statement, or one that counts a word not understood.
      const inside = part.counts.length + part.lengths.length > 0
      const counting = tokens[index + 1]?.type === "unknown"
      if (inside || counting) part = { ...part, foreign: true }
    }
    if (token.type === "break" && isFull()) close()
    if (token.type === "direction" && part.lengths.length > 0) {
      part.lengths.at(-1)!.across = token.across
    }
    if (token.type !== "stitches" && token.type !== "rows" && token.type !== "length") continue
    const isCount = token.type !== "length"
    if (isFull() && isCount === countsFirst) close()
    if (part.counts.length + part.lengths.length === 0) countsFirst = isCount
    if (token.type === "length") part.lengths.push({ token, across: undefined })
    else part.counts.push(token)
  }
  close()
  return parts
}

/** In "4 x 4 in" the first number has the unit of the second. */
export function shareUnits(tokens: readonly GaugeToken[]): GaugeToken[] {
  return tokens.map((token, index) => {
    const by = tokens[index + 1]
    const length = tokens[index + 2]
    if (token.type !== "number" || by?.type !== "by" || length?.type !== "length") return token
    const { mmEach, unit } = length
    return { type: "length", value: token.value, mmEach, unit, start: token.start, end: token.end }
  })
}
