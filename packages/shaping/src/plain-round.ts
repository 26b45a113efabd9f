// A plain round over places that cannot be shared out evenly between the corners: spaces are filled, and
// stitches are added or left so that the count lies flat and divides.

import type { Anchor, Element, Motif } from "@roundwright/motif"
import { type Gauge, kindName, type StitchKind, sizeOf, type Terms } from "@roundwright/stitches"
import type { LaidFoot } from "./base-edge.ts"
import { feetOf } from "./feet.ts"

export interface PlainRound {
  readonly motif: Motif
  readonly words: string
  /** Its places as they come to lie: a circle one height further out. */
  readonly laid: readonly LaidFoot[]
}

/** More stitches than this do not fit side by side in one place; a chain of a space holds as many as a place. */
const mostInPlace = 7

/** Null where so many stitches would have to crowd into so few places that nobody could work them. */
export function plainRound(
  motif: Motif,
  feet: readonly LaidFoot[],
  gauge: Gauge,
  corners: number,
  kind: StitchKind,
  terms: Terms,
): PlainRound | null {
  const { heightMm, widthMm } = sizeOf(kind, gauge, { turned: false })
  const reach = feet.reduce((sum, foot) => sum + foot.reachMm, 0) / feet.length
  const flat = (2 * Math.PI * (reach + heightMm)) / widthMm
  const count = Math.max(corners, Math.round(flat / corners) * corners)
  const rooms = feet.map((foot) => Math.max(1, foot.chains))
  const room = rooms.reduce((sum, own) => sum + own, 0)
  if (count > mostInPlace * room) return null
  const elements: Element[] = []
  let before = 0
  feet.forEach((foot, i) => {
    const upTo = Math.round(((before + rooms[i]!) * count) / room)
    const done = Math.round((before * count) / room)
    before += rooms[i]!
    const anchors: Anchor[] = [foot.anchor]
    for (let k = done; k < upTo; k++) elements.push({ type: "stitch", kind, anchors })
  })
  const number = (motif.rounds.at(-1)?.number ?? 0) + 1
  const made: Motif = {
    ...motif,
    rounds: [...motif.rounds, { number, elements, turned: false, closing: "joined" }],
  }
  return {
    motif: made,
    laid: feetOf(made, gauge).map((foot) => ({ ...foot, reachMm: reach + heightMm, angle: 0 })),
    words: `Round ${number}: a plain round of ${count} ${kindName(kind, terms)} first, since the ${feet.length} places below cannot be shared out evenly over ${corners} sides.`,
  }
}
