// What a notebook may hold. Its text may come from anybody, so that reading it must end soon and
// use little, whatever stands in it.

import type { NotebookProblem } from "./result.ts"

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

/** The first limit a text breaks, as a problem at its place; null when it keeps them all. */
export function brokenLimit(markdown: string): NotebookProblem | null {
  if (markdown.length > mostCharacters)
    return tooMuch(
      1,
      `The notebook has ${markdown.length} characters, more than ${mostCharacters}.`,
    )
  let marks = 0
  let number = 0
  for (const line of markdown.split(/\r\n|\r|\n/)) {
    number += 1
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
