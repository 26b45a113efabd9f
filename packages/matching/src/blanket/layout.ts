// Where every piece of a blanket lies, mm from its upper left corner, x to the right and y down. Squares in rows; hexagons
// standing on a point, every other row moved half a piece, with half pieces at the ends of the shorter rows and triangles
// along top and bottom where straight edges are wished for; squares of several sizes on one grid.

import { RoundwrightError, requirePositive } from "@roundwright/numerics"

export type PieceShape =
  | "square"
  | "hexagon"
  | "half-hexagon"
  | "edge-triangle"
  | "corner-triangle"
  | "octagon"
  | "circle"
  | "filler"
  | "half-square"
  | "quarter-square"

export interface PlacedPiece {
  readonly shape: PieceShape
  /** Corners in order. */
  readonly corners: readonly (readonly [number, number])[]
  readonly centre: readonly [number, number]
  readonly row: number
  readonly column: number
  /** Side of a square in units of the smallest; 1 for all else. */
  readonly size: number
}

export interface Layout {
  readonly widthMm: number
  readonly heightMm: number
  readonly pieces: readonly PlacedPiece[]
  /** How many of each shape and size. */
  readonly counts: readonly {
    readonly shape: PieceShape
    readonly size: number
    readonly count: number
  }[]
  /** Sides that two pieces share. */
  readonly seams: number
}

/** A blanket of more pieces than this is a mistake of the unit. */
const mostPieces = 6000

/**
 * @param pitch from one piece's middle to the next, mm @param rowPitch the same down the blanket; of rectangles another
 * @throws RoundwrightError `bad-count`, `too-many-pieces`
 */
export function squaresInRows(
  rows: number,
  columns: number,
  pitch: number,
  rowPitch = pitch,
): Layout {
  checkGrid(rows, columns, Math.min(pitch, rowPitch))
  const tall = rowPitch / pitch
  const pieces = grid(rows, columns).map(([row, column]) =>
    taller(square(row, column, 1, pitch), tall),
  )
  return {
    widthMm: columns * pitch,
    heightMm: rows * rowPitch,
    pieces,
    counts: countsOf(pieces),
    seams: (rows - 1) * columns + rows * (columns - 1),
  }
}

export interface HexagonOptions {
  /** Halves at the ends of the shorter rows; true by default. */
  readonly halves?: boolean
  /** Triangles along top and bottom; false by default: the points stay. */
  readonly triangles?: boolean
}

/**
 * Hexagons standing on a point, `columns` in the first row; the rows between hold one fewer and two halves.
 * @param pitch from flat side to flat side, joins included, mm
 */
export function hexagonsOffset(
  rows: number,
  columns: number,
  pitch: number,
  { halves = true, triangles = false }: HexagonOptions = {},
): Layout {
  checkGrid(rows, columns, pitch)
  const side = pitch / Math.sqrt(3)
  const pieces: PlacedPiece[] = []
  for (let row = 0; row < rows; row += 1) {
    const y = side + row * 1.5 * side
    const shorter = row % 2 === 1
    const many = shorter ? columns - 1 : columns
    for (let column = 0; column < many; column += 1) {
      const x = (column + (shorter ? 1 : 0.5)) * pitch
      pieces.push({
        shape: "hexagon",
        corners: hexagon(x, y, side),
        centre: [x, y],
        row,
        column,
        size: 1,
      })
    }
    if (shorter && halves)
      for (const [x, way] of [
        [0, 1],
        [columns * pitch, -1],
      ] as const)
        pieces.push({
          shape: "half-hexagon",
          corners: halfHexagon(x, y, side, way),
          centre: [x + (way * pitch) / 4, y],
          row,
          column: way > 0 ? -1 : columns,
          size: 1,
        })
  }
  const heightMm = 2 * side + (rows - 1) * 1.5 * side
  if (triangles)
    for (const [y, way, row] of [
      [0, 1, 0],
      [heightMm, -1, rows - 1],
    ] as const)
      pieces.push(...trianglesAlong(y, way, row, columns, pitch, side))
  return {
    widthMm: columns * pitch,
    heightMm,
    pieces,
    counts: countsOf(pieces),
    seams: sharedSides(pieces, pitch),
  }
}

