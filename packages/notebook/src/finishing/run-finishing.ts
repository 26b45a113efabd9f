// Fills in the finishing cells of a notebook.

import { figureNames } from "@roundwright/matching"
import { patternOf } from "../compute-results.ts"
import { problemAt, type Report } from "../problems.ts"
import { readRequestLines } from "../request-lines.ts"
import type { CellContent, CheckedPattern } from "../result.ts"
import type { WrittenCell } from "../written-cell.ts"
import { asksFigures } from "./figures-answer.ts"
import { finish } from "./finishing.ts"
import {
  type FinishingKind,
  type FinishingResult,
  finishingKinds,
  finishingLines,
} from "./types.ts"

/** What a plain piece that stands in is told by. */
const standInLines = ["rounds", "shape", "hook", "size", "layout", "pieces"]
const comparedLines = { names: [], example: "First: 84 rows = 180 cm and Second: 66 rows = 180 cm" }
const spaced = (name: string) => name.replace(/-/g, " ")

/** A match takes a second or two. */
const mostFinishing = 16

export type Finish = (
  kind: FinishingKind,
  pattern: string | null,
  text: string,
) => FinishingResult | null

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
    // Without a pattern to its name a cell may stand by its lines alone.
    const figures = kind === "hand" || kind === "reckon" ? null : kind
    const alone =
      kind === "reckon" ||
      (figures !== null &&
        cell.options.of === undefined &&
        (patterns.size === 0 || asksFigures(figures, cell.text)))
    const pattern = alone ? null : patternOf(cell, patterns, report)
    if (!pattern && !alone) continue
    if (figures !== null && (figures !== "compare" || alone)) {
      const { names, example } = figures === "compare" ? comparedLines : finishingLines[figures]
      const known = alone ? [...names, ...figureNames[figures].map(spaced), ...standInLines] : names
      if (!readRequestLines(cell, known, example, report).sound) continue
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
    const found = (answer ?? finish)(kind, pattern?.readText ?? null, cell.text)
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
