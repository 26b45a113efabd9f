// Figures for other sizes, "6 (8, 10) sc": the first size is read.

import type { Words } from "./words.ts"

/** "6 (8, 10) sc": the first size is read, and told. */
export function withoutOtherSizes(words: Words): Words {
  const { tokens } = words
  const kept = []
  for (let i = 0; i < tokens.length; i++) {
    kept.push(tokens[i]!)
    if (
      tokens[i]?.type !== "number" ||
      tokens[i + 1]?.text !== "(" ||
      tokens[i + 2]?.type !== "number"
    )
      continue
    let end = i + 2
    while (
      tokens[end]?.type === "number" ||
      tokens[end]?.text === "," ||
      tokens[end]?.text === ":" ||
      tokens[end]?.text === "-"
    )
      end += 1
    const after = tokens[end + 1]
    if (
      tokens[end]?.text !== ")" ||
      after?.type !== "word" ||
      /^(times|x|more|in)$/.test(after.text)
    )
      continue
    words.report({
      severity: "note",
      code: "first-size-read",
      start: tokens[i + 1]!.start,
      end: tokens[end]!.end,
      message: "Figures for other sizes stand here; the first size is read.",
      hint: "",
    })
    i = end
  }
  if (kept.length === tokens.length) return words
  return words.withTokens(kept)
}
