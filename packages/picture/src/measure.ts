// From a picture to its measurements: piece, centre, outline, rings with counts.

import { RoundwrightError } from "@roundwright/numerics"
import { type CentreFound, findCentre } from "./centre.ts"
import { countRing } from "./count-ring.ts"
import { evenLight, median } from "./even.ts"
import { toGiven } from "./given.ts"
import { type Box, cutOut, type GreyPicture, type Point, shrink } from "./grey.ts"
import { type Homography, invert, project } from "./homography.ts"
import { findOutline, type Outline, reachRound } from "./outline.ts"
import { straightenByRegularity } from "./regularity.ts"
import { ringCentre } from "./ring-centre.ts"
import { findRings, type RingFound } from "./rings.ts"
import { roundView } from "./round-view.ts"
import { type Row, unrollPiece } from "./rows.ts"
import { findSilhouette, type Silhouette } from "./silhouette.ts"
import { straighten } from "./straighten.ts"
import { boxAtTap } from "./tapped.ts"
import { cornersView, type View } from "./view.ts"

export interface MeasureOptions {
  /** The part of the picture that holds one motif. */
  readonly box?: Box
  /** A place on one of several motifs, in pixels of the picture; a box goes before it. */
  readonly tap?: Point
  /** The centre set by hand, in pixels of the picture. */
  readonly centre?: Point
  /** Four corners of something square, in order round it, in pixels of the picture: the view is made straight by them. */
  readonly corners?: readonly Point[]
  /** Take the view as it is: it was taken from right above. */
  readonly asItIs?: boolean
  /** The piece is round: the view is made straight by its edge. */
  readonly roundEdge?: boolean
  /** Told what is being done, before it is done. */
  readonly tell?: (doing: MeasuringStage) => void
}

/** What takes time, in order; the view may have the other two done twice. */
export type MeasuringStage = "piece" | "view" | "rings"

export interface PictureMeasurement {
  /** Pixels of the working picture a pixel of the picture given. */
  readonly scale: number
  /** Where the box begins in the picture given. */
  readonly offset: Point
  readonly view: View
  /** Evened, thread positive. */
  readonly evened: GreyPicture
  readonly silhouette: Silhouette
  /** In the straight picture, as all radii are. */
  readonly centre: CentreFound
  /** In the picture given. */
  readonly centreGiven: Point
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
  const box =
    options.box ??
    (options.tap
      ? boxAtTap(picture, options.tap)
      : { x: 0, y: 0, width: picture.width, height: picture.height })
  const { picture: working, scale } = shrink(cutOut(picture, box), workingSide)
  const offset = { x: Math.max(0, Math.round(box.x)), y: Math.max(0, Math.round(box.y)) }
  const toWorking = (p: Point): Point => ({
    x: (p.x - offset.x + 0.5) * scale - 0.5,
    y: (p.y - offset.y + 0.5) * scale - 0.5,
  })
  const place = { scale, offset, toWorking }
  const { tell = () => {} } = options
  tell("piece")
  if (options.roundEdge === true) return measureStraight(roundView(working), place, options)
  if (options.corners)
    return measureStraight(cornersView(working, options.corners.map(toWorking)), place, options)
  const raw = measureView(asItIs(working), place, options)
  if (options.asItIs === true) return withRings(raw)
  const { centre, outline, evened } = raw
  const reach = Math.min(outline.cornerPx, 1.05 * outline.sidePx)
  tell("view")
  const found = straightenByRegularity(evened, raw.silhouette, centre, reach)
  const asSeen = () => withRings({ ...raw, view: { ...raw.view, regular: found } })
  if (found.foreshortening > noTilt || found.regularity < leastGain * found.before) return asSeen()
  const view: View = {
    by: "regularity",
    picture: straighten(working, found.toPicture, working.width, working.height),
    toWorking: found.toPicture,
    regular: found,
  }
  const straight = measureView(view, place, options)
  const clearer =
    straight.centre.clarity >= clearEnough ||
    straight.centre.clarity >= clearerBy * raw.centre.clarity
  return clearer && hasRings(straight) ? straight : asSeen()
}

