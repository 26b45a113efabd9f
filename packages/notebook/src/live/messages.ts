// What a page asks of its engine and what it is told, wherever the engine runs: in a worker or on the
// page's own thread.

import type { Verdict } from "@roundwright/flatness"
import type { DecodedPicture } from "@roundwright/picture"
import type { Terms } from "@roundwright/stitches"
import type { CirclePlan } from "../circle.ts"
import type { FinishingAnswer } from "../finishing/types.ts"
import type { ShapeFound } from "../laid-out-pattern.ts"
import type { PictureFault, PictureFound } from "../picture/picture-answer.ts"
import type { SquaringRequest, SquaringResult } from "../squaring.ts"
import type { TransitionsResult } from "../transitions.ts"
import type { CellKind } from "../written-cell.ts"
import type { TriedRemedy } from "./trials.ts"

export type Question = NotebookQuestion | SquaringQuestion | FigureQuestion | PictureQuestion

export interface NotebookQuestion {
  readonly id: number
  readonly markdown: string
  readonly known: KnownAnswers
  /** Texts of pieces to lay out for this answer; what else is not known stays as it is. */
  readonly layOut: readonly string[]
}

/** What was found so far by those who take their time, by what was asked. */
export interface KnownAnswers {
  readonly searches: ReadonlyMap<string, SquaringResult>
  readonly transitions: ReadonlyMap<string, TransitionsResult>
  readonly finishing: ReadonlyMap<string, FinishingAnswer>
  readonly plans: ReadonlyMap<string, CirclePlan>
  readonly shapes: ReadonlyMap<string, ShapeFound>
}

/** A search that takes seconds, asked of an engine of its own. */
export interface SquaringQuestion {
  readonly id: number
  readonly own: string
  readonly gauge: readonly string[]
  readonly request: SquaringRequest
}

/** What a figure is drawn from, asked of an engine of its own. */
export interface FigureQuestion {
  readonly id: number
  readonly markdown: string
  readonly known: KnownAnswers
  /** Index of its cell. */
  readonly figure: number
}

/** A picture to be measured as the lines of its cell say. */
export interface PictureQuestion {
  readonly id: number
  readonly measure: {
    /** Tells one picture from another. */
    readonly picture: number
    readonly decoded: DecodedPicture
    readonly text: string
  }
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
  /** What stands in it on a page without its script, where that is something else. */
  readonly still: string | null
  readonly marks: readonly Mark[]
  /** Texts of the pieces that must be laid out before it can be told. */
  readonly waitsFor: readonly string[]
}

/** A run of prose; null where a value in it is still to come. */
export type LiveRun = Pick<LiveCell, "html" | "waitsFor">

/** What is said of a pattern, for the bar and the live region. */
export interface Saying {
  readonly cell: number
  readonly name: string
  readonly title: string | null
  readonly sentence: string
  /** Of a first answer, which the laid-out shape may change. */
  readonly provisional: boolean
  readonly verdict: Verdict | null
}

/** What a squaring cell would search for. */
export interface Search {
  readonly cell: number
  /** Where proposals can be taken over; null where the pattern is a plan. */
  readonly patternCell: number | null
  /** Tells one search from another. */
  readonly key: string
  /** The pattern's own terms. */
  readonly terms: Terms
  readonly question: Omit<SquaringQuestion, "id">
}

export interface PageAnswer {
  readonly part: "page"
  readonly id: number
  readonly title: string
  readonly stray: string
  readonly runs: readonly LiveRun[]
  readonly cells: readonly LiveCell[]
  readonly sayings: readonly Saying[]
  readonly searches: readonly Search[]
  /** Plans of circle cells, by the lines they were asked for with. */
  /** What was asked in finishing cells, and answered. */
  readonly finishing: readonly (readonly [string, FinishingAnswer])[]
  readonly plans: readonly (readonly [string, CirclePlan])[]
}

/** Answers come in this order: working and shape ..., page, cell ..., end. `failed` may take the place of any. */
export type Answer =
  | {
      readonly part: "picture"
      readonly id: number
      readonly found: PictureFound | PictureFault
    }
  | { readonly part: "working"; readonly id: number; readonly doing: string }
  | PageAnswer
  | {
      readonly part: "shape"
      readonly id: number
      readonly text: string
      readonly found: ShapeFound
    }
  | {
      readonly part: "cell"
      readonly id: number
      readonly cell: number
      readonly html: string
      /** Text of the piece that is drawn, for a drawing of its shape. */
      readonly shapeOf: string | null
      /** Drawn by the growth of rounds alone: the laid-out shape is still to come. */
      readonly provisional: boolean
    }
  | {
      /** What trying each remedy of a remedies cell comes to. */
      readonly part: "trials"
      readonly id: number
      readonly cell: number
      readonly patternCell: number
      /** One for each remedy; null where there is nothing to try. */
      readonly trials: readonly (TriedRemedy | null)[]
    }
  | {
      readonly part: "squaring"
      readonly id: number
      readonly html: string
      readonly result: SquaringResult
    }
  | {
      readonly part: "figure"
      readonly id: number
      /** Its Vega-Lite specification as JSON, and its data. */
      readonly spec: string
      readonly csv: string
    }
  | { readonly part: "end"; readonly id: number }
  | { readonly part: "failed"; readonly id: number; readonly message: string }
