// A computed notebook as data: the Markdown as a tree, every cell with what it gave, every value in
// the prose, every problem with its place. No HTML in here; a page, live or not, is made from this.

import type { CheckResult } from "@roundwright/assessment"
import type { ChartSpec } from "@roundwright/charts"
import type { EditReport, Sheet } from "@roundwright/publishing"
import type { Wanted } from "./calculation/names.ts"
import type { CirclePlan } from "./circle.ts"
import type { FinishingAnswer, FinishingKind } from "./finishing/types.ts"
import type { MarkdownTree } from "./markdown.ts"
import type { PictureAnswer } from "./picture/picture-answer.ts"
import type { SquaringRequest, SquaringResult } from "./squaring.ts"
import type { TransitionsRequest, TransitionsResult } from "./transitions.ts"
import type { CellKind, NotebookProblem } from "./written-cell.ts"

/** A pattern that was checked, with the gauge lines that were set over it. */
export interface CheckedPattern {
  readonly name: string
  /** As it stands in the cell; of a circle cell, as it was planned. */
  readonly text: string
  /** As it was read, with the lines of the gauge cell set in. */
  readonly readText: string
  readonly result: CheckResult
  /** True while the shape is wanted and still to be laid out; the result is then the ledger's alone. */
  readonly unlaid: boolean
  /** What it was planned as; absent where it is written by hand. */
  readonly plan?: CirclePlan
}

/** One line of a calculation. `name` is null for an expression that is only shown. */
export interface CalculationLine {
  readonly source: string
  readonly name: string | null
  /** Ready to show, with its unit; null when the line failed. */
  readonly value: string | null
  readonly comment: string
}

/** What a cell gave. `pattern` below is the pattern a result cell is about. */
export type CellContent =
  | LaterContent
  | { readonly kind: "pattern"; readonly pattern: CheckedPattern }
  | { readonly kind: "gauge"; readonly of: string; readonly lines: readonly string[] }
  | { readonly kind: "calculation"; readonly lines: readonly CalculationLine[] }
  | {
      readonly kind: "verdict" | "ledger" | "remedies" | "problems"
      readonly pattern: CheckedPattern
    }
  | { readonly kind: "edit"; readonly pattern: CheckedPattern; readonly report: EditReport }
  | {
      readonly kind: "sheet"
      readonly pattern: CheckedPattern
      /** Or why none can be made, in a sentence. */
      readonly sheet: Sheet | { readonly why: string }
    }
  | {
      readonly kind: "circle"
      /** The plan, which is a pattern like any other. */
      readonly pattern: CheckedPattern
      readonly plan: CirclePlan
    }
  | {
      readonly kind: "transitions"
      readonly request: TransitionsRequest
      /** Null when the search was not made. */
      readonly found: TransitionsResult | null
      readonly charts: ChartPair | null
    }
  | {
      readonly kind: "heights"
      readonly pattern: CheckedPattern
      readonly request: SquaringRequest
      readonly found: SquaringResult | null
      readonly charts: ChartPair | null
    }
  | {
      readonly kind: "squaring"
      readonly pattern: CheckedPattern
      readonly request: SquaringRequest
      /** Null when the search was not made. */
      readonly found: SquaringResult | null
    }
  | {
      readonly kind: "finishing"
      readonly of: FinishingKind
      /** Null where the lines stand alone. */
      readonly pattern: CheckedPattern | null
      /** What is asked, as written. */
      readonly lines: string
      /** Null when it was not worked out. */
      readonly found: FinishingAnswer | null
    }
  | {
      readonly kind: "picture"
      /** As written. */
      readonly lines: string
      /** Null when the picture is not at hand. */
      readonly found: PictureAnswer | null
    }
  | {
      readonly kind: "chart"
      readonly name: string
      readonly pattern: CheckedPattern
      /** Null while the pattern has no round to draw; the pattern itself tells why. */
      readonly charts: ChartPair | null
    }

/** A chart drawn for a page's measure and for a phone. */
export interface ChartPair {
  readonly wide: ChartSpec
  readonly narrow: ChartSpec
}

/** What a cell says before everything is worked out: that its answer is still to come. */
export interface LaterContent {
  readonly kind: "later"
  readonly wanted: readonly Wanted[]
}

export interface Cell {
  readonly index: number
  readonly kind: CellKind
  /** Line of the opening fence, from 1. */
  readonly line: number
  /** What stands after the fence, and inside it. */
  readonly info: string
  readonly text: string
  /** Null when the cell failed; `problems` then says why. */
  readonly content: CellContent | null
  readonly problems: readonly NotebookProblem[]
}

/** A value in the prose: `` `= expression` ``. */
export interface InlineValue {
  readonly line: number
  readonly column: number
  readonly expression: string
  /** Ready to show; null when it failed. */
  readonly value: string | null
  readonly problem: NotebookProblem | null
  /** Set when the value is still to come, and what it waits for. */
  readonly wanted?: Wanted["wanted"]
}

export interface NotebookResult {
  readonly title: string
  readonly tree: MarkdownTree
  /** In the order of the text. */
  readonly cells: readonly Cell[]
  readonly values: readonly InlineValue[]
  /** All of them, in the order of the text. */
  readonly problems: readonly NotebookProblem[]
  readonly patterns: readonly CheckedPattern[]
}
