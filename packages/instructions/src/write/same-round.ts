// Whether two rounds are the same in all that they say.

import type { Round } from "@roundwright/motif"

/** Equal in all that a round says, whatever the order of fields. */
export function sameRound(a: Round, b: Round): boolean {
  return canonical(a) === canonical(b)
}

function canonical(value: unknown): string {
  return JSON.stringify(value, (_, inner: unknown) =>
    inner && typeof inner === "object" && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).sort(([x], [y]) => (x < y ? -1 : 1)))
      : inner,
  )
}
