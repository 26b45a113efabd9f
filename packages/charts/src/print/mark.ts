// The marks of a chart for print: every stitch, chain, join and start as strokes and ovals in mm, x to the right, y up.
// Symbols are those of the published open standard for crochet charts (Craft Yarn Council): an oval for a chain, a dot for
// a slip stitch, a cross for a sc, a T with as many bars as yarn-overs for what is taller. All have one size; only the stem
// of a stitch is as long as its place asks.

export interface Place {
  readonly x: number
  readonly y: number
}

export interface Stroke {
  readonly from: Place
  readonly to: Place
}

export interface Oval extends Place {
  /** Half the long and half the short axis, mm, and the way the long one points, radians. */
  readonly long: number
  readonly short: number
  readonly angle: number
  readonly filled: boolean
}

export type MarkKind =
  | "stitch"
  | "chain"
  | "picot"
  | "start"
  | "join"
  | "slip"
  | "ring"
  | "yarn-on"
  | "yarn-off"

export interface PrintMark {
  readonly kind: MarkKind
  /** Index of the round; -1 for the centre. */
  readonly round: number
  readonly element: number
  /** Which repeat of the piece it stands in, from 0. */
  readonly repeat: number
  /** Its top, or its middle. */
  readonly at: Place
  readonly strokes: readonly Stroke[]
  readonly ovals: readonly Oval[]
  /** From foot to top, one for each leg; among its strokes too. */
  readonly posts: readonly Stroke[]
  /** A thin line to a foot that later rounds lie over; no part of the symbol. */
  readonly leaders: readonly Stroke[]
}

/** Sizes of the symbols, mm. A stitch takes as much of its round as a stitch is wide: `pitch`. */
export const symbolMm = {
  pitch: 2.6,
  /** Half axes of a chain's oval. */
  ovalLong: 0.85,
  ovalShort: 0.42,
  /** From one chain to the next along a run or a column. */
  chainPitch: 1.9,
  cross: 1.5,
  head: 1.9,
  bar: 1.2,
  barGap: 0.55,
  dot: 0.36,
  stroke: 0.22,
  /** Between a foot and what it stands on. */
  footGap: 0.4,
  /** Between two feet in one place. */
  footPitch: 0.55,
  /** Between a chain of a column and the next. */
  columnPitch: 1.78,
} as const

export function polar(angle: number, radius: number): Place {
  return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) }
}

export function between(a: Place, b: Place, share: number): Place {
  return { x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) }
}

export function unit(a: Place, b: Place): Place {
  const length = Math.hypot(b.x - a.x, b.y - a.y)
  return length > 0 ? { x: (b.x - a.x) / length, y: (b.y - a.y) / length } : { x: 0, y: 1 }
}

/** `along` mm in the direction, and `aside` mm to its left. */
export function shifted(place: Place, way: Place, along: number, aside: number): Place {
  return { x: place.x + along * way.x - aside * way.y, y: place.y + along * way.y + aside * way.x }
}
