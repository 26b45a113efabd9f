// Which loop of a stitch is worked in, where a word for it stands.

import type { Cursor } from "./cursor.ts"

/** The loop named here, the cursor left before it; null where none is. */
export function loopNamed(cursor: Cursor): "front" | "back" | "third" | null {
  if (cursor.is("back-loop")) return "back"
  if (cursor.is("front-loop")) return "front"
  return cursor.is("third-loop") ? "third" : null
}
