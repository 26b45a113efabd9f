// How many stitches lie flat: the edge of a disc of radius r holds 2 pi r / w of them, that of a polygon of
// k sides at distance r 2 k tan(pi / k) r / w. With depth h a round that is 2 pi h / w more each
// round (6.28 h / w), or 8 h / w for a square.

import { polygonFactor } from "@roundwright/flatness"
import { type Gauge, type StitchKind, sizeOf } from "@roundwright/stitches"

/** Stitches more a round that lie flat, hardly ever a whole number. 0 corners = round. */
export function flatIncrease(kind: StitchKind, gauge: Gauge, corners = 0): number {
  const { heightMm, widthMm } = sizeOf(kind, gauge, { turned: false })
  return (polygonFactor(corners) * heightMm) / widthMm
}

/** Stitches that lie flat on an edge at that distance from the centre, in the middle of a side. */
export function flatCount(kind: StitchKind, gauge: Gauge, radiusMm: number, corners = 0): number {
  const { widthMm } = sizeOf(kind, gauge, { turned: false })
  return (polygonFactor(corners) * radiusMm) / widthMm
}
