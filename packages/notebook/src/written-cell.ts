// A cell as it is written, before anything is computed, and a problem at its place.

import { finishingKinds } from "./finishing/types.ts"

/** The kinds of cell, by the first word after the fence. */
export const cellKinds = [
  "pattern",
  "gauge",
  "calculation",
  "verdict",
  "ledger",
  "remedies",
  "problems",
  "edit",
  "sheet",
  "squaring",
  "heights",
  "circle",
  "transitions",
  ...finishingKinds,
  "picture",
  "chart",
] as const

export type CellKind = (typeof cellKinds)[number]

export interface CellOptions {
  readonly name?: string | undefined
  readonly for?: string | undefined
  readonly of?: string | undefined
  readonly terms?: string | undefined
}

export interface NotebookProblem {
  /** `error`: something has no result because of it. `warning`, `note`: there is one, with this said. */
  readonly severity: "error" | "warning" | "note"
  readonly code: string
  /** The cell it is in, counted from 0; null when it is in the prose or about the whole text. */
  readonly cell: number | null
  /** Place in the notebook's text, from 1; `length` in UTF-16 units. */
  readonly line: number
  readonly column: number
  readonly length: number
  readonly message: string
  readonly hint: string
}

/** A cell before it is computed. `options` is null when they could not be used. */
export interface WrittenCell {
  readonly index: number
  readonly kind: CellKind
  readonly line: number
  readonly info: string
  readonly text: string
  readonly options: CellOptions | null
  readonly problems: NotebookProblem[]
}
