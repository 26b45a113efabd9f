// The names that an expression can use, where it stands.

import type { Value } from "./math.ts"
import type { Figure } from "./names.ts"

/** Where a name is looked up: first what the notebook calculated, then the patterns. */
export interface Names {
  /** Values of earlier lines, and the figures of the pattern a cell is about. */
  plain(name: string): Value | Figure | undefined
  /** The figures of a pattern by its name. */
  pattern(name: string): ReadonlyMap<string, Figure> | undefined
  /** A sentence about which names exist, for a hint. */
  hint(name: string): string
}
