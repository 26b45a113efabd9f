// A measured piece as it is shown: its rings in the picture, the piece unrolled, one repeat of every ring laid over
// all the others. Plain figures, for a drawing to be made of.

import { toGiven } from "./given.ts"
import { type GreyPicture, type Point, rescaled, shrink } from "./grey.ts"
import type { PictureMeasurement } from "./measure.ts"
import { polygonContour } from "./outline.ts"
import { leastRead, type PublishedMeasurement } from "./published.ts"
import { stripOf } from "./strip.ts"
import { ticksOf } from "./ticks.ts"

export interface ShownRing {
  /** Its outer edge in the picture as it is looked at, pixels. */
  readonly edge: readonly Point[]
  /** Its inner and outer edge in the strip, shares of its height from the centre. */
  readonly from: number
  readonly to: number
  /** Where each counted strand stands, turns from 0 to 1 in order; empty where none was read. */
  readonly ticks: readonly number[]
}

export interface ShownPiece {
  readonly rings: readonly ShownRing[]
  readonly strip: GreyPicture
  /** One repeat of each ring, the mean of all; null where nothing was read. */
  readonly repeat: GreyPicture | null
}

/** Points of an edge: a few degrees apart no eye sees the corners. */
const edgePoints = 96
/** The picture of one repeat, pixels. */
const repeatSize = { width: 220, height: 320 } as const
/** The strip is carried along with pages: half its samples are as clear to the eye. */
const stripWidth = 768

/** @param scale pixels of the measured picture a pixel of the picture as it is looked at */
export function showPiece(
  measured: PictureMeasurement,
  published: PublishedMeasurement,
  scale: number,
): ShownPiece {
  const strip = stripOf(measured)
  const rows = measured.rows.length
  const rings = measured.rings.map((ring, i): ShownRing => {
    const { strands, repeats, sureness } = published.rings[i]!
    const count = sureness < leastRead ? 0 : (strands ?? repeats ?? 0)
    return {
      edge: edgeOf(measured, ring.toRow).map((p) => rescaled(toGiven(measured, p), 1 / scale)),
      from: ring.fromRow / rows,
      to: (ring.toRow + 1) / rows,
      ticks: ticksOf(measured, ring, count).map((angle) => {
        const turns = angle / (2 * Math.PI)
        return turns - Math.floor(turns)
      }),
    }
  })
  return {
    rings,
    strip: shrink(strip, stripWidth).picture,
    repeat: repeatOf(strip, rings, published),
  }
}

/** The contour of a row in the straight picture, from direction 0. */
function edgeOf(measured: PictureMeasurement, at: number): Point[] {
  const row = measured.rows[Math.min(at, measured.rows.length - 1)]!
  const { corners, cornerAngle } = measured.outline
  const contour = corners > 0 ? polygonContour(corners, cornerAngle, row.bend) : () => 1
  return Array.from({ length: edgePoints }, (_, i) => {
    const angle = (2 * Math.PI * i) / edgePoints
    const r = row.radius * contour(angle)
    return {
      x: measured.centre.x + r * Math.cos(angle),
      y: measured.centre.y + r * Math.sin(angle),
    }
  })
}

/** Every ring folded by its own repeats, the centre at the bottom; rings that were not read stay grey. */
function repeatOf(
  strip: GreyPicture,
  rings: readonly ShownRing[],
  { rings: counted }: PublishedMeasurement,
): GreyPicture | null {
  if (!counted.some(({ repeats }) => repeats !== null)) return null
  const { width, height } = repeatSize
  const values = new Float32Array(width * height).fill(0.5)
  for (let y = 0; y < height; y++) {
    const share = 1 - (y + 0.5) / height
    const at = rings.findIndex(({ from, to }) => share >= from && share < to)
    const { repeats = null, sureness = 0 } = counted[at] ?? {}
    if (repeats === null || sureness < leastRead) continue
    const row = Math.min(strip.height - 1, Math.floor((1 - share) * strip.height))
    // The first strand stands in the middle of its repeat.
    const first = (rings[at]!.ticks[0] ?? 0) - 0.5 / repeats
    for (let x = 0; x < width; x++) {
      let sum = 0
      for (let k = 0; k < repeats; k++)
        sum += sampleAround(strip, row, first + (k + (x + 0.5) / width) / repeats)
      values[y * width + x] = sum / repeats
    }
  }
  return { width, height, values }
}

/** Brightness of a row at so many turns, between its samples. */
function sampleAround({ width, values }: GreyPicture, row: number, turns: number): number {
  const at = (turns - Math.floor(turns)) * width
  const i = Math.floor(at) % width
  const share = at - Math.floor(at)
  const base = row * width
  return values[base + i]! * (1 - share) + values[base + ((i + 1) % width)]! * share
}
