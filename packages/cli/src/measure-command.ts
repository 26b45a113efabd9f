// `roundwright measure PICTURE`: a photograph's rings and counts as plain lines, and a drawing to check them by.

import { existsSync, readFileSync, statSync, writeFileSync } from "node:fs"
import { basename, extname, resolve } from "node:path"
import { pictureSvg } from "@roundwright/notebook"
import { RoundwrightError } from "@roundwright/numerics"
import {
  type KnownLength,
  measurePicture,
  openQuestions,
  type Point,
  publishMeasurement,
  stripOf,
  writeLines,
} from "@roundwright/picture"
import { decodePicture, encodePng } from "@roundwright/picture/decode"
import { quoted, readLengthMm, wholeNumber } from "./option-values.ts"
import type { Surroundings } from "./surroundings.ts"
import { wrap } from "./wrap.ts"

export interface MeasureRequest {
  readonly files: readonly string[]
  readonly box?: string | undefined
  readonly centre?: string | undefined
  readonly corners?: string | undefined
  readonly side?: string | undefined
  readonly across?: string | undefined
  readonly ring?: readonly string[] | undefined
  readonly "as-it-is"?: boolean | undefined
  readonly out?: string | undefined
  readonly json?: boolean | undefined
}

/** @throws RoundwrightError for a picture or options that cannot be used; the caller prints it */
export async function runMeasure(request: MeasureRequest, around: Surroundings): Promise<number> {
  const [file, ...others] = request.files
  if (file === undefined) throw refusal("name the picture that is to be measured.")
  if (others.length > 0) throw refusal("one picture at a time, please: several are named.")
  const decoded = await decodePicture(readPicture(around.cwd, file))
  const { scale } = decoded
  const inside = (p: Point): Point => ({
    x: (p.x + 0.5) * scale - 0.5,
    y: (p.y + 0.5) * scale - 0.5,
  })
  const box = request.box === undefined ? null : numbers(request.box, 4, "--box", "0,0,600,600")
  const centre =
    request.centre === undefined ? null : numbers(request.centre, 2, "--centre", "312,308")
  const corners =
    request.corners === undefined
      ? null
      : numbers(request.corners, 8, "--corners", "10,12 590,8 596,603 4,598")
  const measured = measurePicture(decoded.picture, {
    ...(box
      ? {
          box: {
            x: box[0]! * scale,
            y: box[1]! * scale,
            width: box[2]! * scale,
            height: box[3]! * scale,
          },
        }
      : {}),
    ...(centre ? { centre: inside({ x: centre[0]!, y: centre[1]! }) } : {}),
    ...(corners
      ? {
          corners: [0, 2, 4, 6].map((i) => inside({ x: corners[i]!, y: corners[i + 1]! })),
        }
      : {}),
    asItIs: request["as-it-is"] === true,
  })
  const known = knownLength(request)
  const published = publishMeasurement(measured, {
    widthPx: decoded.widthPx,
    heightPx: decoded.heightPx,
    scale,
    known: known?.length,
    counts: new Map((request.ring ?? []).map(ringCount)),
  })
  const questions = openQuestions(published)
  const status = questions.length === 0 ? 0 : 1
  if (request.json) {
    around.out(`${JSON.stringify({ ...published, questions }, null, 2)}\n`)
    return status
  }
  const lines = writeLines(published, {
    picture: basename(file),
    known: known?.words,
    box: box?.join(" "),
    corners: corners?.join(" "),
  })
  const drawing = request.out ?? `${basename(file, extname(file))}.svg`
  const svg = pictureSvg(measured, published, {
    picture: await address(measured.view.picture),
    strip: await address(stripOf(measured)),
    title: `${basename(file)}: rings and their counts`,
  })
  const fault = writeDrawing(around.cwd, drawing, svg)
  const notes = [
    ...questions.map((question) => wrap(question, 80)),
    fault ?? `The drawing to check the counts by: ${drawing}`,
  ]
  around.out(`${lines.join("\n")}\n\n${notes.join("\n")}\n`)
  return fault === null ? status : 2
}

async function address(picture: Parameters<typeof encodePng>[0]): Promise<string> {
  const bytes = await encodePng(picture)
  return `data:image/png;base64,${Buffer.from(bytes).toString("base64")}`
}

/** Larger files are no photograph of a motif. */
const largestFileBytes = 64 * 1024 * 1024

function readPicture(cwd: string, file: string): Uint8Array {
  const path = resolve(cwd, file)
  try {
    const stats = statSync(path)
    if (!stats.isFile()) throw refusal(`${file} is not a file.`)
    if (stats.size > largestFileBytes)
      throw refusal(`${file} is ${Math.round(stats.size / 1e6)} MB long: shrink the picture.`)
    return readFileSync(path)
  } catch (error) {
    if (error instanceof RoundwrightError) throw error
    const code = (error as NodeJS.ErrnoException).code
    throw refusal(
      code === "ENOENT"
        ? `${file}: there is no such file.`
        : `${file} cannot be read (${code ?? "unknown reason"}).`,
    )
  }
}

/** Marks a drawing of ours, so that it may be written anew. */
const ownMark = ": rings and their counts</title>"

function writeDrawing(cwd: string, file: string, svg: string): string | null {
  const path = resolve(cwd, file)
  try {
    if (existsSync(path) && !readFileSync(path, "utf8").slice(0, 2048).includes(ownMark))
      return `${file} exists and is not a drawing of ours: it is left alone. Name another with --out.`
    writeFileSync(path, svg)
    return null
  } catch (error) {
    return `${file} cannot be written (${(error as NodeJS.ErrnoException).code ?? "unknown reason"}).`
  }
}

function numbers(text: string, count: number, option: string, example: string): number[] {
  const parts = text.trim().split(/[\s,;]+/)
  const values = parts.map((part) =>
    /^-?\d{1,6}(\.\d{1,6})?$/.test(part) ? Number(part) : Number.NaN,
  )
  if (values.length !== count || values.some(Number.isNaN))
    throw new RoundwrightError(
      "no-numbers",
      `${option} takes ${count} numbers, not ${quoted(text)}.`,
      {
        hint: `Such as: ${option} '${example}'.`,
      },
    )
  return values
}

function knownLength(request: MeasureRequest): { length: KnownLength; words: string } | null {
  const { side, across } = request
  if (side !== undefined && across !== undefined)
    throw refusal("one known length is enough: --side or --across.")
  if (side !== undefined)
    return { length: { of: "side", mm: readLengthMm(side) }, words: `side ${side.trim()}` }
  if (across !== undefined)
    return { length: { of: "across", mm: readLengthMm(across) }, words: `across ${across.trim()}` }
  return null
}

function ringCount(text: string): [number, number] {
  const match = /^\s*(\d{1,3})\s*=\s*(\d{1,4})\s*$/.exec(text)
  if (!match)
    throw new RoundwrightError(
      "no-ring",
      `--ring takes a ring and its count, not ${quoted(text)}.`,
      {
        hint: "Such as: --ring 3=12.",
      },
    )
  return [wholeNumber(match[1]!, "--ring"), wholeNumber(match[2]!, "--ring")]
}

function refusal(message: string): RoundwrightError {
  return new RoundwrightError("no-picture", message)
}
