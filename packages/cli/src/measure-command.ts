// `roundwright measure PICTURE`: a photograph's rings and counts as plain lines, and a drawing to check them by; or the
// same brought into a notebook, where lines set by hand stay as they are.

import { existsSync, readFileSync, writeFileSync } from "node:fs"
import { basename, dirname, extname, relative, resolve, sep } from "node:path"
import { pictureFile, ringsToShow } from "@roundwright/notebook"
import {
  type DecodedPicture,
  isMeasurementLine,
  linesAsked,
  measureAsked,
  mergeLines,
  openQuestions,
  type PictureAsked,
  type PublishedMeasurement,
  publishAsked,
  readLines,
  showPiece,
} from "@roundwright/picture"
import { askedFor, type MeasureOptionsGiven } from "./measure-asked.ts"
import { linesInNotebook } from "./measured-notebook.ts"
import { noPicture, readPicture, withImages } from "./picture-file.ts"
import { readText } from "./read-file.ts"
import type { Surroundings } from "./surroundings.ts"
import { wrap } from "./wrap.ts"

export interface MeasureRequest extends MeasureOptionsGiven {
  readonly files: readonly string[]
  readonly out?: string | undefined
  /** Notebook whose lines of this picture are brought up to date. */
  readonly into?: string | undefined
  readonly json?: boolean | undefined
}

/** @throws RoundwrightError for a picture or options that cannot be used; the caller prints it */
export async function runMeasure(request: MeasureRequest, around: Surroundings): Promise<number> {
  const [file, ...others] = request.files
  if (file === undefined) throw noPicture("name the picture that is to be measured.")
  if (others.length > 0) throw noPicture("one picture at a time, please: several are named.")
  const notebook = request.into === undefined ? null : openNotebook(request.into, file, around)
  const decoded = await readPicture(around.cwd, file)
  const asked = askedFor(request, notebook && readLines(notebook.place.lines))
  const measured = measureAsked(decoded, asked)
  const published = publishAsked(measured, decoded, asked)
  const questions = openQuestions(published)
  const status = questions.length === 0 ? 0 : 1
  if (request.json) {
    around.out(`${JSON.stringify({ ...published, questions }, null, 2)}\n`)
    return status
  }
  const fresh = linesAsked(published, asked, notebook?.name ?? basename(file))
  const lines = notebook ? mergeLines(notebook.place.lines, fresh) : fresh.join("\n")
  const drawing = request.out ?? `${basename(file, extname(file))}.svg`
  const shown = showPiece(measured, published, decoded.scale)
  const svg = await drawingOf(basename(file), decoded, asked, published, shown, questions)
  const fault =
    writeDrawing(around.cwd, drawing, svg) ??
    (notebook ? writeNotebook(notebook.path, notebook.place.withLines(lines)) : null)
  const notes = [
    ...questions.map((question) => wrap(question, 80)),
    ...(fault === null && notebook
      ? [`Written into ${request.into}; what was set by hand there is as it was.`]
      : []),
    fault ?? `The drawing to check the counts by: ${drawing}`,
  ]
  const told = lines.split("\n").filter(isMeasurementLine)
  around.out(`${told.join("\n")}\n\n${notes.join("\n")}\n`)
  return fault === null ? status : 2
}

async function drawingOf(
  name: string,
  decoded: DecodedPicture,
  { corners, box }: PictureAsked,
  published: PublishedMeasurement,
  { rings, strip, repeat }: ReturnType<typeof showPiece>,
  questions: readonly string[],
): Promise<string> {
  const { widthPx, heightPx, centrePx } = published
  const figures = {
    lines: "",
    name,
    widthPx,
    heightPx,
    centrePx,
    cornersPx: corners,
    boxPx: box,
    rings: ringsToShow(published, { rings }),
    questions,
  }
  const answer = await withImages({ ...figures, strip, repeat }, decoded)
  return pictureFile(answer, `${name}${ownMark}`)
}

/** The notebook, where in it the lines of this picture stand, and how it names the picture. */
function openNotebook(file: string, picture: string, { cwd }: Surroundings) {
  const read = readText(cwd, file)
  if ("fault" in read) throw noPicture(read.fault)
  const path = resolve(cwd, file)
  const name = relative(dirname(path), resolve(cwd, picture)).split(sep).join("/")
  return { path, name, place: linesInNotebook(read.text, name) }
}

function writeNotebook(path: string, text: string): string | null {
  try {
    writeFileSync(path, text)
    return null
  } catch (error) {
    return `${basename(path)} cannot be written (${(error as NodeJS.ErrnoException).code ?? "unknown reason"}).`
  }
}

/** Marks a drawing of ours, so that it may be written anew. */
const ownMark = ": rings and their counts"

function writeDrawing(cwd: string, file: string, svg: string): string | null {
  const path = resolve(cwd, file)
  try {
    if (
      existsSync(path) &&
      !readFileSync(path, "utf8").slice(0, 2048).includes(`${ownMark}</title>`)
    )
      return `${file} exists and is not a drawing of ours: it is left alone. Name another with --out.`
    writeFileSync(path, svg)
    return null
  } catch (error) {
    return `${file} cannot be written (${(error as NodeJS.ErrnoException).code ?? "unknown reason"}).`
  }
}