/** Between the points of a row: apex inward, base on the straight edge; half of one at each end of a full row. */
function trianglesAlong(
  y: number,
  way: 1 | -1,
  row: number,
  columns: number,
  pitch: number,
  side: number,
): PlacedPiece[] {
  const deep = y + (way * side) / 2
  const shorter = row % 2 === 1
  const first = shorter ? 0 : 0.5
  const many = shorter ? columns : columns - 1
  const found: PlacedPiece[] = Array.from({ length: many }, (_, k) => {
    const x = (first + k) * pitch
    const corners = [
      [x, y],
      [x + pitch, y],
      [x + pitch / 2, deep],
    ] as const
    return {
      shape: "edge-triangle",
      corners,
      centre: [x + pitch / 2, y + (way * side) / 6],
      row,
      column: k,
      size: 1,
    }
  })
  if (shorter) return found
  for (const [from, to] of [
    [0, 0.5],
    [columns, columns - 0.5],
  ] as const)
    found.push({
      shape: "corner-triangle",
      corners: [
        [from * pitch, y],
        [to * pitch, y],
        [from * pitch, deep],
      ],
      centre: [(from * 2 + to) * (pitch / 3), y + (way * side) / 6],
      row,
      column: from === 0 ? -1 : columns,
      size: 1,
    })
  return found
}

export interface SizedCount {
  /** Side in units of the smallest. */
  readonly size: number
  readonly count: number
}

/**
 * Squares of several sizes on one grid of the smallest: the large ones first, spread over the blanket, the smallest in what is
 * left. @returns the layout and how many of the smallest are still to make
 */
export function mixedSquares(
  rows: number,
  columns: number,
  pitch: number,
  larger: readonly SizedCount[],
): Layout {
  checkGrid(rows, columns, pitch)
  const taken = new Set<string>()
  const pieces: PlacedPiece[] = []
  const free = (row: number, column: number, size: number) => {
    if (row + size > rows || column + size > columns) return false
    for (let r = row; r < row + size; r += 1)
      for (let c = column; c < column + size; c += 1) if (taken.has(`${r}:${c}`)) return false
    return true
  }
  const put = (row: number, column: number, size: number) => {
    for (let r = row; r < row + size; r += 1)
      for (let c = column; c < column + size; c += 1) taken.add(`${r}:${c}`)
    pieces.push(square(row, column, size, pitch))
  }
  for (const { size, count } of [...larger].sort((a, b) => b.size - a.size)) {
    for (let k = 0; k < count; k += 1) {
      const spot = grid(rows, columns)
        .filter(([row, column]) => free(row, column, size))
        .map((at) => ({ at, room: roomAround(at, size, pieces, rows, columns) }))
        .sort((a, b) => b.room - a.room || a.at[0] - b.at[0] || a.at[1] - b.at[1])[0]
      if (!spot)
        throw new RoundwrightError(
          "no-room",
          `Only ${k} of ${count} pieces ${size} wide find room in ${rows} rows of ${columns}.`,
          {
            hint: "Take a larger layout, or fewer large pieces.",
            numbers: { rows, columns, size },
          },
        )
      put(...spot.at, size)
    }
  }
  for (const [row, column] of grid(rows, columns)) if (free(row, column, 1)) put(row, column, 1)
  pieces.sort((a, b) => a.row - b.row || a.column - b.column)
  return {
    widthMm: columns * pitch,
    heightMm: rows * pitch,
    pieces,
    counts: countsOf(pieces),
    seams: sharedSides(pieces, pitch),
  }
}

/** How far a spot lies from every other large piece, in units; the middle of an empty blanket is best. */
function roomAround(
  [row, column]: readonly [number, number],
  size: number,
  pieces: readonly PlacedPiece[],
  rows: number,
  columns: number,
): number {
  const centre = [row + size / 2, column + size / 2] as const
  if (pieces.length === 0) return -Math.hypot(centre[0] - rows / 2, centre[1] - columns / 2)
  return Math.min(
    ...pieces.map((one) =>
      Math.hypot(centre[0] - (one.row + one.size / 2), centre[1] - (one.column + one.size / 2)),
    ),
  )
}

function square(row: number, column: number, size: number, pitch: number): PlacedPiece {
  const [x, y, side] = [column * pitch, row * pitch, size * pitch]
  return {
    shape: "square",
    corners: [
      [x, y],
      [x + side, y],
      [x + side, y + side],
      [x, y + side],
    ],
    centre: [x + side / 2, y + side / 2],
    row,
    column,
    size,
  }
}

