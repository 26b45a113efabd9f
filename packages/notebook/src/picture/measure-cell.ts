// A picture cell measured: its lines say what is set by hand, the picture gives the rest.

import { unlessRefused } from "@roundwright/numerics"
import {
  askedBy,
  type DecodedPicture,
  leastRead,
  linesAsked,
  type MeasuringStage,
  measureAsked,
  measuringKey,
  mergeLines,
  openQuestions,
  type PictureMeasurement,
  type PublishedMeasurement,
  publishAsked,
  readKnownLength,
  readLines,
  type ShownPiece,
  showPiece,
} from "@roundwright/picture"
import type { AnsweredRing, PictureFault, PictureFound } from "./picture-answer.ts"

/** Keeps what was measured last, so that a count set by hand is shown without measuring again. */
export interface MeasuringMemory {
  key: string
  measured: PictureMeasurement | null
}

/** @param memory of this picture; what stands in it is of the same one. Never throws on anything a text can hold. */
export function measureCell(
  text: string,
  decoded: DecodedPicture,
  memory: MeasuringMemory = { key: "", measured: null },
  tell?: (doing: MeasuringStage) => void,
): PictureFound | PictureFault {
  return unlessRefused<PictureFound | PictureFault, PictureFault>(
    () => measureLines(text, decoded, memory, tell),
    ({ message, hint }) => ({ fault: message, hint }),
  )
}

function measureLines(
  text: string,
  decoded: DecodedPicture,
  memory: MeasuringMemory,
  tell?: (doing: MeasuringStage) => void,
): PictureFound | PictureFault {
  const lines = readLines(text)
  const [problem] = lines.problems
  if (problem) return { fault: `Line ${problem.line}: ${problem.message}`, hint: "" }
  const asked = askedBy(lines)
  // What cannot be read is told before seconds are spent on the rest.
  if (asked.known !== null) readKnownLength(asked.known)
  const key = measuringKey(asked)
  if (memory.measured === null || memory.key !== key) {
    memory.measured = measureAsked(decoded, asked, tell)
    memory.key = key
  }
  const { measured } = memory
  // A ring that was counted by hand and is not there any more, in another view or box, has nothing to be drawn on.
  const counts = new Map([...asked.counts].filter(([ring]) => ring <= measured.rings.length))
  const published = publishAsked(measured, decoded, { ...asked, counts })
  const shown = showPiece(measured, published, decoded.scale)
  const name = lines.picture ?? ""
  return {
    lines: mergeLines(text, linesAsked(published, asked, name)),
    name,
    widthPx: decoded.widthPx,
    heightPx: decoded.heightPx,
    centrePx: published.centrePx,
    cornersPx: asked.corners,
    boxPx: asked.box,
    rings: ringsToShow(published, shown),
    questions: openQuestions(published),
    strip: shown.strip,
    repeat: shown.repeat,
  }
}

/** A ring with its drawing; what is too unsure to stand in the lines is not read here either. */
export function ringsToShow(
  { rings }: PublishedMeasurement,
  shown: Pick<ShownPiece, "rings">,
): AnsweredRing[] {
  return rings.map(({ innerPx, outerPx, ...ring }, i) => ({
    ...ring,
    ...(ring.sureness < leastRead ? { repeats: null, strands: null } : {}),
    ...shown.rings[i]!,
  }))
}
