// Pictures on the disk: read, decoded, and put into a page or a drawing as addresses of their own.

import { readFileSync, statSync } from "node:fs"
import { isAbsolute, normalize, resolve, sep } from "node:path"
import {
  measureCell,
  type PictureAnswer,
  type PictureFound,
  type PictureOf,
} from "@roundwright/notebook"
import { RoundwrightError } from "@roundwright/numerics"
import { type DecodedPicture, type GreyPicture, readLines, shrink } from "@roundwright/picture"
import { decodePicture, encodeJpeg } from "@roundwright/picture/decode"

/** Larger files are no photograph of a motif. */
const largestFileBytes = 64 * 1024 * 1024
/** A page carries its picture at this longer side: measured in the page it gives the same counts. */
const carriedSidePx = 760
/** Bytes of the pictures in a page: it is to stay small enough to be sent. */
const [givenBytes, stripBytes] = [40_000, 15_000]

/** @throws RoundwrightError `no-picture` and what `decodePicture` throws */
export async function readPicture(cwd: string, file: string): Promise<DecodedPicture> {
  return decodePicture(bytesOf(cwd, file))
}

function bytesOf(cwd: string, file: string): Uint8Array {
  const path = resolve(cwd, file)
  try {
    const stats = statSync(path)
    if (!stats.isFile()) throw noPicture(`${file} is not a file.`)
    if (stats.size > largestFileBytes)
      throw noPicture(`${file} is ${Math.round(stats.size / 1e6)} MB long: shrink the picture.`)
    return readFileSync(path)
  } catch (error) {
    if (error instanceof RoundwrightError) throw error
    const code = (error as NodeJS.ErrnoException).code
    throw noPicture(
      code === "ENOENT"
        ? `${file}: there is no such file.`
        : `${file} cannot be read (${code ?? "unknown reason"}).`,
    )
  }
}

/** What was found with its pictures as addresses. */
export async function withImages(
  { strip, repeat, ...figures }: PictureFound,
  { picture }: DecodedPicture,
): Promise<PictureAnswer> {
  const given = await address(shrink(picture, carriedSidePx).picture, givenBytes)
  return {
    ...figures,
    images: {
      given,
      strip: await address(strip, stripBytes),
      repeat: repeat === null ? null : await address(repeat, stripBytes),
    },
  }
}

/** Measures the pictures that the cells of a notebook name, beside it or in folders below it. @param folder of the notebook */
export function picturesIn(folder: string): PictureOf {
  return async (text) => {
    const { picture } = readLines(text)
    if (picture === null || picture === "") return null
    const path = normalize(picture)
    if (isAbsolute(path) || path === ".." || path.startsWith(`..${sep}`))
      return {
        fault: "The picture of a notebook has to lie beside it, or in a folder beside it.",
        hint: `Copy ${picture.slice(0, 80)} there, and name it as: Picture: old-square.jpg`,
      }
    try {
      const decoded = await readPicture(folder, picture)
      const found = measureCell(text, decoded)
      return "fault" in found ? found : await withImages(found, decoded)
    } catch (error) {
      if (!(error instanceof RoundwrightError)) throw error
      return { fault: error.message, hint: error.hint }
    }
  }
}

async function address(picture: GreyPicture, mostBytes: number): Promise<string> {
  const bytes = await encodeJpeg(picture, mostBytes)
  return `data:image/jpeg;base64,${Buffer.from(bytes).toString("base64")}`
}

export function noPicture(message: string): RoundwrightError {
  return new RoundwrightError("no-picture", message)
}
