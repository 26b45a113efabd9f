// What is asked of a picture, all in pixels of the picture as it is looked at, whether it stands in lines of a
// notebook or in options of a command; and the measuring as it is asked.

import type { DecodedPicture } from "./decoded.ts"
import { type Box, type Point, rescaled } from "./grey.ts"
import { readKnownLength } from "./known-length.ts"
import { type MeasuringStage, measurePicture, type PictureMeasurement } from "./measure.ts"
import { type CountByHand, type PublishedMeasurement, publishMeasurement } from "./published.ts"
import { countsByHand, type MeasurementLines } from "./read-lines.ts"
import { writeLines } from "./write-lines.ts"

export interface PictureAsked {
  /** Left, top, width, height of the part that holds one motif. */
  readonly box: readonly number[] | null
  /** A place on one motif of several; a box goes before it. */
  readonly tap: readonly number[] | null
  /** Four corners of something square, x and y by turns, in order round it. */
  readonly corners: readonly number[] | null
  readonly centre: readonly number[] | null
  readonly view: "as it is" | "round edge" | null
  /** In the words of a line, such as "side 15.2 cm". */
  readonly known: string | null
  readonly counts: ReadonlyMap<number, CountByHand>
}

export function askedBy(lines: MeasurementLines): PictureAsked {
  const { box, tap, corners, centre, view, known } = lines
  return { box, tap, corners, centre, view, known, counts: countsByHand(lines) }
}

/** Tells whether the piece has to be measured anew; counts and the known length are set over what was measured. */
export function measuringKey({ box, tap, corners, centre, view }: PictureAsked): string {
  return JSON.stringify([box, tap, corners, centre, view])
}

/** @throws what `measurePicture` throws */
export function measureAsked(
  { picture, scale }: DecodedPicture,
  { box, tap, corners, centre, view }: PictureAsked,
  tell?: (doing: MeasuringStage) => void,
): PictureMeasurement {
  const inside = (x: number, y: number): Point => rescaled({ x, y }, scale)
  return measurePicture(picture, {
    ...(box ? { box: boxOf(box, scale) } : {}),
    ...(tap ? { tap: inside(tap[0]!, tap[1]!) } : {}),
    ...(centre ? { centre: inside(centre[0]!, centre[1]!) } : {}),
    ...(corners ? { corners: [0, 2, 4, 6].map((i) => inside(corners[i]!, corners[i + 1]!)) } : {}),
    asItIs: view === "as it is",
    roundEdge: view === "round edge",
    ...(tell ? { tell } : {}),
  })
}

function boxOf([x, y, width, height]: readonly number[], scale: number): Box {
  return { x: x! * scale, y: y! * scale, width: width! * scale, height: height! * scale }
}

/** @throws what `publishMeasurement` and `readKnownLength` throw */
export function publishAsked(
  measured: PictureMeasurement,
  { widthPx, heightPx, scale }: Omit<DecodedPicture, "picture">,
  { known, counts }: PictureAsked,
): PublishedMeasurement {
  return publishMeasurement(measured, {
    widthPx,
    heightPx,
    scale,
    counts,
    ...(known === null ? {} : { known: readKnownLength(known) }),
  })
}

/** The measurement as fresh lines, with what was asked in its own words. */
export function linesAsked(
  published: PublishedMeasurement,
  asked: PictureAsked,
  picture: string,
): string[] {
  const { box, tap, corners, known, view } = asked
  return writeLines(published, {
    picture,
    box: box?.join(" "),
    tap: tap?.join(" "),
    corners: corners === null ? undefined : pairs(corners),
    known: known ?? undefined,
    view: view === null ? undefined : view === "round edge" ? "by its round edge" : view,
  })
}

function pairs(numbers: readonly number[]): string {
  return numbers.flatMap((x, i) => (i % 2 === 0 ? [`${x} ${numbers[i + 1]}`] : [])).join(", ")
}
