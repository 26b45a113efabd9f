// The fabric behind a stitch diagram: for every post the patch between its neighbours, for every chain a cord,
// each with its strain.

import { blockableStretch, usualMaterial } from "@roundwright/relaxation"
import { between, type DiagramMark, distance, type Post, type Posts } from "./diagram-geometry.ts"
import type { FlatPiece } from "./laid-out-piece.ts"
import { patchSymbol } from "./symbols.ts"

/** Greys for strains beyond each bound: what yarn gives, twice that, as far as blocking helps, and between. */
export const strainGreys: readonly { readonly beyond: number; readonly opacity: number }[] = [
  { beyond: usualMaterial.give, opacity: 0.12 },
  { beyond: 2 * usualMaterial.give, opacity: 0.22 },
  { beyond: usualMaterial.give + blockableStretch / 2, opacity: 0.34 },
  { beyond: blockableStretch, opacity: 0.48 },
]

/** A stretch of fabric, and how dark its strain makes it. */
export interface ShadedPatch {
  readonly mark: DiagramMark
  readonly opacity: number
}

/**
 * What is strained beyond the give.
 * @param strains of the net's springs, in their order
 */
export function shadedPatches(
  piece: FlatPiece,
  posts: Posts,
  strains: Float64Array,
): ShadedPatch[] {
  return strainedPatches(piece, posts, strains).flatMap(({ mark, strain }) => {
    const grey = strainGreys.findLast(({ beyond }) => Math.abs(strain) > beyond)
    return grey === undefined ? [] : [{ mark, opacity: grey.opacity }]
  })
}

/** The stretch of fabric a post or chain stands for, and its strain. */
interface StrainedPatch {
  readonly mark: DiagramMark
  /** Of the post or of the top beside it, whichever is larger in size; positive when stretched. */
  readonly strain: number
}

function strainedPatches(piece: FlatPiece, posts: Posts, strains: Float64Array): StrainedPatch[] {
  const { net, places, mmPerUnit } = piece
  const beside = net.nodes.map(() => 0)
  const patches: StrainedPatch[] = []
  net.springs.forEach((spring, index) => {
    if (spring.role === "post" || spring.round < 0) return
    const [from, to] = [spring.from.nodes[0]!, spring.to.nodes[0]!]
    // A slack chain is not strained; a taut one is.
    const strain = spring.role === "chain" ? Math.max(0, strains[index]!) : strains[index]!
    for (const node of [from, to])
      if (net.nodes[node]!.kind === "top" && Math.abs(strain) > Math.abs(beside[node]!))
        beside[node] = strain
    if (spring.role !== "chain") return
    const [a, b] = [places[from]!, places[to]!]
    const wide = (cordShare * net.nodes[from]!.widthMm) / mmPerUnit
    const share = wide / (distance(a, b) || wide)
    patches.push({
      mark: between(patchSymbol({ foot: [share, share], top: [share, share] }), a, b, spring.round),
      strain,
    })
  })
  posts.forEach((ofRound, round) => {
    const { elements, closed } = net.edges[round]!
    const row = [...new Set(elements)].flatMap((element) => ofRound.get(element) ?? [])
    row.forEach((post, k) => {
      const node = net.springs[post.spring]!.to.nodes[0]!
      const own = strains[post.spring]!
      const strain = Math.abs(beside[node]!) > Math.abs(own) ? beside[node]! : own
      const most = net.nodes[node]!.widthMm / mmPerUnit
      const length = distance(post.foot, post.top) || most
      // Rows run counterclockwise: with the top outward, the next post stands to the left.
      const [right, left] = [row.at(k - 1)!, row[(k + 1) % row.length]!]
      // Legs that fan out of one place share the room at their foot.
      const half = (end: "foot" | "top", other: Post, atEnd: boolean): number =>
        Math.min(most, atEnd && !closed ? most : distance(post[end], other[end])) / length
      const halves = (end: "foot" | "top"): [number, number] => [
        half(end, left, k === row.length - 1),
        half(end, right, k === 0),
      ]
      const symbol = patchSymbol({ foot: halves("foot"), top: halves("top") })
      patches.push({ mark: between(symbol, post.foot, post.top, round), strain })
    })
  })
  return patches
}

/** A chain is shaded this wide against its length: a cord and not a patch of fabric. */
const cordShare = 0.6
