// How far the edge is from the centre after each round: in the middle of a side and, where there
// are corners, at a corner. By the laid-out shape where there is one, else by the ledger.

import { cornersSeen } from "@roundwright/assessment"
import type { LedgerRow } from "@roundwright/flatness"
import { findCorners, type Motif } from "@roundwright/motif"
import { requireFinite } from "@roundwright/numerics"
import { type LaidOutShape, measureOutline } from "@roundwright/relaxation"
import {
  hasCorners,
  lengthWords,
  type Reach,
  reachFinding,
  tellOne,
  tellRounds,
} from "./findings.ts"
import { requireSamePiece, unitOf } from "./laid-out-piece.ts"
import { drawableRows, lineWithPoints, nameRoomPx, namesAtEnd } from "./parts.ts"
import { type ChartOptions, type ChartSpec, frameChart, type LengthUnit } from "./spec.ts"

/** By the ledger's radii. @throws RoundwrightError `nothing-to-draw`, `not-finite`, `chart-too-narrow` */
export function reachChart(rows: readonly LedgerRow[], options: ChartOptions = {}): ChartSpec {
  drawableRows(rows)
  const reaches = rows.map(({ round, radiusMm, cornerReachMm }) => {
    return { round, side: radiusMm, corner: cornerReachMm }
  })
  return drawReaches(reaches, "By the growth of the rounds.", options.lengthUnit ?? "mm", options)
}

/**
 * As the piece comes to lie when it is pressed flat; of a round edge half of what it measures across.
 * @throws RoundwrightError `nothing-to-draw`, `not-finite`, `shape-of-another-motif`, `chart-too-narrow`
 */
export function laidOutReachChart(
  motif: Motif,
  shape: LaidOutShape,
  options: ChartOptions = {},
): ChartSpec {
  requireSamePiece(motif, shape.net)
  const corners = findCorners(motif)
  const reaches = motif.rounds.map(({ number }, round): Reach => {
    const outline = measureOutline(shape.net, shape.flat.xy, 2, round, corners[round])
    const cornered = cornersSeen(outline) > 0
    const side = cornered ? outline.sideReachMm : outline.acrossMm / 2
    const corner = cornered ? outline.cornerReachMm : side
    const inUnits = (mm: number) => requireFinite(mm / shape.mmPerUnit, "The reach of a round")
    return { round: number, side: inUnits(side), corner: inUnits(corner) }
  })
  return drawReaches(reaches, "As it lies flat.", unitOf(shape, options), options)
}

function drawReaches(
  reaches: readonly Reach[],
  measured: string,
  unit: LengthUnit,
  options: ChartOptions,
): ChartSpec {
  const corners = hasCorners(reaches)
  const tell = ({ side, corner }: Reach) =>
    corners
      ? `side ${lengthWords(side, unit)}, corner ${lengthWords(corner, unit)}`
      : lengthWords(side, unit)
  const values = reaches.map((reach) => ({ ...reach, told: tellOne(reach, tell) }))
  const last = values.at(-1)!
  const title = reachFinding(reaches, unit)
  const span = Math.max(...values.map((value) => Math.max(value.side, value.corner)))
  const corner = lineWithPoints({
    field: "corner",
    dash: [6, 4],
    shape: "diamond",
    filled: false,
  })
  const marks = corners
    ? "Solid line: middle of a side. Dashed line: corner."
    : "The edge is round: side and corner are the same."
  return frameChart(
    {
      title,
      key: `${measured} ${marks}`,
      description: `${title}. ${measured} Distance from the centre in ${unit}. ${tellRounds(
        reaches,
        tell,
      )}`,
    },
    `distance from the centre, ${unit}`,
    values,
    [
      ...lineWithPoints({
        field: "side",
        dash: [1, 0],
        shape: "circle",
        filled: true,
      }),
      ...(corners ? corner : []),
      ...namesAtEnd(
        corners
          ? [
              { text: "side", value: last.side },
              { text: "corner", value: last.corner },
            ]
          : [{ text: "edge", value: last.side }],
        last.round,
        span,
        "side",
      ),
    ],
    options,
    { rightPx: nameRoomPx },
  )
}
