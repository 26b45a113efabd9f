// Reading PNG and JPEG files in Node, by sharp (libvips): turned as the file's orientation says, flattened
// on white, grey, and no larger than measuring needs. What is no picture, is cut off or declares a size
// beyond reason is refused before its pixels are read.

import { RoundwrightError } from "@roundwright/numerics"
import sharp from "sharp"
import {
  type DecodedPicture,
  decodedSidePx,
  kindOfPicture,
  longestSide,
  mostPixels,
  sizeInHeader,
} from "../decoded.ts"
import { type GreyPicture, greyPicture } from "../grey.ts"

/** @throws RoundwrightError `no-picture`, `picture-cut-off`, `picture-too-large`, `picture-too-small` */
export async function decodePicture(bytes: Uint8Array): Promise<DecodedPicture> {
  const kind = kindOfPicture(bytes)
  if (kind === null)
    throw new RoundwrightError(
      "no-picture",
      bytes.length === 0 ? "The file is empty." : "The file is neither a PNG nor a JPEG picture.",
      { hint: "Save the picture as PNG or JPEG." },
    )
  const size = await sizeOf(bytes, kind)
  if (size.width * size.height > mostPixels || Math.max(size.width, size.height) > longestSide)
    throw new RoundwrightError(
      "picture-too-large",
      `The picture is ${size.width} x ${size.height} pixels, more than can be measured.`,
      { hint: "Shrink it: 12 million pixels are plenty.", numbers: size },
    )
  const scale = Math.min(1, decodedSidePx / Math.max(size.width, size.height))
  const [width, height] = [
    Math.max(1, Math.round(size.width * scale)),
    Math.max(1, Math.round(size.height * scale)),
  ]
  try {
    const { data, info } = await sharp(bytes, { failOn: "truncated", limitInputPixels: mostPixels })
      .autoOrient()
      .flatten({ background: "#ffffff" })
      .resize(width, height, { fit: "fill", kernel: "linear" })
      .toColourspace("b-w")
      .extractChannel(0)
      .raw({ depth: "uchar" })
      .toBuffer({ resolveWithObject: true })
    const picture = greyPicture(
      info.width,
      info.height,
      Float32Array.from(data, (value) => value / 255),
    )
    return { picture, widthPx: size.width, heightPx: size.height, scale }
  } catch (error) {
    if (error instanceof RoundwrightError) throw error
    throw cutOff(kind)
  }
}

function cutOff(kind: string): RoundwrightError {
  return new RoundwrightError(
    "picture-cut-off",
    `The ${kind} picture is damaged or cut off and cannot be read to its end.`,
    { hint: "Copy or export it once more." },
  )
}

async function sizeOf(bytes: Uint8Array, kind: string): Promise<{ width: number; height: number }> {
  // The header says the size: a trap is known before anything else of it is read.
  const said = sizeInHeader(bytes)
  if (said !== null && said.width * said.height > mostPixels) return said
  try {
    const { autoOrient } = await sharp(bytes, { limitInputPixels: false }).metadata()
    return { width: autoOrient.width, height: autoOrient.height }
  } catch {
    throw cutOff(kind)
  }
}

/** A grey picture as the bytes of a PNG. */
export async function encodePng(picture: GreyPicture): Promise<Uint8Array> {
  const bytes = Uint8Array.from(picture.values, (value) =>
    Math.max(0, Math.min(255, Math.round(255 * value))),
  )
  return sharp(bytes, {
    raw: { width: picture.width, height: picture.height, channels: 1 },
  })
    .png()
    .toBuffer()
}

const millimetresPerInch = 25.4
/** A drawing in pixels is taken as it is at this many dots an inch. */
const plainDensity = 72

/**
 * A drawing as the bytes of a PNG, on white. Letters are set in a font of this machine; where it has none they are missing.
 * @param svg its width and height in mm
 * @param dotsPerInch a mm is this / 25.4 pixels
 */
export async function drawPng(svg: string, dotsPerInch: number): Promise<Uint8Array> {
  const inPixels = svg.replace(/\b(width|height)="([\d.]{1,12})mm"/g, (_, side, mm) => {
    return `${side}="${Math.round((Number(mm) / millimetresPerInch) * dotsPerInch)}"`
  })
  return sharp(Buffer.from(inPixels), { density: plainDensity, limitInputPixels: mostPixels })
    .flatten({ background: "#ffffff" })
    .withMetadata({ density: dotsPerInch })
    .png({ palette: true })
    .toBuffer()
}

/** Tried from the best; the last is taken whatever its size. */
const qualities = [78, 66, 54, 42, 30] as const

/** A grey picture as the bytes of a JPEG, as good as `mostBytes` allow. */
export async function encodeJpeg(picture: GreyPicture, mostBytes: number): Promise<Uint8Array> {
  const { width, height } = picture
  const bytes = Uint8Array.from(picture.values, (value) =>
    Math.max(0, Math.min(255, Math.round(255 * value))),
  )
  const raw = sharp(bytes, { raw: { width, height, channels: 1 } })
  let made: Uint8Array = new Uint8Array()
  for (const quality of qualities) {
    made = await raw.clone().jpeg({ quality, mozjpeg: true }).toBuffer()
    if (made.length <= mostBytes) break
  }
  return made
}
