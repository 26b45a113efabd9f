// The fabric behind a stitch diagram, grey where it is strained: for every post the patch between its neighbours, for
// every chain a cord. Each grey is one shape, all patches strained at least so much together: where patches lie over
// one another the grey is that of the most strained and never darker than the legend has it.

import { bands } from "@roundwright/flatness"
import { usualMaterial } from "@roundwright/relaxation"
import { distance, type Post, type Posts } from "./diagram-geometry.ts"
import type { FlatPiece, FlatPlace } from "./laid-out-piece.ts"

/** Greys for strains beyond each bound: what yarn gives, twice that, as far as blocking helps, and between. */
export const strainGreys: readonly { readonly beyond: number; readonly opacity: number }[] = [
  { beyond: usualMaterial.give, opacity: 0.12 },
  { beyond: 2 * usualMaterial.give, opacity: 0.22 },
  { beyond: usualMaterial.give + bands.blocksFull / 2, opacity: 0.34 },
  { beyond: bands.blocksFull, opacity: 0.48 },
]

/** All that is strained beyond one bound. */
export interface StrainShade {
  readonly beyond: number
  /** Laid over the lighter shades it comes to the grey of its bound. */
  readonly opacity: number
  /** Corners of each patch, in the unit of the piece. */
  readonly patches: readonly (readonly FlatPlace[])[]
}

/**
 * The shades from light to dark, to be drawn in this order; those without a patch are left out.
 * @param strains of the net's springs, in their order
 */
export function strainShades(piece: FlatPiece, posts: Posts, strains: Float64Array): StrainShade[] {
  const all = [...cords(piece, strains), ...fabric(piece, posts, strains)]
  return strainGreys.flatMap(({ beyond, opacity }, k) => {
    const patches = all.filter(({ strain }) => Math.abs(strain) > beyond)
    const under = strainGreys[k - 1]?.opacity ?? 0
    // Two veils over each other let through the product of what each lets through.
    const own = 1 - (1 - opacity) / (1 - under)
    return patches.length === 0
      ? []
      : [{ beyond, opacity: own, patches: patches.map(({ corners }) => corners) }]
  })
}

/** The stretch of fabric a post or chain stands for. */
interface Patch {
  readonly corners: readonly FlatPlace[]
  /** Positive when stretched. */
  readonly strain: number
}

/** A chain is shaded this wide against its length: a cord and not a patch of fabric. */
const cordShare = 0.6

function cords({ net, places, mmPerUnit }: FlatPiece, strains: Float64Array): Patch[] {
  return net.springs.flatMap((spring, index) => {
    if (spring.role !== "chain" || spring.round < 0) return []
    const [from, to] = [spring.from.nodes[0]!, spring.to.nodes[0]!]
    const half = (cordShare * net.nodes[from]!.widthMm) / mmPerUnit / 2
    const ends = { foot: [half, half], top: [half, half] } as const
    // A slack chain is not strained; a taut one is.
    const strain = Math.max(0, strains[index]!)
    return [{ corners: corners(places[from]!, places[to]!, ends), strain }]
  })
}

/** A patch for every post, with the strain of the post or of the top beside it, whichever is larger in size. */
function fabric(piece: FlatPiece, posts: Posts, strains: Float64Array): Patch[] {
  const { net, mmPerUnit } = piece
  const beside = strainsOfTops(piece, strains)
  return posts.flatMap((ofRound, round) => {
    const { elements, closed } = net.edges[round]!
    const row = [...new Set(elements)].flatMap((element) => ofRound.get(element) ?? [])
    return row.map((post, k) => {
      const node = net.springs[post.spring]!.to.nodes[0]!
      const own = strains[post.spring]!
      const most = net.nodes[node]!.widthMm / mmPerUnit
      // Rows run counterclockwise: with the top outward, the next post stands to the left.
      const [right, left] = [row.at(k - 1)!, row[(k + 1) % row.length]!]
      // Legs that fan out of one place share the room at their foot.
      const half = (end: "foot" | "top", other: Post, atEnd: boolean): number =>
        Math.min(most, atEnd && !closed ? most : distance(post[end], other[end])) / 2
      const halves = (end: "foot" | "top"): readonly [number, number] => [
        half(end, left, k === row.length - 1),
        half(end, right, k === 0),
      ]
      const ends = { foot: halves("foot"), top: halves("top") }
      return {
        corners: corners(post.foot, post.top, ends),
        strain: Math.abs(beside[node]!) > Math.abs(own) ? beside[node]! : own,
      }
    })
  })
}

/** For every node that is a top, the strain of the edge to either side of it that is strained more. */
function strainsOfTops({ net }: FlatPiece, strains: Float64Array): number[] {
  const beside = net.nodes.map(() => 0)
  net.springs.forEach((spring, index) => {
    if (spring.role === "post" || spring.round < 0) return
    const strain = spring.role === "chain" ? Math.max(0, strains[index]!) : strains[index]!
    for (const node of [spring.from.nodes[0]!, spring.to.nodes[0]!])
      if (net.nodes[node]!.kind === "top" && Math.abs(strain) > Math.abs(beside[node]!))
        beside[node] = strain
  })
  return beside
}

/** Four corners, counterclockwise, of a patch that reaches so far to the left and right of its foot and its top. */
function corners(
  foot: FlatPlace,
  top: FlatPlace,
  reach: Readonly<Record<"foot" | "top", readonly [left: number, right: number]>>,
): FlatPlace[] {
  const length = distance(foot, top)
  const along = length > 0 ? { x: (top.x - foot.x) / length, y: (top.y - foot.y) / length } : up
  const beside = (place: FlatPlace, right: number): FlatPlace => ({
    x: place.x + right * along.y,
    y: place.y - right * along.x,
  })
  const [footLeft, footRight] = reach.foot
  const [topLeft, topRight] = reach.top
  return [
    beside(foot, -footLeft),
    beside(foot, footRight),
    beside(top, topRight),
    beside(top, -topLeft),
  ]
}

const up: FlatPlace = { x: 0, y: 1 }
