// Problems of a notebook, at their place.

import type { NotebookProblem, WrittenCell } from "./written-cell.ts"

/** Takes a problem where it is found. */
export type Report = (problem: NotebookProblem) => void

/** A cell about a pattern that does not exist, or about none. */
export function noPattern(
  cell: WrittenCell,
  name: string | undefined,
  known: readonly string[],
): NotebookProblem {
  const key = cell.kind === "gauge" ? "for" : "of"
  const message =
    name === undefined
      ? `This ${cell.kind} cell does not say which pattern it is about.`
      : `There is no pattern called ${name}.`
  const hint =
    known.length === 0
      ? "Add a cell opened with pattern name=NAME."
      : `Write ${key}= with one of ${known.slice(0, 12).join(", ")}.`
  return { ...problemAt(cell.line, 1, "no-such-pattern", message, hint), cell: cell.index }
}

/** A second cell where there can be one. */
export function twice(cell: WrittenCell, message: string): NotebookProblem {
  const hint = "Give this one another name, or take it out."
  return { ...problemAt(cell.line, 1, "name-taken", message, hint), cell: cell.index }
}

export function problemAt(
  line: number,
  column: number,
  code: string,
  message: string,
  hint: string,
): NotebookProblem {
  return { severity: "error", code, cell: null, line, column, length: 3, message, hint }
}
