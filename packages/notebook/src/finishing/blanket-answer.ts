// A blanket cell: pieces for a size or of those at hand, their layout drawn, colours shared out, half pieces written in rows.

import { writePattern } from "@roundwright/instructions"
import {
  edgeTriangle,
  halfPiece,
  layoutSvg,
  mainStitchOf,
  planBlanket,
  projectYarn,
  readBlanketSize,
  readColours,
  readLarger,
  readLength,
  readPieceNow,
  triangleLead,
} from "@roundwright/matching"
import { RoundwrightError, unlessRefused } from "@roundwright/numerics"
import { linesOf } from "./lines.ts"
import type { Asked, FinishingAnswer } from "./types.ts"

export function blanketAnswer({ pattern, text }: Asked): FinishingAnswer {
  const lines = linesOf(text)
  const piece = readPieceNow(pattern)
  const { now, motif, gauge, check } = piece
  if (now.corners !== 4 && now.corners !== 6)
    throw new RoundwrightError(
      "no-layout",
      "Only squares and hexagons fill a blanket by themselves.",
      {
        hint: "Square the piece first, with a squaring cell.",
      },
    )
  const shape = now.corners === 6 ? "hexagon" : "square"
  const size = lines.text("size")
  const wished = size === undefined ? null : readBlanketSize(size)
  const [layout, have, seed] = [lines.layout("layout"), lines.whole("have"), lines.whole("seed")]
  const [pair, larger, border] = [lines.text("pair"), lines.text("larger"), lines.text("border")]
  const colours = lines.text("colours")
  const borderMm = border === undefined ? 0 : readLength(border, "Border")
  const plan = planBlanket({
    shape,
    pieceMm: now.acrossMm,
    borderMm,
    straightEdges: /^y/i.test(lines.text("straight edges") ?? ""),
    ...(wished === null ? {} : { wanted: wished.mm, named: wished.named }),
    ...(layout === undefined ? {} : { layout }),
    ...(have === undefined ? {} : { have }),
    ...(seed === undefined ? {} : { seed }),
    ...(pair === undefined ? {} : { pairMm: readLength(pair, "Pair") }),
    ...(larger === undefined ? {} : { larger: readLarger(larger, now.acrossMm) }),
    ...(colours === undefined ? {} : { colours: readColours(colours) }),
    gramsEach: projectYarn(piece, { pieces: 1 }).piece.gramsBand?.[1] ?? null,
  })
  const half =
    plan.halves === 0
      ? []
      : unlessRefused(
          () => {
            const { motif: rows, sides, wholeSide } = halfPiece(motif, gauge)
            const written = writePattern(rows, check.reading.terms).split("\n")
            return [
              {
                text: `The half piece, in rows; its sides have ${sides.join(", ")} stitches, the whole's ${wholeSide}:`,
                rounds: written.filter((line) => line.startsWith("Row ")),
              },
            ]
          },
          ({ message }) => [{ text: `A half piece could not be written: ${message}`, rounds: [] }],
        )
  const triangle =
    plan.triangles === 0 || now.stitchesPerSide === null
      ? null
      : edgeTriangle(
          now.stitchesPerSide,
          now.acrossMm / 2,
          mainStitchOf(motif.rounds.at(-1)!),
          gauge,
          check.reading.terms,
        )
  return {
    lead: plan.text,
    items: [
      ...half,
      ...(triangle ? [{ text: `${triangleLead(triangle)}:`, rounds: triangle.text }] : []),
    ],
    table:
      plan.colours === null
        ? null
        : {
            label: "Colours",
            head: ["Pieces", "Colour"],
            rows: plan.colours.colours.map(({ name, pieces }) => [String(pieces), name]),
          },
    notes: plan.notes,
    drawing: layoutSvg(plan.layout, {
      shared: plan.colours,
      borderMm,
      title: check.reading.title ?? "The layout",
    }),
  }
}
