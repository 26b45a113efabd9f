// The solved piece made symmetric: every round as one repeat of its tops and chains, each the mean of its images, turned
// back. Angles counterclockwise from the x axis, radii in mm of the piece.

import { commonDivisor, type Element, type Motif, type Round, repeatsOf } from "@roundwright/motif"
import type { LaidOutShape } from "@roundwright/relaxation"
import { type FlatPiece, placeFlat } from "../laid-out-piece.ts"

export interface RingItem {
  /** Index of the element in the round's first repeat, in the order of the edge. */
  readonly element: number
  /** Which chain of a run. */
  readonly chain: number
  readonly item: Element
  readonly angle: number
  readonly radius: number
  /** Cosine of the angle between the ray and the normal of the edge: 1 on a circle. */
  readonly facing: number
}

export interface Ring {
  /** One repeat, counterclockwise; images follow by turns of 2 pi / repeats. */
  readonly items: readonly RingItem[]
  /** Elements of the round in one repeat. */
  readonly perRepeat: number
  readonly closed: boolean
  /** Worked clockwise: the edge runs against the order of work. */
  readonly backwards: boolean
}

export interface SymmetricPiece {
  readonly piece: FlatPiece
  readonly repeats: number
  readonly rings: readonly Ring[]
  /** Median width of a top, mm of the piece. */
  readonly stitchWidth: number
}

export function symmetricPiece(motif: Motif, shape: LaidOutShape): SymmetricPiece {
  const piece = placeFlat(motif, shape, {})
  const repeats = sharedRepeats(motif, piece)
  const widths = piece.net.nodes
    .filter(({ kind }) => kind === "top")
    .map(({ widthMm }) => widthMm / piece.mmPerUnit)
    .sort((a, b) => a - b)
  const rings = motif.rounds.map((_, index) => ringOf(motif, piece, index, repeats))
  return { piece, repeats, rings, stitchWidth: widths[widths.length >> 1] ?? 1 }
}

/** Repeats that all rounds and their edges share; 1 where a round is open. */
function sharedRepeats(motif: Motif, { net }: FlatPiece): number {
  if (net.edges.some(({ closed }) => !closed)) return 1
  const order = motif.rounds.reduce((all, round) => commonDivisor(all, repeatsAlong(round)), 0)
  for (let repeats = order; repeats > 1; repeats--) {
    const fits = motif.rounds.every(
      ({ elements }, index) =>
        elements.length % repeats === 0 && net.edges[index]!.nodes.length % repeats === 0,
    )
    if (order % repeats === 0 && fits) return repeats
  }
  return 1
}

/** How often the run of stitches and chains comes round, whatever each is worked into and whatever a start stands for. */
function repeatsAlong(round: Round): number {
  const elements = round.elements.map((element): Element => {
    if (element.type !== "stitch") return element
    const { basic, gathered } = element.kind
    const kind = {
      basic,
      ...(gathered ? { gathered: { how: "cluster" as const, legs: gathered.legs } } : {}),
    }
    return { type: "stitch", kind, anchors: [{ at: "centre" }] }
  })
  return repeatsOf({ centre: { kind: "adjustable-ring" }, rounds: [{ ...round, elements }] }, 0)
}

function ringOf(motif: Motif, piece: FlatPiece, index: number, repeats: number): Ring {
  const { elements } = motif.rounds[index]!
  const edge = piece.net.edges[index]!
  const count = edge.nodes.length
  const own = count / repeats
  const turn = (2 * Math.PI) / repeats
  const places = edge.nodes.map((node) => piece.places[node]!)
  const angles = places.map(({ x, y }) => Math.atan2(y, x))
  // Unrolled, so that nothing jumps where the circle closes.
  const unrolled = angles.slice(0, own)
  for (let k = 1; k < own; k++)
    unrolled[k] = unrolled[k - 1]! + wrapped(unrolled[k]! - unrolled[k - 1]!)
  // A round that does not go round the centre, in a piece laid out in a tangle, is set round it evenly.
  const around =
    unrolled[own - 1]! + wrapped(angles[own % count]! - unrolled[own - 1]!) - unrolled[0]!
  if (edge.closed && Math.abs(around - turn) > turn / 2)
    for (let k = 1; k < own; k++) unrolled[k] = unrolled[0]! + (turn * k) / own
  const items = Array.from({ length: own }, (_, k): RingItem => {
    const first = unrolled[k]!
    let [sum, radius] = [0, 0]
    for (let repeat = 0; repeat < repeats; repeat++) {
      const at = k + repeat * own
      sum += wrapped(angles[at]! - repeat * turn - first)
      radius += Math.hypot(places[at]!.x, places[at]!.y)
    }
    const before = places[(k - 1 + count) % count]!
    const after = places[(k + 1) % count]!
    return {
      element: edge.elements[k]!,
      chain: chainIndex(edge.elements, k),
      item: elements[edge.elements[k]!]!,
      angle: first + sum / repeats,
      radius: radius / repeats,
      facing: facingOf(places[k]!, before, after),
    }
  })
  const firstElement = elements.findIndex(({ type }) => type !== "picot")
  return {
    items,
    perRepeat: elements.length / repeats,
    closed: edge.closed,
    backwards: edge.elements[0] !== firstElement && count > 1 && edge.elements[0] !== 0,
  }
}

function chainIndex(elements: readonly number[], k: number): number {
  let chain = 0
  while (k - chain - 1 >= 0 && elements[k - chain - 1] === elements[k]) chain += 1
  return chain
}

function facingOf(
  own: { x: number; y: number },
  before: { x: number; y: number },
  after: { x: number; y: number },
): number {
  const [tx, ty] = [after.x - before.x, after.y - before.y]
  const tangent = Math.hypot(tx, ty)
  const radius = Math.hypot(own.x, own.y)
  if (tangent === 0 || radius === 0) return 1
  return Math.min(1, Math.abs(own.x * ty - own.y * tx) / (tangent * radius))
}

/** Between -pi and pi. */
export function wrapped(angle: number): number {
  return angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI))
}
