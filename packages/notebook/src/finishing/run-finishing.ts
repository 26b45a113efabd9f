// Fills in the finishing cells of a notebook.

import { patternOf } from "../compute-results.ts"
import { problemAt, type Report } from "../problems.ts"
import { readRequestLines } from "../request-lines.ts"
import type { CellContent, CheckedPattern } from "../result.ts"
import type { WrittenCell } from "../written-cell.ts"
import { finish } from "./finishing.ts"
import {
  type FinishingKind,
  type FinishingResult,
  finishingKinds,
  finishingLines,
} from "./types.ts"

/** A match takes a second or two. */
const mostFinishing = 16

export type Finish = (kind: FinishingKind, pattern: string, text: string) => FinishingResult | null

/** @param answer null: it is not worked out now */
export function runFinishing(
  cells: readonly WrittenCell[],
  patterns: ReadonlyMap<string, CheckedPattern>,
  contents: Map<number, CellContent>,
  answer: Finish | undefined,
  report: Report,
): void {
  let asked = 0
  for (const cell of cells) {
    const kind = finishingKinds.find((one) => one === cell.kind)
    if (kind === undefined || !cell.options) continue
    const pattern = patternOf(cell, patterns, report)
    if (!pattern) continue
    if (kind !== "compare" && kind !== "hand") {
      const { names, example } = finishingLines[kind]
      if (!readRequestLines(cell, names, example, report).sound) continue
    }
    asked += 1
    if (asked > mostFinishing) {
      const message = `There are more than ${mostFinishing} cells that match or finish.`
      report({
        ...problemAt(cell.line, 1, "too-many-searches", message, "Split the notebook."),
        cell: cell.index,
      })
      continue
    }
    const found = (answer ?? finish)(kind, pattern.readText, cell.text)
    if (found && "fault" in found) {
      report({
        ...problemAt(cell.line, 1, `no-${kind}`, found.fault, found.hint),
        cell: cell.index,
      })
      continue
    }
    contents.set(cell.index, { kind: "finishing", of: kind, pattern, lines: cell.text, found })
  }
}
