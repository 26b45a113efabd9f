// A finding of the edit: what is wrong, where, why, and the words to put there.

import type { EditCode, EditSeverity } from "./codes.ts"

/** The published form (`edit --json`): keys are stable, others may be added. */
export interface EditFinding {
  readonly severity: EditSeverity
  readonly code: EditCode
  /** The round's printed number; null for what stands outside the rounds. */
  readonly round: number | null
  /** From 1; `column` and `length` in UTF-16 units of that line. A length of 0 is a place between two letters. */
  readonly line: number
  readonly column: number
  readonly length: number
  readonly message: string
  /** What to put in the place of the stretch (insert, where its length is 0; strike out, where it is empty); null where only the designer can say. */
  readonly wording: string | null
  /** Whether the corrected copy has the wording. */
  readonly corrected: boolean
}

/** As a rule gives it: with offsets into the text. */
export interface Remark {
  readonly severity: EditSeverity
  readonly code: EditCode
  readonly round: number | null
  readonly start: number
  readonly end: number
  readonly message: string
  readonly wording?: string
  /** True where nothing else can be meant, so that the corrected copy takes the wording. */
  readonly sure?: true
}

export interface EditReport {
  /** What must be mended first, then queries, then style; each in the order of the text. */
  readonly findings: readonly EditFinding[]
  /** The text with every wording that nothing speaks against. */
  readonly corrected: string
}
