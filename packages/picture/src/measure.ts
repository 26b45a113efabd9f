// From a picture to its measurements: piece, centre, outline, rings with counts.

import { RoundwrightError } from "@roundwright/numerics"
import { type CentreFound, findCentre } from "./centre.ts"
import { evenLight } from "./even.ts"
import { type Box, cutOut, type GreyPicture, type Point, shrink } from "./grey.ts"
import { findOutline, type Outline, reachRound } from "./outline.ts"
import { ringCentre } from "./ring-centre.ts"
import { countRing } from "./count-ring.ts"
import { findRings, type RingFound } from "./rings.ts"
import { type Row, unrollPiece } from "./rows.ts"
import { findSilhouette, type Silhouette } from "./silhouette.ts"

export interface MeasureOptions {
  /** The part of the picture that holds one motif. */
  readonly box?: Box
  /** The centre set by hand, in pixels of the picture. */
  readonly centre?: Point
}

export interface PictureMeasurement {
  /** Pixels of the working picture a pixel of the picture given. */
  readonly scale: number
  /** Corner of the box within the picture given. */
  readonly offset: Point
  readonly working: GreyPicture
  /** Evened, thread positive. */
  readonly evened: GreyPicture
  readonly silhouette: Silhouette
  readonly centre: CentreFound
  readonly outline: Outline
  readonly rows: readonly Row[]
  readonly rings: readonly RingFound[]
}

/** Longer side of the working picture: counts need five pixels a stitch, and more costs time without telling more. */
const workingSide = 640

/** @throws RoundwrightError `no-piece` when nothing stands out from its ground, `no-rings` when nothing repeats */
export function measurePicture(
  picture: GreyPicture,
  options: MeasureOptions = {},
): PictureMeasurement {
  const box = options.box ?? { x: 0, y: 0, width: picture.width, height: picture.height }
  const { picture: working, scale } = shrink(cutOut(picture, box), workingSide)
  const offset = { x: Math.max(0, Math.round(box.x)), y: Math.max(0, Math.round(box.y)) }
  const silhouette = findSilhouette(working)
  if (silhouette.share < leastShare)
    throw new RoundwrightError("no-piece", "Nothing in the picture stands out from its ground.", {
      hint: "Lay the piece on a plain ground of another brightness, or give a box round it.",
    })
  const even = evenLight(working)
  const evened = silhouette.light
    ? even
    : { ...even, values: even.values.map((value) => -value) }
  const centre: CentreFound = options.centre
    ? {
        x: (options.centre.x - offset.x + 0.5) * scale - 0.5,
        y: (options.centre.y - offset.y + 0.5) * scale - 0.5,
        score: 1,
        clarity: 1,
        by: "hand",
      }
    : findCentre(evened, silhouette)
  const reach = reachRound(silhouette, working.width, working.height, centre)
  const outline = findOutline(reach)
  const rows = unrollPiece({ evened, centre, outline })
  const rings = findRings(rows, outline.corners, ringCentre(evened, centre))
  return { scale, offset, working, evened, silhouette, centre, outline, rows, rings }
}

const leastShare = 0.01

/** Count of the rows between two radii of the working picture, for a ring whose bounds are given. */
export function countBetween(
  measurement: PictureMeasurement,
  innerPx: number,
  outerPx: number,
) {
  const rows = measurement.rows.filter(
    (row) => row.radius >= innerPx && row.radius <= outerPx,
  )
  return rows.length < 3 ? null : countRing(
        rows,
        measurement.outline.corners,
        ringCentre(measurement.evened, measurement.centre),
      )
}
