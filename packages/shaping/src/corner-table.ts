// Side against corner: for every stitch of the added rounds, how far the outline must still move out at its
// angle to reach the finished polygon, how far the stitch moves it, and what is left for the rounds after it.
//
// At angle t off the middle of a side the finished side stands a / cos t from the centre (a its distance), so
//   must = a / cos t - reach of the place below,  moves = reach of the top - reach of the place,
//   left = must - moves.
// Reaches are those of the laid-out shape along the first side, from its middle to its second corner.

import { ordinal } from "@roundwright/instructions"
import type { Element } from "@roundwright/motif"
import { kindName } from "@roundwright/stitches"
import type { Proposal } from "./proposal.ts"

export interface HeightRow {
  /** The round's printed number. */
  readonly round: number
  /** Place below, from the middle of the side (0) to the corner. */
  readonly place: number
  readonly stitch: string
  /** Which stitch of the written round it is, counted from its start: "4th st"; "ch after 4th st" for the chains of a corner. */
  readonly written: string
  /** Degrees off the middle of the side, 0 to 180 / k. */
  readonly angleDeg: number
  /** Centre to the place below and to the top, in the gauge's unit. */
  readonly fromMm: number
  readonly toMm: number
  readonly mustMm: number
  readonly movesMm: number
  readonly leftMm: number
}

/** The chains of a corner stand on its line within this share of half a side. */
const cornerWidth = 0.04

/** Stitches nearer than this to a mirror line stand on it, radians. */
const onLine = 0.01

/** One row for each stitch over half a side, and one for the chains of a corner, round after round, from the middle of the side to the corner. */
export function cornerTable(proposal: Proposal): HeightRow[] {
  const { motif, from, shape, corners, palette } = proposal
  const { net, xy } = shape
  const mean = (nodes: readonly number[], k: 0 | 1) =>
    nodes.reduce((sum, node) => sum + xy[2 * node + k]!, 0) / nodes.length
  const centre = [mean(net.centre, 0), mean(net.centre, 1)] as const
  const [one, other] = [shape.tipAngles[0]!, shape.tipAngles[1]!]
  const way = turnBetween(one, other) < 0 ? -1 : 1
  const middle = one + turnBetween(one, other) / 2
  const half = Math.PI / corners
  const polar = (point: {
    readonly nodes: readonly number[]
    readonly weights: readonly number[]
  }) => {
    const at = (k: 0 | 1) =>
      point.nodes.reduce((sum, node, i) => sum + point.weights[i]! * xy[2 * node + k]!, 0) -
      centre[k]
    const [x, y] = [at(0), at(1)]
    return {
      reach: Math.hypot(x, y) / net.mmPerUnit,
      angle: way * turnBetween(middle, Math.atan2(y, x)),
    }
  }
  const rows: HeightRow[] = []
  for (let round = from; round < motif.rounds.length; round++) {
    const { elements, number } = motif.rounds[round]!
    const posts = net.springs
      .filter((spring) => spring.role === "post" && spring.round === round)
      .map((spring) => ({
        element: spring.element,
        foot: polar(spring.from),
        top: polar(spring.to),
      }))
      .filter(({ top }) => top.angle >= -onLine && top.angle <= half + onLine)
      .sort((a, b) => a.top.angle - b.top.angle)
    let place = -1
    let before = Number.NaN
    const add = (element: number, stitch: string, from: number, top: Polar) => {
      const mustMm = shape.sideReachMm / Math.cos(top.angle) - from
      rows.push({
        round: number,
        place,
        stitch,
        written: placeInRound(elements, element),
        angleDeg: Math.max(0, (top.angle * 180) / Math.PI),
        fromMm: from,
        toMm: top.reach,
        mustMm,
        movesMm: top.reach - from,
        leftMm: mustMm - (top.reach - from),
      })
    }
    for (const { element, foot, top } of posts) {
      const made = elements[element]!
      if (made.type !== "stitch") continue
      const anchor = made.anchors[0]!
      const below = anchor.at === "centre" ? 0 : anchor.element
      if (below !== before) place++
      before = below
      add(element, kindName(made.kind, palette.terms), foot.reach, top)
    }
    const last = posts.at(-1)
    const edge = net.edges[round]!
    elements.forEach((element, e) => {
      if (element.type !== "chain" || last === undefined) return
      const nodes = edge.nodes.filter((_, i) => edge.elements[i] === e)
      const tip = polar({ nodes, weights: nodes.map(() => 1 / nodes.length) })
      if (Math.abs(tip.angle - half) > cornerWidth * half) return
      add(e, `ch ${element.chains}`, last.foot.reach, { ...tip, angle: half })
    })
  }
  return rows
}

interface Polar {
  readonly reach: number
  readonly angle: number
}

/** "4th st", counted as the text counts; "ch after 4th st". */
function placeInRound(elements: readonly Element[], element: number): string {
  const before = elements.slice(0, element + 1).filter(({ type }) => type === "stitch").length
  const nth = `${ordinal(before)} st`
  return elements[element]?.type === "chain" ? `ch after ${nth}` : nth
}

/** The angle from one direction to another, -pi to pi. */
function turnBetween(from: number, to: number): number {
  const turn = to - from
  return turn - 2 * Math.PI * Math.round(turn / (2 * Math.PI))
}
