// The size of a piece as a maker tells it: "15 cm", "8 x 10 in", "side 1 in" of a hexagon, "point to point 4 in", "5 = 4 in".

import { RoundwrightError } from "@roundwright/numerics"
import { believable, type LengthUnit, lengthAt, unitIn } from "../lengths.ts"
import { readTarget } from "../ways/target.ts"

export const pieceShapes = ["square", "hexagon", "octagon", "circle", "on-point"] as const
/** How pieces fill a blanket; `on-point` are squares that stand on a corner. */
export type PieceOutline = (typeof pieceShapes)[number]

export interface PieceSizeTold {
  /** From side to side, mm. */
  readonly widthMm: number
  /** As wide as long but for rectangles. */
  readonly lengthMm: number
  readonly unit: LengthUnit
}

/** Across over a side, and across over the distance of opposite points. */
const proportions: Readonly<
  Record<PieceOutline, { readonly side: number; readonly points: number }>
> = {
  square: { side: 1, points: Math.SQRT1_2 },
  "on-point": { side: 1, points: Math.SQRT1_2 },
  hexagon: { side: Math.sqrt(3), points: Math.sqrt(3) / 2 },
  octagon: { side: 1 + Math.SQRT2, points: Math.cos(Math.PI / 8) },
  circle: { side: 1, points: 1 },
}

/** Point to point over side to side. */
const hexagonWidths = 2 / Math.sqrt(3)

/** @throws RoundwrightError `no-size` */
export function readPieceTold(text: string, shape: PieceOutline = "square"): PieceSizeTold {
  const unit = unitIn(text)
  const several = /^\s*(\d{1,4})\s*(?:[a-z][a-z ]*)?=\s*(\S.*)$/i.exec(text)
  if (several && lengthAt(several[2]!)) {
    const mm = believable(lengthAt(several[2]!)!.mm / Math.max(1e-9, Number(several[1])), "a piece")
    return { widthMm: mm, lengthMm: mm, unit }
  }
  const sides = rectangleIn(text)
  if (sides) {
    const [widthMm, lengthMm] = sides.map((mm) => believable(mm, "a piece")) as [number, number]
    // A hexagon told by its two widths: from side to side is the lesser, the other goes from point to point.
    if (
      shape === "hexagon" &&
      Math.abs(Math.max(widthMm, lengthMm) / Math.min(widthMm, lengthMm) / hexagonWidths - 1) < 0.06
    ) {
      const flat = Math.min(widthMm, lengthMm)
      return { widthMm: flat, lengthMm: flat, unit }
    }
    if (shape !== "square" && widthMm !== lengthMm)
      throw new RoundwrightError("no-size", `A ${shape} has one size, not two.`, {
        hint: "Give what it measures from side to side.",
      })
    return { widthMm, lengthMm, unit }
  }
  const { mm, along } = readTarget(text, "--piece")
  const { side, points } = proportions[shape]
  const across = mm * (along === "side" ? side : along === "diagonal" ? points : 1)
  return { widthMm: across, lengthMm: across, unit }
}

/** "8 x 10 in", mm; null where it is no rectangle. */
export function rectangleIn(text: string): [number, number] | null {
  const [a = "", b, ...rest] = text.split(/x|×|\*|\bby\b/i).map((part) => part.trim())
  if (b === undefined || rest.length > 0) return null
  const second = lengthAt(b)
  // The unit stands once: "8 x 10 in".
  const unit = /(?<![a-z"″”])[a-z"″”]+$/i.exec(b)?.[0] ?? ""
  const first = lengthAt(a) ?? lengthAt(`${a} ${unit}`)
  return first && second ? [first.mm, second.mm] : null
}

/** Area of a piece that is one across. */
const areas: Readonly<Record<PieceOutline, number>> = {
  square: 1,
  "on-point": 1,
  hexagon: Math.sqrt(3) / 2,
  // With their share of what lies between them.
  octagon: 1,
  circle: 1,
}

/** How large so many pieces are that fill a size, mm across. @throws RoundwrightError `no-size` */
export function acrossOfMany(
  [width, length]: readonly [number, number],
  pieces: number,
  shape: PieceOutline,
): number {
  return believable(Math.sqrt((width * length) / (pieces * areas[shape])), "a piece")
}

/** Whether a size says along what it was measured. */
export function saysAlong(text: string): boolean {
  return rectangleIn(text) !== null || readTarget(text, "--piece").said
}
