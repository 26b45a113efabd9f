// One length that is known, in the words of a line, and how many millimetres a pixel is by it: the side or the
// distance across, two marks of a ruler, the edge of a coin, or the width of a stitch in a ring.

import { RoundwrightError } from "@roundwright/numerics"
import { millimetresIn } from "@roundwright/stitches"
import { fitEllipse } from "./ellipse.ts"
import { fromGiven } from "./given.ts"
import { type Point, rescaled } from "./grey.ts"
import type { PictureMeasurement } from "./measure.ts"

export type KnownLength =
  /** The whole side of a polygon, or the distance across the piece through its centre. */
  | { readonly of: "side" | "across"; readonly mm: number }
  /** Between two points of the picture as it is looked at, in the plane of the piece. */
  | { readonly of: "ruler"; readonly from: Point; readonly to: Point; readonly mm: number }
  /** Diameter of something round that lies beside the piece, by points round its edge. */
  | { readonly of: "coin"; readonly edge: readonly Point[]; readonly mm: number }
  /** Width of one stitch of a ring, by the strands counted in it. */
  | { readonly of: "stitch"; readonly ring: number; readonly mm: number }

const examples =
  'Write "side 15.2 cm", "across 9 cm", "ruler 120,400 820,410 = 10 cm", "coin X,Y X,Y X,Y X,Y X,Y = 23.2 mm" with five points round its edge, or "stitch 4.5 mm in ring 3".'

/** Nothing that lies in a picture beside a piece is smaller or larger. */
const [leastMm, mostMm] = [0.2, 100_000]

/** @throws RoundwrightError `no-known-length` */
export function readKnownLength(text: string): KnownLength {
  const refuse = (why: string) =>
    new RoundwrightError("no-known-length", `The known length ${why}.`, { hint: examples })
  const said = text.slice(0, 300)
  const length = /(\d{1,6}(?:\.\d{1,4})?)\s*(mm|cm|in)\b/i.exec(said)
  if (!length) throw refuse("does not say how long it is, in mm, cm or in")
  const mm = Number(length[1]) * millimetresIn(length[2]!.toLowerCase())
  if (!(mm >= leastMm && mm <= mostMm)) throw refuse(`cannot be ${length[0]}`)
  const word = /^\s*(side|across|ruler|coin|stitch)\b/i.exec(said)?.[1]?.toLowerCase()
  const before = said.slice(0, length.index)
  const places = (before.match(/-?\d{1,6}(?:\.\d{1,4})?/g) ?? []).map(Number)
  const points = places.flatMap((x, i): Point[] =>
    i % 2 === 0 && i + 1 < places.length ? [{ x, y: places[i + 1]! }] : [],
  )
  switch (word) {
    case "side":
    case "across":
      return { of: word, mm }
    case "ruler": {
      const [from, to] = points
      if (!from || !to || places.length !== 4) throw refuse("by a ruler takes two points")
      return { of: "ruler", from, to, mm }
    }
    case "coin":
      if (points.length < 5 || places.length % 2 !== 0)
        throw refuse("by a coin takes five points round its edge, or more")
      return { of: "coin", edge: points, mm }
    case "stitch": {
      const ring = /\bring\s+(\d{1,3})\b/i.exec(said.slice(length.index))
      if (!ring) throw refuse("by a stitch has to say of which ring")
      return { of: "stitch", ring: Number(ring[1]), mm }
    }
    default:
      throw refuse("has to say what it is of")
  }
}

/**
 * Millimetres a pixel of the straight working picture.
 * @param scale pixels of the measured picture a pixel of the picture as it is looked at
 * @param strands counted in each ring, null where it was not read
 * @throws RoundwrightError `no-sides`, `no-known-length`, `no-such-ring`, what `fitEllipse` throws
 */
export function millimetresPerPixel(
  measured: PictureMeasurement,
  known: KnownLength,
  scale: number,
  strands: readonly (number | null)[],
): number {
  const { outline } = measured
  const straight = (p: Point) => fromGiven(measured, rescaled(p, scale))
  switch (known.of) {
    case "across": {
      // From side to opposite side; of an odd number of corners from a side to the corner opposite.
      const odd = outline.kind === "polygon" && outline.corners % 2 === 1
      return known.mm / (outline.sidePx + (odd ? outline.cornerPx : outline.sidePx))
    }
    case "side":
      if (outline.kind === "round")
        throw new RoundwrightError("no-sides", "The piece in the picture is round: no side.", {
          hint: "Give the distance across it.",
        })
      return known.mm / (2 * outline.sidePx * Math.tan(Math.PI / outline.corners))
    case "ruler": {
      const [a, b] = [straight(known.from), straight(known.to)]
      const px = Math.hypot(a.x - b.x, a.y - b.y)
      if (!(px >= 2))
        throw new RoundwrightError("no-known-length", "The two points of the ruler are one.", {
          hint: examples,
        })
      return known.mm / px
    }
    case "coin": {
      const { longPx, shortPx } = fitEllipse(known.edge.map(straight))
      return known.mm / (2 * Math.sqrt(longPx * shortPx))
    }
    case "stitch": {
      const ring = measured.rings[known.ring - 1]
      const count = strands[known.ring - 1] ?? null
      if (!ring || count === null)
        throw new RoundwrightError(
          "no-such-ring",
          `Ring ${known.ring} has no count to reckon a stitch by.`,
          {
            hint: `The picture shows ${measured.rings.length} rings.`,
          },
        )
      const { rows } = measured
      const radius = rows[Math.min(ring.toRow, rows.length - 1)]!.radius
      return (known.mm * count) / (2 * Math.PI * radius)
    }
  }
}
