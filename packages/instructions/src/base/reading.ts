// What reading a pattern gives: the motif as far as it could be worked, what the headings say, and
// every problem with its place. Nothing here depends on geometry.

import type { Motif } from "@roundwright/motif"
import type { GaugeInput, Terms } from "@roundwright/stitches"
import type { ProblemCode } from "./problem-codes.ts"
import type { Severity } from "./severity.ts"

export type { Severity } from "./severity.ts"

/** `error` stops the geometry at its round, `warning` makes it doubtful, `note` is only told. */
/** One problem; those of a reading have codes of the catalogue, those of other steps may have codes of their own. */
export interface Problem<Code extends string = string> {
  readonly severity: Severity
  readonly code: Code
  /** The round's printed number, null for headings and the whole text. */
  readonly round: number | null
  /** From 1; `column` and `length` in UTF-16 units of that line. */
  readonly line: number
  readonly column: number
  readonly length: number
  readonly message: string
  readonly hint: string
}

/** Totals of a round. `chains` are single chains on the edge, `spaces` the runs they form. */
export interface Counts {
  readonly stitches: number
  readonly chains: number
  readonly spaces: number
}

export interface RoundReading {
  readonly number: number
  readonly line: number
  /** Place of the round's text, offsets into the whole text. */
  readonly start: number
  readonly end: number
  /** Null when the round could not be worked. */
  readonly counted: Counts | null
  /** The total the text states (null if none), and whether ours matches it (null if none). */
  readonly stated: number | null
  readonly agrees: boolean | null
  /** Set when the words could not be worked and the round stands for the total it states. */
  readonly assumed?: true
  /** True when the round was understood whole and its total is not contradicted. */
  readonly clean: boolean
  /** For each element of the round, the stretch of text that made it: start and end offsets. */
  readonly elementPlaces?: readonly (readonly [number, number])[]
}

export interface PatternReading {
  readonly title: string | null
  readonly terms: Terms
  /** Whether the terms were stated, guessed from evidence, or the default. */
  readonly termsFrom: "stated" | "default"
  readonly gauge: GaugeInput
  /** Rounds up to the first that could not be worked; empty when none could. */
  readonly motif: Motif
  readonly rounds: readonly RoundReading[]
  readonly problems: readonly Problem<ProblemCode>[]
}
