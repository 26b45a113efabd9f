// What a notebook may hold. Its text may come from anybody, so that reading it must end soon and
// use little, whatever stands in it.

import type { NotebookProblem } from "./written-cell.ts"

/** Far above a long lesson with thirty patterns; parsing this much Markdown takes about a second. */
const mostCharacters = 400_000

/** Longer lines are no prose; some Markdown marks cost the square of the length of their line. */
const mostLineCharacters = 10_000

/** Quotes within quotes, lists within lists: more depth would overflow the tree walkers. */
const mostNesting = 40

/** Emphasis and link marks in one paragraph; finding their partners costs the square of their number. */
const mostMarks = 4_000

/** Cells each check a pattern or draw; this many still render in seconds. */
export const mostCells = 300

/** Values in the prose. */
export const mostValues = 3_000

/**
 * The first limit a text breaks, as a problem at its place; null when it keeps them all. Lines inside
 * a fence at the margin are taken as they are by the parser, so only the whole length bounds them.
 */
export function brokenLimit(markdown: string): NotebookProblem | null {
  if (markdown.length > mostCharacters)
    return tooMuch(
      1,
      `The notebook has ${markdown.length} characters, more than ${mostCharacters}.`,
    )
  const fences = new Fences()
  let marks = 0
  let number = 0
  for (const line of markdown.split(/\r\n|\r|\n/)) {
    number += 1
    if (fences.holds(line)) {
      marks = 0
      continue
    }
    if (line.length > mostLineCharacters)
      return tooMuch(
        number,
        `This line has ${line.length} characters, more than ${mostLineCharacters}.`,
      )
    if (depthOf(line) > mostNesting)
      return tooMuch(number, `Quotes or lists are nested more than ${mostNesting} deep here.`)
    marks = line.trim() === "" ? 0 : marks + countMarks(line)
    if (marks > mostMarks)
      return tooMuch(number, `This paragraph has more than ${mostMarks} emphasis or link marks.`)
  }
  return null
}

/** Follows fences from line to line, and only those that the parser is sure to see as fences too. */
class Fences {
  #open: string | null = null
  /** After a block of raw HTML or an indented fence may have begun, no fence is trusted any more. */
  #doubtful = false

  /** True for a line between the opening and the closing fence. */
  holds(line: string): boolean {
    if (this.#open !== null) {
      const close = /^ {0,3}(`{3,}|~{3,})[ \t]*$/.exec(line)?.[1]
      if (close?.[0] === this.#open[0] && close !== undefined && close.length >= this.#open.length)
        this.#open = null
      return this.#open !== null
    }
    if (/^[\s>*+\-\d.)]*<|^[\s>*+\-\d.)]+(?:`{3}|~{3})/.test(line)) this.#doubtful = true
    else if (!this.#doubtful) this.#open = /^(?:`{3,}(?=[^`]*$)|~{3,})/.exec(line)?.[0] ?? null
    return false
  }
}

/** Containers a line opens: quote marks, list marks and the steps of its indentation. */
function depthOf(line: string): number {
  const opening = /^(?:[\s>]|[-+*](?=\s)|\d{1,9}[.)](?=\s))*/.exec(line)![0]
  const quotes = opening.split(">").length - 1
  const lists = opening.match(/[-+*]|[.)]/g)?.length ?? 0
  return (
    quotes + lists + Math.floor(opening.replace(/[^ \t]/g, "").replace(/\t/g, "    ").length / 8)
  )
}

function countMarks(line: string): number {
  let count = 0
  for (const char of line) if ("*_[]~!`<".includes(char)) count += 1
  return count
}

function tooMuch(line: number, message: string): NotebookProblem {
  return {
    severity: "error",
    code: "too-much-text",
    cell: null,
    line,
    column: 1,
    length: 1,
    message,
    hint: "Split the notebook, or put the long text into a file of its own.",
  }
}
