// Where in a notebook the lines of a picture stand: its picture cell, or, in a text without one, anywhere in it; a
// notebook that has none of this picture gets a cell at its end.

import { readLines } from "@roundwright/picture"

export interface LinesPlace {
  /** The lines as they stand. */
  readonly lines: string
  /** The whole notebook with other lines in their place. */
  withLines(lines: string): string
}

const cellPattern = /^(```+)picture[ \t]*\r?\n([\s\S]*?)^\1[ \t]*$/gm

export function linesInNotebook(text: string, picture: string): LinesPlace {
  const cells = [...text.matchAll(cellPattern)]
  const named = (lines: string) => readLines(lines).picture
  const cell =
    cells.find(([, , lines]) => named(lines!) === picture) ??
    cells.find(([, , lines]) => named(lines!) === null)
  if (cell) {
    const [whole, fence, lines] = cell
    return {
      lines: lines!.replace(/\r?\n$/, ""),
      withLines: (fresh) =>
        `${text.slice(0, cell.index)}${fence}picture\n${fresh}\n${fence}${text.slice(cell.index + whole.length)}`,
    }
  }
  if (cells.length === 0 && readLines(text).rings.length > 0)
    return { lines: text, withLines: (fresh) => fresh }
  const gap = text === "" ? "" : text.endsWith("\n") ? "\n" : "\n\n"
  return { lines: "", withLines: (fresh) => `${text}${gap}\`\`\`picture\n${fresh}\n\`\`\`\n` }
}
