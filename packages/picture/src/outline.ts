// The outline of the piece: round, or k sides (straight, hollow or bulging), with the radius to the middle
// of a side and to a corner. Read from how far the silhouette reaches in each direction.

import type { Point } from "./grey.ts"
import type { Silhouette } from "./silhouette.ts"
import type { Contour } from "./unroll.ts"

export interface Outline {
  readonly kind: "round" | "polygon"
  /** Sides; 0 for a round piece. */
  readonly corners: number
  /** Reach to the middle of a side; the mean reach of a round piece. */
  readonly sidePx: number
  /** Reach to a corner; the greatest reach of a round piece. */
  readonly cornerPx: number
  /** Direction of one corner, radians from x towards y. */
  readonly cornerAngle: number
  /** Mean distance of the silhouette from this outline, of the side's reach. */
  readonly misfit: number
}

const directions = 360
const cornersTried = [3, 4, 5, 6, 8] as const
/** A polygon has to fit this much better than the circle. */
const polygonShare = 0.75
/** Eight corners drawn out further than this are lobes of a round piece. */
const [manyCorners, mostBend] = [8, 1.4]
/** Bend of a side: 1 is straight, above 1 hollow, below 1 bulging. */
const bends = Array.from({ length: 29 }, (_, i) => 0.3 + 0.05 * i)

/** How far the piece reaches in each direction, from direction 0. */
export function reachRound(
  silhouette: Silhouette,
  width: number,
  height: number,
  centre: Point,
): Float64Array {
  const reach = new Float64Array(directions)
  const furthest = Math.hypot(width, height)
  for (let i = 0; i < directions; i++) {
    const angle = (2 * Math.PI * i) / directions
    const [c, s] = [Math.cos(angle), Math.sin(angle)]
    for (let r = furthest; r > 0; r -= 0.5) {
      const x = Math.round(centre.x + r * c)
      const y = Math.round(centre.y + r * s)
      if (x < 0 || y < 0 || x >= width || y >= height) continue
      if (silhouette.mask[y * width + x] === 1) {
        reach[i] = r
        break
      }
    }
  }
  return reach
}

export function findOutline(reach: Float64Array): Outline {
  const mean = reach.reduce((sum, r) => sum + r, 0) / reach.length
  const round: Outline = {
    kind: "round",
    corners: 0,
    sidePx: mean,
    cornerPx: quantile(reach, 0.98),
    cornerAngle: 0,
    misfit: meanOff(reach, () => mean) / mean,
  }
  const polygons = cornersTried.flatMap((corners) => {
    const cornerAngle = phaseOf(reach, corners)
    return bends.map((bend) => {
      const contour = polygonContour(corners, cornerAngle, bend)
      const shape = Float64Array.from(reach, (_, i) => contour((2 * Math.PI * i) / directions))
      const side =
        shape.reduce((sum, s, i) => sum + s * reach[i]!, 0) /
        shape.reduce((sum, s) => sum + s * s, 0)
      const misfit = meanOff(reach, (i) => side * shape[i]!) / side
      const cornerPx = side * contour(cornerAngle)
      return { kind: "polygon" as const, corners, sidePx: side, cornerPx, cornerAngle, misfit }
    })
  })
  const best = polygons.reduce((a, b) => (b.misfit < a.misfit ? b : a))
  // A round piece whose edge is scalloped is no polygon: the corners must stand out by what straight sides would.
  const straight = 1 / Math.cos(Math.PI / best.corners)
  const lobed =
    best.corners >= manyCorners && bendOf(best.corners, best.cornerPx / best.sidePx) > mostBend
  const standsOut = !lobed && best.cornerPx / best.sidePx - 1 > 0.45 * (straight - 1)
  return standsOut && best.misfit < polygonShare * round.misfit ? best : round
}

/** Radius in each direction as a multiple of the side's; bend 0 is a circle, 1 straight sides. */
export function polygonContour(corners: number, cornerAngle: number, bend: number): Contour {
  const sector = (2 * Math.PI) / corners
  return (angle) => {
    const from = angle - cornerAngle - sector / 2
    const off = from - sector * Math.round(from / sector)
    return 1 + bend * (1 / Math.cos(off) - 1)
  }
}

/** Bend at which the corner stands at `ratio` times the side. */
export function bendOf(corners: number, ratio: number): number {
  return (ratio - 1) / (1 / Math.cos(Math.PI / corners) - 1)
}

function phaseOf(reach: Float64Array, corners: number): number {
  let [re, im] = [0, 0]
  reach.forEach((r, i) => {
    const angle = (2 * Math.PI * i * corners) / directions
    re += r * Math.cos(angle)
    im += r * Math.sin(angle)
  })
  return Math.atan2(im, re) / corners
}

function meanOff(reach: Float64Array, model: (i: number) => number): number {
  return reach.reduce((sum, r, i) => sum + Math.abs(r - model(i)), 0) / reach.length
}

function quantile(values: Float64Array, share: number): number {
  const sorted = Float64Array.from(values).sort()
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0
}
