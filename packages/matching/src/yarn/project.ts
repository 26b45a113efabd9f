// The yarn of a whole blanket of one motif: pieces in rows, their joins and a border, in one estimate.

import type { StitchKind } from "@roundwright/stitches"
import type { PieceNow } from "../ways/piece.ts"
import { estimateYarn, isSolid, type YarnRequest } from "./estimate.ts"
import { type JoinKind, seamsOfGrid } from "./joins.ts"
import { yarnOfStitch } from "./stitch-yarn.ts"
import type { YarnEstimate } from "./yarn-result.ts"

export interface ProjectRequest
  extends Pick<YarnRequest, "weighed" | "skein" | "colours" | "tails" | "reserve" | "leftGrams"> {
  readonly pieces?: number
  /** Rows and columns; as near a square as the pieces allow where absent. */
  readonly layout?: readonly [rows: number, columns: number]
  readonly join?: JoinKind
  /** Stitch of each border round, from the inside out. */
  readonly border?: readonly StitchKind[]
}

/** @throws RoundwrightError what `estimateYarn` throws */
export function projectYarn(piece: PieceNow, request: ProjectRequest): YarnEstimate {
  const { motif, gauge, now } = piece
  const { join, border, layout, ...shared } = request
  const [rows, columns] = layout ?? gridOf(request.pieces ?? 1)
  const pieces = request.pieces ?? rows * columns
  const side = now.stitchesPerSide
  const stitchesPerSide = side ?? Math.round(now.stitches / 4)
  const seams = Math.max(0, seamsOfGrid(rows, columns) - (rows * columns - pieces))
  const along = 2 * (rows + columns) * (stitchesPerSide + 1)
  // Each round of a border is eight stitch heights longer; the stitches in the corners are among them.
  const borderSc = border?.reduce(
    (sum, kind, round) => sum + yarnOfStitch(kind) * (along + 8 * (round + 1)),
    0,
  )
  const areaMm2 = pieceArea(now)
  return estimateYarn(motif, gauge, {
    ...shared,
    pieces,
    ...(join && pieces > 1 ? { join: { kind: join, seams, stitchesPerSide } } : {}),
    ...(borderSc === undefined ? {} : { borderSc }),
    areaMm2,
    solid: isSolid(motif),
  })
}

/** Rows and columns nearest to a square that hold so many pieces. */
export function gridOf(pieces: number): [number, number] {
  const rows = Math.max(1, Math.round(Math.sqrt(pieces)))
  for (let r = rows; r > Math.sqrt(pieces) / 1.6; r -= 1)
    if (pieces % r === 0) return [r, pieces / r]
  return [rows, Math.ceil(pieces / rows)]
}

/** Of a regular polygon of that many corners across, or a disc, mm2. */
export function pieceArea({
  corners,
  acrossMm,
}: {
  readonly corners: number
  readonly acrossMm: number
}): number {
  const reach = acrossMm / 2
  return corners >= 3 && corners <= 8
    ? corners * reach ** 2 * Math.tan(Math.PI / corners)
    : Math.PI * reach ** 2
}
