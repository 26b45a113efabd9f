// Stitches of several kinds in one place, told with "and": "1 dark sc and 1 light sc in next sc".

import type { Step } from "../base/tree.ts"
import type { Cursor } from "./cursor.ts"
import { readChainCount } from "./make-extras.ts"
import { atPlace, readPlace } from "./places.ts"
import { readCounted } from "./stitch-names.ts"

/** "1 dark sc and 1 light sc in next sc", "3 dc and 1 ch in next sp": stitches of one place. */
export function readShared(cursor: Cursor, start: number): Step[] | null {
  return cursor.attempt((): Step[] | null => {
    const parts: Step[] = []
    for (;;) {
      const from = cursor.start()
      const chains = parts.length > 0 ? readChainCount(cursor) : null
      const part = chains === null ? readCounted(cursor) : null
      if (chains !== null) parts.push({ ...cursor.since(from), do: "chain", chains, place: null })
      else if (part)
        parts.push({
          ...cursor.since(from),
          do: "work",
          stitch: part.stitch,
          count: part.count,
          place: null,
        })
      else return null
      if (!cursor.is("and")) break
      cursor.at += 1
      if (!cursor.isNumber()) return null
    }
    if (parts.length < 2 || !atPlace(cursor)) return null
    const place = readPlace(cursor)
    if (!place || place.at === "list") return null
    return [{ ...cursor.since(start), do: "group", steps: parts, place }]
  })
}
