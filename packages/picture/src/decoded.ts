// A picture brought to brightness, whoever decoded it: Node by a library, a page by the browser.

import type { GreyPicture } from "./grey.ts"

export interface DecodedPicture {
  readonly picture: GreyPicture
  /** Size of the picture as it is looked at, in its own pixels. */
  readonly widthPx: number
  readonly heightPx: number
  /** Pixels of `picture` a pixel of the file. */
  readonly scale: number
}

/** Larger than any camera's picture; such a header is a mistake or a trap. */
export const mostPixels = 120e6
export const longestSide = 16_000
/** Pictures are brought to this longer side: a box of a third still has the detail that measuring uses. */
export const decodedSidePx = 1920

/** By the first bytes: the signature of PNG (ISO/IEC 15948) and the start marker of JPEG (ITU-T T.81). */
export function kindOfPicture(bytes: Uint8Array): "PNG" | "JPEG" | null {
  const starts = (...signature: number[]) => signature.every((byte, i) => bytes[i] === byte)
  if (starts(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a)) return "PNG"
  return starts(0xff, 0xd8, 0xff) ? "JPEG" : null
}

/**
 * Size that a PNG or JPEG says in its header, read before any pixel is: a trap is known by it. Null where the header
 * is cut off. (PNG: the IHDR chunk. JPEG: the first start-of-frame marker.)
 */
export function sizeInHeader(bytes: Uint8Array): { width: number; height: number } | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  if (kindOfPicture(bytes) === "PNG")
    return bytes.length < 24 ? null : { width: view.getUint32(16), height: view.getUint32(20) }
  let at = 2
  while (at + 9 < bytes.length) {
    if (bytes[at] !== 0xff) return null
    const marker = bytes[at + 1]!
    const isFrame =
      marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc
    if (isFrame) return { width: view.getUint16(at + 7), height: view.getUint16(at + 5) }
    // Fill bytes and markers without a length.
    at += marker === 0xff ? 1 : 2 + view.getUint16(at + 2)
  }
  return null
}
