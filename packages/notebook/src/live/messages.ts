// What a page asks of its engine and what it is told, wherever the engine runs: in a worker or on the
// page's own thread.

import type { Verdict } from "@roundwright/flatness"
import type { CellKind } from "../result.ts"
import type { SquaringRequest, SquaringResult } from "../squaring.ts"
import type { TriedRemedy } from "./trials.ts"

export type Question = NotebookQuestion | SquaringQuestion

export interface NotebookQuestion {
  readonly id: number
  readonly markdown: string
  /** Wanted at the end: the whole body of the page, to write a file from it. Searches made are given along. */
  readonly body?: { readonly searches: ReadonlyMap<string, SquaringResult> }
}

/** A search that takes seconds, asked of an engine of its own. */
export interface SquaringQuestion {
  readonly id: number
  readonly own: string
  readonly gauge: readonly string[]
  readonly request: SquaringRequest
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

/** What a squaring cell would search for. */
export interface Search {
  readonly cell: number
  readonly patternCell: number
  /** Tells one search from another. */
  readonly key: string
  readonly question: Omit<SquaringQuestion, "id">
}

export interface PageAnswer {
  readonly part: "page"
  readonly id: number
  readonly title: string
  readonly stray: string
  readonly runs: readonly string[]
  readonly cells: readonly LiveCell[]
  readonly sayings: readonly Saying[]
  readonly searches: readonly Search[]
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
  | {
      readonly part: "squaring"
      readonly id: number
      readonly html: string
      readonly result: SquaringResult
    }
  | { readonly part: "body"; readonly id: number; readonly html: string }
  | { readonly part: "end"; readonly id: number }
  | { readonly part: "failed"; readonly id: number; readonly message: string }
