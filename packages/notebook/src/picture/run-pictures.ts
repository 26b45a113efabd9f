// Fills in the picture cells of a notebook.

import { problemAt, type Report } from "../problems.ts"
import type { CellContent } from "../result.ts"
import type { WrittenCell } from "../written-cell.ts"
import type { PictureAnswer, PictureFault } from "./picture-answer.ts"

/** @param text the lines of a picture cell; null: its picture is not at hand */
export type PictureOf = (text: string) => Promise<PictureAnswer | PictureFault | null>

/** Each takes some seconds. */
const mostPictures = 12

export async function runPictures(
  cells: readonly WrittenCell[],
  contents: Map<number, CellContent>,
  pictureOf: PictureOf = async () => null,
  report: Report,
): Promise<void> {
  let asked = 0
  for (const cell of cells) {
    if (cell.kind !== "picture" || !cell.options) continue
    asked += 1
    const lines = cell.text.replace(/\r\n?/g, "\n")
    const found = asked > mostPictures ? tooMany : await pictureOf(lines)
    if (found && "fault" in found) {
      report({
        ...problemAt(cell.line, 1, "no-picture", found.fault, found.hint),
        cell: cell.index,
      })
      continue
    }
    contents.set(cell.index, { kind: "picture", lines, found })
  }
}

const tooMany: PictureFault = {
  fault: `There are more than ${mostPictures} pictures.`,
  hint: "Split the notebook.",
}
