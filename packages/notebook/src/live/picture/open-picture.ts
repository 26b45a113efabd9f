// Pictures opened by the browser itself: decoded, turned as they say, bounded in size, brought to brightness; and
// pictures written as addresses that a page can carry.

/// <reference lib="dom" />

import {
  type DecodedPicture,
  decodedSidePx,
  type GreyPicture,
  greyOfRgba,
  kindOfPicture,
  longestSide,
  mostPixels,
  sizeInHeader,
} from "@roundwright/picture"
import { pictureWords } from "./words.ts"

export interface OpenedPicture {
  readonly decoded: DecodedPicture
  /** Address of a smaller picture, for the page to show and to carry. */
  readonly address: string
}

const largestFileBytes = 64 * 1024 * 1024
/** A page carries its picture at this longer side. */
const carriedSidePx = 760
const carriedLetters = 60_000

/** A file that the reader chose. @throws Error in words for the reader */
export async function openFile(file: File): Promise<OpenedPicture> {
  if (file.size > largestFileBytes) throw new Error(pictureWords.tooMuch)
  const bytes = new Uint8Array(await file.arrayBuffer())
  if (bytes.length === 0) throw new Error(pictureWords.empty)
  if (kindOfPicture(bytes) === null) throw new Error(pictureWords.noKind)
  const size = sizeInHeader(bytes)
  if (size === null) throw new Error(pictureWords.cutOff)
  refuseLarge(size.width, size.height)
  let bitmap: ImageBitmap
  try {
    bitmap = await createImageBitmap(new Blob([bytes]), { imageOrientation: "from-image" })
  } catch {
    throw new Error(pictureWords.cutOff)
  }
  try {
    return opened(bitmap, bitmap.width, bitmap.height, bitmap.width)
  } finally {
    bitmap.close()
  }
}

/** The picture that the page carries. @param widthPx of the picture it was made from @throws Error in words */
export async function openAddress(
  address: string,
  widthPx: number,
  heightPx: number,
): Promise<OpenedPicture> {
  const image = new Image()
  image.src = address
  try {
    await image.decode()
  } catch {
    throw new Error(pictureWords.cutOff)
  }
  return { ...opened(image, widthPx, heightPx, image.naturalWidth), address }
}

function opened(
  from: ImageBitmap | HTMLImageElement,
  widthPx: number,
  heightPx: number,
  ownWidth: number,
): OpenedPicture {
  const scale = Math.min(ownWidth / widthPx, decodedSidePx / Math.max(widthPx, heightPx))
  const canvas = drawn(from, widthPx * scale, heightPx * scale)
  const { width, height } = canvas
  const { data } = canvas.getContext("2d")!.getImageData(0, 0, width, height)
  const carried = drawn(canvas, ...bounded(width, height, carriedSidePx))
  return {
    decoded: { picture: greyOfRgba(width, height, data), widthPx, heightPx, scale },
    address: smallAddress(carried),
  }
}

function smallAddress(canvas: HTMLCanvasElement): string {
  let address = ""
  for (const quality of [0.8, 0.66, 0.54, 0.42]) {
    address = canvas.toDataURL("image/jpeg", quality)
    if (address.length <= carriedLetters) break
  }
  return address
}

/** A grey picture that was made here. */
export function greyAddress({ width, height, values }: GreyPicture): string {
  const canvas = document.createElement("canvas")
  canvas.width = width
  canvas.height = height
  const context = canvas.getContext("2d")!
  const image = context.createImageData(width, height)
  values.forEach((value, i) => {
    const byte = Math.max(0, Math.min(255, Math.round(255 * value)))
    image.data.set([byte, byte, byte, 255], 4 * i)
  })
  context.putImageData(image, 0, 0)
  return canvas.toDataURL("image/jpeg", 0.72)
}

function drawn(from: CanvasImageSource, width: number, height: number): HTMLCanvasElement {
  const canvas = document.createElement("canvas")
  canvas.width = Math.max(1, Math.round(width))
  canvas.height = Math.max(1, Math.round(height))
  const context = canvas.getContext("2d", { willReadFrequently: true })!
  context.fillStyle = "#fff"
  context.fillRect(0, 0, canvas.width, canvas.height)
  context.imageSmoothingQuality = "high"
  context.drawImage(from, 0, 0, canvas.width, canvas.height)
  return canvas
}

function bounded(width: number, height: number, side: number): [number, number] {
  const scale = Math.min(1, side / Math.max(width, height))
  return [width * scale, height * scale]
}

function refuseLarge(width: number, height: number): void {
  if (width * height > mostPixels || Math.max(width, height) > longestSide)
    throw new Error(pictureWords.tooLarge(width, height))
}
