// A picture cell measured: its lines say what is set by hand, the picture gives the rest.

import { unlessRefused } from "@roundwright/numerics"
import {
  askedBy,
  type DecodedPicture,
  linesAsked,
  type MeasuringStage,
  measureAsked,
  measuringKey,
  mergeLines,
  openQuestions,
  type PictureMeasurement,
  publishAsked,
  readLines,
  showPiece,
} from "@roundwright/picture"
import type { PictureFault, PictureFound } from "./picture-answer.ts"

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
    rings: published.rings.map(({ innerPx, outerPx, ...ring }, i) => ({
      ...ring,
      ...shown.rings[i]!,
    })),
    questions: openQuestions(published),
    strip: shown.strip,
    repeat: shown.repeat,
  }
}
