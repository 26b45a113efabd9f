// How many border stitches go on one side: from the edge's length, from the pieces joined along it, or from the ends of rows.

import { RoundwrightError, requirePositive } from "@roundwright/numerics"
import { type BasicStitch, type Gauge, sizeOf } from "@roundwright/stitches"

/** One side of what is bordered. */
export interface SideCount {
  /** Between the corners. */
  readonly between: number
  /** With a stitch in the corner at either end. */
  readonly withCorners: number
  readonly text: string
}

/** A corner takes the place of one stitch of every side, half at either end: 13 dc = 4 in put 28 on 9 in, where 29.25 go straight. */
const cornerPlaces = 1

/**
 * By the length of the edge, laid flat and not pulled.
 * @throws RoundwrightError `not-positive`, `too-short`
 */
export function sideByLength(edgeMm: number, gauge: Gauge, basic: BasicStitch): SideCount {
  requirePositive(edgeMm, "The length of the edge")
  const { widthMm } = sizeOf({ basic }, gauge, { turned: false })
  const between = Math.round(edgeMm / widthMm - cornerPlaces)
  if (between < 1)
    throw new RoundwrightError("too-short", "The edge is shorter than two stitches.", {
      hint: "Check the unit of its length.",
      numbers: { edgeMm, widthMm },
    })
  return {
    between,
    withCorners: between + 2,
    text: `${between} a side between the corners, by its length (${Math.round(edgeMm / widthMm)} along the whole edge, half of one in either corner)`,
  }
}

export interface JoinedSide {
  readonly pieces: number
  /** Stitches on a side of one piece. */
  readonly stitches: number
  /** Stitches worked into each join; one is usual. */
  readonly perJoin?: number
}

/** By the pieces along it: their own stitches, those into the joins, and one in the corner at either end. @throws RoundwrightError `bad-count` */
export function sideByPieces({ pieces, stitches, perJoin = 1 }: JoinedSide): SideCount {
  for (const [value, what, least] of [
    [pieces, "pieces along a side", 1],
    [stitches, "stitches on a side of a piece", 1],
    [perJoin, "stitches in a join", 0],
  ] as const)
    if (!Number.isInteger(value) || value < least)
      throw new RoundwrightError("bad-count", `There cannot be ${value} ${what}.`, {
        hint: `Give a whole number from ${least} on.`,
      })
  const joins = pieces - 1
  const between = pieces * stitches + joins * perJoin
  return {
    between,
    withCorners: between + 2,
    text:
      joins === 0
        ? `${between} a side between the corners`
        : `${between + 2} a side: ${pieces * stitches} in the pieces, ${joins * perJoin} in the joins, 1 in each corner`,
  }
}

/** Along the ends of rows: as many as their heights hold (2 sc to a row of dc). @throws RoundwrightError `bad-count` */
export function sideByRows(
  rows: number,
  rowStitch: BasicStitch,
  gauge: Gauge,
  basic: BasicStitch,
): SideCount {
  if (!Number.isInteger(rows) || rows < 1)
    throw new RoundwrightError("bad-count", `There cannot be ${rows} rows.`)
  const row = sizeOf({ basic: rowStitch }, gauge, { turned: true }).heightMm
  const { widthMm } = sizeOf({ basic }, gauge, { turned: false })
  const between = Math.max(1, Math.round((rows * row) / widthMm))
  return {
    between,
    withCorners: between + 2,
    text: `${between} along the ends of ${rows} rows, ${(row / widthMm).toFixed(1)} to a row`,
  }
}
