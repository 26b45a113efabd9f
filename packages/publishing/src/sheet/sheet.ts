// The pattern sheet as data: what belongs on it, in the order of the trade. What only the designer can say is hers, as
// she wrote it; what is missing is listed and never filled in.

import type { Terms } from "@roundwright/stitches"

export interface SheetRound {
  readonly number: number
  /** "Rnd 3" or "Row 3". */
  readonly label: string
  /** The work, as the one writer words it, with a full stop. */
  readonly work: string
  /** "(36 dc)". */
  readonly total: string
  /** How large the piece is now, to check as one goes; null where no size is known. */
  readonly sizeSoFar: string | null
}

export interface Sheet {
  readonly title: string
  /** Designer, copyright, contact: lines of the designer's own. */
  readonly own: readonly string[]
  readonly terms: Terms
  /** One of the trade's four levels, proposed, and why. */
  readonly level: { readonly name: string; readonly why: string }
  readonly materials: readonly { readonly what: string; readonly text: string }[]
  readonly gauge: readonly string[]
  readonly size: readonly string[]
  /** Abbreviations that the rounds use, short and long. */
  readonly abbreviations: readonly { readonly short: string; readonly long: string }[]
  readonly special: readonly { readonly name: string; readonly how: string }[]
  readonly notes: readonly string[]
  readonly rounds: readonly SheetRound[]
  readonly ending: string
  readonly flatness: readonly string[]
  readonly care: readonly string[]
  readonly cautions: readonly string[]
  /** What only the designer can say and has not said. */
  readonly missing: readonly string[]
  /** The chart for print as SVG; null where there is none. */
  readonly chart: string | null
}