/** A rectangle in place of a square. */
function taller(piece: PlacedPiece, factor: number): PlacedPiece {
  if (factor === 1) return piece
  const high = ([x, y]: readonly [number, number]) => [x, y * factor] as const
  return { ...piece, corners: piece.corners.map(high), centre: high(piece.centre) }
}

function hexagon(x: number, y: number, side: number): [number, number][] {
  return Array.from({ length: 6 }, (_, k) => {
    const angle = (Math.PI / 3) * k - Math.PI / 2
    return [x + side * Math.cos(angle), y + side * Math.sin(angle)]
  })
}

/** Cut from point to point; `way` 1 keeps the half to the right of x. */
function halfHexagon(x: number, y: number, side: number, way: 1 | -1): [number, number][] {
  const deep = way * side * Math.sin(Math.PI / 3)
  return [
    [x, y - side],
    [x + deep, y - side / 2],
    [x + deep, y + side / 2],
    [x, y + side],
  ]
}

function grid(rows: number, columns: number): [number, number][] {
  return Array.from({ length: rows * columns }, (_, k) => [Math.floor(k / columns), k % columns])
}

function countsOf(pieces: readonly PlacedPiece[]): Layout["counts"] {
  const found = new Map<string, { shape: PieceShape; size: number; count: number }>()
  for (const { shape, size } of pieces) {
    const key = `${shape}:${size}`
    const one = found.get(key) ?? { shape, size, count: 0 }
    found.set(key, { ...one, count: one.count + 1 })
  }
  return [...found.values()]
}

/** Pairs of pieces that touch along a stretch, and so are joined there. */
export function neighboursOf(pieces: readonly PlacedPiece[], pitch: number): [number, number][] {
  const near = 1e-3 * pitch
  const found: [number, number][] = []
  pieces.forEach((a, i) => {
    for (let j = i + 1; j < pieces.length; j += 1) {
      const b = pieces[j]!
      const far = (a.size + b.size) * pitch
      if (Math.hypot(a.centre[0] - b.centre[0], a.centre[1] - b.centre[1]) > far) continue
      if (sharesSide(a, b, near)) found.push([i, j])
    }
  })
  return found
}

function sharedSides(pieces: readonly PlacedPiece[], pitch: number): number {
  return neighboursOf(pieces, pitch).length
}

/** Two sides that lie along one line and overlap. */
function sharesSide(a: PlacedPiece, b: PlacedPiece, near: number): boolean {
  return sidesOf(a).some(([p, q]) => sidesOf(b).some(([r, s]) => overlap(p, q, r, s) > near * 10))
}

type Point = readonly [number, number]

function sidesOf({ corners }: PlacedPiece): [Point, Point][] {
  return corners.map((corner, k) => [corner, corners[(k + 1) % corners.length]!])
}

/** Length that side rs shares with side pq; 0 where they do not lie along one line. */
function overlap(p: Point, q: Point, r: Point, s: Point): number {
  const length = Math.hypot(q[0] - p[0], q[1] - p[1])
  const [ux, uy] = [(q[0] - p[0]) / length, (q[1] - p[1]) / length]
  const off = (t: Point) => Math.abs((t[0] - p[0]) * uy - (t[1] - p[1]) * ux)
  if (off(r) > length * 1e-3 || off(s) > length * 1e-3) return 0
  const along = (t: Point) => (t[0] - p[0]) * ux + (t[1] - p[1]) * uy
  const [from, to] = [Math.min(along(r), along(s)), Math.max(along(r), along(s))]
  return Math.min(length, to) - Math.max(0, from)
}

function checkGrid(rows: number, columns: number, pitch: number): void {
  requirePositive(pitch, "The size of a piece")
  for (const [value, what] of [
    [rows, "rows"],
    [columns, "columns"],
  ] as const)
    if (!Number.isInteger(value) || value < 1)
      throw new RoundwrightError("bad-count", `There cannot be ${value} ${what}.`, {
        hint: "Give whole numbers above 0.",
      })
  if (rows * columns > mostPieces)
    throw new RoundwrightError(
      "too-many-pieces",
      `A blanket of ${rows * columns} pieces is not laid out.`,
      {
        hint: `At most ${mostPieces} are; check the units of both sizes.`,
      },
    )
}
