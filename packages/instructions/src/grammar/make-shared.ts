// Stitches of several kinds in one place, told with "and": "1 dark sc and 1 light sc in next sc".

import type { Step } from "../base/tree.ts"
import type { Cursor } from "./cursor.ts"
import { readChainCount } from "./make-extras.ts"
import { atPlace, readPlace } from "./places.ts"
import { readCounted } from "./stitch-names.ts"

/** "dc and tr in next": no figures, and both go there if the counts say so. */
export function readPair(cursor: Cursor, start: number): Step[] | null {
  return cursor.attempt((): Step[] | null => {
    const parts: Step[] = []
    for (let k = 0; k < 2; k++) {
      const from = cursor.start()
      const part = readCounted(cursor)
      if (!part || part.stitch.tog || part.stitch.shape) return null
      const { stitch, count } = part
      parts.push({ ...cursor.since(from), do: "work", stitch, count, place: null })
      if (k === 0 && !cursor.take("and")) return null
    }
    const place = atPlace(cursor) ? readPlace(cursor) : null
    if (place?.at !== "next" || place.count !== 1 || place.noun.what !== "stitch") return null
    return [{ ...cursor.since(start), do: "group", steps: parts, place }]
  })
}

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
