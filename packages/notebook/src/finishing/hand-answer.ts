// A hand cell: how wide and how tall the stitches of a real piece are, from what its lines say was measured.

import { formatLength } from "@roundwright/assessment"
import { fitHand, handLinesOf, readHand, readPieceNow } from "@roundwright/matching"
import type { Asked, FinishingAnswer } from "./types.ts"

export function handAnswer({ pattern, text }: Asked): FinishingAnswer {
  const piece = readPieceNow(pattern)
  const measured = readHand(handLinesOf(text), piece.motif, piece.check.reading.terms)
  const { text: lead, stitches, sizes, notes } = fitHand(piece, measured)
  return {
    lead,
    items: [],
    table: {
      label: "Stitches and sizes of this hand",
      head: ["Measure", "Give or take", "Of"],
      rows: [
        ...stitches.flatMap((one) => [
          [millimetres(one.widthMm), millimetres(one.widthErrorMm), `width of one ${one.stitch}`],
          [
            millimetres(one.heightMm),
            millimetres(one.heightErrorMm),
            `height of one ${one.stitch}`,
          ],
        ]),
        ...sizes.map(({ round, mm, errorMm }) => [
          formatLength(mm),
          formatLength(errorMm),
          `across after round ${round}`,
        ]),
      ],
    },
    notes,
    drawing: null,
  }
}

const millimetres = (mm: number) => `${mm.toFixed(1)} mm`
