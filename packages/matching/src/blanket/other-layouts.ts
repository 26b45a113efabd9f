// Layouts of pieces that do not fill a plane in rows by themselves: octagons and circles with fillers between them, and squares
// that stand on a corner with halves along the edges and quarters in the corners. mm from the upper left corner.

import { RoundwrightError, requirePositive } from "@roundwright/numerics"
import type { Layout, PieceShape, PlacedPiece } from "./layout.ts"

type Point = readonly [number, number]

const mostPieces = 6000

function piece(
  shape: PieceShape,
  corners: readonly Point[],
  row: number,
  column: number,
): PlacedPiece {
  const mean = (k: 0 | 1) => corners.reduce((sum, one) => sum + one[k], 0) / corners.length
  return { shape, corners, centre: [mean(0), mean(1)], row, column, size: 1 }
}

/** Octagons in a grid, a small square between every four; its side is the octagon's: across / (1 + root 2). */
export function octagonsInRows(rows: number, columns: number, pitch: number): Layout {
  return withFillers("octagon", rows, columns, pitch, 8, Math.PI / 8)
}

/** Circles in a grid; what lies between four is filled by a small piece. */
export function circlesInRows(rows: number, columns: number, pitch: number): Layout {
  return withFillers("circle", rows, columns, pitch, 32, 0)
}

function withFillers(
  shape: "octagon" | "circle",
  rows: number,
  columns: number,
  pitch: number,
  corners: number,
  turn: number,
): Layout {
  check(rows, columns, pitch)
  const radius = pitch / 2 / (shape === "octagon" ? Math.cos(Math.PI / 8) : 1)
  const pieces: PlacedPiece[] = []
  for (let row = 0; row < rows; row += 1)
    for (let column = 0; column < columns; column += 1) {
      const [x, y] = [(column + 0.5) * pitch, (row + 0.5) * pitch]
      const around = Array.from({ length: corners }, (_, k): Point => {
        const angle = (2 * Math.PI * k) / corners + turn
        return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)]
      })
      pieces.push(piece(shape, around, row, column))
    }
  // From the middle of a gap to its points: half the diagonal of the small square between octagons.
  const reach =
    shape === "octagon" ? pitch / (1 + Math.SQRT2) / Math.SQRT2 : pitch * (Math.SQRT1_2 - 0.5)
  for (let row = 1; row < rows; row += 1)
    for (let column = 1; column < columns; column += 1)
      pieces.push(piece("filler", diamond(column * pitch, row * pitch, reach), row, column))
  return {
    widthMm: columns * pitch,
    heightMm: rows * pitch,
    pieces,
    counts: countsOf(pieces),
    seams:
      (rows - 1) * columns +
      rows * (columns - 1) +
      (shape === "octagon" ? 4 * (rows - 1) * (columns - 1) : 0),
  }
}

/** Squares on a corner, `columns` in the outer rows and one fewer in the rows between. @param side of a square, mm */
export function squaresOnPoint(rows: number, columns: number, side: number): Layout {
  check(rows, columns, side)
  const wide = side * Math.SQRT2
  const pieces: PlacedPiece[] = []
  for (let row = 0; row < rows; row += 1)
    for (let column = 0; column < columns; column += 1)
      pieces.push(
        piece(
          "square",
          diamond((column + 0.5) * wide, (row + 0.5) * wide, wide / 2),
          2 * row,
          column,
        ),
      )
  for (let row = 1; row < rows; row += 1)
    for (let column = 1; column < columns; column += 1)
      pieces.push(
        piece("square", diamond(column * wide, row * wide, wide / 2), 2 * row - 1, column),
      )
  const [width, height] = [columns * wide, rows * wide]
  for (let column = 1; column < columns; column += 1)
    for (const [y, way] of [
      [0, 1],
      [height, -1],
    ] as const)
      pieces.push(
        piece(
          "half-square",
          [
            [(column - 0.5) * wide, y],
            [(column + 0.5) * wide, y],
            [column * wide, y + (way * wide) / 2],
          ],
          way > 0 ? 0 : 2 * rows,
          column,
        ),
      )
  for (let row = 1; row < rows; row += 1)
    for (const [x, way] of [
      [0, 1],
      [width, -1],
    ] as const)
      pieces.push(
        piece(
          "half-square",
          [
            [x, (row - 0.5) * wide],
            [x, (row + 0.5) * wide],
            [x + (way * wide) / 2, row * wide],
          ],
          2 * row,
          way > 0 ? 0 : columns,
        ),
      )
  for (const [x, y, right, down] of [
    [0, 0, 1, 1],
    [width, 0, -1, 1],
    [0, height, 1, -1],
    [width, height, -1, -1],
  ] as const)
    pieces.push(
      piece(
        "quarter-square",
        [
          [x, y],
          [x + (right * wide) / 2, y],
          [x, y + (down * wide) / 2],
        ],
        down > 0 ? 0 : 2 * rows,
        right > 0 ? 0 : columns,
      ),
    )
  const squares = rows * columns + (rows - 1) * (columns - 1)
  const halves = 2 * (rows - 1) + 2 * (columns - 1)
  return {
    widthMm: width,
    heightMm: height,
    pieces,
    counts: countsOf(pieces),
    // Every side of a square is a seam; between two squares it is counted once.
    seams: (4 * squares + 2 * halves + 4) / 2,
  }
}

function diamond(x: number, y: number, reach: number): Point[] {
  return [
    [x, y - reach],
    [x + reach, y],
    [x, y + reach],
    [x - reach, y],
  ]
}

function countsOf(pieces: readonly PlacedPiece[]): Layout["counts"] {
  const shapes = [...new Set(pieces.map(({ shape }) => shape))]
  return shapes.map((shape) => ({
    shape,
    size: 1,
    count: pieces.filter((one) => one.shape === shape).length,
  }))
}

function check(rows: number, columns: number, pitch: number): void {
  requirePositive(pitch, "The size of a piece")
  if (!Number.isInteger(rows) || !Number.isInteger(columns) || rows < 1 || columns < 1)
    throw new RoundwrightError("bad-count", `There cannot be ${rows} rows of ${columns}.`, {
      hint: "Give whole numbers above 0.",
    })
  if (2 * rows * columns > mostPieces)
    throw new RoundwrightError("too-many-pieces", `${rows} rows of ${columns} are not laid out.`, {
      hint: "Check the units of both sizes.",
    })
}