/** Solid fabric repeats too faintly to tell its view: the straight rings have to be clear, or much clearer than before. */
const [clearEnough, clearerBy] = [0.25, 1.5]

/** A square foreshortened less than this is straight enough: a percent of unroundness costs no count. */
const noTilt = 0.985
/** The straight view has to be more regular than the picture by this much. */
const leastGain = 1.2

/** One ring at least has to be as sure and as clear as this, or there is no motif. */
const [leastSure, leastComb] = [0.7, 0.12]
/** A circle varies by this much of the picture's spread, as standard deviation, or nothing can repeat on it. */
const leastTexture = 0.15
const wellWithin = 0.8

interface Placing {
  readonly scale: number
  readonly offset: Point
  readonly toWorking: (p: Point) => Point
}

const level: Homography = [1, 0, 0, 0, 1, 0, 0, 0, 1]

function asItIs(working: GreyPicture): View {
  return { by: "as it is", picture: working, toWorking: level }
}

function measureStraight(view: View, place: Placing, options: MeasureOptions): PictureMeasurement {
  return withRings(measureView(view, place, options))
}

/** @throws RoundwrightError `no-rings` */
function withRings(measured: PictureMeasurement): PictureMeasurement {
  if (hasRings(measured)) return measured
  throw new RoundwrightError("no-rings", "No ring in the picture repeats round a centre.", {
    hint: "Is a motif worked in rounds in it, whole, and the only one? Give a box round one, or its centre.",
  })
}

/** Standard deviation round a circle of what is left when light that falls from one side is taken off: mean, cosine and sine. */
function spreadOf(row: Float64Array): number {
  const [mean, cosine, sine] = [(_: number) => 1, Math.cos, Math.sin].map(
    (wave) =>
      row.reduce((sum, value, k) => sum + value * wave((2 * Math.PI * k) / row.length), 0) /
      row.length,
  ) as [number, number, number]
  const square = row.reduce((sum, value) => sum + (value - mean) ** 2, 0) / row.length
  return Math.sqrt(Math.max(0, square - 2 * (cosine ** 2 + sine ** 2)))
}

function hasRings({ rows, rings, outline }: PictureMeasurement): boolean {
  const texture = median(
    rows
      .filter((row) => row.radius < wellWithin * outline.sidePx)
      .map(({ byAngle }) => spreadOf(byAngle)),
  )
  return (
    texture >= leastTexture &&
    rings.some((ring) => ring.sureness >= leastSure && (ring.signs?.comb ?? 0) >= leastComb)
  )
}

function measureView(view: View, place: Placing, options: MeasureOptions): PictureMeasurement {
  const working = view.picture
  const silhouette = findSilhouette(working)
  if (silhouette.share < leastShare)
    throw new RoundwrightError("no-piece", "Nothing in the picture stands out from its ground.", {
      hint: "Lay the piece on a plain ground of another brightness, or give a box round it.",
    })
  const even = evenLight(working, silhouette.mask)
  const evened = silhouette.light ? even : { ...even, values: even.values.map((value) => -value) }
  const centre: CentreFound = options.centre
    ? {
        ...project(invert(view.toWorking), place.toWorking(options.centre)),
        score: 1,
        clarity: 1,
        by: "hand",
      }
    : findCentre(evened, silhouette)
  const reach = reachRound(silhouette, working.width, working.height, centre)
  const outline = findOutline(reach)
  options.tell?.("rings")
  const rows = unrollPiece({ evened, centre, outline })
  const rings = findRings(rows, outline.corners, ringCentre(evened, centre))
  const given = { scale: place.scale, offset: place.offset, view }
  const centreGiven = toGiven(given, centre)
  return { ...given, silhouette, evened, centre, centreGiven, outline, rows, rings }
}

const leastShare = 0.01

/** Count of the rows between two radii of the working picture, for a ring whose bounds are given. */
export function countBetween(measurement: PictureMeasurement, innerPx: number, outerPx: number) {
  const rows = measurement.rows.filter((row) => row.radius >= innerPx && row.radius <= outerPx)
  return rows.length < 3
    ? null
    : countRing(
        rows,
        measurement.outline.corners,
        ringCentre(measurement.evened, measurement.centre),
      )
}
