// A figure of a notebook as what it is drawn from: its specification and its data. What needs the shape of its piece has
// that piece laid out, and no other.

import { chartCsv } from "@roundwright/charts"
import { type ComputeOptions, computeNotebook } from "../compute.ts"
import { layOutPattern } from "../laid-out-pattern.ts"
import type { Cell } from "../result.ts"
import type { FigureQuestion, KnownAnswers } from "./messages.ts"

type OptionsFor = (of: {
  readonly known: KnownAnswers
  readonly layOut: readonly string[]
}) => ComputeOptions

/** Null where the cell has no figure drawn from a specification. */
export async function figureOf(
  { markdown, known, figure }: FigureQuestion,
  optionsFor: OptionsFor,
): Promise<{ readonly spec: string; readonly csv: string } | null> {
  const options = optionsFor({ known, layOut: [] })
  const result = await computeNotebook(markdown, options)
  const cell = result.cells[figure]
  const wanted = cell?.content?.kind === "later" ? cell.content.wanted : []
  const names = new Set(wanted.map(({ wanted: { pattern } }) => pattern))
  const texts = new Set(
    result.patterns.flatMap(({ name, readText }) => (names.has(name) ? [readText] : [])),
  )
  if (texts.size === 0) return fileOf(cell)
  const layOut = (text: string) =>
    texts.has(text) ? layOutPattern(text) : (options.layOut?.(text) ?? null)
  return fileOf((await computeNotebook(markdown, { ...options, layOut })).cells[figure])
}

function fileOf(cell: Cell | undefined) {
  const content = cell?.content
  const charts = content && "charts" in content ? content.charts : null
  return charts
    ? { spec: `${JSON.stringify(charts.wide, null, 1)}\n`, csv: chartCsv(charts.wide) }
    : null
}
