// The patterns of a notebook, each by itself, with the lines of a gauge cell that is set over it.

import type { CheckResult } from "@roundwright/assessment"
import type { Cell, NotebookProblem, NotebookResult } from "@roundwright/notebook"

type Problems = CheckResult["problems"]

export interface NotebookPattern {
  /** Null where the cell gives none that can be used. */
  readonly name: string | null
  /** Line of the notebook where its cell begins. */
  readonly line: number
  /** As it is read; null where the cell cannot be used, and the problems then say why. */
  readonly text: string | null
  /** Placed in the notebook. */
  readonly problems: Problems
}

const patternFence = /^ {0,3}(?:`{3,}|~{3,})[ \t]*pattern(?:[ \t]|$)/m

/** Whether a text is a notebook that holds patterns, rather than a pattern. */
export function holdsPatterns(text: string): boolean {
  return patternFence.test(text)
}

/** In the order of the notebook. Nothing is searched or laid out. Never throws on anything a text can hold. */
export async function patternsOf(markdown: string): Promise<NotebookPattern[]> {
  // Loaded only here: it needs the Markdown library, a plain pattern does not.
  const { computeNotebook } = await import("@roundwright/notebook")
  const nothing = () => null
  const notebook = await computeNotebook(markdown, {
    square: nothing,
    transitions: nothing,
    layOut: nothing,
  })
  const cells = notebook.cells.filter(({ kind }) => kind === "pattern")
  if (cells.length > 0) return cells.map((cell) => patternIn(cell, notebook))
  const problems = notebook.problems.map(asInPattern)
  return [{ name: null, line: problems[0]?.line ?? 1, text: null, problems }]
}

function patternIn(cell: Cell, notebook: NotebookResult): NotebookPattern {
  const { content, line } = cell
  if (content?.kind !== "pattern")
    return { name: null, line, text: null, problems: cell.problems.map(asInPattern) }
  const { name, readText, result } = content.pattern
  const gauge = notebook.cells.find(
    (one) => one.content?.kind === "gauge" && one.content.of === name,
  )
  const own = result.problems.map((problem) => ({ ...problem, line: line + problem.line }))
  const problems = [...(gauge?.problems ?? []).map(asInPattern), ...own]
  return { name, line, text: readText, problems: problems.sort((a, b) => a.line - b.line) }
}

function asInPattern({ cell: _, ...problem }: NotebookProblem): Problems[number] {
  return { ...problem, round: null }
}
