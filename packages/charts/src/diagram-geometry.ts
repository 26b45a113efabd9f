// The geometry of a stitch diagram: the posts of a laid-out piece with the places of their ends, and a symbol
// set between two places.

import type { StitchElement } from "@roundwright/motif"
import type { Point } from "@roundwright/relaxation"
import type { FlatPiece, FlatPlace } from "./laid-out-piece.ts"
import type { StitchSymbol } from "./symbols.ts"

/** A symbol in its place: the middle of its box, its length and the way its top points, degrees clockwise from up. */
export interface DiagramMark extends FlatPlace {
  readonly symbol: StitchSymbol
  readonly length: number
  readonly angle: number
  readonly filled: boolean
  readonly round: number
}

/** A post of the net with the places of its ends. */
export interface Post {
  readonly foot: FlatPlace
  readonly top: FlatPlace
  readonly spring: number
}

/** Posts of every element of every round, in the order of its anchors. */
export type Posts = readonly ReadonlyMap<number, readonly Post[]>[]

export function postsOf(piece: FlatPiece): Posts {
  const posts = piece.net.edges.map(() => new Map<number, Post[]>())
  piece.net.springs.forEach((spring, index) => {
    if (spring.role !== "post" || spring.round < 0) return
    const own = posts[spring.round]!
    const post = {
      foot: placeOf(spring.from, piece),
      top: placeOf(spring.to, piece),
      spring: index,
    }
    own.set(spring.element, [...(own.get(spring.element) ?? []), post])
  })
  return posts
}

function placeOf({ nodes, weights }: Point, { places }: FlatPiece): FlatPlace {
  let [x, y] = [0, 0]
  nodes.forEach((node, k) => {
    x += weights[k]! * places[node]!.x
    y += weights[k]! * places[node]!.y
  })
  return { x, y }
}

export function between(
  symbol: StitchSymbol,
  foot: FlatPlace,
  top: FlatPlace,
  round: number,
  stitch?: StitchElement,
): DiagramMark {
  return {
    ...along(foot, top, 0.5),
    symbol,
    length: distance(foot, top),
    angle: angleOf(foot, top),
    filled: stitch?.kind.basic === "sl st",
    round,
  }
}

export function along(a: FlatPlace, b: FlatPlace, share: number): FlatPlace {
  return { x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) }
}

export function distance(a: FlatPlace, b: FlatPlace): number {
  return Math.hypot(b.x - a.x, b.y - a.y)
}

export function angleOf(foot: FlatPlace, top: FlatPlace): number {
  return (Math.atan2(top.x - foot.x, top.y - foot.y) * 180) / Math.PI
}

export function unitVector(a: FlatPlace, b: FlatPlace): FlatPlace {
  const length = distance(a, b)
  return length > 0 ? { x: (b.x - a.x) / length, y: (b.y - a.y) / length } : { x: 0, y: 1 }
}
