// The one pattern that a file is about.

import { holdsPatterns, patternsOf } from "./notebook-patterns.ts"

/** The text itself, or the first pattern of a notebook. */
export async function patternIn(text: string): Promise<string | null> {
  if (!holdsPatterns(text)) return text
  return (await patternsOf(text)).find((one) => one.text !== null)?.text ?? null
}
