// A calculation cell: one expression a line, `name = expression` to keep it, `#` before a remark.

import { RoundwrightError } from "@roundwright/numerics"
import { reservedNames } from "../options.ts"
import type { CalculationLine, CellContent } from "../result.ts"
import type { NotebookProblem, WrittenCell } from "../written-cell.ts"
import { evaluate, nameGiven } from "./evaluate.ts"
import { StillToCome } from "./faults.ts"
import { formatValue } from "./format.ts"
import { loadMath, type MathTools } from "./math.ts"
import type { Wanted } from "./names.ts"
import { isTaken, namesIn, type Scope } from "./scope.ts"

export type { Scope } from "./scope.ts"

/** A calculation of more lines is a table, and hides what it is about. */
const mostLines = 60

/** Computes the lines in order and adds what they name to the scope. */
export async function computeCalculation(
  cell: WrittenCell,
  scope: Scope,
  report: (problem: NotebookProblem) => void,
): Promise<CellContent> {
  const math = await loadMath()
  const written = cell.text.split(/\r\n|\r|\n/)
  const lines: CalculationLine[] = []
  const wanted: Wanted[] = []
  written.slice(0, mostLines).forEach((line, index) => {
    if (line.trim() === "") return
    const [source, comment] = splitRemark(line)
    if (source === "") {
      lines.push({ source, name: null, value: null, comment })
      return
    }
    try {
      lines.push({ ...computeLine(source, cell, scope, math), comment })
    } catch (error) {
      if (error instanceof StillToCome) {
        const name = nameGiven(source)
        if (name !== null && !isTaken(name, scope)) scope.values.set(name, { wanted: error.wanted })
        wanted.push({ wanted: error.wanted })
        return
      }
      if (!(error instanceof RoundwrightError)) throw error
      lines.push({ source, name: null, value: null, comment })
      report(problemIn(cell, index + 1, line, error))
    }
  })
  if (written.length > mostLines)
    report(
      problemIn(
        cell,
        mostLines + 1,
        written[mostLines]!,
        new RoundwrightError("too-many-lines", `A calculation has at most ${mostLines} lines.`, {
          hint: "Split it into several cells.",
        }),
      ),
    )
  return wanted.length > 0 ? { kind: "later", wanted } : { kind: "calculation", lines }
}

function computeLine(
  source: string,
  cell: WrittenCell,
  scope: Scope,
  math: MathTools,
): Omit<CalculationLine, "comment"> {
  const of = cell.options?.of
  if (of !== undefined && !scope.patterns.has(of))
    throw new RoundwrightError("no-such-pattern", `There is no pattern called ${of}.`, {
      hint: `Patterns are ${[...scope.patterns.keys()].slice(0, 12).join(", ")}.`,
    })
  const { name, value } = evaluate(source, namesIn(scope, of), math)
  if (name !== null) {
    if (reservedNames.has(name.toLowerCase()) || isTaken(name, scope))
      throw new RoundwrightError("name-taken", `The name "${name}" means something already.`, {
        hint: "A name is given a value once; choose another.",
      })
    scope.values.set(name, value)
  }
  const shown = name === null ? source : source.slice(source.indexOf("=") + 1).trim()
  return { source: shown, name, value: formatValue(value, math) }
}

/** Splits at the first `#` outside quotes. */
function splitRemark(line: string): [source: string, comment: string] {
  let quoted = false
  for (let at = 0; at < line.length; at += 1) {
    if (line[at] === '"') quoted = !quoted
    if (line[at] === "#" && !quoted) return [line.slice(0, at).trim(), line.slice(at + 1).trim()]
  }
  return [line.trim(), ""]
}

function problemIn(
  cell: WrittenCell,
  line: number,
  text: string,
  error: RoundwrightError,
): NotebookProblem {
  return {
    severity: "error",
    code: error.code,
    cell: cell.index,
    line: cell.line + line,
    column: text.length - text.trimStart().length + 1,
    length: Math.max(1, text.trim().length),
    message: error.message,
    hint: error.hint,
  }
}
