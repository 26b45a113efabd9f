// Figures for other sizes, "6 (8, 10) sc": the first size is read, and told.

import type { Token } from "../words/tokens.ts"
import type { Remark } from "./chart.ts"

export function withoutOtherSizes(tokens: readonly Token[]): {
  readonly tokens: readonly Token[]
  readonly remarks: readonly Remark[]
} {
  const kept: Token[] = []
  const remarks: Remark[] = []
  for (let i = 0; i < tokens.length; i++) {
    kept.push(tokens[i]!)
    if (
      tokens[i]?.type !== "number" ||
      tokens[i + 1]?.text !== "(" ||
      tokens[i + 2]?.type !== "number"
    )
      continue
    let end = i + 2
    while (tokens[end]?.type === "number" || /^[,:-]$/.test(tokens[end]?.text ?? "")) end += 1
    const after = tokens[end + 1]
    if (
      tokens[end]?.text !== ")" ||
      after?.type !== "word" ||
      /^(?:times|x|more|in)$/.test(after.text)
    )
      continue
    remarks.push({ code: "first-size-read", start: tokens[i + 1]!.start, end: tokens[end]!.end })
    i = end
  }
  return remarks.length === 0 ? { tokens, remarks } : { tokens: kept, remarks }
}
