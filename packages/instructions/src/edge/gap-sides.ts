// Gaps between stitches, by what stands on either side of them.

import type { Noun } from "../base/tree.ts"

/** "between the two sc" names the gap, not the stitches. */
export function gapIf(noun: Noun, between: boolean, other: Noun | null = null): Noun {
  if (!between) return noun
  if (noun.what === "group" || noun.kind?.gathered) return { what: "gap", betweenGroups: true }
  return { what: "gap", ...sidesOf(noun, other) }
}

/** The stitches on either side of a gap, where both are named by their kind. */
export function sidesOf(noun: Noun, other: Noun | null): { sides?: Noun["sides"] } {
  const after = other ?? noun
  if (!noun.kind || !after.kind || noun.kind.gathered || after.kind.gathered) return {}
  return { sides: [noun.kind, after.kind] }
}
