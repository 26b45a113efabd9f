// Where the rounds of a stitch diagram start, and which way they run.

import type { Element, Motif } from "@roundwright/motif"
import type { Net } from "@roundwright/relaxation"
import { along, angleOf, distance, type Posts, unitVector } from "./diagram-geometry.ts"
import type { FlatPiece, FlatPlace } from "./laid-out-piece.ts"

export interface RoundStart extends FlatPlace {
  readonly number: number
  /** Degrees clockwise from up: the way the round is worked from here. */
  readonly angle: number
  /** Room between this round and the one below. */
  readonly depth: number
}

export interface Ends {
  readonly first: number
  readonly last: number
  /** Worked clockwise. */
  readonly backwards: boolean
}

/** First and last node of a round in working order. */
export function endsOf(net: Net, round: number, elements: readonly Element[]): Ends {
  const { nodes, elements: order } = net.edges[round]!
  const firstElement = elements.findIndex((element) => element.type !== "picot")
  // Laid counterclockwise; a round worked the other way begins at the end of its edge.
  return order[0] === firstElement
    ? { first: nodes[0]!, last: nodes.at(-1)!, backwards: false }
    : { first: nodes.at(-1)!, last: nodes[0]!, backwards: true }
}

export function startOf(motif: Motif, piece: FlatPiece, posts: Posts, round: number): RoundStart {
  const { elements, number } = motif.rounds[round]!
  const { first, last, backwards } = endsOf(piece.net, round, elements)
  const [a, b] = [piece.places[first]!, piece.places[last]!]
  const footOf = (node: number) => posts[round]!.get(piece.net.nodes[node]!.element)?.[0]?.foot
  const { closed } = piece.net.edges[round]!
  const top = closed ? along(a, b, 0.5) : a
  const foot = footOf(first) ?? footOf(last) ?? along(top, { x: 0, y: 0 }, 1 / (round + 2))
  const base = closed ? along(foot, footOf(last) ?? foot, 0.5) : foot
  const middle = along(base, top, 0.5)
  const out = unitVector({ x: 0, y: 0 }, middle)
  const ahead = backwards ? { x: out.y, y: -out.x } : { x: -out.y, y: out.x }
  return { ...middle, number, angle: angleOf({ x: 0, y: 0 }, ahead), depth: distance(base, top) }
}
