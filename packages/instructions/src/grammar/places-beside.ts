// A place named by what it stands beside.

import type { Noun } from "../base/tree.ts"
import type { Cursor } from "./cursor.ts"
import { readNoun } from "./nouns.ts"

/** "left of any corner", "before any corner st". */
export function readBeside(
  cursor: Cursor,
  nth: number,
): { noun: Noun; side: "after" | "before"; nth: number } | null {
  return cursor.attempt(() => {
    const word = cursor.text()
    if (!cursor.accept("left", "right", "after", "before")) return null
    cursor.take("of", "to")
    if (!cursor.take("any", "each")) return null
    const noun = readNoun(cursor)
    if (!noun?.corner) return null
    return {
      noun,
      side: /^(?:before|right)$/.test(word) ? ("before" as const) : ("after" as const),
      nth,
    }
  })
}
