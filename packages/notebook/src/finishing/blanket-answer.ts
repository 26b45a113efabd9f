// A blanket cell: pieces for a size or of those at hand, their layout drawn, colours shared out, half pieces written in rows.

import { writePattern } from "@roundwright/instructions"
import {
  type BlanketPlan,
  type BlanketRequest,
  edgeTriangle,
  halfPiece,
  layoutSvg,
  mainStitchOf,
  pieceShapes,
  planBlanket,
  projectYarn,
  readBlanketSize,
  readColours,
  readLarger,
  readLength,
  readPieceNow,
  readPieceTold,
  triangleLead,
  unitIn,
} from "@roundwright/matching"
import { RoundwrightError, unlessRefused } from "@roundwright/numerics"
import { linesOf } from "./lines.ts"
import type { Asked, FinishingAnswer } from "./types.ts"

export function blanketAnswer({ pattern, text }: Asked): FinishingAnswer {
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
  const plan = planFrom(text, {
    shape: now.corners === 6 ? "hexagon" : "square",
    pieceMm: now.acrossMm,
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
    ...drawnPlan(plan, text, check.reading.title ?? "The layout"),
  }
}

/** Pieces of a size that is told, without a pattern. @throws RoundwrightError `no-size`, what `planBlanket` throws */
export function blanketOfPieces(text: string): FinishingAnswer {
  const lines = linesOf(text)
  const shape = pieceShapes.find((one) => one === lines.text("shape")?.toLowerCase()) ?? "square"
  const told = readPieceTold(lines.text("piece") ?? "", shape)
  const size = lines.text("size")
  const plan = planFrom(text, {
    shape,
    pieceMm: told.widthMm,
    ...(told.lengthMm === told.widthMm ? {} : { pieceLengthMm: told.lengthMm }),
    unit: size !== undefined && /\d/.test(size) ? unitIn(size) : told.unit,
  })
  return { lead: plan.text, items: [], ...drawnPlan(plan, text, "The layout") }
}

/** What the lines wish for, of pieces that are known. */
function planFrom(text: string, pieces: BlanketRequest): BlanketPlan {
  const lines = linesOf(text)
  const [size, layout, have] = [lines.text("size"), lines.layout("layout"), lines.whole("have")]
  const [pair, larger, colours] = [lines.text("pair"), lines.text("larger"), lines.text("colours")]
  const seed = lines.whole("seed")
  const wished = size === undefined ? null : readBlanketSize(size)
  return planBlanket({
    ...pieces,
    borderMm: borderOf(text),
    straightEdges: /^y/i.test(lines.text("straight edges") ?? ""),
    ...(wished === null ? {} : { wanted: wished.mm, named: wished.named }),
    ...(layout === undefined ? {} : { layout }),
    ...(have === undefined ? {} : { have }),
    ...(seed === undefined ? {} : { seed }),
    ...(pair === undefined ? {} : { pairMm: readLength(pair, "Pair") }),
    ...(larger === undefined ? {} : { larger: readLarger(larger, pieces.pieceMm) }),
    ...(colours === undefined ? {} : { colours: readColours(colours) }),
  })
}

function borderOf(text: string): number {
  const border = linesOf(text).text("border")
  return border === undefined ? 0 : readLength(border, "Border")
}

function drawnPlan(plan: BlanketPlan, text: string, title: string) {
  return {
    table:
      plan.colours === null
        ? null
        : {
            label: "Colours",
            head: ["Pieces", "Colour"],
            rows: plan.colours.colours.map(({ name, pieces }) => [String(pieces), name]),
          },
    notes: plan.notes,
    drawing: layoutSvg(plan.layout, { shared: plan.colours, borderMm: borderOf(text), title }),
  }
}
