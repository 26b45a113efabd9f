// What a page asks of its engine and what it is told, wherever the engine runs: in a worker or on the
// page's own thread.

import type { Verdict } from "@roundwright/flatness"
import type { CellKind } from "../result.ts"
import type { TriedRemedy } from "./trials.ts"

export interface Question {
  readonly id: number
  readonly markdown: string
  /** True: the whole body of the page is wanted at the end, to write a file from it. */
  readonly body?: boolean
}

/** A problem inside a cell's text: line and column from 1, `length` in UTF-16 units. */
export interface Mark {
  readonly severity: "error" | "warning" | "note"
  readonly round: number | null
  readonly line: number
  readonly column: number
  readonly length: number
  readonly message: string
  readonly hint: string
}

/** A cell as the page needs it. */
export interface LiveCell {
  readonly index: number
  readonly kind: CellKind
  /** The inside of a result cell; for a cell that can be edited, what stands below its editor. Null: still to come. */
  readonly html: string | null
  readonly marks: readonly Mark[]
}

/** What is said of a pattern, for the bar and the live region. */
export interface Saying {
  readonly cell: number
  readonly name: string
  readonly title: string | null
  readonly sentence: string
  readonly verdict: Verdict | null
}

export interface PageAnswer {
  readonly part: "page"
  readonly id: number
  readonly title: string
  readonly stray: string
  readonly runs: readonly string[]
  readonly cells: readonly LiveCell[]
  readonly sayings: readonly Saying[]
}

/** Answers come in this order: working ..., page, cell ..., end. `failed` may take the place of any. */
export type Answer =
  | { readonly part: "working"; readonly id: number; readonly doing: string }
  | PageAnswer
  | { readonly part: "cell"; readonly id: number; readonly cell: number; readonly html: string }
  | {
      /** What trying each remedy of a remedies cell comes to. */
      readonly part: "trials"
      readonly id: number
      readonly cell: number
      readonly patternCell: number
      readonly trials: readonly TriedRemedy[]
    }
  | { readonly part: "body"; readonly id: number; readonly html: string }
  | { readonly part: "end"; readonly id: number }
  | { readonly part: "failed"; readonly id: number; readonly message: string }
