// A notebook's text cut into its cells and all between them, so that a cell can be changed while every
// other character stays as it was.

import { findCells } from "../cells.ts"
import { finishingKinds } from "../finishing/types.ts"
import { brokenLimit } from "../limits.ts"
import { parseMarkdown } from "../markdown.ts"
import { type CellKind, cellKinds } from "../written-cell.ts"

/** A cell as it stands in the text. */
export interface SourceCell {
  readonly index: number
  readonly kind: CellKind
  /** What stands after the kind in the fence. */
  readonly info: string
  /** Inside the fence, lines parted by \n, no line break at the end. */
  readonly text: string
}

export interface Source {
  readonly cells: readonly SourceCell[]
  /** The notebook with the texts of some cells changed. The same text gives the same notebook. */
  withTexts(texts: ReadonlyMap<number, string>): string
}

/** Kinds of cells whose text a reader may change. */
export const editableKinds: ReadonlySet<CellKind> = new Set<CellKind>([
  "pattern",
  "gauge",
  "calculation",
  "circle",
  ...finishingKinds,
  "picture",
])

/** @param markdown cleaned text. A text that breaks the limits of a notebook has no cells. */
export function cutSource(markdown: string): Source {
  const pieces = brokenLimit(markdown) ? [] : findPieces(markdown)
  return {
    cells: pieces.map(({ cell }) => cell),
    withTexts: (texts) => {
      let written = ""
      let at = 0
      for (const { cell, start, end } of pieces) {
        const text = texts.get(cell.index)
        const changed = text !== undefined && text !== cell.text
        written += markdown.slice(at, start)
        written += changed ? fenced(cell, text) : markdown.slice(start, end)
        at = end
      }
      return written + markdown.slice(at)
    },
  }
}

interface Piece {
  readonly cell: SourceCell
  /** Offsets of the whole fenced block. */
  readonly start: number
  readonly end: number
}

function findPieces(markdown: string): Piece[] {
  const tree = parseMarkdown(markdown)
  const { cells } = findCells(tree, markdown)
  const blocks = new Map(
    tree.children.flatMap(({ type, position }) =>
      type === "code" && position ? [[position.start.line, position] as const] : [],
    ),
  )
  return cells.flatMap(({ index, kind, info, text, line }) => {
    const place = blocks.get(line)
    const start = place?.start.offset
    const end = place?.end.offset
    if (start === undefined || end === undefined || !cellKinds.includes(kind)) return []
    return [{ cell: { index, kind, info, text: text.replace(/\r\n?/g, "\n") }, start, end }]
  })
}

/** A fence longer than any inside it. */
function fenced({ kind, info }: SourceCell, text: string): string {
  let longest = 2
  for (const [run] of text.matchAll(/`+/g)) longest = Math.max(longest, run.length)
  const fence = "`".repeat(longest + 1)
  const tail = text === "" ? "" : `${text}\n`
  return `${fence}${kind}${info === "" ? "" : ` ${info}`}\n${tail}${fence}`
}
