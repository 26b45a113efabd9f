// Squares of two sizes that meet only over several: three small along two large make blocks of nine small or four large. Blocks
// of both kinds are laid out as squares of one size, those of the large ones spread over the blanket.

import { RoundwrightError } from "@roundwright/numerics"
import { type Layout, mixedSquares, type PlacedPiece, squaresInRows } from "./layout.ts"

/** Small pieces along a block, and large ones. */
export interface Meeting {
  readonly small: number
  readonly large: number
}

const mostAlong = 6

/** Fewest small and large pieces that come to one length; null where none does so within what joining takes up. */
export function meetingOf(ratio: number, within = 0.04): Meeting | null {
  for (let large = 1; large < mostAlong; large += 1) {
    const small = Math.round(ratio * large)
    if (small <= large || small > mostAlong) continue
    if (Math.abs((ratio * large) / small - 1) <= within) return { small, large }
  }
  return null
}

/**
 * @param rows of the small @param pitch of the small, mm @param count large pieces wished for
 * @throws RoundwrightError `no-room`
 */
export function mixedBlocks(
  rows: number,
  columns: number,
  pitch: number,
  { small, large }: Meeting,
  count: number,
): Layout {
  const [down, across] = [rows, columns].map((many) => Math.max(1, Math.round(many / small))) as [
    number,
    number,
  ]
  const block = small * pitch
  const blocks = Math.round(count / large ** 2)
  if (blocks < 1 || blocks > down * across)
    throw new RoundwrightError(
      "no-room",
      `${count} large pieces make ${(count / large ** 2).toFixed(1)} blocks of ${large} by ${large}, where ${down * across} blocks have room.`,
      { hint: `Take a number of them that ${large ** 2} divides, and no more than fit.` },
    )
  // Spread as one spreads a few large squares among small ones: the first so many of the order in which they are put.
  const spread = spreadOver(down, across, blocks)
  const pieces: PlacedPiece[] = []
  for (let row = 0; row < down; row += 1)
    for (let column = 0; column < across; column += 1) {
      const many = spread.has(`${row}:${column}`) ? large : small
      const size = many === large ? small / large : 1
      for (const one of squaresInRows(many, many, block / many).pieces)
        pieces.push({
          ...one,
          corners: one.corners.map(([x, y]) => [x + column * block, y + row * block] as const),
          centre: [one.centre[0] + column * block, one.centre[1] + row * block],
          row: row * small + (one.row * small) / many,
          column: column * small + (one.column * small) / many,
          size,
        })
    }
  const counted = (size: number) => pieces.filter((one) => one.size === size).length
  const bigger = small / large
  return {
    widthMm: across * block,
    heightMm: down * block,
    pieces,
    counts: [
      { shape: "square", size: bigger, count: counted(bigger) },
      { shape: "square", size: 1, count: counted(1) },
    ],
    seams: seamsOf(spread, down, across, { small, large }),
  }
}

function spreadOver(down: number, across: number, blocks: number): Set<string> {
  const doubled = mixedSquares(2 * down, 2 * across, 1, [{ size: 2, count: 1 }])
  const first = doubled.pieces.find(({ size }) => size === 2)!
  const chosen: [number, number][] = [[Math.floor(first.row / 2), Math.floor(first.column / 2)]]
  const all = Array.from({ length: down * across }, (_, k): [number, number] => [
    Math.floor(k / across),
    k % across,
  ])
  while (chosen.length < blocks) {
    const room = ([r, c]: readonly [number, number]) =>
      Math.min(...chosen.map(([row, column]) => Math.hypot(r - row, c - column)))
    chosen.push(all.reduce((best, one) => (room(one) > room(best) ? one : best)))
  }
  return new Set(chosen.slice(0, blocks).map(([row, column]) => `${row}:${column}`))
}

/** Sides joined: within blocks and, where unlike ones meet, as many as the smaller pieces have. */
function seamsOf(
  spread: ReadonlySet<string>,
  down: number,
  across: number,
  { small, large }: Meeting,
): number {
  const along = (row: number, column: number) => (spread.has(`${row}:${column}`) ? large : small)
  let seams = 0
  for (let row = 0; row < down; row += 1)
    for (let column = 0; column < across; column += 1) {
      const many = along(row, column)
      seams += 2 * many * (many - 1)
      if (column + 1 < across) seams += Math.max(many, along(row, column + 1))
      if (row + 1 < down) seams += Math.max(many, along(row + 1, column))
    }
  return seams
}
