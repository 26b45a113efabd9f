// What the words of a text say of its terms, and how much each says.

import type { Span } from "../base/tree.ts"

/** How much a sign says: two of one, or one of the other, make a warning; less is only told. */
export const signs = { weak: 1, clear: 2 }

export interface Sign extends Span {
  readonly weight: number
  readonly why: string
}
