// How much yarn a piece takes. This is the one place a reckoned length comes in: until there is one, the sheet shows
// what the designer states.

import { type Manuscript, sectionOf } from "../edit/manuscript.ts"

/** "95 m", as the designer states it; null where she does not. */
export function yarnLength(manuscript: Manuscript): string | null {
  const parts = [
    sectionOf(manuscript, "yarn"),
    sectionOf(manuscript, "materials"),
    sectionOf(manuscript, "notes"),
  ]
  for (const part of parts) {
    const found =
      /\b(?:about|approx(?:imately)?\.?)?\s?\d{1,4}(?:[.,]\d)?\s?(?:m|metres?|meters?|yds?|yards?)\b(?!\s?(?:per|\/|in a|=))/i.exec(
        part?.value ?? "",
      )
    if (found) return found[0].trim()
  }
  return null
}
