// Reading PNG and JPEG files in Node, by sharp (libvips): turned as the file's orientation says, flattened
// on white, grey, and no larger than measuring needs. What is no picture, is cut off or declares a size
// beyond reason is refused before its pixels are read.

import { RoundwrightError } from "@roundwright/numerics"
import sharp from "sharp"
import { type GreyPicture, greyPicture } from "../grey.ts"

export interface DecodedPicture {
  readonly picture: GreyPicture
  /** Size of the picture as it is looked at, in its own pixels. */
  readonly widthPx: number
  readonly heightPx: number
  /** Pixels of `picture` a pixel of the file. */
  readonly scale: number
}

/** Larger than any camera's picture; such a header is a mistake or a trap. */
const mostPixels = 120e6
const longestSide = 16_000
/** Pictures are brought to this longer side: a box of a third still has the detail that measuring uses. */
export const decodedSidePx = 1920

/** @throws RoundwrightError `no-picture`, `picture-cut-off`, `picture-too-large`, `picture-too-small` */
export async function decodePicture(bytes: Uint8Array): Promise<DecodedPicture> {
  const kind = kindOf(bytes)
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
  // A PNG says its size in its first bytes: a trap is known before anything else of it is read.
  if (kind === "PNG" && bytes.length >= 24) {
    const head = new DataView(bytes.buffer, bytes.byteOffset)
    const [width, height] = [head.getUint32(16), head.getUint32(20)]
    if (width * height > mostPixels) return { width, height }
  }
  try {
    const { autoOrient } = await sharp(bytes, { limitInputPixels: false }).metadata()
    return { width: autoOrient.width, height: autoOrient.height }
  } catch {
    throw cutOff(kind)
  }
}

/** By the first bytes: the signature of PNG (ISO/IEC 15948) and the start marker of JPEG (ITU-T T.81). */
function kindOf(bytes: Uint8Array): "PNG" | "JPEG" | null {
  const starts = (...signature: number[]) => signature.every((byte, i) => bytes[i] === byte)
  if (starts(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a)) return "PNG"
  return starts(0xff, 0xd8, 0xff) ? "JPEG" : null
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
