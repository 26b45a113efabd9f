import { brightnessAt, greyPicture, sizeInHeader } from "@roundwright/picture"
import { decodePicture, encodeJpeg, encodePng } from "@roundwright/picture/decode"
import sharp from "sharp"
import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"

/** A grey ramp from left to right, as bytes of a file. */
async function ramp(width: number, height: number) {
  const values = new Uint8Array(width * height)
  values.forEach((_, i) => {
    values[i] = Math.round((200 * (i % width)) / (width - 1))
  })
  return sharp(values, { raw: { width, height, channels: 1 } })
}

/** The head of a PNG that declares a size. */
function pngHead(width: number, height: number): Uint8Array {
  const bytes = new Uint8Array(33)
  bytes.set([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13, 0x49, 0x48, 0x44, 0x52])
  const view = new DataView(bytes.buffer)
  view.setUint32(16, width)
  view.setUint32(20, height)
  bytes.set([8, 0, 0, 0, 0], 24)
  let crc = 0xffffffff
  for (const byte of bytes.subarray(12, 29)) {
    crc ^= byte
    for (let k = 0; k < 8; k++) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1
  }
  view.setUint32(29, (crc ^ 0xffffffff) >>> 0)
  return bytes
}

describe("decoding", () => {
  it("reads PNG and JPEG, colour and grey, to brightness", async () => {
    for (const bytes of [
      await (await ramp(300, 200)).png().toBuffer(),
      await (await ramp(300, 200)).jpeg({ quality: 95 }).toBuffer(),
      await (await ramp(300, 200)).toColourspace("srgb").jpeg({ quality: 95 }).toBuffer(),
    ]) {
      const { picture, widthPx, heightPx, scale } = await decodePicture(bytes)
      expect([widthPx, heightPx, scale]).toEqual([300, 200, 1])
      expectClose(brightnessAt(picture, 299, 100), 200 / 255, 0.02, "JPEG rounds")
      expectClose(brightnessAt(picture, 0, 100), 0, 0.02, "JPEG rounds")
    }
  })

  it("honours the orientation the file declares", async () => {
    const bytes = await (await ramp(300, 200)).jpeg().withMetadata({ orientation: 6 }).toBuffer()
    const { picture, widthPx, heightPx } = await decodePicture(bytes)
    expect([widthPx, heightPx]).toEqual([200, 300])
    // Turned a quarter clockwise: what was left is now on top.
    expectClose(brightnessAt(picture, 100, 2), 0, 0.03, "top was left")
    expectClose(brightnessAt(picture, 100, 297), 200 / 255, 0.03, "bottom was right")
  })

  it("takes what is clear for white, and shrinks large pictures", async () => {
    const clear = await sharp({
      create: { width: 400, height: 300, channels: 4, background: { r: 0, g: 0, b: 0, alpha: 0 } },
    })
      .png()
      .toBuffer()
    expectClose((await decodePicture(clear)).picture.values[500]!, 1, 0.01, "flattened on white")
    const large = await decodePicture(await (await ramp(4000, 1000)).png().toBuffer())
    expect([large.widthPx, large.picture.width]).toEqual([4000, 1920])
    expectClose(large.scale, 0.48, 1e-12, "1920 of 4000")
  })

  it("writes PNG that reads back", async () => {
    const { picture } = await decodePicture(await (await ramp(120, 60)).png().toBuffer())
    const again = await decodePicture(await encodePng(picture))
    again.picture.values.forEach((value, i) => {
      expectClose(value, picture.values[i]!, 1e-6, "bytes are kept")
    })
  })

  it("knows a picture's size from its header alone, and that a header is cut off", async () => {
    const picture = greyPicture(48, 30, new Float32Array(48 * 30).fill(0.5))
    for (const bytes of [await encodePng(picture), await encodeJpeg(picture, 1e6)]) {
      expect(sizeInHeader(bytes)).toEqual({ width: 48, height: 30 })
      expect(sizeInHeader(bytes.subarray(0, 20))).toBeNull()
    }
    const small = await encodeJpeg(picture, 1)
    expect((await decodePicture(small)).widthPx).toBe(48)
  })

  it("refuses what is no picture, cut off, tiny or beyond reason", async () => {
    const jpeg = await (await ramp(600, 400)).jpeg().toBuffer()
    const png = await (await ramp(600, 400)).png().toBuffer()
    const text = new TextEncoder().encode("Ring 1: to 12 mm; 12 repeats")
    for (const [bytes, message] of [
      [new Uint8Array(0), /empty/],
      [text, /neither a PNG nor a JPEG/],
      [jpeg.subarray(0, jpeg.length >> 1), /cut off/],
      [jpeg.subarray(0, 20), /cut off/],
      [png.subarray(0, png.length >> 1), /cut off/],
      [pngHead(20_000, 20_000), /20000 x 20000/],
      [pngHead(2_000_000_000, 2_000_000_000), /cut off|2000000000/],
      [
        await (await ramp(2, 1)).extract({ left: 0, top: 0, width: 1, height: 1 }).png().toBuffer(),
        /too small/,
      ],
    ] as const)
      await expect(decodePicture(bytes), String(message)).rejects.toThrow(message)
  })
})
